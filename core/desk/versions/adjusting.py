"""An athlete changes a line of their version: each tap asks its cause where it matters, and makes a new version."""

from datetime import date
from typing import Final

from core.athletes.equipment import at, furnished, without
from core.athletes.today import place_on, said
from core.athletes.values import Different, Equipment, Evidence, Profile
from core.desk.access import admitted
from core.desk.errors import StalePress
from core.desk.outcome import Outcome
from core.desk.today.pain import likeliest
from core.desk.today.says import AskMinutes
from core.desk.versions.commands import (
    ChangeLines,
    DoAsWritten,
    EaseLine,
    FreeLine,
    HardenLine,
    LackThing,
    OpenLine,
    ShowLine,
)
from core.desk.versions.looking import Looked, current, look, show_again
from core.desk.versions.says import (
    AsHardAsItGets,
    AskLack,
    AskWhatHurts,
    AskWhy,
    ChooseLine,
    HowTo,
    LineMenu,
    NotAsWritten,
    NothingEasier,
)
from core.desk.versions.showing import today_of
from core.desk.visit import Visit
from core.movements.lookup import Catalogue, catalogue
from core.scaling.adjusting import Barred, as_written, easier, harder, something_else
from core.scaling.barriers import sore_place
from core.scaling.orders import Noted, Pin
from core.scaling.values import Change, Spot, VersionLine
from core.sessions.values import Session

# Only these say something of ability: the other causes are of the day or of the kit.
IS_EVIDENCE: Final = frozenset({"too-hard", "too-easy"})


@admitted
async def change_lines(visit: Visit, command: ChangeLines) -> Outcome:
    record, version = await current(visit, command.version)
    lines = tuple(line for _, line in version.version.spots)
    units = (await visit.profile()).units
    newest = await visit.uow.sessions.latest_posted(record.group_id)
    is_past = newest is not None and newest.id != record.id
    of = (record.day, record.session.title) if is_past else None
    asked = ChooseLine(version_id=version.id, of=of, lines=lines, units=units)
    return visit.told(asked, session=record.id, version=version.id)


@admitted
async def open_line(visit: Visit, command: OpenLine) -> Outcome:
    looked = await look(visit, command.version, command.place)
    pins = await visit.uow.adjustments.standing(looked.record.id, visit.person.id)
    changed = any((pin.block, pin.part, pin.line) == looked.spot for pin in pins)
    thing = looked.line.implement is not None and looked.line.change is not Change.REST
    return Outcome(becomes=LineMenu(**looked.about, changed=changed, thing=thing))


@admitted
async def ease_line(visit: Visit, command: EaseLine) -> Outcome:
    looked = await look(visit, command.version, command.place)
    match command.cause:
        case None:
            return Outcome(becomes=AskWhy(**looked.about, step="easier"))
        case "time":
            return Outcome(becomes=AskMinutes(version_id=looked.version.id))
        case "hurts":
            return Outcome(becomes=AskWhatHurts(**looked.about, limits=likeliest(looked.line)))
        case "sore":
            return await spare_sore(visit, looked)
    pin = easier(*asked_of(looked))
    if pin is None:
        await keep(visit, looked, "easier", command.cause, None)
        return Outcome(becomes=NothingEasier(**looked.about))
    return await change(visit, looked, "easier", command.cause, pin)


async def spare_sore(visit: Visit, looked: Looked) -> Outcome:
    """Soreness lightens today only; a line that it leaves alone takes one step down."""
    place = sore_place(catalogue().movement(looked.line.movement).pattern)
    today = await today_of(visit, looked.record)
    sore = said(await visit.profile(), Different(until=today, sore=place), today)
    await visit.uow.profiles.save(visit.person.id, sore, visit.now)
    pin = easier(*asked_of(looked))
    return await change(visit, looked, "easier", "sore", pin)


@admitted
async def harden_line(visit: Visit, command: HardenLine) -> Outcome:
    looked = await look(visit, command.version, command.place)
    if command.cause is None:
        return Outcome(becomes=AskWhy(**looked.about, step="harder"))
    asked = asked_of(looked)
    pin = harder(*asked) or (something_else(*asked) if command.cause == "bored" else None)
    if pin is None:
        await keep(visit, looked, "harder", command.cause, None)
        return Outcome(becomes=AsHardAsItGets(**looked.about))
    return await change(visit, looked, "harder", command.cause, pin)


def asked_of(looked: Looked) -> tuple[Session, Profile, Catalogue, Spot, VersionLine, tuple[Noted, ...]]:
    """What every step from a line is looked up by."""
    return looked.record.session, looked.profile, catalogue(), looked.spot, looked.line, looked.faults


@admitted
async def do_as_written(visit: Visit, command: DoAsWritten) -> Outcome:
    looked = await look(visit, command.version, command.place)
    pin = as_written(looked.record.session, looked.profile, catalogue(), looked.spot, looked.faults)
    if isinstance(pin, Barred):
        return Outcome(becomes=NotAsWritten(**looked.about, because=pin.because, about=pin.about))
    return await change(visit, looked, "as_written", "as-written", pin)


@admitted
async def free_line(visit: Visit, command: FreeLine) -> Outcome:
    """Back to what would be chosen without the athlete's wish."""
    looked = await look(visit, command.version, command.place)
    await visit.uow.adjustments.undo(looked.record.id, visit.person.id, looked.spot, visit.now)
    return await show_again(visit, looked.record.id, "undone", looked.place)


@admitted
async def show_line(visit: Visit, command: ShowLine) -> Outcome:
    looked = await look(visit, command.version, command.place)
    return visit.told(HowTo(variants=((looked.line.movement, looked.line.variant),)))


@admitted
async def lack_thing(visit: Visit, command: LackThing) -> Outcome:
    """What is not there today, or not any more, is not prescribed."""
    looked = await look(visit, command.version, command.place)
    thing = lacked(looked.profile, looked.line)
    if thing is None:
        raise StalePress
    today = await today_of(visit, looked.record)
    profile = await visit.profile()
    place = place_on(profile, today)
    if command.how is None:
        return Outcome(becomes=AskLack(**looked.about, thing=thing, where=place))
    if command.how == "today":
        changed = said(profile, Different(until=today, lacks=thing), today)
    else:
        changed = furnished(profile, place, without(at(profile, place) or (), thing))
    await visit.uow.profiles.save(visit.person.id, changed, visit.now)
    await visit.uow.adjustments.undo(looked.record.id, visit.person.id, looked.spot, visit.now)
    return await show_again(visit, looked.record.id, "lacking", looked.place)


def lacked(profile: Profile, line: VersionLine) -> Equipment | None:
    """The owned thing that a line uses, as what is gone of it: so much that the line can't be done with it."""
    if line.implement is None or line.change is Change.REST:
        return None
    fixed = [
        one
        for one in profile.equipment or ()
        if one.implement == line.implement and line.load_kg in one.loads_kg
    ]
    if line.load_kg is not None and fixed:
        each = max(1, sum(one.each for one in fixed) - (line.count or 1) + 1)
        return Equipment(implement=line.implement, loads_kg=(line.load_kg,), each=each)
    whole = (one for one in profile.equipment or () if one.implement == line.implement and not one.loads_kg)
    return next(whole, None)


async def change(visit: Visit, looked: Looked, step: str, cause: str, pin: Pin | None) -> Outcome:
    """Keep what was asked, with what it says of ability, and show what comes of it."""
    await keep(visit, looked, step, cause, pin)
    return await show_again(visit, looked.record.id, cause, looked.place)


async def keep(visit: Visit, looked: Looked, step: str, cause: str, pin: Pin | None) -> None:
    if cause in IS_EVIDENCE:
        evidence = evidence_of(looked, cause, await today_of(visit, looked.record))
        await visit.uow.profiles.add_evidence(visit.person.id, evidence, visit.now)
    await visit.uow.adjustments.add(
        session_id=looked.record.id,
        person_id=visit.person.id,
        version_id=looked.version.id,
        spot=looked.spot,
        step=step,
        cause=cause,
        pin=None if pin is None else pin.model_copy(update={"cause": cause}),
        now=visit.now,
    )


def evidence_of(looked: Looked, cause: str, on: date) -> Evidence:
    """How one set of this line was found."""
    line = looked.line
    reps = max(line.scheme, default=0) or line.amount
    return Evidence(
        kind="easier",
        cause="too-hard" if cause == "too-hard" else "too-easy",
        movement=line.movement,
        variant=line.variant,
        on=on,
        reps=reps,
        load_kg=line.load_kg,
    )
