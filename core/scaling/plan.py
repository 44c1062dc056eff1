"""What a session asks of everybody, worked out once: each line's amount, load, window and stand-ins."""

from functools import lru_cache
from operator import attrgetter

from core.ability.demand import body_share
from core.ability.kinship import kin_of
from core.ability.meant import meant_variant
from core.athletes.values import Easing
from core.caches import kept_by_weight
from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.movements.values import Demand, Hold, Movement, Pattern, Variant
from core.movements.values import Part as Trained
from core.scaling.amounts import amount_of, rounded_to
from core.scaling.barriers import bars_of, demands_of, flags
from core.scaling.costs import Costs, costs
from core.scaling.doses import dose_of
from core.scaling.easing import NO_CUT, Cut, in_shares, shares_of
from core.scaling.grips import Beside, grips_of
from core.scaling.intent import is_easy, is_light
from core.scaling.likeness import charged, nearness, stand_ins
from core.scaling.values import Part
from core.scaling.ways import BlockPlan, LinePlan, Near, Reachable, Way
from core.scaling.windows import share_of, unhurried, windows_of
from core.sessions.values import Block, Format, Line, Session

# Up to here a way is about as hard as the written one: fists spare the wrists and cost a little (estimate).
AS_HARD = 1.1

# Whose resistance nobody knows in kilos: it is neither nothing in the hands, nor ever too light.
RESISTS = frozenset({"band"})

# What costs more than this whoever does it stands in for nothing.
FARTHEST = 200

ONE_OVERHEAD = flags({Demand.WRIST_CARRIES})

WITHOUT_REST = {Format.AMRAP, Format.FOR_TIME}

# Of what is light up to twice as many are done, and half as many more of what has no load; instead of a heavy set of up
# to six, up to fifteen (common practice, no source: heavy days without heavy things are 8-15 hard repetitions).
TWICE = 2.0
HALF_MORE = 1.5
HEAVY_SET = 6
TO_REST_S = 90
LIGHT_SET = 15.0


# About 0.2 MB a line: all its stand-ins with what they cost. Sessions of today and yesterday are what is asked for.
MOST_LINES = 200


def _lines_of(blocks: tuple[BlockPlan, ...]) -> int:
    return sum(len(one.buy_in) + len(one.lines) + len(one.cash_out) for one in blocks)


@kept_by_weight(MOST_LINES, _lines_of)
def plan_of(
    session: Session, catalogue: Catalogue, pair: int, table: Costs | None = None, /
) -> tuple[BlockPlan, ...]:
    """A session made ready for the first or the second of a pair. Raises UnknownMovement for an unknown line.

    `table`: other points than those of the table, to try them.
    """
    if pair == 1:
        return _plan(session, catalogue, table or costs())
    second = _for_the_second(session)
    if second == session:
        return plan_of(session, catalogue, 1, table)
    return _plan(second, catalogue, table or costs())


def plan_for(
    session: Session,
    easing: Easing | None,
    catalogue: Catalogue,
    pair: int,
    table: Costs | None = None,
    cut: Cut = NO_CUT,
    /,
) -> tuple[BlockPlan, ...]:
    """The same where these days may be eased or short: sets get smaller, and what they are done with stays."""
    shares = shares_of(session, easing, cut)
    if all(share == 1 for share in shares):
        return plan_of(session, catalogue, pair, table)
    return _eased(session, shares, catalogue, pair, table)


@kept_by_weight(MOST_LINES // 2, _lines_of)
def _eased(
    session: Session, shares: tuple[float, ...], catalogue: Catalogue, pair: int, table: Costs | None
) -> tuple[BlockPlan, ...]:
    whole = session if pair == 1 else _for_the_second(session)
    return _plan(in_shares(whole, shares), catalogue, table or costs(), whole)


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


def _plan(
    session: Session, catalogue: Catalogue, costs: Costs, whole: Session | None = None
) -> tuple[BlockPlan, ...]:
    """`whole`: the session of which this one is a part, line by line; its sets say what is meant."""
    trained = _trained_by(session, catalogue)
    return tuple(
        BlockPlan(
            block,
            *(
                tuple(
                    line._replace(trained=trained)
                    for line in _plan_lines(block, all_, part, catalogue, costs)
                )
                for part in ("buy_in", "lines", "cash_out")
            ),
        )
        for block, all_ in zip(session.blocks, (whole or session).blocks, strict=True)
    )


def _trained_by(session: Session, catalogue: Catalogue) -> frozenset[Trained]:
    """What the lines of a session are for."""
    lines = (line for block in session.blocks for line in (*block.buy_in, *block.lines, *block.cash_out))
    movements = ((catalogue.movement(line.movement), line.variant) for line in lines)
    return frozenset(movement.main_of(movement.meant(variant)) for movement, variant in movements)


def _plan_lines(
    block: Block, whole: Block, part: Part, catalogue: Catalogue, costs: Costs
) -> tuple[LinePlan, ...]:
    lines, meant = getattr(block, part), getattr(whole, part)
    if part != "lines":
        block, whole = (one.model_copy(update={"scheme": (), "rounds": 1}) for one in (block, whole))
    return tuple(
        _plan_line(block, line, (whole, of), catalogue, costs) for line, of in zip(lines, meant, strict=True)
    )


def _plan_line(
    block: Block, line: Line, meant: tuple[Block, Line], catalogue: Catalogue, costs: Costs
) -> LinePlan:
    movement = catalogue.movement(line.movement)
    load = max(line.loads_kg, default=None)
    variant = meant_variant(
        movement, line.variant, load, line.implement, line.count, of_a_maximum=_is_of_a_maximum(block, line)
    )
    done = movement, variant
    written = _way(block, line, f"{movement.id}/{variant.id}", done, catalogue)
    hold, loaded = written_hold(line, variant), bool(variant.holds)
    others = (_way(block, line, name, done, catalogue) for name in stand_ins(written.id, catalogue))
    heavy = loaded and _is_heavy_set(*meant)
    beside = (charged(block, way, written, catalogue, costs, heavy=heavy) for way in (written, *others))
    ways = sorted((way for way in beside if way.base <= FARTHEST), key=attrgetter("base"))
    ways = [_compared(line, way, written, hold, catalogue, costs) for way in ways]
    ways, harder = _unasked(ways, written, catalogue, loaded=loaded)
    whole = _way(*meant, written.id, done, catalogue)
    less = share_of(written, whole)
    first, second = windows_of(*meant, whole, hold)
    by_itself = unhurried(*meant, whole)
    return LinePlan(
        line,
        line.written,
        tuple(ways),
        hold,
        loaded,
        (first.times(less), second.times(less)),
        Reachable(way for way in ways if written.variant.seated or not way.variant.seated),
        Reachable(ways),
        costs,
        block.scheme,
        tuple(harder),
        works_up=block.format is Format.MAX_LOAD,
        breathless=block.format in WITHOUT_REST,
        unhurried=by_itself and by_itself.times(less),
        most_more=_most_more(*meant, loaded=loaded),
        heavy=heavy,
        pulls=movement.main_of(variant) in {Trained.ROW, Trained.PULL},
        turn_s=_turn_s(block, line),
        pieces=max(1.0, first.high),
        easy=is_easy(block),
        light=is_light(block, line),
    )


def ways_to(
    block: Block, plan: LinePlan, movement: str, catalogue: Catalogue, table: Costs | None = None
) -> tuple[Way, ...]:
    """The ways of one movement that could stand for a line, however far they lie from it."""
    costs_, written, line = table or costs(), plan.ways[0], plan.line
    done = written.movement, written.variant
    names = (f"{movement}/{one.id}" for one in catalogue.movement(movement).variants)
    ways = (_way(block, line, name, done, catalogue) for name in names)
    told = (charged(block, way, written, catalogue, costs_, heavy=plan.heavy) for way in ways)
    return tuple(_compared(line, way, written, plan.hold, catalogue, costs_) for way in told)


def _is_of_a_maximum(block: Block, line: Line) -> bool:
    """Whether what goes once is what the load is a share of, or is looked for."""
    rule = line.load_rule
    if block.format is Format.MAX_LOAD:
        return True
    return rule is not None and (rule.percent is not None or bool(rule.heavy))


def _compared(
    line: Line,
    way: Way,
    written: Way,
    hold: Hold | None,
    catalogue: Catalogue,
    costs: Costs,
) -> Way:
    """A way beside the written one: how it lies to it, and what may be in the hands."""
    near = nearness(way, written)
    if not way.variant.holds:
        return way._replace(near=near, least=way.base)
    same, both = near <= Near.VARIANT, written.per_side and not way.per_side
    one = way.variant.one_handed and not written.variant.one_handed
    overhead = bool(way.demands & ~written.demands & ONE_OVERHEAD)
    beside = Beside(hold, line.implement, same=same, both_arms=both, one_arm=one, one_overhead=overhead)
    grips = grips_of(way.id, beside, catalogue, costs)
    cheapest = min(sum(charge.points for charge in grip.charges) for grip in grips)
    return way._replace(near=near, grips=grips, least=way.base + cheapest)


def _most_more(block: Block, line: Line, *, loaded: bool) -> float:
    """How many times the amount may be done: a ladder stays a ladder, and time is told by the clock."""
    if block.scheme or line.amount is None or line.unit is not AmountUnit.REPS or block.work_s is not None:
        return 1.0
    if _is_heavy_set(block, line):
        return max(TWICE, LIGHT_SET / line.amount)
    most = TWICE if loaded and block.format is not Format.INTERVALS else HALF_MORE
    return min(most, max(1.0, LIGHT_SET / line.amount)) if block.format is Format.SETS else most


def _turn_s(block: Block, line: Line) -> float | None:
    """What the clock leaves for a set of the line by itself; None where it leaves as much as it takes."""
    if block.format is not Format.INTERVALS or not block.every_s or block.work_s is not None:
        return None
    beside = sum(one.station == line.station for one in block.lines) if line.station is not None else 1
    return block.every_s / beside


def _is_heavy_set(block: Block, line: Line) -> bool:
    few = line.amount is not None and line.amount <= HEAVY_SET
    rested = block.format is Format.INTERVALS and (block.every_s or 0) >= TO_REST_S and not block.work_s
    return few and (rested or block.format in {Format.SETS, Format.MAX_LOAD})


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


def _way(block: Block, line: Line, to: str, written: tuple[Movement, Variant], catalogue: Catalogue) -> Way:
    amount = amount_of(block, line, written, catalogue.variant(to))
    return _bare_way(to, catalogue)._replace(
        unit=amount.unit,
        per_side=amount.per_side,
        amount=amount.shown,
        set_amount=amount.in_a_set,
        less=amount.less,
        step=rounded_to(amount.unit, catalogue.variant(to), per_side=amount.per_side),
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
        steps=movement.pattern is Pattern.LUNGE,
        resists=not RESISTS.isdisjoint(variant.things),
    )
