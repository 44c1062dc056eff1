"""A ladder told by its first rungs: `2 cleans 2 squats`, `4 cleans 4 squats`, `6 cleans 6 squats` is 2-4-6 of each."""

import re
from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from core.measures import AmountUnit
from core.notation.boards.drafts import Draft
from core.notation.boards.reading import Reading
from core.notation.boards.unread import Stretch
from core.notation.lines.pieces import Piece
from core.notation.phrases.manners import GOES_ON
from core.notation.quantities import MINUTE_S
from core.notation.values import NotUnderstood
from core.sessions.values import Format

_ROUND = re.compile(r"\W*(?:round|rd) (?P<n>[1-9])\b\W*", re.IGNORECASE)
# Two rungs of one thing may be any two lines.
_FEWEST_OF_ONE = 3
# So many more each minute are a ladder; more are turns (an estimate).
_STEEPEST = 3
_CLIMBED = frozenset({Format.AMRAP, Format.FOR_TIME, Format.INTERVALS})


def as_ladder(draft: Draft) -> Draft:
    """The part with each thing once and a scheme, where its lines are the rungs of a ladder in even steps."""
    draft = _by_the_minute(_climbing(draft))
    said = draft.facts.get("format")
    plain = not draft.facts.keys() & {"scheme", "rounds"} and not (draft.buy_in or draft.cash_out)
    if said not in _CLIMBED or not plain:
        return draft
    fewest = 2 if GOES_ON in draft.notes else _FEWEST_OF_ONE
    sizes = range(1, len(draft.lines) // 2 + 1)
    scheme = next((found for size in sizes if (found := _rungs(draft.pieces, size, fewest))), ())
    if not scheme:
        return draft
    first = draft.lines[: len(draft.lines) // len(scheme)]
    lines = [placed._replace(piece=replace(placed.piece, amount=None, station=None)) for placed in first]
    on = [GOES_ON] if said is not Format.FOR_TIME and GOES_ON not in draft.notes else []
    facts = {name: told for name, told in draft.facts.items() if name not in {"amount", "amount_to"}}
    return replace(draft, lines=lines, facts=facts | {"scheme": scheme}, notes=[*draft.notes, *on])


def _climbing(draft: Draft) -> Draft:
    """`1 thruster, 1 burpee, add one each round`: as many of each, and so many more each time."""
    facts = dict(draft.facts)
    step = facts.pop("climbs", None)
    draft = replace(draft, facts=facts)
    amounts = {piece.amount for piece in draft.pieces if piece.unit is None}
    if step is None or len(amounts) != 1 or not (first := int(amounts.pop() or 0)):
        return draft
    facts |= {"scheme": (first, first + step, first + 2 * step)}
    facts.setdefault("format", Format.AMRAP)
    lines = [
        placed._replace(piece=replace(placed.piece, amount=None, maybe_kg=None)) for placed in draft.lines
    ]
    return replace(draft, facts=facts, lines=lines, notes=[*draft.notes, GOES_ON])


def _by_the_minute(draft: Draft) -> Draft:
    """`min 1: 1 burpee`, `min 2: 2 burpees`, `and so on`: each minute so many more."""
    pieces = draft.pieces
    first = pieces[0] if pieces else None
    counted = (
        first is not None
        and first.station == 1
        and (first.amount or 0) in range(1, _STEEPEST + 1)
        and all(
            one.meaning == first.meaning
            and one.unit is None
            and one.amount == (one.station or 0) * (first.amount or 0)
            for one in pieces
        )
    )
    enough = len(pieces) >= (2 if GOES_ON in draft.notes else _FEWEST_OF_ONE)
    if (
        not (counted and enough)
        or "rounds" in draft.facts
        or draft.facts.get("every_s", MINUTE_S) != MINUTE_S
    ):
        return draft
    facts = draft.facts | {"format": Format.INTERVALS, "every_s": float(MINUTE_S)}
    if cap_s := facts.pop("cap_s", None):
        facts.setdefault("minutes", cap_s / MINUTE_S)
    return replace(draft, facts=facts)


def _rungs(pieces: Sequence[Piece], size: int, fewest: int) -> tuple[int, ...]:
    """How many of each a rung has, if the lines are rungs of so many things; else nothing. `fewest`: of one thing."""
    if len(pieces) % size:
        return ()
    rungs = [pieces[at : at + size] for at in range(0, len(pieces), size)]
    alike = all([one.meaning for one in rung] == [one.meaning for one in rungs[0]] for rung in rungs)
    amounts = [{one.amount for one in rung} for rung in rungs]
    counted = all(one.amount and one.unit is None and not (one.sets or one.amount_to) for one in pieces)
    if not (alike and counted) or any(len(each) > 1 for each in amounts):
        return ()
    told = [int(each.pop() or 0) for each in amounts]
    steps = {later - before for before, later in pairwise(told)}
    enough = len(rungs) >= (fewest if size == 1 else 2)
    return tuple(told) if enough and len(steps) == 1 and 0 not in steps else ()


def climbs_by_round(draft: Draft, reading: Reading) -> bool:
    """Whether a row tells how many of each there are in the next round: `Round 1: 10 squats`, `Round 2: 15 each`.

    All of it is then a ladder. A number that fits nowhere is shown.
    """
    each = reading.facts.get("amount")
    if each is None or reading.has_work or not draft.lines:
        return False
    match = _ROUND.match(reading.row.text)
    amounts = {piece.amount for piece in draft.pieces}
    before = draft.facts.get("scheme") or tuple(int(one) for one in amounts if one)
    counted = all(piece.unit in {None, AmountUnit.REPS} and not piece.sets for piece in draft.pieces)
    if match is None or len(amounts) != 1 or not counted or int(match["n"]) != len(before) + 1:
        if None not in amounts:
            reading.facts = {name: told for name, told in reading.facts.items() if name != "amount"}
            reading.unread.append(Stretch(0, len(reading.row.text.rstrip())))
        return False
    draft.facts["scheme"] = (*before, int(each))
    draft.lines = [one._replace(piece=replace(one.piece, amount=None)) for one in draft.lines]
    reading.facts = {name: told for name, told in reading.facts.items() if name != "amount"}
    reading.pieces.clear()
    return True


def names_a_round(unread: NotUnderstood) -> bool:
    """Whether it is no more than the number of a round."""
    return _ROUND.fullmatch(unread.text) is not None
