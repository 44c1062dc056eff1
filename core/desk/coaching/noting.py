"""A coach notes how an athlete moves: read back, said yes to, told to the athlete, and lifted again."""

from collections.abc import Mapping, Sequence
from typing import Any, Final

from core.desk.access import admitted
from core.desk.coached import Roster, athlete_in, coached_ids
from core.desk.coaching.commands import DropFault, KeepFault, LiftFault, RewordFault
from core.desk.coaching.says import (
    AskFaultWords,
    FaultDropped,
    FaultLifted,
    FaultMade,
    FaultOver,
    FaultRead,
    FaultShown,
    FaultsStanding,
    FaultTold,
    FaultUnclear,
    NoFaults,
)
from core.desk.errors import AlreadyDone, StalePress
from core.desk.outcome import Outcome, Said, Say
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.coaching.fault_wishes import LiftWish, asks_for_notes, read_lift
from core.notation.coaching.faults import ToldFault, read_fault
from core.notation.people import find_name
from core.scaling.orders import Fault
from core.store.records import FaultRecord, Membership

# The kind of open question whose answer is how a note should read.
WORDS: Final = "fault"
# A cue longer than this is read by nobody in the middle of a set (estimate).
MOST_LETTERS: Final = 160


async def as_fault(visit: Visit, text: str, athletes: Roster) -> Outcome | None:
    """What a coach notes about one of their `athletes`, or wants of the notes that stand."""
    whose = asks_for_notes(text, athletes)
    if whose is not None:
        asked = [athletes[whose]] if whose else athletes.everybody
        return await listed(visit, asked, whose) if asked else None
    lift = read_lift(text, athletes, catalogue())
    if lift is not None:
        return await lift_in_words(visit, lift, athletes[lift.name])
    told = read_fault(text, athletes, catalogue())
    if told is not None:
        return await note(visit, told, athletes[told.name])
    return await as_words(visit, text) if find_name(text, athletes) else None


async def as_words(visit: Visit, text: str) -> Outcome | None:
    """How a note should read, where that was asked last: with a name in it, it could be taken for a score."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind != WORDS:
        return None
    return await tell_fault_words(visit, question.refs, text)


async def note(visit: Visit, told: ToldFault, athlete: Membership) -> Outcome:
    """Written down and read back; it stands once the coach says yes."""
    if told.movement is None or not (told.words or told.cap_kg):
        return visit.told(FaultUnclear(athlete=athlete.person.name, movement=told.movement))
    fault = Fault(movement=told.movement, words=told.words[:MOST_LETTERS], cap_kg=told.cap_kg)
    return await read_back(visit, athlete, fault)


async def read_back(visit: Visit, athlete: Membership, fault: Fault) -> Outcome:
    record = await visit.uow.faults.write(
        group_id=athlete.group_id,
        person_id=athlete.person_id,
        fault=fault,
        by_id=visit.person.id,
        now=visit.now,
    )
    read = FaultRead(
        fault=shown(record),
        athlete=athlete.person.name,
        units=(await visit.group(athlete.group_id)).units,
        theirs=(await visit.seen_as(athlete.person).profile()).units,
    )
    return visit.told(read)


def shown(record: FaultRecord) -> FaultShown:
    fault = record.fault
    return FaultShown(id=record.id, movement=fault.movement, words=fault.words, cap_kg=fault.cap_kg)


@admitted
async def keep_fault(visit: Visit, command: KeepFault) -> Outcome:
    record, athlete = await fault_of(visit, command.fault)
    if record.made_at is not None:
        raise AlreadyDone
    await visit.uow.faults.make(record.id, visit.now)
    units = (await visit.seen_as(athlete.person).profile()).units
    made = FaultMade(fault=shown(record), athlete=athlete.person.name)
    told = await to_athlete(visit, record, FaultTold(fault=shown(record), units=units), "told")
    return visit.told(made) + told + Outcome(settles=True)


@admitted
async def reword_fault(visit: Visit, command: RewordFault) -> Outcome:
    record, athlete = await fault_of(visit, command.fault)
    if record.made_at is not None:
        raise AlreadyDone
    return await ask_words(visit, record, athlete) + Outcome(settles=True)


async def ask_words(
    visit: Visit, record: FaultRecord, athlete: Membership, *, again: bool = False
) -> Outcome:
    refs = {"fault": record.id, "person": record.person_id}
    await visit.uow.questions.ask(visit.chat, WORDS, refs, visit.now)
    return visit.told(AskFaultWords(athlete=athlete.person.name, again=again))


async def tell_fault_words(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """The same with other words, read back like the first: what was read before can't be said yes to any more."""
    record, athlete = await fault_of(visit, refs["fault"])
    if record.made_at is not None:
        raise StalePress
    words = " ".join(text.split()).strip("\"'\u201c\u201d ")
    if not words or len(words) > MOST_LETTERS:
        return await ask_words(visit, record, athlete, again=True)
    await visit.uow.questions.close(visit.chat)
    await visit.uow.faults.drop(record.id, visit.now)
    return await read_back(visit, athlete, record.fault.model_copy(update={"words": words}))


@admitted
async def drop_fault(visit: Visit, command: DropFault) -> Outcome:
    record, _ = await fault_of(visit, command.fault)
    if record.made_at is not None:
        raise AlreadyDone
    await visit.uow.faults.drop(record.id, visit.now)
    return visit.told(FaultDropped()) + Outcome(settles=True)


@admitted
async def lift_fault(visit: Visit, command: LiftFault) -> Outcome:
    record, athlete = await fault_of(visit, command.fault)
    if record.lifted_at is not None:
        raise AlreadyDone
    if record.made_at is None:
        raise StalePress
    return await lift(visit, record, athlete)


async def lift(visit: Visit, record: FaultRecord, athlete: Membership) -> Outcome:
    await visit.uow.faults.lift(record.id, visit.now)
    movement = record.fault.movement
    over = await to_athlete(visit, record, FaultOver(movement=movement), "over")
    return visit.told(FaultLifted(athlete=athlete.person.name, movement=movement)) + over


async def lift_in_words(visit: Visit, wish: LiftWish, athlete: Membership) -> Outcome:
    """What is meant, where that is clear; else what there is to lift."""
    standing = await visit.uow.faults.standing(athlete.group_id, athlete.person_id)
    meant = standing if wish.movement is None else about(standing, wish.movement)
    if not meant:
        return visit.told(NoFaults(athlete=athlete.person.name))
    if len(meant) > 1 and not (wish.every or wish.movement):
        return await listed(visit, [athlete], athlete.person.name)
    lifted = Outcome()
    for record in meant:
        lifted += await lift(visit, record, athlete)
    return lifted


def about(standing: Sequence[FaultRecord], movement: str) -> list[FaultRecord]:
    """Those of the movement; where there are none, those of its pattern."""
    exactly = [one for one in standing if one.fault.movement == movement]
    pattern = catalogue().movement(movement).pattern
    return exactly or [one for one in standing if catalogue().movement(one.fault.movement).pattern is pattern]


async def listed(visit: Visit, athletes: Sequence[Membership], whose: str) -> Outcome:
    """What stands, with a way to lift each."""
    found = [
        (one.person.name, shown(record))
        for one in athletes
        for record in await visit.uow.faults.standing(one.group_id, one.person_id)
    ]
    if not found:
        return visit.told(NoFaults(athlete=whose or None))
    units = (await visit.group(athletes[0].group_id)).units
    return visit.told(FaultsStanding(shown=tuple(found), units=units))


async def fault_of(visit: Visit, fault_id: int) -> tuple[FaultRecord, Membership]:
    """A note of a group that the visitor coaches, and whom it is about."""
    record = await visit.uow.faults.find(fault_id, await coached_ids(visit))
    if record is None or (record.made_at is None and record.lifted_at is not None):
        raise StalePress
    return record, await athlete_in(visit.uow, record.group_id, record.person_id)


async def to_athlete(visit: Visit, record: FaultRecord, what: Said, when: str) -> Outcome:
    """Into the athlete's own chat, once."""
    chat = await visit.uow.chats.private_of(record.person_id)
    if chat is None:
        return Outcome()
    return Outcome((Say(chat.id, what, key=f"fault:{record.id}:{when}"),))
