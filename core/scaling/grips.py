"""What the written line makes of each hold of a way: another thing or not, and how heavy it may be."""

from math import inf

from core.movements.lookup import Catalogue
from core.movements.values import Hold
from core.scaling.ways import Grip, Way
from core.sessions.values import Line

# Who lacks the light weight of an easy line gets no heavy bar instead: at most so many times what is written may be in
# the hands in another movement (estimate: both arms for one).
MOST_OTHERWISE = 2.0


def grips_of(
    way: Way, line: Line, written: Way, meant: Hold | None, catalogue: Catalogue
) -> tuple[Grip, ...]:
    """The holds of a way, and what the written line, of which `meant` is the hold, makes of them."""
    return tuple(
        Grip(
            hold,
            (hold.implement, hold.count),
            hold.factor * hold.count,
            _is_other(hold, line, meant, catalogue),
            _heaviest(hold, line, meant, MOST_OTHERWISE if way.movement is not written.movement else None),
        )
        for hold in way.variant.holds
    )


def _is_other(hold: Hold, line: Line, meant: Hold | None, catalogue: Catalogue) -> bool:
    """Where the coach named none, any implement made for it is as written; an improvised one never is."""
    if line.implement is not None and hold.implement != line.implement:
        return True
    if meant is not None and hold.count != meant.count:
        return True
    return line.implement is None and catalogue.implement(hold.implement).improvised


def _heaviest(hold: Hold, line: Line, meant: Hold | None, otherwise: float | None) -> tuple[float, float]:
    """For the two loads of a pair. `otherwise`: how many times the written load may be held in another movement."""
    if meant is None or not line.loads_kg:
        return inf, inf
    ratio = otherwise or meant.factor / hold.factor
    ratio *= meant.count / hold.count
    return float(line.loads_kg[0]) * ratio, float(line.loads_kg[-1]) * ratio
