"""What a session asks of everybody, worked out once: each line's amount, load, window and stand-ins."""

from core.ability.meant import meant_variant
from core.athletes.values import Easing
from core.caches import kept_by_weight
from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.movements.values import Hold, Variant
from core.movements.values import Part as Trained
from core.scaling.amounts import asked_of
from core.scaling.beside import Meant, neighbours_of, way_of, ways_among
from core.scaling.costs import Costs, costs
from core.scaling.easing import NO_CUT, Cut, in_shares, shares_of
from core.scaling.intent import hard_set_of, is_easy, is_meant_to_be_light
from core.scaling.offered import offered_by
from core.scaling.values import Part
from core.scaling.ways import BlockPlan, LinePlan, Way
from core.scaling.windows import share_of, unhurried, windows_of
from core.sessions.values import Block, Format, Line, Session

WITHOUT_REST = {Format.AMRAP, Format.FOR_TIME}

# Of what is light up to twice as many are done, and half as many more of what has no load; instead of a heavy set of up
# to six, up to twelve (common practice, no source: heavy days without heavy things are eight to twelve hard ones).
TWICE = 2.0
HALF_MORE = 1.5
HEAVY_SET = 6
TO_REST_S = 90
LIGHT_SET = 15.0
HARD_SET = 12.0


# Sessions of today and yesterday are what is asked for.
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
    movements = ((catalogue.movement(line.movement), line.variant) for line in session.every_line)
    return frozenset(movement.main_of(movement.meant(variant)) for movement, variant in movements)


def _plan_lines(
    block: Block, whole: Block, part: Part, catalogue: Catalogue, costs: Costs
) -> tuple[LinePlan, ...]:
    lines, meant = getattr(block, part), getattr(whole, part)
    if part != "lines":
        block, whole = (one.model_copy(update={"scheme": (), "rounds": 1}) for one in (block, whole))
    return tuple(
        _plan_line(block, line, (whole, of), _ladder_of(whole, of, meant), catalogue, costs)
        for line, of in zip(lines, meant, strict=True)
    )


def _ladder_of(block: Block, line: Line, lines: tuple[Line, ...]) -> tuple[int, ...]:
    """The rungs of which a line is one: the block's scheme, or 21, 15 and 9 that are each written out as a line."""
    if block.scheme or block.format is Format.SETS or line.unit is not AmountUnit.REPS:
        return block.scheme
    named = line.movement, line.variant, line.loads_kg
    same = (one for one in lines if (one.movement, one.variant, one.loads_kg) == named)
    rungs = tuple(int(one.amount) for one in same if one.amount and one.unit is line.unit)
    return rungs if len(rungs) > 1 else ()


def _plan_line(
    block: Block,
    line: Line,
    meant: tuple[Block, Line],
    ladder: tuple[int, ...],
    catalogue: Catalogue,
    costs: Costs,
) -> LinePlan:
    movement = catalogue.movement(line.movement)
    load = max(line.loads_kg, default=None)
    variant = meant_variant(
        movement,
        line.variant,
        load,
        line.implement,
        line.count,
        of_a_maximum=_is_of_a_maximum(block, line),
        per_side=line.per_side,
    )
    name = f"{movement.id}/{variant.id}"
    hold, loaded = written_hold(line, variant), bool(variant.holds)
    light = is_meant_to_be_light(block, line)
    heavy = loaded and not light and _is_heavy_set(*meant)
    asked = asked_of(block, line)
    offered = offered_by(line, catalogue)
    beside = neighbours_of(Meant(name, asked, hold, line.implement, heavy, offered), catalogue, costs)
    written = beside.ways[0]
    of_all = asked_of(*meant)
    whole = written if of_all == asked else way_of(name, of_all, (movement, variant), catalogue)
    less = share_of(written, whole)
    whole_block, of = meant
    rung = of.amount / max(ladder) if ladder and of.amount else 1.0
    if ladder:
        whole_block, less = whole_block.model_copy(update={"scheme": ladder}), less * rung
    first, second = windows_of(whole_block, of, whole, hold)
    by_itself = unhurried(whole_block, of, whole)
    return LinePlan(
        line,
        line.written,
        beside.ways,
        hold,
        loaded,
        (first.times(less), second.times(less)),
        beside.reachable,
        beside.sitting,
        costs,
        block.scheme,
        beside.harder,
        works_up=block.format is Format.MAX_LOAD,
        breathless=block.format in WITHOUT_REST,
        unhurried=by_itself and by_itself.times(less),
        most_more=_most_more(whole_block, of, loaded=loaded),
        heavy=heavy,
        pulls=movement.main_of(variant) in {Trained.ROW, Trained.PULL},
        turn_s=asked.turn_s,
        pieces=max(1.0, first.high),
        easy=is_easy(block),
        light=light,
        again=bool(ladder),
        rung=rung,
        hard_set=hard_set_of(whole_block, of),
    )


def ways_to(
    block: Block, plan: LinePlan, movement: str, catalogue: Catalogue, table: Costs | None = None
) -> tuple[Way, ...]:
    """The ways of one movement that could stand for a line, however far they lie from it."""
    asked = asked_of(block, plan.line)
    meant = Meant(plan.ways[0].id, asked, plan.hold, plan.line.implement, heavy=plan.heavy)
    names = (f"{movement}/{one.id}" for one in catalogue.movement(movement).variants)
    return tuple(ways_among(names, meant, catalogue, table or costs()))


def _is_of_a_maximum(block: Block, line: Line) -> bool:
    """Whether what goes once is what the load is a share of, or is looked for."""
    rule = line.load_rule
    if block.format is Format.MAX_LOAD:
        return True
    return rule is not None and (rule.percent is not None or bool(rule.heavy))


def _most_more(block: Block, line: Line, *, loaded: bool) -> float:
    """How many times the amount may be done: a ladder stays a ladder, and time is told by the clock."""
    if block.scheme or line.amount is None or line.unit is not AmountUnit.REPS or block.work_s is not None:
        return 1.0
    if _is_heavy_set(block, line):
        return max(TWICE, HARD_SET / line.amount)
    most = TWICE if loaded and block.format is not Format.INTERVALS else HALF_MORE
    return min(most, max(1.0, LIGHT_SET / line.amount)) if block.format is Format.SETS else most


def _is_heavy_set(block: Block, line: Line) -> bool:
    few = line.amount is not None and line.amount <= HEAVY_SET
    rested = block.format is Format.INTERVALS and (block.every_s or 0) >= TO_REST_S and not block.work_s
    return few and (rested or block.format in {Format.SETS, Format.MAX_LOAD})


def written_hold(line: Line, variant: Variant) -> Hold | None:
    """The hold that the coach means: with the named implement and count where there are such."""
    fitting = [hold for hold in variant.holds if hold.fits(line.implement, line.count)]
    return next(iter(fitting or variant.holds), None)
