"""Whose score is it? A name of the group in front of a text: `Ilse 7+12`, `score for Ilse: 7+12`."""

import re
from collections.abc import Iterable
from typing import NamedTuple

_LEAD = re.compile(r"^\s*(?:the\s+)?(?:score|result|time)\s+(?:for|of)\s+", re.IGNORECASE)
_AFTER = re.compile(
    r"^(?:['\u2019]s)?(?:\s+(?:did|got|has|had|made|score|is))*[\s:,;\u2013-]+", re.IGNORECASE
)


class NameInFront(NamedTuple):
    """A name of the group, and the text that follows it."""

    name: str
    rest: str


def name_in_front(text: str, names: Iterable[str]) -> NameInFront | None:
    """The longest name, or the only first name, that the text begins with; None where none or two do."""
    words = _LEAD.sub("", text).strip()
    for spelling, name in sorted(spellings(names).items(), key=lambda pair: -len(pair[0])):
        if words.casefold().startswith(spelling) and (gap := _AFTER.match(words[len(spelling) :])):
            return NameInFront(name, words[len(spelling) + gap.end() :])
    return None


class NameIn(NamedTuple):
    """A name of the group, and the text with `@` in its place."""

    name: str
    rest: str


def find_name(text: str, names: Iterable[str]) -> NameIn | None:
    """The one person who is named anywhere in a text, by the longest name first; None where nobody is."""
    known = spellings(names)
    for spelling in sorted(known, key=len, reverse=True):
        name = re.compile(rf"(?<!\w){re.escape(spelling)}(?:'s|'(?=\s|$))?(?!\w)", re.IGNORECASE)
        if name.search(text):
            return NameIn(known[spelling], name.sub("@", text, count=1))
    return None


def spellings(names: Iterable[str]) -> dict[str, str]:
    """Whole names, and first names that only one has; folded."""
    known = list(dict.fromkeys(names))
    firsts = [name.split()[0].casefold() for name in known if name.split()]
    found = {
        name.split()[0].casefold(): name
        for name in known
        if name.split() and firsts.count(name.split()[0].casefold()) == 1
    }
    return found | {name.casefold(): name for name in known if name.strip()}
