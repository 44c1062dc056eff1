"""How old somebody says they are, and that they pressed wrong."""

import pytest

from core.notation.yes_no import read_age, says_by_mistake


@pytest.mark.parametrize(
    ("text", "of_age"),
    [("27", True), ("I'm 27", True), ("i am 18 years old", True), ("17", False), ("I'm 15", False), ("7+12", None),
     ("0", None), ("300", None), ("yes", None), ("no, I'm 34", True), ("27 kg", None)],
)  # fmt: skip
def test_an_age_tells_whether_somebody_is_of_age(text, of_age):
    assert read_age(text) is of_age


@pytest.mark.parametrize(
    "text", ["I pressed wrong", "sorry, wrong button", "that was a mistake", "I'm an adult!"]
)
def test_a_slip_can_be_told(text):
    assert says_by_mistake(text)
