"""Tokens -> marks: what is named in a text, each at its place. Things, parts of the body, people, numbers, days ..."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache
from typing import Final

from core.caches import kept_by_weight
from core.measures import KG_PER_POUND
from core.movements.names import key
from core.notation.calendar.zones import is_place, places_in
from core.understanding.lexicon import AT_END, LONGEST_PHRASE, SHORT_PHRASE, WHOLE, Lexicon, Sense, lexicon
from core.understanding.names import folded, is_name_like, is_word, names_in
from core.understanding.quantities import Quantity, quantities
from core.understanding.text import Text, Token, read_text, stem

# A message has few slips; more than these are another language, or nonsense.
MOST_SLIPS: Final = 8
_LONGEST_PLACE: Final = 3
# Of the latest messages: a few hundred usual ones, at some hundred bytes a letter.
_KEPT_LETTERS: Final = 20_000
KG_PER_LB: Final = float(KG_PER_POUND)
# Small words that the slots look at, beside what is named.
HELPING: Final = frozenset(
    {
        "up_to",
        "adjustable",
        "filled",
        "each",
        "or",
        "instead",
        "failed",
        "after_word",
        "before_word",
        "until_word",
        "and_word",
        "article",
        "past_word",
    }
    | {
        "everyone_word",
        "passes_on",
        "denial",
        "joint",
        "span",
        "no_side",
        "step_word",
        "of_word",
        "in_word",
        "at_word",
        "that_word",
        "what_word",
        "if_word",
        "every_word",
        "now_word",
        "half_day",
        "not_the",
        "stays",
        "for_word",
        "with_word",
        "nearly_word",
        "half_word",
        "it_word",
        "term_word",
        "self_word",
        "left_word",
        "minus_word",
        "mood",
    }
)
# Kinds that a mark may be of; what else the lexicon knows only tells what a sentence is about.
NAMED: Final = frozenset(
    {
        "thing",
        "other_thing",
        "everything",
        "part",
        "maybe_part",
        "muscle",
        "condition",
        "illness",
        "wish",
        "movement",
    }
    | {
        "term",
        "sign",
        "not_sign",
        "place",
        "side",
        "day",
        "month",
        "other_person",
        "units_word",
        "count",
        "format",
    }
    | {"zone_name", "as_it_stands", "scaled_word", "short_day", "short_movement", "level"}
)


@dataclass(frozen=True, slots=True)
class Mark:
    """Tokens `start` to `end` name something: of the first kind that stands here, or of several."""

    start: int
    end: int
    senses: tuple[Sense, ...]
    quantity: Quantity | None = None

    def value(self, *kinds: str) -> str | None:
        """What it names of one of these kinds; None where it is of none."""
        return next((sense.value for sense in self.senses if sense.kind in kinds), None)

    @property
    def kinds(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(sense.kind for sense in self.senses))


@dataclass(frozen=True)
class Marked:
    """A text with what it names. `words`: as they were meant, slips put right; `meanings`: what each is about."""

    text: Text
    words: tuple[str, ...]
    marks: tuple[Mark, ...]
    meanings: tuple[tuple[str, ...], ...]
    helping: tuple[tuple[Sense, ...], ...]
    language: str

    @cached_property
    def mark_at(self) -> tuple[Mark | None, ...]:
        """The mark that each token belongs to."""
        found: list[Mark | None] = [None] * len(self.words)
        for mark in self.marks:
            found[mark.start : mark.end] = [mark] * (mark.end - mark.start)
        return tuple(found)

    def within(self, start: int, end: int, *kinds: str) -> list[Mark]:
        """The marks of these kinds between two tokens, in their order."""
        return [
            one
            for one in self.marks
            if start <= one.start < end and (not kinds or one.value(*kinds) is not None)
        ]

    def means(self, at: int, *meanings: str) -> bool:
        return at < len(self.meanings) and any(one in self.meanings[at] for one in meanings)

    def helps(self, at: int, kind: str) -> str | None:
        """What the word here says as a small word of this kind; None where the text has ended."""
        if at >= len(self.helping):
            return None
        return next((sense.value for sense in self.helping[at] if sense.kind == kind), None)


def mark(
    typed: str,
    people: Sequence[str] | None = None,
    known: Lexicon | None = None,
    *,
    asks_place: bool = False,
    names_small: bool = False,
) -> Marked:
    """Everything that is named. `people`: the names of the group; None where nobody knows them.

    `asks_place`: any word may be a place; `names_small`: where nobody knows the names, they may be typed small.
    """
    group = tuple(people) if people is not None else None
    return _mark(typed, group, known or lexicon(), asks_place, names_small)


def _letters(found: Marked) -> int:
    return len(found.text.typed)


# Several rooms look at the same message, one after the other.
@kept_by_weight(_KEPT_LETTERS, _letters)
def _mark(
    typed: str, people: tuple[str, ...] | None, every: Lexicon, asks_place: bool, names_small: bool
) -> Marked:
    text = read_text(typed)
    meant = _put_right(text.tokens, every, people)
    language = language_of(meant, every)
    words = every.of(language)
    found = quantities(text.tokens, meant, words)
    taken = {at for one in found for at in range(one.start, one.end)}
    marks = [Mark(one.start, one.end, (Sense(one.kind, ""),), one) for one in found]
    if people is None or asks_place:
        marks += _places(text.tokens, taken, asks_place=asks_place)
    named_people = names_in(text.tokens, meant, people, words, _covered(marks), small=names_small)
    marks += [Mark(at, at + 1, (Sense("person", name),)) for at, name in named_people]
    named, meanings, helping = _named(text.tokens, meant, words, taken | _covered(marks))
    marks += named
    marks += _places(text.tokens, _covered(marks), asks_place=asks_place)
    if asks_place:
        marks += _unknown(text.tokens, every, _covered(marks))
    marks.sort(key=lambda one: one.start)
    return Marked(text, tuple(meant), tuple(marks), meanings, helping, language)


def _covered(marks: Sequence[Mark]) -> set[int]:
    return {at for one in marks for at in range(one.start, one.end)}


def language_of(words: Sequence[str], known: Lexicon) -> str:
    """The language most of whose words are here; English where none is ahead."""
    counts = {name: sum(word in have for word in words) for name, have in known.by_language.items()}
    best = max(counts.values(), default=0)
    return (
        "en" if counts.get("en", 0) == best else next(name for name, count in counts.items() if count == best)
    )


def _put_right(tokens: Sequence[Token], known: Lexicon, people: Sequence[str] | None) -> list[str]:
    names = folded(tuple(people or ()))
    slips = 0
    meant: list[str] = []
    for token in tokens:
        word = token.word
        somebody = word in names or word.removesuffix("s") in names or is_name_like(token)
        if token.kind == "word" and slips < MOST_SLIPS and not somebody:
            right = known.meant(word)
            slips += right is not None
            word = right or word
        meant.append(word)
    return meant


@dataclass
class _Named:
    """What the phrases of a text name, mean and help with, being gathered from the left."""

    marks: list[Mark]
    meanings: list[list[str]]
    helping: list[list[Sense]]
    free: int = 0

    def take(self, at: int, end: int, senses: Sequence[Sense]) -> None:
        for place in range(at, end):
            self.helping[place] += [sense for sense in senses if sense.kind in HELPING]
            told = self.meanings[place]
            told += [one.value for one in senses if one.kind == "meaning" and one.value not in told]


def _named(
    tokens: Sequence[Token], meant: Sequence[str], known: Lexicon, taken: set[int]
) -> tuple[list[Mark], tuple[tuple[str, ...], ...], tuple[tuple[Sense, ...], ...]]:
    """Longest phrases first from the left; what each word is about is kept beside."""
    found = _Named([], [[] for _ in tokens], [[] for _ in tokens])
    for at, token in enumerate(tokens):
        if token.kind not in {"word", "number"}:
            continue
        longest: Mark | None = None
        for end, told in _phrases(tokens, meant, at, known):
            senses = _that_count(told, ends=end == len(tokens) or tokens[end].kind != "word")
            found.take(at, end, senses)
            named = tuple(sense for sense in senses if sense.kind in NAMED)
            if named and at >= found.free and taken.isdisjoint(range(at, end)):
                longest = Mark(at, end, named)
        if longest:
            found.marks.append(longest)
            found.free = longest.end
    return found.marks, tuple(map(tuple, found.meanings)), tuple(map(tuple, found.helping))


def _that_count(senses: tuple[Sense, ...], *, ends: bool) -> tuple[Sense, ...]:
    """`I'm expecting` says what `I'm expecting a parcel` doesn't."""
    if not any(one.kind.endswith(AT_END) for one in senses):
        return senses
    kinds = ((one, one.kind.removesuffix(AT_END)) for one in senses)
    return tuple(Sense(kind, one.value) for one, kind in kinds if kind == one.kind or ends)


def _phrases(
    tokens: Sequence[Token], meant: Sequence[str], at: int, known: Lexicon
) -> Iterator[tuple[int, tuple[Sense, ...]]]:
    """Every known phrase that begins at a token, shorter ones first, with its end."""
    spelled = ""
    for end in range(at + 1, min(at + LONGEST_PHRASE, len(tokens)) + 1):
        if tokens[end - 1].kind not in {"word", "number"}:
            return
        spelled += stem(meant[end - 1])
        apart = end > at + 1 and len(spelled) <= SHORT_PHRASE and spelled + WHOLE not in known.beginnings
        if (senses := known.senses.get(spelled)) and not apart:
            yield end, senses
        if spelled not in known.beginnings:
            return


def _places(tokens: Sequence[Token], taken: set[int], *, asks_place: bool) -> Iterator[Mark]:
    """Cities and countries: capitalised, or any where a place was asked for."""
    at = 0
    while at < len(tokens):
        end = _end_of_place(tokens, taken, at, asks_place=asks_place)
        if end:
            name = " ".join(token.typed for token in tokens[at:end])
            yield Mark(at, end, (Sense("city", name),))
        at = end or at + 1


def _unknown(tokens: Sequence[Token], known: Lexicon, taken: set[int]) -> Iterator[Mark]:
    """Words of no language here: asked for a place, they may name one."""
    for at, token in enumerate(tokens):
        if token.kind == "word" and at not in taken and not is_word(token.word, known):
            yield Mark(at, at + 1, (Sense("unknown", token.typed),))


def _end_of_place(tokens: Sequence[Token], taken: set[int], at: int, *, asks_place: bool) -> int | None:
    if tokens[at].kind != "word" or not (asks_place or tokens[at].typed[:1].isupper()):
        return None
    for end in range(min(at + _LONGEST_PLACE, len(tokens)), at, -1):
        words = tokens[at:end]
        if (
            all(one.kind == "word" for one in words)
            and taken.isdisjoint(range(at, end))
            and _is_place(" ".join(one.typed for one in words))
        ):
            return end
    return None


@lru_cache(maxsize=2000)
def _is_place(name: str) -> bool:
    """Whether a place is named from the first of these words to the last."""
    if len(key(name)) <= _LONGEST_PLACE or not places_in(name):
        return False
    words = name.split()
    return (
        len(words) == 1
        or is_place(name)
        or not (places_in(" ".join(words[1:])) or places_in(" ".join(words[:-1])))
    )
