"""What is typed in place of a tap: the buttons under what was last said, or under the one that is replied to."""

from collections.abc import Awaitable, Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import timedelta
from itertools import chain
from typing import Final

from bot.telegram.buttons import unpack
from bot.telegram.heard import Heard, Press
from bot.telegram.seals import Seal
from core.desk.coached import coached_ids
from core.desk.coaching.commands import SeeNeeds, SeeSession, SeeWhoGetsWhat
from core.desk.commands import Command, SeeBoard, SeeScores
from core.desk.outcome import Outcome, Say
from core.desk.post_office import Offer
from core.desk.talk.says import StillOpen
from core.desk.talk.tapping import bare, tapped, yes_among, yes_or_no
from core.desk.talk.undoing import asks_to_undo, undoing
from core.desk.visit import Visit
from core.errors import Refusal

Carry = Callable[[Visit, Command], Awaitable[Outcome]]

# After that a `yes`, or a `right`, is about something else (estimate); a button stays pressable.
STANDS: Final = timedelta(hours=12)
# An `undo` means the last thing but one at most: what is older is named (estimate).
LATELY: Final = 2
# So long, and behind so many other things, what was asked is still on somebody's mind (estimate).
ON_THE_MIND: Final = timedelta(hours=1)
ASKED_LATELY: Final = 3
# What only shows something may be named long after its button was in view.
SHOWS: Final = (SeeNeeds, SeeWhoGetsWhat, SeeSession, SeeBoard, SeeScores)
SEEN_LATELY: Final = 8


@dataclass(frozen=True, slots=True)
class Tap:
    """What is tapped, and under which message, if under one."""

    command: Command
    under: Offer | None = None

    @property
    def message_id(self) -> int | None:
        return self.under.message_id if self.under else None


@dataclass(frozen=True, slots=True)
class Typed:
    """Reads what is typed as the taps that it means."""

    seal: Seal

    async def taps(self, visit: Visit, heard: Heard) -> Sequence[Tap]:
        """The commands of the buttons whose words were typed; none where they are none of them.

        A coach's yes or no answers all that one message of theirs led to; anybody else's, what stands lowest.
        """
        if not heard.is_written_in_private or not heard.text or heard.command is not None:
            return ()
        shown = await offered(visit, heard.reply_to)
        found = [
            Tap(self.opened(one.buttons[label], visit), one)
            for one in shown
            if (label := tapped(heard.text, tuple(one.buttons))) is not None
        ]
        if found:
            is_for_all = yes_or_no(heard.text) is not None and bool(await coached_ids(visit))
            return tuple(reversed(found)) if is_for_all else found[:1]
        earlier = await visit.uow.outbox.offered_lately(visit.chat, visit.now - STANDS, SEEN_LATELY)
        named = [self.opened(data, visit) for data in named_in(heard.text, chain.from_iterable(earlier))]
        look = next((one for one in named if isinstance(one, SHOWS)), None)
        if look:
            return (Tap(look),)
        lately = earlier[:LATELY]
        undone = asks_to_undo(heard.text) and undoing(
            [[self.opened(data, visit) for data in one.buttons.values()] for said in lately for one in said]
        )
        return (Tap(undone),) if undone else ()

    def opened(self, data: str, visit: Visit) -> Command:
        return unpack(self.seal.opened(Press(query_id="", data=data), visit.chat))

    async def still_open(self, visit: Visit, heard: Heard, taps: Sequence[Tap], carry: Carry) -> Outcome:
        """What a coach was asked before and hasn't answered, behind a yes or no to what was asked last."""
        if yes_or_no(heard.text or "") is None or not await coached_ids(visit):
            return Outcome()
        lately = await visit.uow.outbox.offered_lately(visit.chat, visit.now - ON_THE_MIND, ASKED_LATELY)
        done = [tap.under for tap in taps]
        for one in (offer for said in lately for offer in said if offer not in done):
            label = yes_among(tuple(one.buttons))
            yes = self.opened(one.buttons[label], visit) if label else None
            if yes is not None and await can_be_done(visit, yes, carry):
                keys = tuple((each, self.opened(data, visit)) for each, data in one.buttons.items())
                said = Say(visit.chat, StillOpen(keys=tuple(reversed(keys))), replies_to=one.message_id)
                return Outcome((said,))
        return Outcome()


def named_in(text: str, shown: Iterable[Offer]) -> Iterator[str]:
    """What lies behind the buttons whose very words these are, the newest first."""
    return (
        data
        for one in shown
        for label, data in one.buttons.items()
        if bare(label) and bare(label) == bare(text)
    )


async def can_be_done(visit: Visit, command: Command, carry: Carry) -> bool:
    """Whether a tap of it would still do what it says."""
    async with visit.uow.trial():
        try:
            return bool((await carry(replace(visit), command)).says)
        except Refusal:
            return False


async def offered(visit: Visit, reply_to: int | None) -> Sequence[Offer]:
    if reply_to is not None:
        return await visit.uow.outbox.offered_under(visit.chat, reply_to)
    lately = await visit.uow.outbox.offered_lately(visit.chat, visit.now - STANDS)
    return lately[0] if lately else ()


def said_openly(visit: Visit, outcome: Outcome) -> Outcome:
    """What a press would show in its message, or for a moment, as a message: nothing was pressed."""
    shown = outcome.becomes or (None if outcome.says else outcome.toast)
    if shown is None:
        return outcome
    return replace(outcome, says=(*outcome.says, Say(visit.chat, shown)), becomes=None, toast=None)
