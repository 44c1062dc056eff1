"""A movement named among other words: `an easy jog to the pond`, `run all together`, `grip switches or rows`."""

import re
from functools import lru_cache
from typing import NamedTuple

from core.notation.names.beside import ASKING, MAKING, OPEN, is_joining
from core.notation.names.catalogued import Lexicon, Meaning

_TOKEN = re.compile(r"[^\s,;|]+|,")
_NUMBER = re.compile("[0-9]")
_LONGEST = 6
_MOST_TOKENS = 24
# A word by itself is a slip for a name only if it is this long.
_SHORTEST_SLIP = 6
_PLACES = frozenset(("the", "finish", "start", "end", "begin", "close"))
_OR = re.compile(r"\s(?:or|/)\s")


class Spotted(NamedTuple):
    """What is meant, and the words before and behind its name."""

    meaning: Meaning
    before: str
    after: str
    is_near: bool

    @property
    def is_open(self) -> bool:
        """Whether a number behind it is still to be told."""
        return _NUMBER.search(self.after) is not None


def spotted(words: str, lexicon: Lexicon) -> Spotted | None:
    """The longest name among words, of two the first; None where a word beside it may make it another's.

    A number in front of it is for others to tell. Behind `or` stands another choice.
    """
    if choice := _OR.search(words):
        first = spotted(words[: choice.start()], lexicon)
        if first:
            return first._replace(after=f"{first.after} or {words[choice.end() :].strip()}".strip())
    tokens = list(_TOKEN.finditer(words))[:_MOST_TOKENS]
    said = [token[0].strip(".:!?()") for token in tokens]
    for length in range(min(len(tokens), _LONGEST), 0, -1):
        for start in range(len(tokens) - length + 1):
            end = start + length
            name = words[tokens[start].start() : tokens[end - 1].end()].strip(".:!?()")
            if "," in said[start:end]:
                continue
            bare = is_joining(said[start]) or is_joining(said[end - 1])
            meaning = lexicon.exact(name) or (None if bare else _meant(name, lexicon))
            if meaning and _stands_alone(said, start, end, lexicon):
                before, after = words[: tokens[start].start()], words[tokens[end - 1].end() :]
                return Spotted(meaning, before.strip(), after.strip(), meaning.near)
    return None


@lru_cache(maxsize=8192)
def _meant(name: str, lexicon: Lexicon) -> Meaning | None:
    found = lexicon.short(name) or lexicon.turned(name) or lexicon.clipped(name)
    return found or (lexicon.near(name) if len(name) >= _SHORTEST_SLIP else None)


def _stands_alone(said: list[str], start: int, end: int, lexicon: Lexicon) -> bool:
    """Whether nothing beside a name makes it another: an unknown word in front of it, the kind of another behind."""
    if start and not is_joining(said[start - 1]):
        return False
    other = start and said[start - 1] == "or"
    if not other and any(
        lexicon.is_kind(word) and not is_joining(word) for word in said[: max(start - 1, 0)]
    ):
        return False
    behind = said[end:]
    if any(map(_NUMBER.search, said[:start])) or (start and said[0] in ASKING):
        return False
    if behind and behind[0] in MAKING and not {*behind[1:2]} & _PLACES:
        return False
    if not behind or is_joining(behind[0]):
        return True
    # `burpee pull-up` is neither of the two.
    named = lexicon.exact(behind[0]) and behind[0].removesuffix("s") not in OPEN
    return not (lexicon.is_kind(behind[0]) or named)
