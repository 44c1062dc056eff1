"""The figures by which the bot is watched from outside."""

import resource
from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from bot.delivery.clock import Clock
from bot.delivery.verdicts import Verdict
from bot.pulse import Pulse
from bot.web.app import Figure
from core.store.records import InboxState, LetterState
from core.store.unit import Store

# A poll lasts 50 seconds when nothing comes; what waits longer than this is stuck, not busy.
SILENT_S = 180.0
STUCK_S = 600.0


@dataclass(frozen=True, slots=True)
class Signs:
    """`problem`: the first thing that is wrong, in words; `told`: numbers by name, None for what never was."""

    problem: str | None
    told: Mapping[str, float | None]


class Vitals:
    """Reads the tables, and what the loops of this process report: `verdicts` on sends, the `pulse` of polls."""

    def __init__(self, store: Store, clock: Clock, verdicts: Counter[type[Verdict]], pulse: Pulse) -> None:
        self._store = store
        self._clock = clock
        self._verdicts = verdicts
        self._pulse = pulse
        self._since = clock.now()

    async def signs(self) -> Signs:
        """What waits, since when, and what was put aside."""
        now = self._clock.now()
        async with self._store.reading() as unit:
            inbox = await unit.vitals.inbox_by_state()
            given_up = await unit.vitals.letters_given_up()
            oldest = await unit.vitals.oldest_waiting(now)
            sent_at = await unit.vitals.last_sent_at()
        told = {
            "oldest_update_s": oldest["inbox"],
            "oldest_letter_s": oldest["outbox"],
            "updates_waiting": inbox[InboxState.WAITING],
            "updates_put_aside": inbox[InboxState.PARKED],
            "letters_given_up": given_up,
            "last_poll_s": _since(self._pulse.polled_at, now),
            "last_sent_s": _since(sent_at, now),
        }
        return Signs(self._problem(now, oldest), told)

    def _problem(self, now: datetime, oldest: Mapping[str, float]) -> str | None:
        if self._pulse.trouble is not None:
            return self._pulse.trouble
        if (now - (self._pulse.polled_at or self._since)).total_seconds() > SILENT_S:
            return "no poll has been answered for minutes"
        if oldest["inbox"] > STUCK_S:
            return f"an update has waited for {oldest['inbox']:.0f} s"
        return f"a letter has waited for {oldest['outbox']:.0f} s" if oldest["outbox"] > STUCK_S else None

    async def figures(self) -> list[Figure]:
        now = self._clock.now()
        async with self._store.reading() as unit:
            inbox = await unit.vitals.inbox_by_state()
            outbox = await unit.vitals.outbox_by_state()
            oldest = await unit.vitals.oldest_waiting(now)
            sent_at = await unit.vitals.last_sent_at()
        sends = {kind.__name__.lower(): number for kind, number in self._verdicts.items()}
        ages = {"poll": _since(self._pulse.polled_at, now), "send": _since(sent_at, now)}
        return [
            *_each("inbox", "state", inbox),
            *_each("outbox", "state", outbox),
            *_each("oldest_waiting_seconds", "table", oldest),
            *_each("sends_total", "verdict", sends),
            *_each("last_seconds", "of", {name: age for name, age in ages.items() if age is not None}),
            Figure("letters_given_up", outbox[LetterState.REFUSED] + outbox[LetterState.UNKNOWN]),
            Figure("memory_peak_bytes", resource.getrusage(resource.RUSAGE_SELF).ru_maxrss * 1024),
        ]


def _since(moment: datetime | None, now: datetime) -> float | None:
    return None if moment is None else max(0.0, (now - moment).total_seconds())


def _each(name: str, label: str, numbers: Mapping[Any, float]) -> list[Figure]:
    return [Figure(name, number, {label: str(key)}) for key, number in numbers.items()]
