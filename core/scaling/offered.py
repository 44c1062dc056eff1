"""What a line offers beside the movement that it names: `5 min bike or march`, `row, bike or walk`."""

import re
from functools import lru_cache

from core.movements.lookup import Catalogue
from core.sessions.values import Line

_CHOICES = re.compile(r"\s*(?:[,;/]|\bor\b)\s*", re.IGNORECASE)
_OFFERS = re.compile(r"\bor\b", re.IGNORECASE)
_HOW = re.compile(r"\b(?:easy|easily|gently|gentle|slowly|slow)\b", re.IGNORECASE)


def offered_by(line: Line, catalogue: Catalogue) -> tuple[str, ...]:
    """Ids of the ways that are offered as well, in the coach's order; none with an amount of its own."""
    return _offered(line.notes, line.movement, catalogue) if line.notes else ()


@lru_cache(maxsize=256)
def _offered(notes: str, movement: str, catalogue: Catalogue) -> tuple[str, ...]:
    found = dict[str, None]()
    for said in notes.split("; "):
        if not _OFFERS.search(said):
            continue
        for name in _CHOICES.split(said):
            meant = catalogue.by_name(_HOW.sub("", name).strip())
            if meant is not None and meant.movement.id != movement:
                variant = meant.variant or meant.movement.variants[0]
                found[f"{meant.movement.id}/{variant.id}"] = None
    return tuple(found)
