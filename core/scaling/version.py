"""A session made personal: `version_for`, from first to last."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Literal

from core.athletes.complaints import sides_of
from core.athletes.limits import Limit, SessionRule, limit, to_mention
from core.athletes.values import Profile, Screening
from core.movements.lookup import Catalogue
from core.movements.values import Demand, Pattern, Variant
from core.scaling.athlete import Athlete
from core.scaling.blocks import Chosen, chosen_blocks
from core.scaling.costs import Costs
from core.scaling.counting import counts_as_written
from core.scaling.easing import KEPT, NO_CUT, Cut
from core.scaling.enough import sets_of
from core.scaling.intent import is_easy
from core.scaling.lines import line_of, resting
from core.scaling.noted import reason_beside
from core.scaling.notes import NO_NOTES, notes_of
from core.scaling.orders import NO_ORDERS, Orders, Pin
from core.scaling.reasons import keeps
from core.scaling.rows import Row
from core.scaling.sharing import turn_of
from core.scaling.sore import fewer_sets, is_mostly_sore
from core.scaling.values import (
    Because,
    Caution,
    Change,
    NeedsCoach,
    Reason,
    Version,
    VersionBlock,
    VersionLine,
    Withheld,
)
from core.scaling.ways import BlockPlan, LinePlan
from core.scaling.works import Option
from core.sessions.values import Block, Format, Session

FOR_THE_COACH = {Because.UNKNOWN_HEAVY, Because.TOO_LIGHT, Because.NO_SAFE_OPTION}
# What is done for time with no end to it ends for whoever should do less (estimate).
MOST_MINUTES = 20.0
# Where a line is kept easy the part isn't hard (5 is, on the scale of efforts).
NOT_HARD = 5
AS_MUCH_AS_GOES = {Format.MAX_REPS, Format.HOLD, Format.MAX_LOAD}
FORBIDS: Mapping[SessionRule, Literal["clearance", "rest"]] = {"cleared-first": "clearance", "rest": "rest"}


def version_for(
    session: Session,
    profile: Profile,
    catalogue: Catalogue,
    orders: Orders = NO_ORDERS,
    *,
    year: int | None = None,
    table: Costs | None = None,
    cut: Cut = NO_CUT,
) -> Version | Withheld:
    """The session as this athlete does it; `Withheld` where screening, sickness or a limit forbids any.

    Pure: the same input gives the same version. What is not known yet (None in the profile) counts as not
    there: no equipment, no limits; before the screening nothing above moderate. The session's date tells the
    athlete's age, or the `year` where it has none. `table`: other points than the table's, to try them. `cut`:
    how much of each block there is time for.
    Raises UnknownMovement for a line that the catalogue doesn't know.
    """
    withheld = withheld_from(profile)
    if withheld is not None:
        return withheld
    notes = notes_of(orders.faults, catalogue) if orders.faults else NO_NOTES
    athlete = Athlete(profile, catalogue, session.date.year if session.date else year, notes)
    easing = athlete.easing
    chosen = tuple(chosen_blocks(session, athlete, orders, catalogue, table=table, cut=cut))
    blocks = [_version_block(one, athlete) for one in chosen]
    lines = [line for block in blocks for line in block.every_line]
    is_less = any(made.cap_s != one.whole.block.cap_s for made, one in zip(blocks, chosen, strict=True))
    return Version(
        athlete=profile.name,
        as_written=easing is None and counts_as_written(session, blocks, orders.tolerance),
        tolerance=orders.tolerance,
        effort_at_most=_effort_at_most(session, athlete),
        scored=athlete.scored,
        easing=easing,
        is_less=is_less or any(one.plan.block != one.whole.block for one in chosen),
        blocks=tuple(blocks),
        cautions=_cautions(athlete, lines),
        needs_coach=(*_coach_first(athlete), *_for_the_coach(chosen, blocks)),
    )


def _effort_at_most(session: Session, athlete: Athlete) -> float | None:
    """What is theirs, or what the coach wants of all the work, if that is less."""
    most, work = athlete.effort_at_most, [one for one in session.blocks if one.kind not in KEPT]
    efforts = [one.effort.high for one in work if one.effort and one.effort.high is not None]
    return most if most is None or not work or len(efforts) < len(work) else min(most, max(efforts))


def withheld_from(profile: Profile) -> Withheld | None:
    """Why there is no session for this athlete at all today; None if there is one."""
    if profile.screening is Screening.STOP:
        return Withheld(athlete=profile.name, because="screening")
    if profile.today.sick:
        return Withheld(athlete=profile.name, because="rest")
    for one in profile.limits or ():
        if (because := FORBIDS.get(limit(one).session)) is not None:
            return Withheld(athlete=profile.name, because=because, about=one)
    return None


def _version_block(chosen: Chosen, athlete: Athlete) -> VersionBlock:
    block = chosen.plan.block
    if chosen.sections is None:
        return _left_out(chosen.number, chosen.plan)
    picked = iter(chosen.done)
    buy_in, lines, cash_out = (
        tuple(_version_line(place, *next(picked)) for place in range(1, len(rows) + 1))
        for rows in chosen.sections
    )
    done = [(row.plan, option) for row, option in chosen.done]
    eases = any(one.way is not None and athlete.goes_easy(one.way) for _, one in done)
    sore = is_mostly_sore(done, athlete)
    made = VersionBlock(
        block=chosen.number,
        format=block.format,
        minutes=_minutes(block, athlete.minutes),
        rounds=_rounds(block, done, athlete),
        scheme=block.scheme,
        cap_s=_cap_s(block, athlete.minutes, eased=athlete.easing is not None),
        every_s=block.every_s,
        work_s=block.work_s,
        rest_s=block.rest_s,
        rest_stations=block.rest_stations,
        effort=block.effort and block.effort.at_most(athlete.effort_at_most or (NOT_HARD if eases else None)),
        pace=athlete.effort_at_most or (NOT_HARD if sore else None),
        notes=block.notes,
        scored=block.scored
        and athlete.scored
        and not (
            sore or is_easy(block) or _tries_a_joint(block, done, athlete) or _goes_gently(done, athlete)
        ),
        counts=block.counts,
        buy_in=buy_in,
        lines=lines,
        cash_out=cash_out,
    )
    turn = turn_of(made, athlete.profile)
    return made if turn is None else made.model_copy(update={"turn": turn})


def _rounds(block: Block, done: Sequence[tuple[LinePlan, Option]], athlete: Athlete) -> int | None:
    """How many sets there are with what is done: fewer of many, and of what is sore."""
    if not block.rounds or (block.format is not Format.SETS and not block.rest_s):
        return block.rounds
    sets = sets_of(block.rounds, done) if block.format is Format.SETS else block.rounds
    return fewer_sets(sets, done, athlete)


def _tries_a_joint(block: Block, done: Iterable[tuple[LinePlan, Option]], athlete: Athlete) -> bool:
    """Whether as much as goes would be asked of what stands in for a sore joint's sake: nobody tests that."""
    return block.format in AS_MUCH_AS_GOES and any(athlete.spares_a_joint(plan.ways[0]) for plan, _ in done)


def _goes_gently(done: Iterable[tuple[LinePlan, Option]], athlete: Athlete) -> bool:
    """Whether a part is nothing but ways to go that are kept easy for something's sake: nobody times those."""
    ways = [option.way for _, option in done if option.way is not None]
    return bool(ways) and all(
        one.movement.pattern is Pattern.TRAVEL and athlete.must_spare(one) for one in ways
    )


def _left_out(number: int, plan: BlockPlan) -> VersionBlock:
    """A part for which there is no time today."""
    why = Reason(because=Because.NO_TIME)
    buy_in, lines, cash_out = (
        tuple(resting(place, one, why) for place, one in enumerate(section, 1)) for section in plan.sections
    )
    return VersionBlock(
        block=number, format=plan.block.format, scored=False, buy_in=buy_in, lines=lines, cash_out=cash_out
    )


def _version_line(place: int, row: Row, option: Option) -> VersionLine:
    reason = (
        _as_pinned(row.pin, row.plan, option)
        if row.pin
        else reason_beside(row.plan, option, row.athlete, row.free)
    )
    return line_of(place, row.plan, option, row.athlete, reason)


def _as_pinned(pin: Pin, plan: LinePlan, option: Option) -> Reason:
    if pin.by == "coach":
        return Reason(because=Because.COACH)
    return Reason(because=Because.ASKED, about=pin.cause, keeps=keeps(plan, option))


def _minutes(block: Block, most: float | None) -> float | None:
    return block.minutes if block.minutes is None or most is None else min(block.minutes, most)


def _cap_s(block: Block, most: float | None, *, eased: bool) -> float | None:
    """What is done for time ends when the minutes that there are today are over; for whoever does less, at last.

    Rounds with rests end by themselves, and would be cut short by an end that counts only work.
    """
    if block.format is Format.FOR_TIME and block.cap_s is None and eased and not block.rest_s:
        most = min(most or MOST_MINUTES, MOST_MINUTES)
    if most is None or block.format is not Format.FOR_TIME:
        return block.cap_s
    return most * 60 if block.cap_s is None else min(block.cap_s, most * 60)


def _cautions(athlete: Athlete, lines: Iterable[VersionLine]) -> tuple[Caution, ...]:
    """Of what must be spared, then of each thing that is held, sat on or leaned on."""
    told = [
        (line, athlete.catalogue.variant(f"{line.movement}/{line.variant}")[1])
        for line in lines
        if line.variant
    ]
    used = dict.fromkeys(thing for line, variant in told for thing in _used(line, variant, athlete))
    asked = {demand for _, variant in told for demand in variant.demands}
    sides = sides_of(athlete.profile)
    mentioned = to_mention(athlete.profile.limits or ())
    limits = tuple(
        Caution(of="limit", id=one, side=sides.get(one)) for one in mentioned if _is_told(limit(one), asked)
    )
    return limits + tuple(Caution(of="implement", id=implement) for implement in used)


def _is_told(one: Limit, asked: set[Demand]) -> bool:
    return not one.caution_at or not asked.isdisjoint(one.caution_at)


def _used(line: VersionLine, variant: Variant, athlete: Athlete) -> Iterator[str]:
    if line.implement:
        yield line.implement
    yield from (thing for need in variant.needs if (thing := athlete.gear.first_of(need)) is not None)


def _coach_first(athlete: Athlete) -> Iterable[NeedsCoach]:
    for one in athlete.profile.limits or ():
        if limit(one).session == "coach-first":
            yield NeedsCoach(because=Because.LIMIT, about=one)


def _for_the_coach(chosen: Iterable[Chosen], blocks: Iterable[VersionBlock]) -> Iterable[NeedsCoach]:
    """What the coach has to hear of: each movement of a block once, however often it is written there."""
    for one, block in zip(chosen, blocks, strict=True):
        told = set[tuple[str, Because]]()
        for row, line in zip(one.rows, block.every_line, strict=False):
            about = row.plan.line.movement, line.reason.because
            if _concerns_coach(line) and about not in told:
                told.add(about)
                yield _need(block.block, line)


def _concerns_coach(line: VersionLine) -> bool:
    """Nothing safe, another pattern, or a question only the coach can answer; not what they chose themselves."""
    if line.reason.because in {Because.COACH, Because.NO_TIME}:
        return False
    other_pattern = line.change is Change.MOVEMENT and line.reason.keeps is None
    if line.reason.suits_kg is not None:
        return True
    return other_pattern or line.change is Change.REST or line.reason.because in FOR_THE_COACH


def _need(block: int, line: VersionLine) -> NeedsCoach:
    return NeedsCoach(
        block=block,
        line=line.line,
        written=line.written,
        change=line.change,
        because=line.reason.because,
        about=line.reason.about,
        suits_kg=line.reason.suits_kg,
    )
