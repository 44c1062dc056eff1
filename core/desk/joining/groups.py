"""Set a group up: greet it, then ask a coach for its zone and units in private."""

from collections.abc import Mapping
from typing import Any
from zoneinfo import available_timezones

from core.desk.access import admitted
from core.desk.commands import LeaveGroup, MoveGroup, OpenGroup, PinMessage, SetUnits, SetZone
from core.desk.errors import UnknownThing
from core.desk.joining.says import AskUnits, AskZone, CoachReady, GroupClockSet, GroupGreeting
from core.desk.outcome import Outcome, Say
from core.desk.visit import Visit
from core.measures import MassUnit
from core.notation.zones import places_in, read_zone
from core.store.records import Group, Purpose


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
        return visit.told(GroupClockSet(title=group.title, zone=command.zone)) + Outcome(settles=True)
    return await ask_units(visit, group) + Outcome(settles=True)


async def continue_set_up(visit: Visit, group: Group) -> Outcome:
    """The next thing a coach is asked: the clock, then the units."""
    if group.zone is not None:
        return await ask_units(visit, group)
    await visit.uow.questions.ask(visit.chat, "zone", {"group": group.id}, visit.now)
    return visit.told(AskZone(group=group.id, title=group.title))


async def ask_units(visit: Visit, group: Group) -> Outcome:
    assert group.zone is not None, "the clock comes first"
    await visit.uow.questions.ask(visit.chat, "units", {"group": group.id}, visit.now)
    return visit.told(AskUnits(group=group.id, zone=group.zone))


async def tell_units(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """`kilos` or `lbs`; anything else is asked again."""
    words = text.lower()
    kilos, pounds = "kilo" in words or "kg" in words, "pound" in words or "lb" in words
    if kilos == pounds:
        return await ask_units(visit, await visit.group(refs["group"]))
    units = MassUnit.KG if kilos else MassUnit.LB
    return await set_units(visit, SetUnits(group=refs["group"], units=units))


async def tell_zone(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """A zone in the coach's own words: a city, or the zone's name."""
    group_id: int = refs["group"]
    zones = read_zone(text)
    if len(zones) == 1:
        return await set_zone(visit, SetZone(group=group_id, zone=zones[0]))
    group = await visit.group(group_id)
    guesses = (zones or places_in(text))[:4]
    return visit.told(AskZone(group=group.id, title=group.title, unread=text[:60] or None, guesses=guesses))


@admitted
async def set_units(visit: Visit, command: SetUnits) -> Outcome:
    """The last step of the set-up: from now on the group is ready."""
    group = await visit.uow.groups.set_up(command.group, units=command.units)
    if group.zone is None:
        return await continue_set_up(visit, group)
    await visit.uow.questions.close(visit.chat)
    ready = CoachReady(group=group.id, title=group.title, zone=group.zone, units=group.units)
    return visit.told(ready) + Outcome(settles=True)
