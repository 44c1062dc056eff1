"""What the written line makes of each hold of a way: another thing or not, what it costs, how heavy it may be."""

from collections.abc import Iterator
from functools import lru_cache
from typing import NamedTuple

from core.movements.lookup import Catalogue
from core.movements.values import Hold
from core.scaling.costs import Charge, Costs
from core.scaling.gear import BARBELL
from core.scaling.ways import Grip

# Who lacks the light weight of an easy line gets no heavy one instead: at most a third more than what is written, where
# nothing shows that more would go (common practice, no source), and twice as much where both arms do what one does. Of
# another movement kilos say less: who has no ball may squat and press what weighs twice as much (estimate).
MOST_HEAVIER = 4 / 3 + 1e-6
MOST_OF_ANOTHER = 2.0 + 1e-6
BOTH_ARMS = 2.0
# Less than this share of the written kilos is another line; what one arm lifts for both, half of that.
HALF = 0.5
# What is swung or caught by a bag's strap counts so many times as improvised (estimate).
SWUNG_BY_A_STRAP = 3


class Beside(NamedTuple):
    """What a hold is compared with: the hold and the implement that are written.

    `same`: it is the same movement; `both_arms` do what one does there; `one_arm` does what both do; `one_overhead`:
    both hands bring one weight overhead, where the line has none; `swung`: it is swung or caught.
    """

    meant: Hold | None
    implement: str | None
    same: bool
    both_arms: bool
    one_arm: bool = False
    one_overhead: bool = False
    swung: bool = False


@lru_cache(maxsize=16384)
def grips_of(way: str, beside: Beside, catalogue: Catalogue, costs: Costs) -> tuple[Grip, ...]:
    """The holds of a way, and what the written line makes of them."""
    return tuple(_grip(hold, beside, catalogue, costs) for hold in catalogue.variant(way)[1].holds)


def _grip(hold: Hold, beside: Beside, catalogue: Catalogue, costs: Costs) -> Grip:
    meant = beside.meant
    ratio = meant.count / hold.count if meant else 1.0
    factor = ratio * meant.factor / hold.factor if meant else 1.0
    most = MOST_HEAVIER if beside.same else MOST_OF_ANOTHER
    written, heaviest = (BOTH_ARMS, BOTH_ARMS) if beside.both_arms else (1.0, most)
    charges = _charges(hold, beside, catalogue, costs)
    return Grip(
        hold,
        (hold.implement, hold.count),
        hold.factor * hold.count,
        _is_other(hold, beside, catalogue),
        factor if beside.same else None,
        (factor if beside.same else ratio) * heaviest,
        (factor if beside.same else ratio) * written,
        HALF / BOTH_ARMS if beside.one_arm else HALF,
        tuple(charge for charge in charges if charge.points),
    )


def _charges(hold: Hold, beside: Beside, catalogue: Catalogue, costs: Costs) -> Iterator[Charge]:
    meant, written = beside.meant, beside.implement
    if catalogue.implement(hold.implement).improvised:
        times = SWUNG_BY_A_STRAP if beside.swung else 1
        yield Charge("improvised", 0 if hold.implement == written else times * costs.improvised)
    elif hold.implement != (written or (meant and meant.implement)):
        yield Charge("other_implement", costs.other_implement if written else 0)
    if beside.one_overhead and not catalogue.implement(hold.implement).improvised:
        yield Charge("one_overhead", costs.one_overhead)
    if meant is not None and beside.same and _weights(hold, beside) != _weights(meant, beside):
        yield Charge("other_count", costs.other_count)


def _weights(hold: Hold, beside: Beside) -> int:
    """How many there are in the hands: in the same movement two stand for a bar, as each hand has its end of it."""
    bar = beside.same and beside.meant is not None and beside.meant.implement == hold.implement == BARBELL
    return 2 if bar else hold.count


def _is_other(hold: Hold, beside: Beside, catalogue: Catalogue) -> bool:
    """Where the coach named none, any implement made for it is as written; an improvised one never is."""
    meant, written = beside.meant, beside.implement
    if written is not None and hold.implement != written:
        return True
    if meant is not None and hold.count != meant.count:
        return True
    return written is None and catalogue.implement(hold.implement).improvised
