"""Short forms written in full, so that a shape needs only the word: `easy wk pls` is an easy week, please."""

import re
import tomllib
from collections.abc import Mapping
from functools import cache
from pathlib import Path
from typing import Final

_WORD: Final = re.compile(r"[^\W_]+")


@cache
def _forms() -> Mapping[str, str]:
    forms: Mapping[str, str] = tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))[
        "words"
    ]
    return forms


def in_full(words: str) -> str:
    """Folded words with each short form as the word it stands for."""
    return _WORD.sub(lambda found: _forms().get(found[0], found[0]), words)
