"""What becomes of an update whose handling failed. Pure."""

from dataclasses import dataclass
from datetime import timedelta
from typing import Final

from telegram.error import TelegramError

from bot.delivery.verdicts import Moved, NotSent, NotTaken, TooFast, Unknown, judge

MOST_FAILURES: Final = 3
# An update that was begun so often and never came to an end took its process with it, or hung it. Four was too few:
# of the updates of a day with five hundred kills two met four in a row.
MOST_BEGUN: Final = 8
# The platform itself forgets what it couldn't hand over for a day.
_WORTH_WAITING = timedelta(days=1)

_NOT_ITS_FAULT = (NotSent, NotTaken, TooFast, Unknown, Moved)


@dataclass(frozen=True, slots=True)
class Again:
    """Try at once."""


@dataclass(frozen=True, slots=True)
class Rest:
    """The platform spoilt it, which is no fault of the update: wait, at least so long where it says so."""

    at_least: timedelta = timedelta(0)


@dataclass(frozen=True, slots=True)
class Park:
    """Give it up and keep it, so that its lane goes on."""


def after_failure(error: Exception, attempts: int, waited: timedelta) -> Again | Rest | Park:
    """`attempts`: tries begun, this one too. `waited`: how long ago the update came."""
    if isinstance(error, TelegramError):
        verdict = judge(error)
        if isinstance(verdict, _NOT_ITS_FAULT) and waited < _WORTH_WAITING:
            return Rest(verdict.wait) if isinstance(verdict, TooFast) else Rest()
    return Park() if attempts >= MOST_FAILURES else Again()
