"""Which acts a stretch of a message tells: two linear choices over its features, learned from the examples."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache, cached_property
from pathlib import Path
from typing import Any, Final, NamedTuple

import numpy as np

from core.choosers import Chooser, Numbers, as_chooser, read_weights

WEIGHTS: Final = Path(__file__).parent / "weights" / "weights.json.gz"
# How much the second opinion counts beside the first.
_SECOND: Final = 0.4
_SUREST: Final = 1e-6


class Heard(NamedTuple):
    """What a stretch may tell.

    `chances`: that it is this act. `alone`: what it costs to say that it tells nothing but this act, as the negative
    logarithm of the chance of that; "" for nothing at all.
    """

    chances: Mapping[str, float]
    alone: Mapping[str, float]


@dataclass(frozen=True)
class Ear:
    """Two opinions: which act a stretch is if it is one (`one`), and of each act whether it is told at all (`each`)."""

    one: Chooser
    each: Chooser

    def hear(self, found: Iterable[str]) -> Heard:
        facts = list(dict.fromkeys(found))
        chances, odds = self.one.chances(facts), self.each.odds(facts)
        costs = np.logaddexp(0.0, odds)
        alone = np.full(len(chances), costs.sum())
        both, second = self._both
        alone[both] -= costs[second]
        chances[both] = _agreed(chances[both], odds[second])
        names = self.one.names
        return Heard(
            dict(zip(names, chances.tolist(), strict=True)),
            {"": float(costs.sum())} | dict(zip(names, alone.tolist(), strict=True)),
        )

    @cached_property
    def _both(self) -> tuple[list[int], list[int]]:
        """The places of the acts that both know, in the one and in the other."""
        known = [name for name in self.one.names if name in self.each.names]
        return [self.one.names.index(name) for name in known], [self.each.names.index(name) for name in known]


def _agreed(chances: Numbers, odds: Numbers) -> Numbers:
    """One chance of two opinions: the mean of their logarithmic odds."""
    sure = np.clip(chances, _SUREST, 1 - _SUREST)
    both = (1 - _SECOND) * np.log(sure / (1 - sure)) + _SECOND * odds
    return np.asarray(1 / (1 + np.exp(-both)))


@cache
def document() -> Mapping[str, Any]:
    return read_weights(WEIGHTS)


@cache
def ear(speaker: str) -> Ear:
    """What was learned of what an athlete or a coach says."""
    return as_ear(document()[speaker])


def as_ear(learned: Mapping[str, Any]) -> Ear:
    return Ear(as_chooser(learned["one"]), as_chooser(learned["each"]))


def digest_of_weights() -> str:
    """Of what the weights were learned from."""
    return str(document()["digest"])
