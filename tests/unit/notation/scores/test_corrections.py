"""Which words put a score right; how people type it is common practice, no source."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.notation.scores.corrections import read_correction


@pytest.mark.parametrize(
    ("said", "score"),
    [
        ("sorry 9:24", "9:24"),
        ("Sorry, 9:24!", "9:24!"),
        ("oops, it was 9:24", "9:24"),
        ("correction its 6+2, forgot a round", "6+2, forgot a round"),
        ("sorry wrong again, 5 rounds 30 reps", "5 rounds 30 reps"),
        ("Oops it's 7+12", "7+12"),
        ("I meant 9:24", "9:24"),
        ("it was actually 9:24", "9:24"),
        ("should be 7 rounds and 12", "7 rounds and 12"),
        ("my bad, 14 rounds", "14 rounds"),
        ("no, 7+12", "7+12"),
        ("9:24, not 9:42", "9:24"),
        ("it was 9:24 not 9:42", "9:24"),
        ("not 9:42 but 9:24", "9:24"),
        ("9:24 sorry", "9:24"),
        ("typo: 9:24, not 9:42", "9:24"),
        ("12:50 wasnt me, i did 13:50", "13:50"),
        ("sorry 12:50 wasnt me, i did 13:50", "13:50"),
        ("that 4+20 marit put in isn't mine, i did 5+2 and all as written", "5+2 and all as written"),
    ],
)
def test_a_score_that_is_put_right(said, score):
    assert read_correction(said) == score


@pytest.mark.parametrize(
    "said",
    [
        "9:24",
        "7+12",
        "sorry",
        "oops",
        "sorry, I'm running late, 9:30",
        "sorry, see you at 9:30",
        "sorry I forgot to count",
        "was it 9:24?",
        "it was fun",
        "I got 7+12",
        "my time was 9:24",
        "I did 3 rounds with friends, sorry?",
        "no 24 kg here",
        "no, 16 kg",
        "",
    ],
)
def test_what_puts_no_score_right(said):
    assert read_correction(said) is None


@given(st.text(max_size=200))
def test_no_text_fails_it(text):
    read_correction(text)
