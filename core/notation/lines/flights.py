"""Stairs by the floor: `climb 10 floors`, `run up 4 flights`, `stairs 3 floors`, said as one name behind its number."""

import re

FLIGHTS = (
    r"(?:\b(?:floors|flights|storeys|stories)\b(?:\s(?:of\s)?(?:the\s)?(?:stairs|steps)\b)?"
    r"|\b(?:floor|flight|storey|story)\s(?:of\s)?(?:the\s)?(?:stairs|steps)\b)"
)
_FLIGHTS = re.compile(FLIGHTS)
_ONE = re.compile(r"\ban?\s*$")
_FAST = re.compile(r"\b(?:run|runs|running|sprint|sprints|sprinting|jog|jogging|fast|quick|quickly)\b")
# What says no more than that stairs are climbed.
_CLIMB = re.compile(
    r"\b(?:(?:stairs?|steps?)\s)?(?:climb(?:s|ing)?|walk(?:s|ing)?|march(?:ing)?|go(?:ing)?|take)\b"
    r"|\b(?:up(?:wards?)?(?:stairs)?(?:(?:\sand\s|\s?[/&+]\s?)(?:back\s)?down)?|stairs?(?:\s?:)?)(?!\w)"
)


def in_flights(text: str) -> str:
    """The text with its floors or flights as `flights of stairs`, `fast` if they are run; any other text as it is."""
    match = _FLIGHTS.search(text)
    if match is None:
        return text
    before, after = (_bare(part) for part in (text[: match.start()], text[match.end() :]))
    fast = "fast " if _FAST.search(text) else ""
    before = _ONE.sub("1", before)
    return f"{before} {fast}flights of stairs {after}".strip()


def _bare(words: str) -> str:
    return _CLIMB.sub(" ", _FAST.sub(" ", words)).strip()
