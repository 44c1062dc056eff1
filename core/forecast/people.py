"""Who an athlete may turn out to be today: seeded draws of what is not known of them.

The first of them is the middle in everything; from it the pacing comes.
"""

from functools import lru_cache

import numpy as np

from core.ability.capacity import Capacity
from core.ability.whole_body import EXPONENT, ML_PER_MET, TESTED_SPREAD, Pace, Rate, pace_of, rate_of
from core.athletes.learned import (
    MOST_NAMES,
    RATE,
    RECOVERY,
    TEMPO,
    Learned,
    strength_of,
    tempo_of,
)
from core.athletes.values import WALKS, Profile
from core.forecast.fatigue import Floats
from core.movements.lookup import Catalogue

DRAWS = 200
# Spreads of ln: how fast people recover, how fast they go about it, and about one movement (estimates).
RECOVERY_SPREAD = 0.25
TEMPO_SPREAD = 0.10
TEMPO_OF_ONE_SPREAD = 0.16
# So many unknowns of a person are drawn apart from each other: those that were learned from behind, others from the
# front.
ROWS = 2 * MOST_NAMES
_A_HAIR = 1e-9
_LEAST_POWER = 0.1
# Who is used to it loses less time, who isn't more (estimates).
USED_TO_IT = {"new": 1.15, "some": 1.0, "trained": 0.97}

# The highest rate that goes on and on, against the one kept up for twenty minutes, and how many seconds of it can be
# overdrawn: both from the worked example of Monod & Scherrer 1965, Ergonomics 8:329-338 (W' 20,000 J, CP 216.667 W).
OVERDRAFT_S = 20_000 / (650 / 3)
STEADY = 1 / (1 + OVERDRAFT_S / 1200)

# What the run of the catalogue takes for a metre.
RUN_S = 0.373
# On a machine speed is the cube root of power (published for those that brake by air, from memory), and power goes with
# what is breathed beyond this for the whole body, not for each kilogram (ACSM's equation of cycling: 7 ml/kg/min; from
# memory). The rates of the catalogue are of somebody of that mass (the Compendium's; from memory).
IDLE_MET, OF_MASS_KG = 2.0, 70.0
# Who was never timed on one loses so much for want of a stroke, and lies so far from that, in ln (estimates).
UNTIMED, MACHINE_SPREAD = 1.05, 0.08
# What is believed is of twenty minutes; who runs for two goes at some ten percent above their highest uptake instead of
# fifteen below it (estimate): no race, but no walk either.
BELIEVED_S, SHORT_EXPONENT = 1200.0, 1.10
# Metres a minute: as far as ACSM's walking equation goes (from memory), and what nobody is slower than (estimate).
FASTEST_WALK, SLOWEST = 100.0, 60.0


# After a break: for so many weeks nothing is lost, then so much a week, up to so much. Breath goes sooner than strength
# (Mujika & Padilla 2000, Sports Medicine 30:79-87 and 145-154, from memory; the numbers are estimates after them).
BREATH_LOST, STRENGTH_LOST = (2.0, 0.02, 0.2), (4.0, 0.01, 0.15)
_WEEK_DAYS = 7.0


def weeks_off(profile: Profile) -> float:
    """How long they were away: as they told, or since their last score."""
    away = profile.learned.away_days / _WEEK_DAYS if profile.learned else 0.0
    return max(profile.weeks_off or 0.0, away)


def kept(weeks: float, free: float, a_week: float, most: float) -> float:
    """The share that is left after so many weeks off."""
    return 1.0 - min(max(weeks - free, 0.0) * a_week, most)


@lru_cache(maxsize=8)
def chances(seed: int) -> Floats:
    """Standard normal draws, a row for each unknown; the first of each is 0."""
    drawn = np.random.default_rng(seed).standard_normal((ROWS, DRAWS))
    drawn[:, 0] = 0.0
    return drawn


class Unknowns:
    """What isn't known of a person, by name, as it is after what was learned: each drawn `DRAWS` times."""

    def __init__(self, learned: Learned | None, seed: int = 0) -> None:
        self._drawn = chances(seed)
        self.rows: dict[str, Floats] = {}
        if learned is not None and learned.names:
            root = np.linalg.cholesky(np.array(learned.covariance) + _A_HAIR * np.eye(len(learned.names)))
            known = np.array(learned.middle)[:, None] + root @ self._drawn[-len(learned.names) :]
            self._learned = dict(zip(learned.names, known, strict=True))
        else:
            self._learned = {}

    def of(self, name: str) -> Floats:
        found = self.rows.get(name)
        if found is None:
            found = self._learned.get(name)
            if found is None:
                found = self._drawn[len(self.rows) % ROWS]
            self.rows[name] = found
        return found


class People:
    """The athlete, `DRAWS` times."""

    def __init__(
        self, profile: Profile, catalogue: Catalogue, year: int | None = None, seed: int = 0
    ) -> None:
        self.profile = profile
        self.catalogue = catalogue
        # What was learned is in the draws already.
        self.capacity = Capacity(profile.model_copy(update={"learned": None}), catalogue, year)
        self.unknowns = unknown = Unknowns(profile.learned, seed)
        self.speed = np.exp(RECOVERY_SPREAD * unknown.of(RECOVERY))
        self.tempo = USED_TO_IT.get(profile.experience or "some", 1.0) * np.exp(
            TEMPO_SPREAD * unknown.of(TEMPO)
        )
        rate: Rate = rate_of(profile, year)
        self._off = weeks_off(profile)
        self._of_rate = np.exp(rate.spread * unknown.of(RATE)) * kept(self._off, *BREATH_LOST)
        self.kept_up_met = rate.met * self._of_rate
        self.steady_met = self.kept_up_met * STEADY
        self._pace = pace_of(profile.evidence, "run")
        self._walk = pace_of(profile.evidence, "run", walked=True)

    def unbroken(self, way: str, moved_kg: float) -> Floats:
        """Repetitions (seconds of a hold) of a `movement/variant` that go unbroken when fresh; one at least."""
        movement, variant = self.catalogue.variant(way)
        ability = self.capacity.of(movement, variant, way)
        if moved_kg <= 0:
            return np.full(DRAWS, 1e6)
        sure = np.exp(ability.spread_at(moved_kg) * self._of(movement.id))
        strength_kg = ability.strength_kg * kept(self._off, *STRENGTH_LOST)
        return np.maximum(1.0, ability.k * (strength_kg / moved_kg * sure - 1))

    def heaviest(self, way: str, reps: float) -> Floats:
        """Kilograms moved that go for so many repetitions."""
        movement, variant = self.catalogue.variant(way)
        ability = self.capacity.of(movement, variant, way)
        strength_kg = ability.strength_kg * kept(self._off, *STRENGTH_LOST)
        return strength_kg / (1 + reps / ability.k) * np.exp(ability.spread * self._of(movement.id))

    def run_s(self, metres: float) -> Floats:
        """Seconds for a run of so many metres, alone and as fast as it goes evenly; never slower than they walk."""
        found = (self._pace or self._believed(metres)).seconds_for(metres) / self._of_rate
        walked = np.inf if self._walk is None else self._walk.seconds_for(metres)
        return np.asarray(np.minimum(found, walked))

    def travel_s(self, movement: str, seconds: float, metres: float, variant: str | None = None) -> Floats:
        """Seconds for a metre over so many: by their own time for a distance of it, else beside a run.

        `seconds`: what the catalogue says of one metre of the way that they take, the `variant`.
        """
        if self._walk is not None and variant in WALKS:
            return np.asarray(
                self._walk.seconds_for(metres) / metres / np.exp(TESTED_SPREAD * self.unknowns.of(RATE))
            )
        timed = pace_of(self.profile.evidence, movement)
        usual = self.catalogue.movement(movement).variants[0]
        if timed is not None:
            off = np.exp(TESTED_SPREAD * self.unknowns.of(RATE))
            return np.asarray(timed.seconds_for(metres) / metres / off * (seconds / usual.seconds.value))
        if usual.counts_kcal and usual.met is not None:
            speed = self._speed_on(movement, usual.seconds.value, usual.met.value)
            far = BELIEVED_S * float(speed[0])
            return np.asarray((metres / far) ** (EXPONENT - 1) / speed * (seconds / usual.seconds.value))
        return self.run_s(metres) / metres * (seconds / RUN_S)

    def _speed_on(self, machine: str, seconds: float, met: float) -> Floats:
        """Metres a second kept up for twenty minutes on a machine that takes `met` at `seconds` a metre.

        However well they run: who breathes more is faster by the cube root of it only, and who is heavier by that too.
        """
        power = (self.kept_up_met - IDLE_MET) * self.capacity.body_mass_kg / ((met - IDLE_MET) * OF_MASS_KG)
        off = np.exp(MACHINE_SPREAD * self.unknowns.of(tempo_of(machine)))
        usual = UNTIMED * USED_TO_IT.get(self.profile.experience or "some", 1.0)
        return np.asarray(np.cbrt(np.maximum(power, _LEAST_POWER)) / seconds / off / usual)

    def _believed(self, metres: float) -> Pace:
        """Without a timed run: the speed at the rate kept up for twenty minutes (ACSM's equations).

        Who can't run at that rate walks as fast as it allows, as far as the walking equation goes.
        """
        beyond_rest = self.kept_up_met[0] * ML_PER_MET - 3.5
        walks = min(beyond_rest / 0.1, FASTEST_WALK)
        far = max(beyond_rest / 0.2, walks, SLOWEST) * BELIEVED_S / 60
        return Pace(far, BELIEVED_S, SHORT_EXPONENT if metres < far else EXPONENT)

    def tempo_of(self, movement: str) -> Floats:
        """How many times the usual seconds a repetition of a movement takes."""
        return np.asarray(self.tempo * np.exp(TEMPO_OF_ONE_SPREAD * self.unknowns.of(tempo_of(movement))))

    def _of(self, movement: str) -> Floats:
        shares = strength_of(movement)
        return np.asarray(sum(share * self.unknowns.of(name) for name, share in shares.items()))
