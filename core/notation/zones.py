"""A time zone from what a coach types: a city, or the zone's name."""

from functools import cache
from zoneinfo import available_timezones

from rapidfuzz import fuzz, process

# Below this, two spellings are rather two places (estimate, tried on misspelt capitals).
NEAR = 80
AREAS = ("Africa", "America", "Antarctica", "Asia", "Atlantic", "Australia", "Europe", "Indian", "Pacific")


def read_zone(text: str) -> tuple[str, ...]:
    """Zones that `text` may mean, the likeliest first; exactly one where there is no doubt."""
    wanted = _plain(text)
    exact = _by_spelling().get(wanted)
    if exact is not None:
        return exact
    near = process.extract(wanted, _by_spelling().keys(), scorer=fuzz.ratio, score_cutoff=NEAR, limit=4)
    return tuple(dict.fromkeys(zone for spelling, _, _ in near for zone in _by_spelling()[spelling]))


@cache
def _by_spelling() -> dict[str, tuple[str, ...]]:
    """Plain spellings of the whole name and of the city alone."""
    found: dict[str, tuple[str, ...]] = {"utc": ("UTC",), "gmt": ("UTC",)}
    for zone in sorted(available_timezones()):
        if zone.partition("/")[0] in AREAS:
            for spelling in {_plain(zone), _plain(zone.rpartition("/")[2])}:
                found[spelling] = (*found.get(spelling, ()), zone)
    return found


def _plain(text: str) -> str:
    return " ".join(text.replace("_", " ").replace("/", " ").casefold().split())
