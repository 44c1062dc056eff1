"""Which acts a stretch of a message tells: two linear choices over its features, learned from the examples."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from math import exp, log, log1p
from pathlib import Path
from typing import Any, Final, NamedTuple

from core.choosers import Chooser, as_chooser, read_weights

WEIGHTS: Final = Path(__file__).parent / "weights" / "weights.json.gz"
# How much the second opinion counts beside the first.
_SECOND: Final = 0.4
_SUREST: Final = 1e-6
_HIGHEST: Final = 30.0


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
        costs = {act: log1p(exp(min(one, _HIGHEST))) for act, one in odds.items()}
        all_of_them = sum(costs.values())
        return Heard(
            {act: _agreed(chance, odds.get(act)) for act, chance in chances.items()},
            {"": all_of_them} | {act: all_of_them - costs.get(act, 0.0) for act in chances},
        )


def _agreed(chance: float, odds: float | None) -> float:
    """One chance of two opinions: the mean of their logarithmic odds."""
    if odds is None:
        return chance
    chance = min(max(chance, _SUREST), 1 - _SUREST)
    both = (1 - _SECOND) * log(chance / (1 - chance)) + _SECOND * odds
    return 1 / (1 + exp(-both))


@cache
def _document() -> Mapping[str, Any]:
    return read_weights(WEIGHTS)


@cache
def ear(speaker: str) -> Ear:
    """What was learned of what an athlete or a coach says."""
    return as_ear(_document()[speaker])


def as_ear(learned: Mapping[str, Any]) -> Ear:
    return Ear(as_chooser(learned["one"]), as_chooser(learned["each"]))


def digest_of_weights() -> str:
    """Of what the weights were learned from."""
    return str(_document()["digest"])
