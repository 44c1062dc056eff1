"""What somebody wants of a line of their own, named in words."""

import pytest

from core.understanding.ordering import Wanted, wanted_in


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("can't do the run, it's pouring", Wanted("out", "run", weather=True)),
        ("can i use an erg instead of the run?", Wanted("other", "run", "row")),
        ("cant do the presses bc shoulder", Wanted("out", "overhead press", joints=("shoulder",))),
        ("the squats are too easy", Wanted("harder", "air squat")),
        ("fewer burpees please", Wanted("fewer", "burpee")),
        ("what can I do instead of burpees", Wanted("out", "burpee")),
        ("can you make it shorter", Wanted("shorter")),
    ],
)
def test_a_line_and_what_becomes_of_it(text, wanted):
    assert wanted_in(text) == wanted


@pytest.mark.parametrize(
    "text",
    [
        "I did the push-ups on my knees",
        "30 push-ups",
        "no jumping please",
        "make it easier",
        "what's a burpee",
    ],
)
def test_what_was_done_or_names_no_line_is_none(text):
    assert wanted_in(text) is None
