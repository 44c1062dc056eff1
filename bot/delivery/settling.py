"""Writes down what became of the letters that were on their way."""

import logging
from collections.abc import Sequence
from datetime import datetime

from bot.delivery.verdicts import (
    Gone,
    Moved,
    NotSent,
    NotTaken,
    Rejected,
    Sent,
    TooFast,
    TooLate,
    Unknown,
    Unreachable,
    Verdict,
)
from core.desk.sessions.undelivered import UNDELIVERED
from core.store.records import Letter, NewLetter, Outcome, Purpose, Settled
from core.store.unit import Unit

log = logging.getLogger(__name__)

Finished = tuple[Letter, Verdict]

_OUTCOMES: dict[type[Verdict], Outcome] = {
    Sent: Outcome.SENT,
    NotSent: Outcome.NOT_SENT,
    NotTaken: Outcome.NOT_TAKEN,
    TooFast: Outcome.NOT_SENT,
    Moved: Outcome.NOT_SENT,
    Unknown: Outcome.UNKNOWN,
    Unreachable: Outcome.REFUSED,
    Rejected: Outcome.REFUSED,
    TooLate: Outcome.TOO_LATE,
    Gone: Outcome.GONE,
}


async def settle(unit: Unit, finished: Sequence[Finished], now: datetime) -> None:
    """Settle the letters, and keep what was learned of their chats; whom a loss concerns is to be told."""
    for letter, verdict in finished:
        await _learn_of_chat(unit, letter, verdict, now)
    found = await unit.outbox.settle([settled(letter, verdict) for letter, verdict in finished], now)
    again = [_pinned_again(letter) for letter, _ in finished if letter.edits_id in found.to_pin]
    await unit.outbox.add(again, now)
    for letter, _ in finished:
        if letter.id in found.given_up and letter.purpose is Purpose.POST:
            key = f"{UNDELIVERED}:{letter.id}:{letter.tries}"
            await unit.dues.add(key, UNDELIVERED, now, {"letter": letter.id})
    if any(letter.file for letter, _ in finished):
        await unit.files.drop_settled()


def settled(letter: Letter, verdict: Verdict) -> Settled:
    """Say in the store's words what became of a letter."""
    return Settled(
        letter_id=letter.id,
        outcome=_OUTCOMES[type(verdict)],
        message_id=_message_id(letter, verdict),
        address=letter.address if isinstance(verdict, Sent) else None,
        detail=_detail(verdict),
    )


def _message_id(letter: Letter, verdict: Verdict) -> int | None:
    # An edit that changed nothing still stands for the message it edited.
    return verdict.message_id or letter.edits_message_id if isinstance(verdict, Sent) else None


def _detail(verdict: Verdict) -> str | None:
    if isinstance(verdict, TooFast):
        return f"silence for {verdict.wait.total_seconds():g} s"
    return getattr(verdict, "detail", None)


def _pinned_again(letter: Letter) -> NewLetter:
    """Where a pinned message was sent anew, the new one is pinned in its place; nobody's phone rings for it."""
    return NewLetter(
        chat_id=letter.chat_id,
        purpose=Purpose.BOARD,
        method="pin_chat_message",
        payload={"disable_notification": True},
        key=f"pin:{letter.id}",
        edits_id=letter.edits_id,
    )


async def _learn_of_chat(unit: Unit, letter: Letter, verdict: Verdict, now: datetime) -> None:
    match verdict:
        case Unreachable():
            await unit.chats.mark_reachable(letter.chat_id, yes=False, now=now)
        case Moved():
            await unit.chats.move(letter.address, verdict.address)
        case TooFast():
            await unit.chats.keep_silent(letter.chat_id, now + verdict.wait)
        case Rejected():
            log.error("letter %d (%s) was rejected: %s", letter.id, letter.method, verdict.detail)
        case _:
            pass
