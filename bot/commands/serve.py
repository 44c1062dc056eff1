"""`bellwether serve`: run the bot."""

import asyncio
import logging
import os
import threading

from bot.bootstrap import build, run_until_signalled
from bot.settings import read_settings

_LOG_FORMAT = "%(asctime)s %(levelname)s %(name)s: %(message)s"


def serve() -> None:
    """Run the bot until it is told to stop. Settings come from BELLWETHER_... variables or a .env file."""
    settings = read_settings()
    # What people told of their health is nobody else's on this machine.
    os.umask(0o077)
    logging.basicConfig(level=logging.INFO, format=_LOG_FORMAT)
    for chatty in ("apscheduler", "alembic"):
        logging.getLogger(chatty).setLevel(logging.WARNING)
    threading.excepthook = _without_late_answers
    asyncio.run(run_until_signalled(build(settings)))


def _without_late_answers(failed: threading.ExceptHookArgs) -> None:
    """A connection that answers after all is over has nobody to tell; anything else of a thread is told."""
    if isinstance(failed.exc_value, RuntimeError) and "loop is closed" in str(failed.exc_value):
        return
    threading.__excepthook__(failed)
