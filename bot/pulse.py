"""Signs of life of the running bot, as its loops report them, for those who watch it."""

from dataclasses import dataclass
from datetime import datetime


@dataclass(slots=True)
class Pulse:
    """`polled_at`: when the platform last answered a poll; `trouble`: what it said if it doesn't any more."""

    polled_at: datetime | None = None
    trouble: str | None = None

    def polled(self, now: datetime) -> None:
        self.polled_at, self.trouble = now, None
