"""What somebody hears after telling a score."""

import pytest

from bot.words.wording import word
from core.desk.says.scores import ScoreNoted
from core.scores.values import Score


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
