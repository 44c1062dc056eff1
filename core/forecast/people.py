"""Who an athlete may turn out to be today: seeded draws of what is not known of them (design 6.5).

The first of them is the middle in everything; from it the pacing comes.
"""

from functools import lru_cache
from math import sqrt
from typing import NamedTuple

import numpy as np

from core.ability.capacity import Capacity
from core.ability.whole_body import ML_PER_MET, Pace, Rate, pace_of, rate_of
from core.athletes.values import Profile
from core.forecast.fatigue import Floats
from core.movements.lookup import Catalogue

DRAWS = 200
# How much of what is unknown of one movement is unknown of all of them: a good day, a strong person (estimate).
IN_COMMON = 0.6
# Spreads of ln: how fast people recover, and how fast they go about it (estimates).
RECOVERY_SPREAD = 0.25
TEMPO_SPREAD = 0.10
# Who is used to it loses less time, who isn't more (estimates).
TEMPO = {"new": 1.15, "some": 1.0, "trained": 0.97}

# The highest rate that goes on and on, against the one kept up for twenty minutes, and how many seconds of it can be
# overdrawn: both from the worked example of Monod & Scherrer 1965, Ergonomics 8:329-338 (W' 20,000 J, CP 216.667 W).
OVERDRAFT_S = 20_000 / (650 / 3)
STEADY = 1 / (1 + OVERDRAFT_S / 1200)

# What the run of the catalogue takes for a metre.
RUN_S = 0.373


class Chances(NamedTuple):
    """Standard normal draws, the first of them 0: one row for each unknown, `movements` one for each movement."""

    common: Floats
    recovery: Floats
    tempo: Floats
    rate: Floats
    movements: Floats


@lru_cache(maxsize=8)
def chances(seed: int, movements: int = 32) -> Chances:
    drawn = np.random.default_rng(seed).standard_normal((4 + movements, DRAWS))
    drawn[:, 0] = 0.0
    return Chances(drawn[0], drawn[1], drawn[2], drawn[3], drawn[4:])


class People:
    """The athlete, `DRAWS` times."""

    def __init__(
        self, profile: Profile, catalogue: Catalogue, year: int | None = None, seed: int = 0
    ) -> None:
        self.profile = profile
        self.catalogue = catalogue
        self.capacity = Capacity(profile, catalogue, year)
        drawn = self._drawn = chances(seed)
        self.speed = np.exp(RECOVERY_SPREAD * drawn.recovery)
        self.tempo = TEMPO.get(profile.experience or "some", 1.0) * np.exp(TEMPO_SPREAD * drawn.tempo)
        rate: Rate = rate_of(profile, year)
        self._of_rate = np.exp(rate.spread * drawn.rate)
        self.kept_up_met = rate.met * self._of_rate
        self.steady_met = self.kept_up_met * STEADY
        self._pace = pace_of(profile.evidence, "run")
        self._order: dict[str, int] = {}

    def unbroken(self, way: str, moved_kg: float) -> Floats:
        """Repetitions (seconds of a hold) of a `movement/variant` that go unbroken when fresh; one at least."""
        movement, variant = self.catalogue.variant(way)
        ability = self.capacity.of(movement, variant, way)
        if moved_kg <= 0:
            return np.full(DRAWS, 1e6)
        sure = np.exp(ability.spread_at(moved_kg) * self._of(movement.id))
        return np.maximum(1.0, ability.k * (ability.strength_kg / moved_kg * sure - 1))

    def heaviest(self, way: str, reps: float) -> Floats:
        """Kilograms moved that go for so many repetitions."""
        movement, variant = self.catalogue.variant(way)
        ability = self.capacity.of(movement, variant, way)
        return ability.strength_kg / (1 + reps / ability.k) * np.exp(ability.spread * self._of(movement.id))

    def run_s(self, metres: float) -> Floats:
        """Seconds for a run of so many metres, alone and as fast as it goes evenly."""
        return np.asarray((self._pace or self._believed()).seconds_for(metres) / self._of_rate)

    def travel_s(self, seconds: float, metres: float) -> Floats:
        """Seconds for a metre of what takes the catalogue's `seconds` for one, over so many metres."""
        return self.run_s(metres) / metres * (seconds / RUN_S)

    def _believed(self) -> Pace:
        """Without a timed run: the speed at the rate kept up for twenty minutes (ACSM's running equation)."""
        rate = self.kept_up_met[0]
        metres_a_minute = max((rate * ML_PER_MET - 3.5) / 0.2, 60.0)
        return Pace(metres_a_minute * 20, 1200.0, 1.06)

    def _of(self, movement: str) -> Floats:
        place = self._order.setdefault(movement, len(self._order)) % len(self._drawn.movements)
        own = sqrt(1 - IN_COMMON**2) * self._drawn.movements[place]
        return np.asarray(IN_COMMON * self._drawn.common + own)
