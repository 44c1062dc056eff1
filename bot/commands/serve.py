"""`bellwether serve`: run the bot."""

import asyncio
import logging

from bot.bootstrap import build, run_until_signalled
from bot.settings import read_settings

_LOG_FORMAT = "%(asctime)s %(levelname)s %(name)s: %(message)s"


def serve() -> None:
    """Run the bot until it is told to stop. Settings come from BELLWETHER_... variables or a .env file."""
    settings = read_settings()
    logging.basicConfig(level=logging.INFO, format=_LOG_FORMAT)
    for chatty in ("apscheduler", "alembic"):
        logging.getLogger(chatty).setLevel(logging.WARNING)
    asyncio.run(run_until_signalled(build(settings)))
