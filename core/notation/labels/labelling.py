"""Which label a stretch of a board has: a linear choice over its words, learned from `examples/`."""

import re
import tomllib
from collections.abc import Iterator, Mapping
from functools import cache, lru_cache
from itertools import pairwise
from pathlib import Path
from typing import Any, Final, NamedTuple

from core.choosers import Chooser, as_chooser, read_weights
from core.notation.quantities import DURATION, NUMBER_WORDS

EXAMPLES: Final = Path(__file__).parent / "examples"
WEIGHTS: Final = Path(__file__).parent / "weights" / "weights.json.gz"
# A stretch of more words is talk, or several things.
LONGEST: Final = 14
_COUNT_WORDS: Final = "|".join(word for word in NUMBER_WORDS if " " not in word and word != "both")
_TOKEN: Final = re.compile(
    rf"(?P<dur>{DURATION})|(?P<n>[0-9]+(?:[.:][0-9]+)?|\b(?:{_COUNT_WORDS})\b)|(?P<word>[^\W\d_]+(?:'[^\W\d_]+)?)|(?P<mark>[+=%@&])"
)
_GRAM: Final = 4


class Labelled(NamedTuple):
    """A label and its chance."""

    name: str
    chance: float


def label(words: str) -> Labelled:
    """The likeliest label of a stretch in lower case; "note" where nothing speaks for anything."""
    told = chances(words)
    name = max(told, key=told.__getitem__)
    return Labelled(name, told[name])


@lru_cache(maxsize=4096)
def chances(words: str) -> Mapping[str, float]:
    """The chance of each label of a stretch in lower case."""
    found = list(features(words))
    if len(words.split()) > LONGEST or len(found) == 1:
        return {"note": 1.0}
    chooser = _chooser()
    return dict(zip(chooser.names, chooser.chances(found).tolist(), strict=True))


def features(words: str) -> Iterator[str]:
    """Each fact of a stretch: its words and what is in them, neighbours, and numbers by their kind."""
    symbols = list(_symbols(words))
    yield "bias"
    for symbol in symbols:
        yield f"w={symbol}"
        if symbol[0] != "<":
            around = f"^{symbol}$"
            yield from (f"g={around[at : at + _GRAM]}" for at in range(len(around) - _GRAM + 1))
    for one, other in pairwise(["^", *symbols, "$"]):
        yield f"b={one} {other}"
    if symbols:
        yield f"long={min(len(symbols), 6)}"
        yield f"numbers={sum(symbol in {'<n>', '<dur>'} for symbol in symbols)}"


def _symbols(words: str) -> Iterator[str]:
    for match in _TOKEN.finditer(words.lower()):
        kind = match.lastgroup
        yield "<dur>" if kind == "dur" else "<n>" if kind == "n" else match[0]


def examples() -> Iterator[tuple[str, str]]:
    """Every example: its words and its label."""
    for path in sorted(EXAMPLES.glob("*.toml")):
        for name, said in tomllib.loads(path.read_text(encoding="utf-8")).items():
            yield from ((words, name) for words in said)


@cache
def _document() -> Mapping[str, Any]:
    return read_weights(WEIGHTS)


@cache
def _chooser() -> Chooser:
    return as_chooser(_document())


def digest_of_weights() -> str:
    """Of what the weights were learned from."""
    return str(_document()["digest"])
