"""Personal versions a second: a six-line session made for many different people, warm, on one core."""

import time
from decimal import Decimal
from random import Random

from core.athletes.values import Equipment, Evidence, Profile, Screening, Sex
from core.desk.sessions.preview import read_text
from core.movements.lookup import catalogue
from core.scaling.version import version_for
from core.sessions.values import Session

SESSION = """Six lines
AMRAP 20
10 push-ups
12 goblet squats @ 16/12 kg
10 swings @ 24/16 kg
8 lunges
15 sit-ups
200 m run"""

_WARM_UP = 50
_LOADS = [Decimal(load) for load in (4, 6, 8, 10, 12, 16, 20, 24)]
_LIMITS = ("wrist", "no-jumping")


def crowd(number: int, seed: int = 7) -> list[Profile]:
    """Make invented people, each with other things at home and another level."""
    random = Random(seed)
    return [somebody(f"Athlete {place}", random) for place in range(number)]


def somebody(name: str, random: Random) -> Profile:
    dumbbells = tuple(sorted(random.sample(_LOADS, random.randint(1, 4))))
    own = [
        Equipment(implement="dumbbell", loads_kg=dumbbells, each=random.choice((1, 2))),
        Equipment(implement="kettlebell", loads_kg=tuple(sorted(random.sample(_LOADS, 2)))),
        Equipment(implement="backpack", to_kg=Decimal(15)),
        Equipment(implement="chair"),
    ]
    tests = (
        Evidence(movement="push-up", reps=random.randint(0, 40)),
        Evidence(movement="goblet squat", load_kg=random.choice(_LOADS), reps=random.randint(5, 30)),
    )
    return Profile(
        name=name,
        body_mass_kg=Decimal(random.randint(48, 105)),
        birth_year=random.randint(1956, 2004),
        sex=random.choice((Sex.FEMALE, Sex.MALE, None)),
        screening=Screening.CLEAR,
        equipment=tuple(random.sample(own, random.randint(0, len(own)))),
        limits=tuple(random.sample(_LIMITS, random.randint(0, 1))),
        evidence=tests[: random.randint(0, 2)],
    )


def table(people: int) -> list[tuple[str, str]]:
    """Rows for the speed table."""
    session = six_lines()
    everybody = crowd(people)
    _make_all(session, everybody[:_WARM_UP])
    started = time.process_time()
    _make_all(session, everybody)
    seconds = time.process_time() - started
    return [
        ("versions a second, six lines (to reach: 300)", f"{people / seconds:,.0f}"),
        ("milliseconds a version", f"{1000 * seconds / people:.2f}"),
    ]


def six_lines() -> Session:
    read = read_text(SESSION)
    assert read.session is not None
    assert not read.not_understood
    return read.session


def _make_all(session: Session, people: list[Profile]) -> None:
    for person in people:
        version_for(session, person, catalogue())
