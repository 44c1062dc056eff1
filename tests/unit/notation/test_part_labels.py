"""The names of parts in people's words."""

import pytest

from core.notation.body.felt import says_that_was_all
from core.notation.part_labels import LAST, Part, find_part


@pytest.mark.parametrize(
    ("said", "part", "words"),
    [
        ("part 2: 80 cals", Part(2, of_scored=False), "80 cals"),
        ("6+3 in part A", Part(1, of_scored=False), "6+3"),
        ("b) 80 cals", Part(2, of_scored=False), "80 cals"),
        ("80 cals in the second", Part(2, of_scored=True), "80 cals"),
        ("the last part was 8:43", Part(LAST, of_scored=True), "8:43"),
    ],
)
def test_a_part_may_be_named_before_its_score_or_behind_it(said, part, words):
    assert find_part(said) == (part, words)


@pytest.mark.parametrize(
    "said",
    [
        "7+12",
        "the first round was hard, 7+12",
        "held it for 45 second",
        "last round in 2:10",
        "my second try: 7+12",
    ],
)
def test_a_round_a_try_or_a_time_is_no_part(said):
    assert find_part(said) is None


@pytest.mark.parametrize(
    "said", ["that's all", "No.", "didn't get to part B", "I skipped the second one", "done"]
)
def test_whoever_has_no_more_to_tell_says_so(said):
    assert says_that_was_all(said)


@pytest.mark.parametrize(
    "said", ["done, 80 cals", "no idea", "not bad", "skipped two rounds", "finished in 8:43"]
)
def test_what_tells_more_is_no_end(said):
    assert not says_that_was_all(said)
