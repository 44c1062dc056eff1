"""Session -> plain board words. What is written here is read back as the same session."""

import re
from collections.abc import Iterator, Sequence
from decimal import Decimal
from functools import cache
from itertools import filterfalse
from operator import itemgetter
from typing import NamedTuple

from core.measures import AmountUnit, MassUnit, from_kg
from core.movements.lookup import Catalogue, catalogue
from core.notation.boards.formats import UNSCORED
from core.notation.lines.bare_numbers import AMBIGUOUS_ROW
from core.notation.lines.naming import HELD
from core.notation.phrases.paces import gone_between
from core.notation.quantities import MINUTE_S, in_unit
from core.scores.text import clock
from core.sessions.counting import is_held_so_long, is_in_kcal
from core.sessions.values import Aim, Block, BlockKind, Counts, Effort, Format, Line, LoadRule, Session

_HEADINGS = {
    BlockKind.WARM_UP: "Warm-up",
    BlockKind.SKILL: "Skill",
    BlockKind.STRENGTH: "Strength",
    BlockKind.MAIN: "Main",
    BlockKind.COOL_DOWN: "Cool-down",
}
_TIMED = {Format.FOR_TIME, Format.TIME_TRIAL, Format.HOLD}
_OPEN = {Format.SETS, Format.INTERVALS}
# Done once, so that their rest comes behind them.
_ONCE = {Format.AMRAP, Format.MAX_REPS, Format.MAX_LOAD, Format.TIME_TRIAL}


class BoardRow(NamedTuple):
    """One row of the board; `line`: which of its block's lines it is, both counted from 1."""

    text: str
    block: int | None = None
    line: int | None = None


def write_session(session: Session, unit: MassUnit = MassUnit.KG, movements: Catalogue | None = None) -> str:
    """The session as a coach writes it on a board; loads in `unit` where that is exact, else in kg."""
    return "\n".join(row.text for row in write_rows(session, unit, movements))


def write_rows(
    session: Session, unit: MassUnit = MassUnit.KG, movements: Catalogue | None = None
) -> list[BoardRow]:
    """The same row by row; an empty one parts the blocks."""
    names = movements or catalogue()
    front = [session.title] if session.title else []
    front += [session.date.isoformat()] if session.date else []
    parts = [[BoardRow(text) for text in front]] if front else []
    for number, (block, place) in enumerate(zip(session.blocks, session.places, strict=True), 1):
        parts.append([row._replace(block=number) for row in _block(block, place, unit, names)])
    return [row for part in parts for row in (BoardRow(""), *part)][1:]


def _block(block: Block, place: int | None, unit: MassUnit, names: Catalogue) -> Iterator[BoardRow]:
    """Lines of a block under its heading, which is numbered if there are several of its kind."""
    kind = _HEADINGS[block.kind]
    yield BoardRow(block.name or (kind if place is None else f"{kind} {place}"))
    if not _is_held_so(block):
        yield from map(BoardRow, _format(block))
    yield from map(BoardRow, _rules(block))
    yield from (BoardRow(f"Buy-in: {write_line(line, unit, names, block)}") for line in block.buy_in)
    times = f"{block.rounds} x " if _is_held_so(block) and block.rounds else ""
    yield from _at_stations(block, [times + write_line(line, unit, names, block) for line in block.lines])
    yield from (BoardRow(f"Cash-out: {write_line(line, unit, names, block)}") for line in block.cash_out)
    between, notes = _between(block)
    if between:
        yield BoardRow(f"Between: {between}")
    if notes:
        yield BoardRow(f"Note: {notes}")


def _between(block: Block) -> tuple[str, str]:
    """What is gone at ease between the rounds, and the other notes: a jog is no rest, and says its own time."""
    told = (block.notes or "").split("; ")
    between = next((note for note in told if gone_between(note)[0]), "")
    return between, "; ".join(note for note in told if note != between)


def _is_held_so(block: Block) -> bool:
    """`2 min plank`, `3 x 1 min plank` say all of it; nothing is held for as long as possible."""
    more = block.scheme or block.minutes or block.every_s or block.work_s or len(block.lines) > 1
    if not is_held_so_long(block) or more or block.kind in UNSCORED:
        return False
    (line,) = block.lines
    return line.unit is AmountUnit.SECONDS and line.station is None


def _at_stations(block: Block, lines: Sequence[str]) -> Iterator[BoardRow]:
    """The lines in order, with the stations between them at which nothing is done."""
    numbered = (BoardRow(words, line=number) for number, words in enumerate(lines, 1))
    told = [(line.station or 0, row) for line, row in zip(block.lines, numbered, strict=True)]
    rests = [(station, BoardRow(f"{_turn(block)} {station}: rest")) for station in block.rest_stations]
    yield from (row for _, row in (sorted(told + rests, key=itemgetter(0)) if rests else told))


def _format(block: Block) -> Iterator[str]:
    """The format in words, then what it is done for: rounds, scheme, minutes."""
    rounds = f"{block.rounds} {'round' if block.rounds == 1 else 'rounds'}" if block.rounds else ""
    minutes = _duration(block.minutes * 60) if block.minutes else ""
    said = {
        Format.AMRAP: f"As many rounds as possible in {minutes}" if minutes else "As many rounds as possible",
        Format.FOR_TIME: f"{rounds} for time" if rounds else "For time",
        Format.INTERVALS: _intervals(block),
        Format.SETS: f"{block.rounds} sets" if block.rounds else "Sets:",
        Format.HOLD: "As long as possible",
        Format.MAX_REPS: f"{_most_of(block)} in {minutes}" if minutes else _most_of(block),
        Format.MAX_LOAD: "The heaviest weight",
        Format.TIME_TRIAL: "Time trial",
        Format.QUALITY: "Not for time",
    }
    yield said[block.format]
    if rounds and block.format not in {Format.FOR_TIME, Format.SETS}:
        yield rounds
    if minutes and block.format not in {Format.AMRAP, Format.MAX_REPS}:
        yield f"In {minutes}"
    if block.scheme:
        yield "-".join(str(reps) for reps in block.scheme)


def _most_of(block: Block) -> str:
    if is_in_kcal(block):
        return "Max calories"
    is_far = all(line.unit is AmountUnit.METRES for line in block.lines)
    return "Max distance" if is_far and block.minutes else "Max reps"


_COUNTED_IN = {AmountUnit.REPS: "repetitions", AmountUnit.METRES: "metres", AmountUnit.KCAL: "calories"}
_WHICH = {Counts.BEST: "the best", Counts.WORST: "the worst"}


def _what_counts(block: Block) -> str:
    """`metres, the worst`; empty where the format says all of it."""
    told = (
        _COUNTED_IN.get(block.counted_in) if block.counted_in else None,
        _WHICH.get(block.counts) if block.counts else None,
    )
    return ", ".join(filter(None, told))


def _tells_work(block: Block | None) -> bool:
    """Whether the words for the format say how long is worked and rested."""
    if block is None or not (block.work_s and block.rest_s):
        return False
    return block.format is Format.INTERVALS and block.every_s == block.work_s + block.rest_s


def _intervals(block: Block) -> str:
    if _tells_work(block):
        assert block.work_s is not None and block.rest_s is not None  # noqa: PT018
        return f"{_duration(block.work_s)} work / {_duration(block.rest_s)} rest"
    return f"Every {_duration(block.every_s)}" if block.every_s else "Intervals:"


def _rules(block: Block) -> Iterator[str]:
    if block.cap_s:
        yield f"Time cap: {_duration(block.cap_s)}"
    jogged = block.rest_s is not None and gone_between(_between(block)[0])[1] == block.rest_s
    if block.rest_s and not (_tells_work(block) or jogged):
        each = "sets" if block.format is Format.SETS else "rounds"
        once = block.format in _ONCE and not block.rounds
        yield (
            f"Then rest {_duration(block.rest_s)}"
            if once
            else f"Rest {_duration(block.rest_s)} between {each}"
        )
    if what := _what_counts(block):
        yield f"Score: {what}"
    if block.team:
        yield f"In teams of {block.team}"
    if block.aim:
        yield f"Aim: {_aim(block.aim, block.format)}"
    if block.effort:
        yield _effort(block.effort)
    usual = block.format is not Format.QUALITY and block.kind not in UNSCORED
    if block.scored is not usual:
        yield "For score" if block.scored else "Not for score"


def _aim(aim: Aim, format_: Format) -> str:
    timed = aim.of == "score" and format_ in _TIMED
    what = "" if timed else {"score": "rounds", "unbroken": "unbroken"}[aim.of]
    if aim.of == "score" and format_ is Format.MAX_REPS:
        what = "reps"
    low, high = (None if end is None else clock(end) if timed else f"{end:g}" for end in (aim.low, aim.high))
    if low is None:
        return f"under {high} {what}".rstrip()
    if high is None:
        return f"at least {low} {what}".rstrip()
    return f"{low if low == high else f'{low}-{high}'} {what}".rstrip()


def _effort(effort: Effort) -> str:
    """As the coach said it, else by its numbers."""
    if effort.words:
        return effort.words
    told = dict.fromkeys(f"{end:g}" for end in (effort.low, effort.high) if end is not None)
    return f"Aim: effort {'-'.join(told)}"


def write_line(line: Line, unit: MassUnit, names: Catalogue, block: Block | None = None) -> str:
    """One line: `10 push-ups`, `12 goblet squats @ 24/16 kg`. `block` tells what needn't be repeated."""
    parts = (
        f"{_turn(block)} {line.station}:" if line.station else "",
        _amount(line, block),
        line.side if line.side and line.side not in _name(line, names) else "",
        _plural(_name(line, names)) if _counts_several(line) else _name(line, names),
        "each side" if line.per_side and line.amount is None else "",
        _held(line, names),
        _load(line, unit),
        _rule(line.load_rule) if line.load_rule else "",
        f"tempo {line.tempo}" if line.tempo else "",
        f"({line.notes})" if line.notes else "",
    )
    return " ".join(part for part in parts if part)


def _turn(block: Block | None) -> str:
    """What a station is called: a minute only where it takes one."""
    return "Minute" if block is None or block.every_s in {None, MINUTE_S} else "Station"


def _amount(line: Line, block: Block | None) -> str:
    """What is counted; nothing where the block says it."""
    if line.amount is None:
        most = "max" if block is not None and block.format in _OPEN and not block.scheme else ""
        return f"{most} cal".strip() if line.unit is AmountUnit.KCAL else most
    if block and _tells_work(block) and line.unit is AmountUnit.SECONDS and line.amount == block.work_s:
        return ""
    if line.amount_to is not None and line.unit is AmountUnit.SECONDS:
        said = _range(line.amount, line.amount_to)
    elif line.amount_to is not None:
        said = f"{line.amount:g}-{in_unit(line.amount_to, line.unit)}"
    elif line.second_amount is not None:
        said = f"{line.amount:g}/{in_unit(line.second_amount, line.unit)}"
    else:
        said = _duration(line.amount) if line.unit is AmountUnit.SECONDS else in_unit(line.amount, line.unit)
    return f"{said}/side" if line.per_side else said


def _range(low: float, high: float) -> str:
    """`75-90 min`; in seconds where either end is no whole minute."""
    whole = low % MINUTE_S == high % MINUTE_S == 0
    return f"{low / MINUTE_S:g}-{high / MINUTE_S:g} min" if whole else f"{low:g}-{high:g} s"


def _counts_several(line: Line) -> bool:
    return line.unit is AmountUnit.REPS and line.amount != 1


def _name(line: Line, names: Catalogue) -> str:
    """As its coach calls it, where that is a name of it; else as it is called first."""
    movement = names.movement(line.movement)
    if line.variant is None:
        # A rower with a weight is nothing anybody does; written as `row` it would be read as another movement.
        held = line.loads_kg or line.per_side or line.implement or line.load_rule
        if line.movement == AMBIGUOUS_ROW:
            return movement.names[0] if held else line.movement
        return _as_called(line.written, (line.movement, *movement.names)) or line.movement
    _, variant = names.variant(f"{line.movement}/{line.variant}")
    # `1 arm raise` would be done with one arm.
    spoken = sorted(
        variant.names, key=lambda name: (bool(HELD.search(name)), name.startswith(("arm ", "leg ")))
    )
    called = _as_called(line.written, tuple(spoken))
    return called or next(filterfalse(_is_short, spoken), line.movement)


def _as_called(written: str, known: tuple[str, ...]) -> str | None:
    """The longest of the names that stands in the coach's words; written out where they shorten it: `dls`."""
    said = written.lower().replace("-", " ")
    found = [name for name in known if _standing(name).search(said)]
    longest = _IN_HANDS_SHORT.sub(lambda match: _IN_HANDS[match[0]], max(found, key=len, default=""))
    return longest if longest in known and not _is_short(longest) else None


def _is_short(name: str) -> bool:
    """Whether a word of a name is a short form: `dl`, `goblet sq`, `t2b`."""
    return any(_SHORT.fullmatch(word) for word in re.split(r"[\s\-]", name.lower()))


@cache
def _standing(name: str) -> re.Pattern[str]:
    return re.compile(rf"\b{re.escape(name.lower().replace('-', ' '))}(?:e?s)?\b(?! ups?\b)")


_IN_HANDS = {"kb": "kettlebell", "db": "dumbbell", "bb": "barbell"}
_IN_HANDS_SHORT = re.compile(r"\b[kdb]b\b")
# No vowel in it, or one of two letters that the trade shortens so.
_SHORT = re.compile(r"(?=.*[a-z])[^aeiouy]{2,}|du|mu|oh|ohp|hspu")
# What is counted stands before these.
_COUNTED = re.compile(r"(.+?)( (?:of|from|with) .+)")


def _plural(name: str) -> str:
    """`lunges`, `crunches`, `flights of stairs`, `rows from the floor`; `ground to overhead` stays as it is."""
    counted = _COUNTED.match(name)
    if counted is not None:
        return f"{_plural(counted[1])}{counted[2]}"
    first, _, tail = name.partition(" to ")
    first, _, place = first.partition(" on ") if not tail else (name, "", "")
    if "-to-" in name.rsplit(maxsplit=1)[-1]:
        return name
    if name.endswith(" to stand"):
        return f"{name}s"
    if tail or place or first.endswith("overhead") or (first.endswith("s") and not first.endswith("ss")):
        return name
    if first.endswith(("ch", "sh", "x", "ss")):
        return f"{name}es"
    return f"{name[:-1]}ies" if first.endswith("y") else f"{name}s"


def _held(line: Line, names: Catalogue) -> str:
    if line.implement is None or HELD.search(_name(line, names)):
        return ""
    return f"with {line.implement}"


def _load(line: Line, unit: MassUnit) -> str:
    if not line.loads_kg:
        return ""
    said, shown = _exact(line.loads_kg, unit)
    times = f"{line.count} x " if line.count else ""
    return f"@ {(' / ' if times else '/').join(times + load for load in said)} {shown}"


def _exact(loads_kg: tuple[Decimal, ...], unit: MassUnit) -> tuple[list[str], MassUnit]:
    """Loads in the wanted unit, else in the other, if two decimals tell them exactly; else in kg."""
    for chosen in (unit, *(other for other in MassUnit if other is not unit)):
        loads = [from_kg(load, chosen) for load in loads_kg]
        if all(load == load.quantize(Decimal("0.01")) for load in loads):
            return [f"{load.normalize():f}" for load in loads], chosen
    return [f"{load.normalize():f}" for load in loads_kg], MassUnit.KG


def _rule(rule: LoadRule) -> str:
    if rule.percent is not None:
        return f"@ {rule.percent:g}%"
    if rule.effort is not None:
        return f"@ effort {rule.effort:g}"
    if isinstance(rule.unbroken, tuple):
        return f"@ {rule.unbroken[0]}-{rule.unbroken[1]} unbroken"
    if rule.unbroken:
        return "unbroken"
    return "heavy"


def _duration(seconds: float) -> str:
    if seconds % 60 == 0:
        return f"{seconds / 60:g} min"
    return clock(seconds) if seconds > MINUTE_S and seconds == round(seconds) else f"{seconds:g} s"
