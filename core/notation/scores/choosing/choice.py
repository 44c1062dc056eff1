"""Which of all readings of a message was meant: a linear choice over facts, learned from how people tell scores."""

from collections.abc import Iterable, Iterator, Sequence
from functools import cache
from pathlib import Path
from typing import Any, Final, NamedTuple

import numpy as np

from core.choosers import Chooser, as_chooser, read_weights
from core.notation.scores.choosing.candidates import Heard, Reading
from core.notation.scores.choosing.facts import NOTHING, Around, around_of, of_number, of_reading
from core.notation.scores.choosing.readings import readings
from core.scores.values import Score
from core.scores.ways import Way, way_of

WEIGHTS: Final = Path(__file__).parent / "weights" / "weights.json.gz"


class Chosen(NamedTuple):
    """A score with the chance that it was meant, and the likeliest reading that comes to it; None: nothing is told."""

    reading: Reading | None
    chance: float


def ranked(heard: Heard) -> tuple[Chosen, ...]:
    """Every score that may have been meant, the likeliest first; the chances add up to one."""
    found: Sequence[Reading | None] = (None, *readings(heard))
    odds = np.array(list(_odds(found, around_of(heard), _chooser())))
    grown = np.exp(odds - odds.max())
    return _by_score(zip(found, grown / grown.sum(), strict=True), way_of(heard.block))


def _odds(found: Iterable[Reading | None], around: Around, chooser: Chooser) -> Iterator[float]:
    @cache
    def of(at: int, role: str) -> float:
        return chooser.odds_of_only(of_number(around, at, role))

    for reading in found:
        uses = dict(reading.uses) if reading else {}
        own = chooser.odds_of_only(of_reading(around, reading))
        yield own + sum(of(at, uses.get(at, NOTHING)) for at in range(len(around.numbers)))


def _by_score(found: Iterable[tuple[Reading | None, float]], way: Way) -> tuple[Chosen, ...]:
    """Of minutes that were held only how many they were is told apart."""
    together: dict[Score | int | None, list[tuple[float, Reading | None]]] = {}
    for reading, chance in found:
        score = reading.score if reading else None
        told = score.rounds if score and way is Way.MINUTES and score.rounds is not None else score
        together.setdefault(told, []).append((float(chance), reading))
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
