"""A weight that is swung, caught or drawn up fast is slow for whoever had better, and few for everybody."""

import pytest

from core.movements.lookup import catalogue
from core.movements.values import Demand
from core.scaling.values import Change
from tests.unit.scaling.people import athlete, did, only_line

WEIGHTS = ["2x dumbbell 4 8", "kettlebell 8 12", "backpack to 12", "chair", "table"]
CAREFUL = {
    "unsteady": athlete(limits=("unsteady", "joint-replacement"), birth_year=1957, owns=WEIGHTS),
    "brittle": athlete(limits=("osteoporosis",), birth_year=1960, experience="some", owns=WEIGHTS),
    "pregnant": athlete(limits=("pregnancy-middle",), birth_year=1994, experience="some", owns=WEIGHTS),
    "blood pressure": athlete(
        limits=("high-blood-pressure",), birth_year=1958, experience="some", owns=WEIGHTS
    ),
}
FAST = {Demand.FAST_LOAD, Demand.FAST_PULL}
LIFTS = [
    "every 2 min for 10 min\n3 power cleans (60/40 kg)",
    "AMRAP 12\n6 hang power cleans (40/30 kg)",
    "5 x 3 cleans @ 60 kg\nrest 2 min",
    "AMRAP 12\n12 kettlebell swings (24/16 kg)",
    "5 rounds for time\n10 dumbbell snatches (22.5/15 kg)",
]


def demands_of(line):
    return set(catalogue().variant(f"{line.movement}/{line.variant}")[1].demands)


@pytest.mark.parametrize("who", CAREFUL.values(), ids=CAREFUL)
@pytest.mark.parametrize("lift", LIFTS)
def test_whoever_had_better_move_slowly_gets_nothing_fast(lift, who):
    assert FAST.isdisjoint(demands_of(only_line(lift, who)))


def test_a_fast_lift_isn_t_made_up_for_by_number():
    who = athlete(experience="trained", owns=["2x dumbbell 8"], tests=[did("air squat", 35)])
    line = only_line("every 2 min for 10 min\n3 power cleans (60/40 kg)", who)
    assert line.change is Change.VARIANT
    assert line.amount == 5


def test_a_sore_shoulder_catches_and_racks_nothing():
    who = athlete(
        limits=("shoulder",), experience="trained", owns=["2x dumbbell 15 25"], tests=[did("air squat", 60)]
    )
    for text in (LIFTS[0], "5 x 5 back squat @ 100 kg\nrest 2 min"):
        assert Demand.RACKED not in demands_of(only_line(text, who))


def test_nothing_is_swung_by_a_strap_where_a_weight_is_there():
    who = athlete(experience="some", owns=["2x dumbbell 8", "backpack to 10"], tests=[did("air squat", 30)])
    assert only_line("AMRAP 12\n12 kettlebell swings (24/16 kg)", who).implement == "dumbbell"
