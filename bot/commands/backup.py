"""`bellwether backup`: copy the database while the bot runs."""

from pathlib import Path
from typing import Annotated

import typer

from bot.commands.console import AsJson, print_json, print_text
from bot.settings import database_of_settings
from core.desk.upkeep import back_up


def backup(
    file: Annotated[
        Path, typer.Argument(help="Where the copy goes; a file that is there already is left alone.")
    ],
    as_json: AsJson = False,
) -> None:
    """Copy the database as it is at this moment; the bot may go on meanwhile.

    The copy holds what people told of their health: keep it where only you can read it.
    """
    found = back_up(database_of_settings(), file)
    if as_json:
        print_json({"file": str(file), "revision": found.revision, "counts": found.counts})
    else:
        counted = ", ".join(f"{number} {name}" for name, number in found.counts.items() if number)
        print_text(f"Copied to {file}, and read back whole: {counted or 'nothing in it yet'}.")
