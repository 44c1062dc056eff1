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

Merit = tuple[int, int, int, int, int]
Setting = Sequence[tuple[int, Decimal]]


class Candidate(NamedTuple):
    """One option of a line, reduced to what decides.

    `merit`: (unsafe, beyond, distance, breathing, misfit). `held`: what is in the hands, None if nothing;
    equal values need no change. `thing`, `load`: the shared thing it uses, and at which setting.
    """

    merit: Merit
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
    """The index of the chosen candidate of every line, section after section.

    Every line needs a candidate that uses no shared thing (rest is one).
    """
    tables = [[_table(line) for line in section.lines] for section in sections]
    every = [table for section in tables for table in section]
    best: Value | None = None
    for setting in _settings(every):
        head = _sum([_best_merit(table, setting) for table in every])
        if best is not None and head > best[:6]:
            continue
        walks = (
            _walk(section, [_survivors(table, setting) for table in row])
            for section, row in zip(sections, tables, strict=True)
        )
        value = (*head, *_join(walks))
        if best is None or value < best:
            best = value
    assert best is not None
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


def _sum(merits: Sequence[Merit]) -> tuple[int, int, int, int, int, int]:
    unsafe, beyond, distance, breathing, misfit = (list(part) for part in zip(*merits, strict=True))
    return sum(unsafe), max(beyond), sum(beyond), sum(distance), sum(breathing), sum(misfit)


def _neighbours(row: Sequence[Candidate], *, ring: bool) -> Iterable[tuple[Candidate, Candidate]]:
    yield from pairwise(row)
    if ring and len(row) > 1:
        yield row[-1], row[0]


def _changes(one: object, other: object) -> int:
    return int(one is not None and other is not None and one != other)


class _Table(NamedTuple):
    """A line's best candidates: those that share nothing, and those of each setting that are as good."""

    merit: Merit
    free: list[int]
    shared: dict[tuple[int, Decimal], tuple[Merit, list[int]]]


def _table(line: Sequence[Candidate]) -> _Table:
    """What is worse than the best free candidate can never be chosen, whatever the setting."""
    merit = min(c.merit for c in line if c.thing is None)
    shared: dict[tuple[int, Decimal], tuple[Merit, list[int]]] = {}
    for n, c in enumerate(line):
        if c.thing is None or c.merit > merit:
            continue
        known = shared.get((c.thing, c.load))
        if known is None or c.merit < known[0]:
            shared[c.thing, c.load] = c.merit, [n]
        elif c.merit == known[0]:
            known[1].append(n)
    return _Table(merit, [n for n, c in enumerate(line) if c.thing is None and c.merit == merit], shared)


def _settings(tables: Sequence[_Table]) -> Iterable[Setting]:
    """Every way of setting the things that any line could use."""
    loads: dict[int, set[Decimal]] = {}
    for table in tables:
        for thing, load in table.shared:
            loads.setdefault(thing, set()).add(load)
    for values in product(*(sorted(settings) for settings in loads.values())):
        yield list(zip(loads, values, strict=True))


def _best_merit(table: _Table, setting: Setting) -> Merit:
    """The smallest merit of a line under this setting."""
    best = table.merit
    for at in setting:
        known = table.shared.get(at)
        if known is not None and known[0] < best:
            best = known[0]
    return best


def _survivors(table: _Table, setting: Setting) -> list[int]:
    """The candidates of a line that have the smallest merit under this setting, in their order."""
    best = _best_merit(table, setting)
    kept = table.free if table.merit == best else []
    for at in setting:
        known = table.shared.get(at)
        if known is not None and known[0] == best:
            kept = kept + known[1]
    return sorted(kept)


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
