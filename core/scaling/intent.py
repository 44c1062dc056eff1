"""What share of fresh capacity one set of a line is meant to cost (design 6.3).

From, in order: the coach's unbroken rule; the written pair against reference athletes; the format's usual
window. A set is what is done of a line before the next line begins.
"""

from typing import NamedTuple

from core.sessions.values import Block, Format, Line


class Window(NamedTuple):
    """Lowest and highest meant cost of a set, as shares of the repetitions that go unbroken when fresh."""

    low: float
    high: float

    def under(self, cap: float) -> "Window":
        """The same intent, never above `cap`."""
        return self if self.high <= cap else Window(min(self.low, cap / 2), cap)


# Up to moderate (estimate): half of what would go at most, as design section 7 sets it.
LIGHT_DUTY = 0.5

# Estimates. Rounds are meant to be entered again and again with something left; the first set of a scheme is
# broken once by most; a long single set is broken several times, and that is its point.
ROUNDS = Window(0.4, 0.75)
SCHEME = Window(0.5, 1.0)
ONCE = Window(0.4, 3.0)

# A set that the rule speaks of takes about this share of the repetitions it names: nine of 12-15 (common
# practice, no source). A set of 21 is not what "12-15 unbroken" is about.
RULE_SPEAKS_OF = (0.5, 0.9)


def usual_window(block: Block) -> Window:
    """The window that a block's format has by itself."""
    if block.scheme:
        return SCHEME
    if block.format is Format.FOR_TIME and (block.rounds or 1) == 1:
        return ONCE
    return ROUNDS


def ruled_window(block: Block, line: Line, set_reps: float) -> Window | None:
    """The window that the coach's own rule gives: `12-15 unbroken` for a set of nine is 0.6-0.75.

    None without a rule, and for sets that it does not speak of.
    """
    rule = _unbroken_rule(block, line)
    if rule is None:
        return None
    fewest, most = rule
    window = Window(set_reps / most, set_reps / fewest)
    speaks = RULE_SPEAKS_OF[0] <= window.low and window.high <= RULE_SPEAKS_OF[1]
    return window if speaks else None


def paired_window(usual: Window, reference_cost: float) -> Window:
    """The usual window, widened so that as written fits the athlete it was written for.

    Only widened: a reference athlete is an estimate, and never makes a fitting load unfit.
    """
    cost = min(max(reference_cost, usual.low / 2), 1.0)
    return Window(min(usual.low, 0.8 * cost), max(usual.high, min(1.25 * cost, 1.0)))


def _unbroken_rule(block: Block, line: Line) -> tuple[float, float] | None:
    if line.load_rule and line.load_rule.unbroken:
        return line.load_rule.unbroken
    aim = block.aim
    if aim and aim.of == "unbroken" and aim.low and aim.high:
        return aim.low, aim.high
    return None
