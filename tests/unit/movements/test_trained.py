"""What movements train: the parts that a stand-in keeps."""

import pytest

from core.movements.catalogue import catalogue
from core.movements.values import Part

BOOK = catalogue()


@pytest.mark.parametrize(
    ("movement", "main", "others"),
    [
        ("thruster", Part.SQUAT, {Part.PRESS, Part.BREATH}),
        ("swing", Part.HINGE, {Part.GRIP, Part.BREATH}),
        ("med-ball squat throw", Part.SQUAT, {Part.PRESS, Part.BREATH}),
        ("pull-up", Part.PULL, {Part.GRIP}),
        ("lunge", Part.SQUAT, {Part.HINGE}),
        ("toes-to-bar", Part.BEND, {Part.GRIP}),
        ("burpee", Part.BREATH, {Part.PUSH, Part.SQUAT, Part.JUMP}),
    ],
)
def test_a_movement_trains_its_main_part_and_others(movement, main, others):
    one = BOOK.movement(movement)
    assert one.main_of(one.variants[0]) is main
    assert others <= one.trains_of(one.variants[0]).keys()


def test_a_variant_may_train_something_else():
    jump, step = BOOK.variant("box jump/box")[1], BOOK.variant("box jump/step-up-box")[1]
    boxes = BOOK.movement("box jump")
    assert (boxes.main_of(jump), boxes.main_of(step)) == (Part.JUMP, Part.SQUAT)
    assert Part.JUMP not in boxes.trains_of(step)


def test_empty_handed_reaches_train_no_press():
    """They stood in for thrusters, and nobody pressed anything."""
    reach = BOOK.movement("ground reach")
    assert all(Part.PRESS not in reach.trains_of(way) for way in reach.variants)
