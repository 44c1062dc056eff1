"""What is told beside a score changes nothing of it, and whoever did less is marked: tests/corpus/asides."""

import re
import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import read_score
from core.scores.values import ReadScore, Score

FOLDER = Path(__file__).parents[3] / "corpus" / "asides"
THIRD = 3
SCORES = {
    "6+20": "AMRAP 12\n10 push-ups\n12 swings 16 kg\n14 lunges",
    "8:43": "For time, cap 15:\n50 squats\n40 sit-ups\n30 push-ups\n20 burpees",
    "82.5 kg": "Back squat, build to a heavy 3",
    "41": "Max push-ups in 2 minutes",
    "9, 7, 6": "Pull-ups, 3 sets to failure",
    "98 cals": "Bike 10 min, calories",
    "all 12": "EMOM 12:\n10 burpees",
    "1:38 1:40 1:41 1:45 1:39": "5 x 400 m run, rest 2 min",
    "1:45": "Plank, max hold",
}


def said(name: str, label: str) -> list[str]:
    return [re.sub("[{}]", "", one) for one in tomllib.loads((FOLDER / name).read_text())[label]]


def read_beside(asides: list[str]) -> Iterator[tuple[Score, ReadScore]]:
    """Each score by itself, and with an aside behind it: each aside behind one of three, which is as telling as all."""
    for place, (words, board) in enumerate(SCORES.items()):
        session = read_session(board, catalogue()).session
        assert session is not None
        alone = read_score(words, session)
        assert alone.sure and alone.score is not None  # noqa: PT018
        yield from (
            (alone.score, read_score(f"{words}. {aside}", session))
            for aside in asides[place % THIRD :: THIRD]
        )


def shares(asides: list[str]) -> tuple[float, float, float]:
    """Of all, how many are asked about, read as another score, and marked as less than written."""
    found = list(read_beside(asides))
    asked = sum(not read.sure for _, read in found)
    told = [(alone, read.score) for alone, read in found if read.sure and read.score is not None]
    other = sum(
        (alone.value, alone.sets, alone.capped) != (one.value, one.sets, one.capped) for alone, one in told
    )
    return asked / len(found), other / len(found), sum(one.scaled for _, one in told) / len(found)


@pytest.mark.parametrize(
    ("name", "label", "asked", "other"),
    [("lighter.toml", "as_written", 0.05, 0.01), ("numbers.toml", "beside", 0.18, 0.02)],
)
def test_what_is_told_beside_a_score_seldom_changes_it(name, label, asked, other):
    found = shares(said(name, label))
    assert found[0] <= asked
    assert found[1] <= other
    assert found[2] <= 0.02


def test_whoever_did_less_is_marked_in_most_of_the_ways_it_is_said():
    asked, _, marked = shares(said("lighter.toml", "lighter"))
    assert marked >= 0.8
    assert asked <= 0.08
