"""One whole day of an invented group, played by people of the stand-in against the real bot."""

from bot.rehearsal.day.cast import Company
from bot.rehearsal.day.evening import EVENING
from bot.rehearsal.day.hours import EVE
from bot.rehearsal.day.midday import MIDDAY
from bot.rehearsal.day.morning import MORNING
from bot.rehearsal.day.next_morning import NEXT_MORNING
from bot.rehearsal.day.night_before import NIGHT_BEFORE
from bot.rehearsal.voice import Room

__all__ = ["EVE", "STORY", "play"]

STORY = (*NIGHT_BEFORE, *MORNING, *MIDDAY, *EVENING, *NEXT_MORNING)


async def play(room: Room) -> None:
    """From the evening on which Marit sets her group up to the next morning. Raises what went wrong."""
    company = await Company.gather(room)
    for scene in STORY:
        await company.at(scene.at)
        await company.opens(scene.title, scene.point)
        await scene.play(company)
