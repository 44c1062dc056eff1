"""What speaks for a reading of a score and what against it: the words around each number, and what is left."""

import math
import re
from collections.abc import Iterator, Mapping, Sequence
from functools import cached_property, lru_cache
from typing import Final

from core.notation.scores.accounted import accounted, is_near
from core.notation.scores.choosing.candidates import Heard, Reading
from core.notation.scores.lines_told import named_lines
from core.notation.scores.numbers import Number
from core.notation.scores.wording import says, words_of
from core.scores.values import Score
from core.scores.ways import OWN, way_of
from core.sessions.counting import reps_in_all, times_in
from core.sessions.values import Block

NOTHING: Final = "none"
# Whether it is plain is asked before which of its readings was meant.
_KEPT: Final = 16
_TOKEN: Final = re.compile(r"[^\W\d_]+(?:['\u2019-][^\W\d_]+)*|[^\w\s]")
_NEAR: Final = 4
_MINUTE_S: Final = 60
# Somebody runs so many metres while they do one repetition (estimate; only to compare times).
_METRES_A_REP: Final = 5
# In half powers of two: beyond these nobody is so quick or so slow.
_QUICKEST, _SLOWEST = -4, 8
_TELLING: Final = words_of("telling") | words_of("of_each")
_STOPPING: Final = words_of("stopping")
_SENTENCE: Final = re.compile(r"[.;!?](?=\s)")
_CLAUSE: Final = re.compile(r"[.;!?](?=\s|$)|[,()\n:]|\s-+\s")
_AGAIN: Final = says("put_right")
_DOUBTFUL: Final = says("doubtful")
_A_LINE: Final = "<line>"
_A_NUMBER: Final = "#"
# Messages of so few words and numbers have a shape.
_SHORT: Final = 7
_ENDS: Final = frozenset(".!)")


class Around:
    """A message as the facts see it: of each number the words around it, and which of the session's it is like."""

    def __init__(self, heard: Heard) -> None:
        self.said, self.block, self.way = heard.said, heard.block, way_of(heard.block)
        self.own = {"bare", *OWN[self.way]}
        self._named = [(one.start, one.end) for one in named_lines(heard.said.words, heard.block)]

    @cached_property
    def tokens(self) -> list[tuple[int, int, str]]:
        """Words and signs with where they stand; a number is one, and so is each word that names a line."""
        spans = [(one.start, one.end) for one in self.said.numbers]
        found = [(start, end, _A_NUMBER) for start, end in spans]
        for match in _TOKEN.finditer(self.said.words):
            at = match.start()
            if not any(start <= at < end for start, end in spans):
                named = any(start <= at < end for start, end in self._named)
                found.append((at, match.end(), _A_LINE if named else match[0]))
        return sorted(found)

    @cached_property
    def shape(self) -> str | None:
        """The whole message, its numbers by their kinds, where it is short."""
        kinds = iter(one.kind for one in self.said.numbers)
        words = [next(kinds, word) if word == _A_NUMBER else word for _, _, word in self.tokens]
        while words and words[-1] in _ENDS:
            words.pop()
        return " ".join(words) if len(words) <= _SHORT else None

    @cached_property
    def is_plain(self) -> bool:
        """Whether nothing is said but with words with which scores are told."""
        words = (word for _, _, word in self.tokens if word[0].isalpha() and len(word) > 1)
        return all(word in _TELLING or word in _STOPPING for word in words)

    @cached_property
    def put_right(self) -> tuple[int, ...]:
        """Where it says that something is put right."""
        return tuple(match.start() for match in _AGAIN.finditer(self.said.words))

    @cached_property
    def numbers(self) -> tuple[tuple[str, ...], ...]:
        """Of each number all that is known of it."""
        return tuple(tuple(self._about(at)) for at in range(len(self.said.numbers)))

    def _about(self, at: int) -> Iterator[str]:
        one, kind = self.said.numbers[at], self.said.numbers[at].kind
        before = ["^"] * _NEAR + [word for _, end, word in self.tokens if end <= one.start]
        behind = [word for start, _, word in self.tokens if start >= one.end] + ["$"] * _NEAR
        before, behind, place = before[-_NEAR:], behind[:_NEAR], _place(at, len(self.said.numbers))
        yield from (f"kind {kind}", f"place {place}", f"kind {kind} {place}", f"kind {kind} {self.way}")
        yield from (f"-1 {before[-1]}", f"-2 {before[-2]} {before[-1]}", f"+1 {behind[0]}")
        yield from (f"+2 {behind[0]} {behind[1]}", f"both {before[-1]} {behind[0]}")
        yield from (f"before {word}" for word in set(before))
        yield from (f"behind {word}" for word in set(behind))
        yield from (f"said {role}" for role in self.said.roles[at])
        strange = self._strange(one)
        yield from (f"strange {min(strange, 4)}", f"strange {min(strange, 2)} {kind}")
        yield f"sentence {self._sentence(one)}"
        yield from (f"like {like}" for like in _like(one, self.block))

    def _strange(self, one: Number) -> int:
        """How many words stand in its clause with which no score is told."""
        return sum(word not in _TELLING for word in self._clause(one))

    def _clause(self, one: Number) -> list[str]:
        begins = max([0, *(match.end() for match in _CLAUSE.finditer(self.said.words, 0, one.start))])
        ends = min([len(self.said.words), *(m.start() for m in _CLAUSE.finditer(self.said.words, one.end))])
        return [word for start, _, word in self.tokens if begins <= start < ends and word[0].isalpha()]

    def _sentence(self, one: Number) -> str:
        ends = [match.end() for match in _SENTENCE.finditer(self.said.words)]
        before = sum(end <= one.start for end in ends)
        return f"{min(before, 2)} {min(len(ends) - before, 2)}"


@lru_cache(_KEPT)
def around_of(heard: Heard) -> Around:
    return Around(heard)


def _place(at: int, of: int) -> str:
    if of == 1:
        return "only"
    return "first" if at == 0 else "last" if at == of - 1 else "amid"


def _like(one: Number, block: Block) -> Iterator[str]:
    """Which number of the session it is, and how it is written."""
    if one.value in {block.rounds, times_in(block)}:
        yield "rounds"
    if block.minutes and one.value in {block.minutes, block.minutes * _MINUTE_S}:
        yield "minutes"
    if block.cap_s and one.value in {block.cap_s, block.cap_s / _MINUTE_S}:
        yield "cap"
    if any(one.value == line.amount for line in block.lines):
        yield "amount"
    if any(one.value == float(load) for line in block.lines for load in line.loads_kg):
        yield "load"
    if one.value in block.scheme:
        yield "scheme"
    yield f"size {len(str(one.whole))}"
    if one.value != one.whole:
        yield "fraction"


def of_number(around: Around, at: int, role: str) -> tuple[str, ...]:
    """What speaks for a number being that."""
    return (f"{role} {around.way}", *(f"{role}|{fact}" for fact in around.numbers[at]))


def of_reading(around: Around, reading: Reading | None) -> tuple[str, ...]:
    """What speaks for a reading beside its numbers; for none, that nothing is told."""
    if reading is None:
        return tuple(_of_none(around))
    return (
        *_of_left(around, reading),
        *_of_score(around, reading),
        *_of_place(around, dict(reading.uses)),
        *_of_shape(around, reading),
    )


def _of_shape(around: Around, reading: Reading) -> Iterator[str]:
    """Of few words what all of them are: the short forms in which scores are mostly told."""
    if around.shape is None:
        return
    uses = dict(reading.uses)
    roles = " ".join(uses.get(at, NOTHING) for at in range(len(around.numbers)))
    yield f"shape {around.shape}|{roles}"
    yield f"shape {around.shape}|{roles}|{reading.how}|{around.way}"
    if NOTHING not in roles and around.is_plain:
        yield from (f"plain {reading.how}", f"plain {reading.how} {around.way}", "plain")


def _of_none(around: Around) -> Iterator[str]:
    words = [word for _, _, word in around.tokens]
    yield from ("nothing", f"nothing {around.way}", f"nothing of {min(len(around.numbers), 4)}")
    yield from (f"nothing, {word}" for word in dict.fromkeys(words))
    if around.shape is not None:
        yield f"nothing, shape {around.shape}"
        yield f"nothing, plain {around.is_plain}"
    if words and words[-1] == "?":
        yield "nothing, asks"
    if _DOUBTFUL.search(around.said.words):
        yield "nothing, in doubt"


def _of_left(around: Around, reading: Reading) -> Iterator[str]:
    """The numbers that are nothing in it, and whether score or session account for them."""
    uses = dict(reading.uses)
    left = [at for at in range(len(around.numbers)) if at not in uses]
    numbers = around.said.numbers
    own = [at for at in left if numbers[at].kind in around.own]
    known = accounted(reading.score, around.block)
    unknown = [at for at in left if not is_near(numbers[at], known)]
    yield from (f"left {min(len(own), 4)}", f"left {min(len(own), 4)} {around.way}")
    yield f"unknown {min(len(unknown), 4)}"
    for at in unknown:
        if at in own:
            yield f"unknown {_where(at, uses)}"


def _where(at: int, uses: Mapping[int, str]) -> str:
    if not uses:
        return "alone"
    return "behind" if at > max(uses) else "before" if at < min(uses) else "amid"


def _of_score(around: Around, reading: Reading) -> Iterator[str]:
    score, block = reading.score, around.block
    yield from (f"how {reading.how}", f"how {reading.how} {around.way}")
    every = times_in(block) or block.rounds
    if score.sets and every:
        yield f"sets {max(min(len(score.sets) - every, 2), -2)}"
        yield f"spread {min(int(4 * max(score.sets) / max(min(score.sets), 0.1)), 16)}"
    elif every:
        yield f"one of {min(every, 6)} {reading.how}"
    if pace := _pace(score, block):
        yield from (f"pace {pace}", f"pace {around.way} {pace}")


def _of_place(around: Around, uses: Mapping[int, str]) -> Iterator[str]:
    """Where its numbers stand, and whether something is put right before or behind them."""
    if not uses:
        return
    first, last = around.said.numbers[min(uses)], around.said.numbers[max(uses)]
    yield f"used {len(uses)} of {min(len(around.numbers), 8)}"
    sides = {at for at, said in enumerate(around.said.roles) if "side" in said}
    if sides:
        yield f"sides {min(len(sides & uses.keys()), 3)} of {min(len(sides), 3)}"
    yield f"together {max(uses) - min(uses) + 1 == len(uses)}"
    between = {word for start, end, word in around.tokens if first.end <= start and end <= last.start}
    yield from (f"between {word}" for word in between)
    yield f"between {min(len(between), 6)}"
    again = around.put_right
    if any(at < first.start for at in again):
        yield "put right before"
    if any(first.start <= at < last.end for at in again):
        yield "put right amid"
    if any(at >= last.end for at in again):
        yield "put right behind"


def _pace(score: Score, block: Block) -> str | None:
    """How quick it would be for what there is to do, in steps of half a power of two."""
    if score.unit == "s" and score.seconds:
        return f"s {_pace_of(score.seconds, _work(block))}"
    if score.unit == "rounds" and block.minutes:
        whole = reps_in_all(block) or 10 * len(block.lines)
        return f"rounds {_step((score.value or 0) * whole / block.minutes)}"
    if score.unit in {"reps", "kcal", "m"} and score.value is not None:
        minutes = block.minutes or (block.work_s or 0) * (times_in(block) or 1) / _MINUTE_S
        return f"{score.unit} {_step(score.value / (minutes or 1))} {bool(minutes)}"
    return f"{score.unit} {_step(score.value or 0)}"


def _pace_of(seconds: float, work: float) -> int:
    step = _step(seconds / work)
    return max(min(step, _SLOWEST), _QUICKEST) if work > 1 else step


def _work(block: Block) -> float:
    """All there is to do, as so many repetitions; one where nobody knows."""
    metres = sum(float(line.amount or 0) for line in block.lines if line.unit == "m") * (block.rounds or 1)
    return (reps_in_all(block) or 0) + metres / _METRES_A_REP or 1


def _step(value: float) -> int:
    return int(2 * math.log2(value)) if value > 0 else -9


def facts_of(around: Around, reading: Reading | None) -> Sequence[str]:
    """All of them, to be added up."""
    uses = dict(reading.uses) if reading else {}
    numbers = (of_number(around, at, uses.get(at, NOTHING)) for at in range(len(around.numbers)))
    return [*of_reading(around, reading), *(fact for facts in numbers for fact in facts)]
