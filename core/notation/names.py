"""From typed names to catalogue ids: exact in any plural and spacing, or by a unique near spelling."""

from dataclasses import dataclass, replace
from functools import lru_cache

from rapidfuzz import process
from rapidfuzz.distance import OSA

from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.movements.names import key

_LONGEST = 60
_WORTH_SAYING = 0.6
# Letters from which a name may have one wrong, and two.
_ONE_SLIP, _TWO_SLIPS = 5, 8


@dataclass(frozen=True)
class Meaning:
    """Ids of the movement, and of the variant unless the movement alone was named; `near`: misspelt."""

    movement: str
    variant: str | None
    unit: AmountUnit
    spelling: str
    near: bool = False

    @property
    def name(self) -> str:
        """How the catalogue calls it."""
        return self.spelling if self.variant else self.movement


class Lexicon:
    """The catalogue's names made ready for typed text."""

    def __init__(self, catalogue: Catalogue) -> None:
        self.catalogue = catalogue
        self._meanings = {
            key(spelling): Meaning(
                named.movement.id, named.variant.id if named.variant else None, named.movement.unit, spelling
            )
            for spelling, named in catalogue.spellings()
        }

        self._words = {key(word) for spelling, _ in catalogue.spellings() for word in spelling.split()}

    def knows(self, word: str) -> bool:
        """Whether the word is part of any name."""
        return key(word) in self._words

    def exact(self, name: str) -> Meaning | None:
        return self._meanings.get(key(name))

    def near(self, name: str) -> Meaning | None:
        """The one thing that is spelled nearly like `name`; None where two different things are as near."""
        typed = key(name)
        allowed = allowed_slips(typed)
        if not allowed or len(name) > _LONGEST:
            return None
        hits = process.extract(
            typed, self._meanings.keys(), scorer=OSA.distance, score_cutoff=allowed, limit=None
        )
        close = [(slips, self._meanings[known]) for known, slips, _ in hits if _begin_alike(typed, known)]
        least = min((slips for slips, _ in close), default=None)
        nearest = [meaning for slips, meaning in close if slips == least]
        alike = {(meaning.movement, meaning.variant) for meaning in nearest}
        return replace(nearest[0], near=True) if len(alike) == 1 else None

    def guess(self, name: str) -> str | None:
        """The spelling most like a name that was not understood, if it is worth saying."""
        if len(name) > _LONGEST:
            return None
        hit = process.extractOne(
            key(name), self._meanings.keys(), scorer=OSA.normalized_similarity, score_cutoff=_WORTH_SAYING
        )
        return self._meanings[hit[0]].spelling if hit else None


def allowed_slips(typed: str) -> int:
    """A short name leaves no room: `dip` is not a slip for `hip`."""
    return 0 if len(typed) < _ONE_SLIP else 1 if len(typed) < _TWO_SLIPS else 2


def _begin_alike(typed: str, known: str) -> bool:
    """A slip at the first letter is rare, another movement is not; swapped first letters pass."""
    return typed[0] == known[0] or typed[:2] == known[1::-1]


@lru_cache(maxsize=4)
def lexicon(catalogue: Catalogue) -> Lexicon:
    """The lexicon of a catalogue, made once."""
    return Lexicon(catalogue)
