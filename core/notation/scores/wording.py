"""The shapes in which people tell a score (`wording.toml`), ready to be looked for."""

import re
import tomllib
from functools import cache
from pathlib import Path
from typing import Any, Final, NamedTuple

from core.notation.calendar.moments import DAY_WORD

_TABLE: Final[dict[str, Any]] = tomllib.loads(
    Path(__file__).with_name("wording.toml").read_text(encoding="utf-8")
)
# `<part>`, but not the name of a group.
_PART: Final = re.compile(r"(?<!\?P)<([a-z]+)>")


class Shape(NamedTuple):
    kind: str
    pattern: re.Pattern[str]
    worth: str


class Role(NamedTuple):
    name: str
    before: re.Pattern[str] | None
    behind: re.Pattern[str] | None


def _in_full(shape: str) -> str:
    while _PART.search(shape):
        shape = _PART.sub(lambda part: DAY_WORD if part[1] == "day" else _TABLE["parts"][part[1]], shape)
    return shape


def _compiled(shape: str | None) -> re.Pattern[str] | None:
    return re.compile(_in_full(shape)) if shape else None


@cache
def says(name: str) -> re.Pattern[str]:
    """What is said of a whole score, by its name in the table; a list is one of these."""
    shape = _TABLE["says"][name]
    return re.compile(_in_full(shape if isinstance(shape, str) else "|".join(shape)))


SHAPES: Final = tuple(
    Shape(row["kind"], re.compile(_in_full(row["shape"])), row.get("worth", "plain"))
    for row in _TABLE["shapes"]
)
ROLES: Final = tuple(
    Role(name, _compiled(row.get("before")), _compiled(row.get("behind")))
    for name, row in _TABLE["roles"].items()
)


def words_of(name: str) -> frozenset[str]:
    """A list of plain words by its name in the table."""
    return frozenset(_TABLE["words"][name].split())
