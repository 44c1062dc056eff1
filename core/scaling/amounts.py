"""How much of a way stands for the written amount, and how much of it is one set's work."""

from typing import NamedTuple

from core.measures import AmountUnit
from core.movements.values import Movement, Variant
from core.sessions.values import Block, Format, Line

ROUND_TO = {AmountUnit.SECONDS: 5, AmountUnit.METRES: 10}

# Estimates: a lunge or a step covers this much ground, and a kilocalorie on a machine takes this long at twelve a
# minute.
STEP_M = 0.75
SECONDS_PER_KCAL = 5.0

# What somebody should at least be able to do where the coach wants as much as goes (estimates).
AT_LEAST = {AmountUnit.REPS: 10.0, AmountUnit.SECONDS: 20.0}

Done = tuple[Movement, Variant]


class Amount(NamedTuple):
    """`shown` as it would stand in the version, in `unit`; `in_a_set` what one side works in one set.

    None where the coach wrote none, and where no count applies.
    """

    unit: AmountUnit
    per_side: bool
    shown: float | None
    in_a_set: float | None


def amount_of(block: Block, line: Line, written: Done, to: Done) -> Amount:
    """The amount of a way `to` that stands for the `written` one."""
    movement, variant = to
    unit, sides = _unit(line, written, to), movement.sides_of(variant)
    per_side = line.per_side and sides != "both"
    amount = max(block.scheme) if block.scheme else line.amount
    if amount is not None:
        both_sides = amount * 2 if line.per_side and not per_side else amount
        amount = _carried(both_sides, line, written, to, unit)
    if movement.k is None:
        return Amount(unit, per_side, amount, None)
    counted = _at_least(block, movement, variant) if amount is None else _counted(amount, unit, to)
    one_side = sides != "both" and not per_side and line.side not in {"left", "right"}
    return Amount(unit, per_side, amount, counted / 2 if counted and one_side else counted)


def written_unit(line: Line, written: Done) -> AmountUnit:
    """The unit that the coach wrote; bare numbers are in the movement's own."""
    movement, variant = written
    return movement.unit_of(variant) if line.unit is AmountUnit.REPS else line.unit


def _unit(line: Line, written: Done, to: Done) -> AmountUnit:
    """Time stays time whatever is done; metres and kilocalories stay with the movement they are of."""
    unit = written_unit(line, written)
    if unit is AmountUnit.SECONDS and written[0].unit_of(written[1]) is not AmountUnit.SECONDS:
        return unit
    same = written[0].id == to[0].id and written[0].unit_of(written[1]) is to[0].unit_of(to[1])
    return unit if same else to[0].unit_of(to[1])


def _carried(amount: float, line: Line, written: Done, to: Done, unit: AmountUnit) -> float:
    """The amount in the unit of a stand-in: the same where the unit is the same, else by its time."""
    given = written_unit(line, written)
    if unit is given:
        return amount
    wanted = amount * _seconds(given, written) / _seconds(unit, to)
    step = ROUND_TO.get(unit, 1)
    return float(max(step, step * round(wanted / step)))


def _seconds(unit: AmountUnit, done: Done) -> float:
    """What one of this unit takes."""
    movement, variant = done
    if unit is AmountUnit.SECONDS:
        return 1.0
    if unit is AmountUnit.KCAL:
        return SECONDS_PER_KCAL
    by_steps = unit is AmountUnit.METRES and movement.unit_of(variant) is AmountUnit.REPS
    return variant.seconds.value / STEP_M if by_steps else variant.seconds.value


def _counted(amount: float, unit: AmountUnit, done: Done) -> float:
    """In what the movement counts by itself: repetitions, or seconds of a hold."""
    own = done[0].unit_of(done[1])
    return amount if unit is own else amount * _seconds(unit, done) / _seconds(own, done)


def _at_least(block: Block, movement: Movement, variant: Variant) -> float | None:
    """Where as much as goes is wanted, what should go at least."""
    if block.format not in {Format.MAX_REPS, Format.HOLD}:
        return None
    return AT_LEAST.get(movement.unit_of(variant))
