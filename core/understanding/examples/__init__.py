"""Sentences by what they tell, ask or wish: data that anybody can add to."""

import tomllib
from collections.abc import Iterator, Mapping
from functools import cache
from pathlib import Path
from typing import Any, Final, Literal, NamedTuple

FOLDER: Final = Path(__file__).parent

Speaker = Literal["athlete", "coach"]


class Example(NamedTuple):
    """`question`: what it answers, "" where it is said at any time; `speaker`: None for both."""

    act: str
    text: str
    question: str = ""
    speaker: Speaker | None = None
    language: str = "en"


@cache
def examples() -> tuple[Example, ...]:
    """Every example that comes with the program."""
    return read_examples(FOLDER)


def read_examples(folder: Path) -> tuple[Example, ...]:
    """The examples of a folder; what stands before a hyphen in a file's name is its language."""
    return tuple(
        example
        for path in sorted(folder.glob("*.toml"))
        for act, table in tomllib.loads(path.read_text(encoding="utf-8")).items()
        for example in _of_act(act, table, path.stem.split("-")[0])
    )


def _of_act(act: str, table: Mapping[str, Any], language: str) -> Iterator[Example]:
    speaker: Speaker | None = None if act in BOTH else "athlete"
    for text in table.get("said", ()):
        yield Example(act, text, "", speaker, language)
    for text in table.get("coach", ()):
        yield Example(act, text, "", "coach", language)
    for question, texts in table.get("asked", {}).items():
        yield from (Example(act, text, question, "athlete", language) for text in texts)


# What everybody says, whoever they are.
BOTH: Final = frozenset({"thanks", "greeting", "small_talk"})
