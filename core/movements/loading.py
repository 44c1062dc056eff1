"""Reads the catalogue's files strictly: unknown keys are refused, and all problems are told at once."""

import json
import tomllib
from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path
from typing import Any, TypeVar

from pydantic import ValidationError

from core.errors import Defect
from core.movements.values import Implement, Movement
from core.values import Value

IMPLEMENTS = "implements.toml"
Row = TypeVar("Row", bound=Value)


class BrokenCatalogue(Defect):
    """The catalogue can't be used. `problems`: every one of them, each naming its file and movement."""

    def __init__(self, problems: Iterable[str]) -> None:
        self.problems = tuple(problems)
        super().__init__("\n".join(self.problems))


def read_movements(folder: Path) -> tuple[Movement, ...]:
    """Every movement of the folder's files, `<pattern>.toml` before `<pattern>-<part>.toml`.

    Raises BrokenCatalogue with all problems of all files.
    """
    problems: list[str] = []
    movements: list[Movement] = []
    for path in sorted(folder.glob("*.toml"), key=lambda path: path.stem):
        if path.name == IMPLEMENTS:
            continue
        table = _table(path, {"pattern", "movements"}, problems)
        _check_pattern(path, table, problems)
        home = {"pattern": table.get("pattern"), "file": path.name}
        rows = ({**home, **row} for row in table.get("movements", []))
        movements += _valid(Movement, path, rows, problems)
    if problems:
        raise BrokenCatalogue(problems)
    return tuple(movements)


def read_implements(path: Path) -> tuple[Implement, ...]:
    """Things to lift or use. Raises BrokenCatalogue with all problems."""
    problems: list[str] = []
    table = _table(path, {"implements"}, problems)
    implements = tuple(_valid(Implement, path, table.get("implements", []), problems))
    if problems:
        raise BrokenCatalogue(problems)
    return implements


def _table(path: Path, known: set[str], problems: list[str]) -> dict[str, Any]:
    try:
        table = tomllib.loads(path.read_text(encoding="utf-8"))
    except tomllib.TOMLDecodeError as error:
        problems.append(f"{path.name}: {error}")
        return {}
    problems += [f"{path.name}: unknown key {key}" for key in sorted(table.keys() - known)]
    return table


def _check_pattern(path: Path, table: Mapping[str, Any], problems: list[str]) -> None:
    pattern = table.get("pattern")
    if table and path.stem != pattern and not path.stem.startswith(f"{pattern}-"):
        problems.append(f"{path.name}: the name must begin with the pattern, {pattern}")


def _valid(
    kind: type[Row], path: Path, rows: Iterable[Mapping[str, Any]], problems: list[str]
) -> Iterator[Row]:
    for number, row in enumerate(rows, 1):
        try:
            # The JSON way is the strict one that still takes lists for tuples and words for enums.
            yield kind.model_validate_json(json.dumps(row, default=str), strict=True)
        except ValidationError as error:
            problems += [
                f"{path.name}: {row.get('id', f'row {number}')}: {said}" for said in _said(error, row)
            ]


def _said(error: ValidationError, row: Mapping[str, Any]) -> Iterator[str]:
    for problem in error.errors():
        yield f"{_place(problem['loc'], row)}: {problem['msg']}"


def _place(steps: Iterable[int | str], row: Any) -> str:
    """`variants.floor.seconds.source`: list positions give way to ids where there are some."""
    words = []
    for step in steps:
        row = _inside(row, step)
        words.append(
            str(row["id"]) if isinstance(step, int) and isinstance(row, dict) and "id" in row else str(step)
        )
    return ".".join(words)


def _inside(row: Any, step: int | str) -> Any:
    try:
        return row[step]
    except (KeyError, IndexError, TypeError):
        return None
