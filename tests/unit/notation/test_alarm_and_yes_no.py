"""Stop signs and plain yes or no."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.notation.alarm import is_alarming
from core.notation.yes_no import read_yes_no


@pytest.mark.parametrize(
    "text",
    [
        "my chest hurts and I feel dizzy",
        "I have a tight chest",
        "pain in my chest since the run",
        "I almost fainted",
        "i'm feeling light-headed",
        "passed out after the second round",
        "I can't breathe",
        "my heart is racing and it won't stop",
    ],
)
def test_stop_signs_are_heard(text):
    assert is_alarming(text)


@pytest.mark.parametrize(
    "text",
    [
        "7+12",
        "no chest pain at all",
        "chest press hurts my shoulder",
        "I don't feel dizzy",
        "10 chest-to-bar pull-ups, my wrist hurts",
        "the coach is dizzying",
        "my wrist hurts",
    ],
)
def test_ordinary_words_are_no_alarm(text):
    assert not is_alarming(text)


@pytest.mark.parametrize("text", ["yes", "Yes!", "sure", "ok", "yes im 30", "I am", "yep"])
def test_a_typed_yes_counts(text):
    assert read_yes_no(text) is True


@pytest.mark.parametrize("text", ["no", "Nope.", "none of these", "never", "I don't"])
def test_a_typed_no_counts(text):
    assert read_yes_no(text) is False


@pytest.mark.parametrize(
    "text", ["what is this?", "my ankles are swollen sometimes", "no, but my ankle...", "17", "", "not sure"]
)
def test_a_doubt_is_neither(text):
    assert read_yes_no(text) is None


@given(st.text(max_size=200))
def test_any_text_is_read_without_a_crash(text):
    assert read_yes_no(text) in {True, False, None}
    assert is_alarming(text) in {True, False}
