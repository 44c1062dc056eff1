"""Set a group up: greet it, then ask a coach for its zone and units in private."""

from collections.abc import Mapping
from datetime import UTC
from typing import Any
from zoneinfo import available_timezones

from core.desk.access import admitted
from core.desk.commands import LeaveGroup, MoveGroup, OpenGroup, PinMessage, SetUnits, SetZone
from core.desk.days import zone_of
from core.desk.errors import UnknownThing
from core.desk.joining.says import AskUnits, AskZone, CoachReady, GroupClockSet, GroupGreeting
from core.desk.outcome import Outcome, Say
from core.desk.sessions.scheduled import to_post
from core.desk.visit import Visit
from core.measures import MassUnit
from core.notation.calendar.zones import places_in, read_zone
from core.store.records import Group, Purpose

# A sentence of so many words with a place in it tells where they are, and nothing else.
_A_FEW = 4
_MOST_KEPT = 4000


@admitted
async def open_group(visit: Visit, command: OpenGroup) -> Outcome:
    group = await visit.uow.groups.open(chat_id=visit.chat, title=command.title, now=visit.now)
    greeting = GroupGreeting(group=group.id, title=group.title)
    return Outcome((Say(visit.chat, greeting, Purpose.POST, refs={"group": group.id}),))


@admitted
async def leave_group(visit: Visit, _: LeaveGroup) -> Outcome:
    group = await visit.uow.groups.by_chat(visit.chat)
    if group is not None:
        await visit.uow.groups.mark_left(group.id)
    return Outcome()


@admitted
async def move_group(visit: Visit, command: MoveGroup) -> Outcome:
    """The platform gave the chat a new address; it stays the same group."""
    await visit.uow.chats.move(command.old, command.new)
    return Outcome()


@admitted
async def pin_message(visit: Visit, command: PinMessage) -> Outcome:
    """What stands in its place later is pinned too."""
    await visit.uow.outbox.mark_pinned(visit.chat, command.message_id)
    return Outcome()


@admitted
async def set_zone(visit: Visit, command: SetZone) -> Outcome:
    before = await visit.group(command.group)
    if command.zone not in available_timezones():
        raise UnknownThing
    group = await visit.uow.groups.set_up(command.group, zone=command.zone)
    if before.zone is not None and await visit.uow.questions.open_in(visit.chat) is None:
        set_ = visit.told(GroupClockSet(title=group.title, zone=command.zone))
        return set_ + await keep_hours(visit, before, group) + Outcome(settles=True)
    return await ask_units(visit, group) + Outcome(settles=True)


async def keep_hours(visit: Visit, before: Group, group: Group) -> Outcome:
    """What was set to go out at an hour goes out at that hour of the new clock, if it is to come."""
    told = Outcome()
    for record in await visit.uow.sessions.scheduled_in([group.id]):
        assert record.post_at is not None, "what is scheduled has its time"
        hour = record.post_at.astimezone(zone_of(before)).replace(tzinfo=None)
        moment = hour.replace(tzinfo=zone_of(group)).astimezone(UTC)
        told += await to_post(visit, record, moment) if moment > visit.now else Outcome()
    return told


async def continue_set_up(visit: Visit, group: Group) -> Outcome:
    """The next thing a coach is asked: the clock, then the units."""
    if group.zone is not None:
        return await ask_units(visit, group)
    await visit.uow.questions.ask(visit.chat, "zone", {"group": group.id}, visit.now)
    return visit.told(AskZone(group=group.id, title=group.title))


async def kept_for_later(visit: Visit) -> str:
    """What was written while the clock was asked for, and is something else."""
    question = await visit.uow.questions.open_in(visit.chat)
    return question.refs.get("later", "") if question and question.kind in {"zone", "units"} else ""


async def ask_units(visit: Visit, group: Group) -> Outcome:
    assert group.zone is not None, "the clock comes first"
    refs = {"group": group.id, "later": await kept_for_later(visit)}
    await visit.uow.questions.ask(visit.chat, "units", refs, visit.now)
    return visit.told(AskUnits(group=group.id, zone=group.zone))


def read_units(text: str) -> MassUnit | None:
    """`kilos` or `lbs`; None for anything else."""
    words = text.lower()
    kilos, pounds = "kilo" in words or "kg" in words, "pound" in words or "lb" in words
    if kilos == pounds:
        return None
    return MassUnit.KG if kilos else MassUnit.LB


async def tell_zone(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """A zone in the coach's own words: a city, or the zone's name."""
    group_id: int = refs["group"]
    zones = read_zone(text)
    guesses = (zones or places_in(text))[:4]
    is_place = len(zones) == 1 or (len(guesses) == 1 and len(text.split()) <= _A_FEW)
    if is_place:
        return await set_zone(visit, SetZone(group=group_id, zone=guesses[0]))
    group = await visit.group(group_id)
    if not guesses and len(text.split()) >= _A_FEW:
        return await keep_till_set_up(visit, group, text)
    asked = AskZone(group=group.id, title=group.title, unread=text[:60] or None, guesses=guesses)
    return visit.told(asked)


async def keep_till_set_up(visit: Visit, group: Group, text: str) -> Outcome:
    """Which clock first; what was written is heard once that is known."""
    refs = {"group": group.id, "later": text[:_MOST_KEPT]}
    await visit.uow.questions.ask(visit.chat, "zone", refs, visit.now)
    return visit.told(AskZone(group=group.id, title=group.title, unread=text[:60], kept=True))


@admitted
async def set_units(visit: Visit, command: SetUnits) -> Outcome:
    """The last step of the set-up: from now on the group is ready."""
    group = await visit.uow.groups.set_up(command.group, units=command.units)
    if group.zone is None:
        return await continue_set_up(visit, group)
    await visit.uow.questions.close(visit.chat)
    ready = CoachReady(group=group.id, title=group.title, zone=group.zone, units=group.units)
    return visit.told(ready) + Outcome(settles=True)
