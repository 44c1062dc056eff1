"""Growing pauses between tries."""

from dataclasses import dataclass, replace

_MOST_FAILURES = 1000


@dataclass(frozen=True, slots=True)
class Backoff:
    """Multiplies its pause by `growth` with each failure in a row, from `first_s` to `longest_s`.

    The pauses of `growth` g are about g - 1 of the time that has passed since the first failure: whoever is away
    for a while is found back after that share of it at the latest.
    """

    first_s: float
    longest_s: float
    growth: float = 2.0
    failures: int = 0

    def after_failure(self) -> "Backoff":
        return replace(self, failures=min(self.failures + 1, _MOST_FAILURES))

    def after_success(self) -> "Backoff":
        return replace(self, failures=0)

    def wait_s(self, jitter: float) -> float:
        """Return the pause: all of it at `jitter` 1, half of it at 0, so that many don't return as one."""
        if not self.failures:
            return 0.0
        return self._full_s() * (1 + jitter) / 2

    def _full_s(self) -> float:
        try:
            return min(self.longest_s, self.first_s * self.growth ** (self.failures - 1))
        except OverflowError:
            return self.longest_s


# How often to ask whether the platform is back: within a second after a silence of ten, half a minute after one of ten
# minutes. All its clients come back at once then, so the pauses are spread.
PLATFORM_AWAY = Backoff(first_s=0.25, longest_s=30.0, growth=1.05)
