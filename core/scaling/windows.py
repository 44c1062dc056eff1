"""What a set of a line is meant to cost, from the coach's rule, the written pair or the format."""

from decimal import Decimal
from math import exp

from core.ability.demand import load_moved
from core.ability.norms import BODY_MASS, expected
from core.athletes.values import Profile, Sex
from core.movements.values import Hold
from core.scaling.intent import (
    SETS,
    Window,
    by_format,
    paired_window,
    ruled_window,
    turns_of,
    usual_window,
)
from core.scaling.ways import Way
from core.sessions.values import Block, Line

# Whom the first and the second load of a written pair are meant for, unless an athlete says otherwise.
PAIR = (Sex.MALE, Sex.FEMALE)


def share_of(less: Way, whole: Way) -> float:
    """How much of a whole set an eased one is."""
    if less.set_amount is None or not whole.set_amount:
        return 1.0
    return less.set_amount / whole.set_amount


def windows_of(block: Block, line: Line, written: Way, hold: Hold | None) -> tuple[Window, Window]:
    """For whom the first load of a written pair is meant, and for whom the second is."""
    if written.set_amount is None:
        usual = usual_window(block)
        return usual, usual
    seconds = written.set_amount * written.variant.seconds.value
    usual, ruled = usual_window(block, seconds), ruled_window(block, line, written.set_amount, seconds)
    if line.load_rule and line.load_rule.unbroken is True:
        usual = usual.under(SETS.high)
    if ruled is not None:
        return ruled, ruled
    if len(line.loads_kg) < len(PAIR) or hold is None:
        return usual, usual
    first, second = (
        _reference_cost(written, hold, load, sex) for load, sex in zip(line.loads_kg, PAIR, strict=False)
    )
    return paired_window(usual, first), paired_window(usual, second)


def unhurried(block: Block, line: Line, written: Way) -> Window | None:
    """The window that the format has by itself, where the rests narrow it and the coach has no rule."""
    if written.set_amount is None or turns_of(block, 0.0) is None:
        return None
    return None if ruled_window(block, line, written.set_amount) else by_format(block)


def _reference_cost(written: Way, hold: Hold, load_kg: Decimal, sex: Sex) -> float:
    """What the written amount costs a trained reference athlete: the norm of the sex, a good step above."""
    assert written.movement.k is not None
    assert written.set_amount is not None
    mass = BODY_MASS[sex]
    norm = expected(written.movement.pattern, Profile(name="reference", sex=sex))
    strength = exp(norm.log_strength + norm.spread) * mass * written.variant.ratio.value
    moved = load_moved(written.variant, mass, hold, float(load_kg))
    unbroken = written.movement.k.value * (strength / moved - 1)
    return written.set_amount / max(unbroken, 1.0)
