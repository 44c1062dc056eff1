"""Where one telling may end and the next begin, with a comma and without."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.understanding.clauses import pieces
from core.understanding.marks import mark
from core.understanding.parting import begins, facts_of_places, odds_of_places
from core.understanding.understand import understand
from core.understanding.values import Message

SAID = (
    "home again",
    "40 min",
    "wrist",
    "fine now",
    "7 rds",
    "and",
    "knee",
    ",",
    ".",
    "?",
    "2x16kg bell",
    "\n",
)
WORDS = st.lists(st.sampled_from(SAID), max_size=40)


def acts(text: str, role: str = "athlete") -> list[str]:
    return [act.act for act in understand(Message(text=text, role=role)).acts]


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("home again wrist fine now", ["home_again", "well_again"]),
        ("got a 24 bell and my knee hurts", ["got", "hurt"]),
        ("knee ok again shoulder hurts though", ["well_again", "hurt"]),
        ("back from holiday can i have an easy one", ["home_again", "wants_easy"]),
    ],
)
def test_what_is_told_with_no_comma_is_parted(said: str, told: list[str]):
    assert acts(said) == told


@pytest.mark.parametrize(
    "said", ["a 16 kg bell and a mat", "my left knee hurts when i run", "rounds of 5 and 6"]
)
def test_what_is_one_telling_stays_one(said: str):
    assert len(acts(said)) <= 1


@given(WORDS, st.booleans())
def test_pieces_are_the_whole_message_in_its_order(words: list[str], boards: bool):
    marked = mark(" ".join(words))
    found = pieces(marked, odds_of_places(marked, begins()), boards=boards)
    assert [one.start for one in found[1:]] == [one.end for one in found[:-1]]
    assert not found or (found[0].start, found[-1].end) == (0, len(marked.words))


@given(WORDS)
def test_no_telling_begins_inside_of_a_name(words: list[str]):
    marked = mark(" ".join(words))
    for at in facts_of_places(marked):
        named = marked.mark_at[at]
        assert named is None or named.start == at
