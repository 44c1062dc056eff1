import pytest

from bot.words.text import plural, singular
from bot.words.versions import what_words
from core.measures import MassUnit
from tests.unit.scaling.people import athlete, did, only_line


@pytest.mark.parametrize(
    ("one", "many"),
    [("push-up", "push-ups"), ("floor press", "floor presses"), ("farmer carry", "farmer carries")],
)
def test_a_movement_is_named_in_the_plural(one, many):
    assert plural(one) == many


@pytest.mark.parametrize(
    ("many", "one"),
    [
        ("deadlifts with a pause below the knee", "deadlift with a pause below the knee"),
        ("floor presses, three seconds down", "floor press, three seconds down"),
        ("chest flies on the floor", "chest fly on the floor"),
        ("lunges with a hand on the wall", "lunge with a hand on the wall"),
        ("triceps presses with a band", "triceps press with a band"),
        ("single-arm ground-to-overhead", "single-arm ground-to-overhead"),
    ],
)
def test_one_of_what_a_label_counts_is_named_in_the_singular(many, one):
    assert singular(many) == one


def test_a_single_repetition_is_no_plural():
    line = only_line("For time\n1 rope climb", athlete(owns=["climbing rope"], tests=[did("rope climb", 12)]))
    assert what_words(line, MassUnit.KG) == "1 rope climb"
