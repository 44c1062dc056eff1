"""Pain told in free words, and that it is over."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.notation.body.complaints import read_complaint, says_it_will_not_move


@pytest.mark.parametrize(
    ("text", "limits", "sides"),
    [
        ("my left wrist hurts", ("wrist",), {"wrist": "left"}),
        ("Ouch, my right knee is killing me", ("knee",), {"knee": "right"}),
        ("left knee hurts", ("knee",), {"knee": "left"}),
        ("I tweaked my lower back", ("low-back",), {}),
        ("sore left shoulder today", ("shoulder",), {"shoulder": "left"}),
        ("my left wrist and right knee hurt", ("wrist", "knee"), {"wrist": "left", "knee": "right"}),
        ("my knee is almost fine but still hurts", ("knee",), {}),
    ],
)
def test_what_hurts_is_read_with_its_side(text, limits, sides):
    assert read_complaint(text) == ("hurts", limits, sides, ())


@pytest.mark.parametrize(
    "text",
    [
        "my left wrist is fine again",
        "the wrist doesn't hurt any more",
        "My wrist stopped hurting",
        "my wrist has healed",
    ],
)
def test_what_is_over_is_read(text):
    told = read_complaint(text)
    assert (told.kind, told.limits) == ("over", ("wrist",))


@pytest.mark.parametrize(
    "text",
    [
        "Bo's wrist hurts",
        "I'm back, it hurts so good",
        "my left hand",
        "sore legs",
        "10 knee raises",
        "ouch",
        "",
    ],
)
def test_all_else_is_no_complaint(text):
    assert read_complaint(text) is None


@given(st.text(max_size=200))
def test_any_text_can_be_looked_at(text):
    told = read_complaint(text)
    assert told is None or told.limits


@pytest.mark.parametrize("said", ["not my back, only my wrist hurts", "my wrist hurts, not my back"])
def test_a_joint_that_is_said_not_to_be_it_is_told_apart(said):
    told = read_complaint(said)
    assert told is not None
    assert (told.kind, told.limits, told.others) == ("hurts", ("wrist",), ("low-back",))


@pytest.mark.parametrize(
    ("said", "will_not"),
    [
        ("can't bend it back", True),
        ("I can hardly move it", True),
        ("can't put weight on it", True),
        ("I can't do it", False),
        ("can't bend my knee", False),
        ("can't move it to Tuesday, my back", False),
    ],
)
def test_what_will_not_move(said, will_not):
    assert says_it_will_not_move(said) is will_not
