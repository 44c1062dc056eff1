"""From what somebody feels unwell today: a period, a cold, too little sleep, last night."""

import re
import tomllib
from functools import cache
from pathlib import Path
from typing import Final, Literal, cast

from core.notation.text import plain

Cause = Literal["period", "cold", "tired", "hangover"]
_LONGEST: Final = 120


def unwell_from(text: str) -> Cause | None:
    """None where it is illness, the past, or something else; asked and told are the same."""
    words = plain(text).replace("\u2019", "'").casefold()
    if len(words) > _LONGEST or "\n" in text.strip() or any(one.isdigit() for one in words):
        return None
    causes, others = _read()
    if others.search(words):
        return None
    return next((cast("Cause", cause) for cause, said in causes.items() if said.search(words)), None)


@cache
def _read() -> tuple[dict[str, re.Pattern[str]], re.Pattern[str]]:
    table = tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))
    causes = {cause: _any_of(said) for cause, said in table["causes"].items()}
    return causes, _any_of(table["words"]["not"])


def _any_of(phrases: list[str]) -> re.Pattern[str]:
    return re.compile(r"\b(?:" + "|".join(map(re.escape, phrases)) + r")\b")
