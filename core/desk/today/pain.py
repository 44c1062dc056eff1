"""It hurts: where, on which side, how bad. Pain pauses the related movements until the athlete says it's over."""

import re
from collections.abc import Mapping
from datetime import date, datetime, time
from typing import Any, Final

from core.athletes.circumstances import ASKED_OF
from core.athletes.complaints import WITHOUT_SIDES, complained, healed, of_limit, with_limits
from core.athletes.limits import limit, limits
from core.athletes.values import AfterBirth, Complaint, Pregnancy, Profile, Severity
from core.desk.access import admitted
from core.desk.days import RECENT, today_in, zone_of
from core.desk.errors import StalePress, UnknownThing
from core.desk.outcome import DueWish, Outcome, Say
from core.desk.talk.asked import keeps
from core.desk.talk.understood import in_own_words
from core.desk.today.says import FineNow, NothingSpared
from core.desk.versions.commands import LineHurts, ReviewLimit
from core.desk.versions.looking import Looked, look, show_again
from core.desk.versions.says import AskHowBad, AskReview, AskSide, AskWhatHurts, PainNoted, ReviewKept
from core.desk.versions.showing import today_of
from core.desk.versions.version import session_meant
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.body.complaints import (
    ToldPain,
    is_fine_now,
    read_complaint,
    says_it_is_over,
    says_it_will_not_move,
)
from core.notation.body.sides import read_sides
from core.notation.body.stages import read_cleared, read_weeks
from core.notation.talk.chat import is_like_a_score
from core.scaling.values import VersionLine
from core.scores.values import Hurt
from core.store.records import Group, ScoreState, SessionRecord
from core.store.unit import Unit

# The kind of due row that asks again.
REVIEW: Final = "review"

# No pregnancy is longer, in weeks.
LONGEST: Final = 42

# When a day's question is asked: people are up, and haven't trained yet (estimate).
ASKED_AT = time(10, 0)


@admitted
async def line_hurts(visit: Visit, command: LineHurts) -> Outcome:
    """Ask for the first thing that isn't said yet; then spare what hurts, and show what is left."""
    looked = await look(visit, command.version, command.place)
    if command.limit is None:
        return Outcome(becomes=AskWhatHurts(**looked.about, limits=likeliest(looked.line)))
    if command.limit not in joints():
        raise UnknownThing
    if command.side is None and command.limit not in WITHOUT_SIDES:
        return Outcome(becomes=AskSide(**looked.about, limit=command.limit))
    if command.severity is None:
        return Outcome(becomes=AskHowBad(**looked.about, limit=command.limit, side=command.side))
    return await spare(visit, looked, command, command.severity)


async def spare(visit: Visit, looked: Looked, command: LineHurts, severity: Severity) -> Outcome:
    assert command.limit is not None
    today = await today_of(visit, looked.record)
    hurt = complained(await visit.profile(), command.limit, command.side, severity, today)
    await visit.uow.profiles.save(visit.person.id, hurt, visit.now)
    told = of_limit(hurt, command.limit)
    assert told is not None, "it was just told"
    noted = PainNoted(limit=told.limit, side=told.side, severity=told.severity, review_on=told.review_on)
    wish = review_wish(visit.person.id, told, await visit.group(looked.record.group_id))
    again = await show_again(visit, looked.record.id, "pain", looked.place)
    return visit.told(noted) + again + Outcome(due=(wish,))


def spared(
    profile: Profile, person_id: int, limit_ids: tuple[str, ...], text: str, group: Group, now: datetime
) -> tuple[Mapping[str, object], tuple[DueWish, ...]]:
    """What was told in words: facts for the profile, and when to ask about each joint again.

    How bad it is nobody said, so it counts as clear pain.
    """
    today = today_in(group, now)
    hurting = [one for one in limit_ids if one in joints()]
    sides = read_sides(text)
    others = tuple(one for one in limit_ids if one not in hurting)
    kept = with_limits(profile, tuple(dict.fromkeys((*(profile.limits or ()), *others))))
    for one in hurting:
        kept = complained(kept, one, sides.get(one), Severity.CLEAR, today)
    told = [of_limit(kept, one) for one in hurting]
    wishes = tuple(review_wish(person_id, one, group) for one in told if one is not None)
    facts: dict[str, object] = {"limits": kept.limits, "complaints": kept.complaints}
    facts |= {field: getattr(kept, field) for field in ASKED_OF.values()}
    for one in others:
        facts |= stage_told(one, text, today) or {}
    return facts, wishes


def stage_told(
    limit_id: str | None, text: str, today: date, *, bare: bool = False
) -> Mapping[str, object] | None:
    """How far a pregnancy is, or how long ago a birth, as a fact for the profile; None where too little was told.

    A birth without a word of clearance isn't enough: it is asked for.
    """
    weeks = read_weeks(text, bare=bare)
    cleared = read_cleared(text)
    if limit_id == "pregnancy" and weeks is not None and 1 <= weeks <= LONGEST:
        return {"pregnancy": Pregnancy(week=weeks, cleared=bool(cleared), on=today)}
    if limit_id == "after-birth" and weeks is not None and cleared is not None:
        return {"after_birth": AfterBirth(weeks=weeks, cleared=cleared, on=today)}
    return None


def review_wish(person_id: int, told: Complaint, group: Group) -> DueWish:
    """`How is the wrist after a week?`, in the morning of that day on the group's clock."""
    day = told.review_on
    return DueWish(
        key=f"review:{person_id}:{told.limit}:{day.isoformat()}",
        kind=REVIEW,
        at=datetime.combine(day, ASKED_AT, zone_of(group)),
        refs={"person": person_id, "group": group.id, "limit": told.limit, "day": day.toordinal()},
    )


async def as_complaint(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`My left wrist hurts`, or it is fine again; None for all else, and where something is asked about pain."""
    told = read_complaint(text)
    if told is None or is_like_a_score(text) or await tells_more(visit, text):
        return None
    memberships = await visit.memberships()
    if not memberships or await keeps(visit, "pain"):
        return None
    await visit.must_consent()
    if told.kind == "hurts" and is_fine_now(text):
        return visit.told(FineNow(limits=told.limits))
    group = await visit.group(memberships[0].group_id)
    tell = tell_pain if told.kind == "hurts" else tell_over
    noted = await tell(visit, told, text, group)
    done = await done_lately(visit)
    if done is None:
        return noted + await version_again(visit)
    if told.kind == "hurts":
        await visit.uow.reports.tell(done.id, visit.person.id, visit.now, hurt=Hurt.PAIN)
    return noted


# Beside one of these what hurts is one telling of several.
_MORE: Final = frozenset({"scored", "corrects", "has", "got", "lost", "has_minutes", "can"})
_NUMBER: Final = re.compile(r"[0-9]")


async def tells_more(visit: Visit, text: str) -> bool:
    """`24 minutes, my knee hurt a little in the last round`: what else it tells is heard with it."""
    if not _NUMBER.search(text):
        return False
    record = await session_meant(visit, None)
    told = in_own_words(text, record.session if record else None)
    return not _MORE.isdisjoint(act.act for act in told.acts)


async def as_over(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`It's fine again`: what was told last. What is only better is asked about, as it may still have to be spared."""
    how = says_it_is_over(text)
    if how is None or not await visit.memberships() or await keeps(visit, "pain"):
        return None
    complaints = (await visit.profile()).complaints
    if not complaints:
        return None
    told = max(reversed(complaints), key=lambda one: one.since)
    group = await visit.group((await visit.memberships())[0].group_id)
    if how == "better":
        return visit.told(AskReview(complaint=told, group=group.id))
    return await tell_over(visit, ToldPain("over", (told.limit,), {}), text, group) + await version_again(
        visit
    )


async def done_lately(visit: Visit) -> SessionRecord | None:
    """The session before them, if they told a score of it: there is nothing left of it to make anew."""
    record = await session_meant(visit, None)
    if record is None or record.posted_at is None or record.posted_at < visit.now - RECENT:
        return None
    scores = await visit.uow.scores.of_person(record.id, visit.person.id)
    return record if any(one.state is ScoreState.COUNTS for one in scores) else None


async def tell_pain(
    visit: Visit, told: ToldPain, text: str, group: Group, *, comforted: bool = False
) -> Outcome:
    today = today_in(group, visit.now)
    mistaken = [one.limit for one in (await visit.profile()).complaints if one.since == today]
    profile = healed(await visit.profile(), *(one for one in told.others if one in mistaken))
    facts, wishes = spared(profile, visit.person.id, told.limits, text, group, visit.now)
    hurt = profile.model_copy(update=dict(facts))
    await visit.uow.profiles.save(visit.person.id, hurt, visit.now)
    noted = Outcome(due=wishes)
    for one in (of_limit(hurt, limit_id) for limit_id in told.limits):
        assert one is not None, "it was just told"
        noted += visit.told(
            PainNoted(
                limit=one.limit,
                side=one.side,
                severity=one.severity,
                review_on=one.review_on,
                comforted=comforted,
                asks_side=one.side is None and one.limit not in WITHOUT_SIDES,
            )
        )
    return noted


async def as_stiffness(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`Can't bend it back`, of the pain of today: as bad as pain gets, and somebody should look at it."""
    memberships = await visit.memberships() if says_it_will_not_move(text) else []
    if not memberships or await keeps(visit, "pain"):
        return None
    group = await visit.group(memberships[0].group_id)
    profile, today = await visit.profile(), today_in(group, visit.now)
    told = [one for one in profile.complaints if one.since == today and of_limit(profile, one.limit)]
    if not told:
        return None
    worse = complained(profile, told[-1].limit, told[-1].side, Severity.BAD, today)
    await visit.uow.profiles.save(visit.person.id, worse, visit.now)
    now = worse.complaints[-1]
    noted = PainNoted(limit=now.limit, side=now.side, severity=now.severity, review_on=now.review_on)
    return visit.told(noted)


async def tell_over(visit: Visit, told: ToldPain, _text: str, _group: Group) -> Outcome:
    """Only the athlete says that it's over, and they just did."""
    profile = await visit.profile()
    over = [one for one in told.limits if one in (profile.limits or ())]
    said = Outcome()
    for one in over:
        before = of_limit(profile, one)
        side = before.side if before else None
        said += visit.told(ReviewKept(limit=one, side=side, how="gone", review_on=None))
    await visit.uow.profiles.save(visit.person.id, healed(profile, *over), visit.now)
    return said if over else visit.told(NothingSpared(limits=told.limits))


async def version_again(visit: Visit) -> Outcome:
    """The version that is before them, made anew with what they told."""
    record = await session_meant(visit, None)
    if record is None or record.posted_at is None or record.posted_at < visit.now - RECENT:
        return Outcome()
    if await seen_by(visit, record, visit.person) is None:
        return Outcome()
    return await show_again(visit, record.id, "pain")


async def review_due(uow: Unit, _: datetime, refs: Mapping[str, Any]) -> Outcome:
    """The day to ask has come; silent where it was said to be over, or put off, since."""
    person = await uow.people.get(refs["person"])
    chat = await uow.chats.private_of(refs["person"])
    if person is None or chat is None or not await uow.consents.given(person.id):
        return Outcome()
    told = of_limit(await uow.profiles.get(person.id, name=person.name), refs["limit"])
    if told is None or told.review_on != date.fromordinal(refs["day"]):
        return Outcome()
    return Outcome((Say(chat.id, AskReview(complaint=told, group=refs["group"])),))


@admitted
async def review_limit(visit: Visit, command: ReviewLimit) -> Outcome:
    """Only the athlete says that it's over; until then it is asked about again."""
    await visit.must_consent()
    profile = await visit.profile()
    told = of_limit(profile, command.limit)
    if told is None or told.review_on.toordinal() != command.asked:
        raise StalePress
    group = await visit.group(command.group)
    if command.how == "gone":
        await visit.uow.profiles.save(visit.person.id, healed(profile, told.limit), visit.now)
        kept = ReviewKept(limit=told.limit, side=told.side, how=command.how, review_on=None)
        return visit.told(kept) + Outcome(settles=True)
    today = today_in(group, visit.now)
    severity = AFTER[command.how].get(told.severity, told.severity)
    hurt = complained(profile, told.limit, told.side, severity, today)
    await visit.uow.profiles.save(visit.person.id, hurt, visit.now)
    again = of_limit(hurt, told.limit)
    assert again is not None, "it was just told"
    kept = ReviewKept(limit=again.limit, side=again.side, how=command.how, review_on=again.review_on)
    wish = review_wish(visit.person.id, again, group)
    return visit.told(kept) + Outcome(due=(wish,), settles=True)


# What an answer makes of how bad it was.
AFTER: Final[Mapping[str, Mapping[Severity, Severity]]] = {
    "better": {Severity.BAD: Severity.CLEAR, Severity.CLEAR: Severity.LITTLE},
    "same": {},
    "worse": {Severity.LITTLE: Severity.CLEAR, Severity.CLEAR: Severity.BAD},
}


def joints() -> tuple[str, ...]:
    """What may hurt, muscles too, by the limits."""
    return tuple(one.id for one in limits() if one.may_hurt)


def likeliest(line: VersionLine) -> tuple[str, ...]:
    """All joints and the muscles that this movement loads, what it loads most before the others."""
    demands = set(catalogue().variant(f"{line.movement}/{line.variant}")[1].demands)

    def loads(one: str) -> int:
        return len(demands & set(limit(one).rules_out)) * 2 + len(demands & set(limit(one).lightens))

    named = [one for one in joints() if limit(one).kind == "joint" or loads(one) > 1]
    return tuple(sorted(named, key=lambda one: -loads(one)))
