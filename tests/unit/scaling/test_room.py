"""Where there is no way to go: what covers ground is done on the spot (common practice; invented people)."""

import pytest

from core.athletes.values import Space
from core.scaling.values import Because
from tests.unit.scaling.people import athlete, only_line

NO_WAY = Space(running=False)
PAIR = ["2x kettlebell 16"]


@pytest.mark.parametrize(
    ("text", "movement", "variant"),
    [
        ("40 m farmer carry 2 x 16 kg", "farmer carry", "on-the-spot"),
        ("10 walking lunges", "lunge", "reverse"),
    ],
)
def test_what_covers_ground_is_done_on_the_spot(text, movement, variant):
    line = only_line(f"AMRAP 12\n{text}", athlete(owns=PAIR, mass=70, sex="male", space=NO_WAY))
    assert (line.movement, line.variant) == (movement, variant)
    assert (line.reason.because, line.reason.about) == (Because.SPACE, "running")


def test_a_carried_distance_becomes_its_time():
    line = only_line(
        "AMRAP 12\n40 m farmer carry 2 x 16 kg", athlete(owns=PAIR, mass=70, sex="male", space=NO_WAY)
    )
    assert (line.amount, line.unit, line.count, line.load_kg) == (35, "s", 2, 16)
