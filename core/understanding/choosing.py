"""Which act a stretch of a message is: a linear choice over its features, learned from the examples."""

from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import Any, Final

from core.choosers import Chooser, as_chooser, read_weights

WEIGHTS: Final = Path(__file__).parent / "weights" / "weights.json.gz"


@cache
def _document() -> Mapping[str, Any]:
    return read_weights(WEIGHTS)


@cache
def chooser(speaker: str) -> Chooser:
    """What was learned of what an athlete or a coach says."""
    return as_chooser(_document()[speaker])


def digest_of_weights() -> str:
    """Of what the weights were learned from."""
    return str(_document()["digest"])
