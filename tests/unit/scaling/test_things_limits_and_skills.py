"""Odd equipment, limits, states and skills as a coach would scale them (common practice, no source; all invented)."""

import pytest

from core.athletes.values import Screening, Space, Today
from core.measures import MassUnit
from core.scaling.values import Because
from tests.unit.scaling.cases import A_MAN, TWELVE_MINUTES, Case
from tests.unit.scaling.people import athlete, did

QUIET = Space(jumping=False)
LB_20, LB_35 = "9.0718474", "15.87573295"

THINGS = [
    Case(
        "8 single-arm presses each side @ 20 kg",
        athlete(**A_MAN, owns=["dumbbell 12"], tests=[did("single-arm press", 20, 12)]),
        "8 single-arm presses overhead (12 kg dumbbell), on each side",
        Because.TOO_HEAVY,
        "20 kg would be heavy",
    ),
    Case(
        "10 goblet squats @ 24 kg",
        athlete(**A_MAN, owns=["dumbbell 8"], tests=[did("goblet squat", 40, 16)]),
        "18 goblet squats (8 kg dumbbell)",
        Because.NOT_OWNED,
        "don't have 24 kg",
    ),
    Case(
        "12 thrusters 2 x 10 kg",
        athlete(owns=["2x dumbbell 7.5 12.5"], tests=[did("thruster", 20, 7.5, "two-weights")]),
        "12 thrusters with a weight in each hand (two 7.5 kg dumbbells)",
        Because.TOO_HEAVY,
        "so this is lighter",
    ),
    Case(
        "12 goblet squats @ 53/35 lb",
        athlete(units=MassUnit.LB, owns=[f"kettlebell {LB_35}"], tests=[did("goblet squat", 20, LB_35)]),
        "12 goblet squats (35 lb kettlebell)",
        Because.AS_WRITTEN,
    ),
    Case(
        "10 single-arm rows each side @ 12 kg",
        athlete(units=MassUnit.LB, owns=[f"dumbbell {LB_20}"], tests=[did("single-arm row", 25, LB_20)]),
        "10 single-arm rows, other hand on your thigh (20 lb dumbbell), on each side",
        Because.TOO_HEAVY,
        "26 lb would be heavy",
    ),
    Case(
        "8 dips",
        athlete(owns=["chair"], tests=[did("push-up", 15)]),
        "8 push-ups from the knees, hands close together",
        Because.NOT_OWNED,
    ),
    Case(
        "8 pull-ups",
        athlete(owns=["pull-up bar", "chair"], tests=[did("pull-up", 3)]),
        "8 pull-ups with your feet on a chair, bench or box for help",
        Because.TOO_HEAVY,
        "the number stays the same",
    ),
    Case(
        "12 box jumps",
        athlete(owns=["stairs"], space=QUIET, tests=[did("air squat", 40)]),
        "12 step-ups onto the lowest step",
        Because.SPACE,
        "no jumping where you train",
    ),
]

LIMITS = [
    Case(
        "10 box jumps",
        athlete(limits=("pregnancy",), owns=["box"], tests=[did("air squat", 40)]),
        "10 step-ups onto the box",
        Because.LIMIT,
        "while you're pregnant",
    ),
    Case(
        "15 sit-ups",
        athlete(limits=("osteoporosis",)),
        "30 s plank on your forearms",
        Because.LIMIT,
        "kinder with osteoporosis",
    ),
    Case(
        "15 swings @ 16 kg",
        athlete(limits=("low-back",), owns=["kettlebell 16"], tests=[did("swing", 30, 16)]),
        "15 bridges with a weight on your hips (16 kg kettlebell)",
        Because.LIMIT,
        "your sore lower back",
    ),
    Case(
        "10 burpees",
        athlete(limits=("no-floor",), owns=["chair"], tests=[did("burpee", 20)]),
        "10 burpees stepping back, hands on a chair",
        Because.LIMIT,
        "not down on the floor",
    ),
    Case(
        "15 air squats",
        athlete(limits=("hip",), owns=["chair"], tests=[did("air squat", 40)]),
        "15 squats to a chair",
        Because.LIMIT,
        "your sore hip",
    ),
    Case(
        "12 step-ups",
        athlete(limits=("unsteady",), owns=["stairs"], tests=[did("air squat", 40)]),
        "12 step-ups on a stair",
        Because.LIMIT,
        "unsteady on your feet",
    ),
    Case(
        "8 front squats @ 40 kg",
        athlete(
            **A_MAN,
            limits=("wrist",),
            owns=["barbell 40", "kettlebell 24"],
            tests=[did("front squat", 20, 40)],
        ),
        "8 back squats (40 kg barbell)",
        Because.LIMIT,
        "your sore wrist",
    ),
    Case(
        "10 burpees",
        athlete(limits=("asthma",), tests=[did("burpee", 25)]),
        "10 burpees",
        Because.AS_WRITTEN,
    ),
]

STATES = [
    Case(
        "10 push-ups",
        athlete(today=Today(sore=("legs",)), tests=[did("push-up", 25)]),
        "10 push-ups on the floor",
        Because.AS_WRITTEN,
    ),
    Case(
        "10 burpees",
        athlete(screening=Screening.MODERATE, tests=[did("burpee", 15)]),
        "10 wall burpees: forearms on the wall, step back, step in",
        Because.LIGHT_DUTY,
        "plenty is left",
    ),
    Case(
        "12 swings @ 16 kg",
        athlete(limits=("after-illness",), owns=["kettlebell 16"], tests=[did("swing", 30, 16)]),
        "12 deadlifts (16 kg kettlebell)",
        Because.LIGHT_DUTY,
        "plenty is left",
    ),
]

SKILLS = [
    Case(
        "4 muscle-ups",
        athlete(**A_MAN, owns=["pull-up bar"], tests=[did("pull-up", 12)]),
        "4 pull-ups",
        Because.SKILL,
        "a step before it",
    ),
    Case(
        "8 toes-to-bar",
        athlete(**A_MAN, owns=["pull-up bar"], tests=[did("hanging knee raise", 15)]),
        "8 hanging knee raises",
        Because.SKILL,
        "a step before it",
    ),
    Case(
        "50 double-unders",
        athlete(owns=["skipping rope"]),
        "100 rope skips",
        Because.SKILL,
        "a step before it",
    ),
    Case(
        "50 double-unders",
        athlete(),
        "100 quick heel lifts as if with a rope, no jump",
        Because.NOT_OWNED,
        "don't have a skipping rope",
    ),
    Case(
        "3 get-ups each side @ 16 kg",
        athlete(owns=["kettlebell 8 16"], tests=[did("sit-up", 40)]),
        "3 get-ups without a weight, on each side",
        Because.SKILL,
        "a step before it",
    ),
    Case(
        "6 one-leg squats each side",
        athlete(tests=[did("one-leg squat", 12)]),
        "6 one-leg squats, on each side",
        Because.AS_WRITTEN,
    ),
]


@pytest.mark.parametrize("case", THINGS + LIMITS + STATES + SKILLS, ids=lambda case: case.what)
def test_a_line_becomes_what_a_coach_would_make_of_it(case):
    case._replace(text=TWELVE_MINUTES + case.text).check()


def test_a_share_of_a_maximum_is_of_the_bar():
    Case(
        "4 x 6 deadlifts @ 80%",
        athlete(**A_MAN, owns=["barbell 20", "2x plate 5 10 20"], tests=[did("deadlift", 5, 80)]),
        "6 deadlifts with a barbell (70 kg barbell)",
        Because.AS_WRITTEN,
    ).check()
