"""Which lines of a row a load belongs to that is told once."""

import re
from dataclasses import replace

from core.measures import MassUnit
from core.notation.boards.drafts import Placed
from core.notation.boards.reading import Reading
from core.notation.calendar.moments import DAY_WORD
from core.notation.lines.naming import CARRIED, HELD
from core.notation.lines.pieces import Piece, complete
from core.notation.names.catalogued import Lexicon
from core.notation.quantities import kilograms
from core.notation.text import Row
from core.sessions.values import Block, Line

_SAME = re.compile(
    r"\bsame (?:dbs?|kbs?|(?:kettle|dumb)?bells?|bar(?:bell)?|weights?|loads?|one|ones|plate|bag|ball)\b"
)

# `kb only`, `one dumbbell for all of it`, `sandbag wed`
_FOR_ALL = re.compile(
    rf"(?:an? |the |only )?(?:{HELD.pattern})(?: only| day| for (?:all|everything|the whole thing)(?: of it)?"
    rf"| {DAY_WORD}s?)"
)


def take_tool(reading: Reading, lexicon: Lexicon) -> str | None:
    """The one thing that a row says all of the board is done with, taken from its unread words; else None."""
    for stretch in tuple(reading.unread):
        match = _FOR_ALL.fullmatch(reading.row.text[stretch.start : stretch.end].strip(" .,:;-").lower())
        thing = lexicon.catalogue.implement_by_name(match["i"]) if match else None
        if thing:
            reading.unread.remove(stretch)
            reading.pieces = [one for one in reading.pieces if not stretch.start <= one.start < stretch.end]
            return thing.id
    return None


def with_tool(blocks: tuple[Block, ...], tool: str | None, lexicon: Lexicon) -> tuple[Block, ...]:
    """The blocks with that thing in the hands where a line says none and can be done with it."""

    def held(line: Line) -> Line:
        ways = lexicon.catalogue.movement(line.movement).variants
        can = any(
            hold.implement == tool for way in ways for hold in way.holds if line.variant in {None, way.id}
        )
        return line.model_copy(update={"implement": tool}) if can and line.implement is None else line

    def around(block: Block) -> Block:
        told = {name: tuple(map(held, getattr(block, name))) for name in ("buy_in", "lines", "cash_out")}
        return block.model_copy(update=told)

    return tuple(map(around, blocks)) if tool else blocks


def share_load(pieces: list[Piece], row: Row, lexicon: Lexicon) -> None:
    """`3 power cleans + 2 jerks @ 70 %`: what is done in one go has the share that is told behind all of it."""
    last = pieces[-1] if pieces else None
    if not (last and last.load_rule and last.load_rule.percent):
        return
    for at, piece in enumerate(pieces[:-1]):
        behind = row.text[piece.end : pieces[at + 1].start].strip()
        if behind == "+" and piece.meaning and lexicon.takes_a_load(piece.meaning) and not _is_loaded(piece):
            pieces[at] = replace(piece, load_rule=last.load_rule)


def loaded(pieces: list[Piece], piece: Piece, lexicon: Lexicon) -> int:
    """The line that a load alone belongs to: `5 thrusters + 5 burpees, 40 kg`; else the last."""
    only_load = piece.loads_kg and not piece.amount
    for at in range(len(pieces) - 1, -1, -1) if only_load else ():
        meaning = pieces[at].meaning
        if meaning and not pieces[at].loads_kg and lexicon.takes_a_load(meaning):
            return at
    return len(pieces) - 1


def take_same(piece: Piece, before: list[Piece]) -> None:
    """`10 front squats, same bar`: the load of the line before that has one."""
    if not piece.load_rule and any("same effort" in note.lower() for note in piece.notes):
        piece.load_rule = next((one.load_rule for one in reversed(before) if one.load_rule), None)
    if not piece.tempo and any("same tempo" in note.lower() for note in piece.notes):
        piece.tempo = next((one.tempo for one in reversed(before) if one.tempo), None)
    loaded = next((one for one in reversed(before) if one.loads_kg), None)
    if loaded and not _is_loaded(piece) and any(_SAME.search(note.lower()) for note in piece.notes):
        piece.loads_kg, piece.count = loaded.loads_kg, piece.count or loaded.count
        piece.implement = piece.implement or loaded.implement


def says_same(words: str) -> bool:
    """Whether words only say that the weight of the line before is taken again."""
    return _SAME.fullmatch(words.strip(" ().,").lower()) is not None


def is_load_alone(piece: Piece) -> bool:
    """Whether a piece tells a load and nothing that is done."""
    said = piece.amount or piece.sets or piece.most or piece.unread or piece.meaning
    rule = piece.load_rule
    return bool(piece.loads_kg or (rule and (rule.percent or rule.heavy))) and not said


def is_carried(piece: Piece) -> bool:
    """Whether a load is told of what all is done with: `bar 40/30`."""
    return is_load_alone(piece) and piece.text.lower().split(maxsplit=1)[0] in CARRIED


def take_pair(piece: Piece, unit: MassUnit) -> None:
    """`16/12` by itself is a load: no pair is done of nothing."""
    first, second = piece.amount, piece.second_amount
    said = piece.unit or piece.sets or piece.unread or piece.loads_kg
    if first and second and first > second and not said:
        piece.loads_kg = tuple(kilograms(f"{number:g}", None, unit) for number in (first, second))
        piece.amount = piece.second_amount = None


def load_all(piece: Piece, lines: list[Placed], lexicon: Lexicon) -> bool:
    """Gives a load that stands by itself to all lines that are done with one and tell none; whether there are any."""
    if not is_load_alone(piece):
        return False
    piece = replace(piece, per_side=False)  # `10 kg each` is of each weight
    lacking = [at for at, placed in enumerate(lines) if _lacks_load(placed.piece, lexicon)]
    for at in lacking:
        lines[at] = lines[at]._replace(piece=complete(lines[at].piece, piece))
    return bool(lacking)


def _lacks_load(piece: Piece, lexicon: Lexicon) -> bool:
    return bool(piece.meaning and not _is_loaded(piece) and lexicon.takes_a_load(piece.meaning))


def _is_loaded(piece: Piece) -> bool:
    return bool(piece.loads_kg or piece.load_rule or piece.each_set)
