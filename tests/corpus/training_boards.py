"""`make train`: the label of a stretch of a board, from `core/notation/labels/examples`. A development tool."""

import hashlib
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any, Final

from core.choosers import write_weights
from core.movements.lookup import catalogue
from core.notation.labels import labelling
from core.notation.labels.labelling import EXAMPLES, WEIGHTS, examples, features
from core.notation.phrases.efforts import effort_told
from tests.corpus.judge import cases, readings
from tests.corpus.learning import Row, learned
from tests.corpus.parts import LINES, parts_of

# Every so many names of the catalogue are examples of movements; all of them would outweigh the rest.
_EVERY: Final = 12
_FEWEST_OF_A_NOTE: Final = 4
STRENGTH: Final = 3.0
BUILDING: Final = Path(__file__).parent / "building"
# Boards name the same few movements again and again.
_OF_A_MOVEMENT: Final = 0.5


def rows() -> list[Row]:
    """Examples, names of movements with and without an amount, and what boards say of their lines."""
    names = sorted(spelling for spelling, _ in catalogue().spellings())
    told = [*examples(), *((f"{words}", "movement") for words in names[::_EVERY])]
    told += [(f"10 {words}", "movement") for words in names[1::_EVERY]]
    found = [_row(words, name) for words, name in told]
    known = {words for words, _ in told}
    # How hard it is has a label of its own, and readers put it among the notes.
    said = (words for words in dict.fromkeys(said_of_lines()) if not _is_only_how_hard(words))
    found += [_row(words, "note") for words in said if words not in known]
    return found + [_row(words, "movement", _OF_A_MOVEMENT) for words in dict.fromkeys(done_in_lines())]


def _is_only_how_hard(words: str) -> bool:
    """`very easy`, not `lift and lower slowly`."""
    return effort_told(words) is not None and len(words.split()) < _FEWEST_OF_A_NOTE


def _row(words: str, name: str, weight: float = 1.0) -> Row:
    return Row(tuple(dict.fromkeys(features(words))), name, weight)


def said_of_lines() -> Iterator[str]:
    """What coaches of the building half say of their lines, in lower case."""
    for line in _lines():
        yield from (note.strip().lower() for note in (line.get("notes") or "").split(";") if note.strip())


def done_in_lines() -> Iterator[str]:
    """The movements of these lines, as their readers call them."""
    yield from (line["movement"].lower() for line in _lines() if line.get("movement"))


def _lines() -> Iterator[Mapping[str, Any]]:
    boards = (one["expect"] for case in cases(_boards()) for one in readings(case))
    parts = (part for board in boards for part in parts_of(board))
    yield from (line for part in parts for name in LINES for line in part.get(name) or ())


def _boards() -> list[Path]:
    return sorted((BUILDING / "sessions").glob("*.jsonl"))


def taught() -> dict[str, Any]:
    return learned(rows(), STRENGTH)


def digest() -> str:
    """Of everything that the weights depend on, but for the catalogue, whose names are many of a kind."""
    boards = [*_boards(), BUILDING / "second" / "sessions.jsonl"]
    files = [*sorted(EXAMPLES.glob("*.toml")), *boards, Path(labelling.__file__), Path(__file__)]
    return hashlib.sha256(b"".join(path.read_bytes() for path in files)).hexdigest()


def main() -> None:
    write_weights(WEIGHTS, {"digest": digest()} | taught())


if __name__ == "__main__":
    main()
