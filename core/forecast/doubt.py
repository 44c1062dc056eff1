"""Whether anybody can have done what is told: what nobody would believe is asked about first."""

from typing import Final

import numpy as np

from core.forecast.people import People
from core.scaling.values import VersionBlock, VersionLine
from core.scores.values import Score
from core.sessions.values import Block, Format

# Nobody is asked who lifts less than three quarters more than the strongest whom they may be (estimate): a doubt hurts.
STRONGEST, TIMES = 0.99, 1.75
# No runner has been measured faster at any moment of a sprint (from memory; published peaks lie near 12.3 m/s), and
# nothing in a gym that counts metres is moved faster, but a bike.
FASTEST_M_PER_S: Final = 12.5
_MINUTE_S: Final = 60
# How hard something was goes to ten; nobody lifts so much less than the lightest load that is written (estimate).
_MOST_EFFORT: Final = 10
_TIMES_LIGHTER: Final = 3


def is_rather_an_effort(text: str, score: Score, block: Block) -> bool:
    """`9`, of sets that are written with 80 kg: how hard it was, as likely as what was lifted."""
    bare = text.strip(" .,!")
    written = [float(load) for line in block.lines for load in line.loads_kg]
    if not bare.isdigit() or int(bare) > _MOST_EFFORT or score.unit != "kg" or not written:
        return False
    return int(bare) * _TIMES_LIGHTER < min(written)


def is_beyond_anybody(score: Score, block: Block) -> bool:
    """Whether it would be faster than anybody runs, whoever they are: 4.2 km in eight times twenty seconds."""
    if any("bike" in line.movement for line in block.lines):
        return False
    metres, seconds = _speed_told(score, block)
    return bool(metres and seconds) and metres > FASTEST_M_PER_S * seconds


def _speed_told(score: Score, block: Block) -> tuple[float, float]:
    """The metres and the seconds of a score; 0 where the part doesn't tell them."""
    if score.value is None:
        return 0.0, 0.0
    if score.unit == "m":
        return score.value, _seconds_of(block)
    of_time = block.format in {Format.FOR_TIME, Format.TIME_TRIAL} and score.unit == "s" and not score.capped
    metres = sum(float(line.amount or 0) for line in block.lines if line.unit == "m")
    return (metres * (block.rounds or 1), score.value) if of_time else (0.0, 0.0)


def _seconds_of(block: Block) -> float:
    """How long is worked in a part that says so by the clock, rests left out where they are told; else 0."""
    if block.minutes:
        return float(block.minutes) * _MINUTE_S
    each = (
        block.work_s
        or (block.every_s or 0) - (block.rest_s or 0)
        or sum(float(line.amount or 0) for line in block.lines if line.unit == "s")
    )
    return float(each) * (block.rounds or 1)


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
