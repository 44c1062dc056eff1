"""`bellwether relearn`: what scores taught, made anew."""

import asyncio
from datetime import UTC, datetime

from bot.commands.console import AsJson, print_json, print_text
from bot.commands.parked import Database, place_of
from core.desk.post_office import Store
from core.desk.profile.learning import learn_anew


def relearn(database: Database = None, as_json: AsJson = False) -> None:
    """Work out anew, from the scores that are kept, what they teach of everybody."""
    people = asyncio.run(_learned(place_of(database)))
    if as_json:
        print_json({"people": people})
        return
    print_text(f"Learned anew of {people} {'person' if people == 1 else 'people'}.")


async def _learned(place: str) -> int:
    async with Store(place) as store, store.unit() as unit:
        return await learn_anew(unit, datetime.now(UTC))
