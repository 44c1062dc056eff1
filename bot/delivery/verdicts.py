"""What became of one try to send, read from the library's answer or error. Pure."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import timedelta
from typing import Any

import httpx
from telegram.error import (
    BadRequest,
    ChatMigrated,
    EndPointNotFound,
    Forbidden,
    InvalidToken,
    NetworkError,
    RetryAfter,
    TelegramError,
    TimedOut,
)

from bot.telegram.transport import NEVER_LEFT


@dataclass(frozen=True, slots=True)
class Sent:
    """It arrived; `message_id` where it made a message."""

    message_id: int | None = None


@dataclass(frozen=True, slots=True)
class NotSent:
    """It surely never left: send it again after a while."""

    detail: str


@dataclass(frozen=True, slots=True)
class NotTaken:
    """The platform answered that it failed itself: it took nothing. Send it again after a while."""

    detail: str


@dataclass(frozen=True, slots=True)
class TooFast:
    """The platform wants silence towards this chat."""

    wait: timedelta


@dataclass(frozen=True, slots=True)
class Unknown:
    """It may have arrived, or not."""

    detail: str


@dataclass(frozen=True, slots=True)
class Unreachable:
    """The person blocked the bot or the bot was removed: nothing reaches this chat any more."""

    detail: str


@dataclass(frozen=True, slots=True)
class Moved:
    """The chat has a new address."""

    address: int


@dataclass(frozen=True, slots=True)
class TooLate:
    """The moment for it has passed."""

    detail: str


@dataclass(frozen=True, slots=True)
class Gone:
    """There is nothing to edit any more: the message was deleted, or is none that can be edited."""

    detail: str


@dataclass(frozen=True, slots=True)
class Rejected:
    """The platform doesn't take it as it is: a defect of ours."""

    detail: str


Verdict = Sent | NotSent | NotTaken | TooFast | Unknown | Unreachable | Moved | TooLate | Gone | Rejected

# Causes with which nothing was sent, of our own transport and of the one that comes with the library.
_NEVER_LEFT = (*NEVER_LEFT, httpx.ConnectError, httpx.ConnectTimeout, httpx.PoolTimeout)
_NOT_MODIFIED = ("message is not modified",)
# Nobody waits for the answer any more, or may be asked for the favour.
_TOO_OLD = ("query is too old", "query id is invalid", "not enough rights to manage pinned messages")
_GONE = (
    "message to edit not found",
    "message can't be edited",
    "message_id_invalid",
    "there is no text in the message to edit",
    "message to pin not found",
)
_NO_CHAT = ("chat not found", "user is deactivated", "bot was kicked", "peer_id_invalid")


def accepted(result: object) -> Sent:
    """Judge the `result` of a call that the platform took."""
    return Sent(result.get("message_id") if isinstance(result, dict) else None)


def judge(error: TelegramError) -> Verdict:
    """Judge the error of a call."""
    return next(verdict for kind, verdict in _VERDICTS if isinstance(error, kind))(error)


def _too_fast(error: RetryAfter) -> Verdict:
    wait = error.retry_after
    return TooFast(wait if isinstance(wait, timedelta) else timedelta(seconds=wait))


def _bad_request(error: BadRequest) -> Verdict:
    reason = str(error).lower()
    if _names(reason, _NOT_MODIFIED):
        return Sent()
    if _names(reason, _TOO_OLD):
        return TooLate(_detail(error))
    if _names(reason, _GONE):
        return Gone(_detail(error))
    if _names(reason, _NO_CHAT):
        return Unreachable(_detail(error))
    return Rejected(_detail(error))


def _not_found(error: TelegramError) -> Verdict:
    # The library says "endpoint not found" for a revoked token (401) too; only its cause tells them apart.
    revoked = "unauthorized" in f"{error} {error.__cause__}".lower()
    return NotSent(_detail(error)) if revoked else Rejected(_detail(error))


def _network(error: NetworkError) -> Verdict:
    cause = error.__cause__
    if isinstance(cause, _NEVER_LEFT):
        return NotSent(_detail(error))
    # The library makes this error of any answer that tells of a failure; only a lost one has a cause in the
    # connection. An answer that isn't the platform's own words comes from what stands in front of it.
    was_answered = not isinstance(error, TimedOut) and (cause is None or isinstance(cause, TelegramError))
    return NotTaken(_detail(error)) if was_answered else Unknown(_detail(error))


def _detail(error: TelegramError) -> str:
    return f"{type(error).__name__}: {error}"


def _names(reason: str, signs: tuple[str, ...]) -> bool:
    return any(sign in reason for sign in signs)


# The first that fits decides: BadRequest and TimedOut are subclasses of NetworkError in the library.
_VERDICTS: tuple[tuple[type[TelegramError], Callable[[Any], Verdict]], ...] = (
    (RetryAfter, _too_fast),
    (ChatMigrated, lambda error: Moved(error.new_chat_id)),
    (Forbidden, lambda error: Unreachable(_detail(error))),
    (BadRequest, _bad_request),
    (EndPointNotFound, _not_found),
    (InvalidToken, _not_found),
    (NetworkError, _network),
    (TelegramError, lambda error: Unknown(_detail(error))),
)
