"""What a session asks of everybody, worked out once: each line's amount, load, window and stand-ins."""

from functools import lru_cache

from core.ability.demand import body_share
from core.ability.kinship import kin_of
from core.ability.meant import meant_variant
from core.athletes.values import Easing
from core.caches import kept_by_weight
from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.movements.values import Demand, Hold, Movement, Pattern, Variant
from core.scaling.amounts import LONG_S, amount_of
from core.scaling.barriers import bars_of, flags
from core.scaling.easing import eased
from core.scaling.grips import grips_of
from core.scaling.values import Part
from core.scaling.ways import (
    AS_WRITTEN,
    OTHER_PATTERN,
    BlockPlan,
    LinePlan,
    Reachable,
    Way,
    seated_first,
)
from core.scaling.windows import fitting_of, share_of, unhurried, windows_of
from core.sessions.values import Block, Format, Line, Session

# Not added to a line for want of something nearer: overhead, thrown, jumped, upside down.
RISKS = frozenset({Demand.OVERHEAD, Demand.FAST_LOAD, Demand.JUMPING, Demand.UPSIDE_DOWN})

# Up to here a way is about as hard as the written one: fists spare the wrists and cost a little (estimate).
AS_HARD = 1.1

WITHOUT_REST = {Format.AMRAP, Format.FOR_TIME}


# About 0.1 MB a line: all its stand-ins with their windows. Sessions of today and yesterday are what is asked for.
MOST_LINES = 300


def _lines_of(blocks: tuple[BlockPlan, ...]) -> int:
    return sum(len(one.buy_in) + len(one.lines) + len(one.cash_out) for one in blocks)


@kept_by_weight(MOST_LINES, _lines_of)
def plan_of(session: Session, catalogue: Catalogue, pair: int, /) -> tuple[BlockPlan, ...]:
    """A session made ready for the first or the second of a pair. Raises UnknownMovement for an unknown line."""
    if pair == 1:
        return _plan(session, catalogue)
    second = _for_the_second(session)
    return plan_of(session, catalogue, 1) if second == session else _plan(second, catalogue)


def plan_for(
    session: Session, easing: Easing | None, catalogue: Catalogue, pair: int, /
) -> tuple[BlockPlan, ...]:
    """The same where these days may be eased: sets get smaller, and what they are done with stays."""
    return plan_of(session, catalogue, pair) if easing is None else _eased(session, easing, catalogue, pair)


@kept_by_weight(MOST_LINES // 2, _lines_of)
def _eased(session: Session, easing: Easing, catalogue: Catalogue, pair: int) -> tuple[BlockPlan, ...]:
    whole = session if pair == 1 else _for_the_second(session)
    return _plan(eased(whole, easing), catalogue, whole)


def _for_the_second(session: Session) -> Session:
    """`15/12 cal`: with the second of each pair of amounts."""
    blocks = (
        block.model_copy(
            update={
                part: tuple(map(_second, getattr(block, part))) for part in ("buy_in", "lines", "cash_out")
            }
        )
        for block in session.blocks
    )
    return session.model_copy(update={"blocks": tuple(blocks)})


def _second(line: Line) -> Line:
    return line if line.second_amount is None else line.model_copy(update={"amount": line.second_amount})


def _plan(session: Session, catalogue: Catalogue, whole: Session | None = None) -> tuple[BlockPlan, ...]:
    """`whole`: the session of which this one is a part, line by line; its sets say what is meant."""
    return tuple(
        BlockPlan(
            block, *(_plan_lines(block, all_, part, catalogue) for part in ("buy_in", "lines", "cash_out"))
        )
        for block, all_ in zip(session.blocks, (whole or session).blocks, strict=True)
    )


def _plan_lines(block: Block, whole: Block, part: Part, catalogue: Catalogue) -> tuple[LinePlan, ...]:
    lines, meant = getattr(block, part), getattr(whole, part)
    if part != "lines":
        block, whole = (one.model_copy(update={"scheme": (), "rounds": 1}) for one in (block, whole))
    return tuple(
        _plan_line(block, line, (whole, of), catalogue) for line, of in zip(lines, meant, strict=True)
    )


def _plan_line(block: Block, line: Line, meant: tuple[Block, Line], catalogue: Catalogue) -> LinePlan:
    movement = catalogue.movement(line.movement)
    load = max(line.loads_kg, default=None)
    of_a_maximum = line.load_rule is not None and line.load_rule.percent is not None
    variant = meant_variant(
        movement, line.variant, load, line.implement, line.count, of_a_maximum=of_a_maximum
    )
    written = _way(block, line, f"{movement.id}/{variant.id}", (movement, variant), AS_WRITTEN, catalogue)
    hold = written_hold(line, variant)
    loaded = bool(variant.holds)
    others = _other_ways(block, line, written, catalogue)
    ways, harder = (
        tuple(way._replace(grips=grips_of(way, line, written, hold, catalogue)) for way in group)
        for group in _unasked([written, *others], written, catalogue, loaded=loaded)
    )
    whole = _way(*meant, written.id, (movement, variant), AS_WRITTEN, catalogue)
    less = share_of(written, whole)
    first, second = windows_of(*meant, whole, hold)
    windows = first.times(less), second.times(less)
    by_itself = unhurried(*meant, whole)
    ways, harder = (
        tuple(way._replace(fitting=fitting_of(way, windows)) for way in group) for group in (ways, harder)
    )
    standing = tuple(way for way in ways if written.variant.seated or not way.variant.seated)
    works_up, breathless = block.format is Format.MAX_LOAD, block.format in WITHOUT_REST
    return LinePlan(
        line,
        line.written,
        standing,
        hold,
        loaded,
        windows,
        Reachable(standing),
        Reachable(seated_first(ways)),
        block.scheme,
        harder,
        works_up,
        breathless,
        by_itself and by_itself.times(less),
    )


def _unasked(
    ways: list[Way], written: Way, catalogue: Catalogue, *, loaded: bool
) -> tuple[list[Way], list[Way]]:
    """Ways that anybody may be given, and those that are too hard for that."""
    harder = [] if loaded else [way for way in ways if _is_harder(way, written, catalogue)]
    asked = [way for way in harder if written.variant.seated or not way.variant.seated]
    return [way for way in ways if way not in harder], asked


def written_hold(line: Line, variant: Variant) -> Hold | None:
    """The hold that the coach means: with the named implement and count where there are such."""
    fitting = [hold for hold in variant.holds if hold.fits(line.implement, line.count)]
    return next(iter(fitting or variant.holds), None)


def _other_ways(block: Block, line: Line, written: Way, catalogue: Catalogue) -> list[Way]:
    near = (*written.variant.easier, *written.variant.harder, *catalogue.instead(written.id))
    named = dict.fromkeys((*near, *catalogue.below(written.id), *catalogue.above(written.id)))
    nearest = {name: place for place, name in enumerate(named)}
    ways = [
        _way(block, line, reach.id, (written.movement, written.variant), reach.distance, catalogue)
        for reach in catalogue.reachable(written.id)
    ]
    ways = [
        way._replace(distance=OTHER_PATTERN) if _is_other_work(block, way, written, catalogue) else way
        for way in ways
    ]
    return sorted(ways, key=lambda way: (way.distance, nearest.get(way.id, len(named))))


def _is_other_work(block: Block, way: Way, written: Way, catalogue: Catalogue) -> bool:
    """What is no less far than another pattern: other work by its kind, and whatever adds a risk of its own."""
    if way.movement.k is None:
        return False
    if _changes_holding(block, way, written) or _is_of_another_kind(way, written, catalogue):
        return True
    return bool(RISKS.intersection(way.variant.demands).difference(written.variant.demands))


def _changes_holding(block: Block, way: Way, written: Way) -> bool:
    """A hold for repetitions, or the other way round. The trunk's work is to hold; but no hold climbs a ladder."""
    if written.movement.pattern is Pattern.TRUNK and not block.scheme:
        return False
    return {written.unit, way.unit} == {AmountUnit.REPS, AmountUnit.SECONDS}


def _is_of_another_kind(way: Way, written: Way, catalogue: Catalogue) -> bool:
    """A get-up for sit-ups, several movements in a row for one; of arms, what stretches them for what bends them."""
    if way.movement is written.movement:
        return False
    if _is_long(way) and not _is_long(written):
        return True
    return way.movement.pattern is Pattern.ARMS and way.id not in _beside(written.movement, catalogue)


def _is_long(way: Way) -> bool:
    return way.unit is AmountUnit.REPS and way.variant.seconds.value >= LONG_S


def _beside(movement: Movement, catalogue: Catalogue) -> set[str]:
    """What is on a ladder with the movement, or stands in for it."""
    names = (f"{movement.id}/{variant.id}" for variant in movement.variants)
    return {
        other
        for name in names
        for other in (*catalogue.below(name), *catalogue.above(name), *catalogue.instead(name))
    }


def _is_harder(way: Way, written: Way, catalogue: Catalogue) -> bool:
    """An unloaded line is never made harder unless asked: neither by a weight nor by a variant.

    A weight makes no way harder that the catalogue calls easier: rows with a dumbbell for rows on rings.
    """
    if way.movement.pattern is not written.movement.pattern or way.movement.k is None:
        return False
    if way.variant.holds:
        return way.id not in catalogue.below(written.id)
    return _own_effort(way.variant) > AS_HARD * _own_effort(written.variant)


def _own_effort(variant: Variant) -> float:
    return body_share(variant.body_share) / variant.ratio.value


def _way(
    block: Block, line: Line, to: str, written: tuple[Movement, Variant], distance: int, catalogue: Catalogue
) -> Way:
    amount = amount_of(block, line, written, catalogue.variant(to))
    return _bare_way(to, catalogue)._replace(
        distance=distance,
        unit=amount.unit,
        per_side=amount.per_side,
        amount=amount.shown,
        set_amount=amount.in_a_set,
    )


@lru_cache(maxsize=4096)
def _bare_way(variant_id: str, catalogue: Catalogue) -> Way:
    """What a way is whatever the line, worked out once."""
    movement, variant = catalogue.variant(variant_id)
    return Way(
        variant_id,
        movement,
        variant,
        AS_WRITTEN,
        movement.unit_of(variant),
        per_side=False,
        amount=None,
        set_amount=None,
        demands=flags(variant.demands),
        bars=bars_of(movement, variant),
        kin=kin_of(movement, variant),
        counts_reps=movement.unit_of(variant) is AmountUnit.REPS,
        needs=tuple(map(frozenset, variant.needs)),
        holds=frozenset((hold.implement, hold.count) for hold in variant.holds),
        share=None if variant.needs and variant.body_share.by_height else variant.body_share.value,
        met=variant.met.value if variant.met else None,
        skill=variant.skill,
    )
