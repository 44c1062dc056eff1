"""Whether what is read fits what was meant: numbers nearly, movements and things by what their names mean."""

import re
from typing import Any

from core.movements.lookup import catalogue

# Loads and times are told in round numbers.
NEAR = 0.06
MOVEMENTS = frozenset({"movement", "to"})
WORDS = frozenset({"text", "change"})
# What isn't printed, since it goes without saying.
UNSAID = {"each": 1}
ENOUGH = 0.7


def fits(expected: Any, found: Any) -> bool:
    """Whether all that is expected is found; what isn't mentioned isn't checked."""
    if isinstance(expected, dict):
        return isinstance(found, dict) and all(
            name in {*found, *UNSAID} and field_fits(name, one, found.get(name, UNSAID.get(name)))
            for name, one in expected.items()
        )
    if isinstance(expected, list):
        return _lists_fit(expected, found)
    if isinstance(expected, bool) or not isinstance(expected, int | float):
        return str(expected).lower() == str(found).lower()
    try:
        return abs(float(found) - expected) <= NEAR
    except (TypeError, ValueError):
        return False


def field_fits(name: str, expected: Any, found: Any) -> bool:
    if name in MOVEMENTS:
        return _is_one_movement(expected, found)
    if name == "implement":
        return _is_one_thing(expected, found)
    return nearly_says(expected, found) if name in WORDS else fits(expected, found)


def nearly_says(expected: str, found: str) -> bool:
    """Whether most words are the same: where somebody's own words begin and end is a matter of taste."""
    one, other = (set(re.findall(r"[\w'-]+", str(said).lower())) for said in (expected, found))
    return len(one & other) >= ENOUGH * len(one)


def _is_one_movement(expected: str, found: str) -> bool:
    """Whether two names mean one movement of the catalogue."""
    one, other = catalogue().by_name(expected), catalogue().by_name(found)
    return fits(expected, found) or (
        one is not None and other is not None and one.movement.id == other.movement.id
    )


def _is_one_thing(expected: str, found: str) -> bool:
    """Whether two names mean one thing of the catalogue."""
    one, other = catalogue().implement_by_name(expected), catalogue().implement_by_name(found)
    return fits(expected, found) or (one is not None and one == other)


def _lists_fit(expected: list[Any], found: Any) -> bool:
    if not isinstance(found, list | tuple) or len(expected) != len(found):
        return False
    left = list(found)
    for one in expected:
        fitting = next((other for other in left if fits(one, other)), None)
        if fitting is None:
            return False
        left.remove(fitting)
    return True
