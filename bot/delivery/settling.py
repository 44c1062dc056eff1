"""Writes down what became of the letters that were on their way."""

import logging
from collections.abc import Sequence
from datetime import datetime, timedelta

from bot.delivery.verdicts import (
    Moved,
    NotSent,
    Rejected,
    Sent,
    TooFast,
    TooLate,
    Unknown,
    Unreachable,
    Verdict,
)
from core.store.records import Letter, Outcome, Settled
from core.store.unit import Unit

log = logging.getLogger(__name__)

Finished = tuple[Letter, Verdict]

_OUTCOMES: dict[type[Verdict], Outcome] = {
    Sent: Outcome.SENT,
    NotSent: Outcome.NOT_SENT,
    TooFast: Outcome.NOT_SENT,
    Moved: Outcome.NOT_SENT,
    Unknown: Outcome.UNKNOWN,
    Unreachable: Outcome.REFUSED,
    Rejected: Outcome.REFUSED,
    TooLate: Outcome.TOO_LATE,
}


async def settle(unit: Unit, finished: Sequence[Finished], now: datetime, pause: timedelta) -> None:
    """Settle the letters, and keep what was learned of their chats. `pause`: the wait after a failure."""
    for letter, verdict in finished:
        await _learn_of_chat(unit, letter, verdict, now)
    await unit.outbox.settle([settled(letter, verdict, now, pause) for letter, verdict in finished], now)
    if any(letter.file for letter, _ in finished):
        await unit.files.drop_settled()


def settled(letter: Letter, verdict: Verdict, now: datetime, pause: timedelta) -> Settled:
    """Say in the store's words what became of a letter."""
    return Settled(
        letter_id=letter.id,
        outcome=_OUTCOMES[type(verdict)],
        message_id=_message_id(letter, verdict),
        again_at=_again_at(verdict, now, pause),
        detail=getattr(verdict, "detail", None),
    )


def _message_id(letter: Letter, verdict: Verdict) -> int | None:
    # An edit that changed nothing still stands for the message it edited.
    return verdict.message_id or letter.edits_message_id if isinstance(verdict, Sent) else None


def _again_at(verdict: Verdict, now: datetime, pause: timedelta) -> datetime | None:
    if isinstance(verdict, TooFast):
        return now + verdict.wait
    return now + pause if isinstance(verdict, NotSent | Unknown) else None


async def _learn_of_chat(unit: Unit, letter: Letter, verdict: Verdict, now: datetime) -> None:
    match verdict:
        case Unreachable():
            await unit.chats.mark_reachable(letter.chat_id, yes=False, now=now)
        case Moved():
            await unit.chats.move(letter.address, verdict.address)
        case Rejected():
            log.error("letter %d (%s) was rejected: %s", letter.id, letter.method, verdict.detail)
        case _:
            pass
