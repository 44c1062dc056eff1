"""Less than is written counts as lighter, however it is said; what is the session's own doesn't."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import read_score

ROUNDS = "AMRAP 12\n5 pull-ups\n10 push-ups\n15 squats"
FOR_TIME = "3 rounds for time\n15 kettlebell swings @ 24 kg\n12 box jumps"
EVERY_MINUTE = "EMOM 8\n3 wall walks"
RUNS = "5 rounds for time\n12 deadlifts\n400 m run"
PAIR = "For time\n21-15-9\nDeadlift 80/55 kg\nBurpees"
TOES = "4 rounds for time\n30 double-unders\n10 toes to bar"
BENCH = "Bench press, find a heavy 1"
CAPPED = "For time, cap 14\n50 burpees\n20 push-ups"
LADDER = "21-15-9 for time\nthrusters @ 40 kg\npull-ups"

LIGHTER = [
    (ROUNDS, "7+3, band for the pull ups"),
    (ROUNDS, "7+3 ring rows"),
    (ROUNDS, "7+3, push ups with a chair"),
    (ROUNDS, "7+3 with 8 push ups instead of 10"),
    (FOR_TIME, "11:12 with 16"),
    (FOR_TIME, "11:12, step ups"),
    (FOR_TIME, "11:12, the first round with 24 kg and then 16 kg"),
    (EVERY_MINUTE, "3 3 3 3 3 2 2 2"),
    (LADDER, "9:40 with jumping pull-ups"),
    (LADDER, "9:40 done as 15-12-9"),
    (ROUNDS, "7+3 pull ups with a foot on the floor"),
    (ROUNDS, "7+3 knees down for the push ups"),
    (ROUNDS, "7+3 only 4 pull ups each round"),
    (ROUNDS, "7+3 no pull ups, rows"),
    (FOR_TIME, "11:12, low box"),
    (FOR_TIME, "11:12 with 16s"),
    (FOR_TIME, "11:12 half the box jumps"),
    (FOR_TIME, "11:12 skipped the box jumps"),
    (LADDER, "9:40 dropped to 30 after the 15s"),
    (LADDER, "9:40 empty barbell"),
    (LADDER, "9:40 took the light ones"),
    (FOR_TIME, "11:12, my bell is a 12"),
    (FOR_TIME, "11:12 swings with the 8 as I own no more"),
    (LADDER, "9:40, bar had 35 on it"),
    (LADDER, "9:40, swapped the 40 for 30 after the 21s"),
    (PAIR, "9:40 with 60 on the bar, coach wanted 80"),
    (RUNS, "18:40, rowed for the runs"),
]
AS_IT_IS = [
    (ROUNDS, "7+3 strict pull-ups"),
    (FOR_TIME, "11:12 with the 24 kg bell"),
    (FOR_TIME, "11:12 with 28"),
    (FOR_TIME, "11:12 with 15 box jumps instead of 12"),
    (EVERY_MINUTE, "3 3 3 3 3 3 3 3"),
    (LADDER, "9:40 unbroken thrusters"),
    (LADDER, "9:40 done as written"),
    (ROUNDS, "7+3, on my knees at the end"),
    (ROUNDS, "7 rounds minus the squats"),
    (FOR_TIME, "11:12 no rest, no music"),
    (FOR_TIME, "11:12, sat on the box for 5 min after"),
    (LADDER, "9:40 with 25s left"),
    (PAIR, "9:40 with 60 on the bar"),
    (TOES, "14:05 toes to bar in singles at the end"),
    (BENCH, "72.5 on the bench"),
    (CAPPED, "all but the last 8 press ups"),
]


def is_scaled(board, words):
    session = read_session(board, catalogue()).session
    assert session is not None
    score = read_score(words, session).score
    assert score is not None
    return score.scaled


@pytest.mark.parametrize(("board", "words"), LIGHTER, ids=[words for _, words in LIGHTER])
def test_less_than_is_written_is_lighter(board, words):
    assert is_scaled(board, words)


@pytest.mark.parametrize(("board", "words"), AS_IT_IS, ids=[words for _, words in AS_IT_IS])
def test_what_is_written_is_not(board, words):
    assert not is_scaled(board, words)
