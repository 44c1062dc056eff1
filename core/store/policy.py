"""What goes first, what may go twice, what goes anew, and what is given up. Pure."""

from collections.abc import Mapping
from datetime import datetime, timedelta
from typing import Final

from core.store.records import Purpose

# Answers to a waiting person go before bulk. Lower goes first.
PRIORITIES: Mapping[Purpose, int] = {purpose: rank for rank, purpose in enumerate(Purpose)}

# A letter that so often came to no known end lets the others of its chat go first.
PATIENCE: Final = 8

# After that an answer helps nobody any more; what is sooner of no use says so itself (`expires_at`).
_WORTH_TRYING = timedelta(days=1)

_EDIT = "edit_message_text"
_WORTH_ANEW = frozenset({Purpose.ANSWER, Purpose.VERSION, Purpose.BOARD})


def may_go_again(purpose: Purpose, method: str) -> bool:
    """Whether a letter that may have arrived is sent again: a duplicate is better than silence.

    Only news for everybody isn't worth it; a repeated edit shows nothing new.
    """
    return purpose is not Purpose.BULK or method.startswith("edit")


def is_given_up(since: datetime, now: datetime) -> bool:
    """Whether a letter that was to be sent `since` then, and failed once more, is kept for people to look at."""
    return now - since > _WORTH_TRYING


def goes_anew(purpose: Purpose, method: str) -> bool:
    """Whether what was to be an edit is worth a message of its own where there is nothing to edit any more.

    A mark on a post or a press that is gone has nothing left to stand on.
    """
    return method == _EDIT and purpose in _WORTH_ANEW
