"""Of what a coach leaves to each (`12 cal row or 200 m run`) the one that an athlete does: what is nearest for them."""

from collections.abc import Callable
from functools import partial
from itertools import chain

from core.movements.lookup import Catalogue
from core.scaling.athlete import Athlete
from core.scaling.costs import Costs
from core.scaling.options import cheapest
from core.scaling.orders import NO_ORDERS
from core.scaling.plan import plan_of
from core.sessions.values import Line, Session

SECTIONS = ("buy_in", "lines", "cash_out")


def as_chosen(
    session: Session, athlete: Athlete, catalogue: Catalogue, table: Costs | None = None
) -> Session:
    """The session with one thing in each line: what costs least for this athlete, the first of what costs the same.

    Each is measured against what the coach wrote of it; the line keeps the coach's words for all of them.
    """
    most = max((len(line.choices) for line in session.every_line), default=0)
    if not most:
        return session
    ways = [_each(session, partial(_taken, at=at)) for at in range(most + 1)]
    costs = [_costs(one, athlete, catalogue, table) for one in ways]
    best = iter([min(range(most + 1), key=lambda at: each[at]) for each in zip(*costs, strict=True)])
    return _each(session, lambda line: _taken(line, next(best)))


def _taken(line: Line, at: int) -> Line:
    """The first, or one of the others; the first again where there are no more."""
    if not 0 < at <= len(line.choices):
        return line.model_copy(update={"choices": ()})
    chosen = line.choices[at - 1]
    return chosen.model_copy(update={"written": line.written, "station": line.station})


def _costs(session: Session, athlete: Athlete, catalogue: Catalogue, table: Costs | None) -> list[int]:
    plans = plan_of(session, catalogue, athlete.pair, table)
    lines = chain.from_iterable(chain.from_iterable(block.sections for block in plans))
    return [cheapest(line, athlete, NO_ORDERS).cost for line in lines]


def _each(session: Session, become: Callable[[Line], Line]) -> Session:
    """The session with every line become another, in the order in which they are done."""
    blocks = (
        block.model_copy(update={part: tuple(map(become, getattr(block, part))) for part in SECTIONS})
        for block in session.blocks
    )
    return session.model_copy(update={"blocks": tuple(blocks)})
