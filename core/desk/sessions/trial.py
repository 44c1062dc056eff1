"""Read, understand and rank with nothing stored: what the command line does, and the checks from outside."""

from collections.abc import Iterable

from core.errors import InputError
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.boards.remarks import numbered_notes
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_session
from core.notation.scores import read_score
from core.notation.values import ReadSession
from core.scores.ranking import rank
from core.scores.values import Board, Entry, ReadScore
from core.sessions.values import Format, Session
from core.understanding.acts import document
from core.understanding.of_people import understand_of_people
from core.understanding.values import Context, Message, OpenQuestion, Understood

__all__ = ["Context", "Message", "OpenQuestion", "Understood", "document", "numbered_notes"]


def session_in(text: str, unit: MassUnit = MassUnit.KG) -> ReadSession:
    """The session in a coach's text, and what in it is not understood."""
    return read_session(text, catalogue(), unit)


def session_in_words(session: Session, unit: MassUnit = MassUnit.KG) -> str:
    """The session as a coach writes it on a board."""
    return write_session(session, unit)


def score_in(text: str, session_text: str, block: int | None = None) -> ReadScore:
    """The score in an athlete's words for a written session; `block` counts from 1. Raises InputError."""
    read = session_in(session_text)
    if read.session is None:
        first = read.not_understood[0]
        raise InputError(f"line {first.line}", f"no session here: {first.text}".rstrip(" :"))
    if block is not None and not 1 <= block <= len(read.session.blocks):
        raise InputError(f"block {block}", f"the session has {len(read.session.blocks)}, counted from 1")
    return read_score(text, read.session, None if block is None else block - 1)


def message_in(message: Message, context: Context, session_text: str | None = None) -> Understood:
    """What a message tells, asks or wishes; `session_text`: today's session. Raises InputError where it is none."""
    if session_text is None:
        return understand_of_people(message, context)
    read = session_in(session_text)
    if read.session is None:
        first = read.not_understood[0]
        raise InputError(f"line {first.line}", f"no session here: {first.text}".rstrip(" :"))
    return understand_of_people(message, context.model_copy(update={"session": read.session}))


def board_of(format_: Format, entries: Iterable[Entry], cap_s: float | None = None) -> Board:
    """The scoreboard of these scores. Raises InputError naming the entry that can't be ranked."""
    return rank(format_, entries, cap_s)
