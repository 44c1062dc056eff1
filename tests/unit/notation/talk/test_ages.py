"""How old somebody says they are, and that they pressed wrong."""

import pytest

from core.notation.talk.ages import age_told, is_plainly_no, read_age
from core.notation.talk.yes_no import read_yes_no, says_by_mistake


@pytest.mark.parametrize(
    ("text", "of_age"),
    [("27", True), ("I'm 27", True), ("i am 18 years old", True), ("17", False), ("I'm 15", False), ("7+12", None),
     ("0", None), ("300", None), ("yes", None), ("no, I'm 34", True), ("27 kg", None)],
)  # fmt: skip
def test_an_age_tells_whether_somebody_is_of_age(text, of_age):
    assert read_age(text) is of_age


@pytest.mark.parametrize("text", ["I pressed wrong", "sorry, wrong button", "that was a mistake"])
def test_a_slip_can_be_told(text):
    assert says_by_mistake(text)


@pytest.mark.parametrize("words", ["I'm an adult!", "sorry I am an adult", "im over 18", "yes i am of age"])
def test_whoever_is_an_adult_tells_an_age(words):
    assert age_told(words) is True


def test_no_adult_is_told_of_by_other_words():
    assert age_told("I train adults") is None
    assert age_told("i'm over it") is None


@pytest.mark.parametrize(
    ("text", "of_age"),
    [("im 14 my mam is in it too", False), ("im 73 pet", True), ("nope, im only 17 sorry", False),
     ("im 80 kg", None), ("I'm 16 reps in", None), ("im 12 weeks pregnant", None)],
)  # fmt: skip
def test_where_it_is_asked_for_an_age_may_stand_amid_anything(text, of_age):
    assert age_told(text, asked=True) is of_age


def test_a_no_that_goes_on_to_something_else_tells_no_age():
    assert not is_plainly_no("no just a dicky hip and the blood pressure tablets")
    assert read_yes_no("no just a dicky hip and the blood pressure tablets") is None
    assert all(map(is_plainly_no, ["no", "nope", "no im not", "No, not yet", "no sorry im under 18"]))
