"""The words of an order in a stretch: what says a step, and which movements are named."""

import tomllib
from collections.abc import Container, Iterator, Mapping
from functools import cache
from pathlib import Path
from typing import Any, NamedTuple

from core.understanding.marks import Mark
from core.understanding.slots.stretch import Stretch


@cache
def table() -> Mapping[str, Mapping[str, Any]]:
    return tomllib.loads(Path(__file__).with_name("orders.toml").read_text(encoding="utf-8"))


@cache
def _phrases() -> Mapping[str, Mapping[tuple[str, ...], str]]:
    of_words = (
        (kind, {tuple(one.split()): kind for one in phrases}) for kind, phrases in table()["words"].items()
    )
    steps = {tuple(one.split()): step for step, told in table()["steps"].items() for one in told}
    return {"steps": steps, **dict(of_words)}


def says(stretch: Stretch, kind: str) -> bool:
    return any(True for _ in said(stretch, kind))


def said(stretch: Stretch, kind: str) -> Iterator[tuple[int, int, str]]:
    """Where phrases of a kind stand, the longest at each place, and what they say.

    Names of people or movements within are none of it: `take Bo off running`, `take the burpees off Bo`.
    """
    phrases = _phrases()[kind]
    named = {at for one in stretch.marks("person", "movement") for at in range(one.start, one.end)}
    places = [
        at
        for at in range(stretch.start, stretch.end)
        if at not in named and not _is_article(stretch, at, named)
    ]
    words = tuple(stretch.word(at) for at in places)
    longest = max(map(len, phrases))
    at = 0
    while at < len(words):
        sizes = range(min(longest, len(words) - at), 0, -1)
        size = next((n for n in sizes if words[at : at + n] in phrases), 0)
        if size:
            yield places[at], places[at + size - 1] + 1, phrases[words[at : at + size]]
        at += size or 1


def _is_article(stretch: Stretch, at: int, named: Container[int]) -> bool:
    return stretch.word(at) == "the" and at + 1 in named


class Named(NamedTuple):
    """A movement where it is named; `refused`: in words that leave it out, as `no running`."""

    start: int
    end: int
    movement: str
    refused: bool = False


def movements(stretch: Stretch) -> list[Named]:
    """Each movement once, as it was named first."""
    found: dict[str, Named] = {}
    for one in all_movements(stretch):
        found.setdefault(one.movement, one)
    return list(found.values())


def all_movements(stretch: Stretch) -> list[Named]:
    """Wherever one is named; a bench beside another is what it is done on."""
    marks = stretch.marks("movement", "wish")
    told = [one for one in marks if not is_stood_on(stretch, one)] or marks
    named = ((one, one.value("movement") or table()["wishes"].get(one.value("wish") or "")) for one in told)
    return [Named(one.start, one.end, name, one.value("movement") is None) for one, name in named if name]


def is_stood_on(stretch: Stretch, one: Mark) -> bool:
    """`On a bench`, which is the name of a movement too."""
    before = stretch.marked.words[max(stretch.start, one.start - 2) : one.start]
    return one.value("thing") is not None and "on" in before
