"""What is pointed to can be found: no source is a document that stands elsewhere."""

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
