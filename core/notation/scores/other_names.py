"""Whether somebody speaks of another movement than a block holds: `squat 3 @ 150` of a push press."""

import re
from typing import Final

from core.movements.lookup import catalogue
from core.movements.names import key
from core.notation.names.catalogued import lexicon
from core.sessions.values import Block

_LONGEST_NAME: Final = 3
# Shorter names are words for other things, too: `row`, `run`, `hang`, `step`.
_SHORTEST: Final = 5
# Names that say something else of a score: how often it was lifted, and what was done around it.
_OTHER_THINGS: Final = frozenset(
    {"single", "singles", "double", "doubles", "breathing", "walking", "stretch", "stretches", "stretching"}
)
_WORD: Final = re.compile(r"[a-z][a-z'-]+")


def names_another(words: str, block: Block) -> bool:
    """`words` in lower case; a movement that shares a word with one of the block is that one."""
    held = {line.movement for line in block.every_line}
    theirs = {key(word) for movement in held for word in _WORD.findall(movement)}
    said = _WORD.findall(words)
    for size in range(_LONGEST_NAME, 0, -1):
        for at in range(len(said) - size + 1):
            name = said[at : at + size]
            if len("".join(name)) < _SHORTEST or name[0] in _OTHER_THINGS:
                continue
            meaning = lexicon(catalogue()).exact(" ".join(name))
            if meaning and meaning.movement not in held and not theirs & {key(word) for word in name}:
                return True
    return False
