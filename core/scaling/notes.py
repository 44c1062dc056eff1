"""What coaches noted about how one athlete moves, by the pattern of movement that it speaks of."""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from decimal import Decimal
from math import inf
from typing import NamedTuple

from core.movements.lookup import Catalogue
from core.movements.values import Pattern
from core.scaling.orders import Most, Noted


class Notes(NamedTuple):
    """`cues`: the coach's words. `caps`: the most that may be in the hands altogether, in kg.

    `eased`: patterns of which no set may cost over half, as a fault without a number asks for it; `forgiven`: those
    of which nothing is too light.
    """

    cues: Mapping[Pattern, tuple[str, ...]]
    caps: Mapping[Pattern, Decimal]
    eased: frozenset[Pattern]
    forgiven: frozenset[Pattern] = frozenset()

    def unbound(self) -> "Notes":
        """The words alone, for a line that the coach has decided about since."""
        return Notes(self.cues, {}, frozenset())

    def forgiving(self) -> "Notes":
        """The same where a cap takes away what would be done: whatever it leaves is heavy enough."""
        return self._replace(forgiven=frozenset(self.caps))

    def cap(self, pattern: Pattern, count: int) -> float:
        """The most that each of so many things in the hands may weigh, in kg; infinite where nothing was said."""
        return float(self.caps[pattern]) / count if pattern in self.caps else inf


NO_NOTES = Notes({}, {}, frozenset())


def notes_of(faults: Iterable[Noted], catalogue: Catalogue) -> Notes:
    """A fault speaks of everything of its pattern: otherwise a stand-in would get round it.

    Of several numbers the lowest counts. Raises UnknownMovement.
    """
    cues, caps, eased = defaultdict[Pattern, list[str]](list), dict[Pattern, Decimal](), set[Pattern]()
    for fault in faults:
        if isinstance(fault, Most):
            caps |= {one: min(fault.cap_kg, caps.get(one, fault.cap_kg)) for one in Pattern}
            continue
        pattern = catalogue.movement(fault.movement).pattern
        if fault.words:
            cues[pattern].append(fault.words)
        if fault.cap_kg is None:
            eased.add(pattern)
        else:
            caps[pattern] = min(fault.cap_kg, caps.get(pattern, fault.cap_kg))
    return Notes({pattern: tuple(words) for pattern, words in cues.items()}, caps, frozenset(eased))
