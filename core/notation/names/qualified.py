"""A name whose words stand apart, among words that only say with what or how: `tricep ext overhead w/ one DB`."""

import re
from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import replace
from functools import lru_cache
from typing import NamedTuple

from rapidfuzz import process
from rapidfuzz.distance import OSA

from core.movements.names import key
from core.notation.names.beside import OPEN, QUALIFYING
from core.notation.names.catalogued import Lexicon, Meaning
from core.notation.names.spellings import JOINING, allowed_slips, content_of, is_opposite, stem

_WORD = re.compile(r"[^\W_]+(?:'[^\W_]+)?")
_MOST_WORDS = 9
# A word is a slip for another only if it is this long.
_SHORTEST_SLIP = 6


class Qualified(NamedTuple):
    """What is meant, and the typed words that are no part of its name."""

    meaning: Meaning
    left: str


class _Word(NamedTuple):
    """A typed word, the stems of what it stands for, and whether it had to be put right."""

    typed: str
    stems: frozenset[str]
    near: bool = False


class _Names(NamedTuple):
    """Each name by the stems of its words, and which names a stem is in."""

    by_words: Mapping[frozenset[str], tuple[Meaning, ...]]
    having: Mapping[str, tuple[frozenset[str], ...]]


@lru_cache(maxsize=4096)
def qualified(name: str, lexicon: Lexicon) -> Qualified | None:
    """The one movement most of whose words are in `name`, if all other words only qualify it; slips are put right."""
    typed = [word for word in _WORD.findall(lexicon.otherwise(name)) if key(word)]
    if not 1 < len(typed) <= _MOST_WORDS or any(word.isdigit() for word in typed):
        return None
    names = _names(lexicon)
    told = [_word(word, lexicon, names) for word in typed]
    all_ = frozenset(one for word in told for one in word.stems)
    within = {words for one in all_ for words in names.having.get(one, ()) if words <= all_}
    fitting = [words for words in within if _only_qualify(told, words, lexicon)]
    most = max(map(len, fitting), default=0)
    best = [(way, words) for words in fitting if len(words) == most for way in names.by_words[words]]
    if len({way.movement for way, _ in best}) != 1:
        return None
    meaning, words = next((one for one in best if one[0].variant is None), best[0])
    left = " ".join(word.typed for word in told if not words & word.stems)
    return Qualified(replace(meaning, near=any(word.near for word in told)), left)


def _only_qualify(told: Iterable[_Word], words: frozenset[str], lexicon: Lexicon) -> bool:
    """Whether the words beside a name make no other movement of it: `incline row` is no rowing."""
    left = [word.typed for word in told if not words & word.stems and word.typed not in JOINING]
    in_part = any(words & word.stems and not word.stems <= words for word in told)
    if in_part or not all(_qualifies(word, lexicon) for word in left):
        return False
    sure = not any(word.near for word in told)
    named = sum(bool(words & word.stems) for word in told)
    return named > 1 or (sure and not words & OPEN) or not left


def _qualifies(word: str, lexicon: Lexicon) -> bool:
    """Whether a word says with what or how; what can be done too is another thing to do, as in `row / bike`."""
    held = lexicon.catalogue.implement_by_name(word) and not lexicon.exact(word)
    return word in QUALIFYING or bool(held)


def content(spelling: str, lexicon: Lexicon) -> frozenset[str]:
    """The stems of the words of a name that aren't only there to join others."""
    return frozenset(map(stem, content_of(lexicon.otherwise(spelling))))


def _word(typed: str, lexicon: Lexicon, names: _Names) -> _Word:
    """A word as it is or written out; put right where one word only is near."""
    full, sure = lexicon.written_out(typed)
    stems = frozenset(map(stem, content_of(full)))
    known = stems <= names.having.keys() or typed in QUALIFYING or typed in JOINING
    meant = None if known or len(typed) < _SHORTEST_SLIP else _put_right(stem(key(typed)), names)
    return _Word(typed, frozenset((meant,)) if meant else stems, near=bool(meant) or not sure)


def _put_right(typed: str, names: _Names) -> str | None:
    slips = min(allowed_slips(typed), 1)
    known = [one for one in names.having if one[:1] == typed[:1]]
    hits = process.extract(typed, known, scorer=OSA.distance, score_cutoff=slips, limit=2) if slips else []
    return str(hits[0][0]) if len(hits) == 1 and not is_opposite(typed, hits[0][0]) else None


@lru_cache(maxsize=4)
def _names(lexicon: Lexicon) -> _Names:
    by_words: dict[frozenset[str], list[Meaning]] = defaultdict(list)
    having: dict[str, set[frozenset[str]]] = defaultdict(set)
    for spelling, _ in lexicon.catalogue.spellings():
        words, meaning = content(spelling, lexicon), lexicon.exact(spelling)
        if meaning is None or (len(words) == 1 and len(spelling.split()) > 1):
            continue  # of `in and out` only `out` is left
        by_words[words].append(meaning)
        for word in words:
            having[word].add(words)
    return _Names(
        {words: tuple(ways) for words, ways in by_words.items()},
        {word: tuple(found) for word, found in having.items()},
    )
