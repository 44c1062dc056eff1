"""How much of a line is done: `12`, `8-10`, `15/12 cal`, `30 s`, `12/12`."""

import re

from core.measures import AmountUnit, MassUnit
from core.notation.lines.pieces import Piece
from core.notation.quantities import (
    COUNT_WORD,
    DISTANCE_UNIT,
    DURATION,
    ENERGY_UNIT,
    MASS_UNIT,
    NUMBER,
    NUMBER_WORDS,
    metres,
    seconds,
)
from core.notation.text import Strip


def shape(pattern: str) -> re.Pattern[str]:
    """A pattern in which `<num>` is a number and `<mass>` a unit of mass."""
    return re.compile(pattern.replace("<num>", NUMBER).replace("<mass>", MASS_UNIT))


UNITS = rf"(?:reps?\b|repetitions?\b|times\b|{ENERGY_UNIT}\b|{DISTANCE_UNIT}\b)"
TIME_UNITS = r"(?:s|secs?|seconds?|mins?|minutes?)\b"
# `12/12 side bends`: so many on each side
_EQUAL_PAIR = shape(rf"(?<![0-9./])(?P<a><num>)\s?/\s?(?P=a)(?![0-9./])\s?(?P<u>{UNITS}|{TIME_UNITS})?")
_PAIR_AMOUNT = shape(rf"^[\s;:]*(?P<a><num>)\s?/\s?(?P<b><num>)(?!\s?[/0-9.])\s?(?P<u>{UNITS}|{TIME_UNITS})?")
_RANGE_TIME = shape(rf"(?P<a><num>)\s?(?:-|to)\s?(?P<t>{DURATION})")
TIME = shape(rf"(?<![0-9.\-])(?P<t>{DURATION})")
_AMOUNT = (
    rf"(?P<a><num>|\b(?:{COUNT_WORD})\b(?![\s\-]?(?:arm|leg|hand|side)))(?:\s?(?:-|to)\s?(?P<b><num>))?\s?"
    rf"(?:(?P<u>{UNITS})|x(?![a-z0-9])|(?![0-9%/.x]))"
)
_AMOUNT_FIRST = shape(rf"^[\s;:]*(?:x\s?|an?\s(?=hundred|dozen))?{_AMOUNT}(?:\sof\b)?")
# `Hard one` counts nothing.
_AMOUNT_LAST = shape(
    rf"(?:(?<=[a-z;)])\s?[\s:\-x=*]\s?|(?<=[x;])\s?)(?<![0-9.\-])(?!(?<!to\s)one\b){_AMOUNT}[\s;.+]*$"
)
# `bulgarians 8 e/leg 2x20 kg dbs`: the number beside what was taken already
_AMOUNT_AMID = shape(r"(?<=[a-z])\s(?P<a>[0-9]{1,3})(?P<b>)(?P<u>)\s?(?=;)")
# The one number that is left tells how much, wherever it stands: `leg swings front to back 10 each`
_AMOUNT_LEFT = shape(
    r"^[^0-9]*[\s;:x](?P<a>[0-9]{1,3})(?P<b>)(?P<u>)(?![0-9.:/%x]|\s?[x+]\s?[0-9])(?=[\s;:.])[^0-9]*$"
)
# `21-15-9 cal row`: how many stands elsewhere.
ENERGY_ALONE = shape(
    rf"^[\s;:]*{ENERGY_UNIT}(?:\s(?=[a-z])|$)|(?<=[a-z])[\s;]+(?:for\s)?(?:max\s)?{ENERGY_UNIT}[\s;.]*$"
)
# `row cal 10`, `bike, cals: 15`
_ENERGY_LAST = shape(rf"(?<=[a-z])[\s;]+{ENERGY_UNIT}\s?[:x\-]?\s?(?P<a><num>)[\s;.]*$")
_AMOUNT_UNIT = shape(rf"(?<![0-9.\-/])(?P<a><num>)(?:\s?(?:-|to)\s?(?P<b><num>))?\s?(?P<u>{UNITS})")


def read_amount(piece: Piece, strip: Strip, _: MassUnit) -> None:
    """How much is done: a pair, a time, or a number with its unit or without."""
    if piece.most or piece.amount or _read_calories_last(piece, strip) or _read_both(piece, strip):
        return
    if match := strip.take(_RANGE_TIME):
        piece.amount_to, piece.unit = seconds(match["t"]), AmountUnit.SECONDS
        piece.amount = float(match["a"]) * (60 if "m" in match["t"] or "'" in match["t"] else 1)
    elif match := strip.take(TIME):
        piece.amount, piece.unit = seconds(match["t"]), AmountUnit.SECONDS
    elif (
        match := strip.take(_AMOUNT_FIRST)
        or strip.take(_AMOUNT_UNIT)
        or strip.take(_AMOUNT_LAST)
        or strip.take(_AMOUNT_AMID)
    ):
        piece.amount, piece.unit = amount_of(match["a"], match["u"])
        piece.amount_to = amount_of(match["b"], match["u"])[0] if match["b"] else None
    elif strip.take(ENERGY_ALONE):
        piece.unit = AmountUnit.KCAL
    elif match := _AMOUNT_LEFT.match(strip.text):
        strip.blank(*match.span("a"))
        piece.amount = float(match["a"])


def _read_both(piece: Piece, strip: Strip) -> bool:
    """Two numbers: so many on each side, or for the first and the second of two."""
    if match := strip.take(_EQUAL_PAIR):
        piece.amount, piece.unit = amount_of(match["a"], match["u"])
        piece.per_side = True
    elif match := strip.take(_PAIR_AMOUNT):
        piece.amount, piece.unit = amount_of(match["a"], match["u"])
        piece.second_amount, _unit = amount_of(match["b"], match["u"])
    return match is not None


def _read_calories_last(piece: Piece, strip: Strip) -> bool:
    match = strip.take(_ENERGY_LAST)
    if match:
        piece.amount, piece.unit = float(match["a"]), AmountUnit.KCAL
    return match is not None


def amount_of(number: str, unit: str | None) -> tuple[float, AmountUnit | None]:
    """A number as it is typed, with the unit of its words."""
    value = float(NUMBER_WORDS.get(number, 0) or number)
    if not unit:
        return value, None
    if unit.startswith(("rep", "tim")):
        return value, AmountUnit.REPS
    if unit.startswith(("cal", "kcal")):
        return value, AmountUnit.KCAL
    if unit.startswith("s"):
        return value, AmountUnit.SECONDS
    if unit.startswith("min"):
        return value * 60, AmountUnit.SECONDS
    return metres(f"{value}", unit), AmountUnit.METRES
