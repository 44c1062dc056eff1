"""Rising sets lead up to heavy ones, with the loads that are there (common practice, no source)."""

import pytest

from core.movements.lookup import catalogue
from core.scaling.rising import rising_sets
from tests.unit.scaling.people import athlete, did, version


def climb(text, who):
    made = rising_sets(version(text, who), who, catalogue())
    return [(line.movement, line.load_kg, line.amount) for line in made]


BAR = "barbell 20 to 140 by 2.5"


def test_a_lifter_climbs_from_the_empty_bar():
    who = athlete(sex="male", mass=80, owns=[BAR], tests=[did("back squat", 5, 110)])
    assert climb("5 x 5 back squat @ 100 kg\nrest 3 min", who) == [
        ("back squat", 20, 8),
        ("back squat", 40, 5),
        ("back squat", 60, 3),
        ("back squat", 80, 2),
    ]


def test_only_loads_that_exist_are_climbed():
    who = athlete(sex="male", mass=80, owns=["dumbbell 16 30"], tests=[did("goblet squat", 10, 30)])
    assert climb("5 x 5 goblet squat @ 30 kg\nrest 3 min", who) == [("goblet squat", 16, 3)]


@pytest.mark.parametrize(
    "text", ["AMRAP 12\n10 push-ups\n15 air squats", "3 x 12 goblet squat @ 8 kg\nrest 1 min"]
)
def test_light_work_needs_no_climb(text):
    who = athlete(sex="male", mass=80, owns=["dumbbell 8"], tests=[did("goblet squat", 40, 8)])
    assert climb(text, who) == []


def test_every_set_is_lighter_than_the_work_and_heavier_than_the_one_before():
    who = athlete(sex="male", mass=80, owns=[BAR], tests=[did("deadlift", 3, 130)])
    sets = climb("5 x 3 deadlift @ 120 kg\nrest 3 min", who)
    loads = [load for _, load, _ in sets]
    assert loads == sorted(set(loads))
    assert max(loads) < 120
