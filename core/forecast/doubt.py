"""Whether a score can be of whoever tells it: what nobody would believe is asked about before it stands on a board."""

import numpy as np

from core.forecast.forecast import expected_of
from core.forecast.learning import came_to_in
from core.forecast.people import People
from core.scaling.values import Version, VersionBlock, VersionLine
from core.scores.values import Score

# Nobody is asked who does less than so much more than the best whom they may be (estimate): a doubt hurts.
BEST, BY_SO_MUCH = 0.99, 1.5


def is_incredible(score: Score, version: Version, block: VersionBlock, people: People) -> bool:
    """Whether it is far above what is expected, or heavier than anybody like them lifts.

    Never of too little: whoever stops early has their reasons.
    """
    if score.load_kg is not None and score.unit == "kg":
        return any(float(score.load_kg) > limit for limit in _heaviest(block, people))
    expected = expected_of(version, block, people)
    came_to = expected and came_to_in(expected.unit, score, block)
    if not expected or not came_to or expected.is_sure:
        return False
    if expected.unit == "s":
        return came_to * BY_SO_MUCH < float(np.quantile(expected.found, 1 - BEST))
    return came_to > float(np.quantile(expected.found, BEST)) * BY_SO_MUCH


def _heaviest(block: VersionBlock, people: People) -> list[float]:
    """In the hands, for as many repetitions as a set has; of the first line that a load is lifted in."""
    lifts = [limit for line in block.lines if (limit := _limit(line, block, people)) is not None]
    return lifts[:1]


def _limit(line: VersionLine, block: VersionBlock, people: People) -> float | None:
    way = f"{line.movement}/{line.variant}"
    movement, variant = people.catalogue.variant(way)
    hold = next((one for one in variant.holds if one.fits(line.implement, line.count)), None)
    if movement.k is None or hold is None:
        return None
    reps = min(line.scheme or block.scheme or (round(line.amount or 1),))
    own = variant.body_share.value * people.capacity.body_mass_kg
    moved = float(np.quantile(people.heaviest(way, max(reps, 1)), BEST)) * BY_SO_MUCH
    return (moved - own) / (hold.factor * hold.count)
