"""A load that is much more than somebody has trained with so far, so that it is said before they take it.

Loads go up by 2 to 10 % at a time (American College of Sports Medicine, progression models in resistance training,
2009, from memory); bells and pairs come in coarser steps, so only more than a quarter at once counts (estimate).
"""

from collections.abc import Sequence
from decimal import Decimal
from typing import Final

from core.scaling.values import Change, Version, VersionLine
from core.values import Value

BIG_STEP: Final = Decimal("1.25")


class BigStep(Value):
    """The `place`-th line of the version, from 1; the heaviest of its kind so far was `from_kg`, per implement."""

    place: int
    from_kg: Decimal


def big_steps(version: Version, done: Sequence[VersionLine]) -> tuple[BigStep, ...]:
    """Each movement once; nothing for who hasn't trained with a load of that kind yet, as nobody knows it then.

    `done`: the lines of what was trained before.
    """
    found: dict[str, BigStep] = {}
    for place, (_, line) in enumerate(version.spots, 1):
        most = _heaviest(line, done)
        if line.load_kg is not None and most is not None and line.load_kg > most * BIG_STEP:
            found.setdefault(line.movement, BigStep(place=place, from_kg=most))
    return tuple(found.values())


def _heaviest(line: VersionLine, done: Sequence[VersionLine]) -> Decimal | None:
    """Of the movement, else of the implement: who swung 16 kg knows nothing of 24 kg overhead either."""
    same = [one for one in done if one.movement == line.movement and one.load_kg]
    alike = [one for one in done if one.implement == line.implement and one.load_kg]
    loads = [one.load_kg for one in same or alike if one.load_kg and one.change is not Change.REST]
    return max(loads, default=None)
