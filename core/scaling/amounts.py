"""How much of a way stands for the written amount, and how much of it is one set's work."""

from math import ceil, floor
from typing import NamedTuple

from core.measures import AmountUnit
from core.movements.values import Movement, Part, Pattern, Variant
from core.scaling.doses import dose_of
from core.sessions.values import Block, Format, Line

ROUND_TO = {AmountUnit.SECONDS: 5, AmountUnit.METRES: 10}

# Estimates: a lunge or a step covers this much ground, and a kilocalorie on a machine takes this long at twelve a
# minute.
STEP_M = 0.75
SECONDS_PER_KCAL = 5.0

# A repetition of so many seconds is a piece of work by itself: a rope climb, a wall walk. Half of it is hard, so it
# stands for as many of another movement as fill that half (estimates: a climb is four pull-ups). Who travels works
# all the way.
LONG_S = 10.0
HARD_PART = 0.5
# However long it takes: nobody does thirty dead bugs a side for five get-ups (estimate, from the climb).
MOST_FOR_ONE = 4.0
HALF = 0.5
# What both sides do at once is done by one after the other as often, and many a little less often (estimate).
OF_ONE_SIDE = 0.6
FEW, FEW_OF_A_HAND = 10.0, 6.0

A_HAIR = 1e-9
# From so much on people count in any of such steps (common practice, no source).
COUNTED: dict[AmountUnit, tuple[tuple[int, ...], ...]] = {
    AmountUnit.REPS: ((40, 10), (11, 2, 5)),
    AmountUnit.SECONDS: ((300, 60), (90, 30), (10, 5)),
    AmountUnit.METRES: ((1000, 100), (100, 50), (20, 10)),
    AmountUnit.KCAL: (),
}
MANY = 40

# So many are a set, however long each takes: of both sides in turn, four each (estimates).
FEWEST, FEWEST_IN_TURN = 5.0, 8.0
BY_THE_SET = {AmountUnit.REPS, AmountUnit.SECONDS}
# What lasts so many times as long is about as long: another movement, and another way of the same (estimates).
ABOUT_AS_LONG = 1.1, 1.3

# Of a turn that comes with the clock so much is work (common practice: a rest of a quarter or a third).
AT_WORK = 0.75

# What somebody should at least be able to do where the coach wants as much as goes (estimates).
AT_LEAST = {AmountUnit.REPS: 10.0, AmountUnit.SECONDS: 20.0}

Done = tuple[Movement, Variant]


class Asked(NamedTuple):
    """All of a line and its block that says how much of a way stands for it.

    `top`: the most of the block's scheme, where it has one. `one_side`: the coach named it. `clocked`: the next turn
    comes with the clock; `to_the_end`: as much as goes is wanted. `turn_s`: so long the
    clock leaves for a set of the line by itself; None where it leaves as much as it takes.
    """

    amount: float | None
    unit: AmountUnit
    per_side: bool
    one_side: bool
    top: int | None
    clocked: bool
    to_the_end: bool
    turn_s: float | None = None


class Amount(NamedTuple):
    """`shown` as it would stand in the version, in `unit`; `in_a_set` what one side works in one set.

    None where the coach wrote none, and where no count applies. `less`: such a share of what is written it is, as
    nobody does so many of it.
    """

    unit: AmountUnit
    per_side: bool
    shown: float | None
    in_a_set: float | None
    less: float = 1.0


def asked_of(block: Block, line: Line) -> Asked:
    """What a line asks for, in its block."""
    return Asked(
        line.amount,
        line.unit,
        line.per_side,
        line.side in {"left", "right"},
        max(block.scheme, default=None),
        block.format is Format.INTERVALS or block.work_s is not None,
        block.format in {Format.MAX_REPS, Format.HOLD},
        _turn_s(block, line),
    )


def _turn_s(block: Block, line: Line) -> float | None:
    if block.format is not Format.INTERVALS or not block.every_s or block.work_s is not None:
        return None
    beside = sum(one.station == line.station for one in block.lines) if line.station is not None else 1
    return block.every_s / beside


def amount_of(asked: Asked, written: Done, to: Done) -> Amount:
    """The amount of a way `to` that stands for the `written` one."""
    movement, variant = to
    unit, sides = _unit(asked, written, to), movement.sides_of(variant)
    parted = sides == "one" and not asked.per_side and written[0].sides_of(written[1]) != "one"
    per_side = sides != "both" and (asked.per_side or parted)
    amount = asked.amount if asked.top is None else asked.top
    if amount is not None:
        amount = _carried(amount, asked, written, to, unit)
        amount = _parted(amount, asked, to, unit) if parted else amount
    whole = amount
    if amount is not None and _counts_pairs(asked, written, to, unit):
        amount = _of_one_side(amount, unit, variant, clocked=asked.clocked)
    if amount is not None and to != written:
        amount = _within_its_turn(_as_long_as_usual(amount, asked, written, to, unit), asked, to, unit)
    if movement.k is None:
        return Amount(unit, per_side, amount, None)
    at_least = AT_LEAST.get(movement.unit_of(variant)) if asked.to_the_end else None
    counted = at_least if amount is None else _counted(amount, unit, to)
    one_side = sides != "both" and not per_side and not asked.one_side
    less = amount / whole if amount and whole else 1.0
    return Amount(unit, per_side, amount, counted / 2 if counted and one_side else counted, less)


def _counts_pairs(asked: Asked, written: Done, to: Done, unit: AmountUnit) -> bool:
    """Whether both legs do at once what the coach counts by each: steps and lunges, as squats."""
    if unit is not AmountUnit.REPS or asked.per_side or asked.top is not None:
        return False
    in_turn = written[0].sides_of(written[1]) == "alternating" and to[0].sides_of(to[1]) == "both"
    return in_turn and {one.main_of(way) for one, way in (written, to)} == {Part.SQUAT}


def _within_its_turn(amount: float, asked: Asked, to: Done, unit: AmountUnit) -> float:
    """No more of what stands in on the way than leaves a rest before the next turn."""
    if asked.turn_s is None or to[0].pattern is not Pattern.TRAVEL:
        return amount
    takes = amount * _seconds(unit, to)
    most = AT_WORK * asked.turn_s
    return amount if takes <= most else as_counted(amount * most / takes, unit)


def _as_long_as_usual(amount: float, asked: Asked, written: Done, to: Done, unit: AmountUnit) -> float:
    """No more of what nobody wrote than is a set: what lasts as is usual, or about as long as what is written."""
    in_turn = to[0].sides_of(to[1]) == "alternating"
    one = _seconds(unit, to) * (2 if in_turn and asked.per_side else 1)
    given = written_unit(asked, written)
    told_by_time = unit is AmountUnit.SECONDS is given
    if to[0].k is None or told_by_time or unit not in BY_THE_SET or one >= LONG_S:
        return amount
    as_written = (asked.amount or 0.0) * _worth(written, to) * _seconds(given, written)
    fewest, dose = FEWEST_IN_TURN if in_turn and not asked.per_side else FEWEST, dose_of(*to)
    most = max(fewest, max(dose.most_s, dose.of_written * as_written) / one)
    about = ABOUT_AS_LONG[written[0].id == to[0].id]
    return amount if amount <= about * most else as_counted(most, unit)


def _parted(amount: float, asked: Asked, to: Done, unit: AmountUnit) -> float:
    """So many a side; few stay as many in a turn that leaves time for both."""
    few = min(amount, FEW_OF_A_HAND)
    fits = unit is AmountUnit.REPS and asked.turn_s is not None
    if fits and 2 * few * _seconds(unit, to) <= AT_WORK * (asked.turn_s or 0.0):
        return max(few, _of_one_side(amount, unit, to[1], clocked=asked.clocked))
    return _of_one_side(amount, unit, to[1], clocked=asked.clocked)


def _of_one_side(amount: float, unit: AmountUnit, to: Variant, *, clocked: bool) -> float:
    """Of what both sides do at once so many a side: few stay as many, of many rather more than half.

    Where the next turn comes with the clock, half: a minute's work stays a minute's. And of many where hips and legs do
    all of it, whichever hand holds on.
    """
    if clocked:
        step = ROUND_TO.get(unit, 1)
        return float(step * ceil(amount * HALF / step))
    if unit is not AmountUnit.REPS:
        return amount
    if to.one_handed:
        return min(amount, max(float(ceil(amount * HALF)), FEW_OF_A_HAND))
    return min(amount, max(float(ceil(amount * OF_ONE_SIDE)), FEW))


def written_unit(asked: Asked, written: Done) -> AmountUnit:
    """The unit that the coach wrote; bare numbers are in the movement's own."""
    movement, variant = written
    return movement.unit_of(variant) if asked.unit is AmountUnit.REPS else asked.unit


def _unit(asked: Asked, written: Done, to: Done) -> AmountUnit:
    """Time stays time whatever is done, and kilocalories on whatever counts them; metres stay with their movement."""
    unit = written_unit(asked, written)
    goes_on = to[0].pattern is Pattern.TRAVEL or written[0].unit_of(written[1]) is not AmountUnit.SECONDS
    if unit is AmountUnit.SECONDS and goes_on:
        return unit
    if unit is AmountUnit.KCAL and to[1].counts_kcal:
        return unit
    same = written[0].id == to[0].id and written[0].unit_of(written[1]) is to[0].unit_of(to[1])
    return unit if same else to[0].unit_of(to[1])


def _carried(amount: float, asked: Asked, written: Done, to: Done, unit: AmountUnit) -> float:
    """The amount in the unit of a stand-in: the same where one is worth the other, else by its time."""
    given = written_unit(asked, written)
    amount *= _worth(written, to) if given is AmountUnit.REPS else 1.0
    if unit is given and _is_worth_the_same(unit, written, to):
        return amount
    step = rounded_to(unit, to)
    one = _seconds(given, written) / _seconds(unit, to)
    one = min(one, MOST_FOR_ONE) if given is unit is AmountUnit.REPS else one
    told = float(max(step, step * floor(amount * one / step + HALF)))
    return told if told < MANY else as_counted(told, unit, HALF)


def _worth(written: Done, to: Done) -> float:
    """So many of another movement are as much as one of what is written."""
    return written[0].worth.value if written[0].worth and written[0].id != to[0].id else 1.0


def as_counted(amount: float, unit: AmountUnit, up: float = 0.0) -> float:
    """An amount as people count it: 25 s of 27, 12 of 13, 1,900 m of 1,990; to the nearest with `up` at a half."""
    steps = next((steps for least, *steps in COUNTED[unit] if amount >= least), [1])
    return float(max(1, *(step * floor(amount / step + up + A_HAIR) for step in steps)))


def rounded_to(unit: AmountUnit, done: Done, *, per_side: bool = False) -> int:
    """Which steps an amount comes in: five seconds, ten metres, both sides of what changes sides by itself."""
    alternates = unit is AmountUnit.REPS and not per_side and done[0].sides_of(done[1]) == "alternating"
    return 2 if alternates else ROUND_TO.get(unit, 1)


def _is_worth_the_same(unit: AmountUnit, written: Done, to: Done) -> bool:
    """Whether one of a unit is as much of one movement as of the other: not a metre run and a metre rowed."""
    if written[0].id == to[0].id or unit in {AmountUnit.SECONDS, AmountUnit.KCAL}:
        return True
    if unit is AmountUnit.METRES:
        return Pattern.TRAVEL not in {written[0].pattern, to[0].pattern}
    return max(written[1].seconds.value, to[1].seconds.value) < LONG_S


def _seconds(unit: AmountUnit, done: Done) -> float:
    """What one of this unit takes."""
    movement, variant = done
    if unit is AmountUnit.SECONDS:
        return 1.0
    if unit is AmountUnit.KCAL:
        return SECONDS_PER_KCAL
    one = variant.seconds.value
    if unit is AmountUnit.REPS and one >= LONG_S and movement.pattern is not Pattern.TRAVEL:
        return one * HARD_PART
    by_steps = unit is AmountUnit.METRES and movement.unit_of(variant) is AmountUnit.REPS
    return one / STEP_M if by_steps else one


def _counted(amount: float, unit: AmountUnit, done: Done) -> float:
    """In what the movement counts by itself: repetitions, or seconds of a hold."""
    own = done[0].unit_of(done[1])
    return amount if unit is own else amount * _seconds(unit, done) / _seconds(own, done)
