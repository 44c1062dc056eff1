"""The blocks of a session with what is chosen for each of their lines, one after the other."""

from collections.abc import Iterator
from itertools import chain
from typing import NamedTuple

from core.movements.lookup import Catalogue
from core.scaling.athlete import Athlete
from core.scaling.called_for import with_called_for
from core.scaling.costs import Costs
from core.scaling.easing import KEPT, NO_CUT, Cut
from core.scaling.either import as_chosen
from core.scaling.lines import change_of
from core.scaling.orders import Orders
from core.scaling.plan import plan_for, plan_of
from core.scaling.rows import Row, chosen_rows, usual_of
from core.scaling.values import Change
from core.scaling.ways import BlockPlan
from core.scaling.works import Option
from core.sessions.values import Session


class Chosen(NamedTuple):
    """A block as it is done: `whole` is what was planned of it, `plan` what is left of that.

    `sections`: its lines with their options, `picks` the place of each one's choice; neither for a block that is left
    out. `orders`: what bound the choice, what stood in before included.
    """

    number: int
    plan: BlockPlan
    whole: BlockPlan
    orders: Orders
    sections: list[list[Row]] | None = None
    picks: tuple[int, ...] = ()

    @property
    def rows(self) -> tuple[Row, ...]:
        """All its lines in their order."""
        return tuple(chain.from_iterable(self.sections or ()))

    @property
    def done(self) -> tuple[tuple[Row, Option], ...]:
        """Each line with what is chosen for it."""
        return tuple((row, row.options[pick]) for row, pick in zip(self.rows, self.picks, strict=True))


def chosen_blocks(
    session: Session,
    athlete: Athlete,
    orders: Orders,
    catalogue: Catalogue,
    *,
    table: Costs | None = None,
    cut: Cut = NO_CUT,
) -> Iterator[Chosen]:
    """Every block of a session. Raises UnknownMovement for a line that the catalogue doesn't know."""
    session = as_chosen(session, athlete, catalogue, table)
    whole = plan_of(session, catalogue, athlete.pair, table)
    plans = plan_for(session, athlete.easing, catalogue, athlete.pair, table, cut)
    is_less = plans is not whole
    plans, whole = (with_called_for(one, orders.pins, catalogue, table) for one in (plans, whole))
    for number, (plan, all_of_it) in enumerate(zip(plans, whole, strict=True), 1):
        if not cut.of(number - 1):
            yield Chosen(number, plan, all_of_it, orders)
            continue
        usual = usual_of(number, all_of_it, athlete, orders) if is_less else None
        made = Chosen(number, plan, all_of_it, orders, *chosen_rows(number, plan, athlete, orders, usual))
        yield made
        if plan.block.kind not in KEPT:
            orders = orders.model_copy(update={"stood_in": orders.stood_in | _stand_ins(made)})


def _stand_ins(made: Chosen) -> frozenset[tuple[str, str]]:
    """The movements that stand in for others there, each with the line that it stands for."""
    return frozenset(
        (option.way.movement.id, row.plan.written)
        for row, option in made.done
        if option.way is not None and change_of(row.plan, option) is Change.MOVEMENT
    )
