"""Whether a word in front of a score is somebody's name, as far as one can tell."""

import pytest

from core.desk.scores.whose import _SOMEBODY, is_a_name


def named(text, names=("Ilse",)):
    found = _SOMEBODY.match(text)
    return found["name"] if found and is_a_name(found, names) else None


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Bo got 6 rounds and 3 reps", "Bo"),
        ("Kim 16:20", "Kim"),
        ("Bo: 7+12", "Bo"),
        ("Bo's 7+12", "Bo"),
        ("score for Kim: 8:43", "Kim"),
    ],
)
def test_a_name_that_nobody_has(text, name):
    assert named(text) == name


@pytest.mark.parametrize(
    "text",
    ["Done 7+12", "Finished 16:20", "Part 2: 80 cal", "Got 7+12", "7+12", "Ilse 7+12", "Friday 12:30", "phew 8:43"],
)  # fmt: skip
def test_what_is_no_strangers_name(text):
    assert named(text) is None
