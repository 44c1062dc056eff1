"""The command line. Each command is a small module in `bot/commands/`; this file only assembles them."""

import sys
from collections.abc import Sequence

import typer

from bot.commands.classes import classes
from bot.commands.limits import limits
from bot.commands.movements import movements
from bot.commands.preview import preview
from bot.commands.rank import rank
from bot.commands.reading import read
from bot.commands.rehearse import rehearse
from bot.commands.serve import serve
from core.errors import InputError, Refusal

# Rich frames would hide the one line that matters: errors are plain text on standard error.
app = typer.Typer(
    help="A chat assistant for remote coaching groups: one session for all, a personal version for each.",
    no_args_is_help=True,
    add_completion=False,
    pretty_exceptions_enable=False,
    rich_markup_mode=None,
)

app.command()(serve)
app.command()(rehearse)
app.command()(preview)
app.command()(movements)
app.command()(limits)
app.command()(rank)
app.command()(classes)
app.add_typer(read, name="read")


def main(arguments: Sequence[str] | None = None) -> None:
    """Run one command; `arguments` default to the process's own. Expected errors exit with 2, in one line."""
    try:
        app(args=arguments)
    except (InputError, Refusal) as error:
        typer.echo(str(error), err=True)
        sys.exit(2)
