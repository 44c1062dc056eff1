"""Rising sets before heavy ones: the same movement, each set heavier and shorter, with loads that are there."""

from collections.abc import Iterator
from decimal import Decimal

from core.athletes.values import Profile
from core.movements.lookup import Catalogue
from core.scaling.athlete import Athlete
from core.scaling.gear import BARBELL
from core.scaling.values import Change, Version, VersionLine

# The empty bar, then so much of today's load, and how often (common practice, no source).
EMPTY_BAR_REPS = 8
RISING = ((0.4, 5), (0.6, 3), (0.8, 2))

# A load that goes no more often than this is heavy, and what weighs less needs no climb (estimates).
HEAVY_UNBROKEN = 15
WORTH_A_CLIMB_KG = 20.0

# No more movements than this are climbed to before one session.
MOST_MOVEMENTS = 2


def rising_sets(version: Version, profile: Profile, catalogue: Catalogue) -> tuple[VersionLine, ...]:
    """The rising sets of a version's heavy lines, in its order; none where nothing is heavy."""
    athlete = Athlete(profile, catalogue, None)
    heavy = {line.movement: line for _, line in reversed(version.spots) if _is_heavy(line)}
    firsts = [line for _, line in version.spots if heavy.get(line.movement) is line]
    return tuple(one for line in firsts[:MOST_MOVEMENTS] for one in _climb(line, athlete))


def _is_heavy(line: VersionLine) -> bool:
    if line.change is Change.REST or line.load_kg is None or line.unbroken is None:
        return False
    together = float(line.load_kg) * (line.count or 1)
    return line.unbroken <= HEAVY_UNBROKEN and together >= WORTH_A_CLIMB_KG


def _climb(line: VersionLine, athlete: Athlete) -> Iterator[VersionLine]:
    assert line.load_kg is not None, "heavy lines have a load"
    assert line.implement is not None, "a load is of something"
    there = sorted(load.kg for load in athlete.gear.loads(line.implement, line.count or 1))
    done = Decimal(0)
    for most, reps in _steps(line, there):
        load = max((kg for kg in there if kg <= most), default=None)
        if load is not None and load > done:
            yield _set(line, load, reps)
            done = load


def _steps(line: VersionLine, there: list[Decimal]) -> Iterator[tuple[Decimal, int]]:
    assert line.load_kg is not None, "heavy lines have a load"
    steps = [(line.load_kg * Decimal(str(share)), reps) for share, reps in RISING]
    if line.implement == BARBELL and there:
        yield there[0], EMPTY_BAR_REPS
    yield from steps


def _set(line: VersionLine, load: Decimal, reps: int) -> VersionLine:
    return line.model_copy(
        update={
            "amount": float(reps),
            "amount_to": None,
            "scheme": (),
            "load_kg": load,
            "change": Change.NONE,
        }
    )
