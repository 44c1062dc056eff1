"""What somebody weighs, told unasked: `I weigh 74kg`, `74kg`."""

import re
from decimal import Decimal
from typing import Final

from core.measures import MassUnit
from core.notation.numbers import read_body_mass
from core.notation.quantities import NUMBER
from core.notation.text import plain

_LONGEST: Final = 100
_UNIT: Final = r"(?:kgs?|kilos?|kilograms?|lbs?|pounds?|stones?|st)"
_MASS: Final = rf"{NUMBER}\s?{_UNIT}(?:\s?(?:and\s)?[0-9]{{1,2}}\s?(?:lbs?|pounds?)?)?"
_SOMETIME: Final = r"(?:now|today|this morning|these days|at the moment|right now|again|currently)"
_AMOUNT: Final = (
    rf"(?:(?:now|about|around|roughly|only|just|exactly) )*(?:{_MASS}|{NUMBER})(?:,? {_SOMETIME})?"
)
_TOLD: Final = re.compile(
    r"^\W*(?:(?:btw|by the way|hi|hey|oh|and|so|ok|sorry|also|fyi)\W+)*"
    rf"(?:i(?:'ve| have)? (?:{_SOMETIME} )?weigh(?:ed)?(?: in at)?"
    rf"|my (?:body ?)?(?:weight|mass)(?: is|'s)?|(?:body ?)?(?:weight|mass)(?: is)?)\W+{_AMOUNT}\W*$"
    rf"|^\W*i(?:'m| am)(?: (?:now|about|around|down to|up to|at))* {_MASS}(?:,? {_SOMETIME})?\W*$"
)
_BARE: Final = re.compile(rf"^\W*(?:about )?{_MASS}(?: {_SOMETIME})?\W*$")
# Alone, a smaller or larger number is more often a weight that is lifted (estimate).
_LIGHTEST_BARE, _HEAVIEST_BARE = 40, 160


def may_be_weighing(text: str) -> bool:
    """Whether the words have the shape of a body mass, in whatever unit: worth a look at whose they are."""
    words = _words(text)
    return bool(_TOLD.match(words) or _BARE.match(words))


def _words(text: str) -> str:
    return plain(text[: _LONGEST + 1]).lower().replace("\u2019", "'")


def read_weighing(text: str, units: MassUnit) -> Decimal | None:
    """The body mass in kg that the words say is one; None where they say something else."""
    words = _words(text)
    if len(words) > _LONGEST or "\n" in text.strip() or not _TOLD.match(words):
        return None
    return read_body_mass(re.sub(r"\bkilograms?\b", "kg", words), units)


def read_bare_mass(text: str, units: MassUnit) -> Decimal | None:
    """A mass and nothing else, that may be somebody's own."""
    words = _words(text)
    found = read_body_mass(words, units) if _BARE.match(words) else None
    return found if found is not None and _LIGHTEST_BARE <= found <= _HEAVIEST_BARE else None
