"""The clock of a block as moments at which something sounds: its start and turns, the half, planned splits, its end."""

from collections.abc import Iterator, Sequence
from itertools import chain, zip_longest
from typing import NamedTuple

from core.forecast.values import Clock, Mark, MarkKind, Outlook
from core.measures import AmountUnit
from core.scaling.values import VersionBlock
from core.sessions.values import Block, Format

# The less of two that fall together gives way to the greater.
_RANK: dict[MarkKind, int] = {
    "split": 0, "ready": 1, "work": 2, "halfway": 3, "last_minute": 4, "rest": 5, "start": 6, "end": 7,
}  # fmt: skip

# Nobody wants to carry a longer one about, and a turn this short is one tone after the other (estimates).
LONGEST_S, SHORTEST_TURN_S = 90 * 60.0, 5.0
# What falls together nearer than this is heard as one thing (estimate).
APART_S = 0.8
# Three, two, one.
READY_S = (3.0, 2.0, 1.0)
# The half of what is shorter is the last minute, or near it (estimate).
LEAST_WITH_HALF_S = 180.0
# A split that comes so soon, or so near the end, is of no help (estimate).
LEAST_SPLIT_S, BEFORE_END_S = 10.0, 5.0
_MINUTE_S = 60.0
_ONCE_TIMED = frozenset({Format.AMRAP, Format.MAX_REPS, Format.TIME_TRIAL})


class _Turns(NamedTuple):
    """So many, one each `every_s`, of which `work_s` is work; after the last work it is over."""

    times: int
    every_s: float
    work_s: float

    @property
    def ends_s(self) -> float:
        return (self.times - 1) * self.every_s + self.work_s


def clock_of(block: Block | VersionBlock, outlook: Outlook | None = None) -> Clock | None:
    """The block's own clock, with the splits of `outlook` in it.

    None where nothing of it runs by a clock, where it runs longer than `LONGEST_S`, or where its turns are shorter than
    `SHORTEST_TURN_S`. Work for time without a cap has one only as far as its pace is known.
    """
    turns, outlook = _turns(block), outlook if outlook and outlook.is_telling else None
    if turns is None:
        return _until_done(block, outlook)
    if turns.times < 1 or turns.ends_s > LONGEST_S or turns.work_s < SHORTEST_TURN_S:
        return None
    marks = chain(
        _beginnings(block, turns),
        _stations_off(block, turns),
        _of_the_whole(turns),
        _splits(turns, block, outlook),
    )
    every_s = turns.every_s if turns.times > 1 else None
    return Clock(marks=_told_apart(marks), turns=turns.times, every_s=every_s, ends_s=turns.ends_s)


def ends_of(block: Block | VersionBlock) -> float | None:
    """After how many seconds the last turn is over, by the clock; None where it isn't by the clock."""
    turns = _turns(block)
    return None if turns is None or turns.times < 1 else turns.times * turns.every_s


def clocks_of(
    blocks: Sequence[Block | VersionBlock], outlooks: Sequence[Outlook | None] = ()
) -> dict[int, Clock]:
    """The clocks of those blocks that have one, by their numbers, which count from 1. `outlooks`: of each or none."""
    found = zip_longest(blocks, outlooks)
    clocks = {number: clock_of(block, outlook) for number, (block, outlook) in enumerate(found, 1)}
    return {number: clock for number, clock in clocks.items() if clock is not None}


def _turns(block: Block | VersionBlock) -> _Turns | None:
    rounds, whole_s = block.rounds or 1, (block.minutes or 0) * _MINUTE_S
    if block.work_s:
        every_s = block.every_s or block.work_s + (block.rest_s or 0)
        each_round = max(len(block.lines), 1)
        rounds = block.rounds or int(whole_s // (every_s * each_round))
        return _Turns(rounds * each_round, every_s, min(block.work_s, every_s))
    if block.every_s:
        return _Turns(block.rounds or int(whole_s // block.every_s), block.every_s, block.every_s)
    if whole_s and rounds > 1 and block.rest_s and block.format in _ONCE_TIMED:
        return _Turns(rounds, whole_s + block.rest_s, whole_s)
    once_s = whole_s or block.cap_s or _held_s(block)
    return _Turns(1, once_s, once_s) if once_s else None


def _held_s(block: Block | VersionBlock) -> float | None:
    """As far as it goes in so many seconds."""
    is_one = block.format is Format.TIME_TRIAL and len(block.lines) == 1
    return block.lines[0].amount if is_one and block.lines[0].unit is AmountUnit.SECONDS else None


def _beginnings(block: Block | VersionBlock, turns: _Turns) -> Iterator[Mark]:
    """The start and each turn, counted down to; and where the work of a turn is over."""
    for number in range(turns.times):
        at_s = number * turns.every_s
        if turns.work_s < turns.every_s and number < turns.times - 1:
            yield Mark(at_s=at_s + turns.work_s, kind="rest")
        if number and _is_off(block, number):
            continue
        yield Mark(at_s=at_s, kind="work" if number else "start")
        yield from _counted_down(at_s)


def _stations_off(block: Block | VersionBlock, turns: _Turns) -> Iterator[Mark]:
    """The turns at which nothing is done."""
    for number in range(1, turns.times):
        if _is_off(block, number):
            yield Mark(at_s=number * turns.every_s, kind="rest")


def _is_off(block: Block | VersionBlock, number: int) -> bool:
    stations = [line.station or 0 for line in block.lines]
    last = max((*stations, *block.rest_stations), default=0)
    return bool(block.rest_stations) and number % last + 1 in block.rest_stations


def _of_the_whole(turns: _Turns) -> Iterator[Mark]:
    """The half by the clock, or by its turns; the last minute; the end."""
    ends_s = turns.ends_s
    is_long = ends_s >= LEAST_WITH_HALF_S
    if is_long and turns.times == 1:
        yield Mark(at_s=ends_s / 2, kind="halfway")
    elif is_long and turns.times % 2 == 0:
        yield Mark(at_s=turns.times // 2 * turns.every_s, kind="halfway")
    if is_long and (turns.times == 1 or turns.every_s >= _MINUTE_S):
        yield Mark(at_s=ends_s - _MINUTE_S, kind="last_minute")
    yield Mark(at_s=ends_s, kind="end")
    yield from _counted_down(ends_s)


def _counted_down(to_s: float) -> Iterator[Mark]:
    return (Mark(at_s=to_s - before, kind="ready") for before in READY_S)


def _splits(turns: _Turns, block: Block | VersionBlock, outlook: Outlook | None) -> Iterator[Mark]:
    """When a round should be done, or the half of it; in turns, when the work of each should be."""
    if outlook is None:
        return
    pace, ends_s = outlook.pacing, turns.work_s - BEFORE_END_S
    if turns.times > 1:
        of_turn = [pace.round_s] if block.every_s and pace.round_s and pace.round_s < ends_s else []
        starts = [number * turns.every_s for number in range(turns.times) if not _is_off(block, number)]
        yield from (_split(start + at_s) for start in starts for at_s in of_turn)
        return
    yield from _paced(outlook, ends_s, block.rounds if block.format is Format.FOR_TIME else None)


def _paced(outlook: Outlook, ends_s: float, rounds: int | None) -> Iterator[Mark]:
    pace = outlook.pacing
    if pace.round_s is not None and pace.round_s >= LEAST_SPLIT_S:
        most = int(ends_s // pace.round_s)
        yield from (_split(number * pace.round_s) for number in range(1, min(most, rounds or most) + 1))
        return
    once = pace.rounds_s if pace.half_s is None else pace.half_s
    if once is not None and LEAST_SPLIT_S <= once <= ends_s:
        yield _split(once)


def _split(at_s: float) -> Mark:
    """To the second: nobody runs by less."""
    return Mark(at_s=float(round(at_s)), kind="split")


def _until_done(block: Block | VersionBlock, outlook: Outlook | None) -> Clock | None:
    """The planned splits of work that ends when it is done, the last of them the planned end."""
    if block.format is not Format.FOR_TIME or outlook is None or outlook.forecast.unit != "s":
        return None
    done_s = outlook.forecast.expected
    if not LEAST_SPLIT_S <= done_s <= LONGEST_S:
        return None
    splits = [*_paced(outlook, done_s - BEFORE_END_S, block.rounds), _split(done_s)]
    return Clock(marks=_told_apart(chain(_counted_down(0.0), [Mark(at_s=0.0, kind="start")], splits)))


def _told_apart(marks: Iterator[Mark]) -> tuple[Mark, ...]:
    """In their order; of what falls together the greater."""
    kept: list[Mark] = []
    for mark in sorted(marks, key=lambda one: (one.at_s, _RANK[one.kind])):
        if not kept or mark.at_s - kept[-1].at_s >= APART_S:
            kept.append(mark)
        elif _RANK[mark.kind] >= _RANK[kept[-1].kind]:
            kept[-1] = mark
    return tuple(kept)
