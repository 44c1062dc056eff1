"""The figures by which the bot is watched from outside."""

from collections import Counter
from collections.abc import Mapping
from typing import Any

from bot.delivery.clock import Clock
from bot.delivery.verdicts import Verdict
from bot.web.app import Figure
from core.store.unit import Store


class Vitals:
    """Reads the tables, and the `verdicts` on sends since this process began."""

    def __init__(self, store: Store, clock: Clock, verdicts: Counter[type[Verdict]]) -> None:
        self._store = store
        self._clock = clock
        self._verdicts = verdicts

    async def figures(self) -> list[Figure]:
        async with self._store.reading() as unit:
            inbox = await unit.vitals.inbox_by_state()
            outbox = await unit.vitals.outbox_by_state()
            oldest = await unit.vitals.oldest_waiting(self._clock.now())
        sends = {kind.__name__.lower(): number for kind, number in self._verdicts.items()}
        return [
            *_each("inbox", "state", inbox),
            *_each("outbox", "state", outbox),
            *_each("oldest_waiting_seconds", "table", oldest),
            *_each("sends_total", "verdict", sends),
        ]


def _each(name: str, label: str, numbers: Mapping[Any, float]) -> list[Figure]:
    return [Figure(name, number, {label: str(key)}) for key, number in numbers.items()]
