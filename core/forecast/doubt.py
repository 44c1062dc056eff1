"""Whether a weight can have been lifted by whoever tells it: what nobody would believe is asked about first."""

import numpy as np

from core.forecast.people import People
from core.scaling.values import VersionBlock, VersionLine
from core.scores.values import Score

# Nobody is asked who lifts less than three quarters more than the strongest whom they may be (estimate): a doubt hurts.
STRONGEST, TIMES = 0.99, 1.75


def is_incredible(score: Score, block: VersionBlock, people: People) -> bool:
    """Whether a load is the score, and far heavier than anybody like them lifts."""
    if score.load_kg is None or score.unit != "kg":
        return False
    limits = (_limit(line, block, people) for line in block.lines)
    most = next((limit for limit in limits if limit is not None), np.inf)
    return float(score.load_kg) > most


def _limit(line: VersionLine, block: VersionBlock, people: People) -> float | None:
    """In the hands, for as many repetitions as a set has; None where no load is lifted."""
    way = f"{line.movement}/{line.variant}"
    movement, variant = people.catalogue.variant(way)
    hold = next((one for one in variant.holds if one.fits(line.implement, line.count)), None)
    if movement.k is None or hold is None:
        return None
    reps = min(line.scheme or block.scheme or (round(line.amount or 1),))
    own = variant.body_share.value * people.capacity.body_mass_kg
    moved = float(np.quantile(people.heaviest(way, max(reps, 1)), STRONGEST)) * TIMES
    return (moved - own) / (hold.factor * hold.count)
