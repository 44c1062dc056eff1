"""The lines of a block with everything that each could be, and which of it is chosen."""

from collections.abc import Iterable, Mapping, Sequence
from typing import NamedTuple

from core.movements.values import Part as Trained
from core.scaling.athlete import Athlete
from core.scaling.choice import Candidate, Meeting, Section, Walk, choose
from core.scaling.noted import bound, without_notes
from core.scaling.options import options_of
from core.scaling.orders import Orders, Pin
from core.scaling.pricing import at_share
from core.scaling.values import Part, Spot
from core.scaling.ways import BlockPlan, LinePlan, Near
from core.scaling.works import Option
from core.sessions.values import Block, Format

# So many points above the cheapest are looked at first: a change of implement before and one behind.
LITTLE = 4
# Plates are changed and a bag is filled in so many seconds; where a turn comes with the clock its work takes as long
# (estimates).
TO_SET_ANEW_S = 60
PARTS: tuple[Part, ...] = ("buy_in", "lines", "cash_out")


class Row(NamedTuple):
    """A line with all its options. `pin`: a standing choice that narrowed them.

    `athlete`: with what binds it; `free`: what it would be but for a coach's note, where there is one. `settled`: what
    it is done with was decided before, so that no other line has a say in how a shared thing is set.
    """

    athlete: Athlete
    free: Option | None
    plan: LinePlan
    options: list[Option]
    pin: Pin | None
    settled: bool = False


# What is done on each line in a usual week: an eased one asks for less of it, and for nothing else.
Usual = Mapping[Spot, Option]


def usual_of(number: int, plan: BlockPlan, athlete: Athlete, orders: Orders) -> Usual:
    """What is chosen for each line of a block."""
    sections, chosen = chosen_rows(number, plan, athlete, orders)
    picks = iter(chosen)
    return {
        Spot(number, part, place): row.options[next(picks)]
        for part, rows in zip(PARTS, sections, strict=True)
        for place, row in enumerate(rows, 1)
    }


def chosen_rows(
    number: int, plan: BlockPlan, athlete: Athlete, orders: Orders, usual: Usual | None = None
) -> tuple[list[list[Row]], tuple[int, ...]]:
    """The lines of a block with their options, and the place of each one's choice among them.

    What is `usual` stays, wherever it is safe.

    Looked for among what costs little more than each line's cheapest. What costs more than that by over the excess
    of the choice above the sum of the cheapest can't be part of a better one: so nothing is missed.
    """
    slack = LITTLE
    while True:
        sections = [
            [
                _row(line, athlete, orders, Spot(number, part, place), slack, usual or {})
                for place, line in enumerate(lines, 1)
            ]
            for part, lines in zip(PARTS, plan.sections, strict=True)
        ]
        total, chosen = _chosen(plan.block, sections)
        excess = total - sum(row.options[0].cost for rows in sections for row in rows)
        if excess <= slack:
            return sections, chosen
        slack = excess


def _row(plan: LinePlan, athlete: Athlete, orders: Orders, spot: Spot, slack: int, usual: Usual) -> Row:
    """What the coach decided after their notes goes past them; where that isn't safe any more, they bind again."""
    pin = next((one for one in orders.pins if (one.block, one.part, one.line) == spot), None)
    if pin is not None:
        who = athlete.past_notes if spot in orders.past else athlete
        matching = _pinned(plan, options_of(plan, who, orders, only=_way_of(pin)), who, pin)
        matching = [one for one in matching if pin.movement or not _is_left_out(one, orders)] or matching
        if matching:
            return Row(who, None, plan, matching, pin, settled=True)
    free = without_notes(plan, athlete, orders)
    who = bound(athlete, free)
    same = _as_usual(plan, who, orders, usual[spot]) if spot in usual else []
    if same:
        return Row(who, free, plan, same, None, settled=True)
    found = options_of(plan, who, orders, slack)
    if orders.left_out and _is_left_out(found[0], orders):
        others = [one for one in options_of(plan, who, orders) if one.way and not _is_left_out(one, orders)]
        found = others or found
    return Row(who, free, plan, found, None)


def _is_left_out(option: Option, orders: Orders) -> bool:
    return option.way is not None and orders.leave_out(option.way.movement.id)


def _as_usual(plan: LinePlan, athlete: Athlete, orders: Orders, usual: Option) -> list[Option]:
    options = options_of(plan, athlete, orders, only=usual.way.id if usual.way else None)
    return [one for one in options if one.safe and _done_with(one) == _done_with(usual)]


def _way_of(pin: Pin) -> str | None:
    """The way that a pin names; None where it leaves several."""
    return f"{pin.movement}/{pin.variant}" if pin.movement and pin.variant else None


def _done_with(option: Option) -> tuple[object, ...]:
    return option.way and option.way.id, option.hold, option.load and option.load.kg


def _pinned(plan: LinePlan, options: Iterable[Option], athlete: Athlete, pin: Pin) -> list[Option]:
    """The options that a pin leaves, at the share of the amount that it names."""
    matching = [option for option in options if _matches(option, pin)]
    if pin.share is None:
        return matching
    shares = [at_share(plan, option, athlete, pin.share) for option in matching]
    return [option for option in shares if option.safe]


def _matches(option: Option, pin: Pin) -> bool:
    if option.way is None or pin.leaves_out(option.way.movement.id):
        return False
    if pin.bare and option.hold is not None:
        return False
    facts = (
        (pin.movement, option.way.movement.id),
        (pin.variant, option.way.variant.id),
        (pin.implement, option.implement),
        (pin.count, option.hold.count if option.hold else None),
        (pin.load_kg, option.load.kg if option.load else None),
    )
    return all(wanted is None or wanted == there for wanted, there in facts)


def _chosen(block: Block, sections: Sequence[Sequence[Row]]) -> Walk:
    table = next(row.plan.costs for rows in sections for row in rows)
    fast = not _leaves_time(block)
    return choose(
        [
            Section(candidates_of(rows, shares=fast), ring=rows is sections[1] and _comes_round(block))
            for rows in sections
        ],
        Meeting(table.repeats, table.change, table.heaps, table.strains, table.parted),
    )


def _leaves_time(block: Block) -> bool:
    """Whether a bar or an adjustable can be set anew between two lines."""
    if block.format in {Format.SETS, Format.INTERVALS}:
        return max(block.rest_s or 0, (block.every_s or 0) / 2) >= TO_SET_ANEW_S
    return block.format in {Format.MAX_LOAD, Format.QUALITY}


def _comes_round(block: Block) -> bool:
    return block.format is not Format.FOR_TIME or (block.rounds or 1) > 1 or len(block.scheme) > 1


def candidates_of(rows: Sequence[Row], *, shares: bool = True) -> list[list[Candidate]]:
    """What decides of each option; `shares`: a thing is set alike on all lines."""
    return [[_candidate(option, row, shares=shares) for option in row.options] for row in rows]


def _candidate(option: Option, row: Row, *, shares: bool) -> Candidate:
    """Whoever pins a load of an adjustable accepts changing it, so a settled line shares nothing."""
    way = option.way
    if way is None:
        return Candidate(option.cost)
    part = way.movement.main_of(way.variant)
    return Candidate(
        option.cost,
        way.kin.movement,
        option.held,
        option.thing if shares and not row.settled else None,
        option.load.value if option.load else 0.0,
        part,
        way.near is Near.ELSEWHERE,
        None if way.near is Near.WRITTEN or part is Trained.BREATH else row.athlete.joint_in(way),
        row.plan.ways[0].kin.movement,
        (row.plan.ways[0].id, row.plan.hold, row.plan.line.loads_kg, row.plan.line.load_rule),
        _done_with(option),
    )
