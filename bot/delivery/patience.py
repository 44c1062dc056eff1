"""When to try again after what failed: with the platform as a whole, and with single letters."""

from collections.abc import Callable
from dataclasses import dataclass, field

from bot.delivery.backoff import PLATFORM_AWAY, Backoff

# A letter that fails where others arrive: seconds at first, minutes in the end.
_LETTER = Backoff(first_s=1.0, longest_s=300.0)


@dataclass(slots=True)
class Patience:
    """All in monotonic seconds. `jitter` (0 to 1) spreads the tries.

    After a failure nothing is sent for a moment, and then one letter at a time, until the platform answers. A letter
    that failed rests for itself, too; where several failed together it was the platform, and they are free at once
    when it answers.
    """

    jitter: Callable[[], float]
    away_since: float | None = None
    _away: Backoff = PLATFORM_AWAY
    _probe_at: float = 0.0
    _resting: dict[int, float] = field(default_factory=dict)
    _failed_together: set[int] = field(default_factory=set)

    def unanswered(self, now: float) -> None:
        """Nothing came from the platform."""
        if self.away_since is None:
            self.away_since = now
        self._away = self._away.after_failure()
        self._probe_at = now + self._away.wait_s(self.jitter())

    def failed(self, letter: int, vain: int, now: float) -> None:
        """A letter came to no good end, after `vain` others of its tries."""
        self.unanswered(now)
        again = Backoff(_LETTER.first_s, _LETTER.longest_s, failures=vain + 1)
        self._resting[letter] = now + again.wait_s(self.jitter())
        self._failed_together.add(letter)

    def answered(self) -> None:
        """The platform is there, whatever it said."""
        if len(self._failed_together) > 1:
            for letter in self._failed_together:
                self._resting.pop(letter, None)
        self._failed_together.clear()
        self.away_since = None
        self._away = self._away.after_success()

    def room(self, on_their_way: int, most: int, now: float) -> int:
        """How many more letters may be sent now."""
        if self.away_since is None:
            return max(0, most - on_their_way)
        return 0 if now < self._probe_at else max(0, 1 - on_their_way)

    def resting(self, now: float) -> list[int]:
        """The letters that are not to be tried yet."""
        self._resting = {letter: until for letter, until in self._resting.items() if until > now}
        return list(self._resting)

    def next_end(self, now: float) -> float | None:
        """When some of this patience ends; None if nothing waits for it."""
        probe = [self._probe_at] if self.away_since is not None and self._probe_at > now else []
        return min([*probe, *(until for until in self._resting.values() if until > now)], default=None)
