"""Twenty middle-aged men of a fitness club: chins and sit-ups in a row, and body mass.

Tenenhaus 1998, La regression PLS, Technip (after A. C. Linnerud, NC State University); the rows are those of
`sklearn.datasets.load_linnerud`, written down from memory. The ages are not given: 45 is taken for middle age.
"""

from decimal import Decimal

from core.ability.capacity import Capacity
from core.ability.demand import load_moved
from core.athletes.values import Profile, Sex
from core.measures import MassUnit, to_kg
from core.movements.lookup import catalogue

CHINS = (5, 2, 12, 12, 13, 4, 8, 6, 15, 17, 17, 13, 14, 1, 6, 12, 4, 11, 15, 2)
SIT_UPS = (162, 110, 101, 105, 155, 101, 101, 125, 200, 251, 120, 210, 215, 50, 70, 210, 60, 230, 225, 110)
POUNDS = (191, 189, 193, 162, 189, 182, 211, 167, 176, 154, 169, 166, 154, 247, 193, 202, 176, 157, 156, 138)

MIDDLE_AGE = 45
YEAR = 2000
# The 95 % quantile of the normal distribution: nine in ten lie within it on both sides.
NINE_IN_TEN = 1.645


def inside(variant_id, counts):
    """How many of the men's counts lie in the range that holds nine in ten by our priors, given their weight."""
    return sum(
        low - 0.5 <= count <= high + 0.5
        for count, (low, high) in zip(counts, _ranges(variant_id), strict=True)
    )


def _ranges(variant_id):
    movement, variant = catalogue().variant(variant_id)
    for pounds in POUNDS:
        mass = to_kg(Decimal(pounds), MassUnit.LB)
        man = Profile(name="one of them", sex=Sex.MALE, birth_year=YEAR - MIDDLE_AGE, body_mass_kg=mass)
        capacity = Capacity(man, catalogue(), YEAR)
        ability = capacity.of(movement, variant, variant_id)
        moved = load_moved(variant, capacity.body_mass_kg)
        yield ability.unbroken(moved, -NINE_IN_TEN), ability.unbroken(moved, NINE_IN_TEN)
