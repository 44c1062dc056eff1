"""What a way costs whoever does it: how far it lies from what the coach wrote."""

from collections import deque
from collections.abc import Iterator
from functools import lru_cache

from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.movements.values import Demand, Part, Pattern
from core.scaling.amounts import LONG_S
from core.scaling.costs import Charge, Costs
from core.scaling.parts import Kept, kept_of
from core.scaling.ways import Near, Way
from core.sessions.values import Block

# Not added to a line for want of something nearer: overhead, thrown, jumped, upside down.
RISKS = frozenset({Demand.OVERHEAD, Demand.FAST_LOAD, Demand.JUMPING, Demand.UPSIDE_DOWN})

# Variants of a movement that no ladder joins lie so many steps apart (estimate).
FARTHEST = 2


def charged(block: Block, way: Way, written: Way, catalogue: Catalogue, costs: Costs) -> Way:
    """The way with what it costs by itself."""
    charges = tuple(charge for charge in _charges(block, way, written, catalogue, costs) if charge.points)
    return way._replace(charges=charges, base=sum(charge.points for charge in charges))


def nearness(way: Way, written: Way) -> Near:
    """How a way lies to the written one."""
    if way.id == written.id:
        return Near.WRITTEN
    if way.movement is written.movement:
        return Near.VARIANT
    return Near.ELSEWHERE if _kept(way, written).main_lost else Near.MOVEMENT


@lru_cache(maxsize=4096)
def stand_ins(written: str, catalogue: Catalogue) -> tuple[str, ...]:
    """Whatever anybody could be given for a variant: what the graph leads to, and what is for the same by its parts."""
    near, done = {reach.id for reach in catalogue.reachable(written)}, catalogue.variant(written)
    found = (name for name in catalogue.ids() if name != written)
    found = (
        name for name in found if name in near or _is_for_the_same(kept_of(done, catalogue.variant(name)))
    )
    return tuple(name for name in found if not _is_of_other_arms(written, name, catalogue))


def _is_of_other_arms(written: str, name: str, catalogue: Catalogue) -> bool:
    """What bends the arms for what stretches them, unless a ladder or a list joins the two."""
    (movement, _), (other, _) = catalogue.variant(written), catalogue.variant(name)
    if other is movement or other.pattern is not Pattern.ARMS:
        return False
    return name not in {*catalogue.below(written), *catalogue.above(written), *catalogue.instead(written)}


def _is_for_the_same(kept: Kept) -> bool:
    """Whether it trains what the line is for, and nothing else above all."""
    return kept.is_for_it and not kept.main_lost


def _kept(way: Way, written: Way) -> Kept:
    return kept_of((written.movement, written.variant), (way.movement, way.variant))


def _charges(block: Block, way: Way, written: Way, catalogue: Catalogue, costs: Costs) -> Iterator[Charge]:
    if way.id == written.id:
        return
    if way.movement is written.movement:
        yield Charge("step", costs.step * _steps(written.id, way.id, catalogue))
    else:
        yield Charge("other_movement", costs.other_movement)
    yield Charge("not_named", _unnamed(way, written, catalogue, costs.not_named))
    kept = _kept(way, written)
    yield Charge("lost_part", round(costs.lost_part * kept.lost))
    yield Charge("lost_main", round(costs.lost_main * kept.main_lost))
    yield Charge("added_part", round(costs.added_part * kept.added))
    if written.movement.main_of(written.variant) is Part.BREATH and not (
        way.variant.needs or way.variant.holds
    ):
        yield Charge("nothing_used", costs.nothing_used if way.movement is not written.movement else 0)
    if way.per_side is not written.per_side:
        yield Charge("one_sided", costs.one_sided)
    if RISKS.intersection(way.variant.demands).difference(_risked(written)):
        yield Charge("added_risk", costs.added_risk)
    if _changes_counting(block, way, written):
        yield Charge("other_counting", costs.other_counting)
    if _is_long(way) and not _is_long(written):
        yield Charge("long_piece", costs.long_piece)


def _unnamed(way: Way, written: Way, catalogue: Catalogue, most: int) -> int:
    """A point for each stand-in that is named before it, as much as `most` where another movement isn't named.

    Of the variants of one movement no more than a sixth of that: their steps say the rest.
    """
    lists = (written.variant.easier, written.variant.harder, catalogue.instead(written.id))
    place = min([most, *(names.index(way.id) for names in lists if way.id in names)])
    return min(place, most // 6) if way.movement is written.movement else place


def _risked(written: Way) -> set[Demand]:
    """The risks that are in what the coach wrote: every landing, a running step too, is as much as a small jump."""
    demands = set(written.variant.demands)
    return demands | {Demand.JUMPING} if Demand.IMPACT in demands else demands


def _changes_counting(block: Block, way: Way, written: Way) -> bool:
    """A hold for repetitions, or the other way round. The trunk's work is to hold; but no hold climbs a ladder."""
    if way.movement.k is None or written.movement.k is None:
        return (way.movement.k is None) is not (written.movement.k is None)
    if written.movement.pattern is Pattern.TRUNK and not block.scheme:
        return False
    return {written.unit, way.unit} == {AmountUnit.REPS, AmountUnit.SECONDS}


def _is_long(way: Way) -> bool:
    return way.movement.k is not None and way.unit is AmountUnit.REPS and way.variant.seconds.value >= LONG_S


def _steps(start: str, to: str, catalogue: Catalogue) -> int:
    return _ladder(start, catalogue).get(to, FARTHEST)


@lru_cache(maxsize=4096)
def _ladder(start: str, catalogue: Catalogue) -> dict[str, int]:
    """How many steps up and down every variant of the same movement lies from one of them."""
    home = start.partition("/")[0]
    steps, waiting = {start: 0}, deque([start])
    while waiting:
        here = waiting.popleft()
        _, variant = catalogue.variant(here)
        for near in variant.easier + variant.harder:
            if near not in steps and steps[here] < FARTHEST:
                steps[near] = steps[here] + 1
                waiting.append(near)
    return {name: count for name, count in steps.items() if name.partition("/")[0] == home}
