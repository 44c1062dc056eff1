"""What the written line makes of each hold of a way: another thing or not, what it costs, how heavy it may be."""

from collections.abc import Iterator

from core.movements.lookup import Catalogue
from core.movements.values import Hold
from core.scaling.costs import Charge, Costs
from core.scaling.ways import Grip, Near, Way
from core.sessions.values import Line

# Who lacks the light weight of an easy line gets no heavy one instead: at most a third more than what is written, where
# nothing shows that more would go (common practice, no source), and twice as much where both arms do what one does.
MOST_HEAVIER = 4 / 3 + 1e-6
BOTH_ARMS = 2.0


def grips_of(
    way: Way, line: Line, written: Way, meant: Hold | None, catalogue: Catalogue, costs: Costs
) -> tuple[Grip, ...]:
    """The holds of a way, and what the written line, of which `meant` is the hold, makes of them."""
    return tuple(_grip(hold, (way, written), line, meant, catalogue, costs) for hold in way.variant.holds)


def _grip(
    hold: Hold, ways: tuple[Way, Way], line: Line, meant: Hold | None, catalogue: Catalogue, costs: Costs
) -> Grip:
    way, written = ways
    same = way.near <= Near.VARIANT
    ratio = meant.count / hold.count if meant else 1.0
    factor = ratio * meant.factor / hold.factor if meant else 1.0
    return Grip(
        hold,
        (hold.implement, hold.count),
        hold.factor * hold.count,
        _is_other(hold, line, meant, catalogue),
        factor if same else None,
        (factor if same else ratio) * (BOTH_ARMS if written.per_side and not way.per_side else MOST_HEAVIER),
        tuple(charge for charge in _charges(hold, line, meant, catalogue, costs) if charge.points),
    )


def _charges(
    hold: Hold, line: Line, meant: Hold | None, catalogue: Catalogue, costs: Costs
) -> Iterator[Charge]:
    if catalogue.implement(hold.implement).improvised:
        yield Charge("improvised", 0 if hold.implement == line.implement else costs.improvised)
    elif hold.implement != (line.implement or (meant and meant.implement)):
        yield Charge("other_implement", costs.other_implement if line.implement else costs.inexact)
    if meant is not None and hold.count != meant.count:
        yield Charge("other_count", costs.other_count)


def _is_other(hold: Hold, line: Line, meant: Hold | None, catalogue: Catalogue) -> bool:
    """Where the coach named none, any implement made for it is as written; an improvised one never is."""
    if line.implement is not None and hold.implement != line.implement:
        return True
    if meant is not None and hold.count != meant.count:
        return True
    return line.implement is None and catalogue.implement(hold.implement).improvised
