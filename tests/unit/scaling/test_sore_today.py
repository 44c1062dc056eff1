"""What is sore today makes a part steady and short: nobody races on it, and nobody counts it."""

import pytest

from bot.words.headings import block_heading
from bot.words.reasons import reason_words
from core.athletes.values import Today
from core.measures import MassUnit
from tests.unit.scaling.people import athlete, version

LEGS = athlete(
    "Otto",
    sex="male",
    mass=80,
    owns=["bike", "kettlebell 16", "pull-up bar"],
    today=Today(sore=("legs",)),
    experience="some",
)


def block_of(text, who=LEGS):
    return version(text, who).blocks[0]


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("6 x 1000 m bike, rest 2 min", 4),
        ("5 x 5 goblet squats @ 16 kg, rest 3 min", 3),
        ("3 x 5 goblet squats @ 16 kg, rest 3 min", 2),
        ("4 x 6 push-ups, rest 2 min", 4),  # no leg does those
    ],
)
def test_of_what_is_sore_some_sets_are_enough(text, sets):
    assert block_of(text).rounds == sets


@pytest.mark.parametrize(
    "text", ["6 x 1000 m bike, rest 2 min", "AMRAP 12\n10 air squats\n10 lunges\n10 push-ups"]
)
def test_nobody_races_on_sore_legs(text):
    made = block_of(text)
    assert (made.scored, made.pace) == (False, 5)
    assert "steady pace" in block_heading(made)


def test_where_little_of_a_part_is_sore_it_stays_a_race():
    made = block_of("AMRAP 12\n10 push-ups\n10 sit-ups\n10 air squats")
    assert (made.scored, made.pace) == (True, None)


def test_what_is_done_as_written_says_for_what_it_is_kept_easy():
    (line,) = block_of("6 x 1000 m bike, rest 2 min").lines
    assert reason_words(line, MassUnit.KG) == "Kept easy, for the sake of your sore legs."
