"""What is expected of somebody nobody knows: wide, and by sex and age where norms are published."""

from functools import cache
from math import log
from typing import NamedTuple

from core.athletes.values import Profile, Sex
from core.movements.values import Pattern


class Expected(NamedTuple):
    """ln of S over body mass for the pattern's reference, and how far people spread around it."""

    log_strength: float
    spread: float


# kg. Estimates; a skipped body mass is never shown, and only widens what is said.
BODY_MASS = {Sex.MALE: 80.0, Sex.FEMALE: 66.0, None: 72.0}
UNKNOWN_MASS_SPREAD = 0.15

# S over body mass of an adult of 20-29, (men, women), for the reference of each pattern in the catalogue.
# Pushing follows the Canadian Standardized Test of Fitness, reprinted by ACSM: the middle of "good" is 25
# push-ups for men, 18 from the knees for women of that age; k = 40 makes it 0.64 x 65/40 and 0.49 x 58/40.
# The others are estimates: so many repetitions go unbroken for somebody who trains now and then.
STRENGTH: dict[Pattern, tuple[float, float]] = {
    Pattern.HORIZONTAL_PUSH: (1.04, 0.71),
    Pattern.SQUAT: (1.75, 1.60),  # 59 and 49 air squats
    Pattern.HINGE: (1.50, 1.20),  # an 80 kg man lifts 40 kg 35 times, a 66 kg woman 24 kg 32 times
    Pattern.LUNGE: (1.65, 1.45),  # 48 and 36 lunges a leg, 14 and 10 with two 20s and two 12s
    Pattern.VERTICAL_PUSH: (0.36, 0.22),  # 12 single-arm presses at 20 and 10 kg
    Pattern.HORIZONTAL_PULL: (0.48, 0.32),  # 15 single-arm rows at 25.5 and 14 kg
    Pattern.VERTICAL_PULL: (1.20, 0.95),  # 9 pull-ups and none, k = 36
    Pattern.DIP: (1.22, 0.83),  # 11 dips on bars and none
    Pattern.HANG: (2.0, 1.75),  # 60 and 45 s from a bar
    Pattern.INVERSION: (1.55, 1.45),  # a handstand against the wall for 33 and 27 s
    Pattern.ARMS: (0.42, 0.25),  # 12 curls with two 12s, 11 with two 6s
    Pattern.TRUNK: (1.05, 0.98),  # 39 and 33 sit-ups
    Pattern.LIFT: (0.45, 0.30),  # 18 single-arm lifts to overhead at 22.5 and 12.5 kg
    Pattern.CARRY: (1.00, 0.85),  # two 24s over 80 m, two 16s over 90 m
    Pattern.JUMP: (2.00, 1.80),  # 30 and 24 squat jumps
}
OTHER = (1.0, 0.85)

# The same test's norms put three fifths of men of 20-29 between 17 and 36: 0.17 in ln S.
SPREAD = 0.17
UNKNOWN_SEX_SPREAD = 0.10

# ln S lost per year after 25: the middle of "good" for men falls from 25 (20-29) to 11-12 (50-59).
LOSS_PER_YEAR = 0.0078
YOUNG = 25
UNKNOWN_AGE = 35


# ln S of whoever is new to training, and of whoever trains regularly, beside the norms (estimates).
USED_TO_IT = {"new": -0.10, "some": 0.05, "trained": 0.17}
# Beyond so many times the usual mass S over body mass falls with this power of it: of the arms (estimate), and of legs,
# which carry that mass all day (strength goes by mass to two thirds; from memory).
HEAVY = 1.2
HEAVIER_IS_WEAKER = 0.8
LEGS_ARE_USED_TO_IT = 1 / 3
LEGS = frozenset({Pattern.SQUAT, Pattern.HINGE, Pattern.LUNGE})


def body_mass(profile: Profile) -> float:
    """Body mass in kg, the usual one where it was not told."""
    return float(profile.body_mass_kg) if profile.body_mass_kg else BODY_MASS[profile.sex]


def expected(pattern: Pattern, profile: Profile, year: int | None = None) -> Expected:
    """What an athlete of this sex and age is expected to move in a pattern."""
    spread = SPREAD if profile.sex else SPREAD + UNKNOWN_SEX_SPREAD
    by_age = LOSS_PER_YEAR * max(0, age_of(profile, year) - YOUNG)
    used = USED_TO_IT.get(profile.experience or "", 0.0)
    return Expected(_young(pattern, profile.sex) - by_age + used - _by_mass(pattern, profile), spread)


def _by_mass(pattern: Pattern, profile: Profile) -> float:
    """Who is much heavier than usual is weaker for their weight."""
    usual = HEAVY * BODY_MASS[profile.sex]
    power = LEGS_ARE_USED_TO_IT if pattern in LEGS else HEAVIER_IS_WEAKER
    return power * log(max(body_mass(profile) / usual, 1.0))


@cache
def _young(pattern: Pattern, sex: Sex | None) -> float:
    men, women = STRENGTH.get(pattern, OTHER)
    return {Sex.MALE: log(men), Sex.FEMALE: log(women), None: (log(men) + log(women)) / 2}[sex]


def age_of(profile: Profile, year: int | None) -> int:
    if profile.birth_year is None or year is None:
        return UNKNOWN_AGE
    return year - profile.birth_year
