"""What a coach says to be the score is read, decides how the part is scored, and stands in what is read back."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_session
from core.scores.ways import Way, way_of
from core.sessions.values import Counts

BOARDS = [
    ("12 min run\nScore: distance", Way.DISTANCE, None),
    ("Row 10 min\nRecord the total metres", Way.DISTANCE, None),
    ("Ski machine 12 min\nScore: calories", Way.CALORIES, None),
    ("6 x 1 min row, 1 min rest\nScore: metres each", Way.COUNTS, None),
    ("Tabata squats\nScore: lowest", Way.COUNTS, Counts.WORST),
    ("5 x 400 m run, rest 2 min\nScore: slowest", Way.SPLITS, Counts.WORST),
    ("5 x 400 m run, rest 2 min\nScore: time of each", Way.SPLITS, None),
    ("Dead hang, 3 tries", Way.HOLDS, Counts.BEST),
    ("Dead hang, 3 tries\nScore: seconds added", Way.HOLDS, None),
    ("25 min march with backpack (10 kg) for distance", Way.DISTANCE, None),
    ("5 rounds\n10 push-ups\n20 squats\nRecord the total time", Way.TIME, None),
    ("Overhead press\nHeavy 5", Way.LOAD, None),
    ("EMOM 10\n5 power cleans @ 60/40 kg unbroken", Way.MINUTES, None),
]


def block_of(text):
    read = read_session(text, catalogue())
    assert read.session is not None
    (block,) = read.session.blocks
    return block, read


@pytest.mark.parametrize(("text", "way", "counts"), BOARDS)
def test_what_is_said_of_the_score_decides_how_the_part_is_scored(text, way, counts):
    block, read = block_of(text)
    assert (way_of(block), block.counts, block.scored) == (way, counts, True)
    assert not read.not_understood


@pytest.mark.parametrize(("text", "way", "counts"), BOARDS)
def test_it_stands_in_what_is_read_back(text, way, counts):
    _, read = block_of(text)
    again, _ = block_of(write_session(read.session))
    assert (way_of(again), again.counts) == (way, counts)


def test_where_a_word_of_it_is_not_known_it_stays_as_it_was():
    _, read = block_of("AMRAP 10\n6 burpees\n12 lunges\nScore: whatever Kim says")
    assert read.not_understood
