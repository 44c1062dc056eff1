"""Words that mean some of a group by what they are like: `no push-ups for the beginners`; nobody knows who that is."""

import re
from typing import Final

_KINDS: Final = (
    r"beginners?|newbies|newcomers|new ones|novices|intermediates?|advanced(?: ones)?|experienced(?: ones)?"
    r"|strong ones|fit ones"
    r"|slow(?:er)? ones|fast(?:er)? ones|weak(?:er)? ones|women|men|seniors?|elderly|old(?:er)? ones"
    r"|young(?:er)? ones|over[- ]?[0-9]{2}s?|under[- ]?[0-9]{2}s?|injured(?: ones)?|pregnant ones"
)
_AGED: Final = (
    r"(?:over|under|above|below|past|older than|younger than) [1-9][0-9]\b(?! ?(?:kg|lb|m\b|min|sec|rep|%))"
)
_SOME: Final = re.compile(
    rf"\b(?:(?:the|my|our|all) (?:{_KINDS})\b"
    r"|(?:any|every|no)(?:one|body| one)(?: who(?:'?s| is| are)| that(?:'?s| is)?)? "
    rf"(?:{_AGED}|pregnant|injured|with (?:an? )?(?:bad|sore|dodgy|weak|stiff|painful|old|injured) \w+)"
    r"|(?:every(?:one|body)|all)\b.{0,30}? (?:except|but not|apart from|other than|besides) \w+"
    r"|(?:those|people|folks?|athletes|members|all) with (?:an? )?(?:bad|sore|dodgy|weak|stiff|painful|old|injured) \w+"
    rf"|(?:those|people|folks?|athletes|members|whoever(?:'?s| is)?|all)(?: (?:who are|who is|aged))? {_AGED})",
    re.IGNORECASE,
)
# Whoever wants to know orders nothing.
_WONDERS: Final = re.compile(r"^\W*(?:is|are|has|have|do|any(?:one|body)|who)\b", re.IGNORECASE)
# A session may be written for some of them.
_BOARD: Final = re.compile(
    r"\b(?:rounds?|min(?:utes?)?|amrap|emom|sets?|rft|[0-9]+ ?x ?[0-9]+)\b", re.IGNORECASE
)


def some_of_them(text: str) -> str | None:
    """Who is meant, in the coach's words; None where no such part is, and for what may be a session."""
    is_order = "\n" not in text.strip() and not _BOARD.search(text) and not _WONDERS.match(text)
    found = _SOME.search(text) if is_order else None
    return found[0] if found else None
