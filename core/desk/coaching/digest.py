"""The coach's evening: who trained, who looked and hasn't told, who was in class, what waits."""

from collections.abc import Collection, Mapping, Sequence
from datetime import date, datetime, time, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from core.athletes.values import Screening
from core.calendar.occurrences import instant
from core.desk.classes.meetings import Meeting, meetings_on, shown
from core.desk.coached import names_in
from core.desk.coaching.absence import away_on
from core.desk.coaching.arriving import arriving
from core.desk.coaching.digest_says import ClassDigest, Digest, SessionDigest, Trained
from core.desk.days import clock_of
from core.desk.outcome import DueWish, Outcome, Say
from core.desk.scores.progress import scored_of
from core.desk.visit import Visit
from core.forecast.progress import beside_forecasts, is_suspicious
from core.forecast.values import COMPARABLE
from core.scaling.needs import calling
from core.scores.text import in_words
from core.scores.values import Hurt
from core.store.records import (
    Group,
    Membership,
    Purpose,
    Role,
    ScoreRecord,
    ScoreState,
    SessionRecord,
    SessionState,
    VersionRecord,
)
from core.store.unit import Unit

DIGEST_AT = time(20, 0)
DIGEST = "digest"


async def digests_of(uow: Unit, now: datetime, group: Group, day: date) -> tuple[DueWish, ...]:
    """A digest for every coach who wants one on the evening of a day with a session, once per day."""
    return tuple(
        [
            DueWish(
                key=key_of(group.id, coach.person_id, day),
                kind=DIGEST,
                at=at,
                refs=refs_of(group, coach, day),
            )
            for coach in await uow.groups.members(group.id, role=Role.COACH)
            if (await uow.habits.get(coach.person_id)).wants_digest
            for at in [await moment_of(uow, now, group, coach.person_id, day)]
        ]
    )


def key_of(group_id: int, coach_id: int, day: date) -> str:
    return f"{DIGEST}:{group_id}:{coach_id}:{day:%Y%m%d}"


def refs_of(group: Group, coach: Membership, day: date) -> dict[str, int | str]:
    return {"group": group.id, "person": coach.person_id, "day": int(f"{day:%Y%m%d}")}


async def moment_of(uow: Unit, now: datetime, group: Group, coach_id: int, day: date) -> datetime:
    """The coach's hour on that day by the group's clock; posted later than that, the next evening."""
    at = (await uow.habits.get(coach_id)).digest_at or DIGEST_AT
    zone = group.zone or "UTC"
    evening = instant(datetime.combine(day, at), zone)
    return evening if evening > now else instant(datetime.combine(day + timedelta(days=1), at), zone)


async def plan_digests_anew(visit: Visit) -> None:
    """The coach chose another hour, or none: what waits for this evening moves there, or isn't due any more."""
    wanted = (await visit.uow.habits.get(visit.person.id)).wants_digest
    for member in await visit.coached():
        group = await visit.group(member.group_id)
        day = visit.now.astimezone(ZoneInfo(group.zone or "UTC")).date()
        if await visit.uow.sessions.posted_on(group.id, day) is None:
            continue
        key = key_of(group.id, visit.person.id, day)
        if not wanted:
            await visit.uow.dues.drop(key)
            continue
        at = await moment_of(visit.uow, visit.now, group, visit.person.id, day)
        await visit.uow.dues.arm(key, DIGEST, at, refs_of(group, member, day))


async def digest_due(uow: Unit, now: datetime, refs: Mapping[str, Any]) -> Outcome:
    """The moment of a digest; silent where the person no longer coaches the group, or wants none any more.

    A day whose only session was withdrawn has nothing to tell.
    """
    group = await uow.groups.get(refs["group"])
    coach = await uow.groups.membership(refs["person"], refs["group"])
    chat = await uow.chats.private_of(refs["person"])
    if group is None or coach is None or coach.role is not Role.COACH or chat is None:
        return Outcome()
    if not (await uow.habits.get(coach.person_id)).wants_digest:
        return Outcome()
    day = datetime.strptime(str(refs["day"]), "%Y%m%d").date()  # noqa: DTZ007 - a day
    clock = await clock_of(uow, coach.person_id, group)
    said = await digest_of(uow, now, group, day, clock)
    if not said.sessions and not said.classes:
        return Outcome()
    await uow.words.told(await uow.words.to_tell(group.id, day), day)
    return Outcome((Say(chat.id, said, Purpose.ANSWER, key=key_of(group.id, coach.person_id, day)),))


async def digest_is_for(uow: Unit, refs: Mapping[str, Any]) -> tuple[int, int] | None:
    """The group whose coach a digest is for, and which user that is."""
    coach = await uow.people.get(refs["person"])
    return (refs["group"], coach.user_id) if coach else None


async def digest_of(uow: Unit, now: datetime, group: Group, day: date, clock: ZoneInfo) -> Digest:
    """What became of a day, as far as it was told; times on the reader's clock."""
    away = await away_on(uow, group.id, day)
    everybody = await uow.groups.members(group.id, role=Role.ATHLETE)
    athletes = [one for one in everybody if one.person_id not in away]
    posted = await uow.sessions.all_posted_on(group.id, day)
    versions = {
        (record.id, one.person_id): await uow.versions.current(record.id, one.person_id)
        for record in posted
        for one in everybody
    }
    looked_at = {record.id: await uow.oks.given(record.id, record.revision) for record in posted}
    no_session = await stopped(uow, athletes)
    met = [one for one in await meetings_on(uow, group.id, day) if one.occurrence.ends <= now]
    return Digest(
        group=group.title,
        day=day,
        sessions=await session_digests(uow, group, posted, everybody, away, versions),
        classes=tuple([await class_digest(uow, one, clock) for one in met]),
        needs=tuple(
            one.person.name
            for one in athletes
            if one.person.name not in no_session
            and any(
                needs_coach(versions.get((r.id, one.person_id))) and one.person_id not in looked_at[r.id]
                for r in posted
                if r.state is SessionState.POSTED
            )
        ),
        arriving=await arriving(uow, athletes),
        stopped=no_session,
        words=await words_for_coach(uow, group, day, athletes),
        above=await far_above(uow, posted, athletes),
        strained=await strained(uow, posted, athletes),
    )


async def far_above(
    uow: Unit, posted: Sequence[SessionRecord], athletes: Sequence[Membership]
) -> tuple[str, ...]:
    """Of those who scored: whose last scores are all far above what was expected of them. For the coach alone."""
    told = {score.person_id for record in posted for _, score in await uow.scores.standing_in(record.id)}
    names = []
    for one in athletes:
        if one.person_id in told:
            done = await uow.scores.done_by(one.person_id, COMPARABLE)
            if is_suspicious(beside_forecasts(found for each in done for found in scored_of(each))):
                names.append(one.person.name)
    return tuple(names)


# Of 10, on Foster's scale: nearly all somebody has. Who has told of fewer sessions is a beginner here (estimates).
NEARLY_ALL, FIRST_SESSIONS = 9, 4
# So many scored parts are at least the first sessions.
LOOKS_BACK = 24


async def strained(
    uow: Unit, posted: Sequence[SessionRecord], athletes: Sequence[Membership]
) -> tuple[str, ...]:
    """Of those who told how hard one of these was: who should hardly go on so. For the coach alone."""
    hard = {
        one.person_id
        for record in posted
        for one in await uow.reports.all_of(record.id)
        if is_nearly_all(one.effort)
    }
    names = []
    for one in athletes:
        if one.person_id in hard:
            done = await uow.scores.done_by(one.person_id, LOOKS_BACK)
            efforts = tuple({found.session_id: found.effort for found in done}.values())
            if len(efforts) < FIRST_SESSIONS or all(is_nearly_all(effort) for effort in efforts[:2]):
                names.append(one.person.name)
    return tuple(names)


def is_nearly_all(effort: int | None) -> bool:
    return effort is not None and effort >= NEARLY_ALL


async def words_for_coach(
    uow: Unit, group: Group, day: date, athletes: Sequence[Membership]
) -> tuple[tuple[str, str], ...]:
    names = {one.person_id: one.person.name for one in athletes}
    found = await uow.words.to_tell(group.id, day)
    return tuple((names[one.person_id], one.text) for one in found if one.person_id in names)


def needs_coach(version: VersionRecord | None) -> bool:
    return version is not None and bool(calling(version.version.needs_coach))


async def stopped(uow: Unit, athletes: Sequence[Membership]) -> tuple[str, ...]:
    """Those whose answers to the first questions allow no version for now."""
    profiles = [await uow.profiles.get(one.person_id, one.person.name) for one in athletes]
    return tuple(profile.name for profile in profiles if profile.screening is Screening.STOP)


async def session_digests(
    uow: Unit,
    group: Group,
    posted: Sequence[SessionRecord],
    athletes: Sequence[Membership],
    away: Collection[int],
    versions: Mapping[tuple[int, int], VersionRecord | None],
) -> tuple[SessionDigest, ...]:
    """Each session once, and nobody who told, or is away, is waited for.

    Of a post that was changed or withdrawn only what was told of it.
    """
    changed = {one.replaces_id for one in posted if one.state is SessionState.POSTED}
    shown, done = [], set[int]()
    for record in sorted(posted, key=lambda one: one.id):
        still_to_do = [
            one
            for one in athletes
            if one.person_id not in done
            and (one.person_id not in away or await counting(uow, record.id, one.person_id))
        ]
        found = await session_digest(uow, group, record, still_to_do, versions)
        withdrawn = record.state is SessionState.WITHDRAWN
        if record.id not in changed and not withdrawn:
            shown.append(found)
            continue
        done |= {one.person_id for one in still_to_do if await counting(uow, record.id, one.person_id)}
        if found.trained or found.pain_count:
            mark = {"withdrawn": withdrawn, "changed": not withdrawn}
            shown.append(found.model_copy(update={**mark, "opened": (), "unseen": ()}))
    return tuple(shown)


async def session_digest(
    uow: Unit,
    group: Group,
    record: SessionRecord,
    athletes: Sequence[Membership],
    versions: Mapping[tuple[int, int], VersionRecord | None],
) -> SessionDigest:
    told = {one.person_id: await counting(uow, record.id, one.person_id) for one in athletes}
    silent = [one for one in athletes if not told[one.person_id]]
    never = [one for one in silent if not versions.get((record.id, one.person_id))]
    no_version = {*await stopped(uow, never), *(await arriving(uow, never)).names}
    hurt = {one.person_id for one in await uow.reports.all_of(record.id) if one.hurt is Hurt.PAIN}
    words = await uow.scores.pains_in(record.id)
    pains = [(one, pain_of(told[one.person_id], words, one.person_id in hurt)) for one in athletes]
    return SessionDigest(
        title=record.session.title,
        trained=tuple(trained(one, told[one.person_id], group) for one in athletes if told[one.person_id]),
        opened=tuple(one.person.name for one in silent if versions.get((record.id, one.person_id))),
        unseen=tuple(one.person.name for one in never if one.person.name not in no_version),
        pains=tuple((one.person.name, pain) for one, pain in pains if pain is not None and one.shares_limits),
        pain_count=sum(pain is not None for _, pain in pains),
    )


async def counting(uow: Unit, session_id: int, person_id: int) -> list[ScoreRecord]:
    """This athlete's scores that stand, in the order of the blocks."""
    found = await uow.scores.of_person(session_id, person_id)
    stand = [one for one in found if one.state not in {ScoreState.CORRECTED, ScoreState.WITHDRAWN}]
    return sorted(stand, key=lambda one: one.block)


def trained(member: Membership, scores: Sequence[ScoreRecord], group: Group) -> Trained:
    scaled = all(one.score.scaled for one in scores)
    words = tuple(
        in_words(one.score, group.units)
        + (", scaled" if one.score.scaled and not scaled else "")
        + (", not counted" if one.state is ScoreState.NOT_COUNTED else "")
        for one in scores
    )
    return Trained(name=member.person.name, scores=words, scaled=scaled)


def pain_of(scores: Sequence[ScoreRecord], words: Mapping[int, str], hurt: bool) -> str | None:
    """Where it hurt, in the athlete's words; empty where that wasn't told; None for no pain."""
    told = [words[one.id] for one in scores if one.id in words]
    return told[0] if told else "" if hurt else None


async def class_digest(uow: Unit, meeting: Meeting, clock: ZoneInfo) -> ClassDigest:
    people = await uow.sign_ups.coming(meeting.class_id, meeting.slot)
    names = await names_in(uow, meeting.record.group_id)
    by_answer = {
        answer: tuple(
            names.get(person.id, person.name) for person, sign_up in people if sign_up.attended is answer
        )
        for answer in (True, False, None)
    }
    return ClassDigest(
        date=shown(meeting, clock.key),
        there=by_answer[True],
        missing=by_answer[False],
        untold=by_answer[None],
    )
