"""A linear choice between names over facts that hold or don't; what each fact speaks for was learned."""

import gzip
import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path
from typing import Any, Final

import numpy as np
import numpy.typing as npt

Numbers = npt.NDArray[np.float64]
_BETWEEN_FACTS: Final = "\n"


@dataclass(frozen=True)
class Chooser:
    """`speaks[place[fact]]`: what a fact speaks for each of the `names`, as `bias` in steps of 1/`scale`."""

    names: tuple[str, ...]
    bias: npt.NDArray[np.int32]
    scale: int
    place: Mapping[str, int]
    speaks: npt.NDArray[np.int16]

    def odds(self, found: Iterable[str]) -> Numbers:
        """What all facts together speak for each name: its logarithmic odds, where it was learned by itself."""
        place = self.place
        rows = [place[fact] for fact in dict.fromkeys(found) if fact in place]
        return np.asarray((self.bias + self.speaks[rows].sum(axis=0, dtype=np.int32)) / self.scale)

    def odds_of_only(self, found: Iterable[str]) -> float:
        """The same where there is one name: many short lists of facts are added up more quickly without arrays."""
        known = self._of_only
        return (
            float(self.bias[0] + sum(known[fact] for fact in dict.fromkeys(found) if fact in known))
            / self.scale
        )

    @cached_property
    def _of_only(self) -> Mapping[str, int]:
        return dict(zip(self.place, self.speaks[:, 0].tolist(), strict=True))

    def chances(self, found: Iterable[str]) -> Numbers:
        """The chance of each name, where one of them is right; they add up to one."""
        odds = self.odds(found)
        grown = np.exp(odds - odds.max())
        return np.asarray(grown / grown.sum())


def document_of(
    names: Sequence[str], bias: Sequence[int], scale: int, facts: Mapping[str, Sequence[tuple[int, int]]]
) -> dict[str, Any]:
    """What is kept of a choice. `facts`: of each fact what it speaks, and for which name, by its number."""
    pairs = [pair for spoken in facts.values() for pair in spoken]
    return {
        "names": list(names),
        "bias": list(bias),
        "scale": scale,
        "facts": _BETWEEN_FACTS.join(facts),
        "spoken": [len(spoken) for spoken in facts.values()],
        "for": [name for name, _ in pairs],
        "speaks": [number for _, number in pairs],
    }


def as_chooser(kept: Mapping[str, Any]) -> Chooser:
    """A choice from what was kept of it."""
    facts = kept["facts"].split(_BETWEEN_FACTS)
    speaks = np.zeros((len(facts), len(kept["names"])), dtype=np.int16)
    speaks[np.repeat(np.arange(len(facts)), kept["spoken"]), kept["for"]] = kept["speaks"]
    place = {fact: at for at, fact in enumerate(facts)}
    return Chooser(tuple(kept["names"]), np.array(kept["bias"], dtype=np.int32), kept["scale"], place, speaks)


def read_weights(path: Path) -> Mapping[str, Any]:
    """The document that `make train` wrote, its `digest` being of what it was learned from."""
    document: Mapping[str, Any] = json.loads(gzip.decompress(path.read_bytes()))
    return document


def write_weights(path: Path, document: Mapping[str, Any]) -> None:
    """The same bytes for the same document."""
    data = json.dumps(document, separators=(",", ":"), sort_keys=True).encode()
    path.write_bytes(gzip.compress(data, mtime=0))
