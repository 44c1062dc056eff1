"""Whether a score can be of whoever tells it: what nobody would believe is asked about before it stands on a board."""

from math import log, sqrt

import numpy as np

from core.forecast.forecast import DAY_SPREAD, expected_of
from core.forecast.learning import UNTOLD_SPREAD, came_to_in
from core.forecast.people import People
from core.scaling.values import Version, VersionBlock, VersionLine
from core.scores.values import Score

# Nobody is asked who lifts less than so much more than the strongest whom they may be (estimate): a doubt hurts.
STRONGEST, BY_SO_MUCH = 0.99, 1.5
# So many spreads better than expected is nobody by a good day alone.
BEYOND = 4.5


def is_incredible(score: Score, version: Version, block: VersionBlock, people: People) -> bool:
    """Whether it is further above what is expected than a good day, or heavier than anybody like them lifts.

    Never of too little: whoever stops early has their reasons.
    """
    if score.load_kg is not None and score.unit == "kg":
        return any(float(score.load_kg) > limit for limit in _heaviest(block, people))
    expected = expected_of(version, block, people)
    came_to = expected and came_to_in(expected.unit, score, block)
    if not expected or not came_to or expected.is_sure:
        return False
    logs = np.log(np.maximum(expected.found, 1e-6))
    spread = sqrt(float(np.var(logs)) + DAY_SPREAD**2 + UNTOLD_SPREAD**2)
    better = (log(came_to) - float(np.mean(logs))) * (-1 if expected.unit == "s" else 1)
    return better > BEYOND * spread


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
    moved = float(np.quantile(people.heaviest(way, max(reps, 1)), STRONGEST)) * BY_SO_MUCH
    return (moved - own) / (hold.factor * hold.count)
