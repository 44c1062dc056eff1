"""Sentences by what they tell, ask or wish: data that anybody can add to."""

import re
import tomllib
from collections.abc import Iterator, Mapping, Sequence
from functools import cache
from pathlib import Path
from typing import Any, Final, Literal, NamedTuple

FOLDER: Final = Path(__file__).parent

Speaker = Literal["athlete", "coach"]

# The file of messages that tell several things, and what a part is that tells nothing.
SEVERAL: Final = "several"
NOTHING: Final = "small_talk"
_PART: Final = re.compile(r"\[(\w*)\] ?([^\[]*)")


class Example(NamedTuple):
    """`question`: what it answers, "" where it is said at any time; `speaker`: None for both.

    `start`, `end`: the place of what tells the act, in characters, where the text tells something else besides.
    """

    act: str
    text: str
    question: str = ""
    speaker: Speaker | None = None
    language: str = "en"
    start: int = 0
    end: int | None = None


@cache
def examples() -> tuple[Example, ...]:
    """Every example that comes with the program."""
    return read_examples(FOLDER)


def read_examples(folder: Path) -> tuple[Example, ...]:
    """The examples of a folder: in it one for each language, and in that a file for each act."""
    return tuple(
        example
        for path in sorted(folder.glob("*/*.toml"))
        for example in _of_act(path.stem, tomllib.loads(path.read_text(encoding="utf-8")), path.parent.name)
    )


def _of_act(act: str, table: Mapping[str, Any], language: str) -> Iterator[Example]:
    speaker: Speaker | None = None if act in BOTH else "athlete"
    for question, who, texts in _told(table, speaker):
        for text in texts:
            example = Example(act, text, question, who, language)
            yield from _parts(example) if act == SEVERAL else [example]


def _told(
    table: Mapping[str, Any], speaker: Speaker | None
) -> Iterator[tuple[str, Speaker | None, Sequence[str]]]:
    yield "", speaker, table.get("said", ())
    yield "", "coach", table.get("coach", ())
    for question, texts in table.get("asked", {}).items():
        yield question, "athlete", texts


def _parts(example: Example) -> Iterator[Example]:
    """`[scored] 9:24, [thanks] thanks`: an example for each part, in the text without its brackets."""
    text, places = "", []
    for act, said in _PART.findall(example.text):
        places.append((act or NOTHING, len(text), len(text) + len(said)))
        text += said
    yield from (example._replace(act=act, text=text, start=start, end=end) for act, start, end in places)


# What everybody says, whoever they are.
BOTH: Final = frozenset({"thanks", "greeting", "small_talk"})
