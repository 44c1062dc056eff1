"""What can be set from outside: `BELLWETHER_...` in the environment, or in a `.env` file."""

import re
from collections.abc import Mapping
from enum import StrEnum
from typing import Annotated, Any

from pydantic import Field, SecretStr, ValidationError, field_validator
from pydantic_settings import BaseSettings, SettingsConfigDict

from bot.commands.given import in_words
from core.errors import InputError

_PREFIX = "BELLWETHER_"
# As the platform hands them out: https://core.telegram.org/bots/api#authorizing-your-bot
_TOKEN = re.compile(r"\d+:\S+")
_HOST_AND_PORT = re.compile(r"\S+:\d{1,5}")


class Pace(StrEnum):
    """How fast the bot may talk: within the platform's limits, or, to measure its own speed, without any."""

    PLATFORM = "platform"
    UNLIMITED = "unlimited"


class _Place(BaseSettings):
    """`database` is a path of a SQLite file or a URL."""

    model_config = SettingsConfigDict(
        env_prefix=_PREFIX, env_file=".env", env_ignore_empty=True, extra="ignore", frozen=True
    )

    database: str = "bellwether.db"


class Settings(_Place):
    """`listen` is `host:port` for health and metrics.

    `owner`: user id of whoever runs the bot, to be told when something had to be put aside; `keep_days`: how long raw
    updates are kept. `clock_url` and `pace` are for rehearsals and measurements.
    """

    token: SecretStr
    api_url: str = "https://api.telegram.org"
    listen: str | None = None
    owner: Annotated[int, Field(ge=1)] | None = None
    keep_days: Annotated[int, Field(ge=2, le=3650)] = 14
    clock_url: str | None = None
    pace: Pace = Pace.PLATFORM

    @field_validator("token")
    @classmethod
    def _looks_like_one(cls, token: SecretStr) -> SecretStr:
        if not _TOKEN.fullmatch(token.get_secret_value()):
            raise ValueError("is no bot's token: those look like 123456:ABC-DEF1234ghIkl")
        return token

    @field_validator("listen")
    @classmethod
    def _is_host_and_port(cls, listen: str | None) -> str | None:
        if listen is not None and not _HOST_AND_PORT.fullmatch(listen):
            raise ValueError("should be host:port, such as 127.0.0.1:8080")
        return listen

    @property
    def address(self) -> tuple[str, int] | None:
        """Where to answer health and metrics: host and port."""
        if self.listen is None:
            return None
        host, _, port = self.listen.rpartition(":")
        return host.strip("[]"), int(port)


def read_settings() -> Settings:
    """Read the settings of this process. Raises InputError naming the first variable that is wrong."""
    try:
        return Settings()
    except ValidationError as error:
        first = error.errors()[0]
        raise InputError(_variable(first["loc"]), _problem(first)) from error


def _variable(place: tuple[int | str, ...]) -> str:
    return _PREFIX + "_".join(str(part) for part in place).upper()


def _problem(error: Mapping[str, Any]) -> str:
    if error["type"] == "missing":
        return "is not set. Put it into the environment or a .env file."
    return in_words(error)


def database_of_settings() -> str:
    """The database that the bot of these settings uses; nothing else of them need be set."""
    return _Place().database
