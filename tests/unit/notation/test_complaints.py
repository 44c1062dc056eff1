"""Pain told in free words, and that it is over."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.notation.complaints import read_complaint


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
    assert read_complaint(text) == ("hurts", limits, sides)


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
