"""Minutes that name nothing, among work that all goes the same way: `10 min easy` on a board of runs is run."""

import re
from collections.abc import Iterable

from core.measures import AmountUnit
from core.notation.kinds import is_taken_easy
from core.notation.names import Lexicon, Meaning
from core.notation.pieces import Piece
from core.notation.quantities import MINUTE_S
from core.notation.text import Row

_WORD = re.compile(r"[^\W\d_]{3,}")
_FAR = re.compile(
    r"(?<![\w.])(?:[1-9][0-9]{2,3}\s?m(?:et(?:re|er)s)?|[1-9][0-9]?(?:\.[0-9])?\s?k(?:m|ilomet(?:re|er)s))\b"
)
_HARD = re.compile(r"\b(?:hard|fast|quick|uphill|up|brisk|strong|all out)\b")

_BETWEEN = re.compile(r"\b(?:between|rest|recover)")


def way_of_all(rows: Iterable[Row], lexicon: Lexicon) -> Meaning | None:
    """The one way of getting on that a board names, or running where only distances are told; else None."""
    text = "\n".join(row.text.lower() for row in rows)
    found = [meaning for word in dict.fromkeys(_WORD.findall(text)) if (meaning := lexicon.exact(word))]
    ways = [one for one in found if one.unit is AmountUnit.METRES and not one.held]
    if not ways:
        return lexicon.exact("run") if _FAR.search(text) and not found else None
    if len({one.movement for one in ways}) > 1:
        return None
    same = len({one.variant for one in ways}) == 1
    return ways[0] if same else lexicon.exact(ways[0].movement)


def goes_that_way(piece: Piece) -> bool:
    """Whether something nameless is done for a time at a pace that is told: `10 min easy`, `8 x 20 s up hard`."""
    timed = piece.unit is AmountUnit.SECONDS and bool(piece.amount)
    nameless = not (piece.meaning or piece.unread or piece.loads_kg or piece.per_side or piece.most)
    said = " ".join(piece.notes).lower()
    easy = is_taken_easy(piece) and (piece.amount or 0) >= MINUTE_S
    told = bool(said) and not _BETWEEN.search(said)
    return timed and nameless and told and (easy or (bool(piece.sets) and _HARD.search(said) is not None))
