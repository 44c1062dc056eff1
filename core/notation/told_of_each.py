"""What is told of each of several people in one message: `Bo 3+2, Cal 6+20`, or a line for each."""

import re
from collections.abc import Callable, Collection
from typing import Final

from core.notation.people import NameInFront, name_in_front, spellings, without_lead

_PARTED: Final = re.compile(
    r"\s*[;\n]+\s*|\s*,\s*(?:(?:and|n|&)\s+)?|\s+(?:and|n|&)\s+|\s*/\s*(?=[^\W\d_])|(?<=[.!])\s+",
    re.IGNORECASE,
)
_HEADING: Final = re.compile(r"^[^\n:]{0,40}\b(?:scores?|results?|board)\b[^\n:]{0,20}:\s*", re.IGNORECASE)
_BULLET: Final = re.compile(r"^[\s*\u2022\u2013-]+|^[0-9]{1,2}[.)]\s+")

# What may be said of a score behind a comma; anything else is another matter.
_GOES_ON: Final = re.compile(
    r"(?:all |but )?(?:scaled|as (?:written|prescribed)|rx'?d?|dnf|capped|lighter|easy|no pain|unscaled|rpe ?[0-9]{1,2}"
    r"|[0-9][0-9 :.+x/]{0,10}(?:\s?(?:rounds?|reps?|kgs?|m|km|cals?|s|min))?)(?: (?:scaled|today))?",
    re.IGNORECASE,
)
# `12+3 for Cal`.
_BEHIND: Final = re.compile(r"(?P<rest>[0-9].*?)\s+(?:for|from|by)\s+(?P<name>\S.*)", re.IGNORECASE)
_EACH: Final = re.compile(r"\b(?:each|both)\b", re.IGNORECASE)

Stranger = Callable[[str], NameInFront | None]


def told_of_each(text: str, names: Collection[str], stranger: Stranger) -> tuple[NameInFront, ...]:
    """Each with what is told of them, in its order; () where any of it is of nobody, or it tells of fewer than two.

    `stranger`: whom words begin with that nobody of these is called. Names alone share what is told of the next one.
    """
    known = spellings(names)
    # `Finn 4+3 Jonas 5`: behind a number the next name begins its own.
    behind = rf"(?:(?<=[0-9])|(?<=scaled))\s+(?=(?:{'|'.join(map(re.escape, known)) or '$'})\s)"
    found, alone = list[NameInFront](), list[str]()
    told = _PARTED.split(_HEADING.sub("", text.strip()))
    for piece in (part for one in told for part in re.split(behind, one, flags=re.IGNORECASE)):
        words = _BULLET.sub("", piece).strip(" .")
        if words.casefold() in known:
            alone.append(known[words.casefold()])
        elif one := name_in_front(words, names) or name_behind(words, names) or stranger(words):
            rest = _EACH.sub("", one.rest).strip() if alone else one.rest
            found += [NameInFront(name, rest) for name in (*alone, one.name)]
            alone = []
        elif found and not alone and _GOES_ON.fullmatch(words):
            found[-1] = found[-1]._replace(rest=f"{found[-1].rest}, {words}")
        else:
            return ()
    return tuple(found) if len(found) > 1 and not alone else ()


def name_behind(words: str, names: Collection[str]) -> NameInFront | None:
    """`12+3 for Cal`: what is told, with whose it is behind it; None where nobody of these is."""
    said = _BEHIND.fullmatch(without_lead(words))
    name = spellings(names).get(said["name"].casefold()) if said else None
    return NameInFront(name, said["rest"]) if said and name else None
