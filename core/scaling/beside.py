"""All ways in which a line could be done, beside the written one: what lines that ask for the same share."""

from collections.abc import Collection, Iterable, Iterator
from functools import lru_cache
from operator import attrgetter
from typing import NamedTuple

from core.ability.demand import body_share
from core.ability.kinship import kin_of
from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.movements.values import Demand, Hold, Pattern, Variant
from core.scaling.amounts import Asked, Done, amount_of, rounded_to
from core.scaling.barriers import bars_of, demands_of, flags
from core.scaling.costs import Costs
from core.scaling.doses import dose_of
from core.scaling.grips import Beside, grips_of
from core.scaling.likeness import Compared, lie_beside, stand_ins
from core.scaling.ways import Near, Reachable, Way

# Up to here a way is about as hard as the written one: fists spare the wrists and cost a little (estimate).
AS_HARD = 1.1

# Whose resistance nobody knows in kilos: it is neither nothing in the hands, nor ever too light.
RESISTS = frozenset({"band"})

# What costs more than this whoever does it stands in for nothing.
FARTHEST = 200

STEPS_UP = "step-up"

SWUNG = flags({Demand.FAST_LOAD})
ONE_OVERHEAD = flags({Demand.WRIST_CARRIES})

# About 0.1 MB each: what is asked for in the sessions of these days is much the same.
MOST_MEANT = 400


class Meant(NamedTuple):
    """What is written, as far as it says how other ways lie to it: a heavy set is met by a hard one of another.

    `offered`: what the coach leaves them to do as well.
    """

    written: str
    asked: Asked
    hold: Hold | None
    implement: str | None
    heavy: bool
    offered: tuple[str, ...] = ()


class Neighbours(NamedTuple):
    """The ways of a line, the cheapest first: `ways[0]` is what is written.

    `reachable`: those on one's feet, to be looked up by what is there; `sitting`: those with what stands in only for
    the seated. `harder`: ways of an unloaded line that nobody is given unless they ask.
    """

    ways: tuple[Way, ...]
    reachable: Reachable
    sitting: Reachable
    harder: tuple[Way, ...]


@lru_cache(maxsize=MOST_MEANT)
def neighbours_of(meant: Meant, catalogue: Catalogue, costs: Costs) -> Neighbours:
    """Every way that could stand for what is meant, and lies no farther than anything may."""
    offered = (name for one in meant.offered for name in (one, *stand_ins(one, catalogue)))
    names = dict.fromkeys((meant.written, *stand_ins(meant.written, catalogue), *offered))
    found = ways_among(names, meant, catalogue, costs)
    ways = sorted((way for way in found if way.base <= FARTHEST), key=attrgetter("base"))
    written = ways[0]
    easier, usual, harder = catalogue.below(meant.written), list[Way](), list[Way]()
    for way in ways:
        (usual if written.holds or not _is_harder(way, written, easier) else harder).append(way)
    sits = written.variant.seated
    return Neighbours(
        tuple(usual),
        Reachable(way for way in usual if sits or not way.variant.seated),
        Reachable(usual),
        tuple(way for way in harder if sits or not way.variant.seated),
    )


def ways_among(names: Iterable[str], meant: Meant, catalogue: Catalogue, costs: Costs) -> Iterator[Way]:
    """These ways beside the written one: how they lie to it, and what may be in the hands."""
    done = catalogue.variant(meant.written)
    written = way_of(meant.written, meant.asked, done, catalogue)
    for name in names:
        way = way_of(name, meant.asked, done, catalogue)
        units, one_sided = (written.unit, way.unit), way.per_side is not written.per_side
        climbs = meant.asked.top is not None
        compared = Compared(meant.written, name, units, one_sided, climbs, meant.heavy)
        near, charges, base = lie_beside(compared, meant.offered, catalogue, costs)
        grips = grips_of(name, _beside(way, written, meant, near), catalogue, costs) if way.holds else ()
        cheapest = min((sum(charge.points for charge in grip.charges) for grip in grips), default=0)
        yield way._replace(near=near, grips=grips, charges=charges, base=base, least=base + cheapest)


def _beside(way: Way, written: Way, meant: Meant, near: Near) -> Beside:
    return Beside(
        meant.hold,
        meant.implement,
        same=near <= Near.VARIANT,
        both_arms=written.per_side and not way.per_side,
        one_arm=way.variant.one_handed and not written.variant.one_handed,
        one_overhead=bool(way.demands & ~written.demands & ONE_OVERHEAD),
        swung=bool(way.demands & SWUNG),
    )


def way_of(name: str, asked: Asked, written: Done, catalogue: Catalogue) -> Way:
    """A way with as much of it as stands for what is asked; beside nothing yet."""
    done = catalogue.variant(name)
    amount = amount_of(asked, written, done)
    return _bare_way(name, catalogue)._replace(
        unit=amount.unit,
        per_side=amount.per_side,
        amount=amount.shown,
        set_amount=amount.in_a_set,
        less=amount.less,
        step=rounded_to(amount.unit, done, per_side=amount.per_side),
    )


@lru_cache(maxsize=4096)
def _bare_way(variant_id: str, catalogue: Catalogue) -> Way:
    """What a way is whatever the line, worked out once."""
    movement, variant = catalogue.variant(variant_id)
    return Way(
        variant_id,
        movement,
        variant,
        Near.WRITTEN,
        movement.unit_of(variant),
        per_side=False,
        amount=None,
        set_amount=None,
        demands=flags(demands_of(movement, variant)),
        bars=bars_of(movement, variant),
        kin=kin_of(movement, variant),
        counts_reps=movement.unit_of(variant) is AmountUnit.REPS,
        needs=tuple(map(frozenset, variant.needs)),
        holds=frozenset((hold.implement, hold.count) for hold in variant.holds),
        share=None if variant.needs and variant.body_share.by_height else variant.body_share.value,
        met=variant.met.value if variant.met else None,
        skill=variant.skill,
        dose=dose_of(movement, variant),
        steps=movement.pattern is Pattern.LUNGE or variant.id.startswith(STEPS_UP),
        resists=not RESISTS.isdisjoint(variant.things),
    )


def _is_harder(way: Way, written: Way, easier: Collection[str]) -> bool:
    """An unloaded line is never made harder unless asked: neither by a weight nor by a variant.

    A weight makes no way harder that the catalogue calls easier: rows with a dumbbell for rows on rings.
    """
    if way.movement.pattern is not written.movement.pattern or way.movement.k is None:
        return False
    if way.variant.holds:
        return way.id not in easier
    return _own_effort(way.variant) > AS_HARD * _own_effort(written.variant)


def _own_effort(variant: Variant) -> float:
    return body_share(variant.body_share) / variant.ratio.value
