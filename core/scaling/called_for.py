"""What a coach or an athlete calls for by name, though the graph leads nowhere near it: as safe as any other way."""

from collections.abc import Iterable

from core.movements.lookup import Catalogue
from core.scaling.costs import Costs
from core.scaling.orders import Pin
from core.scaling.plan import ways_to
from core.scaling.rows import PARTS
from core.scaling.values import Spot
from core.scaling.ways import BlockPlan, LinePlan, Reachable


def with_called_for(
    plans: tuple[BlockPlan, ...], pins: Iterable[Pin], catalogue: Catalogue, table: Costs | None = None
) -> tuple[BlockPlan, ...]:
    """The plans of a session, where each line also leads to the movement that its pin names."""
    named = {Spot(pin.block, pin.part, pin.line): pin.movement for pin in pins if pin.movement}
    if not named:
        return plans
    return tuple(
        BlockPlan(
            block.block,
            *(
                tuple(
                    leading_to(block, line, named.get(Spot(number, part, place)), catalogue, table)
                    for place, line in enumerate(lines, 1)
                )
                for part, lines in zip(PARTS, block.sections, strict=True)
            ),
        )
        for number, block in enumerate(plans, 1)
    )


def leading_to(
    block: BlockPlan, line: LinePlan, movement: str | None, catalogue: Catalogue, table: Costs | None = None
) -> LinePlan:
    """The line with the ways of that movement beside its own; itself where it has them."""
    ways = (*line.ways, *line.harder)
    if movement is None or any(way.movement.id == movement for way in ways):
        return line
    ways = (*line.ways, *ways_to(block.block, line, movement, catalogue, table))
    on_foot = (way for way in ways if line.ways[0].variant.seated or not way.variant.seated)
    return line._replace(ways=ways, reachable=Reachable(on_foot), sitting=Reachable(ways))
