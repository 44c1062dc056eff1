"""How it felt, typed instead of tapped: the newest session's effort, then whether anything hurt.

Read only while that question is unanswered, since a bare `8` is a score otherwise.
"""

import re
from typing import Final, Literal, NamedTuple

from core.desk.commands import AllTold, RateEffort, TellHurt
from core.desk.outcome import Outcome
from core.desk.scores.scoreboard import parts_left, scored_blocks
from core.desk.talk.asked import keeps
from core.desk.today.pain import joints
from core.desk.today.reports import all_told, effort_key, rate_effort, take_up_pain, tell_hurt
from core.desk.today.says import AskEffort
from core.desk.versions.version import post_meant
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.notation.body.complaints import read_complaint
from core.notation.body.felt import (
    counts_some_of,
    effort_beside,
    effort_told_first,
    read_effort,
    read_hurt,
    says_that_was_all,
)
from core.notation.body.limits import read_limits
from core.notation.talk.chat import is_like_a_score
from core.notation.talk.yes_no import calls_it_off, says_it_is_so
from core.scores.values import Hurt
from core.store.records import SessionRecord
from core.understanding.acts import Effort
from core.understanding.understand import BESIDE, understand
from core.understanding.values import Context, Message


async def as_felt(visit: Visit, text: str, session: int | None) -> Outcome | None:
    named = await is_named(visit, text)
    record = await just_scored(visit, session, named=named)
    if record is None or await is_waiting_for_a_part(visit, record, text):
        return None
    report = await visit.uow.reports.of(record.id, visit.person.id)
    asks_effort = report is None or report.effort is None
    if report and report.effort is not None and report.hurt and not named:
        return None
    if asks_effort and (says_it_is_so(text) or calls_it_off(text)):
        return visit.told(AskEffort(session=record.id))  # a yes says neither how hard it was nor what hurt
    felt = felt_in(text, "effort" if asks_effort else "pain")
    hurt = None if report and report.hurt else felt.hurt
    rated = None
    if felt.effort and (asks_effort or named):
        rated = await rate_effort(visit, RateEffort(session=record.id, effort=felt.effort))
    if hurt is None:
        return rated
    # What was told with the effort isn't asked behind it.
    return await take_hurt(visit, record, hurt, text) + Outcome(settles=rated is not None)


async def as_named_effort(visit: Visit, text: str, session: int | None) -> Outcome | None:
    """Before what hurts is read: `rpe 8, shoulder niggled a bit` tells both, `very hard. shoulder pain` too."""
    both = effort_told_first(text) is not None and read_complaint(text) is not None
    return await as_felt(visit, text, session) if both or await is_named(visit, text) else None


async def is_named(visit: Visit, text: str) -> bool:
    """`rpe 8` is an effort whatever is asked; `maybe a 6` beside a question about a score, where it is like none."""
    if effort_beside(text) is not None and not is_like_a_score(text):
        return True
    question = await visit.uow.questions.open_in(visit.chat)
    says_felt = re.search(r"\bfe(?:lt|els?)\b", text.casefold())
    if (
        question is None
        or question.kind != "score"
        or (is_like_a_score(text) and not says_felt)
        or counts_some_of(text)
    ):
        return False
    told = understand(Message(text=text), Context(question="effort"))
    names = {act.act for act in told.acts} - BESIDE
    return "effort" in names and not told.unread and names <= {"effort", *_FELT}


class Felt(NamedTuple):
    """What of the two was told."""

    effort: int | None
    hurt: Hurt | None


def felt_in(text: str, asked: Literal["effort", "pain"]) -> Felt:
    """As it is understood where the words tell nothing else; by their shape where they aren't understood."""
    told = understand(Message(text=text), Context(question=asked))
    names = {act.act for act in told.acts} - BESIDE
    complaint = read_complaint(text)
    complains = complaint is not None and complaint.kind == "hurts"
    if told.unread or not names or names - _FELT.keys() - {"effort"}:
        hurt = Hurt.PAIN if complains else read_hurt(text)
        return Felt(read_effort(text) or effort_beside(text) or effort_told_first(text), hurt)
    efforts = [act.value for act in told.acts if isinstance(act, Effort)]
    in_words = read_effort(text) or effort_told_first(text)
    hurts = [_FELT[act.act] for act in told.acts if act.act in _FELT] + [Hurt.PAIN] * complains
    return Felt(
        round(efforts[0]) if efforts and efforts[0] else in_words,
        max(hurts, key=_WORST.index, default=None),
    )


_FELT: Final = {"nothing_hurt": Hurt.NO, "sore": Hurt.SORE, "hurt": Hurt.PAIN}
_WORST: Final = (Hurt.NO, Hurt.SORE, Hurt.PAIN)


async def just_scored(visit: Visit, session: int | None, *, named: bool = False) -> SessionRecord | None:
    """The session that they told a score of and were asked about.

    Nothing else may be asked meanwhile, unless the effort is `named`: that answers nothing else, and needs no score,
    only a version that they have seen.
    """
    if (await visit.profile()).screening is None or await keeps(visit, "named_effort" if named else "effort"):
        return None
    record = await post_meant(visit, session)
    if record is None:
        return None
    if named and await seen_by(visit, record, visit.person) is not None:
        return record
    left = await parts_left(visit, record, visit.person.id)
    return record if len(left) < len(scored_blocks(record)) or not left else None


async def is_waiting_for_a_part(visit: Visit, record: SessionRecord, text: str) -> bool:
    """Whether what comes next may be another score; not where it says of itself that it is an effort."""
    if await is_named(visit, text) or not await parts_left(visit, record, visit.person.id):
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
