"""What is said of each number of a score: that it failed, was before, is the sum, the slowest, or only about right."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache
from itertools import pairwise
from typing import Final

from core.notation.scores.numbers import Number, numbers_in
from core.notation.scores.spoken import in_digits
from core.notation.scores.wording import ROLES, says

_PIECE: Final = re.compile(r"[.;!?](?=\s|$)|\s-\s|,(?=\s?[a-z])")
# Numbers so joined are one: what is said of the first is said of the second.
_ONE: Final = re.compile(r"\s?(?:rounds?)?,?\s?(?:\+|plus)\s?|\sx\s|\s?x")
_REACH: Final = 44
_STOP: Final = re.compile(r"[,;.!(]")

_PUT_RIGHT: Final = says("put_right")
_BESIDE: Final = frozenset({"failed", "before", "denied", "cap", "average", "clock", "rest", "reason"})
# What is said of a part of it, or by a watch, counts only where nothing else is told.
_ONLY_ALONE: Final = frozenset({"device", "stretch"})
_PLAIN: Final = frozenset({"clock", "metres", "cal", "rounds"})
_HARDEST: Final = 10


@dataclass(frozen=True)
class Told:
    """The words of a score with their numbers; those that tell nothing of today's score are left out of `counting`."""

    words: str
    numbers: tuple[Number, ...]
    is_spoken: bool = False

    @cached_property
    def roles(self) -> tuple[frozenset[str], ...]:
        return tuple(self._inherited(at) for at in range(len(self.numbers)))

    @cached_property
    def _own_roles(self) -> tuple[frozenset[str], ...]:
        pieces = [0, *(one.end() for one in _PIECE.finditer(self.words)), len(self.words)]
        return tuple(self._roles_of(at, pieces) for at in range(len(self.numbers)))

    def _roles_of(self, at: int, pieces: Sequence[int]) -> frozenset[str]:
        one = self.numbers[at]
        begins = max((start for start in pieces if start <= one.start), default=0)
        ends = min((end for end in pieces if end >= one.end), default=len(self.words))
        earlier = next((other.end for other in self.numbers[:at][::-1] if other.kind != "beside"), 0)
        behind_it = (other.start for other in self.numbers[at + 1 :] if other.kind != "beside")
        later = next(behind_it, len(self.words))
        before = self.words[max(begins, earlier, one.start - _REACH) : one.start]
        behind = self.words[one.end : min(ends, later, one.end + _REACH)]
        taken = self._behind_of(at - 1, pieces) if at else frozenset()
        fronts = {role for role, front, _ in ROLES if front and front.search(before)} - taken
        own = {role for role, _, back in ROLES if back and back.search(behind)}
        return frozenset(fronts | (own if self._ends_there(at) else own - self._fronts_of(at + 1)))

    def _ends_there(self, at: int) -> bool:
        """Whether something stands between what is said behind a number and the next: `38 total, 25`."""
        return at + 1 >= len(self.numbers) or bool(
            _STOP.search(self.gap(self.numbers[at], self.numbers[at + 1]))
        )

    def _fronts_of(self, at: int) -> frozenset[str]:
        gap = self.gap(self.numbers[at - 1], self.numbers[at])
        return frozenset(role for role, front, _ in ROLES if front and front.search(gap))

    def _behind_of(self, at: int, pieces: Sequence[int]) -> frozenset[str]:
        """What the words behind a number say of it, and so of no other."""
        one, later = self.numbers[at], self.numbers[at + 1]
        ends = min((end for end in pieces if end >= one.end), default=len(self.words))
        behind = self.words[one.end : min(ends, later.start, one.end + _REACH)]
        if not self._ends_there(at):
            return frozenset()
        return frozenset(role for role, _, back in ROLES if back and back.search(behind))

    def is_said(self, one: Number, *roles: str) -> bool:
        return not self._roles_by_number[one].isdisjoint(roles)

    @cached_property
    def _roles_by_number(self) -> dict[Number, frozenset[str]]:
        return dict(zip(self.numbers, self.roles, strict=True))

    def _inherited(self, at: int) -> frozenset[str]:
        """What is said of either half of `7+2` is said of both."""
        near = [
            other for other in (at - 1, at + 1) if 0 <= other < len(self.numbers) and self._is_one(at, other)
        ]
        return self._own_roles[at].union(
            *(self._own_roles[other] & (_BESIDE | _ONLY_ALONE) for other in near)
        )

    def _is_one(self, at: int, other: int) -> bool:
        one, later = sorted((at, other))
        return _ONE.fullmatch(self.gap(self.numbers[one], self.numbers[later])) is not None

    @cached_property
    def counting(self) -> tuple[Number, ...]:
        """The numbers that may be of today's score."""
        told = [
            (one, said)
            for one, said in zip(self.numbers, self.roles, strict=True)
            if one.kind != "beside" and not said & _beside_for(one) and not _is_effort(one, said)
        ]
        own = tuple(one for one, said in told if not said & _ONLY_ALONE)
        return own or tuple(one for one, _ in told)

    def of(self, *kinds: str) -> tuple[Number, ...]:
        return tuple(one for one in self.counting if one.kind in kinds)

    def with_role(self, role: str, *kinds: str) -> Number | None:
        """The last number of these kinds that is said to be so."""
        found = [one for one in self.of(*kinds) if self.is_said(one, role)]
        return found[-1] if found else None

    def gap(self, one: Number, other: Number) -> str:
        return self.words[one.end : other.start]

    @cached_property
    def added(self) -> tuple[tuple[Number, Number], ...]:
        """Neighbours like those of `2+10`."""
        pairs = pairwise(self.numbers)
        return tuple(pair for pair in pairs if self.gap(*pair).strip() in {"+", "plus"})

    def behind(self, one: Number) -> str:
        """What follows a number, up to the next."""
        later = [other.start for other in self.numbers if other.start >= one.end]
        return self.words[one.end : min(later, default=len(self.words))]

    def has(self, pattern: re.Pattern[str]) -> bool:
        return pattern.search(self.words) is not None

    @property
    def is_about(self) -> bool:
        """Whether a number that counts is only about right."""
        told = [one for one in self.counting if one.kind != "bare"] or list(self.counting)
        return any(self.is_said(one, "about") for one in (told if self._is_plain(told) else self.counting))

    def _is_plain(self, told: Sequence[Number]) -> bool:
        """Whether one is told with its unit, and not only about right: `under 10! 9:41`."""
        return any(one.kind in _PLAIN and not self.is_said(one, "about") for one in told)


def _beside_for(one: Number) -> frozenset[str]:
    """A minute may fail and a cap be told in repetitions; these are what is told."""
    return _BESIDE - {
        "turn": {"failed"},
        "of": {"failed"},
        "reps": {"cap"},
        "rounds": {"cap"},
        "left": {"failed", "cap"},
    }.get(one.kind, set())


def _is_effort(one: Number, said: frozenset[str]) -> bool:
    """`felt like a 9`: how hard it was."""
    return "effort" in said and one.kind == "bare" and one.value <= _HARDEST


# `I said 9 already` tells it once more.
_SAID_ALREADY: Final = re.compile(r"\bi (?:already )?(?:said|wrote|told you)\b(?=[^.!?]*\balready\b)")


# A message is read for each part, by the rules and by the choice: what its words tell is worked out once.
_KEPT: Final = 128


@lru_cache(_KEPT)
def all_told(words: str) -> Told:
    """All that the words tell, what is put right later too. `words` plain, in lower case."""
    digits = in_digits(words)
    return Told(digits, _alike(digits, numbers_in(digits)), is_spoken=digits != words)


@lru_cache(_KEPT)
def told(words: str) -> Told:
    """What the words tell; of something put right only what it became. `words` plain, in lower case."""
    return _as_put_right(all_told(_SAID_ALREADY.sub(" ", words)))


_LIST_JOINT: Final = re.compile(r"\s?(?:[,/;-]|and|&)\s?")
_FROM_TO: Final = re.compile(r"\b(?:at|to|from)\s$")
_LISTED: Final = frozenset({"span", "cal", "metres"})


def _alike(words: str, found: tuple[Number, ...]) -> tuple[Number, ...]:
    """`92, 95, 100 sec`: the unit behind the last of a list is that of all."""
    kept = list(found)
    for at in range(len(kept) - 1, 0, -1):
        one, before = kept[at], kept[at - 1]
        if one.kind not in _LISTED or not _lists(words, kept, at) or _FROM_TO.search(words[: before.start]):
            continue
        told = _FIGURE.match(one.text)
        if told and float(told[0]):
            value = before.value * one.value / float(told[0])
            kept[at - 1] = before._replace(kind=one.kind, value=value, unit=one.unit)
    return tuple(kept)


_FIGURE: Final = re.compile(r"[0-9.]+")


def _lists(words: str, found: Sequence[Number], at: int) -> bool:
    """Whether a number and the bare one before it stand in one list; with no more than spaces between, of three."""
    one, before = found[at], found[at - 1]
    gap = words[before.end : one.start]
    if before.kind != "bare" or not gap.isspace():
        return before.kind == "bare" and _LIST_JOINT.fullmatch(gap) is not None
    in_front = at > 1 and found[at - 2].kind == "bare" and words[found[at - 2].end : before.start].isspace()
    behind = at + 1 < len(found) and found[at + 1].kind == one.kind
    return in_front or (behind and words[one.end : found[at + 1].start].isspace())


def _as_put_right(said: Told) -> Told:
    """`97.5. wait no that was last time. 100` tells 100, if both are numbers of one kind."""
    for match in reversed(list(_PUT_RIGHT.finditer(said.words))):
        before = {_like(one.kind) for one in said.counting if one.end <= match.start()}
        rest = said.words[match.end() :]
        after = Told(rest, numbers_in(rest))
        if before & {_like(one.kind) for one in after.counting}:
            return after
    return said


def _like(kind: str) -> str:
    """Rounds are told as bare numbers, too."""
    return "bare" if kind == "rounds" else kind


def lists(said: Told, found: Sequence[Number], joint: re.Pattern[str]) -> Iterator[tuple[Number, ...]]:
    """The numbers in runs: those with nothing but a joint between them belong together."""
    run: list[Number] = []
    for one, other in pairwise((*found, None)):
        assert one is not None
        run.append(one)
        if other is None or not joint.fullmatch(said.gap(one, other)):
            yield tuple(run)
            run = []
