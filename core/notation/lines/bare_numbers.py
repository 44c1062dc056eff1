"""Numbers that say no unit: what is done with them tells whether they are a height, a load or a time."""

import re
from dataclasses import replace

from core.measures import AmountUnit, MassUnit
from core.notation.lines.naming import read_name
from core.notation.lines.pieces import Piece
from core.notation.names.catalogued import Lexicon
from core.notation.quantities import NUMBER, kilograms
from core.sessions.values import EASY, LoadRule

# A box under 30 cm is told in inches, and none is lower than 10 of them (estimates).
# Fewer are sets (an estimate).
_LOWEST_LOAD = 25
_LOWEST_CM, _LOWEST_IN, _HIGHEST_CM = 30, 10, 110
_SHORTEST_RUN_M = 100
_TRAVELLED = frozenset({"run", "row", "ski", "ride", "swim"})
# `6 strides`: so often, each as long as is told elsewhere.
_BOUTS = re.compile(r"^[0-9]{1,2}\s?x?\s(?:[a-z]+\s)?(?:strides|hill (?:repeat|sprint|run)s)\b")
# What is squatted plainly with so much lies on the back (an estimate).
_ON_THE_BACK_KG = 40
# What nobody lifts less or more of than a share of their best, in whole percent (an estimate).
_SHARES = range(50, 96)
_PLAIN_SQUAT = re.compile("squats?$")
_EFFORTS = (5, 5.5, 6, 6.5, 7, 7.5, 8, 8.5, 9, 9.5, 10)
_IN_HANDS = frozenset(("dumbbell", "kettlebell"))
_AT_END = re.compile(rf"^(?P<name>.*[a-z].*?)[\s@x]+(?P<n>{NUMBER})$")
# Nobody is on the machine in sets of so few of no unit (an estimate).
_MOST_PULLS = 30
# On the machine or with a weight: what stands beside it tells.
AMBIGUOUS_ROW = "row"
# Nobody calls several turns on the machine so.
_ROWS = re.compile(r"\brows\b")
_TURN = re.compile(r"^[\W_]*(?:minutes?|min|station)\s?[0-9]{1,2}\s?[:)]\s?", re.IGNORECASE)
_SECONDS = re.compile(r"^(?P<n>[0-9]{1,3})\s?\"$")


def settle(piece: Piece, lexicon: Lexicon, unit: MassUnit) -> None:
    """Gives bare numbers their meaning, where what is done leaves no doubt about it."""
    _settle_run(piece)
    _settle_rest(piece, lexicon, unit)
    _settle_pair(piece, lexicon)
    _settle_weights(piece, lexicon, unit)
    _settle_only_number(piece, lexicon)
    _settle_inches(piece)
    _settle_row(piece, lexicon)
    _settle_share(piece, lexicon)
    if _is_heavy(piece):
        settle_squat(piece, lexicon)
    _settle_load(piece, lexicon, unit)


def _settle_share(piece: Piece, lexicon: Lexicon) -> None:
    """`squat 5x5 @70`: behind sets with a bar, so much for everybody is a share, so little how hard it is.

    Common practice, no source: nobody loads a bar with eight.
    """
    share, barred = piece.bare_share, piece.meaning and lexicon.is_done_with_a_bar(piece.meaning)
    if (
        piece.sets
        and barred
        and piece.implement is None
        and share
        and share in _SHARES
        and len(piece.loads_kg) == 1
    ):
        piece.loads_kg, piece.load_rule = (), LoadRule(percent=share)
    elif piece.sets and barred and share and share in _EFFORTS and len(piece.loads_kg) == 1:
        piece.loads_kg, piece.load_rule = (), LoadRule(effort=share)


def _settle_run(piece: Piece) -> None:
    """`400 run` and `row 500` can only be metres (common practice, no source)."""
    if piece.amount and piece.unit is None and not piece.sets and _BOUTS.search(piece.text.lower()):
        piece.sets, piece.amount = int(piece.amount), None
    if piece.each_far:
        piece.unit, piece.notes = AmountUnit.REPS, (*piece.notes, piece.each_far)
    runs = piece.meaning and piece.meaning.unit is AmountUnit.METRES and piece.meaning.movement in _TRAVELLED
    if runs and piece.unit is None and not piece.most and (piece.amount or 0) >= _SHORTEST_RUN_M:
        piece.unit = AmountUnit.METRES


def _settle_pair(piece: Piece, lexicon: Lexicon) -> None:
    """`10 box jumps 60/50`: nothing is held, so the pair is how high."""
    if piece.bare_pair and _is_high(piece, lexicon, *piece.bare_pair):
        piece.notes += (_height(*piece.bare_pair),)
        piece.loads_kg, piece.bare_pair = (), None
    elif (
        piece.bare_pair
        and piece.meaning
        and piece.meaning.unit is AmountUnit.SECONDS
        and not piece.meaning.held
    ):
        # `plank challenge day 4/30`: nobody loads what is only held so
        piece.notes += ("/".join(piece.bare_pair),)
        piece.loads_kg, piece.bare_pair = (), None


def _settle_rest(piece: Piece, lexicon: Lexicon, unit: MassUnit) -> None:
    """`15 step ups 50`, `10 thrusters 40`: a number is left behind a known name."""
    match = _AT_END.match(piece.unread)
    if match is None or not (piece.amount or piece.most or piece.sets):
        return
    named = Piece(piece.start, piece.text)
    read_name(named, match["name"], lexicon)
    if named.meaning is None or named.meaning.near:
        return
    if named.implement in _IN_HANDS and match["n"] in {"1", "2"}:
        named.count = int(match["n"])
    elif _is_high(named, lexicon, match["n"]):
        named.notes += (_height(match["n"]),)
    elif lexicon.takes_a_load(named.meaning) and not piece.loads_kg:
        piece.loads_kg = (kilograms(match["n"], None, unit),)
    else:
        return
    piece.unread, piece.meaning = "", named.meaning
    piece.implement, piece.count = named.implement or piece.implement, named.count or piece.count
    piece.notes += named.notes


def _settle_weights(piece: Piece, lexicon: Lexicon, unit: MassUnit) -> None:
    """`squat 60x5, 70x5`: nobody does so many sets of what may be loaded."""
    told = piece.unit or piece.loads_kg or piece.load_rule or piece.unread
    if told or not piece.amount or (piece.sets or 0) < _LOWEST_LOAD:
        return
    settle_squat(piece, lexicon)
    if piece.meaning is None or lexicon.takes_a_load(piece.meaning):
        piece.loads_kg, piece.sets = (kilograms(str(piece.sets), None, unit),), None


def _settle_only_number(piece: Piece, lexicon: Lexicon) -> None:
    """`step ups 50 x 20` are no fifty sets, and `step ups 50` without more is how high."""
    if _begins_with_number(piece.text):
        return
    if piece.sets and piece.sets >= _LOWEST_CM and _is_high(piece, lexicon, str(piece.sets)):
        piece.notes, piece.sets = (*piece.notes, _height(str(piece.sets))), None
    elif piece.sets or piece.unit or not piece.amount or piece.amount < _LOWEST_CM or piece.amount % 5:
        return  # fewer than 30, or no step of 5 cm, are repetitions
    elif _is_high(piece, lexicon, f"{piece.amount:g}"):
        piece.notes, piece.amount = (*piece.notes, _height(f"{piece.amount:g}")), None


def _settle_inches(piece: Piece) -> None:
    """`45" side plank`: what is held has no height."""
    held = piece.meaning and piece.meaning.unit is AmountUnit.SECONDS
    for note in piece.notes if held and piece.amount is None else ():
        if match := _SECONDS.match(note):
            piece.amount, piece.unit = float(match["n"]), AmountUnit.SECONDS
            piece.notes = tuple(one for one in piece.notes if one != note)


def _settle_row(piece: Piece, lexicon: Lexicon) -> None:
    """`10 rows per arm @ 20 kg` and `40 s row @ 20 kg` are no machine; in metres it is one."""
    held = piece.loads_kg or piece.per_side or piece.implement
    often = _ROWS.search(piece.text.lower())
    few = 0 < (piece.amount or bool(often)) <= _MOST_PULLS
    counted = piece.unit is None and not piece.most and (piece.sets or often) and few
    if not (counted or (held and piece.unit in {None, AmountUnit.SECONDS})):
        return
    if piece.meaning and piece.meaning.spelling == AMBIGUOUS_ROW:
        one_armed = piece.per_side and piece.implement in {None, "dumbbell", "kettlebell"}
        lifted = lexicon.exact("single-arm row" if one_armed else "bent-over row")
        # Nothing but its sets tells that it is lifted: said back.
        piece.meaning = replace(lifted, near=not (held or often)) if lifted else piece.meaning


def _is_heavy(piece: Piece) -> bool:
    """With a share of one's best, in sets that are to be hard, or more than can be held in front."""
    rules = [piece.load_rule, *(one for one in piece.each_set if isinstance(one, LoadRule))]
    of_best = any(rule and (rule.percent or rule.heavy) for rule in rules)
    of_best |= bool(piece.sets) and any(rule and (rule.effort or 0) > EASY for rule in rules)
    of_best |= piece.implement == "barbell"
    return of_best or any(load >= _ON_THE_BACK_KG for load in piece.loads_kg)


def settle_squat(piece: Piece, lexicon: Lexicon) -> None:
    """A bare `squat` that is heavy is done with a bar."""
    if piece.meaning and _PLAIN_SQUAT.match(piece.meaning.spelling):
        piece.meaning = lexicon.exact("back squat") or piece.meaning


def _settle_load(piece: Piece, lexicon: Lexicon, unit: MassUnit) -> None:
    bare = (
        piece.amount and piece.unit is None and not (piece.loads_kg or piece.amount_to or piece.second_amount)
    )
    if bare and piece.meaning and not _begins_with_number(piece.text) and lexicon.takes_a_load(piece.meaning):
        piece.maybe_kg = kilograms(f"{piece.amount:g}", None, unit)


def _is_high(piece: Piece, lexicon: Lexicon, *numbers: str) -> bool:
    """Whether the numbers are how high; where a load may be held too, only in cm: nobody holds 50 kg so."""
    if piece.meaning is None:
        return False
    lowest, highest = min(map(float, numbers)), max(map(float, numbers))
    if not _LOWEST_IN <= lowest <= highest <= _HIGHEST_CM:
        return False
    steps = lexicon.is_on_a_box(piece.meaning) and lowest >= _LOWEST_CM and not piece.count
    return steps or lexicon.takes_a_height(piece.meaning)


def _begins_with_number(text: str) -> bool:
    """Behind what the turn is called: `Minute 2: 40 step-ups`."""
    return re.match(r"[\W_]*[0-9]", _TURN.sub("", text)) is not None


def _height(*numbers: str) -> str:
    low = min(float(number) for number in numbers)
    return f"{'/'.join(numbers)} {'cm' if low >= _LOWEST_CM else 'in'}"
