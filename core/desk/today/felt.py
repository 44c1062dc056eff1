"""How it felt, typed instead of tapped: the newest session's effort, then whether anything hurt.

Read only while that question is unanswered, since a bare `8` is a score otherwise.
"""

from core.desk.commands import AllTold, RateEffort, TellHurt
from core.desk.outcome import Outcome
from core.desk.scores.scoreboard import parts_left, scored_blocks
from core.desk.talk.asked import keeps
from core.desk.today.pain import joints
from core.desk.today.reports import all_told, effort_key, rate_effort, take_up_pain, tell_hurt
from core.desk.versions.version import session_meant
from core.desk.visit import Visit
from core.notation.felt import names_effort, read_effort, read_hurt, says_that_was_all
from core.notation.limits import read_limits
from core.scores.values import Hurt
from core.store.records import SessionRecord


async def as_felt(visit: Visit, text: str, session: int | None) -> Outcome | None:
    effort, hurt = read_effort(text), read_hurt(text)
    if effort is None and hurt is None:
        return None
    record = await just_scored(visit, session, named=names_effort(text))
    if record is None or await is_waiting_for_a_part(visit, record, text):
        return None
    report = await visit.uow.reports.of(record.id, visit.person.id)
    if names_effort(text) or report is None or report.effort is None:
        return await rate_effort(visit, RateEffort(session=record.id, effort=effort)) if effort else None
    return await take_hurt(visit, record, hurt, text) if hurt and report.hurt is None else None


async def just_scored(visit: Visit, session: int | None, *, named: bool = False) -> SessionRecord | None:
    """The session that they told a score of and were asked about.

    Nothing else may be asked meanwhile, except about a score where the effort is `named`: that answers none such.
    """
    if (await visit.profile()).screening is None or await keeps(visit, "named_effort" if named else "effort"):
        return None
    record = await session_meant(visit, session)
    if record is None:
        return None
    left = await parts_left(visit, record, visit.person.id)
    return record if len(left) < len(scored_blocks(record)) or not left else None


async def is_waiting_for_a_part(visit: Visit, record: SessionRecord, text: str) -> bool:
    """Whether what comes next may be another score; not where it says of itself that it is an effort."""
    if names_effort(text) or not await parts_left(visit, record, visit.person.id):
        return False
    return await visit.uow.outbox.by_key(effort_key(visit, record)) is None


async def as_all_told(visit: Visit, text: str, session: int | None) -> Outcome | None:
    """`That's all`, where another part of the session was asked for."""
    record = await just_scored(visit, session) if says_that_was_all(text) else None
    if record is None or not await is_waiting_for_a_part(visit, record, text):
        return None
    return await all_told(visit, AllTold(session=record.id))


async def take_hurt(visit: Visit, record: SessionRecord, hurt: Hurt, text: str) -> Outcome:
    """`Yes, my elbow` names what to spare at once."""
    if hurt is Hurt.PAIN and any(one in joints() for one in read_limits(text).limits or ()):
        return await take_up_pain(visit, record, text)
    return await tell_hurt(visit, TellHurt(session=record.id, hurt=hurt.value))
