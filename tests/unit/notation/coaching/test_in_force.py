"""A coach asks what they ordered that stands."""

import pytest

from core.notation.coaching.in_force import asks_what_stands


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("what have I ordered for Cal", ("Cal", False, False)),
        ("what did i set for cal?", ("Cal", False, False)),
        ("what stands for Cal", ("Cal", False, False)),
        ("my orders", (None, False, False)),
        ("show me all my orders for everyone", (None, False, False)),
        ("which orders still stand?", (None, False, False)),
        ("who is away?", (None, True, False)),
        ("whos on holiday this week", (None, True, False)),
        ("who's held?", (None, False, True)),
        ("whom do I hold", (None, False, True)),
        ("who is held up by traffic", None),
        ("what did Cal get", None),
        ("who reported", None),
        ("what is the score for Cal", None),
        ("no burpees for Cal", None),
        ("who is in today", None),
    ],
)
def test_what_stands_is_asked_of_one_or_of_all(text, asked):
    found = asks_what_stands(text, ("Cal", "Bo"))
    assert (found and tuple(found)) == asked
