"""Load and repetitions against published formulas and spreads. The formulas speak of the load on the bar."""

from math import exp

import pytest

from core.ability.capacity import K_SPREAD, Ability, Capacity
from core.athletes.values import Sex
from core.movements.lookup import catalogue
from tests.unit.scaling.people import athlete, did

EPLEY_K = 30


def bar(strength_kg, k=EPLEY_K):
    return Ability(strength_kg, 0.0, k, None, heavy_shown=True)


def one_repetition_maximum(load, reps, k=EPLEY_K):
    """S = L (1 + N/k), and one repetition at S / (1 + 1/k)."""
    return load * (1 + reps / k) / (1 + 1 / k)


def test_a_single_maximum_goes_once():
    # S = w (1 + 1/k), from N(L) = k (S/L - 1) with N = 1.
    assert bar(100 * (1 + 1 / EPLEY_K)).unbroken(100) == pytest.approx(1)


def test_strength_of_a_test_is_epleys_maximum():
    # Epley 1985, w (1 + r/30); 100 kg for ten: 133.333 (computed). Known from texts that cite it.
    ability = bar(100 * (1 + 10 / EPLEY_K))
    assert ability.strength_kg == pytest.approx(133.333, abs=0.001)
    assert ability.unbroken(100) == pytest.approx(10)


@pytest.mark.parametrize(
    ("source", "maximum"),
    [
        ("Brzycki 1993, JOPERD 64(1):88-90: 36 w / (37 - r)", 36 * 100 / (37 - 10)),
        ("Mayhew et al. 1992", 100 * 100 / (52.2 + 41.9 * exp(-0.055 * 10))),
        ("Wathen 1994", 100 * 100 / (48.8 + 53.8 * exp(-0.075 * 10))),
        ("Lombardi 1989: w r^0.10", 100 * 10**0.10),
    ],
)
def test_ten_at_a_hundred_is_near_the_other_formulas(source, maximum):
    # Our maximum for one repetition, 129.0, lies between Lombardi's 125.9 and Wathen's 134.8.
    assert one_repetition_maximum(100, 10) == pytest.approx(maximum, rel=0.05), source


@pytest.mark.parametrize(
    ("reps", "percent"), [(1, 100), (2, 95), (4, 90), (6, 85), (8, 80), (10, 75), (12, 70)]
)
def test_the_load_chart_is_met_within_five_points(reps, percent):
    # NSCA training load chart (cited).
    ours = 100 * (1 + 1 / EPLEY_K) / (1 + reps / EPLEY_K)
    assert ours == pytest.approx(percent, abs=5)


def test_six_to_twenty_six_go_at_seventy_percent_of_a_bars_maximum():
    """Zourdos et al. 2021, J Strength Cond Res 35(2S):S158, quote 6-26 repetitions (squat, trained): read.

    That is a spread of k on the bar's load: the middle nine tenths of ours must be about as wide.
    """

    def at_seventy(z):
        k = EPLEY_K * exp(z * K_SPREAD)
        return bar(100 * (1 + 1 / k), k).unbroken(70)

    low, high = at_seventy(-1.645), at_seventy(1.645)
    assert 6 <= low <= 10
    assert 20 <= high <= 28
    assert low < at_seventy(0) < high


NORMS = [
    # Canadian Standardized Test of Fitness, reprinted by ACSM (cited): fair to very good, lower bounds.
    ("push-up/floor", Sex.MALE, 25, 17, 29),
    ("push-up/floor", Sex.MALE, 35, 12, 22),
    ("push-up/floor", Sex.MALE, 55, 7, 13),
    ("push-up/knees", Sex.FEMALE, 25, 10, 21),
    ("push-up/knees", Sex.FEMALE, 35, 8, 20),
    ("push-up/knees", Sex.FEMALE, 45, 5, 15),
]


@pytest.mark.parametrize(("variant_id", "sex", "age", "fair", "very_good"), NORMS)
def test_somebody_untested_is_expected_between_fair_and_very_good(variant_id, sex, age, fair, very_good):
    who = athlete(sex=sex, mass=80 if sex is Sex.MALE else 66, birth_year=2000 - age)
    capacity = Capacity(who, catalogue(), 2000)
    movement, variant = catalogue().variant(variant_id)
    ability = capacity.of(movement, variant, variant_id)
    assert fair <= ability.unbroken(variant.body_share.value * capacity.body_mass_kg) <= very_good


def test_a_test_is_met_exactly_whatever_the_uncertain_k():
    movement, variant = catalogue().variant("goblet squat/front")
    capacity = Capacity(athlete(mass=70, tests=[did("goblet squat", 20, 16)]), catalogue())
    ability = capacity.of(movement, variant, "goblet squat/front")
    moved = variant.body_share.value * 70 + 16
    assert ability.unbroken(moved) == pytest.approx(20)
    assert ability.spread_at(moved) == ability.spread
    assert ability.spread_at(moved + 10) > ability.spread
