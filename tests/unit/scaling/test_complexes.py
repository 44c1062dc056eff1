"""Several lifts that count as one: common practice, no source; the numbers are estimates."""

import pytest

from core.athletes.values import Equipment, Profile, Screening
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.scaling.version import version_for

SESSION = "AMRAP 12\n5 man makers 2x10/6 kg\n200 m run"


def first_line(*limits):
    """What somebody of 80 kg with two 10s does."""
    profile = Profile(
        name="Sana",
        screening=Screening.CLEAR,
        equipment=(Equipment(implement="dumbbell", loads_kg=(10,), each=2),),
        limits=limits,
        body_mass_kg=80,
        sex="male",
        pair=1,
    )
    session = read_session(SESSION, catalogue()).session
    assert session is not None
    version = version_for(session, profile, catalogue())
    return version.blocks[0].lines[0]


def test_who_has_the_weights_does_the_complex_and_breaks_it_seldom():
    line = first_line()
    assert (line.movement, line.amount, line.load_kg) == ("man maker", 5, 10)
    assert 5 <= line.unbroken <= 15


@pytest.mark.parametrize("limit", ["shoulder", "wrist", "no-overhead"])
def test_who_must_spare_what_it_asks_for_gets_something_else(limit):
    line = first_line(limit)
    assert (line.movement, line.variant) != ("man maker", "two-weights")
