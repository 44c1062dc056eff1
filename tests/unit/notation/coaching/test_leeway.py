"""What a coach lets one athlete do, in their own words."""

import pytest

from core.notation.coaching.leeway import read_leeway

NAMES = ("Ilse Brandt", "Bo")


@pytest.mark.parametrize(
    ("text", "name", "of", "yes"),
    [
        ("let Ilse go heavier", "Ilse Brandt", "heavier", True),
        ("Bo may go heavier than written if it suits him", "Bo", "heavier", True),
        ("heavier is fine for Bo", "Bo", "heavier", True),
        ("Ilse: heavier is ok", "Ilse Brandt", "heavier", True),
        ("please let Ilse use heavier weights from now on", "Ilse Brandt", "heavier", True),
        ("no heavier for Ilse", "Ilse Brandt", "heavier", False),
        ("don't let Bo go heavier", "Bo", "heavier", False),
        ("Bo shouldn\u2019t lift heavier", "Bo", "heavier", False),
        ("volume first for Bo", "Bo", "volume", True),
        ("let Ilse do fewer reps rather than an easier way", "Ilse Brandt", "volume", True),
        ("fewer reps first for Bo", "Bo", "volume", True),
        ("cut Ilse's reps first", "Ilse Brandt", "volume", True),
        ("no volume first for Bo", "Bo", "volume", False),
        ("full reps for Ilse", "Ilse Brandt", "volume", False),
    ],
)
def test_it_is_read_with_whose_and_what(text, name, of, yes):
    assert read_leeway(text, NAMES) == (name, of, yes)


@pytest.mark.parametrize(
    "text",
    [
        "let Ilse go",
        "Ilse went heavier",
        "is heavier fine for Bo?",
        "Ilse: deadlifts at most 30 kg",
        "hold Ilse for my OK",
        "let Mo go heavier",
        "heavier is fine",
        "Bo 7+12",
        "let Ilse go heavier\n5 rounds for time",
    ],
)
def test_nothing_else_is_taken_for_it(text):
    assert read_leeway(text, NAMES) is None
