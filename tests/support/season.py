"""A season of people of another physiology (`physiology`), of forty sessions: what was expected each time.

Everybody tells a few tests first. After each session what was learned of its score is taken into the next.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import product
from math import log
from statistics import fmean, median
from typing import NamedTuple

import numpy as np

from core.athletes.values import Profile
from core.forecast.forecast import outlook_of
from core.forecast.learning import Taught, after
from core.forecast.people import People
from core.forecast.values import Forecast
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.scaling.values import Change, Version
from core.scaling.version import version_for
from core.scores.values import Score
from core.sessions.counting import reps_in_round
from tests.support import physiology as other
from tests.support.foreseen import SWING_KG, YEAR, profile_of

FIRST_DAY = date(YEAR, 1, 5)
TIMES = 13
BETWEEN_DAYS = 2

_WORK = {
    "10 push-ups\n20 air squats": (("push-up", 10), ("air squat", 20)),
    "6 push-ups\n12 sit-ups\n15 air squats": (("push-up", 6), ("sit-up", 12), ("air squat", 15)),
    f"12 swings @ {SWING_KG} kg\n8 burpees": (("swing", 12), ("burpee", 8)),
    f"200 m run\n8 push-ups\n12 swings @ {SWING_KG} kg": (("run", 200), ("push-up", 8), ("swing", 12)),
    "400 m run\n20 air squats": (("run", 400), ("air squat", 20)),
}
_MINUTES, _ROUNDS = (8, 12, 16, 20), (3, 4, 5)
_SETS = ((3, 60, "push-up"), (4, 90, "push-up"), (3, 120, "air squat"), (5, 60, "sit-up"), (3, 90, "sit-up"))


@dataclass(frozen=True)
class Written:
    """A session as its coach wrote it; `kind`: scores of one kind are comparable."""

    text: str
    kind: str
    number: int
    lines: tuple[tuple[str, int], ...]


def forty() -> tuple[Written, ...]:
    """Twenty for as many rounds as go, fifteen for time, five of sets to failure."""
    rounds = [
        Written(f"AMRAP {minutes}\n{text}", "rounds", minutes, lines)
        for (text, lines), minutes in product(_WORK.items(), _MINUTES)
    ]
    times = [
        Written(f"{number} rounds for time\n{text}", "time", number, lines)
        for (text, lines), number in product(_WORK.items(), _ROUNDS)
    ]
    sets = [
        Written(f"{number} sets of max {name}s, rest {rest} s", "sets", number, ((name, rest),))
        for number, rest, name in _SETS
    ]
    return (*rounds, *times, *sets)


@dataclass(frozen=True)
class Done:
    """What was expected of somebody the `time`-th time, and what it came to."""

    person: int
    time: int
    session: Written
    forecast: Forecast
    came_to: float


def season(count: int, seed: int) -> list[Done]:
    """So many people, each with ten of the forty in an order of their own; only what they got as written counts."""
    people = other.people(count, seed)
    return [one for number, person in enumerate(people) for one in _of(number, person, seed)]


class Row(NamedTuple):
    """The share inside the range, and mean errors in ln: of forecast, last comparable score and group's median."""

    inside: float
    error: float
    of_last: float
    of_median: float


def table(done: Sequence[Done]) -> dict[int, Row]:
    """By how many sessions were learned from before. Comparable are scores of one kind, each beside its median."""
    sessions = {one.session for one in done}
    medians = {which: median(one.came_to for one in done if one.session == which) for which in sessions}
    rows: dict[int, list[Row]] = {}
    last: dict[tuple[int, str], float] = {}
    for one in sorted(done, key=lambda one: (one.person, one.time)):
        usual, key = medians[one.session], (one.person, one.session.kind)
        ratio = one.came_to / usual
        row = Row(
            inside=one.forecast.low <= one.came_to <= one.forecast.high,
            error=abs(log(one.forecast.expected / one.came_to)),
            of_last=abs(log(last.get(key, 1.0) / ratio)),
            of_median=abs(log(ratio)),
        )
        rows.setdefault(one.time, []).append(row)
        last[key] = ratio
    return {time: mean(found) for time, found in sorted(rows.items())}


def mean(rows: Sequence[Row]) -> Row:
    return Row(*(fmean(column) for column in zip(*rows, strict=True)))


def _of(number: int, person: other.Person, seed: int) -> Iterator[Done]:
    order = np.random.default_rng([seed, number]).permutation(len(forty()))
    profile, time = profile_of(person), 0
    for place in order:
        if time == TIMES:
            return
        written = forty()[place]
        day = FIRST_DAY + timedelta(days=BETWEEN_DAYS * (time + 1))
        version = _as_written(written, profile)
        if version is None:
            continue
        (outlook,) = outlook_of(version, People(profile, catalogue(), YEAR))
        came_to = _came_to(written, person, BETWEEN_DAYS * (time + 1))
        if outlook is None or not 0 < came_to < float("inf"):
            continue
        yield Done(number, time, written, outlook.forecast, came_to)
        score = _score(written, came_to)
        taught = Taught(version, version.blocks[0], score, day)
        profile = profile.model_copy(update={"learned": after(taught, profile, catalogue())})
        time += 1


def _as_written(written: Written, profile: Profile) -> Version | None:
    session = read_session(written.text, catalogue()).session
    assert session is not None
    version = version_for(session, profile.model_copy(update={"learned": None}), catalogue(), year=YEAR)
    if not isinstance(version, Version) or any(line.change is not Change.NONE for _, line in version.spots):
        return None
    return version


def _score(written: Written, came_to: float) -> Score:
    if written.kind == "time":
        return Score(value=came_to, unit="s", seconds=round(came_to))
    if written.kind == "sets":
        return Score(value=came_to, unit="reps", reps=round(came_to))
    session = read_session(written.text, catalogue()).session
    assert session is not None
    whole = reps_in_round(session.blocks[0]) or sum(reps for name, reps in written.lines if name != "run")
    rounds = int(came_to)
    return Score(value=came_to, unit="rounds", rounds=rounds, reps=int((came_to - rounds) * whole))


def _came_to(written: Written, person: other.Person, day: int) -> float:
    if written.kind == "sets":
        ((name, rest),) = written.lines
        return person.max_sets(written.number, rest, name, 0, day)
    lines = [
        other.Line(name, metres=number)
        if name == "run"
        else other.Line(name, number, SWING_KG if name == "swing" else 0.0)
        for name, number in written.lines
    ]
    play = person.amrap if written.kind == "rounds" else person.for_time
    return play(written.number, lines, day)
