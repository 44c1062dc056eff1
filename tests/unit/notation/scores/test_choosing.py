"""Of all readings of a message the one that was meant is chosen, and what the rules read needs its agreement."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import read_score
from core.notation.scores.choosing.candidates import Heard
from core.notation.scores.choosing.checking import opinion
from core.notation.scores.choosing.choice import digest_of_weights, ranked
from core.notation.scores.choosing.readings import readings
from core.notation.scores.said import all_told
from core.scores.values import Doubt
from tests.corpus.training_scores import digest

AMRAP = "AMRAP 14\n10 swings\n10 push-ups\n10 lunges"
HEAVY = "Overhead press\nHeavy 5"
HELD = "EMOM 10\n12 swings"


def heard(board, words):
    session = read_session(board, catalogue()).session
    assert session is not None
    return Heard(all_told(words), session.blocks[0])


def scores(board, words):
    return {one.score.in_words() for one in readings(heard(board, words))}


def test_the_weights_were_learned_from_what_stands_there_now():
    assert digest_of_weights() == digest(), "run `make train`"


@pytest.mark.parametrize(
    ("board", "words", "meant"),
    [
        (AMRAP, "into my 9th round, swings done and 2 push-ups", "8 rounds + 12"),
        (AMRAP, "9 rounds less 3", "8 rounds + 27"),
        (HEAVY, "the 20 bar with 10 and 2.5 on each side", "45 kg"),
        (HEAVY, "10 and 2.5 each side", "45 kg"),
        (HELD, "missed 2 of the 10", "8 rounds, 96 reps"),
        ("2000 m row for time", "8 43 on the clock", "8:43"),
    ],
)
def test_what_the_numbers_allow_is_among_the_readings(board, words, meant):
    assert meant in scores(board, words)


def test_the_chances_of_all_readings_add_up_to_one():
    found = ranked(heard(AMRAP, "7+12 today, hr 171"))
    assert sum(one.chance for one in found) == pytest.approx(1)
    assert [one.chance for one in found] == sorted((one.chance for one in found), reverse=True)


def test_a_number_of_the_body_is_no_score():
    best = ranked(heard(AMRAP, "7+12 today, heart was at 171 at the end"))[0]
    assert best.reading is not None
    assert best.reading.score.in_words() == "7 rounds + 12"


def test_another_score_than_the_likeliest_is_not_agreed_with():
    told = heard(AMRAP, "7+12 today, last week it was 6+3 with my brother")
    first, *others = (one.reading for one in ranked(told) if one.reading is not None)
    assert first is not None
    assert opinion(first.score, told).agrees
    assert not opinion(others[-1].score if others[-1] else None, told).agrees


def test_what_is_told_plainly_is_left_to_the_rules():
    assert opinion(None, heard(AMRAP, "7 + 12 reps today")).agrees


def test_whoever_is_asked_sees_the_two_likeliest():
    session = read_session("Max push-ups in 2 minutes", catalogue()).session
    assert session is not None
    read = read_score("Bea wrote 58 on her hand, the chalk on the wall shows 61", session)
    assert (read.sure, read.doubt) == (False, Doubt.WHICH_NUMBER)
    assert {one.reps for one in read.between} == {58, 61}
