"""Words that mean some of a group by what they are like: `no push-ups for the beginners`; nobody knows who that is."""

import re
from typing import Final

_KINDS: Final = (
    r"beginners?|newbies|newcomers|new ones|novices|intermediates?|advanced(?: ones)?|experienced(?: ones)?"
    r"|strong ones|fit ones"
    r"|slow(?:er)? ones|fast(?:er)? ones|weak(?:er)? ones|women|men|seniors?|elderly|old(?:er)? ones"
    r"|young(?:er)? ones|over[- ]?[0-9]{2}s?|under[- ]?[0-9]{2}s?|injured(?: ones)?|pregnant ones"
)
_SOME: Final = re.compile(rf"\b(?:the|my|our|all) (?P<who>{_KINDS})\b", re.IGNORECASE)
# A session may be written for some of them.
_BOARD: Final = re.compile(
    r"\b(?:rounds?|min(?:utes?)?|amrap|emom|sets?|rft|[0-9]+ ?x ?[0-9]+)\b", re.IGNORECASE
)


def some_of_them(text: str) -> str | None:
    """Who is meant, in the coach's words; None where no such part is, and for what may be a session."""
    found = None if "\n" in text.strip() or _BOARD.search(text) else _SOME.search(text)
    return f"the {found['who']}" if found else None
