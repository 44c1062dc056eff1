"""Loads told with a score: `7+12, did 225 lb for the deadlifts`, `used 20s`."""

import re
from collections.abc import Iterator, Mapping
from decimal import Decimal
from typing import Final, NamedTuple

from core.measures import MassUnit
from core.movements.lookup import Catalogue
from core.movements.names import key
from core.notation.quantities import MASS_UNIT, NUMBER, kilograms
from core.notation.text import plain
from core.sessions.values import Block, Line

_HEAVIEST_KG: Final = 400
_HOW_MANY: Final = r"(?:(?:a|an|the|my|one|only|just|about|two|2|pair of|double) |2 ?x ?)*"
_BELL: Final = r"(?:\s?(?:kettlebell|dumbbell|barbell|bell|db|kb|bar|plate|backpack)s?\b)?"
# What has no unit is a load only after `used` or `with`, or where the plural says so.
_MASS: Final = (
    rf"(?P<kg>{NUMBER})\s?(?:(?P<u>{MASS_UNIT})|(?P<s>s)\b"
    r"|(?![0-9:.+]|\s?(?:x|min|sec|rounds?|rds?|reps?|m\b|\+)))"
)
_OF: Final = r"(?P<of>[a-z][a-z \-]{2,40}?)"
_USED: Final = re.compile(
    rf"\b(?P<verb>used|using|took|lifted|did|with|w/|at|@|and)\s{_HOW_MANY}{_MASS}{_BELL}"
    rf"(?:\s(?:for|on|in|of)\s(?:the |my |all )?{_OF})?(?=$|[,.;!)]|\s(?:and|but|then)\b)"
)
_AT: Final = re.compile(
    rf"(?:^|[,.;(]|\band\b|\b[0-9]+)\s?(?:the )?{_OF}\s(?:at|with|@|using|were|was)\s{_HOW_MANY}{_MASS}{_BELL}"
)
_PLAINLY: Final = frozenset({"used", "using", "took", "lifted"})


class ToldLoad(NamedTuple):
    """`line`: index of the line of the block that it was for."""

    line: int
    load_kg: Decimal


def read_loads(text: str, block: Block, unit: MassUnit, things: Catalogue) -> tuple[ToldLoad, ...]:
    """The loads that are told of lines of the block; one of which it isn't clear for which line is left out."""
    words = plain(text).lower()
    found: dict[int, Decimal] = {}
    for match in _matches(words):
        load = kilograms(match["kg"], match["u"], unit)
        line = _line_of(match["of"], block, things)
        if line is not None and 0 < load <= _HEAVIEST_KG:
            found.setdefault(line, load)
    return tuple(ToldLoad(line, load) for line, load in found.items())


def _matches(words: str) -> Iterator[Mapping[str, str]]:
    for match in _AT.finditer(words):
        yield match.groupdict()
    for match in _USED.finditer(words):
        if match["of"] or (
            match["verb"] != "and" and (match["u"] or match["s"] or match["verb"] in _PLAINLY)
        ):
            yield match.groupdict()


def _line_of(name: str | None, block: Block, things: Catalogue) -> int | None:
    """The line that is named; without a name the only one with a load."""
    if name is None:
        loaded = [index for index, line in enumerate(block.lines) if line.loads_kg or line.load_rule]
        return loaded[0] if len(loaded) == 1 else None
    named = [index for index, line in enumerate(block.lines) if _is_named(name, line, things)]
    return named[0] if len(named) == 1 else None


def _is_named(name: str, line: Line, things: Catalogue) -> bool:
    meant = things.by_name(name)
    if meant is not None and meant.movement.id == line.movement:
        return True
    return key(line.movement).endswith(key(name)) or key(name) in key(line.written)
