"""How it felt, typed instead of tapped: the newest session's effort, then whether anything hurt.

Read only while that question is unanswered, since a bare `8` is a score otherwise.
"""

from core.desk.commands import RateEffort, TellHurt
from core.desk.outcome import Outcome
from core.desk.pain import joints
from core.desk.reports import rate_effort, take_up_pain, tell_hurt
from core.desk.scoreboard import scored_blocks
from core.desk.versions import session_meant
from core.desk.visit import Visit
from core.notation.felt import names_effort, read_effort, read_hurt
from core.notation.limits import read_limits
from core.scores.values import Hurt
from core.store.records import ScoreState, SessionRecord


async def as_felt(visit: Visit, text: str, session: int | None) -> Outcome | None:
    effort, hurt = read_effort(text), read_hurt(text)
    if effort is None and hurt is None:
        return None
    record = await just_scored(visit, session)
    if record is None:
        return None
    report = await visit.uow.reports.of(record.id, visit.person.id)
    if names_effort(text) or report is None or report.effort is None:
        return await rate_effort(visit, RateEffort(session=record.id, effort=effort)) if effort else None
    return await take_hurt(visit, record, hurt, text) if hurt and report.hurt is None else None


async def just_scored(visit: Visit, session: int | None) -> SessionRecord | None:
    """The session that they told a score of and were asked about; nothing else may be asked meanwhile.

    All of its scores: else what comes next may be another of them.
    """
    if (await visit.profile()).screening is None or await visit.uow.questions.open_in(visit.chat):
        return None
    record = await session_meant(visit, session)
    scores = await visit.uow.scores.of_person(record.id, visit.person.id) if record else []
    told = {one.block for one in scores if one.state is ScoreState.COUNTS}
    return record if record and told >= set(scored_blocks(record)) else None


async def take_hurt(visit: Visit, record: SessionRecord, hurt: Hurt, text: str) -> Outcome:
    """`Yes, my elbow` names what to spare at once."""
    if hurt is Hurt.PAIN and any(one in joints() for one in read_limits(text).limits or ()):
        return await take_up_pain(visit, record, text)
    return await tell_hurt(visit, TellHurt(session=record.id, hurt=hurt.value))
