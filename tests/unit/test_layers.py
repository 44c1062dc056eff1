"""The layers of DEVELOPERS.md, proven: every import in core/, bot/ and migrations/ is an allowed arrow."""

import ast
import sys
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import NamedTuple

import pytest

ROOT = Path(__file__).parents[2]

# Each layer may import itself and those before it.
LAYERS = (
    "ground",
    "core.movements",
    "core.sessions",
    "core.athletes",
    "core.scores",
    "core.notation",
    "core.ability",
    "core.understanding",
    "core.scaling",
    "core.forecast",
    "core.store",
    "core.desk",
)
GROUND = ("core", "core.caches", "core.choosers", "core.errors", "core.values", "core.measures")
BESIDE = ("core.calendar",)  # on the ground only, and open to store and desk
NOTATION = "core.notation"
# Each room of it may import itself, those before it and what stands beside the rooms; only its door imports all.
ROOMS = (
    "names", "lines", "phrases", "labels", "tongues", "body", "calendar", "talk", "coaching", "scores", "boards",
    "edits",
)  # fmt: skip
MAY_IMPORT_STORE = ("bot.bootstrap", "bot.delivery", "migrations.env")

CORE_LIBRARIES = {"pydantic", "numpy", "rapidfuzz", "dateutil"}
STORE_LIBRARIES = CORE_LIBRARIES | {"sqlmodel", "sqlalchemy", "alembic", "aiosqlite"}
MIGRATION_LIBRARIES = {"alembic", "sqlalchemy", "sqlmodel"}
BOT_LIBRARIES = {
    "aiohttp", "pydantic", "pydantic_settings", "telegram", "httpx", "starlette", "uvicorn", "typer", "apscheduler",
}  # fmt: skip
FILE_LIBRARIES = {"numpy", "soundfile", "matplotlib"}


class Arrow(NamedTuple):
    """One import: a module, what it imports, and the line it stands on."""

    module: str
    imports: str
    line: int

    def __str__(self) -> str:
        return f"{self.module}:{self.line} imports {self.imports}"


def arrows_of(module: str, source: str, *, package: bool = False) -> Iterator[Arrow]:
    """Every import of a module's source, wherever it stands, relative ones written out."""
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            yield from (Arrow(module, alias.name, node.lineno) for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            home = base_of(module, node.level, package=package)
            start = ".".join(filter(None, [home, node.module]))
            yield from (Arrow(module, f"{start}.{alias.name}", node.lineno) for alias in node.names)


def base_of(module: str, level: int, *, package: bool) -> str:
    if level == 0:
        return ""
    parts = module.split(".")
    return ".".join(parts[: len(parts) - level + package])


@cache
def all_arrows() -> tuple[Arrow, ...]:
    return tuple(arrow for top in ("core", "bot", "migrations") for arrow in _below(ROOT / top))


def _below(folder: Path) -> Iterator[Arrow]:
    for path in sorted(folder.rglob("*.py")):
        parts = path.relative_to(ROOT).with_suffix("").parts
        package = parts[-1] == "__init__"
        module = ".".join(parts[:-1] if package else parts)
        yield from arrows_of(module, path.read_text(encoding="utf-8"), package=package)


def is_within(module: str, *homes: str) -> bool:
    return any(module == home or module.startswith(f"{home}.") for home in homes)


def layer_of(module: str) -> str | None:
    """The layer of one of our own modules; `core.errors.Refusal` is a name in the ground."""
    named = next(
        (layer for layer in (*LAYERS[1:], *BESIDE, "bot", "migrations") if is_within(module, layer)), None
    )
    if named is None and is_within(module, *GROUND[1:]):
        return "ground"
    return "ground" if module in GROUND else named


def is_allowed(arrow: Arrow) -> bool:
    top = arrow.imports.split(".", maxsplit=1)[0]
    if top in sys.stdlib_module_names:
        return True
    if top not in {"core", "bot", "migrations"}:
        return top in libraries_of(arrow.module)
    return is_allowed_inside(arrow)


def libraries_of(module: str) -> set[str]:
    if is_within(module, "bot.files"):
        return FILE_LIBRARIES
    if is_within(module, "bot"):
        return BOT_LIBRARIES
    if is_within(module, "migrations"):
        return MIGRATION_LIBRARIES
    return STORE_LIBRARIES if is_within(module, "core.store") else CORE_LIBRARIES


def is_allowed_inside(arrow: Arrow) -> bool:
    here, there = layer_of(arrow.module), layer_of(arrow.imports)
    if here is None or there is None:
        return False
    if there in {here, "ground"}:
        return arrow.module == NOTATION or room_of(arrow.imports) <= room_of(arrow.module)
    if here in {"bot", "migrations"}:
        return is_allowed_from_outside(arrow, there)
    if here in BESIDE or here == "ground" or there in {"bot", "migrations"}:
        return False
    if there in BESIDE:
        return here in {"core.store", "core.desk"}
    return LAYERS.index(there) < LAYERS.index(here)


def room_of(module: str) -> int:
    """Which room of notation a module stands in, from 1 on; 0 for whatever stands in none."""
    return next((n for n, room in enumerate(ROOMS, 1) if is_within(module, f"{NOTATION}.{room}")), 0)


def is_allowed_from_outside(arrow: Arrow, there: str) -> bool:
    """The bot calls the desk and, for wording, knows the features' values; few files know the store."""
    if there == "core.store":
        return is_within(arrow.module, *MAY_IMPORT_STORE)
    if not is_within(arrow.module, "bot"):
        return False
    return there == "core.desk" or is_within(arrow.imports, f"{there}.values")


def test_every_import_is_an_allowed_arrow():
    assert [str(arrow) for arrow in all_arrows() if not is_allowed(arrow)] == []


def test_the_walk_sees_the_whole_house():
    modules = {arrow.module for arrow in all_arrows()}
    assert {"core.movements.lookup", "core.athletes.limits", "bot.cli"} <= modules
    assert all((ROOT / "core" / "notation" / room).is_dir() for room in ROOMS)


@pytest.mark.parametrize(
    ("module", "source"),
    [
        ("core.movements.lookup", "from core.athletes.values import Profile"),
        ("core.errors", "import core.movements.values"),
        ("core.scores.ranking", "from core import notation"),
        ("core.notation.lines.amounts", "from core.notation.boards.session import read_session"),
        ("core.notation.text", "from core.notation.names import catalogued"),
        ("core.notation.boards.session", "from ...scaling import values"),
        ("core.scaling.choice", "import sqlmodel"),
        ("core.ability.capacity", "from core.scaling.fit import fit"),
        ("core.desk.joining", "from sqlalchemy import select"),
        ("core.desk.joining", "def later():\n    from bot import cli"),
        ("core.store.tables", "from core.desk.outcome import Outcome"),
        ("core.calendar.classes", "from core.movements.values import Pattern"),
        ("core.scaling.choice", "from core.calendar.values import Occurrence"),
        ("bot.telegram.lanes", "from core.store.unit import UnitOfWork"),
        ("bot.telegram.words", "from core.movements.lookup import catalogue"),
        ("bot.cli", "from migrations import env"),
        ("bot.cli", "import numpy"),
        ("bot.files.sheets", "import httpx"),
        ("migrations.env", "from core.desk.outcome import Outcome"),
        ("core.measures", "import telegram"),
        ("core.unknown.thing", "from core.errors import Refusal"),
    ],
)
def test_a_forbidden_arrow_is_seen(module, source):
    assert [is_allowed(arrow) for arrow in arrows_of(module, source)] == [False]


@pytest.mark.parametrize(
    ("module", "source"),
    [
        ("core.movements.lookup", "from core.errors import Refusal"),
        ("core.scaling.choice", "from core.athletes.values import Profile"),
        ("core.scaling.choice", "from .values import Version"),
        ("core.desk.scores", "from core.store.unit import UnitOfWork"),
        ("core.desk.remind", "from core.calendar.values import Occurrence"),
        ("core.store.tables", "from sqlmodel import SQLModel"),
        ("bot.bootstrap", "from core.store.unit import UnitOfWork"),
        ("bot.delivery.sender", "from core.store import unit"),
        ("bot.telegram.words", "from core.scaling.values import Version"),
        ("bot.telegram.words", "from core.measures import in_words"),
        ("bot.commands.movements", "from core.desk.outcome import Outcome"),
        ("migrations.env", "from core.store import tables"),
        ("core.notation.names.catalogued", "from rapidfuzz import process"),
        ("core.notation.edits.editing", "from core.notation.boards.session import read_session"),
        ("core.notation.names.catalogued", "from core.notation.text import plain"),
        ("bot.files.sounding", "import soundfile"),
    ],
)
def test_an_allowed_arrow_is_left_alone(module, source):
    assert all(is_allowed(arrow) for arrow in arrows_of(module, source))


def test_relative_imports_are_written_out():
    found = [
        arrow.imports
        for arrow in arrows_of("core.scaling.choice", "from . import values\nfrom ..athletes import x")
    ]
    assert found == ["core.scaling.values", "core.athletes.x"]
    assert [arrow.imports for arrow in arrows_of("core.scaling", "from . import values", package=True)] == [
        "core.scaling.values"
    ]
