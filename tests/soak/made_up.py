"""Updates that the Bot API allows and no app may ever send: drawn from an independent library's models, with a seed."""

from datetime import UTC, datetime
from enum import Enum
from random import Random
from types import UnionType
from typing import Annotated, Any, Literal, Union, get_args, get_origin

from pydantic import BaseModel
from pydantic.fields import FieldInfo

from tests.soak import hostile
from tests.support.bot_api import Default, built, types

# What the bot looks into, more often than the some hundred other things there are.
_KINDS = ("message", "callback_query", "edited_message", "my_chat_member", "chat_member", "channel_post")
_LIKELY = frozenset(
    [
        "text",
        "from_user",
        "data",
        "message",
        "reply_to_message",
        "caption",
        "entities",
        "new_chat_members",
        "document",
    ]
)
_CHAT_TYPES = ("private", "private", "group", "supergroup", "channel", "bot_command", "x")
_WORDS = ("", "a", "Ilse", "\ud800", "\x00", "x" * 300, "💥\u202e", "<b>&", "ilse_b")
_LENGTHS = (0, 1, 1, 2, 5)
_NOW = int(datetime(2026, 3, 2, 6, tzinfo=UTC).timestamp())
_DEEPEST = 5
_ID_BITS = 52  # "at most 52 significant bits": Bot API, User
_IDS = frozenset({"id", "user_id", "chat_id", "migrate_to_chat_id", "migrate_from_chat_id"})


class MakeUp:
    """Draws updates. `known`: ids of people and groups that are mixed in, so that some of it concerns somebody."""

    def __init__(self, random: Random, known: list[int], texts: list[str]) -> None:
        self._random = random
        self._known = known
        self._texts = texts

    def update(self, number: int) -> dict[str, Any]:
        """One update of one kind. Raises ValidationError if it isn't what the models take."""
        fields = built(types.Update).model_fields
        usual = self._random.random() < 0.7
        name = self._random.choice(_KINDS if usual else [one for one in fields if one != "update_id"])
        raw = {"update_id": number, name: self._value(fields[name].annotation, name, 0)}
        built(types.Update).model_validate(raw)
        return raw

    def _model(self, model: type[BaseModel], depth: int) -> dict[str, Any]:
        return {
            field.alias or name: self._value(field.annotation, name, depth + 1)
            for name, field in built(model).model_fields.items()
            if self._is_in(name, field, depth)
        }

    def _is_in(self, name: str, field: FieldInfo, depth: int) -> bool:
        if field.is_required() or get_origin(field.annotation) is Literal:
            return True
        if depth > _DEEPEST:
            return False
        return self._random.random() < (0.6 if name in _LIKELY else 0.08)

    def _value(self, kind: Any, name: str, depth: int) -> Any:
        origin, inside = get_origin(kind), get_args(kind)
        if origin is Annotated:
            return self._value(inside[0], name, depth)
        if origin in (Union, UnionType):
            kinds = [one for one in inside if one not in (type(None), Default)]
            return self._value(self._random.choice(kinds), name, depth)
        if origin is Literal:
            return _constant(self._random.choice(inside))
        if origin is list:
            length = self._random.choice(_LENGTHS)
            return [self._value(inside[0], name, depth + 1) for _ in range(length)]
        return self._simple(kind, name, depth)

    def _simple(self, kind: Any, name: str, depth: int) -> Any:
        if isinstance(kind, str):  # a forward reference that the models left open
            kind = getattr(types, kind)
        if not isinstance(kind, type):
            return self._string(name)
        if issubclass(kind, BaseModel):
            return self._model(kind, depth)
        if issubclass(kind, Enum):
            return self._random.choice(list(kind)).value
        return self._plain(kind, name)

    def _plain(self, kind: type, name: str) -> Any:
        draw = {
            bool: lambda: self._random.random() < 0.5,
            int: lambda: self._integer(name),
            float: lambda: self._random.choice((0.0, -1.5, 1e300, 52.1)),
            datetime: lambda: self._random.choice((0, 1, _NOW, _NOW, 2**31 - 1)),
            str: lambda: self._string(name),
        }
        return draw[kind]()

    def _integer(self, name: str) -> int:
        if name in _IDS and self._random.random() < 0.6:
            return self._random.choice(self._known)
        largest = 2**_ID_BITS if name in _IDS else 2**31 - 1
        return self._random.choice((0, 1, 2, 3, -1, self._random.randrange(largest), -largest, largest - 1))

    def _string(self, name: str) -> str:
        if name == "data":
            return ":".join(self._random.choice(hostile.WORDS + hostile.NUMBERS) for _ in range(3))[:64]
        if name == "type":  # of a chat or an entity; others are checked nowhere
            return self._random.choice(_CHAT_TYPES)
        if name in ("text", "caption"):
            written = self._random.random() < 0.5
            return self._random.choice(self._texts) if written else hostile.text(self._random)
        return self._random.choice(_WORDS)


def _constant(value: Any) -> Any:
    return value.value if isinstance(value, Enum) else value
