"""What a movement trains, and how much of that a stand-in keeps."""

from functools import lru_cache
from typing import NamedTuple

from core.movements.values import Movement, Part, Variant

# Parts that lie side by side: what is lost of one is made good by so much of the other (estimate).
BESIDE = (
    frozenset({"row", "pull"}),
    frozenset({"push", "press"}),
    frozenset({"brace", "bend"}),
    frozenset({"jump", "squat"}),
)
MADE_GOOD = 0.6

# What is done for breath may be done with whatever parts: they count so much less (estimate).
OF_BREATH = 0.5

# A part that is trained at least half as much as it should be is still what the line is for.
STILL_FOR_IT = 0.5


class Kept(NamedTuple):
    """Of all that a line trains, the share that is lost; of its main part, the share that is; what is added to it.

    `is_for_it`: what the stand-in is for itself is at least half of what the line trains.
    """

    lost: float
    main_lost: float
    added: float
    is_for_it: bool


@lru_cache(maxsize=65536)
def _compared(written: tuple[tuple[str, float], ...], to: tuple[tuple[str, float], ...]) -> Kept:
    meant, other = dict(written), _made_good(dict(to))
    whole = sum(meant.values())
    lost = sum(max(0.0, share - other.get(part, 0.0)) for part, share in meant.items())
    added = sum(max(0.0, share - meant.get(part, 0.0)) for part, share in to)
    if max(meant, key=meant.__getitem__) == "breath":
        lost, added = lost * OF_BREATH, added * OF_BREATH
    main = max(meant, key=meant.__getitem__)
    main_lost = max(0.0, 1 - other.get(main, 0.0) / STILL_FOR_IT)
    own = max(dict(to), key=dict(to).__getitem__)
    return Kept(lost / whole, main_lost, added / whole, _made_good(meant).get(own, 0.0) >= STILL_FOR_IT)


def _made_good(to: dict[str, float]) -> dict[str, float]:
    """With what the parts beside it make good."""
    whole = dict(to)
    for pair in BESIDE:
        for part in pair:
            (beside,) = pair - {part}
            whole[part] = max(whole.get(part, 0.0), MADE_GOOD * to.get(beside, 0.0))
    return whole


def kept_of(written: tuple[Movement, Variant], to: tuple[Movement, Variant]) -> Kept:
    """What of the written movement's parts a stand-in keeps."""
    (movement, variant), (other, way) = written, to
    return _compared(tuple(movement.trains_of(variant).items()), tuple(other.trains_of(way).items()))


# A part of a compound that nobody would miss, or that another movement hardly has (estimates).
NOTICED, HARDLY = 0.6, 0.3
LIFTED = ("squat", "hinge", "press", "push", "row", "pull")


def without(written: tuple[Movement, Variant], to: tuple[Movement, Variant]) -> Part | None:
    """What else the written movement trains, and a stand-in for one part of it leaves out."""
    (movement, variant), (other, way) = written, to
    if not kept_of(written, to).is_for_it:
        return None
    kept = _made_good({part.value: share for part, share in other.trains_of(way).items()})
    meant = movement.trains_of(variant)
    return next(
        (
            part
            for part, share in meant.items()
            if part.value in LIFTED and share >= NOTICED and kept.get(part.value, 0.0) < HARDLY
        ),
        None,
    )
