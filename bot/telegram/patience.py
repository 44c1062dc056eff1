"""How much of one person is taken in: a flood of theirs is left out, and they are told so once in a while."""

from collections import OrderedDict
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Final

# Quick taps through a whole first contact and a chatty hour fit into it; a program that writes doesn't (estimates).
BURST: Final = 40
ONE_IN: Final = timedelta(seconds=2)
TELL_EVERY: Final = timedelta(minutes=1)
# Of so many people it is known how much they wrote lately; of others, nothing lately.
_MOST_PEOPLE: Final = 10_000


@dataclass(slots=True)
class _Account:
    """What somebody may still send at a moment, and when they were told last."""

    left: float
    at: datetime
    told_at: datetime | None = None


@dataclass(slots=True)
class Patience:
    """`at` is when it was said, by the platform's word: what waited through an outage is no flood."""

    limited: bool = True
    _accounts: OrderedDict[int, _Account] = field(init=False, default_factory=OrderedDict)

    def takes(self, user_id: int, at: datetime) -> bool:
        """Whether one more of theirs is taken in."""
        if not self.limited:
            return True
        account = self._account(user_id, at)
        passed = max(at - account.at, timedelta(0))
        account.left = min(BURST, account.left + passed / ONE_IN)
        account.at = max(at, account.at)
        if account.left < 1:
            return False
        account.left -= 1
        return True

    def tells(self, user_id: int, now: datetime) -> bool:
        """Whether they are told now that something was left out."""
        account = self._account(user_id, now)
        if account.told_at is not None and account.told_at <= now < account.told_at + TELL_EVERY:
            return False
        account.told_at = now
        return True

    def _account(self, user_id: int, at: datetime) -> _Account:
        account = self._accounts.setdefault(user_id, _Account(BURST, at))
        self._accounts.move_to_end(user_id)
        if len(self._accounts) > _MOST_PEOPLE:
            self._accounts.popitem(last=False)
        return account
