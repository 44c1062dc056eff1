"""Words beside the name of a movement that are no part of it (`beside.toml`)."""

import tomllib
from pathlib import Path
from typing import Final

_WORDS = tomllib.loads(Path(__file__).with_name("beside.toml").read_text(encoding="utf-8"))
# Only where, when or with what it is done.
PLACING: Final = frozenset(_WORDS["placing"])
# They join, point or say how; those that place do so too.
JOINING: Final = PLACING | frozenset(_WORDS["joining"])
_FILLING: Final = frozenset(_WORDS["filling"])
_TRAILING: Final = frozenset(_WORDS["trailing"])
# Whoever begins with one of them asks or tells of themselves.
ASKING: Final = frozenset(_WORDS["asking"])
# With what, in which place or how far, wherever it stands.
QUALIFYING: Final = frozenset(_WORDS["qualifying"])
# Names of one word that a word in front of them makes another movement's.
OPEN: Final = frozenset(_WORDS["open"])
# Behind a name they make another movement of it; `to the pond` only tells where.
MAKING: Final = frozenset(_WORDS["making"])
# No slips for the movements they are spelled nearly like.
ORDINARY: Final = frozenset(_WORDS["ordinary"])


def is_joining(token: str) -> bool:
    """Whether a word only joins, points or says how; `over-the-bar` begins with one."""
    return token in JOINING or token.split("-", maxsplit=1)[0] in PLACING or token.endswith(("ly", "..."))


def is_placing(token: str) -> bool:
    """Whether a word says only where, when or with what something is done."""
    return token in PLACING


def without_filling(words: str) -> str:
    """What words beside a name say, without those at either end that only lead on: `then you do`, `after that, of`."""
    told = words.replace(",", " , ").split()
    while told and told[-1] in _FILLING | _TRAILING:
        told.pop()
    while told and (told[0] in _FILLING or (told[0] in _TRAILING and told[1:2] == [","])):
        told.pop(0)
    return " ".join(told).replace(" ,", ",")
