"""A version as it is shown: with what was asked of its lines, what was done last time, what is different today."""

from collections.abc import Iterable, Iterator, Sequence
from datetime import UTC, date, datetime

from core.athletes.limits import limits
from core.athletes.today import as_of, differing
from core.athletes.values import Different, Evidence, Profile
from core.desk.days import today_in
from core.desk.profile.learning import with_learned
from core.desk.sessions.reading import with_notes
from core.desk.versions.says import Changed, LastTime, ShowVersion, Understood
from core.desk.visit import Visit
from core.forecast.clock import clocks_of
from core.forecast.forecast import outlook_of
from core.forecast.people import People
from core.movements.lookup import catalogue
from core.movements.values import Pattern
from core.scaling.improvising import improvised
from core.scaling.orders import Most, Orders, Pin
from core.scaling.rising import rising_sets
from core.scaling.stepping import big_steps
from core.scaling.values import Change, Spot, Version, VersionLine
from core.scaling.warm_up import warm_up_for
from core.sessions.values import Session
from core.store.records import CoachOrder, Done, FaultRecord, SessionRecord, VersionRecord

# So many scored blocks back is a movement looked for (estimate: about two months of a busy athlete).
LOOKS_BACK = 40
# What a coach decides of every line rather than of one movement.
EVERY_LINE = ""
# The same of days that a coach wants easy for one athlete or for all; no line is written so.
EASY_DAYS = "*easy*"
# The same of the most that one athlete shall have in the hands.
AT_MOST = "*at most*"
NEVER = datetime.max.replace(tzinfo=UTC)


async def today_of(visit: Visit, record: SessionRecord) -> date:
    return today_in(await visit.group(record.group_id), visit.now)


async def profile_today(visit: Visit, record: SessionRecord) -> Profile:
    """The visitor's profile as it counts today. Never to be stored."""
    return await as_counts(visit, await visit.profile(), visit.person.id, record)


async def as_counts(visit: Visit, profile: Profile, person_id: int, record: SessionRecord) -> Profile:
    """Somebody's profile as it counts today, with the days that their coach calls easy. Never to be stored."""
    day = await today_of(visit, record)
    profile = await with_learned(visit.uow, person_id, profile, visit.now)
    of_all = await visit.uow.orders.of_everybody(record.group_id, day)
    standing = await visit.uow.orders.standing(record.group_id, person_id, record.id, day)
    return as_of(as_coached(profile, (*of_all, *standing), day), day)


def as_coached(profile: Profile, standing: Sequence[CoachOrder], day: date) -> Profile:
    """With what their coach wants left out of all their lines, and the days that are to be easy."""
    spared = [name for one in standing if (name := spared_in(one.movement))]
    easy = [easy_days(one.pin, day) for one in standing if one.movement == EASY_DAYS]
    if not spared and not easy:
        return profile
    limits_now = tuple(dict.fromkeys((*(profile.limits or ()), *spared)))
    return profile.model_copy(update={"limits": limits_now, "different": (*profile.different, *easy)})


def easy_days(pin: Pin, day: date) -> Different:
    """Those that an order is of; without an end it is told of this day."""
    return Different(since=pin.since, until=pin.until or day, ease="easy-week")


def spared_as(limit: str) -> str:
    """What stands in the place of a movement where a coach leaves out what is in many lines."""
    return f"*{limit}*"


def spared_in(movement: str) -> str | None:
    name = movement.strip("*")
    return name if movement == spared_as(name) and any(one.id == name for one in limits()) else None


async def orders_for(visit: Visit, record: SessionRecord) -> Orders:
    """What the visitor asked of single lines, and what they did last time of the same ones."""
    done = await done_before(visit, record)
    last: dict[str, VersionLine] = {}
    for one in done:
        for line in lines_of(one):
            last.setdefault(line.written, line)
    own = await visit.uow.adjustments.standing(record.id, visit.person.id)
    decided = await visit.uow.orders.standing(record.group_id, visit.person.id, record.id, record.day)
    noted = await visit.uow.faults.standing(record.group_id, visit.person.id)
    member = await visit.uow.groups.membership(visit.person.id, record.group_id)
    return Orders(
        heavier=member is not None and member.goes_heavier,
        volume_first=member is not None and member.volume_first,
        pins=own + coach_pins(record.session, decided, own),
        last=tuple(last.values()),
        tolerance=(await visit.group(record.group_id)).tolerance,
        faults=(*(one.fault for one in noted), *most_of(decided)),
        left_out=tuple(dict.fromkeys(one.pin.without for one in decided if one.pin.without)),
        past=decided_since(record.session, decided, own, noted) if noted else (),
    )


def most_of(orders: Sequence[CoachOrder]) -> Iterator[Most]:
    """What their coach wants no more than in their hands."""
    caps = (one.pin.load_kg for one in orders if one.movement == AT_MOST)
    return (Most(cap_kg=kg) for kg in caps if kg is not None)


def coach_pins(session: Session, orders: Sequence[CoachOrder], own: Sequence[Pin]) -> tuple[Pin, ...]:
    """What the coach decided, wherever its movement is written; the athlete's word of the day goes first."""
    taken = {(pin.block, pin.part, pin.line) for pin in own}
    decided = {line.movement: decided_of(line.movement, orders) for line in session.every_line}
    return tuple(
        order.pin.model_copy(update={"block": number, "part": part, "line": place})
        for number, block in enumerate(session.blocks, 1)
        for part, lines in (("buy_in", block.buy_in), ("lines", block.lines), ("cash_out", block.cash_out))
        for place, line in enumerate(lines, 1)
        if (order := decided[line.movement]) and (number, part, place) not in taken
    )


def decided_of(movement: str, orders: Sequence[CoachOrder]) -> CoachOrder | None:
    """The newest word about it by its name, else about what is called so, else about every line."""
    newest = {order.movement: order for order in orders}
    of_family = next((one for one in reversed(orders) if one.pin.leaves_out(movement)), None)
    return newest.get(movement) or of_family or newest.get(EVERY_LINE)


def decided_since(
    session: Session, orders: Sequence[CoachOrder], own: Sequence[Pin], noted: Sequence[FaultRecord]
) -> tuple[Spot, ...]:
    """The lines that the coach decided later than they noted anything of its pattern: the newer word counts."""
    noted_at: dict[Pattern, datetime] = {}
    for one in noted:
        assert one.made_at is not None, "what stands was made"
        pattern = catalogue().movement(one.fault.movement).pattern
        noted_at[pattern] = max(one.made_at, noted_at.get(pattern, one.made_at))
    spots = ((Spot(pin.block, pin.part, pin.line), pin) for pin in coach_pins(session, orders, own))
    return tuple(
        spot
        for spot, pin in spots
        if (order := decided_of(written_at(session, spot), orders)) is None
        or order.made_at
        > noted_at.get(catalogue().movement(pin.movement or written_at(session, spot)).pattern, NEVER)
    )


def written_at(session: Session, spot: Spot) -> str:
    """The movement that the coach wrote at a place."""
    lines = getattr(session.blocks[spot.block - 1], spot.part)
    return str(lines[spot.line - 1].movement)


async def done_before(visit: Visit, record: SessionRecord) -> list[Done]:
    done = await visit.uow.scores.done_by(visit.person.id, LOOKS_BACK)
    return [one for one in done if one.session_id != record.id]


async def showing(
    visit: Visit,
    record: SessionRecord,
    profile: Profile,
    shown: VersionRecord,
    understood: Understood | None = None,
    changed: Changed | None = None,
) -> ShowVersion:
    """Everything that stands in the message of a version."""
    day = await today_of(visit, record)
    session, notes = with_notes(record, await visit.group(record.group_id))
    warm_up = warm_up_for(record.session, shown.version, profile, catalogue())
    outlooks = outlook_of(shown.version, People(profile, catalogue(), day.year))
    done = await done_before(visit, record)
    return ShowVersion(
        version_id=shown.id,
        session_id=record.id,
        session=session,
        version=shown.version,
        units=profile.units,
        notes=notes,
        understood=understood,
        changed=changed,
        last=last_times(shown.version, done, profile.evidence, day),
        different=differing(profile, day),
        day=day,
        group=await visit.title_of(record.group_id),
        warm_up=warm_up,
        improvised=improvised(record.session, profile, catalogue()),
        rising=rising_sets(shown.version, profile, catalogue()) if warm_up else (),
        outlooks=outlooks,
        steps=big_steps(shown.version, [line for one in done for line in lines_of(one)]),
        is_timed=bool(clocks_of(shown.version.blocks, outlooks)),
    )


def last_times(
    version: Version, done: Sequence[Done], evidence: Sequence[Evidence], today: date
) -> tuple[LastTime, ...]:
    """Where there was one, the last time of each line's movement: done and scored, else a test before today."""
    found = []
    for place, (_, line) in enumerate(version.spots, 1):
        if line.change is not Change.REST:
            found.append(_last_done(place, line, done) or _last_test(place, line, evidence, today))
    return tuple(one for one in found if one is not None)


def _last_done(place: int, line: VersionLine, done: Iterable[Done]) -> LastTime | None:
    for one in done:
        for before in lines_of(one):
            if before.movement == line.movement and before.change is not Change.REST:
                return LastTime(place=place, on=one.day, line=before, score=one.score)
    return None


def _last_test(place: int, line: VersionLine, evidence: Sequence[Evidence], today: date) -> LastTime | None:
    tests = [
        one
        for one in evidence
        if one.kind == "test" and one.movement == line.movement and one.reps and one.on and one.on < today
    ]
    newest = max(tests, key=lambda one: one.on or date.min, default=None)
    if newest is None or newest.on is None:
        return None
    return LastTime(place=place, on=newest.on, reps=newest.reps, load_kg=newest.load_kg)


def lines_of(done: Done) -> tuple[VersionLine, ...]:
    """The lines of the block that was scored."""
    return next((one.every_line for one in done.version.blocks if one.block == done.block + 1), ())
