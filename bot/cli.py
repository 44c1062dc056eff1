"""The command line. Each command is a small module in `bot/commands/`; this file only assembles them."""

import sys
from collections.abc import Sequence
from importlib import import_module

import typer

from core.errors import InputError, Refusal, Trouble

# In the order of the help, each with its module in `bot/commands/`, which has it under its own name.
COMMANDS = {
    "serve": "serve",
    "backup": "backup",
    "restore": "restore",
    "check": "check",
    "unit": "unit",
    "rehearse": "rehearse",
    "preview": "preview",
    "movements": "movements",
    "limits": "limits",
    "rank": "rank",
    "classes": "classes",
    "read": "reading",
    "parked": "parked",
    "replay": "replay",
}


def main(arguments: Sequence[str] | None = None) -> None:
    """Run one command; `arguments` default to the process's own.

    Expected errors exit with 2, in one line; with 1 where the surroundings don't do, and a later try may go.
    """
    given = sys.argv[1:] if arguments is None else arguments
    try:
        assembled(given[0] if given else "")(args=given)
    except (InputError, Refusal) as error:
        typer.echo(str(error), err=True)
        sys.exit(2)
    except Trouble as error:
        typer.echo(str(error), err=True)
        sys.exit(1)


def assembled(asked: str) -> typer.Typer:
    """Return the command that is asked for, or all where none is: whoever wants one needn't wait for the others."""
    # Rich frames would hide the one line that matters: errors are plain text on standard error.
    app = typer.Typer(
        help="A chat assistant for remote coaching groups: one session for all, a personal version for each.",
        no_args_is_help=True,
        add_completion=False,
        pretty_exceptions_enable=False,
        rich_markup_mode=None,
    )
    # Without it typer would take an app of one command for that command, its name for an argument.
    app.callback()(lambda: None)
    for name in [asked] if asked in COMMANDS else COMMANDS:
        _add(app, name)
    return app


def _add(app: typer.Typer, name: str) -> None:
    command = getattr(import_module(f"bot.commands.{COMMANDS[name]}"), name)
    if isinstance(command, typer.Typer):
        app.add_typer(command, name=name)
    else:
        app.command()(command)
