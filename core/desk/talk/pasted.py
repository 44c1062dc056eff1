"""A coach types a session: on a board's rows, in one breath, or so that hardly anything of it can be read."""

from typing import Final

from core.desk.coached import coached_athletes, coached_groups
from core.desk.commands import DraftSession
from core.desk.outcome import Outcome
from core.desk.sessions.posting import draft_session
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.boards.ladders import with_an_end
from core.notation.boards.session import read_session
from core.notation.people import find_name
from core.notation.talk.chat import is_like_a_score, is_like_a_session, tells_what_was_done
from core.notation.talk.run_on import in_rows
from core.notation.values import ReadSession

# A coach's text of this many line breaks was meant as a session, even if hardly anything in it can be read.
BOARD_BREAKS: Final = 2


async def as_session(visit: Visit, text: str, _: int | None) -> Outcome | None:
    if not is_like_a_session(text) or await names_an_athlete(visit, text):
        return None
    words = in_rows(text) if await coached_groups(visit) else text
    return await draft_session(visit, DraftSession(text=words))


async def names_an_athlete(visit: Visit, text: str) -> bool:
    """Whether one line speaks of one of theirs: `give Bo 8 push-ups instead` is nobody else's session."""
    return "\n" not in text.strip() and find_name(text, tuple(await coached_athletes(visit))) is not None


async def as_pasted_session(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """A coach's words that say how something is done, and what: a session, whatever else they look like."""
    is_line = "\n" not in text.strip()
    if not await coached_groups(visit) or (is_line and await names_an_athlete(visit, text)):
        return None
    words = in_rows(text)
    read = read_session(words, catalogue())
    is_one = holds_several_lines(read) and not tells_what_was_done(text) if is_line else read.is_clear
    if not (read.holds_work and ((is_like_a_score(text) and not is_line) or (read.format_known and is_one))):
        return None
    return await draft_session(visit, DraftSession(text=words))


def holds_several_lines(read: ReadSession) -> bool:
    """Whether there are two things to do at least, and each line that is in doubt has its guess."""
    lines = sum(len(block.lines) for block in read.session.blocks) if read.session else 0
    return lines > 1 and all(one.guess or one.looks_like == "note" for one in read.not_understood)


async def as_unread_session(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """What a coach typed of several lines, or one that can only be work: the read-back asks for the rest."""
    if not await coached_groups(visit) or await names_an_athlete(visit, text):
        return None
    if text.strip().count("\n") < BOARD_BREAKS and with_an_end(text) is None:
        read = read_session(text, catalogue())
        if not (read.holds_work and all(one.guess for one in read.not_understood)):
            return None
    return await draft_session(visit, DraftSession(text=text))
