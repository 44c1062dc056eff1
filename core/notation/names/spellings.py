"""Whether two words of names are one: their endings, their slips, and what only looks alike."""

import re
from collections.abc import Iterable

from rapidfuzz.distance import OSA

from core.movements.names import key

_ENDINGS = re.compile(r"(?:ing|er|ed|e|y)$")
# Letters from which a name may have one wrong, and two.
_ONE_SLIP, _TWO_SLIPS = 5, 8
JOINING = frozenset({"with", "on", "a", "an", "the", "of", "in", "under", "your", "and"})
# A word that goes on is the same word: `pushing` is `push`.
_SHORTEST_STEM = 4
# Nearly spelled alike, or often said beside each other, and yet another movement.
_OPPOSITES = (
    ("push", "pull"), ("up", "down"), ("front", "back"), ("forward", "backward"), ("over", "under"),
    ("left", "right"), ("single", "double"), ("high", "low"), ("in", "out"), ("inner", "outer"),
    ("open", "close"), ("arm", "leg"), ("press", "row"), ("head", "hand"), ("external", "internal"),
)  # fmt: skip


def words(name: str) -> list[str]:
    """The words of a name, each brought to its key; hyphens part them."""
    return [key(word) for word in re.split(r"[\s\-]+", name) if key(word)]


def content_of(name: str) -> frozenset[str]:
    """The words of a name that aren't only there to join others."""
    return frozenset(words(name)) - JOINING


def stems(typed: Iterable[str]) -> frozenset[str]:
    """The words without their endings: `sliders` and `sliding` are one."""
    return frozenset(stem(word) for word in typed)


def stem(word: str) -> str:
    """A word without its ending."""
    stem = _ENDINGS.sub("", word)
    return stem if len(stem) >= _SHORTEST_STEM - 1 else word


def parted(mine: list[str], first: str) -> list[str]:
    """One word written for two, parted behind the first of them: `wallballs` is no `wall walk`."""
    if len(mine) != 1 or not mine[0].startswith(first) or mine[0] == first:
        return mine
    return [first, mine[0].removeprefix(first)]


def is_opposite(typed: str, known: str) -> bool:
    """Whether a key is at least as near to the opposite of a known one: `pullup` is no slip for `pushup`."""
    slips = OSA.distance(typed, known)
    turned = (
        known.replace(one, other) for pair in _OPPOSITES for one, other in (pair, pair[::-1]) if one in known
    )
    return slips > 0 and any(OSA.distance(typed, other) <= slips for other in turned)


def is_same_word(one: str, other: str) -> bool:
    """The same word but for a slip or an ending."""
    short, long = sorted((one, other), key=len)
    if len(short) >= _SHORTEST_STEM and long.startswith(short):
        return True
    return one == other or OSA.distance(one, other) <= allowed_slips(short)


def allowed_slips(typed: str) -> int:
    """A short name leaves no room: `dip` is not a slip for `hip`."""
    return 0 if len(typed) < _ONE_SLIP else 1 if len(typed) < _TWO_SLIPS else 2


def digits(typed: str) -> str:
    """A number is never a slip for another."""
    return re.sub("[^0-9]", "", typed)


def begin_alike(typed: str, known: str) -> bool:
    """A slip at the first letter is rare, another movement is not; swapped first letters pass."""
    return typed[0] == known[0] or typed[:2] == known[1::-1]
