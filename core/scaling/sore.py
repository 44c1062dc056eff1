"""A part that is done with what is sore today: at a steady pace, in fewer sets, and nobody counts it."""

from collections.abc import Sequence

from core.movements.values import Pattern
from core.scaling.athlete import Athlete
from core.scaling.barriers import is_worked
from core.scaling.ways import LinePlan, Way
from core.scaling.works import HALF, Option

Done = Sequence[tuple[LinePlan, Option]]

# What carries them wherever they go; whoever is sore all over is so there, too.
OF_LEGS = frozenset({"legs", "calves", "glutes"})
# So many of the sets are enough for what is sore, and so many are some (estimates; common practice is three of five).
SETS_SHARE, SOME_SETS = 2 / 3, 2


def sore_in(way: Way, athlete: Athlete) -> str | None:
    """The place, sore today, that does the work of a way, or carries them on it."""
    goes = way.movement.pattern is Pattern.TRAVEL and not way.variant.seated
    places = athlete.profile.today.sore
    return next(
        (one for one in places if is_worked(one, way.movement.pattern) or (goes and one in OF_LEGS)), None
    )


def is_mostly_sore(done: Done, athlete: Athlete) -> bool:
    """Whether half of what is done in a part is done with what is sore."""
    ways = [option.way for _, option in done if option.way is not None]
    return bool(ways) and sum(sore_in(way, athlete) is not None for way in ways) >= HALF * len(ways)


def fewer_sets(sets: int, done: Done, athlete: Athlete) -> int:
    """How many of the sets are left, where nothing else is and no repetitions were taken off."""
    sore = [
        plan.heavy or option.part == 1 for plan, option in done if option.way and sore_in(option.way, athlete)
    ]
    if len(sore) < len(done) or not all(sore):
        return sets
    return max(min(sets, SOME_SETS), round(SETS_SHARE * sets))
