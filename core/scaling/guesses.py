"""Numbers to tap where somebody is asked how many they can do: spread over what people like them say."""

from collections.abc import Sequence

from core.ability.capacity import Ability

# Round numbers people would say themselves.
ROUND = (3, 5, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100)

# From somebody clearly weaker than most to somebody clearly stronger, so that few must say less or more.
QUANTILES = (-0.8, -0.2, 0.4, 1.0)


def guesses(ability: Ability, moved_kg: float) -> tuple[int, ...]:
    """Four round numbers of unbroken repetitions, rising, for a question about this ability at this load."""
    found: list[int] = []
    for place, z in enumerate(QUANTILES):
        # Room for those still to come, and none taken twice.
        first = ROUND.index(found[-1]) + 1 if found else 0
        last = len(ROUND) - len(QUANTILES) + place + 1
        found.append(_nearest(ability.unbroken(moved_kg, z), ROUND[first:last]))
    return tuple(found)


def _nearest(reps: float, numbers: Sequence[int]) -> int:
    return min(numbers, key=lambda number: abs(number - reps))
