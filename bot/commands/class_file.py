"""Reads CLASSES.toml: classes and who is reminded, strictly, with errors that name their place."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, datetime, time
from decimal import Decimal
from pathlib import Path
from typing import Annotated, Any, TypeVar

from pydantic import BaseModel, BeforeValidator, Field, ValidationError

from bot.commands.given import Gathering, Mistakes, mistakes, read_row, table_of
from core.calendar.values import Class, Habits, Quiet
from core.errors import InputError
from core.values import Value

T = TypeVar("T")

LEAD_MINUTES = 60


@dataclass(frozen=True, slots=True)
class ClassFile:
    """The classes, and everybody's name and habits."""

    classes: tuple[Class, ...]
    athletes: tuple[tuple[str, Habits], ...]


def _written(read: Callable[[str], T], like: str) -> Callable[[object], object]:
    """Take TOML's own dates and times as they are, and text only in the ISO form."""

    def take(value: object) -> object:
        if isinstance(value, str):
            try:
                return read(value)
            except ValueError:
                raise ValueError(f"{value!r} is not like {like}") from None
        if isinstance(value, int | float | Decimal):
            raise ValueError(f"{value} is not like {like}")  # noqa: TRY004 - pydantic gathers ValueErrors
        return value

    return take


Start = Annotated[datetime, BeforeValidator(_written(datetime.fromisoformat, "2026-03-02T09:00"))]
Day = Annotated[date, BeforeValidator(_written(date.fromisoformat, "2026-03-02"))]
Wall = Annotated[time, BeforeValidator(_written(time.fromisoformat, "22:00"))]


class _ClassRow(Value):
    title: Annotated[str, Field(min_length=1)]
    zone: str
    start: Start
    rule: str | None = None
    minutes: Annotated[int, Field(strict=True)] = 60
    link: str | None = None
    skip: tuple[Day, ...] = ()

    def made(self) -> Class:
        return Class.model_validate(dict(self) | {"skip": frozenset(self.skip)})


class _AthleteRow(Value):
    name: Annotated[str, Field(min_length=1)]
    zone: str
    lead_minutes: Annotated[int, Field(strict=True)] = LEAD_MINUTES
    quiet: tuple[Wall, Wall] | None = None

    def made(self) -> tuple[str, Habits]:
        quiet = Quiet(start=self.quiet[0], end=self.quiet[1]) if self.quiet else None
        return self.name, Habits(zone=self.zone, lead_minutes=self.lead_minutes, quiet=quiet)


def read_classes(path: Path) -> ClassFile:
    """The file's classes and athletes. Raises InputError naming the file, the class or the athlete."""
    table = table_of(path, ["class", "athlete"])
    gathering = Gathering()
    classes = _rows(path, table, "class", "title", _ClassRow, _ClassRow.made, gathering)
    athletes = _rows(path, table, "athlete", "name", _AthleteRow, _AthleteRow.made, gathering)
    gathering.settle()
    if not classes:
        raise InputError(str(path), "no [[class]] in it")
    return ClassFile(classes, athletes)


def _rows(
    path: Path,
    table: dict[str, Any],
    kind: str,
    label: str,
    model: type[BaseModel],
    make: Callable[[Any], T],
    gathering: Gathering,
) -> tuple[T, ...]:
    rows = table.get(kind, [])
    if not isinstance(rows, list):
        raise InputError(str(path), f"{kind} must be written [[{kind}]]")
    found = []
    for number, row in enumerate(rows, 1):
        with gathering.one():
            found.append(_made(row, f"{path}, {_place(kind, number, row, label)}", model, make))
    return tuple(found)


def _made(row: Any, place: str, model: type[BaseModel], make: Callable[[Any], T]) -> T:
    read, found = read_row(row, model, place)
    if read is None or found:
        raise Mistakes(found)
    try:
        return make(read)
    except ValidationError as error:
        raise Mistakes(mistakes(place, error, model)) from None


def _place(kind: str, number: int, row: Any, label: str) -> str:
    name = row.get(label) if isinstance(row, dict) else None
    return f"{kind} {number} ({name})" if isinstance(name, str) else f"{kind} {number}"
