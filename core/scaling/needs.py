"""What of an athlete's version calls for the coach, the gravest first; that somebody may do more calls for nobody."""

from collections import Counter
from collections.abc import Iterable, Sequence
from typing import NamedTuple

from core.scaling.values import Because, Change, NeedsCoach


def calling(needs: Iterable[NeedsCoach]) -> tuple[NeedsCoach, ...]:
    return tuple(sorted((one for one in needs if not _is_only_light(one)), key=gravity))


class First(NamedTuple):
    """What of somebody's needs goes first; `shared`: how many people in all the same line needs a coach for."""

    need: NeedsCoach
    shared: int

    @property
    def place(self) -> tuple[int, int]:
        """The gravest first; of equally grave ones what fewest share, as what most share is the session's."""
        return gravity(self.need), self.shared


def first_of_each(people: Sequence[Sequence[NeedsCoach]]) -> list[First | None]:
    """Of each one's needs the one that goes first, in the order of `people`; None where there is none."""
    shared = Counter(_line_of(one) for needs in people for one in needs)
    firsts = ([First(one, shared[_line_of(one)]) for one in needs] for needs in people)
    return [min(one, key=lambda first: first.place, default=None) for one in firsts]


def _line_of(one: NeedsCoach) -> tuple[object, ...]:
    """What alike needs have in common; what is of no line is its owner's."""
    return one.block, one.line, one.change, one.about if one.written is None else None


def _is_only_light(one: NeedsCoach) -> bool:
    """Done as written, by somebody for whom it is little."""
    return one.written is not None and one.change is Change.NONE and one.because is Because.TOO_LIGHT


def gravity(one: NeedsCoach) -> int:
    """What somebody's health asks, nothing safe, a weight nobody knows of, another kind, and then the rest."""
    if one.written is None:
        return 0
    if one.change is Change.REST:
        return 1
    if one.because is Because.UNKNOWN_HEAVY:
        return 2
    return 3 if one.change is Change.MOVEMENT else 4
