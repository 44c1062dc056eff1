"""Forecasts held against people of another physiology (`physiology`), who do the sessions that were forecast."""

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from math import log
from statistics import fmean, median

from core.athletes.values import Equipment, Evidence, Profile, Screening, Sex
from core.forecast.forecast import outlook_of
from core.forecast.people import People
from core.forecast.values import Forecast
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.scaling.values import Change, Version
from core.scaling.version import version_for
from tests.support import physiology as other

YEAR, TESTED_ON, DONE_ON = 2026, 0, 5
# As a group that trains does them; whoever needs an easier way is left out, as the other physiology knows none.
AMRAPS = {
    "AMRAP 12\n8 push-ups\n15 air squats": (12, (("push-up", 8), ("air squat", 15))),
    "AMRAP 20\n6 push-ups\n12 sit-ups\n15 air squats": (
        20,
        (("push-up", 6), ("sit-up", 12), ("air squat", 15)),
    ),
    "AMRAP 12\n6 push-ups\n12 swings @ 16 kg\n200 m run": (12, (("push-up", 6), ("swing", 12), ("run", 200))),
}
FOR_TIME = {
    "5 rounds for time\n10 push-ups\n20 air squats": (5, (("push-up", 10), ("air squat", 20))),
    "4 rounds for time\n400 m run\n20 air squats\n8 push-ups": (
        4,
        (("run", 400), ("air squat", 20), ("push-up", 8)),
    ),
    "3 rounds for time\n12 burpees\n15 swings @ 16 kg": (3, (("burpee", 12), ("swing", 15))),
}
SETS = {"3 sets of max push-ups, rest 60 s": (3, 60)}
SWING_KG = 16


@dataclass(frozen=True)
class Foreseen:
    """What was expected of somebody, and what it came to."""

    session: str
    forecast: Forecast
    came_to: float

    @property
    def is_inside(self) -> bool:
        return self.forecast.low <= self.came_to <= self.forecast.high

    @property
    def error(self) -> float:
        """In ln."""
        return log(self.forecast.expected / self.came_to)


def foreseen(count: int, seed: int) -> list[Foreseen]:
    """So many people who tell what they can do, and then do every session that they get as written."""
    return [one for person in other.people(count, seed) for one in _of(person)]


def summed_up(found: list[Foreseen]) -> tuple[float, float, float]:
    """The share inside the range, and the mean absolute error in ln of the forecast and of the group's median."""
    errors = [abs(one.error) for one in found]
    of_median = []
    for session in {one.session for one in found}:
        scores = [one.came_to for one in found if one.session == session]
        of_median += [abs(log(score / median(scores))) for score in scores]
    return fmean(one.is_inside for one in found), fmean(errors), fmean(of_median)


def _of(person: other.Person) -> Iterator[Foreseen]:
    profile = profile_of(person)
    for text in (*AMRAPS, *FOR_TIME, *SETS):
        forecast = _forecast(text, profile)
        came_to = _came_to(text, person) if forecast else 0.0
        if forecast and 0 < came_to < float("inf"):
            yield Foreseen(text, forecast, came_to)


def profile_of(person: other.Person) -> Profile:
    """What they would tell: a few tests, each of one day."""
    tests = [
        Evidence(movement=name, reps=person.test_reps(name, 0, TESTED_ON))
        for name in ("push-up", "air squat", "sit-up", "burpee")
    ]
    swings = person.test_reps("swing", SWING_KG, TESTED_ON)
    tests.append(Evidence(movement="swing", load_kg=Decimal(SWING_KG), reps=swings))
    tests.append(Evidence(movement="run", distance_m=2400, seconds=person.run_seconds(2400, TESTED_ON)))
    return Profile(
        name="somebody",
        sex=Sex.FEMALE if person.sex == "woman" else Sex.MALE,
        body_mass_kg=Decimal(round(person.body_mass_kg)),
        birth_year=YEAR - person.age,
        screening=Screening.CLEAR,
        limits=(),
        experience="trained" if person.trained == "trained" else "some",
        equipment=(Equipment(implement="kettlebell", loads_kg=(Decimal(SWING_KG),)),),
        evidence=tuple(tests),
    )


def _forecast(text: str, profile: Profile) -> Forecast | None:
    session = read_session(text, catalogue()).session
    assert session is not None
    version = version_for(session, profile, catalogue(), year=YEAR)
    if not isinstance(version, Version) or any(line.change is not Change.NONE for _, line in version.spots):
        return None
    (outlook,) = outlook_of(version, People(profile, catalogue(), YEAR))
    return outlook.forecast if outlook else None


def _came_to(text: str, person: other.Person) -> float:
    if text in SETS:
        sets, rest_s = SETS[text]
        return person.max_sets(sets, rest_s, "push-up", 0, DONE_ON)
    if text in AMRAPS:
        minutes, lines = AMRAPS[text]
        return person.amrap(minutes, _lines(lines), DONE_ON)
    rounds, lines = FOR_TIME[text]
    return person.for_time(rounds, _lines(lines), DONE_ON)


def _lines(lines: tuple[tuple[str, int], ...]) -> list[other.Line]:
    return [
        other.Line(name, metres=number)
        if name == "run"
        else other.Line(name, number, SWING_KG if name == "swing" else 0.0)
        for name, number in lines
    ]
