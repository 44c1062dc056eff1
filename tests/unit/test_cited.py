"""What is pointed to can be found: every source in the repository, every path of DEVELOPERS.md on the disk."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]

# Documents that stand outside the repository, by the words in which they would be cited.
OUTSIDE = re.compile(r"\b[Dd]esign (?:sections? |case )?\d|\b(?:coach|design|check-values)\.md\b")
TOLD = {".py", ".toml", ".md"}
# What strangers wrote cites nothing.
STRANGERS = {"building", "untouched"}
PATH = re.compile(r"`((?:core|bot|tests|migrations|docs)/[\w/.*-]*)")


def files() -> Iterator[Path]:
    yield from ROOT.glob("*.md")
    for top in ("core", "bot", "tests", "migrations", "docs"):
        paths = (ROOT / top).rglob("*")
        yield from (path for path in paths if path.suffix in TOLD and not STRANGERS & set(path.parts))


def cites_outside(text: str) -> bool:
    return OUTSIDE.search(text) is not None


def test_no_file_cites_a_document_that_is_not_here():
    citing = [path for path in files() if cites_outside(path.read_text("utf-8"))]
    assert citing == [Path(__file__)]


@pytest.mark.parametrize("text", ["(design 6.2)", "Design section 7: any", "design case 8", "(coach.md 2)"])
def test_a_document_that_is_not_here_is_seen(text):
    assert cites_outside(text)


def test_every_path_for_contributors_exists():
    paths = PATH.findall((ROOT / "DEVELOPERS.md").read_text("utf-8"))
    assert len(paths) > 50
    assert [path for path in paths if not list(ROOT.glob(path))] == []
