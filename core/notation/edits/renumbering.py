"""A number that is told in place of another: `10 min not 15`, `20/16 instead of 16/12 on the swings`."""

import re
from typing import Final, NamedTuple

from core.measures import MassUnit
from core.movements.lookup import Catalogue
from core.notation.boards.session import read_session
from core.notation.edits.retelling import part_named
from core.notation.edits.spots import piece_of, spots_named
from core.notation.names.catalogued import lexicon
from core.notation.text import plain

_LONGEST: Final = 120
_NUMBER: Final = r"[0-9]{1,4}(?:\s?[x/:.+-]\s?[0-9]{1,3}){0,3}"
_UNIT: Final = r"(?:\s?(?:kgs?|lbs?|m|km|min(?:ute)?s?|s(?:ec(?:ond)?s?)?|reps?|rounds?|sets?|rds?|cals?|'))?"
_SETS_OF: Final = r"[1-9][0-9]?\s?x\s?[1-9][0-9]{0,3}"
_SHAPE: Final = re.compile(
    rf"(?P<of>.*?)(?<![\w.:/])(?P<new>{_NUMBER}){_UNIT}\b(?P<mid>[^,;]{{0,25}}?)"
    rf",?\s(?:and\s)?(?:not|instead of|rather than)\s(?P<old>{_NUMBER}){_UNIT}(?:\s(?P<behind>\D*))?",
    re.IGNORECASE,
)
# The old one first: `change 8x50 to 10x50`.
_FROM_TO: Final = re.compile(
    rf"(?P<of>\D*?)(?<![\w.:/])(?P<old>{_NUMBER}){_UNIT}\s(?:(?:in)?to|->|becomes?)\s"
    rf"(?P<new>{_NUMBER}){_UNIT}(?P<mid>)(?:\s(?P<behind>\D*))?",
    re.IGNORECASE,
)
# What is said around the number, and names nothing.
_AROUND: Final = re.compile(
    r"\b(?:sorry|no|ok|oops|please|pls|actually|rather|it|that|its|it's|that's|is|are|was|were|be|should|shall|must"
    r"|needs? to|make|do|does|have|can|could|we|you|lets|let's|change|set|put|use|give|them|only|just|the|a|an|of|for"
    r"|on|to|at|in|with|each|i|meant|want|instead|intervals?|efforts?|repeats?)\b|[@,:]",
    re.IGNORECASE,
)
# Sets of so many, in place of what sets there are.
_SETS: Final = re.compile(rf"(?P<of>\D*?)\b(?P<new>{_SETS_OF}{_UNIT})\b(?P<behind>\D*)", re.IGNORECASE)


class Renumbered(NamedTuple):
    """`new` for `old`, "" for whatever sets there are, and the words that name what it is said of."""

    new: str
    old: str
    of: str


def read_renumbered(message: str) -> Renumbered | None:
    """None for words about something else."""
    words = plain(message[: _LONGEST + 1]).strip(" .!")
    match = _SHAPE.fullmatch(words) or _FROM_TO.fullmatch(words)
    if len(words) > _LONGEST or words.endswith("?") or "\n" in message.strip():
        return None
    if match is None and (sets := _SETS.fullmatch(words)):
        return Renumbered(
            sets["new"], "", " ".join(_AROUND.sub(" ", f"{sets['of']} {sets['behind']}").split())
        )
    if match is None:
        return None
    of = _AROUND.sub(" ", f"{match['of']} {match['mid']} {match['behind'] or ''}")
    return Renumbered(match["new"], match["old"], " ".join(of.split()))


def renumbered(text: str, message: str, movements: Catalogue, unit: MassUnit = MassUnit.KG) -> str | None:
    """The text with the new number; None unless the old one stands once where it is said of, or once at all."""
    told = read_renumbered(message)
    if told is None:
        return None
    lines = text.splitlines()
    with_unit = _UNIT if told.new[-1:].isalpha() else ""
    said = re.escape(told.old) if told.old else rf"{_SETS_OF}{with_unit}\b"
    old = re.compile(rf"(?<![0-9.:/x]){said}(?![0-9:/]|\.[0-9])", re.IGNORECASE)
    rows = [at for at in _rows(text, told.of, movements, unit) for _ in old.finditer(lines[at])]
    if len(rows) != 1:
        return None
    new = told.new if with_unit else told.new.replace(" ", "")
    lines[rows[0]] = old.sub(new, lines[rows[0]])
    return "\n".join(lines)


def _rows(text: str, of: str, movements: Catalogue, unit: MassUnit) -> list[int]:
    """The rows of the part or of the lines that are named, of all where nothing is."""
    read = read_session(text, movements, unit)
    if not of:
        return list(range(len(text.splitlines())))
    part = part_named(of.lower(), read.session) if read.session else None
    if part is not None:
        return [row - 1 for row, mine in read.rows if mine == part + 1]
    known = lexicon(movements)
    piece = piece_of(of, known, unit)
    return sorted({one.row for one in spots_named(text, piece, known, unit)}) if piece.meaning else []
