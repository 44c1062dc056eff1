"""Words that take something back, and which score is to go."""

import pytest

from core.notation.talk.undoing import ScoreGone, asks_to_undo, score_to_go


@pytest.mark.parametrize(
    "text",
    [
        "undo",
        "Undo that please",
        "take that back",
        "oops, that was wrong",
        "can you undo it",
        "my mistake, sorry",
    ],
)
def test_an_undo_is_heard(text):
    assert asks_to_undo(text)


@pytest.mark.parametrize(
    "text",
    ["take it easy", "cancel that class", "I'm back", "undo the shoulder strap", "wrong weight, 12 kg"],
)
def test_what_says_more_is_no_undo(text):
    assert not asks_to_undo(text)


@pytest.mark.parametrize(
    ("text", "gone"),
    [
        ("delete jonas' score from yesterday", ScoreGone("Jonas", board=False)),
        ("delete jonas 5 rounds", ScoreGone("Jonas", board=False, told="5 rounds")),
        ("remove Jonas's result", ScoreGone("Jonas", board=False)),
        ("please delete my score", ScoreGone(None, board=False)),
        ("I don't want my score on the board", ScoreGone(None, board=True)),
        ("take me off the leaderboard", ScoreGone(None, board=True)),
    ],
)
def test_a_score_is_to_go(text, gone):
    assert score_to_go(text, ("Jonas", "Bo")) == gone


@pytest.mark.parametrize(
    "text",
    [
        "drop to 12 next time",
        "why is my score not on the board",
        "drop the time cap",
        "how do I beat my score",
        "14:20",
        "take your time, everybody",
        "AMRAP 12\n10 push-ups\nscrap the times, no scores today",
    ],
)
def test_other_words_take_no_score_away(text):
    assert score_to_go(text, ("Jonas",)) is None


@pytest.mark.parametrize(
    "said",
    [
        "delete my score",
        "Remove my score please",
        "can you take my last score back",
        "can you take my time down",
        "wipe my score",
        "please take that score off the board",
    ],
)
def test_a_score_is_taken_back_in_words(said):
    assert score_to_go(said) is not None


@pytest.mark.parametrize(
    "said",
    [
        "delete my data",
        "what was my score?",
        "my score is 7+12",
        "take my dumbbell off the list",
        "remove me",
        "take my time on the squats?",
    ],
)
def test_other_words_take_no_score_back(said):
    assert score_to_go(said) is None
