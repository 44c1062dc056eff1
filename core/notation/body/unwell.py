"""From what somebody isn't at their best today: a period, a cold, too little sleep, last night, heat."""

import re
import tomllib
from functools import cache
from pathlib import Path
from typing import Final, Literal, cast

from core.notation.text import plain

Cause = Literal[
    "period", "cold", "tired", "hangover", "blood", "fasting", "jab", "full", "heat", "frost",
]  # fmt: skip
_LONGEST: Final = 120
# With a number, as words without one.
_SAID_IN_NUMBERS: Final = (
    (
        re.compile(r"\bslept (?:only |just |like |about |maybe )*[1-5](?:[.,-][0-9])? ?(?:h|hrs?|hours?)\b"),
        "slept badly",
    ),
    (
        re.compile(r"\b(?:only |just |got )*[1-5](?:[.,-][0-9])? ?(?:h|hrs?|hours?) (?:of )?sleep\b"),
        "slept badly",
    ),
    (re.compile(r"(?<![0-9+:.])(?:3[0-9]|4[0-9]) ?(?:degrees?|\u00b0 ?c?|c\b|celsius)"), "too hot"),
    (
        re.compile(r"(?:(?<![0-9a-z])-|minus )[0-9]{1,2} ?(?:degrees?|\u00b0|c\b|outside|out there)"),
        "below zero",
    ),
)


def unwell_from(text: str) -> Cause | None:
    """None where it is illness, the past, or something else; asked and told are the same."""
    words = plain(text).replace("\u2019", "'").casefold()
    for numbers, said in _SAID_IN_NUMBERS:
        words = numbers.sub(said, words)
    if len(words) > _LONGEST or "\n" in text.strip() or any(one.isdigit() for one in words):
        return None
    causes, weather, others = _read()
    told = weather if others.search(words) else {**causes, **weather}
    return next((cast("Cause", cause) for cause, said in told.items() if said.search(words)), None)


@cache
def _read() -> tuple[dict[str, re.Pattern[str]], dict[str, re.Pattern[str]], re.Pattern[str]]:
    table = tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))
    causes, weather = (
        {cause: _any_of(said) for cause, said in table[kind].items()} for kind in ("causes", "weather")
    )
    return causes, weather, _any_of(table["words"]["not"])


def _any_of(phrases: list[str]) -> re.Pattern[str]:
    return re.compile(r"\b(?:" + "|".join(map(re.escape, phrases)) + r")\b")
