"""The best choice for all lines of a block at once: exact, and equal to brute force always (design 6.4).

A block's version is valued by a tuple of whole numbers, compared in this order:

1. lines without a safe option
2. misfit beyond tolerance: the worst line, then the sum
3. distance from what was written, summed
4. breathing: lines out of the person's reach
5. remaining misfit, summed
6. implement changes between neighbouring lines, the round closing on itself
7. lines that differ from last time's choice
8. the order of the options

Lines meet in two places only: a thing with one setting per block (an adjustable, a filled backpack), and
changes of implement. So the settings are enumerated, 1-5 are minima of each line alone (the
smallest worst line and the smallest sums are reached together), and a walk round the ring decides 6-8.
"""

from collections.abc import Iterable, Mapping, Sequence
from decimal import Decimal
from itertools import pairwise, product
from typing import NamedTuple

Setting = Mapping[int, Decimal]


class Candidate(NamedTuple):
    """One option of a line, reduced to what decides.

    `merit`: (unsafe, beyond, distance, breathing, misfit). `held`: what is in the hands, None if nothing;
    equal values need no change. `thing`, `load`: the shared thing it uses, and at which setting.
    """

    merit: tuple[int, int, int, int, int]
    held: object = None
    fresh: int = 0
    thing: int | None = None
    load: Decimal = Decimal(0)


class Section(NamedTuple):
    """Lines done one after the other; `ring`: the last is followed by the first again."""

    lines: Sequence[Sequence[Candidate]]
    ring: bool = True


Value = tuple[int, int, int, int, int, int, int, int, tuple[int, ...]]


def choose(sections: Sequence[Section]) -> tuple[int, ...]:
    """The index of the chosen candidate of every line, section after section. Every line has at least one."""
    best: Value | None = None
    for setting in _settings(sections):
        lines = [[_survivors(line, setting) for line in section.lines] for section in sections]
        if not all(survivors for section in lines for survivors in section):
            continue
        merits = [
            section.lines[n][found[0]].merit
            for section, kept in zip(sections, lines, strict=True)
            for n, found in enumerate(kept)
        ]
        head = _sum(merits)
        if best is not None and head > best[:6]:
            continue
        value = (*head, *_join(_walk(section, kept) for section, kept in zip(sections, lines, strict=True)))
        if best is None or value < best:
            best = value
    assert best is not None, "every line has a candidate that uses no shared thing"
    return best[8]


def value_of(sections: Sequence[Section], chosen: Sequence[int]) -> Value:
    """The value of one choice for every line, straight from the definition above."""
    rest = iter(chosen)
    picks = [[line[next(rest)] for line in section.lines] for section in sections]
    everyone = [pick for section in picks for pick in section]
    changes = sum(
        _changes(one.held, other.held)
        for section, row in zip(sections, picks, strict=True)
        for one, other in _neighbours(row, ring=section.ring)
    )
    return (
        *_sum([pick.merit for pick in everyone]),
        changes,
        sum(pick.fresh for pick in everyone),
        tuple(chosen),
    )


def _sum(merits: Sequence[tuple[int, int, int, int, int]]) -> tuple[int, int, int, int, int, int]:
    unsafe, beyond, distance, breathing, misfit = (list(part) for part in zip(*merits, strict=True))
    return sum(unsafe), max(beyond), sum(beyond), sum(distance), sum(breathing), sum(misfit)


def _neighbours(row: Sequence[Candidate], *, ring: bool) -> Iterable[tuple[Candidate, Candidate]]:
    yield from pairwise(row)
    if ring and len(row) > 1:
        yield row[-1], row[0]


def _changes(one: object, other: object) -> int:
    return int(one is not None and other is not None and one != other)


def _settings(sections: Sequence[Section]) -> Iterable[Setting]:
    """Every way of setting the things that more than one line could use."""
    loads: dict[int, set[Decimal]] = {}
    users: dict[int, int] = {}
    for line in (line for section in sections for line in section.lines):
        used = {(c.thing, c.load) for c in line if c.thing is not None}
        for thing, load in used:
            loads.setdefault(thing, set()).add(load)
        for thing in {thing for thing, _ in used}:
            users[thing] = users.get(thing, 0) + 1
    shared = [thing for thing in loads if users[thing] > 1]
    for values in product(*(sorted(loads[thing]) for thing in shared)):
        yield dict(zip(shared, values, strict=True))


def _survivors(line: Sequence[Candidate], setting: Setting) -> list[int]:
    """The candidates with the smallest merit under this setting."""
    best: tuple[int, int, int, int, int] | None = None
    kept: list[int] = []
    for n, c in enumerate(line):
        if c.thing is not None and setting.get(c.thing, c.load) != c.load:
            continue
        if best is None or c.merit < best:
            best, kept = c.merit, [n]
        elif c.merit == best:
            kept.append(n)
    return kept


Walk = tuple[int, int, tuple[int, ...]]


def _join(walks: Iterable[Walk]) -> Walk:
    parts = list(walks)
    chosen = tuple(pick for _, _, picks in parts for pick in picks)
    return sum(changes for changes, _, _ in parts), sum(fresh for _, fresh, _ in parts), chosen


def _walk(section: Section, kept: Sequence[Sequence[int]]) -> Walk:
    """Fewest implement changes, then least news, then option order: a dynamic program from each start."""
    return min(_walk_from(section, kept, start) for start in kept[0]) if kept else (0, 0, ())


def _walk_from(section: Section, kept: Sequence[Sequence[int]], start: int) -> Walk:
    lines = section.lines
    first = lines[0][start]
    states: dict[int, Walk] = {start: (0, first.fresh, (start,))}
    for n in range(1, len(kept)):
        states = {here: _step(lines[n - 1], states, lines[n][here], here) for here in kept[n]}
    if not section.ring or len(kept) == 1:
        return min(states.values())
    return min(
        (changes + _changes(lines[-1][end].held, first.held), fresh, chosen)
        for end, (changes, fresh, chosen) in states.items()
    )


def _step(before: Sequence[Candidate], states: Mapping[int, Walk], to: Candidate, here: int) -> Walk:
    return min(
        (changes + _changes(before[at].held, to.held), fresh + to.fresh, (*chosen, here))
        for at, (changes, fresh, chosen) in states.items()
    )
