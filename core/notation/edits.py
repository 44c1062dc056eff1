"""A coach's change of a session in words: `make the row 200 m`, `swap burpees for squats`, `cap 15 min instead`."""

import re
from typing import Literal, NamedTuple

from core.notation.text import plain

_LONGEST = 160
# What is said of a class is about the calendar.
_CLASS = re.compile(r"\bclass(?:es)?\b", re.IGNORECASE)
_ENDS = r"(?:,? (?:instead|please|pls|now|today|then|thanks|again))*"
_BEGINS = (
    r"(?:(?:ok|okay|no|wait|sorry|actually|hmm+|oh|oops|whoops|ugh|shit|damn|my bad|and|also"
    r"|please|pls|hey|let'?s|can (?:you|we)|could (?:you|we)"
    r"|i(?:'d| would) (?:like|rather)(?: to)?|we(?:'ll| will| should)|you (?:can|could))\W+)*"
)
_MAKE = r"(?:make|change|set|turn|switch|adjust|update|reduce|raise|lower|increase|cut|drop|bump|put|scale)"
_DROP = r"(?:drop|remove|delete|skip|cut|scrap|take (?:out|away|off)|leave out|kick out|no more)"
_LAST = r" (?:at|to) the end| (?:to|into) it| (?:as|for) (?:the )?last(?: one)?"
_THE = r"(?:the |those |all (?:the )?|that |my )?"


class Edit(NamedTuple):
    """`target` and `new` in the coach's words: a new amount, load or movement, or something to add or leave out."""

    verb: Literal["change", "swap", "drop", "add"]
    target: str
    new: str


# The first that fits decides; `change` without a word between is parted where the name of a movement ends.
_SHAPES: tuple[tuple[Literal["change", "swap", "drop", "add"], str], ...] = (
    ("swap", rf"(?:swap|replace|exchange|trade|switch) {_THE}(?P<t>.+?) (?:for|with|by|against) (?P<n>.+)"),
    ("change", rf"{_MAKE} {_THE}(?P<t>.+?) (?:down |up |back )?(?:to|into|from .+? to|=|be) (?P<n>.+)"),
    ("change", r"(?P<n>.+?) instead of (?P<t>.+)"),
    ("change", rf"i meant {_THE}(?P<n>.+?),? (?:and )?not {_THE}(?P<t>.+)"),
    ("change", rf"i meant {_THE}(?P<t>)(?P<n>.+)"),
    ("change", rf"{_THE}(?P<t>.+?) (?:should|shall|must|ought to) be (?P<n>.+)"),
    ("add", rf"add (?:also )?(?P<n>.+?) (?:right )?(?:after|behind) {_THE}(?P<t>.+)"),
    (
        "add",
        rf"add (?:also )?(?P<n>.+?)(?:{_LAST})?(?P<t>)",
    ),
    ("drop", rf"take {_THE}(?P<t>.+?) (?:out|away|off)(?P<n>)"),
    (
        "drop",
        rf"{_DROP} {_THE}(?P<t>.+)(?P<n>)",
    ),
    ("change", rf"{_MAKE} {_THE}(?P<t>)(?P<n>.+)"),
    ("change", r"(?P<t>)(?P<n>.+) instead"),
)


_AND = re.compile(r"\s*(?:[,;]|\band\b)\s*(?:(?:then|also)\s)?", re.IGNORECASE)


def read_several(text: str) -> tuple[tuple[Edit, ...], ...]:
    """The readings of each of several changes in one message; () where one of its parts asks for none."""
    parts = [part for part in _AND.split(text[: _LONGEST + 1]) if part.strip()]
    found = tuple(read_edits(part) or read_edits(f"make {part}") for part in parts)
    return found if len(found) > 1 and all(found) else ()


def read_edits(text: str) -> tuple[Edit, ...]:
    """The ways in which words may ask for a change, the likelier first; () for words about something else."""
    words = plain(text[: _LONGEST + 1])
    if (
        not words
        or _CLASS.search(words)
        or len(words) > _LONGEST
        or "\n" in text.strip()
        or words.rstrip().endswith("?")
    ):
        return ()
    words = words.strip(" .!")
    found = (
        (verb, re.fullmatch(rf"{_BEGINS}{shape}{_ENDS}", words, re.IGNORECASE)) for verb, shape in _SHAPES
    )
    return tuple(Edit(verb, match["t"].strip(), match["n"].strip(" .,!")) for verb, match in found if match)
