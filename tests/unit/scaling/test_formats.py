"""How every format is told and scaled, as a coach would read it back."""

import pytest

from bot.words.headings import block_heading
from bot.words.versions import what_words
from core.measures import MassUnit
from core.scaling.values import Because, Change
from tests.unit.scaling.people import NO_RUNNING, athlete, did, lines, only_line, version

JONAS = athlete(
    "Jonas",
    sex="male",
    mass=80,
    owns=["barbell 20", "2x plate 5 10 20", "kettlebell 16 24", "rower"],
    tests=[did("push-up", 25), did("back squat", 7, 80), did("goblet squat", 20, 16)],
)


@pytest.mark.parametrize(
    ("text", "heading"),
    [
        ("40 s on, 20 s off, 4 rounds\npush-ups\nair squats", "4 rounds, 40 s work and 20 s rest at each"),
        ("Every 90 s x 5\n5 back squats @ 75%", "Every 90 s, 5 times"),
        ("EMOM 10\n10 push-ups", "Every minute for 10 minutes"),
        ("5 x 5 back squats @ 80 kg, rest 3 min", "5 sets, 3 minutes rest after each"),
        ("Max push-ups in 2 min", "As many as you can in 2 minutes, stopping before they get ugly"),
        ("Max plank hold", "Hold as long as your position stays clean"),
        ("2 km run for time", "As fast as you can hold evenly"),
        ("3 rounds not for time\n10 push-ups", "3 rounds, no clock: take your time"),
    ],
)
def test_every_format_has_its_heading(text, heading):
    assert block_heading(version(text, JONAS).blocks[0]) == heading


def test_work_for_a_time_stays_a_time():
    push_ups, squats = lines("40 s on, 20 s off, 4 rounds\npush-ups\nair squats", JONAS)
    assert what_words(push_ups, MassUnit.KG) == "40 s of push-ups on the floor"
    assert {push_ups.change, squats.change} == {Change.NONE}


def test_calories_are_no_metres_and_the_second_of_a_pair_gets_the_second():
    text = "3 rounds for time\n15/12 cal row\n10 push-ups"
    row = lines(text, JONAS)[0]
    assert (row.amount, row.unit) == (15, "kcal")
    assert lines(text, JONAS.model_copy(update={"pair": 2}))[0].amount == 12


def test_metres_of_lunges_become_so_many_lunges_where_there_is_no_room():
    line = only_line("AMRAP 10\n30 m walking lunges", athlete(tests=[did("lunge", 60)], space=NO_RUNNING))
    assert (line.movement, line.unit, line.amount) == ("lunge", "reps", 40)


def test_rolfs_five_fives_at_a_seven_repetition_load_are_as_written():
    line = only_line("5 x 5 back squats @ 80 kg, rest 3 min", JONAS)
    assert (line.load_kg, line.change) == (80, Change.NONE)


@pytest.mark.parametrize(("rule", "load"), [("75%", 70), ("effort 8", 80), ("effort 5", 70)])
def test_percentages_and_efforts_find_the_athletes_own_load(rule, load):
    line = only_line(f"5 x 5 back squats @ {rule}", JONAS)
    assert line.load_kg == load
    assert line.change is Change.NONE


def test_a_search_for_the_heaviest_names_no_load():
    line = only_line("Find a heavy 5 back squat", JONAS)
    assert (line.load_kg, line.amount) == (None, 5)
    assert "heaviest that stays clean" in block_heading(version("Find a heavy 5 back squat", JONAS).blocks[0])


def test_a_range_stays_a_range():
    line = only_line("3 x 8-10 goblet squats @ 16 kg, rest 90 s", JONAS)
    assert what_words(line, MassUnit.KG).startswith("8-10 goblet squats")


def test_as_many_as_go_asks_for_a_way_in_which_some_go():
    weak = athlete(tests=[did("push-up", 0), did("push-up", 6, variant="knees")], owns=["table"])
    line = only_line("Max push-ups in 2 min", weak)
    assert (line.change, line.reason.because) == (Change.VARIANT, Because.TOO_HEAVY)
    assert line.amount is None


@pytest.mark.parametrize(
    ("text", "easier"),
    [
        ("3 sets\n10 push-ups\nrest 3 min", False),
        ("5 sets\n10 push-ups\nrest 30 s", True),
        ("EMOM 4\n10 push-ups", False),
        ("EMOM 12\n10 push-ups", True),
        ("EMOM 12\nMinute 1: 10 push-ups\nMinute 2: 15 air squats\nMinute 3: 200 m run", False),
    ],
)
def test_short_rests_and_many_sets_ask_for_an_easier_way(text, easier):
    """Whoever does 14 in a row does ten again and again only if the rests allow it (common practice, no source)."""
    who = athlete(tests=[did("push-up", 14), did("air squat", 60)], owns=["table"])
    line = lines(text, who)[0]
    assert (line.variant != "floor") is easier
    assert line.reason.because is (Because.TOO_OFTEN if easier else Because.AS_WRITTEN)
