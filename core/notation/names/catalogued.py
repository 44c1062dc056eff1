"""From typed names to catalogue ids: exact in any plural and spacing, or by a unique near spelling."""

import re
import tomllib
from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from functools import lru_cache
from pathlib import Path

from rapidfuzz import process
from rapidfuzz.distance import OSA

from core.measures import AmountUnit
from core.movements.lookup import Catalogue
from core.movements.names import key
from core.movements.values import Pattern
from core.notation.names.beside import ORDINARY
from core.notation.names.spellings import (
    allowed_slips,
    begin_alike,
    content_of,
    digits,
    is_opposite,
    is_same_word,
    parted,
    stem,
    stems,
    words,
)
from core.notation.quantities import ANY_NUMBER_WORD

_LONGEST = 60
_MOST_WORDS = 8
# Two words for one thing, in many names.
_OTHER_WORDS = {
    "press up": "push up", "press-up": "push up", "pressup": "push up", "sitting": "seated", "chair": "seated",
    "banded": "band", "one arm": "single-arm", "one-arm": "single-arm", "single arm": "single-arm",
    "one leg": "single-leg", "one-leg": "single-leg",
}  # fmt: skip
_OTHERWISE = re.compile(rf"\b({'|'.join(_OTHER_WORDS)})(?=s?\b)")
_WORTH_SAYING = 0.6
_GUESSES = 5
_TRICKY = re.compile(
    rf"(?:.*[0-9]|(?:feet|foot|ft|inch|in|hr|min|sec|cm|k|m|s|cal|km|mile|yard)(?![a-z])|inch"
    rf"|(?:{ANY_NUMBER_WORD})(?![a-z]))"
    rf"|.* (?:{ANY_NUMBER_WORD})$",
    re.IGNORECASE,
)
_VOWELS = re.compile("[aeiou]")
_BARE_LETTERS = 4
# Letters that a clipped word has at least, and words that two initials are too few for.
_CLIPPED, _FEW_INITIALS = 2, 2


@dataclass(frozen=True)
class Meaning:
    """Ids of the movement, and of the variant unless the movement alone was named.

    `held`: most of its ways have a weight in the hands. `near`: misspelt.
    `goes`: a way of getting on, if only on the spot.
    """

    movement: str
    variant: str | None
    unit: AmountUnit
    spelling: str
    held: bool = False
    near: bool = False
    goes: bool = False

    @property
    def name(self) -> str:
        """How the catalogue calls it."""
        return self.spelling if self.variant else self.movement


class Lexicon:
    """The catalogue's names made ready for typed text."""

    def __init__(self, catalogue: Catalogue) -> None:
        self.catalogue = catalogue
        self._meanings = {
            key(spelling): Meaning(
                named.movement.id,
                named.variant.id if named.variant else None,
                named.movement.unit,
                spelling,
                2 * sum(bool(way.holds) for way in named.movement.variants) > len(named.movement.variants),
                goes=named.movement.pattern is Pattern.TRAVEL,
            )
            for spelling, named in catalogue.spellings()
        }
        # `dus` is a plural that looks like none.
        shorts = [spelled for spelled in self._meanings if spelled.endswith("u")]
        self._meanings |= {f"{short}s": self._meanings[short] for short in shorts}
        self._by_letter: dict[str, list[str]] = {}
        for known in self._meanings:
            self._by_letter.setdefault(known[:1], []).append(known)
        self._turned = _by_words(self._meanings.values(), frozenset)
        self._stemmed = _by_words(self._meanings.values(), stems)
        self._tricky = _any_of(spelling for spelling, _ in catalogue.spellings() if _TRICKY.match(spelling))
        self._bare = _by_consonants(spelling for spelling, _ in catalogue.spellings())
        self._kinds = {words(movement.id)[-1] for movement in catalogue.movements}
        self._shorts = _shorthand()
        self._also = {
            key(other): meaning
            for other, name in _also().items()
            if (meaning := self._meanings.get(key(name)))
        }
        self._clipped = _by_beginnings(self._meanings.values())
        self._initials = _by_initials(self._meanings.values())
        self._stems = {stem(word) for spelling, _ in catalogue.spellings() for word in words(spelling)}
        self._words = {word for spelling, _ in catalogue.spellings() for word in words(spelling)}

    def knows(self, word: str) -> bool:
        """Whether the word is part of any name."""
        return key(word) in self._words

    def has_sides(self, meaning: Meaning) -> bool:
        """Whether any way of doing it works one side, or one after the other."""
        movement = self.catalogue.movement(meaning.movement)
        return any(movement.sides_of(way) != "both" for way in movement.variants)

    def exact(self, name: str) -> Meaning | None:
        return self._meanings.get(key(name))

    def turned(self, name: str) -> Meaning | None:
        """What has the same words in another order, and nothing else has: `dips chair`, `rows under a table`."""
        typed = content_of(name)
        meaning = (self._turned.get(typed) or self._stemmed.get(stems(typed))) if len(typed) > 1 else None
        return meaning and replace(meaning, near=True)

    def short(self, name: str) -> Meaning | None:
        """What a name means once its short forms are written out; `near` where they could be others."""
        if meaning := self._also.get(key(name)):
            return meaning
        told = [self.written_out(word) for word in re.split(r"[\s\-]+", self.otherwise(name)) if word]
        meaning = self.exact(" ".join(word for word, _ in told))
        return meaning and replace(meaning, near=not all(sure for _, sure in told))

    def clipped(self, name: str) -> Meaning | None:
        """The one movement whose words begin like these, or whose initials these are: `tri ext`, `hkr`."""
        typed = [word for word in re.split(r"[\s\-]+", name.lower()) if word]
        if len(typed) == 1:
            return None if typed[0] in ORDINARY else self._initials.get(typed[0])
        if not typed or len(typed) > _MOST_WORDS:
            return None
        ways = [self._ways(word) for word in typed]
        found = [
            meaning
            for first in {way[:_CLIPPED] for way in ways[0]}
            for theirs, meaning in self._clipped.get((len(typed), first), ())
            if all(_begins(mine, other) for mine, other in zip(ways, theirs, strict=True))
        ]
        return replace(found[0], near=True) if len({one.movement for one in found}) == 1 else None

    def _ways(self, word: str) -> tuple[str, ...]:
        """A word and what it may be short for."""
        meaning = self._meanings.get(key(word))
        known = (key(self._shorts[word][0]),) if word in self._shorts else ()
        return (key(word), *known, *((key(meaning.movement),) if meaning else ()))

    def otherwise(self, name: str) -> str:
        """A name in lower case, with one word for things that are called by two."""
        return _OTHERWISE.sub(lambda match: _OTHER_WORDS[match[1]], name.lower())

    def written_out(self, word: str) -> tuple[str, bool]:
        """What a word is short for, or the word itself; and whether it can be short for nothing else."""
        if short := self._shorts.get(word):
            return short
        if not _VOWELS.search(word) and len(word) >= _BARE_LETTERS and (long := self._bare.get(key(word))):
            return long, False
        return word, True

    def tricky(self, text: str) -> re.Match[str] | None:
        """A name in the text that begins or ends like an amount or its unit: `feet elevated push-ups`."""
        return self._tricky.search(text)

    def is_kind(self, word: str) -> bool:
        """Whether a word says what kind of movement it is: the last of a movement's own name."""
        return key(word) in self._kinds

    def takes_a_height(self, meaning: Meaning) -> bool:
        """Whether what is meant is done on a box with nothing held: so by its nature, or as its name says."""
        loaded = any(one.holds for one in self.catalogue.movement(meaning.movement).variants)
        return self.is_on_a_box(meaning) and (not loaded or "box" in words(meaning.spelling))

    def is_on_a_box(self, meaning: Meaning) -> bool:
        """Whether what is meant is done on a box, and can be done with nothing held."""
        movement = self.catalogue.movement(meaning.movement)
        way = next((one for one in movement.variants if one.id == meaning.variant), movement.variants[0])
        return way.is_usual_with("box") and not way.holds

    def is_done_with_a_bar(self, meaning: Meaning) -> bool:
        """Whether a way of what is meant has a barbell, or it is the squat that has one when it is heavy."""
        ways = self.catalogue.movement(meaning.movement).variants
        named = [way for way in ways if meaning.variant in {None, way.id}]
        barred = any(hold.implement == "barbell" for way in named for hold in way.holds)
        return barred or key(meaning.spelling) == "squat"

    def takes_a_load(self, meaning: Meaning) -> bool:
        """Whether something is held in what is meant: as its name says, or in most of its ways."""
        ways = self.catalogue.movement(meaning.movement).variants
        named = [bool(way.holds) for way in ways if meaning.variant in {None, way.id}]
        return sum(named) * 2 > len(named)

    def near(self, name: str) -> Meaning | None:
        """The one thing that is spelled nearly like `name`; None where two different things are as near."""
        if name in ORDINARY:
            return None
        name = name.rstrip("s")
        typed = key(name)
        allowed = allowed_slips(typed)
        if not allowed or len(name) > _LONGEST:
            return None
        hits = [
            hit
            for first in {*typed[:2]}
            for hit in process.extract(
                typed, self._by_letter.get(first, ()), scorer=OSA.distance, score_cutoff=allowed, limit=None
            )
        ]
        close = [
            (slips, self._meanings[known])
            for known, slips, _ in hits
            if begin_alike(typed, known)
            and digits(typed) == digits(known)
            and not is_opposite(typed, known)
            and not self._is_other_word(name, self._meanings[known].spelling)
        ]
        least = min((slips for slips, _ in close), default=None)
        nearest = [meaning for slips, meaning in close if slips == least]
        alike = {(meaning.movement, meaning.variant) for meaning in nearest}
        return replace(nearest[0], near=True) if len(alike) == 1 else None

    def guess(self, name: str) -> str | None:
        """The spelling most like a name that was not understood, if it is worth saying."""
        if len(name) > _LONGEST:
            return None
        typed = key(name)
        hits = process.extract(
            typed,
            self._by_letter.get(typed[:1], ()),
            scorer=OSA.normalized_similarity,
            score_cutoff=_WORTH_SAYING,
            limit=_GUESSES,
        )
        spellings = (self._meanings[known].spelling for known, _, _ in hits if not is_opposite(typed, known))
        return next((spelling for spelling in spellings if self._is_alike(name, spelling)), None)

    def _is_alike(self, name: str, spelling: str) -> bool:
        """Whether all of it may be a slip, or each word goes with one of the other name."""
        if self._is_other_word(name, spelling):
            return False
        typed, known = key(name), key(spelling)
        if OSA.distance(typed, known) <= allowed_slips(typed):
            return True
        theirs = words(spelling)
        return all(any(is_same_word(one, other) for other in theirs) for one in words(name))

    def _is_other_word(self, name: str, spelling: str) -> bool:
        """Whether another word stands in place of one: a word known by itself, or with more than its own slips."""
        theirs = words(spelling)
        mine = words(name) if len(theirs) != 2 else parted(words(name), theirs[0])  # noqa: PLR2004
        if len(mine) != len(theirs):
            return False
        differing = [(one, other) for one, other in zip(mine, theirs, strict=True) if one != other]
        return any(
            not is_same_word(one, other)
            and (one in self._words or OSA.distance(one, other) > max(1, allowed_slips(one)))
            for one, other in differing
        )


def _by_words(
    meanings: Iterable[Meaning], brought: Callable[[frozenset[str]], frozenset[str]]
) -> dict[frozenset[str], Meaning]:
    """The meanings by the words of their names, each `brought` to one form; what is ambiguous isn't there."""
    found: dict[frozenset[str], list[Meaning]] = {}
    for meaning in meanings:
        found.setdefault(brought(content_of(meaning.spelling)), []).append(meaning)
    return {
        told: ways[0]
        for told, ways in found.items()
        if len({(way.movement, way.variant) for way in ways}) == 1
    }


def _also() -> dict[str, str]:
    """What people call a movement besides its names in the catalogue -> one of these."""
    table = tomllib.loads(Path(__file__).with_name("shorthand.toml").read_text(encoding="utf-8"))
    return dict(table["also"])


def _shorthand() -> dict[str, tuple[str, bool]]:
    """Short form -> what it stands for, and whether it can stand for nothing else."""
    table = tomllib.loads(Path(__file__).with_name("shorthand.toml").read_text(encoding="utf-8"))
    return {
        short: (long, sure)
        for name, sure in (("sure", True), ("likely", False))
        for short, long in table[name].items()
    }


def _by_consonants(spellings: Iterable[str]) -> dict[str, str]:
    """`thrstr` -> `thruster`, where one word only is left so without its vowels."""
    found: dict[str, set[str]] = {}
    for word in {word for spelling in spellings for word in words(spelling)}:
        found.setdefault(_VOWELS.sub("", word), set()).add(word)
    return {bare: next(iter(known)) for bare, known in found.items() if len(known) == 1}


def _by_beginnings(meanings: Iterable[Meaning]) -> dict[tuple[int, str], list[tuple[list[str], Meaning]]]:
    """The names of several words by how many they have and how the first of them begins."""
    found: dict[tuple[int, str], list[tuple[list[str], Meaning]]] = {}
    for meaning in meanings:
        theirs = words(meaning.spelling)
        if len(theirs) > 1:
            found.setdefault((len(theirs), theirs[0][:_CLIPPED]), []).append((theirs, meaning))
    return found


def _by_initials(meanings: Iterable[Meaning]) -> dict[str, Meaning]:
    """The movements by the initials of their names that are no word and no other movement's."""
    found: dict[str, dict[str, Meaning]] = {}
    for meaning in meanings:
        theirs = words(meaning.spelling)
        initials = "".join(word[0] for word in theirs)
        if len(theirs) > _FEW_INITIALS and not _VOWELS.search(initials):
            ways = found.setdefault(initials, {})
            ways[meaning.movement] = (
                meaning
                if key(meaning.spelling) == key(meaning.movement)
                else ways.get(meaning.movement, meaning)
            )
    own = {
        name: [way for way in ways.values() if key(way.spelling) == key(way.movement)]
        for name, ways in found.items()
    }
    chosen = {name: list(ways.values()) if len(ways) == 1 else own[name] for name, ways in found.items()}
    return {name: replace(ways[0], near=True) for name, ways in chosen.items() if len(ways) == 1}


def _begins(mine: Iterable[str], other: str) -> bool:
    return any(other == way or (len(way) > 1 and other.startswith(way)) for way in mine)


def _any_of(spellings: Iterable[str]) -> re.Pattern[str]:
    """A pattern of whole names, longest first, in any plural and with spaces or hyphens."""
    names = sorted(spellings, key=len, reverse=True)
    spelled = (r"[\s\-]".join(map(re.escape, re.split(r"[\s\-]", name.lower()))) for name in names)
    return re.compile(rf"(?<![\w.])(?:{'|'.join(spelled)})(?:e?s)?(?![\w])" if names else r"(?!)")


@lru_cache(maxsize=4)
def lexicon(catalogue: Catalogue) -> Lexicon:
    """The lexicon of a catalogue, made once."""
    return Lexicon(catalogue)
