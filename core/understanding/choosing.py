"""Which act a stretch of a message is: a linear choice over its features, learned from the examples."""

import gzip
import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from math import exp
from pathlib import Path
from typing import Any, Final

WEIGHTS: Final = Path(__file__).parent / "weights" / "weights.json.gz"


@dataclass(frozen=True)
class Chooser:
    """`facts`: of each feature pairs of an act's number and what it speaks for it, in steps of 1/`scale`."""

    acts: tuple[str, ...]
    bias: tuple[int, ...]
    scale: int
    facts: Mapping[str, tuple[tuple[int, int], ...]]

    def chances(self, found: Iterable[str]) -> dict[str, float]:
        """The chance of each act; they add up to one."""
        sums = list(self.bias)
        facts = self.facts
        for fact in dict.fromkeys(found):
            for act, weight in facts.get(fact, ()):
                sums[act] += weight
        most = max(sums)
        grown = [exp((one - most) / self.scale) for one in sums]
        whole = sum(grown)
        return {act: one / whole for act, one in zip(self.acts, grown, strict=True)}


@cache
def _document() -> Mapping[str, Any]:
    document: Mapping[str, Any] = json.loads(gzip.decompress(WEIGHTS.read_bytes()))
    return document


@cache
def chooser(speaker: str) -> Chooser:
    """What was learned of what an athlete or a coach says."""
    return as_chooser(_document()[speaker])


def as_chooser(learned: Mapping[str, Any]) -> Chooser:
    facts = {
        fact: tuple(zip(pairs[::2], pairs[1::2], strict=True)) for fact, pairs in learned["facts"].items()
    }
    return Chooser(tuple(learned["acts"]), tuple(learned["bias"]), learned["scale"], facts)


def digest_of_weights() -> str:
    """Of what the weights were learned from."""
    return str(_document()["digest"])
