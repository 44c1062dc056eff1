"""A linear choice between names over facts that hold or don't; what each fact speaks for was learned."""

import gzip
import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from math import exp
from pathlib import Path
from typing import Any


@dataclass(frozen=True)
class Chooser:
    """`facts`: of each feature pairs of an act's number and what it speaks for it, in steps of 1/`scale`."""

    acts: tuple[str, ...]
    bias: tuple[int, ...]
    scale: int
    facts: Mapping[str, tuple[tuple[int, int], ...]]

    def chances(self, found: Iterable[str]) -> dict[str, float]:
        """The chance of each act; they add up to one."""
        sums = self._sums(found)
        most = max(sums)
        grown = [exp((one - most) / self.scale) for one in sums]
        whole = sum(grown)
        return {act: one / whole for act, one in zip(self.acts, grown, strict=True)}

    def odds(self, found: Iterable[str]) -> dict[str, float]:
        """The logarithmic odds of each act by itself, where that was learned; any number of them may hold."""
        return {act: one / self.scale for act, one in zip(self.acts, self._sums(found), strict=True)}

    def _sums(self, found: Iterable[str]) -> list[int]:
        sums = list(self.bias)
        facts = self.facts
        for fact in dict.fromkeys(found):
            for act, weight in facts.get(fact, ()):
                sums[act] += weight
        return sums


def as_chooser(learned: Mapping[str, Any]) -> Chooser:
    """A chooser from what `make train` wrote."""
    facts = {
        fact: tuple(zip(pairs[::2], pairs[1::2], strict=True)) for fact, pairs in learned["facts"].items()
    }
    return Chooser(tuple(learned["acts"]), tuple(learned["bias"]), learned["scale"], facts)


def read_weights(path: Path) -> Mapping[str, Any]:
    """The document that `make train` wrote, its `digest` being of what it was learned from."""
    document: Mapping[str, Any] = json.loads(gzip.decompress(path.read_bytes()))
    return document
