"""What is no harder than written: for each line that became harder, the way that isn't, as pins."""

from collections.abc import Iterable, Iterator

from core.athletes.values import Profile
from core.movements.lookup import Catalogue
from core.scaling.athlete import Athlete
from core.scaling.fit import fit
from core.scaling.options import options_of
from core.scaling.orders import Orders, Pin
from core.scaling.plan import plan_of
from core.scaling.pricing import at_share
from core.scaling.values import VersionBlock, VersionLine
from core.scaling.ways import BlockPlan, LinePlan
from core.scaling.works import Option
from core.sessions.values import Session

# Costs this near are the same.
SAME_COST = 1.001


def gentler(
    session: Session, blocks: Iterable[VersionBlock], who: Profile, catalogue: Catalogue
) -> tuple[Pin, ...]:
    """Pins to ways that cost this person no more than what is written, for the lines of `blocks` that do.

    Where none is as light as that, 4 kg on a barbell, to the lightest there is.
    """
    athlete = Athlete(who, catalogue, session.date.year if session.date else None)
    plans = plan_of(session, catalogue, athlete.pair)
    return tuple(pin for plan, block in zip(plans, blocks, strict=True) for pin in _in(plan, block, athlete))


def cost_as_written(plan: LinePlan, athlete: Athlete) -> float | None:
    """What a set costs this person as it is written; None where that can't be said.

    Nothing counts it, or no load is written where one is lifted.
    """
    written, load = plan.ways[0], plan.load_kg(athlete.pair)
    task = athlete.task(plan, written)
    if task is None or (plan.hold is not None and load is None):
        return None
    moved = athlete.own_kg(written)
    if plan.hold is not None and load is not None:
        moved += plan.hold.factor * plan.hold.count * float(load)
    return fit(task, moved).cost


def _in(plan: BlockPlan, block: VersionBlock, athlete: Athlete) -> Iterator[Pin]:
    for (part, lines), plans in zip(block.parts, plan.sections, strict=True):
        for line, line_plan in zip(lines, plans, strict=True):
            pin = _pin(line_plan, line, athlete)
            if pin is not None:
                yield pin.model_copy(update={"block": block.block, "part": part})


def _pin(plan: LinePlan, line: VersionLine, athlete: Athlete) -> Pin | None:
    most = cost_as_written(plan, athlete)
    if most is None or _cost_of(line, plan, athlete) <= most * SAME_COST:
        return None
    options = _no_more_of_it(plan, athlete)
    gentle = [one for one in options if _cost(one) <= most * SAME_COST]
    best = gentle[0] if gentle else min(options, key=_cost, default=None)
    return None if best is None else _pinned(best, line)


def _no_more_of_it(plan: LinePlan, athlete: Athlete) -> list[Option]:
    """Every option, the cheapest first, without the repetitions that make good for a light weight."""
    options = (one for one in options_of(plan, athlete, Orders()) if one.way is not None)
    whole = (at_share(plan, one, athlete, 1.0) if one.part > 1 else one for one in options)
    return [one for one in whole if one.safe]


def _cost_of(line: VersionLine, plan: LinePlan, athlete: Athlete) -> float:
    """What a set of a version's line costs; 0 where nothing counts it, as in a rest."""
    way = next((way for way in plan.ways if way.id == f"{line.movement}/{line.variant}"), None)
    task = athlete.task(plan, way) if way else None
    if way is None or task is None or line.load_moved_kg is None:
        return 0.0
    share = 1.0 if line.amount is None or not way.amount else line.amount / way.amount
    return fit(task, line.load_moved_kg, share).cost or 0.0


def _cost(option: Option) -> float:
    return option.fit.cost or 0.0


def _pinned(option: Option, line: VersionLine) -> Pin:
    assert option.way is not None
    return Pin(
        block=1,
        line=line.line,
        movement=option.way.movement.id,
        variant=option.way.variant.id,
        implement=option.implement,
        count=option.hold.count if option.hold else None,
        load_kg=option.load.kg if option.load else None,
        share=option.part,
    )
