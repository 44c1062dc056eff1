"""What somebody hears after telling a score."""

from datetime import date

import pytest

from bot.words.en.scores.taking import standing
from bot.words.wording import word
from core.desk.scores.says import Scoreboard, ScoreNoted
from core.scores.ranking import rank
from core.scores.values import Entry, Score
from core.sessions.values import Format


def noted(rank: int, of: int) -> str:
    score = Score(value=5, unit="rounds", rounds=5)
    return word(ScoreNoted(score_id=1, score=score, text="5 rounds", rank=rank, of=of), "en").html


@pytest.mark.parametrize(("rank", "of"), [(1, 2), (1, 3), (2, 4), (5, 10)])
def test_a_place_in_the_first_half_is_told(rank, of):
    assert f"That's place {rank} of {of} so far" in noted(rank, of)


@pytest.mark.parametrize(("rank", "of"), [(2, 2), (2, 3), (9, 9), (6, 10)])
def test_nobody_is_told_that_they_came_last(rank, of):
    assert "You're on the board. Well done!" in noted(rank, of)
    assert "place" not in noted(rank, of)


def test_the_group_does_not_read_why_there_is_no_rank():
    score = Score(value=5, unit="rounds", rounds=5, ranked=False)
    said = ScoreNoted(score_id=1, score=score, text="5 rounds", rank=None, of=0, in_group=True)
    assert "gently" not in standing(said)
    assert "gently" in standing(said.model_copy(update={"in_group": False}))


def board(*scores: tuple[str, Score]) -> str:
    ranked = rank(Format.AMRAP, [Entry(name=name, score=score) for name, score in scores])
    said = Scoreboard(session_id=1, title=None, day=date(2026, 3, 3), boards=((0, ranked),))
    return word(said, "en").html


def rounds(number: int, **facts) -> Score:
    return Score(value=number, unit="rounds", rounds=number, **facts)


def test_places_that_count_on_say_why():
    text = board(("Ilse", rounds(5)), ("Bo", rounds(9, scaled=True)))
    assert "Scaled <i>(placed after everybody who did it as written)</i>\n2. Bo  9 rounds" in text


def test_where_nobody_did_it_as_written_there_is_nothing_to_explain():
    assert "Scaled\n1. Bo  9 rounds" in board(("Bo", rounds(9, scaled=True)))


def test_a_shorter_day_is_marked_and_no_other():
    text = board(("Ilse", rounds(5)), ("Bo", rounds(4, scaled=True, minutes=7.5)))
    assert "1. Ilse  5 rounds\n" in text
    assert text.endswith("2. Bo  4 rounds (had 7.5 min)")
