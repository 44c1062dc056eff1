"""Growing pauses between tries."""

from dataclasses import dataclass, replace

_MOST_DOUBLINGS = 30


@dataclass(frozen=True, slots=True)
class Backoff:
    """Doubles its pause with each failure in a row, from `first_s` to `longest_s`."""

    first_s: float
    longest_s: float
    failures: int = 0

    def after_failure(self) -> "Backoff":
        return replace(self, failures=min(self.failures + 1, _MOST_DOUBLINGS))

    def after_success(self) -> "Backoff":
        return replace(self, failures=0)

    def wait_s(self, jitter: float) -> float:
        """Return the pause: all of it at `jitter` 1, half of it at 0, so that many don't return as one."""
        if not self.failures:
            return 0.0
        full = min(self.longest_s, self.first_s * 2.0 ** (self.failures - 1))
        return full * (1 + jitter) / 2
