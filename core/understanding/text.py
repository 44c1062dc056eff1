"""A message as tokens, each at its place: width, case, quotes, accents and decimal commas made alike once."""

import re
import unicodedata
from dataclasses import dataclass
from functools import cached_property, lru_cache
from typing import Final

# Nobody tells more than this in one message; what stands behind it is left unread.
LONGEST: Final = 1000

_ALIKE: Final = (
    dict.fromkeys("\u2010\u2011\u2012\u2013\u2014\u2015\u2212", "-")
    | dict.fromkeys("\u00d7\u2715\u2716", "x")
    | dict.fromkeys("\u2018\u2019\u201b\u2032`\u00b4", "'")
    | dict.fromkeys("\u201c\u201d\u201e\u201f\u2033\u00ab\u00bb", '"')
    | {"\u2026": ".", "\u00bf": " ", "\u00a1": " ", "\u2022": ",", "\u00b7": ","}
)
_FRACTIONS: Final = {"\u00bd": "0.5", "\u00bc": "0.25", "\u00be": "0.75"}
_TOKEN: Final = re.compile(
    r"(?P<link>https?://[^\s,]*[^\s,.;:!?)])"
    r"|(?P<clock>(?<![\d:])\d{1,3}:\d{2}(?::\d{2})?(?:[.,]\d{1,2})?(?![\d:]))"
    r"|(?P<number>\d+(?:[.,]\d+)?|[\u00bc\u00bd\u00be])"
    r"|(?P<word>[^\W\d_]+(?:'[^\W\d_]+)*'?)"
    r"|(?P<mark>\n|[^\w\s])"
)
_THOUSAND_DIGITS: Final = 3
_ES: Final = ("sses", "shes", "ches", "xes")


@dataclass(frozen=True, slots=True)
class Token:
    """`kind`: word, number, clock, link or mark; `word`: as it is looked up; `start`, `end`: places in the text."""

    kind: str
    word: str
    start: int
    end: int
    typed: str
    glued: bool = False  # nothing but a hyphen, or nothing at all, stands before it

    @property
    def number(self) -> float | None:
        return _value(self.typed) if self.kind == "number" else None


@dataclass(frozen=True)
class Text:
    """What was typed, and its tokens. `cut`: there was more than anybody reads."""

    typed: str
    tokens: tuple[Token, ...]
    cut: bool = False

    def words(self, start: int, end: int) -> str:
        """The stretch of these tokens as it was typed."""
        if start >= end:
            return ""
        return self.typed[self.tokens[start].start : self.tokens[end - 1].end].strip(" \n\t,;.:-")

    @cached_property
    def lines(self) -> int:
        return 1 + self.typed.strip().count("\n")


def read_text(typed: str) -> Text:
    """Never raises; what is longer than anybody reads is cut."""
    plain = typed[:LONGEST]
    if not plain.isascii():
        plain = "".join(map(_plain, plain))
    tokens: list[Token] = []
    end, hyphen = 0, False
    for match in _TOKEN.finditer(plain):
        said, kind = match[0], match.lastgroup or "mark"
        if said == "-" and _joins(plain, match.start()):
            hyphen = True
            continue
        glued = (hyphen or match.start() == end) and bool(tokens)
        word = fold(said) if kind == "word" else said
        tokens.append(Token(kind, word, match.start(), match.end(), said, glued))
        end, hyphen = match.end(), False
    return Text(typed[:LONGEST], tuple(tokens), cut=len(typed) > LONGEST)


def _plain(character: str) -> str:
    """One character for one, so that places stay true."""
    if character.isascii() or character in _FRACTIONS:
        return character
    alike = _ALIKE.get(character) or unicodedata.normalize("NFKC", character)
    return alike if len(alike) == 1 else character


def _joins(plain: str, at: int) -> bool:
    """`pull-up`, `10-kg`: a hyphen that only joins words."""
    before, after = plain[at - 1 : at], plain[at + 1 : at + 2]
    return (before.isalpha() and after.isalnum()) or (before.isdigit() and after.isalpha())


@lru_cache(maxsize=20_000)
def fold(word: str) -> str:
    """`Rückenschmerzen`, `don't` -> `ruckenschmerzen`, `dont`: as it stands in a lexicon's keys."""
    said = word.casefold().replace("'", "")
    if said.isascii():
        return said
    return "".join(one for one in unicodedata.normalize("NFD", said) if not unicodedata.combining(one))


@lru_cache(maxsize=20_000)
def stem(word: str) -> str:
    """A folded word without its plural: spellings are compared by these."""
    if len(word) <= len("fs"):
        return word
    if word.endswith(_ES):
        return word[:-2]
    if word.endswith("ies") and len(word) > len("ties"):
        return word[:-3] + "y"
    if word.endswith("s") and not word.endswith(("ss", "us")):
        return word[:-1]
    return word


def _value(typed: str) -> float:
    if typed in _FRACTIONS:
        return float(_FRACTIONS[typed])
    whole, _, part = typed.replace(",", ".").partition(".")
    if "," in typed and len(part) == _THOUSAND_DIGITS:
        return float(whole + part)
    return float(f"{whole[:9]}.{part[:4] or 0}")
