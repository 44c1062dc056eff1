"""A chosen option, as the line of a version."""

import re
from math import ceil, floor
from typing import Literal

from core.measures import AmountUnit
from core.movements.values import Demand, Hold, Pattern
from core.notation.phrases.efforts import effort_told
from core.scaling.amounts import HALF, ROUND_TO, as_counted
from core.scaling.athlete import Athlete
from core.scaling.barriers import flags
from core.scaling.values import Change, Reason, VersionLine
from core.scaling.ways import LinePlan, Near, Way
from core.scaling.works import Option

# Fewer than so many left are counted; of more nobody can tell (common practice, no source).
LEAST_EFFORT, MOST_EFFORT = 6.0, 10.0

# What a coach may write beside a line that isn't for everybody.
HARD = re.compile(r"\b(?:hard|fast|sprint|all[- ]out|max|heavy)\b", re.IGNORECASE)
A_NUMBER = re.compile(r"\d")
# Whoever takes care marches or steps so long before they sit down (estimate).
PIECE_S = 300.0
ROOM = flags({Demand.ROOM})
NO_MACHINE = ((), (frozenset({"stairs"}),))
# `Heavy but clean`: how heavy stands with the load.
AND_NOTED, OR, BUT = "; ", "or ", "but "


def change_of(plan: LinePlan, option: Option) -> Change:
    """The largest change of an option against what was written; as many as the coach wrote are no fewer."""
    if option.way is None:
        return Change.REST
    if option.build_up or (option.part < 1 and not _are_as_many(plan, option.way, option.part)):
        return Change.AMOUNT
    if option.exact:
        return Change.NONE
    if option.way.near is Near.WRITTEN:
        return Change.IMPLEMENT if option.other else Change.LOAD
    return Change.VARIANT if option.way.near is Near.VARIANT else Change.MOVEMENT


def _are_as_many(plan: LinePlan, way: Way, part: float) -> bool:
    """Whether a part of what stands for a line is counted as many as the coach wrote."""
    written, amount = plan.ways[0], plan.line.amount
    if amount is None or way.amount is None or plan.scheme or way.near <= Near.VARIANT:
        return False
    return (way.unit, way.per_side) == (written.unit, written.per_side) and way.amount * part >= amount


def line_of(number: int, plan: LinePlan, option: Option, athlete: Athlete, reason: Reason) -> VersionLine:
    """The line that an athlete is shown."""
    if option.way is None:
        return resting(number, plan, reason)
    way, fit = option.way, option.fit
    counted = way.counts_reps and fit.unbroken is not None
    return VersionLine(
        line=number,
        written=plan.written,
        movement=way.movement.id,
        variant=way.variant.id,
        implement=option.implement,
        count=_count(option.hold),
        load_kg=option.load.kg if option.load and not option.works_up else None,
        load_moved_kg=option.moved_kg,
        written_kg=plan.written_kg(athlete.pair),
        height_cm=option.height_cm,
        station=plan.line.station,
        amount=_amount(plan, way, option),
        amount_to=plan.line.amount_to if option.part == 1 and way.amount == plan.line.amount else None,
        scheme=_scheme(plan, option),
        unit=way.unit,
        per_side=way.per_side,
        side=_side(plan, way),
        leaves=_leaves(plan, option, athlete),
        pieces=_pieces(way, option, athlete),
        tempo=plan.line.tempo if way.near is Near.WRITTEN else None,
        notes=_notes(plan, option, athlete),
        unbroken=fit.unbroken if counted else None,
        set_cost=fit.cost if counted else None,
        cost_window=tuple(athlete.window(plan, way)) if counted else None,
        change=change_of(plan, option),
        reason=reason,
        cues=athlete.notes.cues.get(way.movement.pattern, ()),
        at_most_kg=athlete.notes.caps.get(way.movement.pattern) if option.hold else None,
    )


def _pieces(way: Way, option: Option, athlete: Athlete) -> int:
    """Into how many pieces what goes on and on by the wall or on the stairs is cut for whoever takes care."""
    on_the_spot = (
        way.movement.pattern is Pattern.TRAVEL and not way.demands & ROOM and way.needs in NO_MACHINE
    )
    if not (on_the_spot and athlete.takes_care and way.unit is AmountUnit.SECONDS and way.amount):
        return 1
    return ceil(way.amount * option.part / PIECE_S)


def _side(plan: LinePlan, way: Way) -> Literal["left", "right", "alternating"] | None:
    """The side that the coach named, for what is done with one; in turn only where the amount is that of both."""
    side, sides = plan.line.side, way.movement.sides_of(way.variant)
    if sides == "both" or (side == "alternating" and (way.per_side or sides == "alternating")):
        return None
    return side


def _leaves(plan: LinePlan, option: Option, athlete: Athlete) -> float | None:
    """What is to be left in them: an effort of eight is two short of all that goes, and more under a cap of theirs.

    Source: repetitions in reserve by effort, Zourdos et al. 2016 (from memory); below five an estimate.
    """
    rule, way = plan.line.load_rule, option.way
    if rule is None or rule.effort is None or way is None or not way.counts_reps or option.build_up:
        return None
    if not LEAST_EFFORT <= rule.effort < MOST_EFFORT:
        return None
    return MOST_EFFORT - min(rule.effort, athlete.effort_at_most or MOST_EFFORT)


def _notes(plan: LinePlan, option: Option, athlete: Athlete) -> str | None:
    """What the coach wrote beside a line, as far as it holds for them.

    An `or easy run` is not for whoever has something to spare or does it otherwise, `or bike` not for whoever has
    none, `hard` not for whoever goes easy, and a number not beside another one. Of another movement only how hard it
    is holds.
    """
    notes, way = plan.line.notes, option.way
    if notes is None or way is None:
        return None
    same = _is_done_on_the_same(plan, way)
    as_written = option.part == 1 and way.near is Near.WRITTEN
    told = (
        one.removeprefix(BUT)
        for one in notes.split(AND_NOTED)
        if _suits(one, athlete, way)
        and (as_written or not A_NUMBER.search(one))
        and (same or _says_how_hard(one))
    )
    return AND_NOTED.join(told) or None


def _says_how_hard(notes: str) -> bool:
    """Whether they say that, and nothing else."""
    told = effort_told(notes.lower())
    return told is not None and told.words == notes.lower()


def _suits(notes: str, athlete: Athlete, way: Way) -> bool:
    goes_easy = athlete.effort_at_most is not None or athlete.goes_easy(way)
    if goes_easy and HARD.search(notes):
        return False
    spares = bool(athlete.profile.limits) or athlete.is_unused or goes_easy
    if not notes.startswith(OR):
        return True
    return way.near is Near.WRITTEN and not (spares or _lacks(notes.removeprefix(OR), athlete))


def _lacks(name: str, athlete: Athlete) -> bool:
    """Whether words name a thing that isn't there."""
    thing = athlete.catalogue.implement_by_name(name)
    return thing is not None and thing.id not in athlete.gear.things


def _is_done_on_the_same(plan: LinePlan, way: Way) -> bool:
    """Whether what the coach wrote beside a line still holds: of the same movement, on the same thing."""
    return way.near <= Near.VARIANT and way.needs == plan.ways[0].needs


def resting(number: int, plan: LinePlan, reason: Reason) -> VersionLine:
    """A line of which nothing is done."""
    written = plan.ways[0]
    return VersionLine(
        line=number,
        written=plan.written,
        movement=written.movement.id,
        variant=written.variant.id,
        station=plan.line.station,
        amount=None,
        unit=written.unit,
        change=Change.REST,
        reason=reason,
    )


def _count(hold: Hold | None) -> int | None:
    return hold.count if hold else None


def _amount(plan: LinePlan, way: Way, option: Option) -> float | None:
    if option.build_up or plan.scheme or way.amount is None:
        return None
    if option.part == 1:
        return way.amount
    counted = as_counted(way.amount * option.part, way.unit)
    return counted if counted < way.step else counted - counted % way.step


def _scheme(plan: LinePlan, option: Option) -> tuple[int, ...]:
    """The block's repetitions, as they stand for it in the unit of the way that is done."""
    way = option.way
    if option.build_up or not plan.scheme or way is None or way.amount is None:
        return ()
    worth, step = way.amount / max(plan.scheme), ROUND_TO.get(way.unit, 1)
    whole = plan.scheme if worth == 1 else [step * floor(reps * worth / step + HALF) for reps in plan.scheme]
    return tuple(max(1, int(reps * option.part + 1e-9)) for reps in whole)
