"""What the hands or the feet are on, said beside the name of a movement: `push-ups, feet on a chair`."""

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
