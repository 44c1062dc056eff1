"""What a coach lets one athlete do: `let Ilse go heavier`, `volume first for Bo`, `no heavier for Ilse`."""

import re
from collections.abc import Iterable
from typing import Final, Literal, NamedTuple

from core.notation.in_full import in_full
from core.notation.people import find_name
from core.notation.text import plain

Of = Literal["heavier", "volume"]

_LONGEST: Final = 100
_MAY: Final = r"(?:may|can|should|is allowed to|is free to)"
_NOT: Final = r"(?:may not|can't|cannot|shouldn't|should not|must not|mustn't)"
_GO: Final = r"(?:go(?:es|ing)?|lift(?:s|ing)?|us(?:e|es|ing)|tak(?:e|es|ing)|do(?:es|ing)?)"
_HEAVIER: Final = (
    r"heav(?:ier|y)(?: (?:weights?|loads?))?(?: than (?:written|i write|the written load))?"
    r"(?: if (?:it|that) (?:suits|fits).*)?"
)
_FEWER: Final = (
    r"(?:fewer|less) (?:reps|repetitions)(?: (?:first|(?:rather|instead) (?:than|of) .+|before .+))?"
)
_FINE: Final = r"is (?:fine|ok|okay|allowed|good)"
# With the name as `@`; the first that fits decides.
_SAYS: Final[tuple[tuple[Of, bool, str], ...]] = (
    (
        "heavier",
        False,
        rf"(?:don't|do not|stop|no longer) (?:let|allow)(?:ting|ing)? @ (?:to )?{_GO} {_HEAVIER}",
    ),
    ("heavier", False, rf"@ {_NOT} {_GO} {_HEAVIER}"),
    ("heavier", False, rf"(?:no|not|nothing) {_HEAVIER} for @|@:? (?:no|not|nothing) {_HEAVIER}"),
    ("heavier", True, rf"(?:let|allow) @ (?:to )?{_GO} {_HEAVIER}"),
    ("heavier", True, rf"@ {_MAY} {_GO} {_HEAVIER}"),
    ("heavier", True, rf"{_HEAVIER} {_FINE} for @|@:? {_HEAVIER} {_FINE}"),
    ("volume", False, r"(?:no|no more|not|stop) volume first for @|@:? no volume first"),
    ("volume", False, rf"(?:don't|do not) (?:let|give) @ (?:do )?{_FEWER}"),
    ("volume", False, r"full reps for @|@ keeps? (?:all )?(?:the|her|his|their) reps"),
    ("volume", True, r"volume first for @|@:? volume first"),
    ("volume", True, rf"(?:let|give) @ (?:do )?{_FEWER}|{_FEWER} for @|@:? {_FEWER}|@ {_MAY} do {_FEWER}"),
    ("volume", True, r"(?:cut|take off|drop) @ (?:reps|repetitions|volume) first"),
)
_BEFORE: Final = re.compile(r"^(?:please,? |ok,? )+")
_BEHIND: Final = re.compile(r"(?:,? (?:please|for now|from now on|now|again|after all))+$")


class Leeway(NamedTuple):
    """Whose, of what, and whether it is given or taken back."""

    name: str
    of: Of
    yes: bool


def read_leeway(text: str, names: Iterable[str]) -> Leeway | None:
    """What a coach lets one of these people do; None where it is about something else, or about no one of them."""
    if len(text) > _LONGEST or "\n" in text.strip():
        return None
    found = find_name(re.sub(r"\s+", " ", plain(text).replace("\u2019", "'")).strip(" .!"), names)
    if found is None:
        return None
    name, words = found
    bare = _BEHIND.sub("", _BEFORE.sub("", in_full(words.casefold())))
    return next((Leeway(name, of, yes) for of, yes, shape in _SAYS if re.fullmatch(shape, bare)), None)
