"""What somebody gave: texts and tables from files, and what is wrong with them in our own words."""

import re
import sys
import tomllib
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from copy import deepcopy
from decimal import Decimal
from difflib import get_close_matches
from itertools import count
from pathlib import Path
from typing import Any, Protocol, TypeVar, get_args

from pydantic import BaseModel, ValidationError

from core.errors import InputError

LONGEST_FILE = 1_000_000

_UNREADABLE: tuple[tuple[type[OSError], str], ...] = (
    (FileNotFoundError, "there is no such file."),
    (IsADirectoryError, "this is a folder, not a file."),
    (PermissionError, "this file may not be read by you."),
)
# By pydantic's kind of problem; `{}` are what it tells of it. https://docs.pydantic.dev/latest/errors/validation_errors/
_WORDS = {
    "missing": "is missing",
    "greater_than": "should be above {gt}",
    "greater_than_equal": "should be at least {ge}",
    "less_than": "should be below {lt}",
    "less_than_equal": "should be at most {le}",
    "string_too_short": "should not be empty",
    "enum": "should be {expected}",
    "literal_error": "should be {expected}",
    "finite_number": "should be a number",
}
_KINDS = (
    (("bool",), "should be true or false"),
    (("int",), "should be a whole number"),
    (("float", "decimal"), "should be a number"),
    (("string", "str"), "should be text in quotes"),
    (("tuple", "list"), "should be a list in [ ]"),
    (("model", "dict", "dataclass"), "should be a table in {{ }}"),
    (("date",), "should be a date like 2026-03-02"),
)


class _Named(Protocol):
    @property
    def id(self) -> str: ...
    @property
    def names(self) -> tuple[str, ...]: ...


Named = TypeVar("Named", bound=_Named)
Row = TypeVar("Row", bound=BaseModel)
Steps = tuple[int | str, ...]


def text_of(file: str | Path) -> str:
    """The text of a file, or of standard input for `-`. Raises InputError."""
    try:
        is_input = str(file) == "-"
        data = sys.stdin.buffer.read(LONGEST_FILE) if is_input else Path(file).read_bytes()[:LONGEST_FILE]
        return data.decode("utf-8-sig")
    except OSError as error:
        words = next((words for kind, words in _UNREADABLE if isinstance(error, kind)), None)
        raise InputError(str(file), words or f"it can't be read ({error.strerror}).") from None
    except UnicodeDecodeError as error:
        line = error.object[: error.start].count(b"\n") + 1
        raise InputError(f"{_called(file)}, line {line}", "this is not UTF-8 text.") from None


def _called(file: str | Path) -> str:
    return "standard input" if str(file) == "-" else str(file)


def table_of(file: Path, keys: Iterable[str]) -> dict[str, Any]:
    """The TOML table of a file that may have these keys. Raises InputError."""
    try:
        table = tomllib.loads(text_of(file), parse_float=Decimal)
    except tomllib.TOMLDecodeError as error:
        found = re.search(r"^(.*) \(at line (\d+), column (\d+)\)$", str(error))
        place = f"{file}, line {found[2]}, column {found[3]}" if found else f"{file}, at its end"
        raise InputError(place, f"this is not TOML: {found[1] if found else error}.") from None
    known = list(keys)
    for one in sorted(table.keys() - set(known)):
        raise InputError(str(file), f"{unknown('key', one, known)}; there may be {' and '.join(known)}")
    return table


def unknown(what: str, name: str, known: Iterable[str]) -> str:
    """Name what isn't known, and the nearest that is: `unknown limit kneee, did you mean knee?`."""
    return f"unknown {what} {name}{near_of(name, known)}"


def only_named(what: str, name: str | None, known: Sequence[Named]) -> tuple[Named, ...]:
    """The one of this id or other name, else those with such a word in a name; all for None. Raises InputError."""
    if name is None:
        return tuple(known)
    asked = name.strip().casefold()
    found = tuple(one for one in known if asked in (one.id, *one.names)) or tuple(
        one for one in known if any(_has_word(of_it, asked) for of_it in (one.id, *one.names))
    )
    if not found:
        near = near_of(name, (of_it for one in known for of_it in (one.id, *one.names)))
        raise InputError(name, f"no such {what}{near}")
    return found


def _has_word(name: str, begins: str) -> bool:
    """`erg` in `rowing ergometer`; two letters are a word of everything."""
    return len(begins) > len("kb") and any(word.startswith(begins) for word in name.split())


def near_of(name: str, known: Iterable[str]) -> str:
    """`, did you mean Ilse?` for the one most alike, however either is written; else nothing."""
    spelled = {one.casefold(): one for one in known}
    near = get_close_matches(name.casefold(), list(spelled), 1, cutoff=0.5)
    return f", did you mean {spelled[near[0]]}?" if near else ""


class Mistakes(InputError):
    """Everything that is wrong with what was given, a line each."""

    def __init__(self, found: Sequence[InputError]) -> None:
        super().__init__(found[0].place, found[0].problem)
        self.args = ("\n".join(str(one) for one in found),)


class Gathering:
    """Takes down what can't be read and goes on, so that all of it is named at once.

    Within `with gathering.one():` an InputError is taken down; `settle` raises them all.
    """

    def __init__(self) -> None:
        self.found: list[InputError] = []

    @contextmanager
    def one(self) -> Iterator[None]:
        try:
            yield
        except InputError as error:
            self.found.append(error)

    def settle(self) -> None:
        if self.found:
            raise Mistakes(self.found)


def problems(error: ValidationError, model: type[BaseModel]) -> list[tuple[tuple[str, ...], str]]:
    """Where each problem is, from the outside in and counted from 1, and what it is."""
    found = error.errors()
    # A key that nobody knows is why another one is missing.
    misspelt = {one["loc"][:-1] for one in found if one["type"] == "extra_forbidden"}
    told: dict[tuple[str, ...], str] = {}
    for one in found:
        if one["type"] == "missing" and one["loc"][:-1] in misspelt:
            continue
        steps = tuple(str(step + 1) if isinstance(step, int) else step for step in one["loc"])
        told.setdefault(steps, _what_is_wrong(one, model))
    return list(told.items())


def _what_is_wrong(one: Mapping[str, Any], model: type[BaseModel]) -> str:
    if one["type"] == "extra_forbidden":
        return f"unknown key{near_of(str(one['loc'][-1]), _keys(model, one['loc'][:-1]))}"
    return in_words(one)


def mistakes(place: str, error: ValidationError, model: type[BaseModel]) -> list[InputError]:
    """The problems of one entry, which stands at `place`."""
    return [
        InputError(place, ": ".join([*filter(None, [".".join(steps)]), words]))
        for steps, words in problems(error, model)
    ]


def read_row(row: Any, model: type[Row], place: str) -> tuple[Row | None, list[InputError]]:
    """A row of a table as far as it can be read, and all that is wrong with it.

    What is wrong is left out, the least piece of it; None where too little is left.
    """
    found, rest, gone = list[InputError](), deepcopy(row), set[Steps]()
    while True:
        try:
            made = model.model_validate(rest)
        except ValidationError as error:
            found += [one for one in mistakes(place, error, model) if str(one) not in map(str, found)]
            wrong = {_reached(rest, one["loc"]) for one in error.errors()}
            if not _left_out(rest, wrong):
                return None, found
            gone |= wrong
        else:
            return made, [*found, *(InputError(place, words) for words in _quoted(rest, made, gone))]


def _reached(row: Any, steps: Steps) -> Steps:
    """The steps as far as there is something: what is missing is missing from the last."""
    for number, step in enumerate(steps):
        there = range(len(row)) if isinstance(row, list) else row if isinstance(row, dict) else ()
        if step not in there:
            return steps[:number]
        row = row[step]
    return steps


def _left_out(row: Any, places: set[Steps]) -> bool:
    """Leave out what stands at these places, the last first as others move up; False where nothing would be left."""
    outermost = {one for one in places if not any(one[:end] in places for end in range(len(one)))}
    for *outer, last in sorted(outermost - {()}, key=str, reverse=True):
        here = row
        for step in outer:
            here = here[step]
        del here[last]
    return () not in places


def _quoted(row: Any, made: Any, gone: set[Steps], steps: Steps = ()) -> Iterator[str]:
    """Numbers in quotes: whoever reads the file next takes them for text. `gone`: what was left out of the row."""
    if isinstance(row, str) and isinstance(made, int | float | Decimal):
        yield f"{_placed(steps)}: should be a number without quotes, not '{row}'"
    elif isinstance(row, list) and isinstance(made, tuple):
        kept = (number for number in count() if (*steps, number) not in gone)
        for number, one, made_of_it in zip(kept, row, made, strict=False):
            yield from _quoted(one, made_of_it, gone, (*steps, number))
    elif isinstance(row, dict):
        for name, one in row.items():
            yield from _quoted(one, getattr(made, name, None), gone, (*steps, name))


def _placed(steps: Steps) -> str:
    """From the outside in, counted from 1: `equipment.2.loads_kg.1`."""
    return ".".join(str(step + 1) if isinstance(step, int) else step for step in steps)


def in_words(one: Mapping[str, Any]) -> str:
    """What one of pydantic's errors says."""
    kind, context, given = one["type"], one.get("ctx", {}), one["input"]
    if kind in _WORDS:
        words = _WORDS[kind].format(**context)
        return words if kind == "missing" else f"{words}, not {given}"
    for kinds, words in _KINDS:
        if kind.startswith(kinds):
            return f"{words.format()}, not {given}"
    if kind == "json_invalid":
        return f"this is not JSON: {context['error']}"
    return str(one["msg"]).removeprefix("Value error, ")


def _keys(model: type[BaseModel], steps: tuple[int | str, ...]) -> list[str]:
    """The keys that may stand at a place of a model's document."""
    here = model
    for step in steps:
        if isinstance(step, str) and step in here.model_fields:
            here = _model_in(here.model_fields[step].annotation) or here
    return list(here.model_fields)


def _model_in(annotation: Any) -> type[BaseModel] | None:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    return next((found for part in get_args(annotation) if (found := _model_in(part))), None)
