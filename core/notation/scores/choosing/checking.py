"""Whether what the rules read is what was likely meant: the second opinion that a score needs before it is kept."""

from collections.abc import Sequence
from typing import Final, NamedTuple

from core.notation.scores.choosing.candidates import Heard, Reading
from core.notation.scores.choosing.choice import Chosen, ranked
from core.notation.scores.choosing.facts import around_of
from core.scores.values import Score

# Chosen with one writer after the other left out of what the choice is learned from, beside the rules as they were
# before that writer was known: from the first on the rules are believed, from the second on the choice alone.
AGREES: Final = 0.6
SURE: Final = 0.92
# Of two that the rules would ask between.
_OFFERED: Final = 0.8
# A reading that the choice knows nothing of stands unless another is as likely.
_SPEAKS_AGAINST: Final = 0.6
_MAY_BE: Final = 0.15
# From there on nothing is told, and no reading is shown.
_NOTHING: Final = 0.55
# That nothing is told at all speaks less against the rules than another reading.
_LEAST: Final = 0.3
_NEAR: Final = 0.01


class Opinion(NamedTuple):
    """`agrees`: with what the rules read; `sure`: what is taken where they read none; `likely`: what may be meant."""

    agrees: bool
    sure: Reading | None
    likely: tuple[Reading, ...]


def opinion(read: Score | None, heard: Heard, offered: Sequence[Score] = ()) -> Opinion:
    """On what the rules read of a message (None: nothing), or may have (`offered`); what is told plainly is theirs."""
    if around_of(heard).is_plain:
        return Opinion(agrees=True, sure=None, likely=())
    found = ranked(heard)
    best = found[0]
    told = [one for one in found if one.reading is not None]
    is_told = best.reading is not None or best.chance < _NOTHING
    least = _MAY_BE * sum(one.chance for one in told)
    likely = tuple(one.reading for one in told if is_told and one.reading and one.chance >= least)
    is_offered = best.reading is not None and any(is_alike(best.reading.score, one) for one in offered)
    sure = best.reading if best.chance >= (_OFFERED if is_offered else SURE) else None
    return Opinion(read is not None and _agrees(read, found), sure, likely)


def _agrees(read: Score, found: Sequence[Chosen]) -> bool:
    alike = [one.chance for one in found if one.reading is not None and is_alike(one.reading.score, read)]
    if not alike:
        return found[0].reading is None or found[0].chance < _SPEAKS_AGAINST
    told = sum(one.chance for one in found if one.reading is not None)
    return sum(alike) >= max(_LEAST, AGREES * told)


def is_alike(one: Score, other: Score) -> bool:
    """Whether they would stand alike on a board."""
    if one.value is None or other.value is None or one.capped != other.capped:
        return one.value is other.value and one.capped == other.capped
    sets = not one.sets or not other.sets or one.sets == other.sets
    return abs(one.value - other.value) < _NEAR and sets
