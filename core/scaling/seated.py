"""What a way costs whoever sits: off the seat, bowed with a weight, or one more push for a shoulder that pushes."""

from collections.abc import Iterator
from typing import Final

from core.movements.values import Demand, Part, Pattern
from core.scaling.barriers import flags
from core.scaling.careful import DOWN
from core.scaling.costs import Charge
from core.scaling.ways import LinePlan, Way

BOW = flags({Demand.FORWARD_BEND, Demand.SPINAL_LOAD})
PUSHES: Final = frozenset({Part.PUSH, Part.PRESS})
# From such a share on it counts as a push (estimate).
SOME_PUSH = 0.5


def of_a_seat(plan: LinePlan, way: Way) -> Iterator[Charge]:
    """For whoever sits: what isn't done on the seat, and a bow with a weight, which tips a wheelchair."""
    if way.demands & BOW == BOW:
        yield Charge("added_risk", plan.costs.added_risk)
    if _is_a_push(way) and not _may_be_a_push(plan.ways[0]):
        yield Charge("pushes_again", plan.costs.pushes_again)
    if not (
        way.variant.is_on_a_seat or (way.movement.pattern is Pattern.MOBILITY and not way.demands & DOWN)
    ):
        yield Charge("off_the_seat", plan.costs.off_the_seat)


def _is_a_push(way: Way) -> bool:
    trained = way.movement.trains_of(way.variant)
    return any(trained.get(part, 0.0) >= SOME_PUSH for part in PUSHES)


def _may_be_a_push(written: Way) -> bool:
    """Whether the line pushes, or goes on for breath, as who sits does by pushing."""
    return written.movement.main_of(written.variant) in {*PUSHES, Part.BREATH}
