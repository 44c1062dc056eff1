"""What a body may be asked: the heavy, the unsteady, the sore, the pregnant, a weak heart, and the strong."""

from decimal import Decimal

import pytest

from core.athletes.circumstances import in_circumstances
from core.athletes.values import AfterBirth, Pregnancy, Screening
from core.measures import AmountUnit
from core.movements.lookup import catalogue
from core.movements.values import Demand
from core.scaling.values import Because, Change
from tests.unit.scaling.people import athlete, did, lines, only_line, version

SQUATS = "5 x 5 back squat @ 75 %\nrest 2 min"
DIPS = "AMRAP 12\n10 dips"
STRONG = [did("push-up", 45), did("goblet squat", 30, 24)]


def test_the_legs_of_the_heavy_are_used_to_their_mass():
    heavy = athlete("Ove", sex="male", mass=140, experience="new", owns=["2x dumbbell 10 15"])
    line = only_line(SQUATS, heavy)
    assert (line.movement, line.implement) == ("goblet squat", "dumbbell")


def test_who_is_new_builds_up_in_fives_and_not_to_a_single():
    new = athlete(experience="new", owns=["barbell 15 to 80 by 2.5"])
    line = only_line("back squat: build to a heavy single", new)
    assert line.amount is not None
    assert line.amount >= 5


def test_where_there_is_time_between_few_of_it_they_are_heavy_sets():
    new = athlete(experience="new", owns=["barbell 15 to 80 by 2.5"])
    line = only_line("every 2 min for 16 min\n2 power snatches @ 75 %", new)
    assert line.amount == 5


def test_jumps_in_place_of_a_heavy_set_are_few():
    line = only_line(
        "8 x 2 power clean @ 80 %\nrest 90 s",
        athlete(experience="trained", tests=[did("air squat", 60), did("push-up", 38)]),
    )
    assert (line.movement, line.amount) == ("broad jump", 5)


def test_many_of_what_is_light_are_hard_ones():
    """Fifteen deadlifts on two legs with 24 kg are nothing to whoever squats it thirty times."""
    who = athlete(sex="male", mass=80, experience="trained", owns=["kettlebell 24"], tests=STRONG)
    line = only_line("5 x 3 deadlift @ 140/95 kg\nrest 3 min", who)
    assert line.per_side
    assert line.set_cost is not None
    assert line.set_cost > 0.4


@pytest.mark.parametrize("limits", [(), ("knee",)])
def test_fists_are_for_sore_wrists(limits):
    line = only_line("4 x 8 bench press @ 60/35 kg\nrest 90 s", athlete(limits=limits))
    assert "fists" not in line.variant


def test_a_sore_wrist_gets_them():
    line = only_line("AMRAP 12\n8 push-ups", athlete(limits=("wrist",), tests=[did("push-up", 20)]))
    assert "fists" in line.variant


def test_weights_come_before_a_band():
    who = athlete(sex="male", mass=80, limits=("shoulder",), owns=["2x dumbbell 10 20", "band"])
    line = only_line("AMRAP 12\n10 dumbbell thrusters @ 2 x 22.5/15 kg", who)
    assert line.implement == "dumbbell"


def test_the_bike_that_is_there_comes_before_a_walk():
    line = only_line("5 rounds for time\n400 m run", athlete(limits=("joint-replacement",), owns=["bike"]))
    assert (line.movement, line.variant) == ("ride", "bike")


def test_a_time_on_the_spot_stays_a_time_for_what_goes_by_metres():
    who = in_circumstances(athlete(pregnancy=Pregnancy(week=22, cleared=True)))
    line = only_line("every minute for 9 minutes\n30 s run on the spot", who)
    assert (line.movement, line.amount, line.unit) == ("shuttle run", 30, "s")


@pytest.mark.parametrize("limit", ["unsteady", "stroke", "parkinsons"])
def test_who_is_unsteady_squats_on_two_feet_and_steps_a_few_times(limit):
    who = athlete(limits=(limit,), owns=["chair", "stairs"], birth_year=1956, experience="some")
    squat, step = lines(f"3 rounds for quality\n{12} air squats\n20 step-ups", who)
    assert "lunge" not in squat.movement
    assert step.movement != "step-up" or step.amount <= 12


def test_nobody_pregnant_presses_from_behind_the_body():
    who = in_circumstances(athlete(owns=["chair"], pregnancy=Pregnancy(week=22, cleared=True)))
    assert only_line(DIPS, who).movement != "chair dip"


def test_a_heart_condition_leaves_three_quarters():
    who = athlete(limits=("heart",), screening=Screening.MODERATE)
    made = version("4 rounds for time\n12 air squats", who)
    assert made.blocks[0].rounds == 3
    assert made.easing is not None
    assert not made.scored


def test_a_line_that_is_as_written_stays_so_with_a_height():
    line = only_line("AMRAP 12\n12 box step-ups @ 50 cm", athlete(owns=["box"], tests=[did("step-up", 60)]))
    assert (line.change, line.load_kg) == (Change.NONE, None)


def test_with_one_light_weight_there_is_nothing_to_work_up_to():
    who = athlete(sex="male", mass=80, experience="trained", owns=["kettlebell 24"], tests=STRONG)
    line = only_line("build to a heavy 3 of deadlift", who)
    assert line.load_kg == Decimal(24)
    assert line.reason.because is Because.TOO_LIGHT
    assert (line.amount or 0) >= 8


def test_with_a_bar_there_is():
    who = athlete(owns=["barbell 15 to 140 by 2.5"], tests=[did("deadlift", 3, 90)])
    line = only_line("build to a heavy 3 of deadlift", who)
    assert (line.load_kg, line.amount, line.change) == (None, 3, Change.NONE)


def test_with_one_heavy_weight_it_is_named_and_nothing_worked_up_to():
    who = athlete(sex="male", mass=80, owns=["barbell 100"], tests=[did("deadlift", 4, 100)])
    line = only_line("build to a heavy 3 of deadlift", who)
    assert (line.load_kg, line.amount) == (Decimal(100), 3)


@pytest.mark.parametrize("text", ["12 lunges", "15 squat jumps", "10 box jumps", "20 m walking lunges"])
def test_a_sore_knee_is_led_away_from_one_leg_and_from_speed(text):
    line = only_line(f"3 rounds for time\n{text}", athlete(limits=("knee",), owns=["chair"]))
    _, variant = catalogue().variant(f"{line.movement}/{line.variant}")
    assert Demand.KNEE_LOAD not in variant.demands


@pytest.mark.parametrize("reps", [8, 10, 12])
def test_what_a_limit_takes_away_below_leaves_no_more_than_goes(reps):
    """Without the push-ups from the knees, those on the floor aren't done at the most that goes."""
    who = athlete(limits=("knee",), tests=[did("push-up", reps)])
    line = only_line("5 rounds for time\n10 push-ups", who)
    assert (line.set_cost or 0) < 0.85


def test_it_leads_to_raised_hands_where_there_is_something_to_lean_on():
    who = athlete(limits=("knee",), owns=["chair"], tests=[did("push-up", 10)])
    assert only_line("5 rounds for time\n10 push-ups", who).variant == "hands-on-chair"


@pytest.mark.parametrize("weeks", [8, 16])
def test_nobody_after_a_birth_is_given_more_than_written_of_what_is_light(weeks):
    who = in_circumstances(athlete(owns=["chair"], after_birth=AfterBirth(weeks=weeks, cleared=True)))
    for line in lines("3 rounds for time\n15 sit-ups\n12 air squats", who):
        assert line.unit is not AmountUnit.REPS or (line.amount or 0) <= 15
