"""Squats, hinges, lunges and carries as a coach would scale them (common practice, no source; invented people)."""

import pytest

from core.measures import AmountUnit
from core.movements.catalogue import catalogue
from core.movements.values import Demand
from tests.unit.scaling.people import athlete, did, only_line, session

AMRAP = "AMRAP 12\n"
STRONG_MAN = {"sex": "male", "mass": 80}


@pytest.mark.parametrize(
    ("text", "who", "movement", "variant", "load"),
    [
        # The bar is there: as written.
        (
            "5 front squats @ 60 kg",
            athlete(**STRONG_MAN, owns=["barbell 40 60"], tests=[did("front squat", 8, 60)]),
            "front squat",
            "barbell",
            60,
        ),
        # No bar, two kettlebells: the same squat with a weight at each shoulder.
        (
            "10 front squats @ 40 kg",
            athlete(
                **STRONG_MAN, owns=["2x kettlebell 16 20"], tests=[did("front squat", 20, 20, "two-weights")]
            ),
            "front squat",
            "two-weights",
            20,
        ),
        # An overhead squat that nobody has seen yet is none to begin with under a bar.
        (
            "8 overhead squats @ 30 kg",
            athlete(**STRONG_MAN, owns=["barbell 20 30"], limits=(), tests=[did("air squat", 40)]),
            "overhead squat",
            "stick",
            None,
        ),
        # A sore knee: to a chair, not deep.
        (
            "12 air squats",
            athlete(owns=["chair"], limits=("knee",), tests=[did("air squat", 40)]),
            "air squat",
            "to-chair",
            None,
        ),
        # Lunges named with a load in each hand are those.
        (
            "12 lunges 2 x 8 kg",
            athlete(owns=["2x dumbbell 8"], tests=[did("lunge", 24, 8, "two-weights")]),
            "lunge",
            "two-weights",
            8,
        ),
        # Unsteady: the wall helps.
        (
            "10 lunges",
            athlete(limits=("unsteady",), tests=[did("air squat", 40)]),
            "lunge",
            "hand-on-wall",
            None,
        ),
        # No box but stairs: two at a time.
        (
            "12 step-ups",
            athlete(owns=["stairs"], tests=[did("air squat", 40)]),
            "step-up",
            "on-second-stair",
            None,
        ),
        # One-leg squats are shown before they are prescribed.
        ("6 pistols", athlete(tests=[did("air squat", 50)]), "split squat", "one-and-a-half", None),
    ],
)
def test_a_line_becomes_what_a_coach_would_make_of_it(text, who, movement, variant, load):
    line = only_line(AMRAP + text, who)
    assert (line.movement, line.variant, line.load_kg) == (movement, variant, load)


@pytest.mark.parametrize("reps", [30, 45, 57, 70])
def test_a_hold_is_no_stand_in_for_moving_a_weight(reps):
    who = athlete(owns=["kettlebell 4"], tests=[did("goblet squat", reps, 12)])
    assert only_line(AMRAP + "12 goblet squats @ 24 kg", who).unit is AmountUnit.REPS


@pytest.mark.parametrize(
    "text",
    [
        "10 romanian deadlifts @ 60 kg",
        "12 swings @ 24 kg",
        "40 m suitcase carry @ 24 kg",
        "8 front squats @ 60 kg",
    ],
)
def test_a_stand_in_adds_nothing_overhead_thrown_or_jumped(text):
    who = athlete(**STRONG_MAN, owns=["2x dumbbell 10", "bench"], tests=[did("goblet squat", 50, 10)])
    (written,) = session(AMRAP + text).blocks[0].lines
    assert asked(only_line(AMRAP + text, who)) & ADDED <= asked(written)


ADDED = {Demand.OVERHEAD, Demand.FAST_LOAD, Demand.JUMPING}


def asked(line):
    """What a line asks of body and room; where none is named, its first way."""
    movement = catalogue().movement(line.movement)
    return set(movement.meant(line.variant, loaded=True).demands)
