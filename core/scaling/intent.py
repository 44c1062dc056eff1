"""What share of fresh capacity one set of a line is meant to cost.

From, in order: the coach's unbroken rule; the written pair against reference athletes; the format's usual
window. A set is what is done of a line before the next line begins.
"""

import re
from typing import NamedTuple

from core.ability.recovery import bearable
from core.sessions.counting import is_held_so_long
from core.sessions.values import Block, Format, Line, LoadRule


class Window(NamedTuple):
    """Lowest and highest meant cost of a set, as shares of the repetitions that go unbroken when fresh."""

    low: float
    high: float

    def times(self, share: float) -> "Window":
        """What a set that is so much smaller is meant to cost: what it is done with stays."""
        return self if share == 1 else Window(self.low * share, self.high * share)

    def under(self, cap: float) -> "Window":
        """The same intent, never above `cap`."""
        return self if self.high <= cap else Window(min(self.low, cap / 2), cap)


# What a coach writes beside a load that everybody is to choose light.
LIGHT = re.compile(r"\b(?:light(?:ly|er)?|easy weight)\b", re.IGNORECASE)

# Up to moderate: half of what would go at most (estimate).
LIGHT_DUTY = 0.5

# Estimates. Rounds are meant to be entered again and again with something left; the first set of a scheme is
# broken once by most; a long single set is broken several times, and that is its point.
ROUNDS = Window(0.4, 0.75)
SCHEME = Window(0.5, 1.3)
ONCE = Window(0.4, 3.0)
# Five of five at a seven-repetition load with three minutes' rest go through (common practice, no source).
SETS = Window(0.5, 0.9)
# Work for a time is paced by oneself and broken at will; skill is done fresh; as much as goes has no upper end, but
# what should go at least ought to be in reach; a heavy single set is nearly all that goes.
TIMED = Window(0.3, 1.5)
QUALITY = Window(0.3, 0.7)
AS_MUCH_AS_GOES = Window(0.0, 1.0)
HEAVY = Window(0.6, 1.0)
# Many of what is light in place of a heavy few, and about so many are many.
HARD_SET, MANY = Window(0.65, 0.9), 10.0
BY_FORMAT = {
    Format.SETS: SETS,
    Format.QUALITY: QUALITY,
    Format.MAX_REPS: AS_MUCH_AS_GOES,
    Format.HOLD: AS_MUCH_AS_GOES,
    Format.MAX_LOAD: HEAVY,
}

# The effort at which so many are left in reserve: 10 none, 9 one, 8 two, 7 three (Zourdos et al. 2016, J Strength
# Cond Res 30(1):267-275). A coach's word is meant to half a repetition.
NO_RESERVE = 10
HALF = 0.5
# "Heavy" without a number means one to two left (common practice, no source).
HEAVY_EFFORT = 8.5
# Of a bar's maximum w, r repetitions go at w (1 + 1/k) / (1 + r/k) (Epley 1985); a percentage is meant so closely.
BAR_K = 30
CLOSELY = 1.15

# The last set may end a little early, since from day to day nobody is known to the repetition (estimate). With it
# five of five fit whoever has just shown seven.
JUST_SHORT = 1.2

# A set that the rule speaks of takes about this share of the repetitions it names: nine of 12-15 (common
# practice, no source). A set of 21 is not what "12-15 unbroken" is about.
RULE_SPEAKS_OF = (0.5, 0.9)


def usual_window(block: Block, set_seconds: float = 0.0) -> Window:
    """The window that a block's format has by itself, where its rests are known: so that the last set goes too.

    `set_seconds`: how long one set takes.
    """
    window = by_format(block).under(LIGHT_DUTY) if is_easy(block) else by_format(block)
    turns = turns_of(block, set_seconds)
    return window if turns is None else window.under(JUST_SHORT * bearable(*turns))


def is_easy(block: Block) -> bool:
    """Whether the coach wants it easy."""
    return block.effort is not None and block.effort.is_easy


def is_meant_to_be_light(block: Block, line: Line) -> bool:
    """Whether the coach wants what is held to be light, and leaves to everybody how light that is."""
    if line.loads_kg or line.load_rule is not None:
        return False
    return is_easy(block) or LIGHT.search(line.notes or "") is not None


def turns_of(block: Block, set_seconds: float) -> tuple[int, float] | None:
    """How many equal sets there are of a line, and how many seconds from the end of one to the end of the next."""
    if block.work_s is not None or block.scheme:
        return None
    if (block.format is Format.SETS or is_held_so_long(block)) and block.rounds and block.rest_s:
        return block.rounds, block.rest_s + set_seconds
    if block.format is not Format.INTERVALS or not block.every_s:
        return None
    stations = [line.station for line in block.lines if line.station is not None]
    seconds = block.every_s * max((*stations, *block.rest_stations), default=1)
    turns = block.minutes * 60 / seconds if block.minutes else block.rounds or 1
    return max(1, round(turns)), seconds


def by_format(block: Block) -> Window:
    """The window of a set for which there is as much rest as it needs."""
    if block.scheme:
        return SCHEME
    if block.work_s is not None:
        return TIMED
    if is_held_so_long(block):
        return SETS
    if block.format in BY_FORMAT:
        return BY_FORMAT[block.format]
    if block.format is Format.FOR_TIME and (block.rounds or 1) == 1:
        return ONCE
    return ROUNDS


def ruled_window(block: Block, line: Line, set_reps: float, set_seconds: float = 0.0) -> Window | None:
    """The window that the coach's own rule gives: `12-15 unbroken` for a set of nine is 0.6-0.75.

    Percentages go by the repetitions that are left, efforts and what is only to be heavy by those of the last set. None
    without a rule, and for sets that it does not speak of. `set_seconds`: how long one set takes.
    """
    load_rule = line.load_rule
    if load_rule is not None and load_rule.percent is not None:
        return _by_percent(load_rule.percent / 100, set_reps)
    if load_rule is not None and (effort := effort_of(load_rule)) is not None:
        turns = turns_of(block, set_seconds)
        return by_effort(effort, set_reps).times(1.0 if turns is None else bearable(*turns))
    rule = _unbroken_rule(block, line)
    if rule is None:
        return None
    fewest, most = rule
    window = Window(set_reps / most, set_reps / fewest)
    speaks = RULE_SPEAKS_OF[0] <= window.low and window.high <= RULE_SPEAKS_OF[1]
    return window if speaks else None


def _by_percent(share: float, set_reps: float) -> Window | None:
    """Cost of a set at this share of a bar's maximum; None where no set would go."""
    unbroken = BAR_K * ((1 + 1 / BAR_K) / share - 1) if share > 0 else 0.0
    if unbroken < 1:
        return None
    cost = min(set_reps / unbroken, 1.0)
    return Window(cost / CLOSELY, min(cost * CLOSELY, 1.0))


def hard_set_of(block: Block, line: Line) -> Window:
    """What many of something light are to cost in place of a heavy few: as hard as the coach wants it."""
    if effort_of(line.load_rule) is None:
        return HARD_SET
    ruled = ruled_window(block, line, MANY)
    assert ruled is not None, "an effort rules every set"
    return Window(min(HARD_SET.low, ruled.low), min(HARD_SET.high, ruled.high))


def effort_of(rule: LoadRule | None) -> float | None:
    """The effort at which each set ends, where the coach named one or wants it heavy."""
    if rule is None or rule.effort is not None:
        return None if rule is None else rule.effort
    return HEAVY_EFFORT if rule.heavy else None


def by_effort(effort: float, set_reps: float) -> Window:
    """Cost of a set that ends at this effort."""
    left = max(NO_RESERVE - effort, 0.0)
    return Window(set_reps / (set_reps + left + HALF), set_reps / (set_reps + max(left - HALF, 0.0)))


def paired_window(usual: Window, reference_cost: float) -> Window:
    """The usual window, widened so that as written fits the athlete it was written for.

    Only widened: a reference athlete is an estimate, and never makes a fitting load unfit.
    """
    cost = min(max(reference_cost, usual.low / 2), 1.0)
    return Window(usual.low, max(usual.high, min(1.25 * cost, 1.0)))


def _unbroken_rule(block: Block, line: Line) -> tuple[float, float] | None:
    if line.load_rule and isinstance(line.load_rule.unbroken, tuple):
        return line.load_rule.unbroken
    aim = block.aim
    if aim and aim.of == "unbroken" and aim.low and aim.high:
        return aim.low, aim.high
    return None
