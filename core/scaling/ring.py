"""What is chosen from, and the best way round the lines of a section: a dynamic program over neighbours."""

from collections.abc import Iterable, Mapping, Sequence
from itertools import pairwise
from typing import NamedTuple

# What of a line's value is a minimum of the line alone: unsafe, misfit beyond tolerance, distance, breathing.
Alone = tuple[int, int, int, int]


class Candidate(NamedTuple):
    """One option of a line, reduced to what decides.

    `alone`: what needs no look at other lines. `misfit`: what remains within tolerance. `held`: what is in the
    hands, None if nothing; equal values need no change. `thing`, `load`: the shared thing it uses, and at which
    setting. `kind`: the movement, None where repeating it beside itself is no matter.
    """

    alone: Alone
    misfit: int = 0
    held: object = None
    fresh: int = 0
    thing: int | None = None
    load: float = 0.0
    kind: object = None


class Section(NamedTuple):
    """Lines done one after the other; `ring`: the last is followed by the first again."""

    lines: Sequence[Sequence[Candidate]]
    ring: bool = True


def neighbours(row: Sequence[Candidate], *, ring: bool) -> Iterable[tuple[Candidate, Candidate]]:
    yield from pairwise(row)
    if ring and len(row) > 1:
        yield row[-1], row[0]


def differs(one: object, other: object, *, equal: bool) -> int:
    """1 where two things that are there are equal, or aren't."""
    return int(one is not None and other is not None and (one == other) is equal)


# Repeated neighbours, misfit, changes of implement, news, and the way taken.
Walk = tuple[int, int, int, int, tuple[int, ...]]


def join(parts: Sequence[Walk]) -> Walk:
    if len(parts) == 1:
        return parts[0]
    repeats, misfit, changes, fresh, chosen = zip(*parts, strict=True)
    return sum(repeats), sum(misfit), sum(changes), sum(fresh), tuple(pick for one in chosen for pick in one)


def walk(section: Section, kept: Sequence[Sequence[int]]) -> Walk:
    """The best way through the lines: a dynamic program from each start."""
    if not kept:
        return 0, 0, 0, 0, ()
    if all(len(some) == 1 for some in kept):
        return _only_way(section, [some[0] for some in kept])
    return min(_walk_from(section, kept, start) for start in kept[0])


def _only_way(section: Section, chosen: Sequence[int]) -> Walk:
    row = [line[n] for line, n in zip(section.lines, chosen, strict=True)]
    repeats = changes = 0
    for one, other in neighbours(row, ring=section.ring):
        repeats += differs(one.kind, other.kind, equal=True)
        changes += differs(one.held, other.held, equal=False)
    return (
        repeats,
        sum(one.misfit for one in row),
        changes,
        sum(one.fresh for one in row),
        tuple(chosen),
    )


def _walk_from(section: Section, kept: Sequence[Sequence[int]], start: int) -> Walk:
    lines = section.lines
    first = lines[0][start]
    states: dict[int, Walk] = {start: (0, first.misfit, 0, first.fresh, (start,))}
    for n in range(1, len(kept)):
        states = {here: _step(lines[n - 1], states, lines[n][here], here) for here in kept[n]}
    if not section.ring or len(kept) == 1:
        return min(states.values())
    return min(_closed(lines[-1][end], first, walk) for end, walk in states.items())


def _closed(last: Candidate, first: Candidate, walk: Walk) -> Walk:
    repeats, misfit, changes, fresh, chosen = walk
    repeats += differs(last.kind, first.kind, equal=True)
    changes += differs(last.held, first.held, equal=False)
    return repeats, misfit, changes, fresh, chosen


def _step(before: Sequence[Candidate], states: Mapping[int, Walk], to: Candidate, here: int) -> Walk:
    return min(
        (
            repeats + differs(before[at].kind, to.kind, equal=True),
            misfit + to.misfit,
            changes + differs(before[at].held, to.held, equal=False),
            fresh + to.fresh,
            (*chosen, here),
        )
        for at, (repeats, misfit, changes, fresh, chosen) in states.items()
    )
