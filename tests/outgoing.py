"""Every call of the bot is checked with an independent library's models of the Bot API, in depth."""

from collections.abc import Iterator
from typing import Any

from pydantic import BaseModel, ValidationError

from bot.rehearsal.files import Upload
from bot.rehearsal.platform import Call
from tests.support.bot_api import built, methods, types


def _is_method(model: Any) -> bool:
    a_method = isinstance(model, type) and issubclass(model, methods.TelegramMethod)
    return a_method and model.__module__ != "aiogram.methods.base"


_MODELS = {model.__api_method__: model for model in vars(methods).values() if _is_method(model)}


def faults_of(call: Call) -> list[str]:
    """Return what is wrong with a call: wrong types, missing fields, and fields that the API doesn't know."""
    model = _MODELS.get(call.method)
    if model is None:
        return [f"{call.method}: no such method"]
    try:
        parsed = built(model).model_validate({name: _as_theirs(value) for name, value in call.params.items()})
    except ValidationError as error:
        return [f"{call.method}: {error}"]
    return [f"{call.method}: unknown field {place}" for place in _leftovers(parsed, "")]


def _as_theirs(value: Any) -> Any:
    """Uploads are no JSON; the models have a class of their own for them."""
    if isinstance(value, Upload):
        return types.BufferedInputFile(value.content, value.name)
    return value


def _leftovers(value: Any, place: str) -> Iterator[str]:
    """Yield the places of extra fields; the models keep them instead of refusing them."""
    if isinstance(value, BaseModel):
        yield from (f"{place}{name}" for name in value.model_extra or ())
        for name in type(value).model_fields:
            yield from _leftovers(getattr(value, name), f"{place}{name}.")
    elif isinstance(value, (list, tuple)):
        for number, item in enumerate(value):
            yield from _leftovers(item, f"{place}{number}.")


class OutgoingCheck:
    """Observes a platform's calls and keeps what is wrong with them."""

    def __init__(self) -> None:
        self.faults: list[str] = []

    def __call__(self, call: Call) -> None:
        self.faults += faults_of(call)
