"""What somebody showed bounds what they are given: in a row, in the hands, and where it comes again and again."""

import pytest

from core.ability.capacity import Capacity
from core.athletes.circumstances import in_circumstances
from core.athletes.values import Pregnancy
from core.movements.lookup import catalogue
from tests.unit.scaling.people import athlete, did, lines, only_line

ROUNDS = "4 rounds for time\n10 pull-ups\n20 air squats"


def hangs(pull_ups):
    return athlete(
        "Tom",
        sex="male",
        mass=80,
        owns=["pull-up bar", "chair"],
        tests=[did("pull-up", pull_ups)],
        experience="trained",
    )


def test_nobody_does_in_each_round_more_pull_ups_than_their_best():
    line = lines(ROUNDS, hangs(6))[0]
    assert (line.variant, line.amount) != ("strict", 10)
    assert line.variant == "feet-on-chair" or line.amount <= 4


def test_as_many_as_go_in_a_row_are_broken_up_as_they_come():
    line = lines(ROUNDS, hangs(11))[0]
    assert (line.variant, line.amount) == ("strict", 10)


def test_a_chair_is_no_reason_for_more_in_the_hands_than_was_ever_shown():
    who = athlete(
        owns=["dumbbell 2 to 20 by 2", "chair"],
        tests=[did("goblet squat", 15, 16)],
        limits=("shoulder",),
        weeks_off=6,
    )
    line = lines("4 rounds for time\n10 thrusters @ 25 kg\n20 sit-ups", in_circumstances(who))[0]
    assert line.movement == "goblet squat"
    assert 8 <= line.load_kg <= 14


def test_eight_of_fifteen_are_about_half_of_what_goes():
    who = athlete(
        owns=["kettlebell 8 12"],
        tests=[did("goblet squat", 15, 12)],
        pregnancy=Pregnancy(week=24, cleared=True),
    )
    line = only_line("5 x 5 back squat, 75%, rest 3 min", in_circumstances(who))
    assert (line.movement, line.amount, line.load_kg) == ("goblet squat", 8, 12)


@pytest.mark.parametrize(("text", "load"), [("4 rounds for time\n", 8), ("4 sets, rest 2 min\n", 12)])
def test_what_pushes_a_chair_all_day_presses_lightly_where_it_comes_again_without_a_rest(text, load):
    who = athlete(
        "Emil",
        sex="male",
        limits=("seated",),
        owns=["2x dumbbell 4 8 12"],
        tests=[did("overhead press", 12, 12)],
    )
    assert lines(f"{text}10 overhead presses 2 x 12 kg", who)[0].load_kg == load


def test_both_of_a_pair_are_lifted():
    who = athlete(owns=["2x dumbbell 3 5", "chair"], limits=("joint-replacement",), birth_year=1956)
    line = lines("AMRAP 15\n8 burpees\n12 kettlebell swings @ 16 kg", who)[1]
    assert (line.movement, line.count, line.load_kg) == ("deadlift", 2, 5)


def test_push_ups_tell_more_of_a_press_overhead_than_of_a_squat():
    def times_stronger(way):
        movement, variant = catalogue().variant(way)
        strong, usual = (
            Capacity(athlete(tests=tests), catalogue()).of(movement, variant, way).strength_kg
            for tests in ([did("push-up", 40)], [])
        )
        return strong / usual

    assert times_stronger("overhead press/standing") > times_stronger("goblet squat/front") > 1
