"""What anybody may look up, with nothing stored: movements, things, limits, and what words can tell."""

from rapidfuzz import process
from rapidfuzz.distance import OSA

from core.athletes.equipment import everything
from core.athletes.limits import Limit, limit, limits
from core.errors import Refusal
from core.movements.lookup import Catalogue, Named, catalogue
from core.movements.names import key
from core.scores.ways import likes
from core.understanding.acts import AnyAct, Result

__all__ = [
    "AnyAct",
    "Catalogue",
    "Limit",
    "Result",
    "UnknownName",
    "catalogue",
    "everything",
    "find_movement",
    "likes",
    "limit",
    "limits",
]

_NEAR_ENOUGH = 0.6
_NEAR_SPELLINGS = 3


class UnknownName(Refusal):
    """Nothing is called that. `near`: spellings that may be meant."""

    def __init__(self, name: str, near: tuple[str, ...]) -> None:
        guess = f" Do you mean {' or '.join(near)}?" if near else ""
        super().__init__(f"I know no movement called {name!r}.{guess}")
        self.near = near


def find_movement(name: str) -> Named:
    """What a typed name means: a movement, and its variant if that was named. Raises UnknownName."""
    found = catalogue().by_name(name)
    if found is not None:
        return found
    book = catalogue()
    if name in book.ids():
        return Named(*book.variant(name))
    raise UnknownName(name, near_spellings(name))


def near_spellings(name: str) -> tuple[str, ...]:
    """Spellings of the catalogue that look like a name, the nearest first, one per meaning."""
    spelt = {key(spelling): spelling for spelling in reversed(catalogue().names())}
    hits = process.extract(
        key(name[:60]), spelt.keys(), scorer=OSA.normalized_similarity, score_cutoff=_NEAR_ENOUGH, limit=None
    )
    meanings: dict[object, str] = {}
    for hit, _, _ in hits:
        meanings.setdefault(_meaning(spelt[hit]), spelt[hit])
    return tuple(meanings.values())[:_NEAR_SPELLINGS]


def _meaning(spelling: str) -> object:
    found = find_movement(spelling)
    return found.movement.id, found.variant and found.variant.id
