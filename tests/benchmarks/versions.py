"""Personal versions per second, warm, on one core: a thousand invented people, one session of six lines.

The best of a few rounds counts, since other work on the machine only slows down.
"""

import time
from decimal import Decimal
from random import Random

from core.athletes.values import Equipment, Evidence, Profile, Screening, Sex
from core.movements.lookup import catalogue
from core.notation.session import read_session
from core.scaling.version import version_for

_TEXT = """AMRAP 20
8 push-ups
12 goblet squats @ 24/16 kg
15 swings @ 24/16 kg
15 sit-ups
9 single-arm rows each side @ 24/16 kg
200 m run"""
_LOADS = (4, 6, 8, 10, 12, 15, 16, 20, 24)
_LIMITS = ("wrist", "knee", "no-jumping", "low-back")
_ROUNDS = 5


def table(number: int = 1000) -> list[tuple[str, str]]:
    """Rows of the speed table."""
    session = read_session(_TEXT, catalogue()).session
    assert session is not None
    people = _people(number)
    seconds = []
    for _ in range(_ROUNDS):
        begun = time.perf_counter()
        for person in people:
            version_for(session, person, catalogue())
        seconds.append(time.perf_counter() - begun)
    return [("versions per second, six lines", f"{number / min(seconds):.0f}")]


def _people(number: int) -> list[Profile]:
    """A fifth own an adjustable, three in ten a backpack to fill; a third spare something."""
    random = Random(6)  # noqa: S311 - invented people, no secrets
    return [_person(n, random) for n in range(number)]


def _person(number: int, random: Random) -> Profile:
    tests = (
        Evidence(movement="push-up", reps=random.randrange(40)),
        Evidence(movement="goblet squat", load_kg=Decimal(12), reps=random.randrange(5, 40)),
    )
    return Profile(
        name=f"person {number}",
        body_mass_kg=Decimal(random.randrange(50, 100)),
        sex=random.choice((Sex.FEMALE, Sex.MALE, None)),
        screening=Screening.CLEAR,
        equipment=tuple(_things(random)),
        limits=(random.choice(_LIMITS),) if random.random() < 1 / 3 else (),
        evidence=tests,
    )


def _things(random: Random) -> list[Equipment]:
    loads = tuple(Decimal(load) for load in sorted(random.sample(_LOADS, 3)))
    adjustable = {"from_kg": Decimal("2.5"), "to_kg": Decimal(24), "step_kg": Decimal("2.5")}
    chances = (
        (1.0, Equipment(implement="chair")),
        (0.6, Equipment(implement="dumbbell", loads_kg=loads, each=random.choice((1, 2)))),
        (0.4, Equipment(implement="kettlebell", loads_kg=(Decimal(random.choice((8, 12, 16, 20, 24))),))),
        (0.3, Equipment(implement="backpack", to_kg=Decimal(15))),
        (0.2, Equipment(implement="dumbbell", **adjustable)),
    )
    return [thing for chance, thing in chances if random.random() < chance]
