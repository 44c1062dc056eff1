"""A change of a whole part, or of what the session is called: `drop the cooldown`, `call it Midweek grind`."""

import re
from datetime import date, timedelta
from typing import Final

from core.measures import MassUnit
from core.movements.lookup import Catalogue
from core.notation.boards.headings import heading
from core.notation.boards.session import read_session
from core.notation.calendar.moments import DATE, DAY_WORD
from core.notation.edits.retelling import part_named
from core.notation.edits.spots import Spot, spots_in
from core.notation.names.catalogued import lexicon
from core.sessions.values import Session

_THE: Final = re.compile(r"^(?:the|my|that|whole)\s+", re.IGNORECASE)
_DAY: Final = re.compile(rf"^\W*(?P<day>{DAY_WORD})\b[\s:.,-]*", re.IGNORECASE)
_WEEK: Final = timedelta(days=7)
_BLANKS: Final = re.compile(r"\n{3,}")


def without_part(text: str, name: str, movements: Catalogue, unit: MassUnit) -> str | None:
    """The text without the rows of the part that is named, of all parts of its kind; None where that isn't plain."""
    read = read_session(text, movements, unit)
    gone = parts_named(name, read.session) if read.session else []
    rows = {row for row, part in read.rows if part - 1 in gone}
    shared = rows & {row for row, part in read.rows if part - 1 not in gone}
    if not rows or shared or read.session is None or len(gone) == len(read.session.blocks):
        return None
    lines = [line for number, line in enumerate(text.splitlines(), 1) if number not in rows]
    return _BLANKS.sub("\n\n", "\n".join(lines)).strip("\n")


def called(text: str, name: str, movements: Catalogue, unit: MassUnit) -> str:
    """The text under another title; the day on top stays, as it says when the session is for."""
    read = read_session(text, movements, unit)
    top, *below = text.strip("\n").split("\n")
    has_title = bool(read.session and read.session.title) and 1 not in {row for row, _ in read.rows}
    day = _DAY.match(top) if has_title else None
    title = f"{day['day']}: {name}" if day and not _DAY.match(name) else name
    return "\n".join([title, *below] if has_title else [title, top, *below])


def on_another_day(text: str, day: date | None, today: date, movements: Catalogue) -> str:
    """The text with another day on top; without one a date that is over goes."""
    read = read_session(text, movements)
    top, *below = text.strip("\n").split("\n")
    has_title = 1 not in {row for row, _ in read.rows}
    is_over = bool(read.session and read.session.date and read.session.date < today)
    if day is None and not is_over:
        return text
    left = _DAY.sub("", DATE.sub("", top), count=1).strip(" :,.-") if has_title else ""
    of_it = [left] if left else []
    if day is not None:
        near = f"{day:%A}" if day - today < _WEEK else f"{day:%A} {day.day} {day:%B}"
        of_it = [": ".join([near, *of_it])]
    return "\n".join([*of_it, *(below if has_title else [top, *below])])


def parts_named(name: str, session: Session) -> list[int]:
    """The places of the part, or of all of the kind that is named; [] where none is."""
    words = _THE.sub("", name.strip().casefold())
    one = part_named(words, session)
    if one is not None:
        return [one]
    kind = heading(words)
    if kind is None or kind[1] < len(words):
        return []
    return [at for at, block in enumerate(session.blocks) if block.kind is kind[0]]


def part_in_front(words: str, session: Session) -> tuple[list[int], str] | None:
    """`warm up 15 min`: the part that words begin with, [] where there is none of its kind, and what stands behind."""
    said = words.split()
    for end in range(len(said), 0, -1):
        name = _THE.sub("", " ".join(said[:end]).casefold())
        found = parts_named(name, session)
        kind = heading(name)
        is_one = found or (kind is not None and kind[1] == len(name))
        if is_one and not any(one.isdigit() for one in said[end - 1]):
            return found, " ".join(said[end:])
    return None


def line_of(text: str, part: int, movements: Catalogue, unit: MassUnit) -> Spot | None:
    """The one line that a part consists of; None where there are several."""
    rows = {row for row, mine in read_session(text, movements, unit).rows if mine == part + 1}
    found = [one for one in spots_in(text, lexicon(movements), unit) if one.row + 1 in rows]
    return found[0] if len(found) == 1 else None
