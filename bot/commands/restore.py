"""`bellwether restore`: bring a copy of the database back."""

from datetime import UTC, datetime
from pathlib import Path
from typing import Annotated

import typer

from bot.commands.console import AsJson, print_json, print_text
from bot.settings import database_of_settings
from core.desk import upkeep


def restore(
    file: Annotated[Path, typer.Argument(help="A copy that `bellwether backup` made.")],
    as_json: AsJson = False,
) -> None:
    """Put a copy in the database's place; the bot must not run. What was there is kept beside it.

    Letters that waited in the copy and reminders that have passed are dropped, not sent.
    """
    done = upkeep.restore(database_of_settings(), file, datetime.now(UTC))
    if as_json:
        kept = str(done.kept) if done.kept else None
        dropped = {"letters": done.letters_dropped, "dues": done.dues_dropped}
        print_json({"database": str(done.path), "kept": kept, "dropped": dropped})
        return
    print_text(f"{done.path} is now what {file} holds.")
    if done.kept:
        print_text(f"What was there before is kept as {done.kept}.")
    print_text(
        f"Dropped as too old: {done.letters_dropped} letters, {done.dues_dropped} reminders and the like."
    )
