"""Which of all readings of a message was meant: a linear choice over facts, learned from how people tell scores."""

from collections.abc import Iterable, Iterator, Sequence
from functools import cache
from pathlib import Path
from typing import Any, Final, NamedTuple

import numpy as np

from core.choosers import Chooser, as_chooser, read_weights
from core.notation.scores.choosing.candidates import Heard, Reading
from core.notation.scores.choosing.facts import NOTHING, Around, of_number, of_reading
from core.notation.scores.choosing.readings import readings
from core.scores.values import Score

WEIGHTS: Final = Path(__file__).parent / "weights" / "weights.json.gz"


class Chosen(NamedTuple):
    """A score with the chance that it was meant, and the likeliest reading that comes to it; None: nothing is told."""

    reading: Reading | None
    chance: float


def ranked(heard: Heard) -> tuple[Chosen, ...]:
    """Every score that may have been meant, the likeliest first; the chances add up to one."""
    found: Sequence[Reading | None] = (None, *readings(heard))
    odds = np.array(list(_odds(found, Around(heard), _chooser())))
    grown = np.exp(odds - odds.max())
    return _by_score(zip(found, grown / grown.sum(), strict=True))


def _odds(found: Iterable[Reading | None], around: Around, chooser: Chooser) -> Iterator[float]:
    @cache
    def of(at: int, role: str) -> float:
        return float(chooser.odds(of_number(around, at, role))[0])

    for reading in found:
        uses = dict(reading.uses) if reading else {}
        own = float(chooser.odds(of_reading(around, reading))[0])
        yield own + sum(of(at, uses.get(at, NOTHING)) for at in range(len(around.numbers)))


def _by_score(found: Iterable[tuple[Reading | None, float]]) -> tuple[Chosen, ...]:
    together: dict[Score | None, list[tuple[float, Reading | None]]] = {}
    for reading, chance in found:
        together.setdefault(reading.score if reading else None, []).append((float(chance), reading))
    best = [
        Chosen(max(same, key=lambda one: one[0])[1], sum(chance for chance, _ in same))
        for same in together.values()
    ]
    return tuple(sorted(best, key=lambda one: -one.chance))


@cache
def _document() -> Any:
    return read_weights(WEIGHTS)


@cache
def _chooser() -> Chooser:
    return as_chooser(_document()["score"])


def digest_of_weights() -> str:
    """Of what the weights were learned from."""
    return str(_document()["digest"])
