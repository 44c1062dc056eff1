"""What was typed while a question is open, looked at: whether it asks, tells of a score, or comes too late."""

import re
from typing import Final, get_args

from core.desk.days import today_in
from core.desk.joining.entry import SCREENING, ask_entry_again
from core.desk.outcome import Outcome
from core.desk.scores.whose import own_score
from core.desk.talk.asked import OfScore
from core.desk.talk.understood import in_own_words, matter
from core.desk.versions.version import post_meant, session_meant
from core.desk.visit import Visit
from core.notation.part_labels import find_part
from core.notation.scores import read_score
from core.notation.scores.lighter import says_less
from core.notation.talk.ages import age_told, read_age
from core.notation.talk.chat import is_beside_a_score, is_like_a_score
from core.notation.talk.yes_no import calls_it_off, says_it_is_so
from core.notation.unknowing import is_new_to_it
from core.scores.values import Doubt
from core.store.records import OpenQuestion
from core.understanding import acts as a

_NUMBER: Final = re.compile(r"[0-9]")


def only_asks(text: str, question: OpenQuestion) -> bool:
    """`What does amrap mean`: nothing of it tells anything."""
    acts = matter(in_own_words(text, open_=question))
    return bool(acts) and all(isinstance(act, get_args(a.Asked)) for act in acts)


def is_said_of_score(asked: OfScore, text: str, person: int) -> bool:
    """A number, a yes or a no, that they can't tell, what tells of a score without one; else it is another matter.

    Whether a coach's words are theirs is a question of yes or no: another number is told afresh. A coach who was asked
    about somebody else's score goes on to other matters: `Petra is 62` is no answer.
    """
    if says_it_is_so(text) or calls_it_off(text):
        return True
    if asked.whose:
        return False
    if asked.athlete not in {None, person}:
        return is_like_a_score(text) or find_part(text) is not None
    tells = _NUMBER.search(text) or is_like_a_score(text) or is_new_to_it(text) or says_less(text)
    return not is_beside_a_score(text) and bool(tells)


async def is_stale(visit: Visit, question: OpenQuestion) -> bool:
    """What was asked about a score of another day, nobody wants to be asked once more."""
    if question.kind != "score":
        return False
    record = await visit.uow.sessions.find(question.refs["session"], await visit.group_ids())
    return record is None or record.day < today_in(await visit.group(record.group_id), visit.now)


_DID: Final = re.compile(r"\b(?:did|done|finished|got|managed|took)\b", re.IGNORECASE)


async def reads_as_score(visit: Visit, text: str, session: int | None) -> bool:
    """`Did the whole thing today lads 15.40`, where something else was asked: of the session before them."""
    record = await post_meant(visit, session) if _DID.search(text) and _NUMBER.search(text) else None
    if record is None:
        return False
    read = read_score(text, record.session)
    return read.score is not None and (read.sure or read.doubt is Doubt.WHICH_BLOCK)


def is_age_asked_for(question: OpenQuestion, text: str) -> bool:
    return question.kind == SCREENING and not question.refs["answers"] and read_age(text) is not None


def tells_age_asked_for(question: OpenQuestion, text: str) -> bool:
    """With more beside it: `45, and I have asthma`."""
    first = question.kind == SCREENING and not question.refs["answers"]
    return first and age_told(text, asked=True) is not None


async def score_before_entry(visit: Visit, text: str) -> Outcome:
    """A score counts whoever tells it; the question about consent or health stays, as it was no answer."""
    told = await own_score(visit, text, None)
    posted = await session_meant(visit, None)
    if told is not None and posted:
        return told
    return (told or Outcome()) + (await ask_entry_again(visit) or Outcome())
