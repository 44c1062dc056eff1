"""What stands in brackets: facts of the block, more of a line, or a note."""

import re

from core.measures import MassUnit
from core.notation.labels.facts import told_by
from core.notation.lines.reading import read_piece
from core.notation.names.catalogued import Lexicon
from core.notation.phrases.aims import Facts
from core.notation.phrases.efforts import take_effort
from core.notation.phrases.shapes import take_phrases
from core.notation.quantities import DURATION, MASS_UNIT, seconds
from core.notation.text import Row, Strip

# Stands in the strip for a bracket that is a note.
NOTE = "~"
_BRACKETS = re.compile(r"[(\[{]([^()\[\]{}]{1,200})[)\]}]")
_ALONE = re.compile(r"[^\W_]")
# A time behind `5 x 5` is the rest between the sets (common practice, no source).
_DURATION = re.compile(DURATION)
_SETS = re.compile(r"[0-9]\s?x\s?[0-9]{1,2}(?!\s?(?:m|s|sec|min|k?m)\b)")
# `4 x (3'/1')`
_WORK_AND_REST = re.compile(
    rf"\s?(?:{DURATION})\s?[/+]\s?(?:{DURATION})(?:\s(?:rest|off|easy|light|recovery))?\s?"
)
_WORD = re.compile(r"[a-z]{2,}")
_MASS = re.compile(MASS_UNIT)
# `DB bench 4 x 8 (2x20)`: two of twenty are held, whatever is counted in front of them
_HELD = re.compile(
    rf"\s?[12]\s?x\s?[0-9]{{1,3}}(?:\.[0-9]{{1,2}})?(?:\s?/\s?(?:[12]\s?x\s?)?[0-9.]{{1,5}})?\s?(?:{MASS_UNIT})?\s?"
)
# `3 x (40/20)`
_SO_OFTEN = re.compile(r"[0-9]\s?x\s?$")
_DIGIT = re.compile("[0-9]")


def read_brackets(
    row: Row, facts_of_row: Facts, strip: Strip, lexicon: Lexicon, unit: MassUnit
) -> list[tuple[int, str]]:
    """Brackets that say facts or complete a line count as if they stood without; the others are notes."""
    notes = []
    for match in list(_BRACKETS.finditer(strip.text)):
        if _WORK_AND_REST.fullmatch(match[1]) or _SO_OFTEN.search(strip.text, 0, match.start()):
            continue
        if _HELD.fullmatch(match[1]) and _is_held(match[1], _outside(strip.text, match), lexicon):
            at = strip.text[: match.start()].rstrip().endswith("@")
            _fill(strip, match.start(), match.start() + 1, " " if at else "@")
            _fill(strip, match.end() - 1, match.end(), " ")
            continue
        said = match[1].replace(NOTE, " ").strip(" ;,")
        inner = Strip(match[1])
        facts: Facts = {}
        take_phrases(facts, inner)
        if not _ALONE.search(inner.left) and "work_s" not in facts:
            facts_of_row |= facts
            _take(strip, match)
            continue
        if _DURATION.fullmatch(match[1].strip()) and _SETS.search(_outside(strip.text, match)):
            facts_of_row.setdefault("rest_s", seconds(match[1].strip()))
            strip.blank(*match.span())
            continue
        piece = read_piece(match[1], match.start(1), lexicon, unit)
        if not piece.meaning and not facts and piece.unread and (told := told_by(said)):
            facts_of_row |= take_effort(facts_of_row, told) | facts_of_row
            _take(strip, match)
            continue
        in_so_many = piece.sets and piece.amount and _is_all_of(piece.sets * piece.amount, strip.text, match)
        says = piece.says_anything or piece.unit
        sides = piece.amount and (piece.per_side or piece.amount == piece.second_amount)
        counted_again = sides and not piece.sets and _DIGIT.search(_outside(strip.text, match))
        if "work_s" not in facts and (
            piece.meaning or piece.unread or piece.notes or not says or counted_again or in_so_many
        ):
            notes.append((match.start(), row.text[match.start(1) : match.end(1)].strip()))
            _fill(strip, match.start(), match.end(), NOTE)
        else:
            _fill(strip, match.start(), match.start() + 1, " ")
            _fill(strip, match.end() - 1, match.end(), " ")
    return notes


def _take(strip: Strip, bracket: re.Match[str]) -> None:
    """Takes a bracket away, but for the place of a pace in it, which is a note already."""
    _fill(strip, *bracket.span(), NOTE if NOTE in bracket[1] else Strip.MARK)


def _is_held(inside: str, outside: str, lexicon: Lexicon) -> bool:
    """Whether `2x20` is a load: beside a thing that is held, as a pair, or in kg; `120 m run (2 x 60)` is none."""
    things = (lexicon.catalogue.implement_by_name(word) for word in _WORD.findall(outside))
    return (
        "/" in inside or _MASS.search(inside) is not None or any(one and one.kind == "held" for one in things)
    )


def _is_all_of(amount: float, text: str, bracket: re.Match[str]) -> bool:
    """Whether a bracket parts what stands in front of it: `120 m shuttle run (6 x 20)`."""
    told = re.search(r"(?<![0-9.x])[0-9]{1,5}(?![0-9.]|\s?x)", _outside(text, bracket))
    return told is not None and float(told[0]) == amount


def _outside(text: str, bracket: re.Match[str]) -> str:
    """The item that a bracket stands in: `lunges x 20 (10 each leg)`, without what is counted around it."""
    before = re.split(r"[,;:](?=\s)|\s\+\s", text[: bracket.start()])[-1]
    return before + re.split(r"[,;:](?=\s)|\s\+\s", text[bracket.end() :])[0]


def _fill(strip: Strip, start: int, end: int, character: str) -> None:
    strip.text = strip.text[:start] + character * (end - start) + strip.text[end:]
