"""A stretch of a message that was chosen to be one act, with what its slots ask of it."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from decimal import Decimal

from core.measures import MassUnit, to_kg
from core.understanding.marks import Mark, Marked
from core.understanding.quantities import Quantity
from core.understanding.values import Context

_ENDS_A_THOUGHT = frozenset(".!?;\n,")


@dataclass(frozen=True)
class Stretch:
    """Tokens `start` to `end` of a message, read against a context."""

    marked: Marked
    start: int
    end: int
    context: Context

    @property
    def said(self) -> str:
        return self.marked.text.words(self.start, self.end)

    @property
    def is_whole(self) -> bool:
        """Whether it is the whole message."""
        return self.end - self.start == len(self.marked.words)

    @property
    def words(self) -> tuple[str, ...]:
        return self.marked.words[self.start : self.end]

    def marks(self, *kinds: str) -> list[Mark]:
        return self.marked.within(self.start, self.end, *kinds)

    def values(self, *kinds: str) -> list[str]:
        """What is named of these kinds, each once."""
        return list(dict.fromkeys(one.value(*kinds) or "" for one in self.marks(*kinds)))

    def first(self, *kinds: str) -> str | None:
        return next(iter(self.values(*kinds)), None)

    def quantities(self, *kinds: str) -> list[Quantity]:
        return [one.quantity for one in self.marks(*kinds) if one.quantity is not None]

    def named(self, kind: str) -> str | None:
        """The first that is named of a kind; what an `it` or a `them` here means is the last that was named before."""
        own = self.first(kind)
        if own or not any(True for _ in self.helps("it_word")):
            return own
        before = self.marked.within(0, self.start, kind)
        return before[-1].value(kind) if before else None

    def parts(self, kind: str) -> list["Stretch"]:
        """The stretch, parted before each thing of a kind but the first."""
        starts = [self.start, *(one.start for one in self.marks(kind)[1:])]
        ends = [*starts[1:], self.end]
        return [replace(self, start=start, end=end) for start, end in zip(starts, ends, strict=True)]

    def means(self, *meanings: str) -> bool:
        """Whether any word is about one of these."""
        return any(self.marked.means(at, *meanings) for at in range(self.start, self.end))

    def helps(self, kind: str) -> Iterator[int]:
        """The places of small words of a kind."""
        return (at for at in range(self.start, self.end) if self.marked.helps(at, kind) is not None)

    def word(self, at: int) -> str:
        return self.marked.words[at] if self.start <= at < self.end else ""

    def clause(self, mark: Mark) -> range:
        """The places of the thought that a mark stands in: from one comma, stop or end of a line to the next."""
        start, end = mark.start, mark.end
        while start > self.start and not self._ends_a_thought(start - 1):
            start -= 1
        while end < self.end and not self._ends_a_thought(end):
            end += 1
        return range(start, end)

    def _ends_a_thought(self, at: int) -> bool:
        token = self.marked.text.tokens[at]
        return token.kind == "mark" and token.word in _ENDS_A_THOUGHT

    def is_denied(self, at: int, near: int = 3) -> bool:
        """Whether a no stands shortly before a place, with no end of a thought and no `only` between."""
        for place in range(at - 1, max(self.start, at - near) - 1, -1):
            if self._ends_a_thought(place) or self.marked.means(place, "only"):
                return False
            if self.marked.helps(place, "denial") is not None:
                return True
        return False


def exact_kg(value: float) -> Decimal:
    """Kilograms as they were worked out, without the noise of binary numbers."""
    return plain(Decimal(f"{value:.8f}"))


def in_kg(value: float, units: MassUnit) -> Decimal:
    """A bare number as a mass in the units of whoever speaks."""
    return plain(to_kg(Decimal(f"{value:.4f}"), units))


def plain(number: Decimal) -> Decimal:
    return Decimal(f"{number.normalize():f}")
