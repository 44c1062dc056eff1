"""One whole day of an invented group, played by people of the stand-in against the real bot."""

from bot.rehearsal.day.cast import Company
from bot.rehearsal.day.evening import evening
from bot.rehearsal.day.hours import EVE
from bot.rehearsal.day.midday import midday
from bot.rehearsal.day.morning import morning
from bot.rehearsal.day.next_morning import next_morning
from bot.rehearsal.day.night_before import night_before
from bot.rehearsal.voice import Room

__all__ = ["EVE", "play"]


async def play(room: Room) -> None:
    """From the evening on which Marit sets her group up to the next morning. Raises what went wrong."""
    company = await Company.gather(room)
    for part in (night_before, morning, midday, evening, next_morning):
        await part(company)
