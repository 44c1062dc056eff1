"""Whether somebody says that they can't tell, never did it, or that all of it is new to them; as data beside this."""

import re
import tomllib
from functools import cache
from pathlib import Path
from typing import Final

from core.notation.quantities import NUMBER_WORDS
from core.notation.text import plain

_LONGEST: Final = 200
_WORD: Final = re.compile(r"[a-z]+")
# `Never done one`, `not even one` count nothing.
_NUMBERS: Final = frozenset(NUMBER_WORDS) - {"one", "once", "a", "an", "zero"}


def does_not_know(text: str) -> bool:
    """Whether somebody can't tell: `idk`, `couldn't tell you`, `?`; whoever never did it can tell that."""
    if text.strip() and not text.strip(" ?"):
        return True
    return _tells(text, "cannot_tell") and not never_did(text)


def never_did(text: str) -> bool:
    """`Never tried`, `no idea, never done one`; not `never more than 5`, nor `not since school`."""
    return _tells(text, "never_did") and not _tells(text, "but_did")


def is_new_to_it(text: str) -> bool:
    """`I don't know any of this`, `total beginner`: they can't tell, in whatever words."""
    return any(_tells(text, kind) for kind in ("cannot_tell", "never_did", "new_to_it"))


def _tells(text: str, kind: str) -> bool:
    words = _words(text)
    is_counted = any(one.isdigit() for one in text) or not _NUMBERS.isdisjoint(words.split())
    return not is_counted and _phrases(kind).search(words) is not None


def _words(text: str) -> str:
    said = plain(text[:_LONGEST]).casefold().replace("'", "").replace("\u2019", "")
    return " ".join(_WORD.findall(said))


@cache
def _phrases(kind: str) -> re.Pattern[str]:
    data = tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))
    shapes = (one.replace(" * ", r"(?: \w+)? ") for one in data[kind])
    return re.compile(rf"\b(?:{'|'.join(shapes)})\b")
