"""Spellings: what people type for a movement or a thing, brought to one key."""

import re
from functools import lru_cache

_WORD = re.compile(r"[a-z0-9']+")
_LONGEST_KEPT = 60
_ES = ("sses", "shes", "ches", "xes")


def key(text: str) -> str:
    """Normalised spelling: case, hyphens, spaces and plurals don't count (`Push-Ups` is `pushup`)."""
    return _short_key(text) if len(text) <= _LONGEST_KEPT else _key(text)


@lru_cache(maxsize=16384)
def _short_key(text: str) -> str:
    return _key(text)


def _key(text: str) -> str:
    words = _WORD.findall(text.casefold())
    if len(words) == 1 and len(words[0]) <= len("fs"):
        return str(words[0])  # not the plural of a letter
    return "".join(_singular(word) for word in words)


def _singular(word: str) -> str:
    word = word.removesuffix("'s").replace("'", "")
    if word.endswith(_ES):
        return word[:-2]
    if word.endswith("ies") and len(word) > len("ties"):
        return word[:-3] + "y"
    if word.endswith("s") and not word.endswith(("ss", "us")):
        return word[:-1]
    return word
