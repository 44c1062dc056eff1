"""A coach asks of somebody's version why it is so, or whether its loads are right: from what it was worked out with."""

from collections.abc import Sequence

from core.desk.coached import coached_athletes, coached_ids
from core.desk.coaching.holds import session_with
from core.desk.coaching.in_view import in_view
from core.desk.coaching.ordering_says import NothingToLookAt
from core.desk.coaching.overseeing import try_on
from core.desk.coaching.reasons_says import TheirLine, WhyTheirs
from core.desk.errors import UnknownThing
from core.desk.outcome import Outcome
from core.desk.scores.progress import how_they_do
from core.desk.versions.showing import written_at
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.notation.coaching.asking import Question, asked_of_version
from core.scaling.values import Because, Change, Version
from core.store.records import Membership, SessionRecord
from core.understanding.acts import Order
from core.understanding.ordering import movements_named


async def as_asked_of(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`Why did Bo get kneeling push-ups`; None where it is about nobody of theirs, or no version."""
    athletes = await coached_athletes(visit)
    asked = asked_of_version(text, tuple(athletes)) if athletes else None
    name = None if asked is None else asked.name or await in_view(visit, athletes)
    if asked is None or name is None:
        return None
    athlete = athletes[name]
    if asked.question == "more":
        return await how_they_do(visit, athlete, await coached_ids(visit))
    record = await session_with(visit, Order(text=text, person=name), await visit.group(athlete.group_id))
    try:
        return (
            await why_theirs(visit, record, athlete, text, asked.question)
            if record
            else no_version(visit, athlete)
        )
    except UnknownThing:
        return no_version(visit, athlete)


def no_version(visit: Visit, athlete: Membership) -> Outcome:
    return visit.told(NothingToLookAt(athlete=athlete.person.name))


async def why_theirs(
    visit: Visit, record: SessionRecord, athlete: Membership, text: str, question: Question
) -> Outcome:
    """What they have seen, else what they would get; why it spares what, only where they let their coach see it."""
    seen = await seen_by(visit, record, athlete.person)
    one = await try_on(visit, record, athlete)
    version = seen.version if seen else one.version
    assert isinstance(version, Version), "who has no version is not looked at"
    shown = frozenset(one.profile.limits or ()) if athlete.shares_limits else frozenset[str]()
    told = WhyTheirs(
        athlete=athlete.person.name,
        person=athlete.person_id,
        session=record.id,
        title=record.session.title,
        day=record.day,
        question=question,
        lines=tuple(lines_asked_about(record, version, text, question)),
        shown=shown,
        units=(await visit.group(record.group_id)).units,
    )
    return visit.told(told, session=record.id, person=athlete.person_id)


def lines_asked_about(
    record: SessionRecord, version: Version, text: str, question: Question
) -> Sequence[TheirLine]:
    """Those of a movement that is named; else all that became something else, or have a load."""
    lines = [TheirLine(written=written_at(record.session, spot), line=line) for spot, line in version.spots]
    named = movements_named(text)
    meant = [one for one in lines if named & {one.written, one.line.movement}]
    if meant:
        return meant
    if question == "load":
        return [one for one in lines if one.line.load_kg is not None]
    return [
        one
        for one in lines
        if one.line.change is not Change.NONE or one.line.reason.because is not Because.AS_WRITTEN
    ]
