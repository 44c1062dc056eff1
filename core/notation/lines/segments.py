"""Where one thing to do ends and the next begins in a row: `10 squats + 5 burpees, 400 m run`."""

import re
from dataclasses import replace
from itertools import pairwise

from core.measures import AmountUnit, MassUnit
from core.notation.lines.choices import choice_of
from core.notation.lines.pieces import Piece
from core.notation.lines.reading import read_piece
from core.notation.names.catalogued import Lexicon

_PARTING = re.compile(
    r";+|,(?:\s(?!or\s[0-9])|$)|\s\+\s(?!right\b|(?<=\bclean\s\+\s)(?:jerk|press)(?:e?s)?\b)|:(?=\s|$)|(?<![0-9])\s-\s|\s-\s(?![0-9])|(?<!\balt)(?<!\bw)(?<!\bea)[.!](?:\s|$)|\s\|\s"
    r"|\s(?:then|into)\s"
)
_JOINED = re.compile(r"\s(?:and|&|plus)\s|\swith\s(?=[0-9]{1,2}\s?x)|\s?\+\s?|\s?&\s?|\s/\s(?=[0-9])")
# `500-400-300 m row`, `1-2-3-2-1 min row`, `1'-2'-3' row`: as many lines
_STAGES = re.compile(
    r"^(?P<front>\s*(?:[a-z]+\s){0,3})(?P<numbers>[0-9]{1,4}(?:\s?(?:min|s|m|')?\s?-{1,3}\s?[0-9]{1,4}){2,9}"
    r"|[1-9][0-9]{2,3}(?:\s[1-9][0-9]{2,3}){2,9})\s?"
    r"(?P<rest>(?:k?m(?:et(?:re|er)s)?(?:\s[a-z]|\s*$)|min(?:ute)?s?\b|sec(?:ond)?s?\b|s\b|').*|\s*)$"
)
_BETWEEN_STAGES = re.compile(r"(?<=[0-9]\smin|[0-9]\ssec)\s-\s(?=[0-9]{1,3}\s(?:min|sec)\b)")
# `skips / sit-ups` under a scheme; behind an amount it is a choice
_SLASHED = re.compile(r"(?<=[a-z0-9])\s/\s(?=[a-z0-9])")
# `21-15-9 thrusters/pull-ups`; `row/bike` is a choice, and `w/` and `and/or` join words
_BARE_SLASH = re.compile(r"(?<=[a-z]{3})/(?=[a-z]{2}[a-z0-9 \-]+$)")
# `3 @ 70% 3 @ 80%`: the next set
_NEXT_SET = re.compile(r"(?<=%)\s(?=[0-9]{1,2}\+?\s?@)")
# `400 m run 15 push-ups`: the next one begins with its amount
_RUN_ON = re.compile(
    r"(?<=[a-z0-9)])(?<!\bor)\s{1,3}(?:and\s|\+\s)?(?=[0-9]{1,4}(?:/[0-9]{1,3})?\s?(?:k?m|cal|s|sec|min|x)?\s[a-z])"
)


def stages_bound(text: str) -> str:
    """The text with the stages of a pyramid bound together, so that no dash parts them: `1 min - 2 min - 1 min`."""
    return _BETWEEN_STAGES.sub("---", text)


def segments(text: str) -> list[tuple[int, int]]:
    marks = [(0, 0), *(match.span() for match in _PARTING.finditer(text)), (len(text), len(text))]
    return [(before[1], after[0]) for before, after in pairwise(marks)]


def split(text: str, start: int, lexicon: Lexicon, unit: MassUnit) -> list[Piece]:
    """One piece, or several joined by `and` or each begun by its amount, if only so all is understood."""
    if pieces := _stages(text, start, lexicon, unit) or _both(text, start, lexicon, unit):
        return pieces
    if first := choice_of(text, start, lexicon, unit):
        return [first]
    whole = read_piece(text, start, lexicon, unit)
    if whole.meaning and not (whole.unread or whole.is_loose or _SLASHED.search(text)):
        return [whole]
    if _NEXT_SET.search(text):
        return _cut(text, start, _NEXT_SET, lexicon, unit)
    for joints in (_JOINED, _SLASHED, _RUN_ON):
        if not joints.search(text):
            continue
        pieces = _cut(text, start, joints, lexicon, unit)
        told = [bool(piece.amount) for piece in pieces]
        choice = joints is _SLASHED and any(told) and not all(told)
        if len(pieces) > 1 and not choice and all(piece.meaning for piece in pieces):
            return pieces
    return [whole]


def _both(text: str, start: int, lexicon: Lexicon, unit: MassUnit) -> list[Piece]:
    """Two things with a stroke between them that are counted, neither with a number of its own; else none."""
    if not _BARE_SLASH.search(text):
        return []
    pieces = _cut(text, start, _BARE_SLASH, lexicon, unit)
    told = any((piece.amount and not piece.maybe_kg) or piece.unread or not piece.meaning for piece in pieces)
    moves = {piece.meaning.movement for piece in pieces if piece.meaning}
    counted = all(piece.meaning and piece.meaning.unit is AmountUnit.REPS for piece in pieces)
    return [] if told or not counted or len(moves) < len(pieces) else pieces


def _stages(text: str, start: int, lexicon: Lexicon, unit: MassUnit) -> list[Piece]:
    """A piece for each stage where all of it is understood; else none."""
    stages = _STAGES.match(text)
    if stages is None:
        return []
    unit_told = stages["rest"].strip() or ("" if "-" in stages["numbers"] else "m")
    each = (f"{stages['front']}{number} {unit_told}" for number in re.findall("[0-9]+", stages["numbers"]))
    pieces = [replace(read_piece(one, start, lexicon, unit), end=start + len(text)) for one in each]
    timed = all(piece.unit in {AmountUnit.SECONDS, AmountUnit.METRES} for piece in pieces)
    understood = all((piece.meaning or timed) and not piece.unread for piece in pieces)
    return pieces if understood else []


def is_in_stages(pieces: list[Piece]) -> bool:
    """Whether all pieces are stages told at one place, of each of which counts what stands beside them."""
    return len(pieces) > 1 and len({(piece.start, piece.end) for piece in pieces}) == 1


def _cut(text: str, start: int, joints: re.Pattern[str], lexicon: Lexicon, unit: MassUnit) -> list[Piece]:
    spans = [(0, 0), *(joint.span() for joint in joints.finditer(text)), (len(text), len(text))]
    stretches = [(before[1], after[0]) for before, after in pairwise(spans)]
    return [read_piece(text[left:right], start + left, lexicon, unit) for left, right in stretches]
