"""A score in a message is read as the score reader reads it, with what is said of it beside."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores.unseen import read_unseen
from core.understanding.acts import document
from core.understanding.understand import understand
from core.understanding.values import Context, Message

FOR_TIME = "5 rounds for time, cap 20 min\n10 burpees\n15 air squats\n20 sit-ups"
ROUNDS = "12 min AMRAP\n8 goblet squats\n10 push-ups"


def told(text, board, question="score"):
    session = read_session(board, catalogue()).session
    acts = understand(Message(text=text), Context(question=question, session=session)).acts
    return {act.act: document(act) for act in acts}


def test_rounds_of_whoever_stopped_are_told_as_rounds():
    score = told("time cap, 3 rounds + 20", FOR_TIME)["scored"]["score"]
    assert score == {"rounds": 3, "reps": 20, "unfinished": True}


@pytest.mark.parametrize(
    ("text", "beside"),
    [
        ("12:40 as written", "did_as_written"),
        ("12:40, scaled", "did_scaled"),
        ("12:40 with knee push ups", "did_scaled"),
    ],
)
def test_how_it_was_done_is_an_act_beside_the_score(text, beside):
    assert {"scored", beside} <= set(told(text, FOR_TIME))


@pytest.mark.parametrize("text", ["7 Runden und 12", "7 rondas y 12"])
def test_other_languages_are_read_alike(text):
    assert told(text, ROUNDS)["scored"]["score"] == {"rounds": 7, "reps": 12}


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("7+12", "7 rounds + 12"),
        ("8:43", "8:43"),
        ("60 kg", "60 kg"),
        ("2.5 km", "2500 m"),
        ("80 cal", "80 cal"),
    ],
)
def test_without_a_session_the_shape_tells_what_it_is(text, shown):
    score = read_unseen(text).score
    assert score is not None
    assert score.in_words() == shown


def test_without_a_session_a_bare_number_is_nothing():
    assert read_unseen("12").score is None
    assert read_unseen("12", asked=True).score is not None
