"""How a block of a version is headed: `20 minutes, as many rounds as you can`, `Every minute for 10 minutes`."""

from collections.abc import Callable

from core.desk.reference import catalogue
from core.measures import AmountUnit
from core.movements.values import Pattern
from core.scaling.values import Because, VersionBlock, VersionLine
from core.sessions.values import EASY, Effort, Format

MINUTE = 60
_ONCE = frozenset({Format.MAX_REPS, Format.MAX_LOAD, Format.TIME_TRIAL, Format.AMRAP})
_ROUNDS = frozenset({Format.FOR_TIME, Format.AMRAP, Format.INTERVALS, Format.TIME_TRIAL, Format.QUALITY})


def block_heading(block: VersionBlock) -> str:
    """`20 minutes, as many rounds as you can`; `21-15-9 for time`; where nothing is to be chased, neither."""
    if block.is_left_out:
        return "No time for this part today"
    return f"{_what(block)}{_how_hard(block)}"


def _how_hard(block: VersionBlock) -> str:
    """How hard the coach wants it, in their own words where they said it in words."""
    effort = block.effort
    if effort is None or ((effort.low or 0) > EASY and all(map(_is_held, block.lines))):
        return ""
    told = list(dict.fromkeys(number(end) for end in (effort.low, effort.high) if end is not None))
    if effort.words and any(effort.words == line.notes for line in block.lines):
        return ""
    at_most = " at most" if effort.low is None and told else ""
    words = effort.words or (f"effort {' to '.join(told)} of 10{at_most}" if told else "")
    return f" ({words})" if words else ""


def _is_held(line: VersionLine) -> bool:
    """Whether it is a hold, which nobody does hard or even: it lasts."""
    movement, variant = catalogue().variant(f"{line.movement}/{line.variant}")
    return movement.unit_of(variant) is AmountUnit.SECONDS and movement.pattern is not Pattern.TRAVEL


def _what(block: VersionBlock) -> str:
    if block.format is Format.AMRAP:
        how = "as many rounds as you can" if block.scored else f"round after round {_pace(block)}"
        return f"{_minutes(block.minutes or 0)}, {how}{_then_rest(block)}"
    if block.format is Format.FOR_TIME:
        how = f"{_rounds(block)}{'for time' if block.scored else _pace(block)}{_cap(block)}"
        return f"{how[0].upper()}{how[1:]}{_then_rest(block)}"
    gently = None if block.scored else GENTLY.get(block.format)
    return f"{(gently or HEADINGS[block.format])(block)}{_then_rest(block)}"


def _pace(block: VersionBlock) -> str:
    """How fast what isn't scored is done: steady is more than easy, for whoever may and where the coach wants it so."""
    effort = block.effort or Effort(high=block.pace)
    return "at a steady pace" if (effort.high or 0) > EASY else "at an easy pace"


def _then_rest(block: VersionBlock) -> str:
    """The rest behind what is done once, or between rounds where the heading hasn't said it already."""
    if not block.rest_s:
        return ""
    if block.format in _ONCE and not block.rounds:
        return f", then {_time(block.rest_s)} rest"
    between = block.format in _ROUNDS and (block.rounds or len(block.scheme)) > 1
    return f", {_time(block.rest_s)} rest after each" if between and not block.work_s else ""


def _intervals(block: VersionBlock) -> str:
    """`4 rounds, 40 s work and 20 s rest at each`; `Every minute for 10 minutes`; `Every 90 s, 5 times`."""
    rounds = f", {block.rounds} times" if block.rounds else ""
    if block.work_s and block.rest_s:
        turns = f"{block.rounds} rounds, " if block.rounds else ""
        less = "; where it says less, stop then and rest" if _is_cut_short(block, block.work_s) else ""
        return f"{turns}{_time(block.work_s)} work and {_time(block.rest_s)} rest at each{less}"
    if block.every_s and block.minutes:
        return f"Every {_each(block.every_s)} for {_minutes(block.minutes)}"
    if block.every_s:
        return f"Every {_each(block.every_s)}{rounds}"
    if not block.rounds or all(line.unit is AmountUnit.SECONDS for line in block.lines):
        return f"Intervals{rounds}"
    return f"{_counted(block, '').capitalize()}{', each for time' if block.scored else f' {_pace(block)}'}"


def _is_cut_short(block: VersionBlock, work_s: float) -> bool:
    """Whether somebody works for less than the time that the clock gives."""
    timed = (line.amount for line in block.lines if line.unit is AmountUnit.SECONDS)
    return any(amount is not None and amount < work_s for amount in timed)


def _each(seconds: float) -> str:
    return "minute" if seconds == MINUTE else _time(seconds)


def _time(seconds: float) -> str:
    """`45 s`, `3 minutes`."""
    if seconds < MINUTE or seconds % MINUTE:
        return f"{number(seconds)} s"
    return _minutes(seconds / MINUTE)


def _minutes(minutes: float) -> str:
    return f"{number(minutes)} minute{'' if minutes == 1 else 's'}"


def _sets(block: VersionBlock) -> str:
    sets = f"{block.rounds} sets" if block.rounds and block.rounds > 1 else "One set"
    rest = f", {_time(block.rest_s)} rest after each" if block.rest_s else ""
    return f"{sets}{rest}"


def _within(block: VersionBlock) -> str:
    return f" in {_minutes(block.minutes)}" if block.minutes else ""


def _quality(block: VersionBlock) -> str:
    is_hard = block.effort is not None and (block.effort.low or 0) > EASY
    at_will = "no clock" if is_hard else "no clock: take your time"
    how = f"{_minutes(block.minutes)} at your own pace" if block.minutes else at_will
    return f"{_counted(block, ', ')}{how}".capitalize()


def _in_sets(block: VersionBlock, how: str) -> str:
    """`5 sets, 2 minutes rest after each: as many as you can`; how it is done where it is done once."""
    return how if (block.rounds or 1) == 1 else f"{_sets(block)}: {how[0].lower()}{how[1:]}"


def _hold(block: VersionBlock) -> str:
    if all(line.amount is not None for line in block.lines):
        return _sets(block)
    return _in_sets(block, "Hold as long as your position stays clean")


def _hold_gently(block: VersionBlock) -> str:
    if all(line.amount is not None for line in block.lines):
        return _sets(block)
    return _in_sets(block, "Hold while it's easy: about half as long as you could")


def _most(block: VersionBlock) -> str:
    if _counts_calories(block):
        return f"As many calories as you can{_within(block)}"
    return f"As many as you can{_within(block)}, stopping before they get ugly"


def _heaviest(block: VersionBlock) -> str:
    """With nothing to hold, or one weight that is light, there is nothing to work up to."""
    if not _works_up(block):
        if any(line.reason.because is Because.LIGHT_DUTY for line in block.lines):
            return _heaviest_gently(block)
        return f"A few strong sets{_within(block)}, with all the rest you need: each one clean"
    return f"Work up to the heaviest that stays clean{_within(block)}; stop with one or two left in you"


def _heaviest_gently(block: VersionBlock) -> str:
    easy = f"A few easy sets{_within(block)}"
    if _works_up(block):
        return f"{easy}: go up only while it feels light, and stay far from your heaviest"
    return f"{easy}, with all the rest you need"


def _works_up(block: VersionBlock) -> bool:
    """Whether something is held at a load that is yet to be found."""
    return any(line.count is not None and line.load_kg is None for line in block.lines)


def _counts_calories(block: VersionBlock) -> bool:
    return all(line.unit is AmountUnit.KCAL for line in block.every_line)


def _most_gently(block: VersionBlock) -> str:
    if _counts_calories(block):
        return f"For calories, at an easy pace{_within(block)}"
    return f"As many as are easy{_within(block)}: stop at about half of what you could do"


HEADINGS: dict[Format, Callable[[VersionBlock], str]] = {
    Format.INTERVALS: _intervals,
    Format.SETS: _sets,
    Format.HOLD: _hold,
    Format.MAX_REPS: lambda block: _in_sets(block, _most(block)),
    Format.MAX_LOAD: _heaviest,
    Format.TIME_TRIAL: lambda block: f"As fast as you can hold evenly{_cap(block)}",
    Format.QUALITY: _quality,
}

# Where nothing is to be chased. Half of what would go is what light duty allows (estimate).
GENTLY: dict[Format, Callable[[VersionBlock], str]] = {
    Format.HOLD: _hold_gently,
    Format.MAX_REPS: lambda block: _in_sets(block, _most_gently(block)),
    Format.MAX_LOAD: _heaviest_gently,
    Format.TIME_TRIAL: lambda block: (
        f"{_pace(block).replace(' pace', ', even pace').capitalize()}{_cap(block)}"
    ),
}


def _rounds(block: VersionBlock) -> str:
    if block.scheme:
        return "-".join(map(str, block.scheme)) + " "
    return _counted(block, " ")


def _counted(block: VersionBlock, then: str) -> str:
    """`3 rounds`, and `one round` where a day leaves no more of them; nothing where none are counted."""
    if not block.rounds:
        return ""
    return f"{'one round' if block.rounds == 1 else f'{block.rounds} rounds'}{then}"


def _cap(block: VersionBlock) -> str:
    return f", {_minutes(block.cap_s / MINUTE)} at most" if block.cap_s else ""


def number(value: float) -> str:
    return f"{value:g}"
