"""Numbers, durations, distances and masses as people type them. Patterns are bounded: none can run away."""

import re
from decimal import Decimal

from core.measures import AmountUnit, MassUnit, to_kg

_WORDS = (
    "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen "
    "seventeen eighteen nineteen twenty"
)
# Nobody orders zero of anything; a score may be none.
NUMBER_WORDS = (
    {word: number for number, word in enumerate(_WORDS.split(), start=1)}
    | {"thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "hundred": 100, "dozen": 12}
    | {"a couple": 2, "couple": 2, "once": 1, "twice": 2, "both": 2}
)
# Those of one word, as an alternation of a pattern; `both` counts only where nothing is told of each side.
ANY_NUMBER_WORD = "|".join(word for word in NUMBER_WORDS if " " not in word)
COUNT_WORD = "|".join(word for word in NUMBER_WORDS if " " not in word and word != "both")

NUMBER = r"[0-9]{1,5}(?:\.[0-9]{1,12})?"
COUNT = r"[0-9]{1,4}"
_MINUTES = r"(?:minutes?|mins?\b\.?|m(?=\s?[0-9]{1,2}\s?s)|'(?!'))"
_SECONDS = r"(?:seconds?|secs?\b\.?|s\b|''|\")"
# 12 min, 12', 1:30, :30, 90 s, 1 min 30, 1 min 30 s, 1 hour
DURATION = (
    rf"(?:(?:[0-9]{{1,3}}|(?<![\w:.])):[0-5][0-9](?![0-9:])|{NUMBER}\s?-?(?:hours?|hrs?)\b|\ban?\s(?:minute|hour)\b"
    rf"|{NUMBER}\s?-?{_MINUTES}(?:\s?(?:and\s)?[0-5]?[0-9](?:\s?{_SECONDS}|(?![0-9.\-/:)]|\s?(?!(?:between|after|each|rest|pause|btw|bw)\b)[a-z@]))|)"
    rf"|{NUMBER}\s?-?{_SECONDS})"
)
_CLOCK = re.compile(r"([0-9]{0,3}):([0-5][0-9])")
_ONE = re.compile(r"^an? ")
_SPOKEN = re.compile(rf"({NUMBER})\s?-?([a-z'\"]+)\.?(?:\s?(?:and\s)?([0-9]{{1,2}}))?")

MASS_UNIT = r"(?:(?:kgs?|kilos?|kilograms?|lbs?|pounds?)\b|#)"
_LENGTHS = r"(?:km|kms|k|kilomet(?:er|re)s?|met(?:er|re)s?|m|mi|miles?|yd|yds|yards?|ft"
DISTANCE_UNIT = rf"{_LENGTHS}|feet(?!\s(?:on|up|in|elevated|raised|high|together|apart|wide|over|off)\b))"
ENERGY_UNIT = r"(?:kcals?|cals?|calories?)"
MINUTE_S = 60
# International yard and pound agreement (1959): a yard is 0.9144 m, a mile 1760 yards.
_METRES = {"k": 1000.0, "y": 0.9144, "f": 0.3048, "mi": 1609.344}


def seconds(text: str) -> float:
    """A text that matched `DURATION`, in seconds."""
    if clock := _CLOCK.fullmatch(text.strip()):
        return int(clock[1] or 0) * 60.0 + int(clock[2])
    spoken = _SPOKEN.match(_ONE.sub("1 ", text.strip()))
    if spoken is None:
        raise ValueError(text)
    amount, unit = float(spoken[1]), spoken[2]
    if unit.startswith("h"):
        return amount * 3600
    if unit.startswith("s") or unit in {"''", '"'}:
        return amount
    return amount * 60 + float(spoken[3] or 0)


def metres(amount: str, unit: str) -> float:
    """`400`, `m` -> 400.0; miles, yards and feet by their exact length."""
    factor = _METRES["mi"] if unit.startswith("mi") else _METRES.get(unit[0], 1.0)
    return round(float(amount) * factor, 4)


def mass_unit(typed: str | None, otherwise: MassUnit) -> MassUnit:
    """The unit that was typed, or `otherwise` for a bare number."""
    if not typed:
        return otherwise
    return MassUnit.LB if typed[0] in "lp#" else MassUnit.KG


def kilograms(amount: str, typed_unit: str | None, otherwise: MassUnit) -> Decimal:
    """Mass in kg, exactly; a bare number takes the unit `otherwise`."""
    return canonical(to_kg(Decimal(amount), mass_unit(typed_unit, otherwise)))


def canonical(number: Decimal) -> Decimal:
    """The same number with one spelling only: 24.0 and 24 are stored alike."""
    return Decimal(f"{number.normalize():f}")


def in_unit(amount: float, unit: AmountUnit) -> str:
    """An amount as it is written: `12`, `30 s`, `200 m`, `15 cal`."""
    return {
        AmountUnit.REPS: f"{amount:g}",
        AmountUnit.SECONDS: f"{amount:g} s",
        AmountUnit.METRES: f"{amount:g} m",
        AmountUnit.KCAL: f"{amount:g} cal",
    }[unit]
