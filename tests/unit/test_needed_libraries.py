"""Whoever installs the bot alone, without what tests need, gets every library it imports."""

import re
import sys
import tomllib
from functools import cache
from importlib.metadata import packages_distributions

from tests.unit.test_layers import ROOT, all_arrows

OURS = {"core", "bot", "migrations"}


def imported() -> set[str]:
    tops = {arrow.imports.split(".", maxsplit=1)[0] for arrow in all_arrows()}
    return tops - OURS - sys.stdlib_module_names


def promised() -> set[str]:
    """The projects that pyproject.toml installs with the bot, their names as the packaging standard folds them.

    Source: PEP 503, "Normalized Names".
    """
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    return {folded(re.split(r"[\[<>=!~ ]", line, maxsplit=1)[0]) for line in project["dependencies"]}


def folded(name: str) -> str:
    return re.sub(r"[-_.]+", "-", name).lower()


@cache
def installed_by() -> dict[str, set[str]]:
    """Each thing that can be imported, with the projects that bring it."""
    return {name: set(map(folded, projects)) for name, projects in packages_distributions().items()}


def test_every_imported_library_is_installed_with_the_bot():
    assert [library for library in sorted(imported()) if not promised() & installed_by()[library]] == []


def test_a_library_of_the_tests_is_no_promise():
    assert "pytest" not in promised()
