"""What every command shares: the `--json` option and the two ways of printing."""

import json
from decimal import Decimal
from typing import Annotated

import typer

AsJson = Annotated[bool, typer.Option("--json", help="Print one JSON document and nothing else.")]


def print_json(document: object) -> None:
    """Print one JSON document; values print as their fields, decimals as numbers."""
    typer.echo(json.dumps(document, default=_plain, ensure_ascii=False, indent=2))


def print_text(text: str) -> None:
    """Print for people."""
    typer.echo(text)


def print_aside(text: str) -> None:
    """Print for people, beside what was asked for."""
    typer.echo(text, err=True)


def _plain(value: object) -> object:
    if hasattr(value, "model_dump"):  # a value of ours, without loading their library for the help
        return value.model_dump()
    if isinstance(value, Decimal):
        return float(value)
    return str(value)
