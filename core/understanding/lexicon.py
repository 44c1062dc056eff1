"""Words by meaning: the TOML files of the languages, the catalogue and the limits, looked up by spelling."""

import tomllib
from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from functools import cache, lru_cache
from pathlib import Path
from typing import Any, Final, NamedTuple

from rapidfuzz import process
from rapidfuzz.distance import OSA

from core.athletes.limits import limits
from core.choosers import read_weights
from core.movements.lookup import catalogue
from core.understanding.text import fold, read_text, stem

FOLDER: Final = Path(__file__).parent / "lexicon"
# Made of the examples by `make train`: to read all of them takes half a second of every start.
WORDS: Final = Path(__file__).parent / "weights" / "words.json.gz"
LONGEST_PHRASE: Final = 7
# Ends the whole of a spelling of several words among the beginnings; as short as this, `a kb` is no `akb`.
WHOLE: Final = " "
SHORT_PHRASE: Final = 4
# Words shorter than this are read exactly; from the second length on two letters may be wrong.
_ONE_SLIP, _TWO_SLIPS = 5, 9
# Each is looked at several times while the lexicon is made.
_SPELLINGS: Final = 40_000
# Muscles are in the language, as most that is told of them is that they are sore.
_PARTS_OF_KINDS: Final = {"joint": "part", "wish": "wish", "condition": "condition", "state": "condition"}
# Limits that are told as an illness, or as what they are in the heat.
# Of a sign told by words near each other: how many stand between them at most.
_NEAR: Final = 5
_NOT_CONDITIONS: Final = {"fever", "after-illness", "heat", "unsteady"}


class Sense(NamedTuple):
    """One thing that a spelling may mean: `part` `knee`, `day` `monday`, `meaning` `own`."""

    kind: str
    value: str


class NearSign(NamedTuple):
    """A stop sign that is told by words near each other: a head, and one of each of the others around it."""

    sign: str
    heads: frozenset[str]
    others: tuple[frozenset[str], ...]
    within: int


@dataclass(frozen=True, eq=False)
class Lexicon:
    """`senses`: by joined stems; `by_language`: words of each.

    `spoken`: those of the language of a view, and the catalogue's.

    `beginnings`: of all spellings of several words, and the `WHOLE` of them.

    `of`: the same for a message of one language: what its own words mean there, and of other languages' phrases
    those that aren't made of its words (`a` is an article in English, and a `to` in Spanish).
    """

    senses: Mapping[str, tuple[Sense, ...]]
    beginnings: frozenset[str]
    numbers: Mapping[str, float]
    near_signs: tuple[NearSign, ...]
    by_language: Mapping[str, frozenset[str]]
    words: frozenset[str]
    spoken: frozenset[str]
    _read: "_Read"
    _views: dict[str, "Lexicon"] = field(default_factory=dict)
    _candidates: dict[str, list[str]] = field(default_factory=dict)

    def of(self, language: str) -> "Lexicon":
        """All of it where the language isn't known; made when it is first spoken."""
        if language not in self._read.tables:
            return self
        if language not in self._views:
            self._views[language] = _lexicon(self._read, language)
        return self._views[language]

    def meant(self, word: str) -> str | None:
        """The known word that `word` is a slip for; None for a known one, and where two are as near."""
        slips = 0 if len(word) < _ONE_SLIP else 1 if len(word) < _TWO_SLIPS else 2
        if not slips or word in self.words or stem(word) in self.words:
            return None
        hits = process.extract(word, self._alike(word), scorer=OSA.distance, score_cutoff=slips, limit=2)
        if not hits or (len(hits) > 1 and hits[0][1] == hits[1][1] and stem(hits[0][0]) != stem(hits[1][0])):
            return None
        return str(hits[0][0])

    def _alike(self, word: str) -> list[str]:
        """Known words that begin as this one does: a slip at the first letter is rare."""
        if not self._candidates:
            for known in sorted(self.words):
                if len(known) >= _ONE_SLIP - 1:
                    self._candidates.setdefault(known[0], []).append(known)
        return self._candidates.get(word[0], [])


@cache
def lexicon() -> Lexicon:
    """The lexicon that comes with the program, made once."""
    return read_lexicon(
        FOLDER, {language: frozenset(words) for language, words in read_weights(WORDS).items()}
    )


def read_lexicon(folder: Path, more_words: Mapping[str, frozenset[str]] | None = None) -> Lexicon:
    """Every language of a folder; `more_words`: words of each that are known, and mean nothing by themselves."""
    tables = {path.stem: _table(path) for path in sorted(folder.glob("*.toml"))}
    by_language: dict[str, frozenset[str]] = {}
    for language, table in tables.items():
        own = {word for spelling, _ in _phrases(table) for word in words_of(spelling)}
        by_language[language] = frozenset(
            own.union(map(fold, table.get("numbers", {})), (more_words or {}).get(language, ()))
        )
    catalogued = tuple(_catalogued())
    of_catalogue = frozenset(word for spelling, _ in catalogued for word in words_of(spelling))
    known = of_catalogue.union(*by_language.values())
    read = _Read(tables, by_language, catalogued, known, of_catalogue, frozenset(_beginnings(tables)))
    return _lexicon(read, None)


class _Read(NamedTuple):
    """What the lexicon and its views of one language each are made of."""

    tables: Mapping[str, Mapping[str, Any]]
    by_language: Mapping[str, frozenset[str]]
    catalogued: Sequence[tuple[str, Sense]]
    words: frozenset[str]
    catalogue_words: frozenset[str]
    beginnings: frozenset[str]


def _lexicon(read: _Read, language: str | None) -> Lexicon:
    senses: dict[str, dict[Sense, None]] = defaultdict(dict)
    numbers: dict[str, float] = {}
    for spelling, sense in read.catalogued:
        senses[joined(spelling)][sense] = None
    own = read.by_language.get(language or "", frozenset())
    for name, table in read.tables.items():
        for spelling, sense in _phrases(table):
            if language in {None, name} or not own.issuperset(words_of(spelling)):
                senses[joined(spelling)][sense] = None
        for word, number in table.get("numbers", {}).items():
            if language in {None, name} or fold(word) not in own:
                numbers[fold(word)] = float(number)
    return Lexicon(
        senses={spelled: tuple(found) for spelled, found in senses.items() if spelled},
        numbers=numbers,
        near_signs=tuple(_near_signs(read.tables)),
        by_language=read.by_language,
        words=read.words,
        spoken=own.union(read.catalogue_words) if own else read.words,
        beginnings=read.beginnings,
        _read=read,
    )


@lru_cache(maxsize=_SPELLINGS)
def words_of(spelling: str) -> tuple[str, ...]:
    """The folded words of a phrase, as `read_text` parts them."""
    return tuple(token.word for token in read_text(spelling).tokens if token.kind in {"word", "number"})


@lru_cache(maxsize=_SPELLINGS)
def joined(spelling: str) -> str:
    """The key of a phrase: its words' stems without spaces, so that `pull-up`, `pull up` and `pullup` are one."""
    return "".join(map(stem, words_of(spelling)))


def _table(path: Path) -> dict[str, Any]:
    return tomllib.loads(path.read_text(encoding="utf-8"))


def _phrases(table: Mapping[str, Any]) -> Iterator[tuple[str, Sense]]:
    for kind, entries in table.items():
        if kind in {"numbers", "near_sign"}:
            continue
        for value, spellings in entries.items():
            yield from ((spelling, Sense(kind, value)) for spelling in spellings)


# A sense that counts only where no more words follow.
AT_END: Final = " at the end"


def _catalogued() -> Iterator[tuple[str, Sense]]:
    for thing in catalogue().implements:
        yield from ((name, Sense("thing", thing.id)) for name in (thing.id, thing.label, *thing.names))
    for spelling, named in catalogue().spellings():
        yield spelling, Sense("movement", named.movement.id)
    for limit in limits():
        kind = _PARTS_OF_KINDS.get(limit.kind)
        if kind and limit.id not in _NOT_CONDITIONS:
            yield from ((name, Sense(kind, limit.id)) for name in limit.names if name not in _TOO_LOOSE)
            yield from ((name, Sense(kind + AT_END, limit.id)) for name in limit.names_at_end)


# What the limits call so, and a sentence may mean otherwise: the lexicon of the language says which counts.
_TOO_LOOSE: Final = {
    "back",
    "balance",
    "falls",
    "dizzy",
    "dizziness",
    "heart",
    "leaking",
    "fits",
    "calf",
    "seated",
    "bp",
}


def _beginnings(tables: Mapping[str, Mapping[str, Any]]) -> Iterator[str]:
    spellings = [spelling for spelling, _ in _catalogued()]
    spellings += [spelling for table in tables.values() for spelling, _ in _phrases(table)]
    for spelling in spellings:
        words = list(map(stem, words_of(spelling)))
        yield from ("".join(words[:end]) for end in range(1, len(words)))
        if len(words) > 1:
            yield "".join(words) + WHOLE


def _near_signs(tables: Mapping[str, Mapping[str, Any]]) -> Iterator[NearSign]:
    for table in tables.values():
        for sign, ways in table.get("near_sign", {}).items():
            for words in ways:
                others = (words["one_of"], *([words["and_of"]] if "and_of" in words else ()))
                yield NearSign(
                    sign,
                    frozenset(map(joined, words["head"])),
                    tuple(frozenset(map(joined, one)) for one in others),
                    words.get("within", _NEAR),
                )
