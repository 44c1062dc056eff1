"""What a coach asks about one athlete, and whom they want asked."""

import pytest

from core.notation.coaching.asking import asked_of_version
from core.notation.coaching.pinging import asks_to_ping


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("why did Bo get kneeling pushups", ("Bo", "why")),
        ("how come Ilse does no run?", ("Ilse", "why")),
        ("and why does she only get 5", (None, "why")),
        ("why so easy for Bo", ("Bo", "why")),
        ("is the load right for Bo?", ("Bo", "load")),
        ("isn't 16 kg too heavy for Ilse", ("Ilse", "load")),
        ("what did Bo get and why?", ("Bo", "why")),
        ("how heavy should Bo go?", ("Bo", "load")),
        ("is Bo ready for more?", ("Bo", "more")),
        ("is Ilse getting stronger", ("Ilse", "more")),
        ("how much weight did Bo lift", None),
        ("why hasn't Bo reported", None),
        ("why is Ilse not on the board", None),
        ("no burpees for Bo", None),
        ("is Bo in class?", None),
    ],
)
def test_it_asks_of_somebodys_version(text, asked):
    found = asked_of_version(text, ("Ilse", "Bo"))
    assert (found and tuple(found)) == asked


@pytest.mark.parametrize(
    "text",
    [
        "ping them",
        "pls nudge the rest",
        "remind everyone who hasnt reported",
        "chase whoever's missing",
        "ask those who haven't scored yet",
    ],
)
def test_who_is_quiet_is_to_be_asked(text):
    assert asks_to_ping(text)


@pytest.mark.parametrize(
    "text", ["remind everyone to bring a mat", "ask them", "ping Bo about friday", "message everybody"]
)
def test_a_word_to_all_is_none_for_the_quiet(text):
    assert not asks_to_ping(text)
