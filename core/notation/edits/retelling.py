"""What was misread is told right: `that's rounds, not minutes`, `the warm-up is 2 rounds`, `it's an amrap, 12 minutes`.

What is said is read like a row of a board; the part that it is said of is written anew with it, all else is as typed.
"""

import re
from collections.abc import Iterator
from typing import Any, Final, NamedTuple

from pydantic import ValidationError

from core.measures import AmountUnit, MassUnit
from core.movements.lookup import Catalogue
from core.notation.boards.headings import heading
from core.notation.boards.row_reader import read_row
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_rows
from core.notation.names.catalogued import Lexicon, lexicon
from core.notation.part_labels import find_part
from core.notation.part_places import parts_of
from core.notation.phrases.efforts import EASY_ANYWAY
from core.notation.quantities import MINUTE_S
from core.notation.text import plain, plain_row
from core.notation.values import ReadSession
from core.sessions.values import Block, BlockKind, Format, Session

_LONGEST: Final = 120
_BEGINS: Final = r"(?:(?:no|nope|sorry|wait|ok|actually|hmm+|oh|oops|but|and)\W+)*"
_ENDS: Final = r"(?: (?:instead|please|pls|in all|in total|actually))*"
_OF_IS: Final = r"(?: is| are| should be| shall be| must be)(?: meant to be)?"
_IS: Final = r"(?:'s| is|'re| are| should be| shall be| must be)"
_NOT: Final = r"(?:,? (?:and )?(?:not|instead of) (?:the |an? )?(?P<t>[^,;]+?))?"
_REST: Final = r"(?:rests?|breaks?|pauses?)"
_SHAPES: Final = (
    (
        r"(?:that|it|this|its|that's|it's)(?: is|'s)? not [^;]+?,? (?:but|just|only|it's|its|it is) "
        r"(?P<n>[^,;]+)(?P<t>)(?P<x>)"
    ),
    (
        r"(?:add |put |have |make the |with )?(?:an? )?"
        rf"(?P<n>{_REST} [^,;]*\d[^,;]*|\d[^,;]* {_REST}\b[^,;]*)(?P<t>)(?P<x>)"
    ),
    rf"(?:that|it|this|those|these|they|everything){_IS}(?: meant to be)? (?:an? )?(?P<n>.+?){_NOT}(?P<x>)",
    rf"(?:its|thats|is) (?:an? )?(?P<n>.+?){_NOT}(?P<x>)",
    rf"i (?:meant|mean|said|wrote) (?:an? )?(?P<n>.+?){_NOT}(?P<x>)",
    rf"(?:make|change|turn) (?:it|that|this)(?: to| into)? (?:an? )?(?P<n>.+?){_NOT}(?P<x>)",
    rf"(?:the |my )?(?P<x>[^,;]{{2,30}}?){_OF_IS} (?:an? )?(?P<n>.+?){_NOT}",
    r"(?P<n>.+?),? not (?:the |an? )?(?P<t>[^,;]+?)(?P<x>)",
    r"(?P<n>not for time|for time|no score|not scored|no (?:time )?cap|no rest)(?P<t>)(?P<x>)",
)
_ROUNDS: Final = re.compile(r"\br(?:n)?ds\b", re.IGNORECASE)
_A_MINUTE: Final = re.compile(r"\b(?:a|one) min(?:ute)?\b", re.IGNORECASE)
_UNITS: Final = {
    "rounds": r"(?:rounds?|rds?|times|turns|sets?)",
    "minutes": r"(?:min(?:ute)?s?)",
    "seconds": r"(?:s|secs?|seconds?)",
    "reps": r"(?:reps?|repetitions?)",
    "metres": r"(?:m|met(?:re|er)s?)",
    "calories": r"(?:cals?|calories|kcal)",
}
_OF_LINES: Final = {
    "reps": AmountUnit.REPS, "seconds": AmountUnit.SECONDS, "metres": AmountUnit.METRES, "calories": AmountUnit.KCAL,
}  # fmt: skip
_GONE: Final = {"no cap": "cap_s", "no time cap": "cap_s", "no rest": "rest_s"}
_BETWEEN_ROUNDS: Final = re.compile(
    r"(?:rest|break|pause)s? (?:between|after|in between) (?:the |each |every |all )?(?:rounds?|sets?)"
)
# What a part has, so that the part needn't be named.
_OF_A_PART: Final = re.compile(
    r"(?:the |my )?(?:rests?|breaks?|pauses?|(?:time )?(?:cap|limit)|time|pace|effort|work|score)"
)
_NUMBER: Final = re.compile(r"[0-9]{1,4}")
_FIELDS: Final = frozenset(Block.model_fields) - {"lines", "buy_in", "cash_out"}
# Other ways to begin and to end than the part's own.
_CLOCK: Final = ("minutes", "every_s", "work_s", "cap_s")


class Told(NamedTuple):
    """`said` in place of `before`, which may go without saying; `of`: what it is said of."""

    said: str
    before: str
    of: str


def read_told(text: str) -> tuple[Told, ...]:
    """The ways in which words may tell what was misread; () for words about something else."""
    words = _ROUNDS.sub("rounds", _A_MINUTE.sub("1 min", plain(text[: _LONGEST + 1]).strip(" .!")))
    if not words or len(words) > _LONGEST or "\n" in text.strip() or text.rstrip().endswith("?"):
        return ()
    found = (re.fullmatch(rf"{_BEGINS}{shape}{_ENDS}", words, re.IGNORECASE) for shape in _SHAPES)
    return tuple(
        Told(
            match["n"].lower().strip(" ,"), (match["t"] or "").lower().strip(" ,"), match["x"].lower().strip()
        )
        for match in found
        if match
    )


def retold(text: str, message: str, movements: Catalogue, unit: MassUnit = MassUnit.KG) -> str | None:
    """The text with what the message tells of a part in it; None where it tells nothing of any, or not of which.

    The same text where it is so already.
    """
    read = read_session(text, movements, unit)
    if read.session is None:
        return None
    known = lexicon(movements)
    for told in read_told(message):
        for at in _parts(told, read.session):
            block = read.session.blocks[at]
            named = bool(told.of) and part_named(told.of, read.session) is not None
            of_it = told if named or not told.of else told._replace(said=f"{told.of} {told.said}")
            fixed = _renamed(block, told) or (
                None if _names_units(told) else _with_facts(block, of_it, known, unit)
            )
            if fixed is None:
                continue
            return text if fixed == block else _rewritten(text, read, at, fixed, unit, movements)
    return None


def tells_of_a_part(text: str, message: str, movements: Catalogue, unit: MassUnit = MassUnit.KG) -> bool:
    """Whether something is told of a part by its name: `the warm-up is 2 rounds`."""
    told = [one.of for one in read_told(message) if one.of]
    session = read_session(text, movements, unit).session if told else None
    return session is not None and any(part_named(words, session) is not None for words in told)


def _parts(told: Told, session: Session) -> list[int]:
    """The part that is meant: the one that is named, else the only one of the work, or of which it can be said."""
    if told.of and (named := part_named(told.of, session)) is not None:
        return [named]
    if told.of and not _OF_A_PART.fullmatch(told.of):
        return []
    work = [at for at, block in enumerate(session.blocks) if block.kind not in EASY_ANYWAY]
    able = [at for at in work if _renamed(session.blocks[at], told)]
    return able[:1] if len(able) == 1 else work if len(work) == 1 else []


def part_named(words: str, session: Session) -> int | None:
    """The place of the part that words name: `the warm-up`, `part 2`; None where they name none or several."""
    words = re.sub(r"^(?:the|my|in|to|of|for|into) ", "", words.strip())
    called = [at for at, block in enumerate(session.blocks) if (block.name or "").lower() == words]
    if len(called) == 1:
        return called[0]
    if numbered := find_part(words):
        part, left = numbered
        counted = parts_of(session)
        at = part.number - 1
        return counted[at] if not left and not part.of_scored and at < len(counted) else None
    kind = heading(words)
    if kind is None or kind[1] < len(words):
        return None
    places = [at for at, block in enumerate(session.blocks) if block.kind is kind[0]]
    return places[0] if len(places) == 1 else None


def _renamed(block: Block, told: Told) -> Block | None:
    """The part with a number of it counting something else: `rounds, not minutes`, `30 seconds, not reps`."""
    new, old = _unit_of(told.said), _unit_of(told.before)
    if not told.before:
        old = {"rounds": "minutes", "minutes": "rounds"}.get(told.said)
    number = _NUMBER.search(told.said) or _NUMBER.search(told.before)
    if new is None or old is None or new == old:
        return None
    value = float(number[0]) if number else None
    if {new, old} == {"rounds", "minutes"}:
        had = getattr(block, old)
        if had is None or (value is not None and value != had):
            return None
        return _changed(block, {old: None, new: had} | _without_a_clock(block, new))
    return _lines_counted(block, old, new, value)


def _names_units(told: Told) -> bool:
    """Whether something is said to count one thing and not another."""
    new, old = _unit_of(told.said), _unit_of(told.before)
    return new is not None and old is not None and new != old


def _without_a_clock(block: Block, new: str) -> dict[str, Any]:
    """As many rounds as can be in no time at all is nothing: so many rounds are done, and nobody said how."""
    endless = new == "rounds" and block.format is Format.AMRAP
    return {"format": Format.QUALITY, "scored": False} if endless else {}


def _lines_counted(block: Block, old: str, new: str, value: float | None) -> Block | None:
    """The part with its one line of such an amount counted in another unit."""
    if old not in _OF_LINES or new not in _OF_LINES:
        return None
    meant = [
        at
        for at, line in enumerate(block.lines)
        if line.unit is _OF_LINES[old] and line.amount and value in {None, line.amount}
    ]
    if len(meant) != 1:
        return None
    lines = list(block.lines)
    lines[meant[0]] = lines[meant[0]].model_copy(update={"unit": _OF_LINES[new]})
    return _changed(block, {"lines": tuple(lines)})


def _unit_of(words: str) -> str | None:
    """The unit that words are, with or without a number in front."""
    return next(
        (name for name, shape in _UNITS.items() if re.fullmatch(rf"(?:[0-9]{{1,4}}\s?)?{shape}", words)), None
    )


def _with_facts(block: Block, told: Told, known: Lexicon, unit: MassUnit) -> Block | None:
    """The part with what is said of it, where all of it says how the part is done."""
    if gone := _GONE.get(told.said):
        return _changed(block, {gone: None})
    if _BETWEEN_ROUNDS.fullmatch(told.said):
        return block if block.rest_s and block.rounds else None
    reading = read_row(plain_row(told.said), known, unit)
    facts = {name: value for name, value in reading.facts.items() if name in _FIELDS}
    if not facts or facts.keys() != reading.facts.keys() or reading.unread or reading.pieces or reading.kind:
        return None
    if facts.keys() == {"minutes"} and (timed := _lasting(block, facts["minutes"] * MINUTE_S)):
        return timed
    if new := facts.get("format"):
        facts = _in_another_format(block, new) | facts
    elif block.format is Format.FOR_TIME and "minutes" in facts:
        facts["cap_s"] = facts.pop("minutes") * MINUTE_S
    return _changed(block, facts)


def _lasting(block: Block, time_s: float) -> Block | None:
    """The part that is one thing, done for so long: `90 min easy ride`."""
    only = block.lines[0] if len(block.lines) == 1 else None
    if only is None or only.unit is not AmountUnit.SECONDS or block.minutes or block.rounds or block.every_s:
        return None
    return _changed(block, {"lines": (only.model_copy(update={"amount": time_s}),)})


def _in_another_format(block: Block, new: Format) -> dict[str, Any]:
    """A part that is done otherwise keeps its lines and rounds; its clock is another's."""
    if new is block.format:
        return {}
    told: dict[str, Any] = dict.fromkeys(_CLOCK)
    minutes = block.minutes or (block.cap_s and block.cap_s / MINUTE_S)
    if new is Format.AMRAP:
        told |= {"minutes": minutes, "rounds": None}
    if new is Format.FOR_TIME and minutes:
        told |= {"cap_s": minutes * MINUTE_S}
    usual = new is not Format.QUALITY and block.kind in {BlockKind.MAIN, BlockKind.STRENGTH}
    return told | {"scored": usual}


def _changed(block: Block, facts: dict[str, Any]) -> Block | None:
    try:
        return Block.model_validate(block.model_dump() | facts)
    except ValidationError:
        return None


def _rewritten(
    text: str, read: ReadSession, at: int, block: Block, unit: MassUnit, movements: Catalogue
) -> str | None:
    """The text with one part written anew, and what of it wasn't read; all of it, where parts share a row."""
    assert read.session is not None
    blocks = tuple(block if here == at else one for here, one in enumerate(read.session.blocks))
    session = read.session.model_copy(update={"blocks": blocks})
    mine = [row for row, part in read.rows if part == at + 1]
    rows = list(_rows(session, at + 1, unit, movements))
    if not mine or len({part for _, part in read.rows}) < len(blocks):
        whole = "\n".join(row.text for row in write_rows(session, unit, movements))
        return _checked(whole, session, movements, unit)
    typed = text.splitlines()
    left = [one.text for one in read.not_understood if one.line in mine and one.looks_like == "note"]
    first, last = min(mine), max(mine)
    changed = [*typed[: first - 1], "", *rows, *left, "", *typed[last:]]
    return _checked(re.sub(r"\n{3,}", "\n\n", "\n".join(changed)).strip("\n"), session, movements, unit)


def _rows(session: Session, part: int, unit: MassUnit, movements: Catalogue) -> Iterator[str]:
    yield from (row.text for row in write_rows(session, unit, movements) if row.block == part and row.text)


def _checked(text: str, session: Session, movements: Catalogue, unit: MassUnit) -> str | None:
    """The text, if it reads as the session that is meant."""
    read = read_session(text, movements, unit).session
    return (
        text
        if read and [_bare(one) for one in read.blocks] == [_bare(one) for one in session.blocks]
        else None
    )


def _bare(block: Block) -> object:
    names = ("lines", "buy_in", "cash_out")
    lines = [[line.model_copy(update={"written": ""}) for line in getattr(block, name)] for name in names]
    return block.model_copy(update=dict.fromkeys((*names, "notes"), ())), lines
