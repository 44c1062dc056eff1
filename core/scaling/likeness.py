"""What a way costs whoever does it: how far it lies from what the coach wrote."""

from collections import defaultdict, deque
from collections.abc import Iterator
from functools import lru_cache
from typing import NamedTuple

from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.movements.values import Part, Pattern
from core.scaling.amounts import LONG_S, Done
from core.scaling.costs import Charge, Costs
from core.scaling.parts import Kept, kept_of
from core.scaling.ways import Near

# What anybody has to lean on or walk up is no machine.
FURNITURE = frozenset({"chair", "table", "stairs"})

# Variants of a movement that no ladder joins lie so many steps apart (estimate).
FARTHEST = 2
# Whatever trains the breath so much is done for it (estimate).
BREATHES = 0.5

# What isn't named as a stand-in comes behind so many that are; of the movement itself its steps say more.
MOST_UNNAMED = 12
MOST_OF_ITS_OWN = 2

# Nobody holds still for a heavy lift (estimate).
HEAVY_HOLD = 3
# Without heavy things a hard way of another movement that is named is as near as so many steps (estimate).
AWAY_FROM_HEAVY = 2


class Compared(NamedTuple):
    """All of a line and of a way of it that says what the way costs whoever does it.

    `units`: written, and of the way; `one_sided`: one of the two works side by side and the other doesn't; `climbs`:
    the block's repetitions are a ladder; `heavy`: it is a heavy set, for want of which a hard one of another is meant.
    """

    written: str
    way: str
    units: tuple[AmountUnit, AmountUnit]
    one_sided: bool
    climbs: bool
    heavy: bool


class Lie(NamedTuple):
    """How a way lies to the written one; `charges` are what it costs whoever does it, `base` their sum."""

    near: Near
    charges: tuple[Charge, ...] = ()
    base: int = 0


@lru_cache(maxsize=65536)
def lie_of(of: Compared, catalogue: Catalogue, costs: Costs) -> Lie:
    """How a way lies to the written one, and what it costs by itself."""
    if of.way == of.written:
        return Lie(Near.WRITTEN)
    counted = ((entry, round(count * getattr(costs, entry))) for entry, count in _charges(of, catalogue))
    charges = tuple(Charge(entry, points) for entry, points in counted if points)
    near = _nearness(catalogue.variant(of.written), catalogue.variant(of.way))
    return Lie(near, charges, sum(charge.points for charge in charges))


def lie_beside(of: Compared, offered: tuple[str, ...], catalogue: Catalogue, costs: Costs) -> Lie:
    """The same where the line offers other ways as well: beside the one that it lies nearest to, the first first."""
    lies = [lie_of(of._replace(written=one), catalogue, costs) for one in offered]
    for place, lie in enumerate(lies, 1):
        charge = Charge("offered", place * costs.offered)
        lies[place - 1] = Lie(lie.near, (charge, *lie.charges), lie.base + charge.points)
    return min((lie_of(of, catalogue, costs), *lies), key=lambda lie: lie.base)


def _nearness(written: Done, way: Done) -> Near:
    if way[0] is written[0]:
        return Near.VARIANT
    return Near.ELSEWHERE if kept_of(written, way).main_lost else Near.MOVEMENT


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


def _charges(of: Compared, catalogue: Catalogue) -> Iterator[tuple[str, float]]:
    written, way = catalogue.variant(of.written), catalogue.variant(of.way)
    same = way[0] is written[0]
    places, away = _unnamed(of, catalogue)
    if same:
        yield "step", _steps(of.written, of.way, catalogue)
    elif of.heavy and places < MOST_UNNAMED:
        yield "step", AWAY_FROM_HEAVY
    else:
        yield "other_movement", 1
        yield "step", away / 2
    yield "not_named", min(places, MOST_OF_ITS_OWN) if same else places
    kept = kept_of(written, way)
    yield "lost_part", kept.lost
    yield "lost_main", kept.main_lost
    yield "added_part", kept.added
    goes_on = written[0].pattern is Pattern.TRAVEL and not written[1].make_believe
    if (goes_on or not same) and written[0].main_of(written[1]) is Part.BREATH:
        yield "nothing_used", not way[1].holds and all(FURNITURE.intersection(need) for need in way[1].needs)
    yield "one_sided", of.one_sided
    yield "other_counting", _changes_counting(of, written, way) * (HEAVY_HOLD if of.heavy else 1)
    yield "long_piece", _is_long(of.units[1], way) and not _is_long(of.units[0], written)


def _unnamed(of: Compared, catalogue: Catalogue) -> tuple[int, int]:
    """One for each stand-in that is named before it, and for each step from the nearest one; and these steps.

    What lies beyond one that is named late never comes before it; whoever sits looks among what is for them.
    """
    sits = catalogue.variant(of.way)[1].is_on_a_seat
    named = _named(of.written, sits, catalogue).get(_home(of.way), ())
    named = [one for one in named if one[1] == of.way] or named
    found = [(_steps(name, of.way, catalogue), place) for place, name in named]
    if not found:
        return MOST_UNNAMED, 0
    away, place = min(found)
    return min((MOST_UNNAMED, 0), (place + away, away))


@lru_cache(maxsize=4096)
def _named(written: str, sits: bool, catalogue: Catalogue) -> dict[str, list[tuple[int, str]]]:
    """What is named beside it by movement, each with how many stand before it; of those for the seated, who sits."""
    variant = catalogue.variant(written)[1]
    found = defaultdict[str, list[tuple[int, str]]](list)
    for names in (variant.easier, variant.harder, catalogue.instead(written)):
        before = 0
        for name in names:
            found[_home(name)].append((before, name))
            before += not sits or catalogue.variant(name)[1].is_on_a_seat
    return found


def _home(name: str) -> str:
    return name.partition("/")[0]


def _changes_counting(of: Compared, written: Done, way: Done) -> bool:
    """A hold for repetitions, or the other way round.

    The trunk's work is to hold; but no hold climbs a ladder, and nobody holds still to be out of breath.
    """
    if (
        written[0].trains_of(written[1]).get(Part.BREATH, 0.0) >= BREATHES
        and written[0].pattern is Pattern.TRUNK
    ):
        return way[0].k is not None and way[0].unit_of(way[1]) is not written[0].unit_of(written[1])
    if way[0].pattern is written[0].pattern is Pattern.MOBILITY:
        return set(of.units) == {AmountUnit.REPS, AmountUnit.SECONDS}
    if way[0].k is None or written[0].k is None:
        return (way[0].k is None) is not (written[0].k is None)
    if written[0].pattern is Pattern.TRUNK and not of.climbs:
        return False
    return set(of.units) == {AmountUnit.REPS, AmountUnit.SECONDS}


def _is_long(unit: AmountUnit, done: Done) -> bool:
    return done[0].k is not None and unit is AmountUnit.REPS and done[1].seconds.value >= LONG_S


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
