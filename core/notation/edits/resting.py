"""How long all rest, or those who do what is named: `rest 3 min`, `rest 2 min on the squats`, `rest 1:1`."""

import re
from typing import Final, NamedTuple

from core.measures import MassUnit
from core.movements.lookup import Catalogue
from core.notation.boards.session import read_session
from core.notation.edits.retelling import part_named
from core.notation.edits.spots import piece_of, readings, spots_named
from core.notation.names.catalogued import lexicon
from core.notation.phrases.efforts import EASY_ANYWAY
from core.notation.quantities import DURATION, MINUTE_S, seconds
from core.notation.text import plain
from core.notation.values import ReadSession
from core.sessions.values import Block, Format

_LONGEST: Final = 100
_BEGINS: Final = (
    r"(?:(?:ok|no|wait|sorry|actually|and|also|please|pls|let'?s|make|change|set|put|give|them|us|have|add|with|the|a|drop|cut"
    r"|of|to|lower|raise|reduce|shorten|only|down|up)\W+)*"
)
_REST: Final = r"(?:rests?|breaks?|pauses?|recovery)"
_LONG: Final = rf"(?:(?P<time>{DURATION})|(?P<ratio>[1-9]\s?:\s?[1-9]))"
_IS: Final = r"(?:\s(?:is|are|to|down to|up to|of|should be|be|at|only)|\s?[:=])?"
_BETWEEN: Final = (
    r"(?:\s(?:between|after|in between)\s(?:the\s|all\s|each\s|every\s)?"
    r"(?:rounds?|sets?|reps?|intervals?|runs?|efforts?))?"
)
_OF: Final = r"(?:\s(?:on|for|of|with|in|at|after|between)\s(?:the\s|all\s)?(?P<of>[a-z][a-z '\-]{2,30}?))"
_ENDS: Final = r"(?:,? (?:please|pls|instead|each|now|everywhere|for all))*[\s.!]*"
_SHAPES: Final = tuple(
    re.compile(_BEGINS + shape + _ENDS, re.IGNORECASE)
    for shape in (
        rf"{_REST}{_BETWEEN}{_IS}\s?{_LONG}{_BETWEEN}",
        rf"{_LONG}\s(?:of\s)?{_REST}{_BETWEEN}",
        rf"{_REST}{_IS}\s?{_LONG}{_OF}",
        rf"{_LONG}\s(?:of\s)?{_REST}{_OF}",
        rf"{_REST}{_OF}{_IS}\s?{_LONG}",
        rf"(?P<of>[a-z][a-z '\-]{{2,30}}?)[\s:,]+{_REST}{_IS}\s?{_LONG}",
    )
)
_SAYS: Final = re.compile(
    rf"[,;]?\s*\b{_REST}\b{_IS}\s?(?:{DURATION}|[1-9]\s?:\s?[1-9](?![0-9]))|[,;]?\s*\b(?:{DURATION})\s{_REST}\b"
)
_IN_TURN: Final = {Format.SETS, Format.HOLD, Format.INTERVALS, Format.MAX_REPS}


class Rest(NamedTuple):
    """`said` as a coach writes it, `of` what it is of, "" for all."""

    said: str
    of: str


def read_rest(message: str) -> Rest | None:
    """None for words about something else."""
    words = plain(message[: _LONGEST + 1]).strip(" .!")
    if len(words) > _LONGEST or words.endswith("?") or "\n" in message.strip():
        return None
    match = next(filter(None, (shape.fullmatch(words) for shape in _SHAPES)), None)
    if match is None:
        return None
    told = match.groupdict()
    said = told["ratio"] or _as_written(seconds(told["time"]))
    return Rest(f"rest {said}", (told.get("of") or "").lower().strip())


def with_rest(text: str, message: str, movements: Catalogue, unit: MassUnit = MassUnit.KG) -> str | None:
    """The text with the rest of the parts that are meant, all that are done in turns where none is named.

    None where the message tells no rest, or it isn't plain of what.
    """
    told = read_rest(message)
    read = read_session(text, movements, unit)
    if told is None or read.session is None:
        return None
    for at in reversed(_parts(text, told, read, movements, unit)):
        text = _put(text, [row - 1 for row, part in read.rows if part == at + 1], told.said, movements, unit)
    after = read_session(text, movements, unit).session
    is_kept = after is not None and _shape(after.blocks) == _shape(read.session.blocks)
    return text if is_kept and after != read.session else None


def _parts(text: str, told: Rest, read: ReadSession, movements: Catalogue, unit: MassUnit) -> list[int]:
    blocks = read.session.blocks if read.session else ()
    work = [at for at, block in enumerate(blocks) if block.kind not in EASY_ANYWAY]
    if not told.of:
        able = [at for at in work if blocks[at].rest_s or blocks[at].format in _IN_TURN]
        return able or [at for at in work if blocks[at].rounds]
    if read.session and (named := part_named(told.of, read.session)) is not None:
        return [named]
    known = lexicon(movements)
    rows = {one.row + 1 for one in spots_named(text, piece_of(told.of, known, unit), known, unit)}
    found = {part - 1 for row, part in read.rows if row in rows}
    return sorted(found & {*work})


def _put(text: str, rows: list[int], said: str, movements: Catalogue, unit: MassUnit) -> str:
    """The rest in place of the one that rows tell, else behind the last of them."""
    lines = text.splitlines()
    resting = {at for at, one in readings(text, lexicon(movements), unit) if "rest_s" in one.facts}
    for row in rows:
        found = _SAYS.search(lines[row].lower())
        if found and (row in resting or ":" in found[0]):
            lines[row] = (
                f"{lines[row][: found.start()]}{_said_now(found[0], said)}{lines[row][found.end() :]}"
            )
            return "\n".join(lines)
    if len(rows) == 1:
        lines[rows[0]] = f"{lines[rows[0]].rstrip(' .,')}, {said}"
    elif rows:
        lines.insert(max(rows) + 1, said)
    return "\n".join(lines)


def _said_now(before: str, said: str) -> str:
    """The words for a rest with another time in them: `, 45 s rest`; with a share of the work all of them are new."""
    mark = before[: len(before) - len(before.lstrip(" ,;"))]
    time = re.search(DURATION, before)
    return (
        f"{mark}{said}"
        if time is None or ":" in said
        else before.replace(time[0], said.removeprefix("rest "))
    )


def _shape(blocks: tuple[Block, ...]) -> list[object]:
    """All of the parts but their rests, which also end each turn of a clock that runs on."""
    free: dict[str, object] = {"rest_s": None, "every_s": None, "notes": None}
    return [
        block.model_copy(
            update={**free, "lines": tuple(line.model_copy(update={"written": ""}) for line in block.lines)}
        )
        for block in blocks
    ]


def _as_written(time_s: float) -> str:
    return (
        f"{time_s / MINUTE_S:g} min"
        if time_s % (MINUTE_S / 2) == 0 and time_s >= MINUTE_S
        else f"{time_s:g} s"
    )
