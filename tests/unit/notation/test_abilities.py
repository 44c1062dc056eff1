"""What somebody can do, told unasked; how people say it is common practice, no source."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.abilities import read_ability
from core.notation.loads import read_loads
from core.notation.session import read_session


def read(text, unit=MassUnit.KG):
    return read_ability(text, unit, catalogue())


@pytest.mark.parametrize(
    ("said", "movement", "reps", "load"),
    [
        ("I can do 10 deadlifts at 140 kg", "deadlift", 10, 140),
        ("btw I can do 20 push-ups", "push-up", 20, None),
        ("i can do twelve pull ups in a row", "pull-up", 12, None),
        ("I can do 8 strict pull-ups", "pull-up", 8, None),
        ("I can do a pull-up", "pull-up", 1, None),
        ("I can deadlift 140 kg", "deadlift", 1, 140),
        ("I can back squat 100kg x 3", "back squat", 3, 100),
        ("I can squat 100 for 5", "back squat", 5, 100),
        ("my max deadlift is 140 kg", "deadlift", 1, 140),
        ("my deadlift max is 140", "deadlift", 1, 140),
        ("my 5rm back squat is 100", "back squat", 5, 100),
        ("I usually deadlift 140 for 5", "deadlift", 5, 140),
        ("i squat 100 kg x5", "back squat", 5, 100),
        ("I can do like 20 pushups", "push-up", 20, None),
        ("I can do 10 goblet squats with a 24 kg kettlebell", "goblet squat", 10, 24),
    ],
)
def test_what_they_can_do(said, movement, reps, load):
    told = read(said)
    assert told is not None
    assert (told.movement, told.reps, told.load_kg) == (movement, reps, load)


def test_a_load_counts_in_the_unit_that_is_written_else_in_their_own():
    """A pound is 0.45359237 kg (international yard and pound agreement, 1959)."""
    assert read("I can do 10 deadlifts at 315 lb").load_kg == Decimal("142.88159655")
    assert read("I can do 10 deadlifts at 315", MassUnit.LB).load_kg == Decimal("142.88159655")
    assert read("I can do 10 deadlifts at 140 kg", MassUnit.LB).load_kg == 140


@pytest.mark.parametrize(
    "said",
    [
        "I can do it",
        "I can't do planks",
        "I can do 15 minutes",
        "I can do 3 rounds",
        "can I do 10 deadlifts?",
        "I can do 12 push-ups tomorrow",
        "I can come at 10",
        "I can do Tuesday 18",
        "I can lift 100 kg",
        "I can do 9000 push-ups",
        "I can deadlift 1400 kg",
        "7+12",
        "",
    ],
)
def test_other_talk(said):
    assert read(said) is None


SESSION = read_session(
    "AMRAP 10\n5 deadlifts @ 100 kg\n10 push-ups\n8 goblet squats @ 16 kg", catalogue()
).session
ONE_LOAD = read_session("AMRAP 10\n10 goblet squats @ 16 kg\n10 push-ups", catalogue()).session
DEADLIFTS, SQUATS = 0, 2


@pytest.mark.parametrize(
    ("said", "loads"),
    [
        ("7+12, did 100 kg for the deadlifts", {DEADLIFTS: 100}),
        ("7+12, deadlifts at 80", {DEADLIFTS: 80}),
        ("7+12 deadlifts at 80", {DEADLIFTS: 80}),
        ("7+12, deadlifts with 80 kg, goblet squats with 12", {DEADLIFTS: 80, SQUATS: 12}),
        ("7+12, used 80 for the deadlifts and 12 kg for the squats", {DEADLIFTS: 80, SQUATS: 12}),
        ("7+12, used 20s", {}),
        ("7+12", {}),
        ("7+12 with 10 reps left", {}),
    ],
)
def test_loads_beside_a_score(said, loads):
    assert dict(read_loads(said, SESSION.blocks[0], MassUnit.KG, catalogue())) == loads


@pytest.mark.parametrize("said", ["7+12 used 20s", "7+12, used 20", "7+12 with 20 kg", "7+12 with two 20s"])
def test_a_load_alone_is_of_the_only_line_that_has_one(said):
    assert dict(read_loads(said, ONE_LOAD.blocks[0], MassUnit.KG, catalogue())) == {0: 20}


@given(st.text(max_size=200))
def test_any_text_is_read(text):
    assert read(text) is None or read(text).reps > 0
    assert read_loads(text, SESSION.blocks[0], MassUnit.KG, catalogue()) is not None
