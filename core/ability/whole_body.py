"""The whole body: how fast somebody covers a distance, and what rate of work they can keep up.

A distance and its time follow a power law, t = t1 (d/d1)^b. The exponent goes through the athlete's own tests of a
movement; with one test it is 1.06 (Riegel 1981, American Scientist 69:285-290; from memory).
"""

from collections.abc import Iterable, Sequence
from math import exp, log
from typing import NamedTuple

from core.ability.norms import age_of
from core.athletes.values import WALKS, Evidence, Profile, Sex

EXPONENT = 1.06
# Beyond these nobody's own tests are believed (estimate): one of them was no honest effort.
EXPONENTS = (1.0, 1.25)

# One MET is 3.5 ml of oxygen per kg and minute.
ML_PER_MET = 3.5
COOPER_SECONDS = 720.0

# Share of the highest rate that is kept up for twenty minutes (estimate), and how far people spread around what is
# expected of them, in ln (estimate; a run that was timed leaves a quarter of it).
KEPT_UP = 0.85
SPREAD = 0.20
TESTED_SPREAD = 0.05

# Highest oxygen uptake of untrained adults of 25, ml/kg/min, and its loss per year (estimates).
HIGHEST = {Sex.MALE: 42.0, Sex.FEMALE: 35.0, None: 38.0}
LOSS_PER_YEAR = 0.35
YOUNG = 25
LEAST = 15.0


class Pace(NamedTuple):
    """`seconds` for `metres`, and how time grows with distance."""

    metres: float
    seconds: float
    exponent: float

    def seconds_for(self, metres: float) -> float:
        """Expected time for a distance, both in their unit."""
        return self.seconds * exp(self.exponent * log(metres / self.metres))

    def metres_in(self, seconds: float) -> float:
        """Expected distance in a time: the inverse."""
        return self.metres * exp(log(seconds / self.seconds) / self.exponent)


class Rate(NamedTuple):
    """The rate of work that is kept up for twenty minutes, in MET; `spread` of its ln."""

    met: float
    spread: float

    def at(self, z: float) -> float:
        """The rate at the quantile of score `z`."""
        return self.met * exp(z * self.spread)


def pace_of(evidence: Iterable[Evidence], movement: str, *, walked: bool = False) -> Pace | None:
    """The power law through the tests of distance and time of a movement; None without one. A walk is no slow run."""
    timed = [
        (float(one.distance_m), float(one.seconds))
        for one in evidence
        if one.movement == movement and one.distance_m and one.seconds and (one.variant in WALKS) is walked
    ]
    if not timed:
        return None
    metres, seconds = timed[-1]
    return Pace(metres, seconds, _exponent(timed))


def _exponent(timed: Sequence[tuple[float, float]]) -> float:
    """Least squares of ln t over ln d, within what can be."""
    points = [(log(metres), log(seconds)) for metres, seconds in timed]
    mean_d = sum(d for d, _ in points) / len(points)
    mean_t = sum(t for _, t in points) / len(points)
    spread = sum((d - mean_d) * (d - mean_d) for d, _ in points)
    if spread == 0:
        return EXPONENT
    slope = sum((d - mean_d) * (t - mean_t) for d, t in points) / spread
    return float(min(max(slope, EXPONENTS[0]), EXPONENTS[1]))


def uptake_of_a_twelve_minute_run(metres: float) -> float:
    """Highest oxygen uptake in ml/kg/min: (d - 504.9) / 44.73 (Cooper 1968, JAMA 203:201-204)."""
    return (metres - 504.9) / 44.73


def rate_of(profile: Profile, year: int | None = None) -> Rate:
    """What somebody keeps up: from a timed run, else what is expected of their sex and age."""
    run = pace_of(profile.evidence, "run")
    if run is not None:
        uptake = uptake_of_a_twelve_minute_run(run.metres_in(COOPER_SECONDS))
        return Rate(KEPT_UP * max(uptake, LEAST) / ML_PER_MET, TESTED_SPREAD)
    lost = LOSS_PER_YEAR * max(0, age_of(profile, year) - YOUNG)
    return Rate(KEPT_UP * max(HIGHEST[profile.sex] - lost, LEAST) / ML_PER_MET, SPREAD)
