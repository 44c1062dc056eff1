"""What of an athlete's version calls for the coach, the gravest first; that somebody may do more calls for nobody."""

from collections.abc import Iterable

from core.scaling.values import Because, Change, NeedsCoach


def calling(needs: Iterable[NeedsCoach]) -> tuple[NeedsCoach, ...]:
    return tuple(sorted((one for one in needs if not _is_only_light(one)), key=gravity))


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
