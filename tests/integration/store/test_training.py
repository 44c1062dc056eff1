"""Sessions, versions, scores, profiles: domain values go in and come out equal."""

from datetime import date, timedelta
from decimal import Decimal

import pytest

from core.athletes.values import Equipment, Evidence, Profile
from core.measures import AmountUnit
from core.scaling.orders import Pin
from core.scaling.values import Because, Change, Reason, Version, VersionBlock, VersionLine
from core.scores.values import Score
from core.sessions.values import Aim, Block, Format, Line, Session
from core.store import documents
from core.store.records import ScoreState, SessionState, Told, VersionState
from tests.integration.store.builders import NOW

DAY = date(2026, 3, 2)
LATER = NOW + timedelta(hours=1)
WRITTEN = Line(
    written="12 goblet squats @ 24/16 kg", movement="goblet squat", loads_kg=(Decimal(24), Decimal(16))
)
SESSION = Session(
    title="Monday",
    date=DAY,
    blocks=(Block(format=Format.AMRAP, minutes=12, aim=Aim(of="score", low=6, high=9), lines=(WRITTEN,)),),
)
SQUATS = VersionLine(
    line=0,
    written=WRITTEN.written,
    movement="goblet squat",
    variant="goblet squat",
    implement="dumbbell",
    count=1,
    load_kg=Decimal("12.5"),
    amount=12,
    unit=AmountUnit.REPS,
    cost_window=(0.4, 0.7),
    change=Change.LOAD,
    reason=Reason(because=Because.NOT_OWNED, about="24 kg", keeps="movement"),
)
VERSION = Version(
    athlete="Ilse", as_written=False, blocks=(VersionBlock(block=0, format=Format.AMRAP, lines=(SQUATS,)),)
)


async def draft(unit, group, author, text="12 goblet squats"):
    return await unit.sessions.draft(
        group_id=group.id, author_id=author.id, day=DAY, text=text, session=SESSION, now=NOW
    )


async def record(unit, session_id, person, value, now=NOW):
    return await unit.scores.record(
        session_id=session_id,
        block=0,
        person_id=person.id,
        version_id=None,
        told=Told(str(value)),
        score=Score(value=value, unit="rounds", load_kg=Decimal("12.5")),
        entered_by=person.id,
        now=now,
    )


@pytest.fixture
async def posted(store, group, coach):
    async with store.unit() as unit:
        session = await draft(unit, group, coach)
        await unit.sessions.mark_posted(session.id, NOW)
        return await unit.sessions.get(session.id)


async def test_a_draft_is_what_the_coach_wrote(store, group, coach):
    async with store.unit() as unit:
        made = await draft(unit, group, coach)
    async with store.reading() as unit:
        assert await unit.sessions.get(made.id) == made
    assert (made.session, made.text, made.title) == (SESSION, "12 goblet squats", "Monday")
    assert (made.state, made.revision) == (SessionState.DRAFT, 1)


async def test_a_revision_leaves_the_earlier_one_as_it_was(store, group, coach):
    async with store.unit() as unit:
        first = await draft(unit, group, coach)
        second = await unit.sessions.revise(first.id, "other", Session(blocks=()), LATER)
        assert await unit.sessions.get(first.id) == second
        kept = await unit.sessions.get(first.id, revision=1)
        assert await unit.sessions.get(first.id, revision=3) is None
    assert (second.revision, second.text, second.session) == (2, "other", Session(blocks=()))
    assert (kept.revision, kept.text, kept.session) == (1, "12 goblet squats", SESSION)


async def test_the_newest_draft_is_the_one_to_go_on_with(store, group, coach, ilse):
    async with store.unit() as unit:
        await draft(unit, group, coach)
        second = await draft(unit, group, coach)
        assert await unit.sessions.newest_draft(coach.id, [group.id]) == second
        assert await unit.sessions.newest_draft(ilse.id, [group.id]) is None
        await unit.sessions.discard(second.id)
        await unit.sessions.schedule(
            (await unit.sessions.newest_draft(coach.id, [group.id])).id, LATER, LATER.date()
        )
        assert await unit.sessions.newest_draft(coach.id, [group.id]) is None


async def test_the_posted_session_is_found_by_its_day_and_as_the_latest(store, group, coach, posted):
    async with store.unit() as unit:
        assert await unit.sessions.posted_on(group.id, DAY) == posted
        assert await unit.sessions.posted_on(group.id, DAY + timedelta(days=1)) is None
        another = await draft(unit, group, coach)
        assert await unit.sessions.latest_posted(group.id) == posted
        await unit.sessions.mark_posted(another.id, LATER)
        assert (await unit.sessions.latest_posted(group.id)).id == another.id
    assert (posted.state, posted.posted_at) == (SessionState.POSTED, NOW)


async def test_a_scheduled_session_knows_when(store, group, coach):
    async with store.unit() as unit:
        made = await draft(unit, group, coach)
        await unit.sessions.schedule(made.id, LATER, LATER.date())
        waiting = await unit.sessions.get(made.id)
        assert await unit.sessions.last_set_for(group.id) == LATER
        await unit.sessions.unschedule(made.id)
        assert await unit.sessions.last_set_for(group.id) is None
    assert (waiting.state, waiting.post_at) == (SessionState.SCHEDULED, LATER)


async def test_a_version_shown_again_replaces_the_one_before(store, posted, ilse):
    async with store.unit() as unit:
        first = await unit.versions.show(posted.id, 1, ilse.id, VERSION, NOW)
        other = VERSION.model_copy(update={"as_written": True})
        second = await unit.versions.show(posted.id, 1, ilse.id, other, LATER)
        assert await unit.versions.current(posted.id, ilse.id) == second
        kept = await unit.versions.get(first.id)
    assert (second.revision, second.version, second.state) == (2, other, VersionState.CURRENT)
    assert (kept.revision, kept.version, kept.state) == (1, VERSION, VersionState.REPLACED)


async def test_who_was_shown_nothing_has_no_version(store, posted, ilse, coach):
    async with store.unit() as unit:
        await unit.versions.show(posted.id, 1, ilse.id, VERSION, NOW)
        assert await unit.versions.current(posted.id, coach.id) is None
        assert await unit.versions.get(404) is None


async def test_the_latest_score_counts_and_the_earlier_is_kept(store, posted, ilse):
    async with store.unit() as unit:
        first = await record(unit, posted.id, ilse, 7)
        second = await record(unit, posted.id, ilse, 8, LATER)
        assert await unit.scores.counting(posted.id, 0) == [("Ilse", second)]
        history = await unit.scores.of_person(posted.id, ilse.id)
    assert [(one.id, one.state) for one in history] == [
        (first.id, ScoreState.CORRECTED),
        (second.id, ScoreState.COUNTS),
    ]
    assert second.score == Score(value=8, unit="rounds", load_kg=Decimal("12.5"))


async def test_scores_of_others_and_of_other_blocks_stay(store, posted, ilse, coach):
    async with store.unit() as unit:
        await record(unit, posted.id, ilse, 7)
        await record(unit, posted.id, coach, 9)
        assert [name for name, _ in await unit.scores.counting(posted.id, 0)] == ["Ilse", "Bero"]
        assert await unit.scores.counting(posted.id, 1) == []


async def test_a_withdrawn_score_no_longer_counts(store, posted, ilse):
    async with store.unit() as unit:
        score = await record(unit, posted.id, ilse, 7)
        await unit.scores.withdraw(score.id)
        assert await unit.scores.counting(posted.id, 0) == []
        assert (await unit.scores.get(score.id)).state is ScoreState.WITHDRAWN
        assert await unit.scores.get(404) is None


async def test_nothing_is_known_of_someone_new(store, ilse):
    async with store.reading() as unit:
        assert await unit.profiles.get(ilse.id, ilse.name) == Profile(name="Ilse")


async def test_a_profile_comes_back_with_its_evidence_in_order(store, ilse):
    dumbbell = Equipment(implement="dumbbell", loads_kg=(Decimal("12.5"),), each=2)
    known = Profile(name="Ilse", body_mass_kg=Decimal("61.5"), equipment=(dumbbell,), limits=())
    facts = (
        Evidence(movement="push-up", reps=4, on=DAY),
        Evidence(movement="goblet squat", reps=15, load_kg=Decimal("12.5")),
    )
    async with store.unit() as unit:
        await unit.profiles.save(ilse.id, known, NOW)
        for fact in facts:
            await unit.profiles.add_evidence(ilse.id, fact, NOW)
        whole = await unit.profiles.get(ilse.id, "Ilse")
        assert whole == known.model_copy(update={"evidence": facts})
        await unit.profiles.save(ilse.id, whole.model_copy(update={"limits": ("no overhead",)}), LATER)
        again = await unit.profiles.get(ilse.id, "Ilse")
    assert (again.limits, again.evidence) == (("no overhead",), facts)


async def test_documents_are_found_by_kind_and_id(store):
    async with store.unit() as unit:
        kept = await unit.documents.add(documents.SESSION, SESSION, NOW)
        assert await unit.documents.get(documents.SESSION, kept) == SESSION
        assert await unit.documents.get(documents.SESSION, 404) is None


WEEK = Pin(block=1, line=1, since=date(2026, 3, 2), until=date(2026, 3, 8))
NEXT_WEEK = Pin(block=1, line=1, since=date(2026, 3, 9), until=date(2026, 3, 15))


async def test_a_newer_order_takes_the_place_of_an_older_one_on_the_same_days_alone(
    store, group, coach, ilse
):
    async def give(unit, pin, person=ilse.id):
        at = {"group_id": group.id, "person_id": person, "session_id": None, "movement": "burpee"}
        return (await unit.orders.give(**at, pin=pin, by_id=coach.id, now=NOW)).id

    async with store.unit() as unit:
        of_all = await give(unit, WEEK, person=None)
        this, coming = await give(unit, WEEK), await give(unit, NEXT_WEEK)
        assert [one.id for one in await unit.orders.standing(group.id, ilse.id)] == [this, coming]
        always = await give(unit, Pin(block=1, line=1))
        assert [one.id for one in await unit.orders.standing(group.id, ilse.id)] == [always]
        assert [one.id for one in await unit.orders.of_everybody(group.id, WEEK.until)] == [of_all]
        assert await unit.orders.of_everybody(group.id, NEXT_WEEK.since) == []
