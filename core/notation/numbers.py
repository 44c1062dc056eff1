"""Single numbers in words: body mass, and how many repetitions somebody can do."""

import re
from decimal import Decimal

from core.measures import MassUnit, to_kg
from core.notation.quantities import ANY_NUMBER_WORD, MASS_UNIT, NUMBER, NUMBER_WORDS, canonical, kilograms
from core.notation.text import plain
from core.notation.unknowing import does_not_know, never_did

# Adults only; beyond these it is a slip or another unit.
LIGHTEST_KG, HEAVIEST_KG = 30, 300
MOST_REPS = 1000
_POUNDS_PER_STONE = 14

_STONE = re.compile(
    r"(?<![0-9.])(?P<st>[0-9]{1,2})\s?(?:stones?"
    r"|st)\b\.?\s?(?:and\s)?(?:(?P<lb>[0-9]{1,2}(?:\.5)?)\s?(?:lbs?|pounds?)?)?"
)
# What is counted in something else is no mass: `71 years`, `40 rounds`.
_COUNTED = r"(?!\s?(?:years?|yrs?|yo|rounds?|reps?|min|sec|cm|x)\b)"
_MASS = re.compile(rf"(?<![0-9.\-])(?P<a>{NUMBER})\s?(?P<u>{MASS_UNIT})?(?![0-9]){_COUNTED}")
_NOTHING = re.compile(
    r"^\W*(?:none|zero|never\W*$|no|not (?:one|any|even one|a single one)|can'?t(?: do (?:any|one|it))?|nil|nope"
    r"|0)\b(?!\s?[0-9])"
)
_REPS = re.compile(
    rf"(?<![0-9.:\-])(?P<a>[0-9]{{1,4}}|\b(?:{ANY_NUMBER_WORD})\b)(?![0-9:]|\.[0-9])(?:\s?(?:-|to"
    rf"|or)\s?(?P<b>[0-9]{{1,4}}))?\s?(?:\+)?(?P<wrong>\s?(?:kg|lb|min|sec|cm|%))?"
)


def read_body_mass(text: str, unit: MassUnit = MassUnit.KG) -> Decimal | None:
    """Body mass in kg from `62`, `62 kg`, `137 lb`, `9 stone 11`; None where not exactly one can be meant."""
    words = plain(text[:200]).lower()
    found = _stone(words)
    if found is None:
        masses = [kilograms(match["a"], match["u"], unit) for match in _MASS.finditer(words)]
        found = masses[0] if len(masses) == 1 else None
    return found if found is not None and LIGHTEST_KG <= found <= HEAVIEST_KG else None


def _stone(words: str) -> Decimal | None:
    match = _STONE.search(words)
    if match is None:
        return None
    pounds = Decimal(match["st"]) * _POUNDS_PER_STONE + Decimal(match["lb"] or 0)
    return canonical(to_kg(pounds, MassUnit.LB))


def read_reps(text: str) -> float | None:
    """Repetitions from `12`, `about twelve`, `none`, `10-12` (the lower); None where it can't be told.

    Whoever never did one can do none so far; `no idea` is not none: ask `does_not_know`.
    """
    words = re.sub(r"\bhalf a dozen\b", "6", plain(text[:200]).lower())
    if does_not_know(words):
        return None
    if _NOTHING.match(words) or never_did(words):
        return 0.0
    found = list(_REPS.finditer(words))
    if len(found) != 1 or found[0]["wrong"]:
        return None
    numbers = [float(NUMBER_WORDS.get(said, 0) or said) for said in found[0].group("a", "b") if said]
    return min(numbers) if max(numbers) <= MOST_REPS else None
