"""Reading parameters of a call. Values may be JSON or, from forms, text: the server takes both."""

import json
from typing import Any

from bot.rehearsal.errors import bad_request

Params = dict[str, Any]


def integer(params: Params, name: str, default: int | None = None) -> int:
    value = params.get(name, default)
    try:
        return int(value)  # type: ignore[arg-type] # None and objects are what the except is for
    except (TypeError, ValueError):
        raise bad_request(f'invalid parameter "{name}" specified') from None


def text(params: Params, name: str) -> str:
    value = params.get(name)
    return "" if value is None else str(value)


def flag(params: Params, name: str) -> bool:
    return str(params.get(name, "")).lower() in ("true", "1")


def structure(params: Params, name: str) -> Any:
    """Return an object or array, decoded if it came as text; None if absent."""
    value = params.get(name)
    if not isinstance(value, str):
        return value
    try:
        return json.loads(value)
    except ValueError:
        raise bad_request(f"can't parse {name} JSON object") from None
