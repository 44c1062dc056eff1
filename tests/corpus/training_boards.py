"""`make train`: the label of a stretch of a board, from `core/notation/labels/examples`. A development tool."""

import hashlib
from pathlib import Path
from typing import Any, Final

from core.choosers import write_weights
from core.movements.lookup import catalogue
from core.notation.labels import labelling
from core.notation.labels.labelling import EXAMPLES, WEIGHTS, examples, features
from tests.corpus.learning import Row, learned

# Every so many names of the catalogue are examples of movements; all of them would outweigh the rest.
_EVERY: Final = 12
STRENGTH: Final = 3.0


def rows() -> list[Row]:
    """Examples, and names of movements with and without an amount."""
    names = sorted(spelling for spelling, _ in catalogue().spellings())
    told = [*examples(), *((f"{words}", "movement") for words in names[::_EVERY])]
    told += [(f"10 {words}", "movement") for words in names[1::_EVERY]]
    return [Row(tuple(dict.fromkeys(features(words))), name) for words, name in told]


def taught() -> dict[str, Any]:
    return learned(rows(), STRENGTH)


def digest() -> str:
    """Of everything that the weights depend on, but for the catalogue, whose names are many of a kind."""
    files = [*sorted(EXAMPLES.glob("*.toml")), Path(labelling.__file__), Path(__file__)]
    return hashlib.sha256(b"".join(path.read_bytes() for path in files)).hexdigest()


def main() -> None:
    write_weights(WEIGHTS, {"digest": digest()} | taught())


if __name__ == "__main__":
    main()
