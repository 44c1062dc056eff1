"""The command line. Each command is a small module in `bot/commands/`; this file only assembles them."""

import gc
import sys
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from difflib import get_close_matches
from importlib import import_module
from importlib.metadata import version
from typing import Annotated

import typer

from bot.commands.listed import COMMANDS, Listed
from core.errors import InputError, Refusal, Trouble

__all__ = ["COMMANDS", "assembled", "main"]

_HELP = "A chat assistant for remote coaching groups: one session for all, a personal version for each."
# \b keeps the lines of a paragraph as they are.
_ENDS = """\b
Ends with 0 when it is done,
2 when what was given can't be read or a setting is wrong,
1 when the disk, the database or the network doesn't do, or `check` found something."""


def main(arguments: Sequence[str] | None = None) -> None:
    """Run one command; `arguments` default to the process's own.

    Expected errors exit with 2, in one line; with 1 where the surroundings don't do, and a later try may go.
    """
    given = sys.argv[1:] if arguments is None else arguments
    try:
        asked = given[0] if given else ""
        _must_be_known(asked)
        sys.exit(_run(asked, given))
    except (InputError, Refusal) as error:
        typer.echo(str(error), err=True)
        sys.exit(2)
    except Trouble as error:
        typer.echo(str(error), err=True)
        sys.exit(1)


def _run(asked: str, given: Sequence[str]) -> int:
    """Run it, and return its exit code."""
    try:
        code = assembled(asked)(args=given, standalone_mode=False)
    except typer.Abort:
        return 130
    except typer.TyperException as error:
        if type(error).__name__ == "NoArgsIsHelpError":
            typer.echo(str(error), err=True)
            return 2
        raise _in_our_words(error) from None
    return code if isinstance(code, int) else 0


def _in_our_words(error: typer.TyperException) -> InputError:
    from bot.commands.mistyped import as_input_error  # noqa: PLC0415 - a help must not wait for its reader

    return as_input_error(error)


def _must_be_known(asked: str) -> None:
    if not asked or asked.startswith("-") or asked in COMMANDS:
        return
    near = get_close_matches(asked, COMMANDS, 1)
    guess = f" Did you mean {near[0]}?" if near else ""
    raise InputError(asked, f"there is no such command.{guess} `bellwether --help` lists them.")


def assembled(asked: str) -> typer.Typer:
    """Return the command that is asked for, or the list of all: whoever wants one needn't wait for the others."""
    # Rich frames would hide the one line that matters: errors are plain text on standard error.
    app = typer.Typer(
        help=_HELP,
        epilog=_ENDS,
        no_args_is_help=True,
        add_completion=False,
        pretty_exceptions_enable=False,
        rich_markup_mode=None,
        context_settings={"help_option_names": ["-h", "--help"]},
    )
    # Without it typer would take an app of one command for that command, its name for an argument.
    app.callback()(_options)
    if asked in COMMANDS:
        _add(app, asked, COMMANDS[asked])
    else:
        for name, one in COMMANDS.items():
            app.command(name, short_help=one.summary)(lambda: None)
    return app


@contextmanager
def _without_looking_for_garbage() -> Iterator[None]:
    """What is loaded stays: to look through it again and again takes a fifth of a start, and time ever after."""
    gc.disable()
    try:
        yield
    finally:
        gc.freeze()
        gc.enable()


def _options(
    _: Annotated[
        bool,
        typer.Option(
            "--version",
            is_eager=True,
            callback=lambda asked: _tell_version(asked=asked),
            help="Say which version this is.",
        ),
    ] = False,
) -> None:
    pass


def _tell_version(*, asked: bool) -> None:
    if asked:
        typer.echo(f"bellwether {version('bellwether')}")
        raise typer.Exit


def _shown(title: str, lines: Iterable[str]) -> str:
    """Lines of an epilog that are not to be filled up."""
    return "\n".join(["\b", title, *(f"  {line}" for line in lines)])


def _add(app: typer.Typer, name: str, one: Listed) -> None:
    with _without_looking_for_garbage():
        command = getattr(import_module(f"bot.commands.{one.module}"), name)
    shown = [_shown("Examples:", one.examples)]
    if one.file:
        shown.append(_shown("A small file:", one.file.splitlines()))
    examples = "\n\n".join(shown)
    if isinstance(command, typer.Typer):
        app.add_typer(command, name=name, epilog=examples)
    else:
        app.command(name, epilog=examples)(command)
