"""What makes another movement of a name beside it: `push-ups, feet on a chair`, `8 presses per arm`."""

import re
from dataclasses import replace
from typing import Final

from core.notation.names.catalogued import Lexicon, Meaning

_ON: Final = re.compile(
    r"\b(?P<what>hands|feet)(?: (?:up|raised|elevated))? on (?:an? |the |your |some )?(?P<thing>[a-z]+)\b"
    r"(?! (?:is|are|if|ok|or|when|for)\b)"
)


def as_leaning(meaning: Meaning, words: str, lexicon: Lexicon) -> Meaning:
    """The way of the movement that these words in lower case tell, where the catalogue has it; else the same."""
    match = _ON.search(words) if " on " in words else None
    if match is None:
        return meaning
    way = f"{match['what']}-on-{match['thing']}"
    ways = {one.id for one in lexicon.catalogue.movement(meaning.movement).variants}
    return replace(meaning, variant=way) if way in ways else meaning


# `each hand` may only say in what the weights are held.
_ONE_ARM: Final = re.compile(r"(?:\b(?:each|every|per|a|ea\.?|one|single|1)[\s\-]|/\s?)arm\b")


def as_one_armed(meaning: Meaning, words: str, lexicon: Lexicon) -> Meaning:
    """The same with one arm, where these words in lower case say so and the catalogue knows it by a name."""
    if meaning.variant or not _ONE_ARM.search(words):
        return meaning
    return (
        lexicon.exact(f"single-arm {meaning.spelling}")
        or lexicon.exact(f"single-arm {meaning.movement}")
        or meaning
    )
