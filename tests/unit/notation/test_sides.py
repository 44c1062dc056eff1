import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.notation.sides import read_side


@pytest.mark.parametrize(
    ("said", "side"),
    [
        ("my left wrist", "left"),
        ("Right knee, a little", "right"),
        ("both knees", "both"),
        ("left sore wrist", "left"),
        ("the wrist, the right one", "right"),
        ("left wrist and right wrist", "both"),
        ("wrist", None),
        ("my wrist hurts right now", None),
        ("it's all right, knee only", None),
        ("", None),
    ],
)
def test_the_side_of_a_joint(said, side):
    assert read_side(said) == side


@given(st.text(max_size=300))
def test_any_text_has_one_side_at_most(text):
    assert read_side(text) in {None, "left", "right", "both"}
