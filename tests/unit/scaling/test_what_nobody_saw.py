"""A weight for whoever never showed the lift: half of what is believed goes overhead, and little of what is easy."""

import pytest

from core.athletes.values import Screening
from core.movements.lookup import catalogue
from core.scaling.athlete import Athlete
from core.scaling.heaviest import OVERHEAD, UNSEEN_SHARE, sure_kg
from core.scaling.plan import plan_of
from tests.unit.scaling.people import athlete, did, lines, only_line, session, version

PRESSES = "3 sets\n8 overhead presses @ 40 kg\nrest 90 s"
EASY_SQUATS = "3 rounds, easy\n10 goblet squats @ 16 kg"
NEW = {"mass": 97, "sex": "male", "experience": "new", "birth_year": 1962, "screening": Screening.MODERATE}
KNOWN = [did("overhead press", 10, 50)]


def test_whoever_is_new_presses_the_lighter_pair():
    assert only_line(PRESSES, athlete(owns=["2x dumbbell 5 14"], **NEW)).load_kg == 5


def test_whoever_has_shown_it_presses_what_they_showed():
    assert only_line(PRESSES, athlete(owns=["2x dumbbell 5 14"], tests=KNOWN, **NEW)).load_kg == 14


@pytest.mark.parametrize(
    "text", [PRESSES, "AMRAP 12\n10 thrusters @ 40 kg", "AMRAP 12\n10 push presses @ 40 kg"]
)
@pytest.mark.parametrize("owns", ["2x dumbbell 2.5 to 30 by 2.5", "backpack to 25", "kettlebell 8 12 16 24"])
def test_under_a_cap_nobody_lifts_overhead_more_than_half_of_what_is_believed(text, owns):
    who = athlete(owns=[owns, "chair"], **NEW)
    line, sure = only_line(text, who), Athlete(who, catalogue())
    ways = {way.id: way for way in plan_of(session(text), catalogue(), sure.pair)[0].lines[0].ways}
    way = ways[f"{line.movement}/{line.variant}"]
    if line.load_kg is not None and way.demands & OVERHEAD:
        grip = next(one for one in way.grips if one.held == (line.implement, line.count or 1))
        assert float(line.load_kg) * grip.per_kg <= UNSEEN_SHARE * sure_kg(sure, way, 1.0)


def test_on_an_easy_day_the_written_kilos_are_for_whoever_has_shown_them():
    owns = ["dumbbell 5 12"]
    unseen = athlete(owns=owns, **NEW)
    seen = athlete(owns=owns, tests=[did("goblet squat", 15, 16)], mass=80, sex="male", experience="trained")
    assert [only_line(EASY_SQUATS, who).load_kg for who in (unseen, seen)] == [5, 12]


@pytest.mark.parametrize("limit", ["pregnancy-middle", "pregnancy-late", "joint-replacement"])
def test_whoever_gets_up_with_effort_presses_on_a_chair_and_not_on_the_knees(limit):
    (line,) = lines(PRESSES, athlete(owns=["2x dumbbell 3 5", "chair"], limits=(limit,)))
    assert "kneeling" not in line.variant


def test_a_sore_ankle_does_not_hurry_to_the_side():
    line = only_line("4 rounds for time\n60 s rope skipping", athlete(limits=("ankle",)))
    assert "quick-steps" not in catalogue().variant(f"{line.movement}/{line.variant}")[1].demands


def test_on_light_duty_half_of_what_goes_so_often_is_lifted_overhead():
    owns = ["2x dumbbell 5 8", "chair"]
    pressed = only_line(
        "AMRAP 12\n12 thrusters @ 40 kg", athlete(owns=owns, limits=("high-blood-pressure",), **NEW)
    )
    assert pressed.load_kg in {None, 5}


def test_a_sore_shoulder_bears_no_weight_on_all_fours_with_an_arm_lifted():
    line = only_line("3 rounds, easy\n8 bird dogs per side", athlete(limits=("shoulder",)))
    assert (line.movement, line.variant) != ("bird dog", "reach")


def test_a_chair_is_cautioned_of_whatever_is_held_on_it():
    who = athlete(owns=["dumbbell 5", "chair"], limits=("knee",), **NEW)
    made = version("5 sets\n5 back squats @ 60 kg\nrest 2 min", who)
    (line,) = made.blocks[0].lines
    assert (line.variant, line.implement) == ("to-chair", "dumbbell")
    assert {"dumbbell", "chair"} <= {one.id for one in made.cautions}


def test_a_soft_bag_is_swung_lightly():
    line = only_line(
        "4 rounds for time\n15 swings @ 24/16 kg", athlete(sex="male", mass=78, owns=["backpack to 20"])
    )
    assert line.load_kg is None or line.movement != "swing" or line.load_kg <= 10
