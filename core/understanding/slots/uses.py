"""What an act can account for of what is named: data of `uses.toml`."""

import tomllib
from collections.abc import Mapping
from functools import cache
from pathlib import Path

from core.understanding.slots.stretch import Stretch


@cache
def _tables() -> tuple[frozenset[str], frozenset[str], Mapping[str, frozenset[str]]]:
    table = tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))
    uses = {act: frozenset(kinds) for act, kinds in table["uses"].items()}
    return frozenset(table["weighty"]), frozenset(table["strong"]), uses


def unaccounted(act: str, stretch: Stretch) -> int:
    """How many of the named things that matter the act says nothing of."""
    weighty, strong, uses = _tables()
    own = uses.get(act, frozenset())
    return sum(_is_left(frozenset(mark.kinds), weighty, strong, own) for mark in stretch.marks())


def _is_left(
    kinds: frozenset[str], weighty: frozenset[str], strong: frozenset[str], own: frozenset[str]
) -> bool:
    if kinds & strong:
        return not kinds & strong & own
    return kinds <= weighty and not kinds & own


def crowded(act: str, stretch: Stretch) -> int:
    """How many tellings too many stand in a stretch that is one score: `Ole 16:10, Tam 17:45`."""
    if act != "scored" or stretch.means("laugh", "correct"):
        return 0
    people = len(stretch.marks("person"))
    told = stretch.quantities("plus", "load", "clock")
    shapes = len({one.kind for one in told})
    return max(people - 1, shapes - 1, len(told) - 1 if people else 0, 0)
