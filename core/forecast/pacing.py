"""How to get to the expected score: the pace of a round, the half, and what to break up from the start."""

from collections.abc import Iterator
from statistics import median_high
from typing import Literal

from core.forecast.floor import Floor
from core.forecast.values import Broken, Pacing
from core.scaling.values import VersionBlock

# Fewer than so many are done as they come, and more than so many parts are told by nobody.
LEAST, MOST_PARTS = 5, 4
BAND = "band"
# From so many on people count a part by fives.
BY_FIVES, FIVE = 15, 5


def pacing_of(
    floor: Floor,
    block: VersionBlock,
    *,
    round_s: float | None = None,
    half_s: float | None = None,
    rounds_s: float | None = None,
    rest: Literal["in", "on top"] | None = None,
) -> Pacing:
    """`floor`: after the work was done on it."""
    broken = tuple(_broken(floor, block))
    return Pacing(round_s=round_s, rest=rest, half_s=half_s, rounds_s=rounds_s, broken=broken)


def _broken(floor: Floor, block: VersionBlock) -> Iterator[Broken]:
    """Each movement once, at its first line; a band is pulled as hard as it goes in one."""
    told = set[tuple[str, str]]()
    for line in block.lines:
        done = floor.parts.get(line.line, [])
        way = line.movement, line.variant
        if not done or line.amount is None or line.implement == BAND or way in told:
            continue
        told.add(way)
        parts = median_high(len(one) for one in done)
        amount = round(line.amount)
        if parts > 1 and amount >= LEAST:
            yield Broken(
                line=line.line,
                movement=line.movement,
                variant=line.variant,
                parts=in_parts(amount, min(parts, MOST_PARTS)),
            )


def in_parts(amount: int, parts: int) -> tuple[int, ...]:
    """So many in so many parts, each a little less than the one before: 10 in two is 6 + 4; of many by fives."""
    if parts <= 1 or amount < parts:
        return (amount,)
    first = min(amount - parts + 1, -(-amount // parts) + (1 if amount >= 4 * parts else 0))
    by_fives = FIVE * round(first / FIVE)
    if first >= BY_FIVES and amount <= by_fives * parts and by_fives <= amount - parts + 1:
        first = by_fives
    return (first, *in_parts(amount - first, parts - 1))
