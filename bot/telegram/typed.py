"""What is typed in place of a tap: the buttons under what was last said, or under the one that is replied to."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import timedelta
from typing import Final

from bot.telegram.buttons import unpack
from bot.telegram.heard import Heard, Press
from bot.telegram.seals import Seal
from core.desk.commands import Command
from core.desk.outcome import Outcome, Say
from core.desk.talk.tapping import tapped
from core.desk.talk.undoing import asks_to_undo, undoing
from core.desk.visit import Visit

# After that a `yes`, or a `right`, is about something else (estimate); a button stays pressable.
STANDS: Final = timedelta(hours=12)
# An `undo` means the last thing but one at most: what is older is named (estimate).
LATELY: Final = 2


async def typed_tap(visit: Visit, heard: Heard, seal: Seal) -> Command | None:
    """The command of the button whose words were typed; None where they are none of them."""
    if not heard.is_written_in_private or not heard.text or heard.command is not None:
        return None
    for buttons in await offered(visit, heard.reply_to):
        label = tapped(heard.text, tuple(buttons))
        if label is not None:
            return opened(visit, seal, buttons[label])
    if asks_to_undo(heard.text):
        lately = await visit.uow.outbox.buttons_lately(visit.chat, visit.now - STANDS, LATELY)
        return undoing([[opened(visit, seal, data) for data in one.values()] for one in lately])
    return None


def opened(visit: Visit, seal: Seal, data: str) -> Command:
    return unpack(seal.opened(Press(query_id="", data=data), visit.chat))


async def offered(visit: Visit, reply_to: int | None) -> Sequence[Mapping[str, str]]:
    if reply_to is not None:
        return await visit.uow.outbox.buttons_under(visit.chat, reply_to)
    return await visit.uow.outbox.last_buttons(visit.chat, visit.now - STANDS)


def said_openly(visit: Visit, outcome: Outcome) -> Outcome:
    """What a press would show in its message, or for a moment, as a message: nothing was pressed."""
    shown = outcome.becomes or (None if outcome.says else outcome.toast)
    if shown is None:
        return outcome
    return replace(outcome, says=(*outcome.says, Say(visit.chat, shown)), becomes=None, toast=None)
