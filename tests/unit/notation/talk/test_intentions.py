"""What a coach asks how to do is found in a table of intentions, in whatever words it is asked."""

import pytest

from bot.words.en.talk.intentions import HOW
from core.notation.talk.intentions import INTENTIONS, asks_how, intentions_in, wondered_of


@pytest.mark.parametrize(
    ("asked", "intention"),
    [
        ("how do i change a session i already posted", "change"),
        ("help scores", "score"),
        ("what can u do for people over 70", "old"),
        ("how do i get the others to join", "join"),
        ("half my lot run n half lift, how do i give em different stuff", "halves"),
        ("is there a way to email it to them", "outside"),
        ("how do i post it every monday automatically", "habit"),
        ("what happens if somebody gets hurt", "hurt"),
        ("how can i approve versions first", "hold"),
        ("can you handle kids", "young"),
        ("how do i take back a post", "withdraw"),
    ],
)
def test_what_is_wanted_is_told_by_the_words_it_is_asked_in(asked, intention):
    assert asks_how(asked)
    assert intentions_in(asked) == (intention,)


@pytest.mark.parametrize(
    "said", ["make the run 300 m", "can you make it 5 rounds", "how is Ilse?", "how did everyone do"]
)
def test_an_order_or_a_question_of_people_asks_for_no_help(said):
    assert not asks_how(said)


@pytest.mark.parametrize("asked", ["how to do swings", "what can you do", "how do I do a goblet squat"])
def test_where_nothing_of_it_is_in_the_table_nothing_is_guessed(asked):
    assert intentions_in(asked) == ()


def test_each_intention_has_its_line():
    assert set(HOW) == set(INTENTIONS)


@pytest.mark.parametrize(
    ("said", "intentions"),
    [
        ("@s only 14 can he do it", ("young",)),
        ("is @ ok to do this, shes 6 months gone", ("pregnant",)),
        ("@ is gone, take him out of it", ("remove",)),
        ("is @ ok to jump in her 5th month?", ("pregnant",)),
        ("is @ over 60, can he do box jumps?", ("old",)),
        ("can @ do this, he's 72?", ("old",)),
        ("how did @ do this month?", ()),
        ("did @ come in under 12?", ()),
        ("is the hold over for @?", ()),
        ("is @ back?", ()),
        ("how is @?", ()),
        ("@ is gone for a week", ()),
    ],
)
def test_what_is_wondered_of_somebody(said, intentions):
    assert wondered_of(said.replace("@", "Bo"), said) == intentions


@pytest.mark.parametrize(
    ("named", "found"),
    [
        ("@ got 7+12?", ()),
        ("@ got 60?", ()),
        ("did @ do 14 rounds?", ()),
        ("can @ do it, shes just 15", ("young",)),
    ],
)
def test_a_number_is_no_age_but_where_it_is_told_as_one(named, found):
    assert wondered_of(named.replace("@", "Ilse"), named) == found
