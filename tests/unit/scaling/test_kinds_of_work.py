"""What stands in is work of the same kind (common practice, no source; invented people)."""

import pytest

from bot.words.reasons import reason_words
from core.athletes.values import Screening
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.scaling.amounts import LONG_S
from core.scaling.values import Change
from tests.unit.scaling.people import athlete, did, only_line

OLDER = athlete("Rosa", mass=68, owns=["2x dumbbell 4", "chair"], tests=[did("push-up", 6, variant="knees")])
EASY = athlete("Gerd", owns=["chair"], screening=Screening.MODERATE)


@pytest.mark.parametrize(
    "text", ["5 clean and jerks @ 60/40 kg", "12 dumbbell snatches @ 22.5/15 kg", "12 sit-ups", "8 pull-ups"]
)
@pytest.mark.parametrize("who", [OLDER, EASY, athlete(sex="male", mass=90, owns=["2x dumbbell 5"])])
def test_nobody_gets_several_movements_in_a_row_for_one(text, who):
    line = only_line(f"AMRAP 8\n{text}", who)
    _, variant = catalogue().variant(f"{line.movement}/{line.variant}")
    assert variant.seconds.value < LONG_S


@pytest.mark.parametrize("who", [OLDER, EASY])
def test_a_hold_that_is_too_long_gets_shorter_and_doesn_t_become_repetitions(who):
    line = only_line("4 rounds for quality\n60 s wall sit", who)
    assert (line.movement, line.unit) == ("wall sit", "s")
    assert line.amount <= 60


@pytest.mark.parametrize("who", [OLDER, EASY, athlete()])
def test_no_hold_climbs_a_ladder(who):
    line = only_line("10-8-6-4-2 for time\ntoes-to-bar", who)
    assert (line.unit, line.scheme) == ("reps", (10, 8, 6, 4, 2))


def test_the_trunk_still_holds_for_repetitions():
    line = only_line("AMRAP 12\n15 sit-ups", athlete(owns=["chair"], limits=("low-back",)))
    assert line.unit == "s"


@pytest.mark.parametrize("owns", [[], ["kettlebell 16"], ["chair", "table"], ["band"]])
def test_what_bends_the_arms_is_no_stand_in_for_what_stretches_them(owns):
    who = athlete(owns=owns)
    assert "triceps" not in only_line("4 sets\n15 curls @ 8 kg", who).movement
    assert "curl" not in only_line("4 sets\n15 triceps extensions @ 8 kg", who).movement


KNEE = athlete(
    "Yann", sex="male", mass=82, owns=["dumbbell 8"], limits=("knee",), screening=Screening.MODERATE
)


@pytest.mark.parametrize(
    ("text", "step"), [("400 m farmer carry @ 2 x 24 kg", 10), ("60 step-ups", 2), ("90 s wall sit", 5)]
)
def test_less_of_it_is_still_a_round_amount_with_both_sides_alike(text, step):
    line = only_line(f"For time\n{text}", KNEE)
    assert line.amount % (5 if line.unit == "s" else step) == 0


def test_where_something_is_missing_and_it_is_fewer_too_both_are_told():
    line = only_line("For time\n100 step-ups", athlete("Gerd", birth_year=1959, screening=Screening.MODERATE))
    assert line.change is Change.AMOUNT
    assert (
        reason_words(line, MassUnit.KG)
        == "You don't have a box; fewer, so that every one of them stays clean."
    )


@pytest.mark.parametrize("who", [OLDER, EASY, athlete(owns=["chair"], limits=("shoulder",))])
def test_nobody_does_dead_bugs_for_minutes_in_place_of_a_few_get_ups(who):
    line = only_line("3 sets\n5 get-ups each side @ 8 kg", who)
    assert line.unit != "reps" or line.amount <= 4 * 5 * (1 if line.per_side else 2)


def test_hip_thrusts_without_a_bench_stay_with_the_hips():
    line = only_line("AMRAP 12\n15 hip thrusts", athlete(sex="male", mass=90, tests=[did("push-up", 45)]))
    assert line.movement in {"bridge", "hip thrust", "back extension"}


def test_a_ladder_for_one_side_after_the_other_is_the_same_all_along():
    line = only_line("10-9-8-7-6-5-4-3-2-1 for time\nbent-over rows @ 20 kg", athlete(owns=["dumbbell 12"]))
    assert (line.per_side, line.scheme) == (True, (10, 9, 8, 7, 6, 5, 4, 3, 2, 1))


def test_who_lacks_a_light_weight_gets_no_heavy_bar_instead():
    tests = [did("back squat", 5, 55), did("deadlift", 5, 70)]
    who = athlete(mass=64, owns=["barbell 15 to 80 by 2.5", "kettlebell 12 16"], tests=tests)
    line = only_line("3 rounds for quality\n10 goblet squats @ 8 kg", who)
    assert (line.load_kg or 0) <= 2 * 8


def test_only_who_does_double_unders_claps_in_the_air_for_want_of_a_rope():
    able = athlete(tests=[did("double-under", 60)])
    beginner = athlete("Ove", sex="male", mass=78, birth_year=1960)
    told = [only_line("AMRAP 12\n30 double-unders", who) for who in (able, beginner)]
    able_line, beginner_line = told
    assert (able_line.movement, able_line.variant) == ("double-under", "no-rope")
    assert beginner_line.movement in {"rope skip", "line hop"}
