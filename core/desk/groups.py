"""Set a group up: greet it, then ask a coach for its zone and units in private."""

from zoneinfo import available_timezones

from core.desk.commands import LeaveGroup, MoveGroup, OpenGroup, SetUnits, SetZone
from core.desk.errors import UnknownThing
from core.desk.outcome import Outcome, Say
from core.desk.says.groups import AskUnits, AskZone, CoachReady, GroupGreeting
from core.desk.visit import Visit
from core.notation.zones import read_zone
from core.store.records import Purpose


async def open_group(visit: Visit, command: OpenGroup) -> Outcome:
    group = await visit.uow.groups.open(chat_id=visit.chat, title=command.title, now=visit.now)
    greeting = GroupGreeting(group=group.id, title=group.title)
    return Outcome((Say(visit.chat, greeting, Purpose.POST, refs={"group": group.id}),))


async def leave_group(visit: Visit, _: LeaveGroup) -> Outcome:
    group = await visit.uow.groups.by_chat(visit.chat)
    if group is not None:
        await visit.uow.groups.mark_left(group.id)
    return Outcome()


async def move_group(visit: Visit, command: MoveGroup) -> Outcome:
    """The platform gave the chat a new address; it stays the same group."""
    await visit.uow.chats.move(command.old, command.new)
    return Outcome()


async def set_zone(visit: Visit, command: SetZone) -> Outcome:
    visit.must_coach(command.group)
    await visit.group(command.group)
    if command.zone not in available_timezones():
        raise UnknownThing
    await visit.uow.groups.set_up(command.group, zone=command.zone)
    await visit.uow.questions.close(visit.chat)
    asked = visit.told(AskUnits(group=command.group, zone=command.zone))
    return asked + Outcome(settles=True)


async def tell_zone(visit: Visit, group_id: int, text: str) -> Outcome:
    """A zone in the coach's own words: a city, or the zone's name."""
    zones = read_zone(text)
    if len(zones) == 1:
        return await set_zone(visit, SetZone(group=group_id, zone=zones[0]))
    group = await visit.group(group_id)
    return visit.told(AskZone(group=group.id, title=group.title, unread=text[:60], guesses=zones[:4]))


async def set_units(visit: Visit, command: SetUnits) -> Outcome:
    visit.must_coach(command.group)
    await visit.uow.groups.set_up(command.group, units=command.units)
    group = await visit.group(command.group)
    if group.zone is None:
        return visit.told(AskZone(group=group.id, title=group.title))
    ready = CoachReady(group=group.id, title=group.title, zone=group.zone, units=group.units)
    return visit.told(ready) + Outcome(settles=True)
