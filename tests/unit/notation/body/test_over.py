"""Of what was told before, whether it is over or only better."""

import pytest

from core.notation.body.complaints import says_it_is_over


@pytest.mark.parametrize(
    ("text", "how"),
    [
        ("it's fine again", "gone"),
        ("its ok now thanks", "gone"),
        ("it doesn't hurt any more", "gone"),
        ("the pain is gone", "gone"),
        ("it's better now", "better"),
        ("feels much better", "better"),
    ],
)
def test_it_is_told(text, how):
    assert says_it_is_over(text) == how


@pytest.mark.parametrize(
    "text", ["no pain", "it's fine", "all good", "that's ok", "it was better before", "it still hurts"]
)
def test_what_may_be_said_of_anything_ends_nothing(text):
    assert says_it_is_over(text) is None
