"""A place in words -> IANA time zones it may mean."""

import re
import unicodedata
from functools import cache
from zoneinfo import available_timezones

from rapidfuzz import process
from rapidfuzz.distance import OSA

from core.movements.names import key
from core.notation.names import allowed_slips
from core.notation.text import plain

_AREAS = ("Africa", "America", "Antarctica", "Asia", "Atlantic", "Australia", "Europe", "Indian", "Pacific")
_FILLER = re.compile(r"\b(?:i live in|we are in|we're in|i'm in|in|time|zone|timezone|the|city|near)\b")


def read_zone(text: str) -> tuple[str, ...]:
    """Zones meant by `Europe/Madrid`, `madrid` or `new york`: one if it is clear, several, or none."""
    words = " ".join(_FILLER.sub(" ", plain(text[:100]).lower()).split())
    typed = _key(words)
    if not typed:
        return ()
    if typed in _zones():
        return _zones()[typed]
    allowed = allowed_slips(typed)
    near = process.extract(typed, _zones().keys(), scorer=OSA.distance, score_cutoff=allowed, limit=4)
    found = dict.fromkeys(zone for name, _, _ in near for zone in _zones()[name]) if allowed else {}
    return tuple(found)


def _key(words: str) -> str:
    unaccented = "".join(letter for letter in unicodedata.normalize("NFKD", words) if letter.isascii())
    return key(unaccented.replace("/", " ").replace("_", " "))


@cache
def _zones() -> dict[str, tuple[str, ...]]:
    """Zones by their whole name and by their city."""
    found: dict[str, tuple[str, ...]] = {"utc": ("UTC",), "gmt": ("UTC",)}
    for zone in sorted(available_timezones()):
        if not zone.startswith(_AREAS) or "/" not in zone:
            continue
        for name in {_key(zone), _key(zone.rsplit("/", 1)[1])}:
            found[name] = (*found.get(name, ()), zone)
    return found
