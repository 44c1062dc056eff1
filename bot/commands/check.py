"""`bellwether check`: look through a database."""

from pathlib import Path
from typing import Annotated

import typer

from bot.commands.console import AsJson, print_json, print_text
from bot.settings import database_of_settings
from core.desk.upkeep import look_through


def check(
    file: Annotated[
        Path | None, typer.Argument(help="A database or a copy of one; the bot's own if left out.")
    ] = None,
    as_json: AsJson = False,
) -> None:
    """Read every page and reference of a database, and say what is in it. Exit 1 where something is wrong."""
    found = look_through(file or database_of_settings())
    if as_json:
        told = {"findings": found.findings, "counts": found.counts}
        print_json(
            {"database": str(found.path), "sound": not found.findings, "revision": found.revision, **told}
        )
    else:
        print_text("\n".join([f"{found.path}: {'not sound' if found.findings else 'sound'}"]))
        for line in (*found.findings, *(f"{name}: {number}" for name, number in found.counts.items())):
            print_text(f"  {line}")
    if found.findings:
        raise typer.Exit(1)
