"""The expected score of a block, by its format."""

from collections.abc import Callable, Mapping, Sequence
from typing import Literal, NamedTuple

import numpy as np

from core.athletes.values import Profile, Screening
from core.forecast.doing import Done, in_order, rounds_of
from core.forecast.fatigue import Floats
from core.forecast.floor import CHANGE_S
from core.forecast.pacing import pacing_of
from core.forecast.people import People
from core.forecast.values import Forecast, Outlook, Pacing, ScoreUnit
from core.forecast.work import Work
from core.measures import AmountUnit
from core.scaling.values import Because, Change, Version, VersionBlock, VersionLine
from core.sessions.values import Counts, Format

# So many scores of whoever is new tell enough to expect something (estimate).
FIRST_SCORES = 2
# Four in five end between these.
LOW, HIGH = 0.1, 0.9
# How far one day is from another, in ln of a score (estimate), and its name among what isn't known.
DAY, DAY_SPREAD = "day", 0.05
# After so long a round takes as long as the last: what fades slowly has come to its level (estimate).
STEADY_S = 420.0
# Between sets to failure, where the coach writes no rest (estimate).
USUAL_REST_S = 120.0
_MINUTE_S = 60.0
_A_HAIR = 1e-9


class Expected(NamedTuple):
    """The score of each that an athlete may turn out to be, in `unit`, at `most` so much.

    `is_sure`: what differs from day to day is in it already, or makes no difference. `is_given`: it is what the
    version names.
    """

    unit: ScoreUnit
    found: Floats
    pacing: Pacing = Pacing()
    most: float = np.inf
    is_sure: bool = False
    is_given: bool = False


def outlook_of(version: Version, people: People) -> tuple[Outlook | None, ...]:
    """For each block what is expected; None where nothing is: unscored, eased, new to it, or not to be counted."""
    is_new = people.profile.experience == "new" or _is_begun(version, people)
    if is_new and _has_hardly_scored(people.profile):
        return (None,) * len(version.blocks)
    found = (expected_of(version, block, people) for block in version.blocks)
    return tuple(one and _outlook(one, people) for one in found)


def expected_of(version: Version, block: VersionBlock, people: People) -> Expected | None:
    """The same of one block, as numbers, without what differs from day to day, and of whoever is new too."""
    way = _WAYS.get(block.format)
    return way(block, people) if way and _is_expected(version, block, people) else None


def _has_hardly_scored(profile: Profile) -> bool:
    """Whether nothing can be expected yet of somebody new to training: their first scores tell what they can do."""
    return profile.learned is None or profile.learned.seen < FIRST_SCORES


def _outlook(expected: Expected, people: People) -> Outlook:
    of_day = 1.0 if expected.is_sure else np.exp(DAY_SPREAD * people.unknowns.of(DAY))
    middle = min(_middle(expected.found), expected.most)
    found = np.minimum(expected.found * of_day, expected.most)
    low, high = (float(one) for one in np.quantile(found, (LOW, HIGH)))
    return Outlook(
        forecast=Forecast(unit=expected.unit, low=min(low, middle), expected=middle, high=max(high, middle)),
        pacing=expected.pacing,
        is_foregone=expected.is_given or (expected.is_sure and low >= expected.most),
    )


def _is_expected(version: Version, block: VersionBlock, people: People) -> bool:
    """No expected score for those on light duty, pregnant or unwell."""
    if not (version.scored and block.scored) and not (_is_begun(version, people) and block.format in _WAYS):
        return False
    if not block.lines or _is_by_the_clock(block):
        return False
    return not any(_is_open(line, block, people) for line in block.every_line)


def _is_by_the_clock(block: VersionBlock) -> bool:
    """Whether it takes as long as is written, whoever does it, and nobody counts what is done."""
    timed = block.format in {Format.FOR_TIME, Format.INTERVALS} and not (block.work_s or block.every_s)
    return timed and all(line.unit is AmountUnit.SECONDS for line in block.every_line)


def _is_begun(version: Version, people: People) -> bool:
    """Whether it is without a rank only because they are new to training: nothing else asks for care."""
    eased_as_new = version.easing is not None and version.easing.of == "new"
    return eased_as_new and people.profile.screening is Screening.CLEAR and not people.profile.limits


def _is_open(line: VersionLine, block: VersionBlock, people: People) -> bool:
    """Whether nobody can say how much of it will be done: a rest, built up as it goes, or metres of a stair."""
    if line.change is Change.REST or line.reason.because is Because.UNKNOWN_HEAVY:
        return True
    movement = people.catalogue.movement(line.movement)
    if line.unit is AmountUnit.METRES and movement.k is None and movement.unit is not AmountUnit.METRES:
        return True
    return line.amount is None and not line.scheme and block.format not in _AS_MUCH_AS_GOES


def _amrap(block: VersionBlock, people: People) -> Expected | None:
    if block.minutes is None:
        return None
    done, ends = Done(block, people), block.minutes * _MINUTE_S
    done.lines_once(done.buy_in)
    times, progress = [np.zeros_like(done.floor.time), done.floor.time], [0.0, 0.0]
    shares = _shares(done.lines)
    while done.floor.time[0] < min(STEADY_S, ends):
        for work, share in zip(done.lines, shares, strict=True):
            done.line(work)
            times.append(done.floor.time)
            progress.append(progress[-1] + share)
            done.change()
    rounds = _reached(np.stack(times), np.array(progress), ends, len(done.lines))
    middle = _middle(rounds)
    pacing = pacing_of(done.floor, block, round_s=ends / middle if middle >= 1 else None)
    return Expected("rounds", rounds, pacing)


def _shares(lines: tuple[Work, ...]) -> list[float]:
    """How much of a round each line is: by its repetitions, where all are counted."""
    counts = [(work.amount or 0.0) * work.counted for work in lines]
    return [one / sum(counts) for one in counts] if all(counts) else [1 / len(lines)] * len(lines)


def _reached(times: Floats, progress: Floats, ends: float, lines: int) -> Floats:
    """How far each of the people is at the end; beyond what was gone through, at the pace of the last round."""
    last = max(len(times) - 1 - lines, 1)
    round_s = np.maximum(times[-1] - times[last], _A_HAIR)
    beyond = progress[-1] + (ends - times[-1]) / round_s
    at = np.clip((times <= ends).sum(axis=0), 1, len(times) - 1)
    people = np.arange(times.shape[1])
    before, after = times[at - 1, people], times[at, people]
    part = np.clip((ends - before) / np.maximum(after - before, _A_HAIR), 0.0, 1.0)
    within = progress[at - 1] + part * (progress[at] - progress[at - 1])
    return np.asarray(np.where(times[-1] <= ends, beyond, within))


def _for_time(block: VersionBlock, people: People) -> Expected | None:
    done = Done(block, people)
    marks = [np.zeros_like(done.floor.time)]
    counts = [0.0]
    rounds = tuple(rounds_of(block))
    for part in in_order(done, rounds):
        work, round_reps = part
        reps = done.line(work, round_reps)
        marks.append(done.floor.time)
        counts.append(counts[-1] + float(reps[0]))
        done.change()
        if work is done.lines[-1] and block.rest_s:
            done.floor.rest(block.rest_s)
    took = marks[-1]
    cap = block.cap_s
    if cap is not None and _middle(took) > cap:
        if counts[-1] <= 0:
            return None
        reached = _reached(np.stack(marks), np.array(counts), cap, len(done.lines))
        return Expected("reps", np.floor(reached), most=counts[-1])
    return Expected("s", took, _pace_to(done, marks, counts, len(rounds)), np.inf if cap is None else cap)


def _pace_to(done: Done, marks: list[Floats], counts: list[float], rounds: int) -> Pacing:
    """Of rounds that are alike one; of what is all counted its half; else when the rounds are over.

    Half of the repetitions is no half of the work where some of it is run, or is done once.
    """
    block, middle = done.block, [float(mark[0]) for mark in marks]
    once = len(done.buy_in) + len(done.cash_out)
    if rounds > 1 and not block.scheme and not once:
        rest: Literal["in"] | None = "in" if block.rest_s else None
        return pacing_of(done.floor, block, round_s=middle[-1] / rounds, rest=rest)
    if done.cash_out:
        return pacing_of(done.floor, block, rounds_s=middle[-1 - len(done.cash_out)])
    if once or not all(work.counted for work in done.lines):
        return pacing_of(done.floor, block)
    return pacing_of(done.floor, block, half_s=float(np.interp(counts[-1] / 2, counts, middle)))


def _intervals(block: VersionBlock, people: People) -> Expected | None:
    if block.work_s:
        return _working_intervals(block, people)
    done, times = Done(block, people), _turns(block)
    if not times:
        return None
    took: list[Floats] = []
    held, is_held = np.zeros_like(people.tempo), np.ones_like(people.tempo)
    for number in range(times):
        began = done.floor.time
        done.lines_once(_turn(done.lines, number))
        spent = done.floor.time - began
        took.append(spent)
        if block.every_s:
            is_held = is_held * (spent <= block.every_s + CHANGE_S)
            held = held + is_held
            done.floor.rest(np.maximum(0.0, block.every_s - spent))
        else:
            done.floor.rest(block.rest_s or 0.0)
    if block.every_s and not all(_is_covered(line) for line in block.lines):
        return Expected("rounds", held, most=float(times), is_sure=True)
    rest: Literal["on top"] | None = "on top" if block.rest_s or block.every_s else None
    pacing = Pacing(round_s=float(sum(one[0] for one in took)) / times, rest=rest)
    return Expected("s", _that_count(took, block), pacing)


def _that_count(each: Sequence[Floats], block: VersionBlock) -> Floats:
    """Of several times, sets or holds what the score is: all of them, or the best or worst; of times less is better."""
    if block.counts is None:
        return np.asarray(sum(each))
    less_is_better = block.format is Format.INTERVALS and not block.work_s
    most = (block.counts is Counts.BEST) is not less_is_better
    return np.asarray((np.maximum if most else np.minimum).reduce(list(each)))


def _is_covered(line: VersionLine) -> bool:
    """Whether it is gone or rowed, so that each interval has a time."""
    return line.unit in {AmountUnit.METRES, AmountUnit.KCAL}


def _turns(block: VersionBlock) -> int:
    if block.rounds:
        return block.rounds
    return int(block.minutes * _MINUTE_S // block.every_s) if block.minutes and block.every_s else 0


def _turn(lines: tuple[Work, ...], number: int) -> tuple[Work, ...]:
    """What is done in one turn: that of its station, or all of it."""
    stations = [work.station for work in lines]
    if not any(stations):
        return lines
    last = max(station or 0 for station in stations)
    return tuple(work for work in lines if work.station == number % last + 1)


def _working_intervals(block: VersionBlock, people: People) -> Expected | None:
    """So many seconds of work, so many of rest: all repetitions together."""
    done, rest_s = Done(block, people), block.rest_s or 0.0
    assert block.work_s is not None
    rounds = block.rounds or (
        int(block.minutes * _MINUTE_S // ((block.work_s + rest_s) * len(done.lines))) if block.minutes else 0
    )
    if not rounds or not all(work.counted for work in done.lines):
        return None
    each: list[Floats] = []
    for _ in range(rounds):
        for work in done.lines:
            each.append(np.floor(done.floor.do_for(work, block.work_s)) * work.counted)
            done.floor.rest(rest_s)
    return Expected("reps", _that_count(each, block))


def _max_reps(block: VersionBlock, people: People) -> Expected | None:
    if block.minutes and len(block.lines) == 1 and block.lines[0].unit is AmountUnit.METRES:
        return _how_far(block.lines[0], block.minutes * _MINUTE_S, people)
    done = Done(block, people, stops_at=1.0)
    each: list[Floats] = []
    for _ in range(block.rounds or 1):
        total = np.zeros_like(people.tempo)
        for work in done.lines:
            if block.minutes:
                total = total + np.floor(done.floor.do_for(work, block.minutes * _MINUTE_S)) * work.counted
            else:
                total = total + done.floor.to_failure(work) * work.counted
        each.append(total)
        done.floor.rest(USUAL_REST_S if block.rest_s is None else block.rest_s)
    found = _that_count(each, block)
    return Expected("reps", found, is_sure=True) if found.any() else None


def _how_far(line: VersionLine, seconds: float, people: People) -> Expected | None:
    """At the pace of so far as goes in the time."""
    movement, variant = people.catalogue.variant(f"{line.movement}/{line.variant}")
    if movement.k is not None:
        return None
    far = seconds / variant.seconds.value
    for _ in range(2):
        pace = people.travel_s(line.movement, variant.seconds.value, far, line.variant)
        far = seconds / _middle(pace)
    return Expected("m", seconds / pace, is_sure=True)


def _hold(block: VersionBlock, people: People) -> Expected | None:
    done = Done(block, people, stops_at=1.0)
    if (
        len(done.lines) != 1
        or block.lines[0].unit is not AmountUnit.SECONDS
        or block.lines[0].amount is not None
    ):
        return None
    each: list[Floats] = []
    for _ in range(block.rounds or 1):
        each.append(done.floor.to_failure(done.lines[0]))
        done.floor.rest(USUAL_REST_S if block.rest_s is None else block.rest_s)
    return Expected("s", _that_count(each, block), is_sure=True)


def _time_trial(block: VersionBlock, people: People) -> Expected | None:
    if len(block.lines) != 1:
        return None
    line, done = block.lines[0], Done(block, people)
    if line.unit is AmountUnit.SECONDS or (line.amount is None and block.minutes):
        seconds = line.amount or (block.minutes or 0) * _MINUTE_S
        return Expected("m", seconds / done.lines[0].seconds, is_sure=True)
    if line.amount is None:
        return None
    return Expected("s", line.amount * done.lines[0].seconds, is_sure=True)


def _max_load(block: VersionBlock, people: People) -> Expected | None:
    line = block.lines[0]
    movement, variant = people.catalogue.variant(f"{line.movement}/{line.variant}")
    hold = next((one for one in variant.holds if one.fits(line.implement, line.count)), None)
    if len(block.lines) != 1 or movement.k is None or hold is None or line.load_kg is not None:
        return None
    own = variant.body_share.value * people.capacity.body_mass_kg
    moved = people.heaviest(f"{line.movement}/{line.variant}", line.amount or 1.0)
    load = np.maximum(0.0, (moved - own) / (hold.factor * hold.count))
    return Expected("kg", np.minimum(load, _most_kg(line, people)), is_sure=True)


def _most_kg(line: VersionLine, people: People) -> float:
    """The heaviest there is of the thing."""
    found = [one for one in people.profile.equipment or () if one.implement == line.implement]
    return max((float(max((*one.loads_kg, one.to_kg or 0))) for one in found), default=np.inf) or np.inf


def _sets(block: VersionBlock, people: People) -> Expected | None:
    """What is lifted is what stands in the version, as long as all sets of it go."""
    loads = [float(line.load_kg) for line in block.lines if line.load_kg]
    if len(loads) != 1 or len(block.lines) != 1:
        return None
    return Expected("kg", np.full_like(people.tempo, loads[0]), is_sure=True, is_given=True)


def _middle(found: Floats) -> float:
    return float(np.median(found))


_AS_MUCH_AS_GOES = frozenset({Format.MAX_REPS, Format.HOLD, Format.MAX_LOAD, Format.TIME_TRIAL})
_WAYS: Mapping[Format, Callable[[VersionBlock, People], Expected | None]] = {
    Format.AMRAP: _amrap,
    Format.FOR_TIME: _for_time,
    Format.INTERVALS: _intervals,
    Format.MAX_REPS: _max_reps,
    Format.HOLD: _hold,
    Format.TIME_TRIAL: _time_trial,
    Format.MAX_LOAD: _max_load,
    Format.SETS: _sets,
}
