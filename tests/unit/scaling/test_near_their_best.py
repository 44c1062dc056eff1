"""What somebody told is their number: no set that comes again and again is at it (invented people)."""

from decimal import Decimal

import pytest

from tests.unit.scaling.people import athlete, did, lines, only_line

A_WOMAN = {"sex": "female", "mass": 70, "birth_year": 1978, "experience": "trained"}
AN_OLD_HAND = {"sex": "male", "mass": 92, "birth_year": 1965, "experience": "some"}
A_BAR = "barbell 15 to 80 by 2.5"


def test_sets_of_as_many_as_their_best_are_done_with_less():
    who = athlete(**A_WOMAN, owns=[A_BAR], tests=[did("overhead press", 6, 25)])
    line = only_line("4 x 6 overhead press @ 45/27.5 kg\nrest 2 min", who)
    assert line.load_kg is not None
    assert Decimal(20) <= line.load_kg < Decimal(25)


@pytest.mark.parametrize(("best", "most"), [(14, 10), (13, 10)])
def test_every_minute_nobody_does_nearly_all_that_they_told(best, most):
    who = athlete(**AN_OLD_HAND, tests=[did("push-up", best)])
    board = "EMOM 16\nmin 1: 12 push-ups\nmin 2: 40 s plank\nmin 3: 12 air squats\nmin 4: rest"
    push_ups = lines(board, who)[0]
    assert push_ups.movement == "push-up"
    assert (push_ups.amount or 0) <= most or push_ups.variant != "floor"


def test_whoever_has_some_pull_ups_lowers_few_or_does_fewer():
    who = athlete(
        sex="male", mass=82, experience="some", owns=["pull-up bar", "chair"], tests=[did("pull-up", 5)]
    )
    line = only_line("EMOM 12\n6 pull-ups", who)
    assert line.variant != "lowering-only" or (line.amount or 0) <= 4


def test_overhead_nobody_is_given_many_of_what_they_never_showed():
    who = athlete(**AN_OLD_HAND, owns=["kettlebell 16"], tests=[did("push-up", 14)])
    line = only_line("4 x 6 overhead press @ 45/27.5 kg\nrest 2 min", who)
    assert line.load_kg is None or (line.amount or 0) <= 8


def test_a_heavy_day_without_heavy_things_is_eight_to_twelve_hard_ones():
    who = athlete(**AN_OLD_HAND, owns=["kettlebell 16"], tests=[did("push-up", 14)])
    line = only_line("5 x 3 deadlift @ 120/80 kg\nrest 3 min", who)
    assert line.per_side
    assert 8 <= (line.amount or 0) <= 12


def test_a_sore_knee_catches_no_bar_in_a_hurry_that_it_never_told():
    who = athlete(**A_WOMAN, owns=[A_BAR], limits=["knee"], tests=[did("barbell deadlift", 5, 70)])
    line = only_line("4 rounds for time\n12 power cleans @ 50/35 kg", who)
    assert line.movement not in {"power clean", "hang power clean", "clean"}


def test_a_bar_is_loaded_alike_in_minutes_that_follow_each_other():
    who = athlete(**A_WOMAN, owns=[A_BAR], limits=["knee"], tests=[did("barbell deadlift", 5, 70)])
    board = "EMOM 16\nmin 1: 12 goblet squats @ 24/16 kg\nmin 2: 8 bent-over rows @ 50/30 kg"
    bars = {line.load_kg for line in lines(board, who) if line.implement == "barbell"}
    assert len(bars) == 1
