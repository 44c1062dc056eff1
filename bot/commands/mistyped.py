"""What is wrong with how a command was typed, in our own words: typer's are for programmers."""

from difflib import get_close_matches
from typing import Any

import typer
from pydantic import ValidationError

from bot.commands.given import in_words
from core.errors import InputError


def as_input_error(error: typer.TyperException) -> InputError:
    """The same mistake with its place, and where to look how it goes."""
    ctx: Any = getattr(error, "ctx", None)
    place, problem = _told(error)
    path = f"bellwether {' '.join(ctx.command_path.split()[1:])}" if ctx else "bellwether"
    return InputError(place, f"{problem} `{path.strip()} --help` shows how it goes.")


def _told(error: Any) -> tuple[str, str]:
    match type(error).__name__:
        case "NoSuchOption":
            near = get_close_matches(error.option_name, error.possibilities or (), 1)
            return error.option_name, "there is no such option." + (
                f" Did you mean {near[0]}?" if near else ""
            )
        case "MissingParameter":
            return _name(error.param), "this is missing."
        case "BadOptionUsage":
            return error.option_name, "something has to stand behind it."
        case "BadParameter":
            return _name(error.param), f"{_wrong(error)}."
    message = str(error.format_message()).rstrip(".")
    return "what you typed", f"{message[0].lower()}{message[1:]}{'' if message.endswith('?') else '.'}"


def _name(param: Any) -> str:
    options = [one for one in param.opts if one.startswith("-")]
    return str(options[0] if options else param.metavar or param.name)


def _wrong(error: Any) -> str:
    cause = error.__cause__
    told = in_words(cause.errors()[0]) if isinstance(cause, ValidationError) else str(error.message)
    # Of what is to be chosen: `'foo' is not one of 'a', 'b'.`
    return told.replace("'", "").replace(" is not one of ", " is none of ").rstrip(".")
