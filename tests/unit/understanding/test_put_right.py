"""A thing that was noted as another is put right; what somebody has and hasn't is no such thing."""

from decimal import Decimal

import pytest

from core.understanding.marks import mark
from core.understanding.slots.fill import fill
from core.understanding.slots.stretch import Stretch
from core.understanding.things import read_things, thing_put_right
from core.understanding.values import Context


@pytest.mark.parametrize(
    "words",
    [
        "the ball is kettle bell not dumbell",
        "its a kettlebell not a dumbbell",
        "not a dumbbell, a kettlebell",
        "it is no dumbbell, it is a kettlebell",
    ],
)
def test_what_it_is_takes_the_place_of_what_it_is_not(words):
    assert thing_put_right(words) == ("kettlebell", "dumbbell")


@pytest.mark.parametrize(
    "words", ["i have a kettlebell but no dumbbell", "kettlebell", "2 kettlebells of 12 kg, no dumbbell"]
)
def test_what_is_there_puts_nothing_right(words):
    assert thing_put_right(words) is None


def test_kind_and_count_of_each_are_kept():
    ball, pair = read_things("one ball iron of 12 kilo and 2 dumbell 5").equipment or ()
    assert (ball.implement, ball.each, ball.loads_kg) == ("kettlebell", 1, (Decimal(12),))
    assert (pair.implement, pair.each, pair.loads_kg) == ("dumbbell", 2, (Decimal(5),))


@pytest.mark.parametrize("words", ["lunges 8 8 8", "push ups 12 10 10", "8 8 8 lunges"])
def test_sets_are_no_most(words):
    marked = mark(words)
    assert fill("can", Stretch(marked, 0, len(marked.words), Context())) == ()
