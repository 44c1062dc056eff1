"""`make train`: the words that the examples are made of, which are known and mean nothing by themselves."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise
from typing import Final

from core.choosers import write_weights
from core.understanding.examples import Example, examples
from core.understanding.lexicon import WORDS
from core.understanding.text import Token, read_text

# Its examples are full of names of places, which are no words of a language.
_NAMES_PLACES: Final = "zone"
# Languages where a capital inside a sentence tells of no name.
_NOUNS_ARE_CAPITAL: Final = frozenset({"de"})


def words_of(found: Iterable[Example]) -> dict[str, list[str]]:
    """The words of each language; names of people and places are none."""
    words: dict[str, set[str]] = defaultdict(set)
    names: set[str] = set()
    for example in found:
        if example.act == _NAMES_PLACES:
            continue
        tokens = read_text(example.text).tokens
        names.update(_names(tokens) if example.language not in _NOUNS_ARE_CAPITAL else ())
        # A name of a person is no word; what begins a sentence elsewhere stands inside one.
        words[example.language].update(
            token.word for token in tokens if token.kind == "word" and token.typed.islower()
        )
    # Some type names small too: what is a name elsewhere is a word only where the lexicon says so.
    return {language: sorted(own - names) for language, own in words.items()}


def _names(tokens: Sequence[Token]) -> Iterator[str]:
    """What has a capital inside a sentence."""
    for before, token in pairwise(tokens):
        inside = before.kind == "word" or before.word == ","
        if inside and token.kind == "word" and token.typed[:1].isupper() and token.typed[1:].islower():
            yield token.word


def main() -> None:
    write_weights(WORDS, words_of(examples()))


if __name__ == "__main__":
    main()
