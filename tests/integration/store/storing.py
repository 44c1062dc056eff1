"""A process that stores updates and says so after each commit, until it is killed."""

import asyncio
import sys
from datetime import UTC, datetime

from core.store.unit import Store


async def store_for_ever(place: str, first: int) -> None:
    async with Store(place) as store:
        for number in range(first, first + 10_000):
            async with store.unit() as unit:
                await unit.inbox.store([(number, number % 3, {"update_id": number})], datetime.now(UTC))
            print(number, flush=True)  # noqa: T201  (how the test hears of the commit)


asyncio.run(store_for_ever(sys.argv[1], int(sys.argv[2])))
