"""A session told in one breath: `right tmrw lets do legs: 3 rounds, 15 squats, 10 lunges`."""

import re
from typing import Final

from core.notation.calendar.moments import DAY_WORD, TOMORROW

_CLOCK: Final = r"[0-9]{1,2}(?:[.:][0-9]{2})?\s?(?:am|pm)"
_OPENED: Final = re.compile(
    rf"^\s*(?P<opening>(?:[^\d:\n]|{_CLOCK}){{3,60}}):\s*(?P<work>\S[^\n]+)$", re.IGNORECASE
)
_DAY: Final = re.compile(rf"\b(?:on\s)?(?P<day>{DAY_WORD}|{TOMORROW}|today|tonight)s?\b", re.IGNORECASE)
_BESIDE: Final = re.compile(
    r"\b(?:right|ok|okay|so|hi|hey|all|everyone|folks|guys|let'?s (?:do|have)|let'?s|we(?:'ll| will)? do"
    r"|for|on|then|now)\b[\s,]*",
    re.IGNORECASE,
)


def in_rows(text: str) -> str:
    """With what stands before a colon as its title, the day in front of it; other texts as they are."""
    match = _OPENED.match(text)
    if match is None:
        return text
    day = _DAY.search(match["opening"])
    words = _BESIDE.sub("", _DAY.sub(" ", match["opening"], count=1)) if day else match["opening"]
    title = f"{day['day'] if day else ''} {' '.join(words.split())}".strip(" ,")
    return f"{title}\n{match['work']}"
