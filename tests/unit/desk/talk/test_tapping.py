"""Words in place of a tap: the label of one button, or a yes or a no where that is what a button says."""

import pytest

from core.desk.talk.tapping import tapped

ERASE = ("Yes, erase everything", "No, keep it")
POSTED = ("Post now", "Post later", "Discard")


@pytest.mark.parametrize(
    "words", ["yes", "Yep!", "yes please", "go ahead", "ja bitte", "sí", "Erase everything"]
)
def test_a_yes_is_the_button_that_says_yes(words):
    assert tapped(words, ERASE) == "Yes, erase everything"


@pytest.mark.parametrize("words", ["no", "nope", "no gracias", "keep it", "cancel", "never mind"])
def test_a_no_is_the_button_that_says_no(words):
    assert tapped(words, ERASE) == "No, keep it"


def test_of_two_the_other_one_is_the_no():
    assert tapped("nah", ("Yes, a bit more", "Stay gentle")) == "Stay gentle"


def test_of_two_the_one_beside_a_no_is_the_yes():
    assert tapped("yes", ("Send to Bo", "No, leave it")) == "Send to Bo"
    assert tapped("no", ("Send to Bo", "No, leave it")) == "No, leave it"


@pytest.mark.parametrize("words", ["Post now", "post now please", "post now!"])
def test_a_label_may_be_typed(words):
    assert tapped(words, POSTED) == "Post now"


@pytest.mark.parametrize(
    "words", ["7+12", "yes 7+12", "yes, sometimes", "yes?", "no but my knee hurts", "!", "hello"]
)
def test_anything_more_is_no_tap(words):
    assert tapped(words, ERASE) is None


def test_a_yes_that_could_be_two_is_neither():
    assert tapped("yes", ("Yes, 07:00", "Yes, 19:00", "No")) is None
    assert tapped("19:00", ("Yes, 07:00", "Yes, 19:00", "No")) == "Yes, 19:00"


@pytest.mark.parametrize("words", ["yes", "no", "none of it"])
def test_where_nothing_says_yes_there_is_none(words):
    assert tapped(words, POSTED) is None


def test_whoever_tells_much_taps_nothing():
    assert tapped("yes I did all of the rounds as written today", ERASE) is None
