import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.notation.body.sides import read_side_alone, read_sides


@pytest.mark.parametrize(
    ("said", "side"),
    [
        ("my left wrist", "left"),
        ("Right knee, a little", "right"),
        ("both knees", "both"),
        ("left sore wrist", "left"),
        ("sore wrist (left)", "left"),
        ("the wrist, the right one", "right"),
        ("left wrist and right wrist", "both"),
        ("left and right knee", "both"),
        ("wrist", None),
        ("my wrist hurts right now", None),
        ("it's all right, knee only", None),
        ("left lower back", None),
        ("", None),
    ],
)
def test_the_side_of_a_joint(said, side):
    assert next(iter(read_sides(said).values()), None) == side


def test_each_joint_has_its_own_side():
    assert read_sides("left wrist and my right knee, no jumping, neck") == {"wrist": "left", "knee": "right"}


@pytest.mark.parametrize(
    ("said", "side"),
    [
        ("left", "left"),
        ("the right one.", "right"),
        ("it's the left side", "left"),
        ("both of them", "both"),
        ("all right", None),
        ("right now", None),
        ("left my chair at work", None),
    ],
)
def test_a_side_alone(said, side):
    assert read_side_alone(said) == side


@given(st.text(max_size=300))
def test_any_text_has_one_side_a_joint_at_most(text):
    assert set(read_sides(text).values()) <= {"left", "right", "both"}


@pytest.mark.parametrize(
    ("told", "sides"),
    [
        ("my shoulder right have pain", {"shoulder": "right"}),
        ("knee left hurts", {"knee": "left"}),
        ("I hurt my shoulder, right?", {}),
        ("my knee right at the end hurt", {}),
        ("my knee hurts right now", {}),
    ],
)
def test_a_side_may_stand_behind_its_joint(told, sides):
    assert read_sides(told) == sides
