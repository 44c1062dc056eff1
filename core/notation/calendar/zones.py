"""A place in words, a town, a region or a country -> IANA time zones it may mean."""

import datetime as dt
import re
import tomllib
import unicodedata
from collections import defaultdict
from collections.abc import Iterator
from functools import cache
from importlib.resources import files
from zoneinfo import ZoneInfo, available_timezones

from rapidfuzz import process
from rapidfuzz.distance import OSA

from core.movements.names import key
from core.notation.names.spellings import allowed_slips
from core.notation.text import plain

_AREAS = ("Africa", "America", "Antarctica", "Asia", "Atlantic", "Australia", "Europe", "Indian", "Pacific")
_FILLER = re.compile(
    r"\b(?:i live in|we are in|we're in|we are near|i'm in|we are|we're|i'm|in|time|zone|timezone|the|city|near)\b"
)

_SHORTEST_PLACE = 4
# Letters that aren't a plain one and a mark to take off.
_UNPARTED = str.maketrans({"ø": "o", "ł": "l", "ß": "ss", "æ": "ae", "đ": "d"})
_TOWNS = files(__package__).joinpath("towns.toml")


def read_zone(text: str) -> tuple[str, ...]:
    """Zones meant by `Europe/Madrid`, `bergen` or `Voss, Norway`: one if it is clear, several, or none."""
    typed = plain(text[:100]).lower()
    town, *around = typed.split(",")
    found = _zones_of(typed) or _zones_of(town)
    for wider in map(_zones_of, around):
        # The same name stands in several countries: `Paris, Texas`.
        found = tuple(zone for zone in found if zone in wider) or wider or found
    return found


def _zones_of(words: str) -> tuple[str, ...]:
    known = _zones() | _asked_for()
    whole, typed = _key(words), _key(" ".join(_FILLER.sub(" ", words).split()))
    if not typed:
        return ()
    if exact := known.get(whole) or known.get(typed):
        return exact
    allowed = allowed_slips(typed)
    near = process.extract(typed, known.keys(), scorer=OSA.distance, score_cutoff=allowed, limit=4)
    found = dict.fromkeys(zone for name, _, _ in near for zone in known[name]) if allowed else {}
    return tuple(found)


def places_in(text: str) -> tuple[str, ...]:
    """Zones of the places that are named somewhere in a sentence: to be offered, since a name may be a person's."""
    words = re.findall(r"[^\W\d_]+", text[:200].lower())
    spans = (words[start : start + size] for size in (3, 2, 1) for start in range(len(words) - size + 1))
    named = [_key(" ".join(span)) for span in spans if len("".join(span)) >= _SHORTEST_PLACE]
    found = dict.fromkeys(zone for name in named for zone in _zones().get(name, ()))
    return tuple({_offsets(zone): zone for zone in reversed(found)}.values())[::-1]


def is_place(name: str) -> bool:
    """Whether all of these words together name one place."""
    return _key(name) in _zones()


def _offsets(zone: str) -> tuple[dt.timedelta | None, ...]:
    """Clocks that go alike need no choice between them."""
    return tuple(ZoneInfo(zone).utcoffset(dt.datetime(2026, month, 1)) for month in (1, 4, 7, 11))  # noqa: DTZ001


def _key(words: str) -> str:
    parted = unicodedata.normalize("NFKD", words.translate(_UNPARTED))
    unaccented = "".join(letter for letter in parted if letter.isascii())
    return key(unaccented.replace("/", " ").replace("_", " "))


@cache
def _zones() -> dict[str, tuple[str, ...]]:
    """Zones by their whole name, their city, larger towns and their country."""
    found: dict[str, tuple[str, ...]] = {"utc": ("UTC",), "gmt": ("UTC",)} | _by_country()
    for zone in sorted(available_timezones()):
        if not zone.startswith(_AREAS) or "/" not in zone:
            continue
        for name in {_key(zone), _key(zone.rsplit("/", 1)[1])}:
            found[name] = (*found.get(name, ()), zone)
    return dict(_towns("towns")) | found


@cache
def _asked_for() -> dict[str, tuple[str, ...]]:
    return {name: zone for name, zone in _towns("asked") if name not in _zones()}


def _towns(table: str) -> Iterator[tuple[str, tuple[str, ...]]]:
    for zone, towns in tomllib.loads(_TOWNS.read_text(encoding="utf-8"))[table].items():
        yield from ((_key(town), (zone,)) for town in towns.split(","))


_SHORT = {"uk": "Britain (UK)", "britain": "Britain (UK)", "england": "Britain (UK)"} | dict.fromkeys(
    ("usa", "us", "america"), "United States"
)


def _by_country() -> dict[str, tuple[str, ...]]:
    """Country -> its zones, from the tables of the time zone data (tz database, public domain)."""
    countries = dict(_columns("iso3166.tab", 1))
    zones: dict[str, list[str]] = defaultdict(list)
    for code, zone in _columns("zone.tab", 2):
        zones[countries[code]].append(zone)
    named = {_key(country): tuple(found) for country, found in zones.items()}
    return named | {short: named[_key(country)] for short, country in _SHORT.items()}


def _columns(table: str, column: int) -> list[tuple[str, str]]:
    """Country code and another column of a table of the time zone data."""
    text = files("tzdata").joinpath("zoneinfo", table).read_text(encoding="utf-8")
    cells = [line.split("\t") for line in text.splitlines() if line and not line.startswith("#")]
    return [(row[0], row[column]) for row in cells]
