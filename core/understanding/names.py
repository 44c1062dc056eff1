"""Who is named in a text: people of the group, or where nobody knows them what stands where only somebody can."""

from collections.abc import Iterator, Sequence
from functools import lru_cache
from typing import Final

from core.understanding.lexicon import Lexicon
from core.understanding.text import Token, read_text, stem

_SHORTEST_NAME, _LONGEST_GUESSED_NAME = 2, 7
_SENTENCE_ENDS: Final = frozenset(".!?\n")
_AND: Final = frozenset({"and", "n", "&", "und", "y"})


def is_name_like(token: Token) -> bool:
    """A capital within the text: no slip to be put right."""
    return token.start > 0 and token.typed[:1].isupper() and token.typed[1:].islower()


@lru_cache(maxsize=64)
def folded(people: tuple[str, ...]) -> dict[str, str]:
    """Names by their first word, as texts are folded."""
    return {
        word: name
        for name in people
        for word in [read_text(name).tokens[0].word if read_text(name).tokens else ""]
    }


def names_in(
    tokens: Sequence[Token],
    meant: Sequence[str],
    people: Sequence[str] | None,
    known: Lexicon,
    taken: set[int],
    *,
    small: bool,
) -> Iterator[tuple[int, str]]:
    """Names of the group, each with its token; where nobody knows them (`people` None), words that look like names."""
    names = folded(tuple(people or ()))
    for at, token in enumerate(tokens):
        if token.kind != "word" or at in taken:
            continue
        name = _name(token, meant[at], names, known) or _small_name(meant, at, names, known)
        beside = people is None and _stands_for_somebody(meant, tokens, at, known)
        like = _is_like_a_name(token, meant[at], known, small=small and beside)
        if name is None and not names and like and (beside or not _begins(tokens, at)):
            name = token.typed.removesuffix("'s").removesuffix("'").capitalize()
        if name:
            yield at, name


def _name(token: Token, meant: str, names: dict[str, str], known: Lexicon) -> str | None:
    """A name, or whose something is: `wrens knee`; small only where it's no word besides, or owns: `max's score`."""
    word = token.word if token.word in names else token.word.removesuffix("s")
    said = meant if word == token.word else word
    plain = token.typed[:1].isupper() or token.typed.endswith("'s") or said not in known.spoken
    return names[word] if word in names and plain else None


def _small_name(meant: Sequence[str], at: int, names: dict[str, str], known: Lexicon) -> str | None:
    """`max got 4 rounds`, `tell rose`: a name that is a word too, where only somebody can stand."""
    stands = meant[at] in names and (
        _beside_a_name(meant, at, known)
        or _joined_to_a_name(meant, at, names)
        or meant[at + 1 : at + 2] == [":"]
        or _measures_nothing(meant, at, known)
    )
    return names[meant[at]] if stands else None


def _measures_nothing(meant: Sequence[str], at: int, known: Lexicon) -> bool:
    """`leave cal out`: what else counts calories has no number in front of it."""
    is_measure = _is_kind(known, meant[at : at + 1], "unit")
    return is_measure and not (at and meant[at - 1][:1].isdigit())


def _joined_to_a_name(meant: Sequence[str], at: int, names: dict[str, str]) -> bool:
    """`gunn n odd`."""
    return at > 1 and meant[at - 1] in _AND and meant[at - 2] in names


def _begins(tokens: Sequence[Token], at: int) -> bool:
    """Whether a sentence begins here, so that a capital tells of no name."""
    return at == 0 or tokens[at - 1].word in _SENTENCE_ENDS


def _stands_for_somebody(meant: Sequence[str], tokens: Sequence[Token], at: int, known: Lexicon) -> bool:
    """Where a name may stand that nobody knows: beside what people do, or in front of a score."""
    counted = at + 1 < len(tokens) and tokens[at + 1].kind in {"number", "clock"}
    owns = tokens[at].typed.endswith(("'s", "'"))
    return counted or owns or meant[at + 1 : at + 2] == [":"] or _beside_a_name(meant, at, known)


def _beside_a_name(meant: Sequence[str], at: int, known: Lexicon) -> bool:
    before = any(_is_kind(known, meant[start:at], "name_before") for start in range(max(0, at - 3), at))
    after = any(_is_kind(known, meant[at + 1 : end], "name_after") for end in range(at + 2, at + 4))
    return before or after


def _is_kind(known: Lexicon, words: Sequence[str], kind: str) -> bool:
    return any(one.kind == kind for one in known.senses.get("".join(map(stem, words)), ()))


def _is_like_a_name(token: Token, meant: str, known: Lexicon, *, small: bool) -> bool:
    """A short word that nobody knows, with a capital unless names may be small."""
    typed = token.typed.removesuffix("'s").removesuffix("'")
    capital = typed[:1].isupper() and typed[1:].islower()
    short = _SHORTEST_NAME <= len(typed) <= _LONGEST_GUESSED_NAME
    unknown = not is_word(token.word, known) and not is_word(token.word.removesuffix("s"), known)
    return short and unknown and (capital or (small and typed.islower())) and meant == token.word


def is_word(word: str, known: Lexicon) -> bool:
    """Whether any language here has it."""
    return any(one in known.words or one in known.senses for one in (word, stem(word)))
