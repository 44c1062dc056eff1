"""Medicines that somebody takes, by what they change about training; the words are data (`medicines.toml`)."""

import re
import tomllib
from collections.abc import Iterable, Mapping
from functools import cache
from itertools import chain
from pathlib import Path
from typing import Final, Literal, NamedTuple, cast

from core.notation.text import plain

Medicine = Literal["pulse", "thinner", "sugar", "pressure", "water", "statin", "heart", "unknown"]


class GivenUp(NamedTuple):
    """`kinds` that somebody doesn't take any more; `by_doctor`: a doctor said so. `rest`: the other clauses."""

    kinds: tuple[Medicine, ...]
    by_doctor: bool
    rest: str


class ToldMedicines(NamedTuple):
    """`kinds` that are named, and of them `taken`: the speaker says so, and doesn't only ask.

    `words`: the clauses that name them; `rest`: all others.
    """

    kinds: tuple[Medicine, ...]
    taken: tuple[Medicine, ...]
    words: str
    rest: str


_OTHERS: Final = (
    "(?:mum|mom|mother|dad|father|husband|wife|partner|brother|sister|friend|son|daughter|he|she|they|his|her"
    "|their)"
)
_SOMEBODY: Final = re.compile(rf"\b{_OTHERS}\b")
# Right before the name, or around it.
_GIVEN_UP: Final = re.compile(
    r"(?:^\W*off|\b(?:stopped|quit|finished|no longer|c[ao]me off|been off|taken off|me off|(?:i'?m|am|now) off))"
    r"(?:\W+\w+){0,2}\W*$"
)
_DOCTOR: Final = re.compile(
    r"\b(?:doctor|doc|gp|cardiologist|consultant|specialist|hospital|clinic)\b", re.IGNORECASE
)
_NO_MORE: Final = re.compile(r"(?:n't|\bnot|\bdont)\b.*\b(?:any ?more|any longer|now)\b")
# Somebody else's, those of the past, and those that are denied are nothing to keep.
_NOT_TAKEN: Final = re.compile(
    r"\b(?:no|not|never|without|\w+n't|dont|stopped|c[ao]me off|me off|off (?:the|my)|used to|no longer"
    rf"|finished|{_OTHERS})\b"
    r"[^,;.!?]*$"
)
_ASKS: Final = re.compile(r"\?\W*$|^\W*(?:what|how|can|could|may|should|do|does|is|are|will|would)\b")
_TAKES: Final = re.compile(r"\bi(?:'?m| am)? (?:also |only )?(?:take|taking|on|have|inject|got|get)\b")
_CLAUSE: Final = re.compile(
    r"(?<=[.!?;,\n])\s+|\s+(?:and|but)\s+(?=(?:i|my|can|what|how|is|do)\b)", re.IGNORECASE
)


def medicines_in(text: str) -> ToldMedicines | None:
    """What is named; None where nothing is, or only what somebody else takes, or the speaker doesn't."""
    clauses = _CLAUSE.split(text.replace("\u2019", "'"))
    named = {one: kinds for one in clauses if (kinds := _named(one))}
    if not named:
        return None
    taken = [one for one in named if not _ASKS.search(one) or _TAKES.search(one.casefold())]
    rest = " ".join(one for one in clauses if one not in named)
    return ToldMedicines(
        _known(chain.from_iterable(named.values()), text),
        _known(chain.from_iterable(named[one] for one in taken), text),
        " ".join(named),
        rest.strip(" ,;"),
    )


def given_up(text: str) -> GivenUp | None:
    """What they say they don't take any more, or were taken off; None where it is asked, or told of somebody else."""
    clauses = _CLAUSE.split(text.replace("\u2019", "'"))
    found = {one: kinds for one in clauses if (kinds := _given_up_in(one))}
    if not found:
        return None
    rest = " ".join(one for one in clauses if one not in found and not _DOCTOR.search(one))
    kinds = _known(chain.from_iterable(found.values()))
    return GivenUp(kinds, bool(_DOCTOR.search(text)), rest.strip(" ,;"))


def _given_up_in(clause: str) -> tuple[Medicine, ...]:
    words = plain(clause).casefold()
    if _ASKS.search(words) or _SOMEBODY.search(words):
        return ()
    return tuple(
        kind
        for kind, said in _read().items()
        if (found := said.search(words))
        and (_NO_MORE.search(words) or _GIVEN_UP.search(words[: found.start()]))
    )


def _known(kinds: Iterable[Medicine], beside: str = "") -> tuple[Medicine, ...]:
    """Each once; what has no name only where nothing has one, and by what it is for, if that stands `beside` it."""
    named = tuple(dict.fromkeys(kinds))
    meant = tuple(one for one in named if one != "unknown")
    return meant or (_taken_for(beside) if named else ()) or named


def _taken_for(words: str) -> tuple[Medicine, ...]:
    """`High blood pressure, I take tablets`."""
    said = plain(words).casefold()
    of = {kind: cast("list[str]", one.get("of", [])) for kind, one in _table().items()}
    return tuple(
        cast("Medicine", kind)
        for kind, names in of.items()
        if any(re.search(rf"\b{re.escape(name)}\b", said) for name in names)
    )


def _named(clause: str) -> tuple[Medicine, ...]:
    words = plain(clause).casefold()
    return tuple(
        kind
        for kind, said in _read().items()
        if (found := said.search(words)) and not _NOT_TAKEN.search(words[: found.start()])
    )


def limits_of(kinds: tuple[Medicine, ...]) -> tuple[str, ...]:
    """As what they are kept."""
    limits = _limits()
    return tuple(limits[kind] for kind in kinds if kind in limits)


def ends_with_it(kind: Medicine) -> str | None:
    """The limit that goes with it; None where what it is taken for stays, or nothing was kept of it."""
    return None if _table()[kind].get("stays") else _limits().get(kind)


def kinds_of(limits: tuple[str, ...]) -> tuple[Medicine, ...]:
    """What is kept of somebody, as medicines."""
    return tuple(kind for kind, limit in _limits().items() if limit in limits)


@cache
def _table() -> Mapping[str, Mapping[str, object]]:
    return tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))


@cache
def _limits() -> Mapping[Medicine, str]:
    return {cast("Medicine", kind): str(one["limit"]) for kind, one in _table().items() if "limit" in one}


@cache
def _read() -> Mapping[Medicine, re.Pattern[str]]:
    return {
        cast("Medicine", kind): re.compile(
            r"\b(?:" + "|".join(map(re.escape, cast("list[str]", one["said"]))) + r")\b"
        )
        for kind, one in _table().items()
    }
