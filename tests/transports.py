"""The library's own bot on the stand-in, through either transport."""

from telegram import Bot

from bot.rehearsal.platform import TOKEN, Platform
from tests.support.in_process import BASE_FILE_URL, BASE_URL, InProcessRequest


def in_process_bot(platform: Platform) -> Bot:
    request, polls = InProcessRequest(platform), InProcessRequest(platform)
    return Bot(TOKEN, BASE_URL, BASE_FILE_URL, request=request, get_updates_request=polls)


def twin_of(bot: Bot, platform: Platform) -> Bot:
    """A second instance of the same bot over the same transport, as if somebody started it twice."""
    if bot.base_url.startswith(BASE_URL):
        return in_process_bot(platform)
    return Bot(TOKEN, bot.base_url.removesuffix(TOKEN))
