"""Numbers to tap where somebody is asked how many they can do: from a few, for whoever begins, to what many can."""

from collections.abc import Sequence

from core.ability.capacity import Ability

# Round numbers people would say themselves.
ROUND = (3, 5, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100)
# How many are shown, and how strong among people like them the last is for, so that few must say more.
SHOWN, STRONG = 5, 1.0


def guesses(ability: Ability, moved_kg: float) -> tuple[int, ...]:
    """Round numbers of unbroken repetitions, rising by about the same share, for a question about this ability.

    The first is a few whatever is asked: whoever begins finds theirs, too.
    """
    most = _nearest(ability.unbroken(moved_kg, STRONG), ROUND[SHOWN - 1 :])
    found = [ROUND[0]]
    for place in range(1, SHOWN - 1):
        # Room for those still to come, and none taken twice.
        between = ROUND[ROUND.index(found[-1]) + 1 : ROUND.index(most) - (SHOWN - 2 - place)]
        found.append(_nearest(ROUND[0] * (most / ROUND[0]) ** (place / (SHOWN - 1)), between))
    return (*found, most)


def _nearest(reps: float, numbers: Sequence[int]) -> int:
    return min(numbers, key=lambda number: abs(number - reps))
