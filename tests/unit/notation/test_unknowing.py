"""Whoever can't tell is heard in any words, and isn't taken for whoever never did it, nor for whoever counts."""

import pytest

from core.notation.numbers import read_reps
from core.notation.unknowing import does_not_know, is_new_to_it, never_did


@pytest.mark.parametrize(
    "text", ["beats me", "couldn't tell you tbh", "god knows", "honestly no clue, sorry", "never counted"]
)
def test_whoever_cannot_tell_says_so_in_any_words(text):
    assert does_not_know(text)
    assert read_reps(text) is None


@pytest.mark.parametrize(
    "text", ["no idea, never done one", "I have never even tried", "haven't ever attempted that"]
)
def test_whoever_never_did_one_can_do_none_so_far(text):
    assert never_did(text)
    assert not does_not_know(text)
    assert read_reps(text) == 0


@pytest.mark.parametrize(
    "text", ["never done more than five", "haven't done them since school", "my knee never hurts"]
)
def test_a_never_of_something_else_is_none(text):
    assert not never_did(text)


@pytest.mark.parametrize("text", ["not sure, maybe 10", "dunno, about twelve", "7+12"])
def test_a_number_beside_the_doubt_is_an_answer(text):
    assert not is_new_to_it(text)
