"""What a coach leaves to each: `12 cal row / 200 m run`, `20 sit-ups or v-ups`, `15 wall balls (or thrusters)`."""

import re
from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise
from typing import Final

from core.measures import AmountUnit, MassUnit
from core.notation.lines.pieces import FAR, Piece
from core.notation.lines.reading import read_piece
from core.notation.names.catalogued import Lexicon

# `row/bike` is a choice behind an amount; `w/` and `and/or` only join words.
_OR: Final = re.compile(r"\s(?:or|/)\s|\s\u2228|(?<=[a-z]{3})(?<!\band)(?<!\bwith)/(?=[a-z]{3})")
# `run, row or bike`: what a comma parts, bound together.
_LISTED: Final = re.compile(r"(?P<one>[a-z][a-z \-]*),\s(?=(?P<next>[a-z][a-z \-]*?),?\sor\s[a-z])")
_BOUND: Final = " \u2228"
_BEGINS: Final = re.compile(r"^or\s(?=.*[a-z])", re.IGNORECASE)
_MOST: Final = 4
_GONE: Final = FAR | {AmountUnit.SECONDS}


def choice_of(text: str, start: int, lexicon: Lexicon, unit: MassUnit) -> Piece | None:
    """The first of what may be done, the others with it and in the coach's words beside it; None where it is none."""
    joints = list(_OR.finditer(text))
    if not 0 < len(joints) < _MOST:
        return None
    told = list(_read(text, joints, start, lexicon, unit))
    first, *others = _as_much(told)
    slashed = any("/" in joint[0] for joint in joints)
    if not all(map(_is_plain, (first, *others))) or (slashed and not _is_one_of(told)):
        return None
    said = text[joints[0].end() :].replace(_BOUND, ",").strip(" .,;")
    if first.amount and not told[0].amount:  # `row or bike 20 min easy` is said of both
        said = " or ".join(one.meaning.spelling for one in others if one.meaning)
    return replace(
        first, end=others[-1].end, notes=(*first.notes, f"or {said}"), others=_unlike(first, others)
    )


def choices_bound(text: str, lexicon: Lexicon) -> str:
    """The text with the things bound together that an `or` leaves to each, so that no comma parts them."""

    def bound(match: re.Match[str]) -> str:
        before = match["one"].split()
        named = any(lexicon.exact(" ".join(before[at:])) for at in range(len(before)))
        return match["one"] + (_BOUND if named and lexicon.exact(match["next"]) else ", ")

    return _LISTED.sub(bound, text) if " or " in text else text


def begins_with_or(piece: Piece) -> bool:
    """Whether it is one more way to do what stands in the row above: `or 12 ring rows`."""
    return piece.meaning is not None and _BEGINS.match(piece.text) is not None


def also(piece: Piece, other: Piece) -> Piece:
    """The piece with one more way to do it."""
    said = _BEGINS.sub("", other.text)
    other = replace(other, text=said, notes=tuple(note for note in other.notes if note != "or"))
    return replace(
        piece,
        text=f"{piece.text} or {said}",
        notes=(*piece.notes, f"or {said}"),
        others=(*piece.others, *_as_much([piece, other])[1:]),
    )


def with_noted(piece: Piece, lexicon: Lexicon, unit: MassUnit) -> Piece:
    """The piece with what a note leaves to each, where that is all of the note: `(or thrusters)`."""
    if piece.meaning is None or piece.others:
        return piece
    noted = (_BEGINS.sub("", note).lower() for note in piece.notes if _BEGINS.match(note))
    told = [read_piece(one, piece.start, lexicon, unit) for note in noted for one in _OR.split(note)]
    others = _as_much([piece, *told])[1:]
    return replace(piece, others=_unlike(piece, others)) if told and all(map(_is_plain, others)) else piece


def _read(
    text: str, joints: list[re.Match[str]], start: int, lexicon: Lexicon, unit: MassUnit
) -> Iterator[Piece]:
    spans = [(0, 0), *(joint.span() for joint in joints), (len(text), len(text))]
    for before, after in pairwise(spans):
        yield read_piece(text[before[1] : after[0]], start + before[1], lexicon, unit)


def _is_plain(piece: Piece) -> bool:
    """Whether all of it is known."""
    return piece.meaning is not None and not (piece.unread or piece.is_loose)


def _is_one_of(told: list[Piece]) -> bool:
    """Whether a stroke parts ways to do one thing: one amount is told of them all, or each goes so far."""
    first, *others = told
    return bool(first.amount) and (
        not any(one.amount for one in others) or all(one.unit in FAR for one in told)
    )


def _unlike(first: Piece, others: list[Piece]) -> tuple[Piece, ...]:
    """Those that are another thing than the first."""
    return tuple(one for one in others if one.meaning != first.meaning)


def _as_much(pieces: list[Piece]) -> list[Piece]:
    """Who tells no amount or load takes that of the first, and the first that of the last: `run or row 20 min`."""
    first, last = pieces[0], pieces[-1]
    if not first.amount and not first.most and last.amount and _fits(first, last):
        pieces = [_with_amount(first, last), *pieces[1:]]
    model = _with_load(pieces[0], last)
    return [model, *(_with_load(_with_amount(one, model), model) for one in pieces[1:])]


def _with_amount(piece: Piece, model: Piece) -> Piece:
    if piece.amount or piece.most or not _fits(piece, model):
        return piece
    return replace(
        piece,
        amount=model.amount,
        amount_to=model.amount_to,
        second_amount=model.second_amount,
        unit=model.unit,
        per_side=model.per_side,
        sets=model.sets,
        notes=piece.notes or (model.notes if model.unit is AmountUnit.SECONDS else ()),
    )


def _fits(piece: Piece, model: Piece) -> bool:
    """Whether so much can be done of it: repetitions of what is counted, metres of what goes, seconds of anything."""
    if piece.meaning is None:
        return False
    unit = model.unit or AmountUnit.REPS
    if unit in FAR:
        return piece.meaning.unit in _GONE and piece.meaning.goes
    return unit is AmountUnit.SECONDS or piece.meaning.unit is unit


def _with_load(piece: Piece, model: Piece) -> Piece:
    held = piece.meaning is not None and piece.meaning.held
    told = piece.loads_kg or piece.load_rule
    return piece if told or not held else replace(piece, loads_kg=model.loads_kg, load_rule=model.load_rule)
