"""Whoever wrote something for a group hears of it when it didn't get there."""

from collections.abc import Mapping
from datetime import datetime
from typing import Any, Final

from core.desk.access import admitted
from core.desk.commands import SendAgain
from core.desk.errors import AlreadyDone, UnknownThing
from core.desk.joining.says import SendingAgain, Undelivered
from core.desk.outcome import Outcome, Say
from core.desk.visit import Visit
from core.store.records import GIVEN_UP, Chat, Group, GroupState, Letter, Role
from core.store.unit import Unit

UNDELIVERED: Final = "undelivered"


async def undelivered_due(uow: Unit, now: datetime, refs: Mapping[str, Any]) -> Outcome:  # noqa: ARG001
    """A post never reached its group: its author is told; of anything else for the group, every coach."""
    letter = await uow.outbox.get(refs["letter"])
    group = await uow.groups.by_chat(letter.chat_id) if letter else None
    if letter is None or group is None or letter.state not in GIVEN_UP:
        return Outcome()
    chat = await uow.chats.get(letter.chat_id)
    session = letter.refs.get("session")
    record = await uow.sessions.get(session) if session else None
    said = Undelivered(
        letter=letter.id,
        group=group.title,
        is_session=record is not None,
        title=record.session.title if record else None,
        shut_out=chat is not None and not chat.reachable,
    )
    readers = await _readers(uow, group, record.author_id if record else None)
    key = f"{UNDELIVERED}:{letter.id}:{letter.tries}"
    return Outcome(tuple(Say(one.id, said, key=f"{key}:{one.id}") for one in readers))


async def _readers(uow: Unit, group: Group, author: int | None) -> list[Chat]:
    if author is not None:
        people = [author]
    elif group.state is GroupState.LEFT:
        return []  # whoever took the bot out of the group knows that it says nothing there
    else:
        people = [coach.person_id for coach in await uow.groups.members(group.id, role=Role.COACH)]
    chats = [await uow.chats.private_of(person) for person in people]
    return [chat for chat in chats if chat is not None]


@admitted
async def send_again(visit: Visit, command: SendAgain) -> Outcome:
    """The coach says that it may be tried once more: the bot is in the group again, say."""
    letter = await _letter_for_group(visit, command.letter)
    group = await visit.uow.groups.by_chat(letter.chat_id)
    if group is None:
        raise UnknownThing
    if letter.state not in GIVEN_UP:
        raise AlreadyDone
    await visit.uow.undelivered.replay([letter.id])
    return visit.told(SendingAgain(group=group.title)) + Outcome(settles=True)


async def _letter_for_group(visit: Visit, letter_id: int) -> Letter:
    letter = await visit.uow.outbox.get(letter_id)
    if letter is None:
        raise UnknownThing
    return letter
