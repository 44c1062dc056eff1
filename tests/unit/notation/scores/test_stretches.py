"""A score amid a story: its own sentence is read, and what else is told makes it sure or doubtful."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import read_score
from core.notation.scores.stretches import stretches

AMRAP = "12 min amrap\n10 push-ups\n12 air squats\n8 burpees"
CHIPPER = "For time\ncap 15 min\n50 air squats\n40 sit-ups\n30 push-ups\n20 pull-ups\n10 burpees"
RUNS = "4 rounds for time, rest 2 min between\n400 m run"
HEAVY = "find a heavy 3 deadlift"


def read(board, words):
    session = read_session(board, catalogue()).session
    assert session is not None
    return read_score(words, session)


def test_every_run_of_sentences_with_a_number_is_a_stretch():
    assert stretches("7+3. great day (2 dogs). 4 dogs") == (
        "7+3. great day . 4 dogs",
        "7+3.",
        "7+3. great day .",
        "great day . 4 dogs",
        "4 dogs",
    )


@pytest.mark.parametrize(
    ("board", "words", "expected"),
    [
        (AMRAP, "that was a fight. 5+11. i could not find my shoes and the cat watched", {"rounds": 5, "reps": 11}),
        (AMRAP, "6+4. last time on this one (11 feb) i had 5+2", {"rounds": 6, "reps": 4}),
        (AMRAP, "seven rounds - correction, the tally shows six, plus 20", {"rounds": 6, "reps": 20}),
        (CHIPPER, "ran out of time, had just done pullup fourteen", {"reps": 134, "capped": True}),
        (RUNS, "1:42\n1:44\n1:47\n1:51\n(the 1:51 is a pushchair)", {"seconds": 424, "sets": (102, 104, 107, 111)}),
    ],
)  # fmt: skip
def test_a_score_is_found_in_what_else_is_told(board, words, expected):
    told = read(board, words)
    assert told.sure
    found = told.score.model_dump()
    assert {name: found[name] for name in expected} == expected


@pytest.mark.parametrize(
    ("board", "words"),
    [
        (AMRAP, "me 5+11. ira 6+4"),
        (AMRAP, "i think 7+3. or maybe 8"),
        (HEAVY, "up to 155 today, my best was 70"),
        ("2000 m row for time", "7:52 (1500 m)"),
    ],
)
def test_another_number_that_may_be_the_score_is_asked_about(board, words):
    told = read(board, words)
    assert not told.sure
    assert told.ask
