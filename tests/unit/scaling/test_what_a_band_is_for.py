"""A band or a box at hand is used before empty hands or a wall (common practice; invented people)."""

import pytest

from core.scaling.values import Because
from tests.unit.scaling.cases import A_MAN, TWELVE_MINUTES, Case
from tests.unit.scaling.people import athlete, did

CASES = [
    Case(
        "12 thrusters @ 40/30 kg",
        athlete(**A_MAN, owns=["band"]),
        "12 thrusters against a band",
        Because.NOT_OWNED,
        "the number stays the same",
    ),
    Case(
        "12 dumbbell snatches @ 22.5/15 kg",
        athlete(owns=["band"]),
        "12 deadlifts against a band",
        Because.NOT_OWNED,
        "so here's what fits instead",
    ),
    Case(
        "10 burpees",
        athlete(**A_MAN, birth_year=1964, owns=["box"], tests=[did("burpee", 8)]),
        "10 burpees to the plank, without a push-up",
        Because.TOO_HEAVY,
        "the number stays the same",
    ),
]


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.what)
def test_what_is_there_is_used(case):
    case._replace(text=TWELVE_MINUTES + case.text).check()
