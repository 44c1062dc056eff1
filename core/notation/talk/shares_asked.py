"""A share of a best, with no kilos: `80 %`, `whats 75% of my back squat`, `80 percent of what`."""

import re
from typing import Final, NamedTuple

from core.movements.lookup import catalogue
from core.notation.text import plain

_SHARE: Final = re.compile(
    r"^\W*(?:(?:so|and|ok|hey|how much|how heavy|what|whats|what's|is|are|does|the)\s+)*"
    r"(?P<percent>[0-9]{1,3})\s?(?:%|percent|per cent)"
    r"(?:\s+(?:of|from)\s+(?P<of>[a-z' -]{1,40}))?(?:\s+(?:mean|in kilos|in kg|then|be))?\W*$"
)
# What is said around the name of a lift.
_AROUND: Final = re.compile(
    r"\b(?:what|which|my|the|a|best|max|maximum|maxes|most|one|rep|1rm|rm|pb|pr|it|that|lift|weight|ever)\b|'s\b|-(?=\s|$)"
)
_MOST: Final = 110


class AskedShare(NamedTuple):
    """`movement`: its id, where one is named."""

    percent: int
    movement: str | None


def asked_share(text: str) -> AskedShare | None:
    """None where anything else stands beside it, or what it is of is no lift that anybody knows."""
    found = _SHARE.match(plain(text).replace("\u2019", "'").casefold())
    if found is None or not 0 < int(found["percent"]) <= _MOST:
        return None
    name = " ".join(_AROUND.sub(" ", found["of"] or "").split())
    meant = catalogue().by_name(name) if name else None
    if name and meant is None:
        return None
    return AskedShare(int(found["percent"]), meant.movement.id if meant else None)
