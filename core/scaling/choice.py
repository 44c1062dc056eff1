"""The best choice for all lines of a block at once: exact, and equal to brute force always (design 6.4).

A block's version is valued by a tuple of whole numbers, compared in this order:

1. lines without a safe option
2. misfit beyond tolerance: the worst line, then the sum
3. distance from what was written, summed
4. breathing: lines out of the person's reach
5. neighbouring lines with the same movement: a stand-in brings no swings beside swings
6. remaining misfit, summed
7. implement changes between neighbouring lines, the round closing on itself
8. lines that differ from last time's choice
9. the order of the options

Lines meet in three places only: a thing with one setting per block (an adjustable, a filled backpack), the same
movement and a change of implement between neighbours. So the settings are enumerated, 1-4 are minima of each line
alone (the smallest worst line and the smallest sums are reached together), and a walk round the ring decides 5-9.
"""

from collections.abc import Collection, Iterable, Mapping, Sequence
from decimal import Decimal
from functools import cached_property
from itertools import pairwise, product
from typing import NamedTuple

# How much of a merit is a minimum of each line alone.
ALONE = 4

Merit = tuple[int, int, int, int, int]
Setting = Sequence[tuple[int, Decimal]]


class Candidate(NamedTuple):
    """One option of a line, reduced to what decides.

    `merit`: (unsafe, beyond, distance, breathing, misfit). `held`: what is in the hands, None if nothing;
    equal values need no change. `thing`, `load`: the shared thing it uses, and at which setting. `kind`: the
    movement, None where repeating it beside itself is no matter.
    """

    merit: Merit
    held: object = None
    fresh: int = 0
    thing: int | None = None
    load: Decimal = Decimal(0)
    kind: object = None


class Section(NamedTuple):
    """Lines done one after the other; `ring`: the last is followed by the first again."""

    lines: Sequence[Sequence[Candidate]]
    ring: bool = True


Value = tuple[int, int, int, int, int, int, int, int, int, tuple[int, ...]]


def choose(sections: Sequence[Section]) -> tuple[int, ...]:
    """The index of the chosen candidate of every line, section after section.

    Every line needs a candidate that uses no shared thing (rest is one).
    """
    tables = _tables(sections)
    every = [table for row in tables for table in row]
    best: Value | None = None
    for setting in _settings(every):
        kept = [[table.survivors(setting) for table in row] for row in tables]
        rows = [
            [line[n] for n in some]
            for section, row in zip(sections, kept, strict=True)
            for line, some in zip(section.lines, row, strict=True)
        ]
        head = _sum([row[0].merit for row in rows])
        if best is not None and (*head, 0, _least_misfit(rows)) > best:
            continue
        walks = (_walk(section, row) for section, row in zip(sections, kept, strict=True))
        value = (*head, *_join(walks))
        if best is None or value < best:
            best = value
    assert best is not None
    return best[9]


def value_of(sections: Sequence[Section], chosen: Sequence[int]) -> Value:
    """The value of one choice for every line, straight from the definition above."""
    rest = iter(chosen)
    picks = [[line[next(rest)] for line in section.lines] for section in sections]
    everyone = [pick for section in picks for pick in section]
    pairs = [
        pair
        for section, row in zip(sections, picks, strict=True)
        for pair in _neighbours(row, ring=section.ring)
    ]
    return (
        *_sum([pick.merit for pick in everyone]),
        sum(_differs(one.kind, other.kind, equal=True) for one, other in pairs),
        sum(pick.merit[ALONE] for pick in everyone),
        sum(_differs(one.held, other.held, equal=False) for one, other in pairs),
        sum(pick.fresh for pick in everyone),
        tuple(chosen),
    )


def _sum(merits: Sequence[Merit]) -> tuple[int, int, int, int, int]:
    unsafe, beyond, distance, breathing, _ = zip(*merits, strict=True)
    return sum(unsafe), max(beyond), sum(beyond), sum(distance), sum(breathing)


def _neighbours(row: Sequence[Candidate], *, ring: bool) -> Iterable[tuple[Candidate, Candidate]]:
    yield from pairwise(row)
    if ring and len(row) > 1:
        yield row[-1], row[0]


def _differs(one: object, other: object, *, equal: bool) -> int:
    """1 where two things that are there are equal, or aren't."""
    return int(one is not None and other is not None and (one == other) is equal)


Group = tuple[tuple[int, ...], list[int]]

# What meets no equal on another line, whatever it is.
UNMET = object()


class _Met:
    """Which kinds and things in the hands stand on more than one line; looked up only where it matters."""

    def __init__(self, lines: Sequence[Sequence[Candidate]]) -> None:
        self._lines = lines

    @cached_property
    def kinds(self) -> set[object]:
        return _on_several([{one.kind for one in line} for line in self._lines])

    @cached_property
    def held(self) -> set[object]:
        return _on_several([{one.held for one in line} for line in self._lines])

    def as_met(self, one: Candidate) -> tuple[object, object]:
        """What counts of a candidate where neighbours are compared."""
        kind = one.kind if one.kind is None or one.kind in self.kinds else UNMET
        held = one.held if one.held is None or one.held in self.held else UNMET
        return kind, held


def _on_several(sets: Sequence[set[object]]) -> set[object]:
    seen: set[object] = set()
    several: set[object] = set()
    for one in sets:
        several |= seen & one
        seen |= one
    return several


class _Table:
    """A line's best candidates: those that share nothing, and those of each setting that are as good."""

    def __init__(self, line: Sequence[Candidate], solo: Collection[int], met: _Met) -> None:
        """`solo`: things that no other line could use, so they are shared with nobody."""
        self.line = line
        self._met = met
        self.free = _best_of(
            line, [n for n, one in enumerate(line) if one.thing is None or one.thing in solo]
        )
        self.shared = self._shared(solo)
        self._kept: dict[tuple[tuple[int, Decimal], ...], list[int]] = {}

    def _shared(self, solo: Collection[int]) -> dict[tuple[int, Decimal], Group]:
        by_setting: dict[tuple[int, Decimal], list[int]] = {}
        for n, one in enumerate(self.line):
            if one.thing is not None and one.thing not in solo and one.merit[:ALONE] <= self.free[0]:
                by_setting.setdefault((one.thing, one.load), []).append(n)
        return {at: _best_of(self.line, some) for at, some in by_setting.items()}

    def survivors(self, setting: Setting) -> list[int]:
        """The candidates that have the line's smallest merit alone under this setting, in their order.

        Of those that meet their neighbours alike only the best is kept.
        """
        used = tuple(at for at in setting if at in self.shared) if self.shared else ()
        if used not in self._kept:
            self._kept[used] = self._survivors([self.free, *(self.shared[at] for at in used)])
        return self._kept[used]

    def _survivors(self, groups: Sequence[Group]) -> list[int]:
        best = min(merit for merit, _ in groups)
        some = [n for merit, members in groups if merit == best for n in members]
        if len(some) == 1:
            return some
        kept: dict[tuple[object, object], tuple[int, int, int]] = {}
        for n in some:
            one = self.line[n]
            ranked, meets = (one.merit[ALONE], one.fresh, n), self._met.as_met(one)
            if meets not in kept or ranked < kept[meets]:
                kept[meets] = ranked
        return sorted(n for _, _, n in kept.values())


def _tables(sections: Sequence[Section]) -> list[list[_Table]]:
    lines = [line for section in sections for line in section.lines]
    users: dict[int, int] = {}
    for line in lines:
        for thing in {one.thing for one in line if one.thing is not None}:
            users[thing] = users.get(thing, 0) + 1
    solo = {thing for thing, count in users.items() if count == 1}
    met = _Met(lines)
    return [[_Table(line, solo, met) for line in section.lines] for section in sections]


def _best_of(line: Sequence[Candidate], some: Sequence[int]) -> Group:
    merits = [line[n].merit[:ALONE] for n in some]
    best = min(merits)
    return best, [n for n, merit in zip(some, merits, strict=True) if merit == best]


def _settings(tables: Sequence[_Table]) -> Iterable[Setting]:
    """Every way of setting the things that any line could use."""
    loads: dict[int, set[Decimal]] = {}
    for table in tables:
        for thing, load in table.shared:
            loads.setdefault(thing, set()).add(load)
    if not loads:
        yield ()
        return
    for values in product(*(sorted(settings) for settings in loads.values())):
        yield list(zip(loads, values, strict=True))


def _least_misfit(rows: Sequence[Sequence[Candidate]]) -> int:
    """What the misfit of a setting can't be under."""
    return sum(min(one.merit[ALONE] for one in row) for row in rows)


# Repeated neighbours, misfit, changes of implement, news, and the way taken.
Walk = tuple[int, int, int, int, tuple[int, ...]]


def _join(walks: Iterable[Walk]) -> Walk:
    parts = list(walks)
    if len(parts) == 1:
        return parts[0]
    repeats, misfit, changes, fresh, chosen = zip(*parts, strict=True)
    return sum(repeats), sum(misfit), sum(changes), sum(fresh), tuple(pick for one in chosen for pick in one)


def _walk(section: Section, kept: Sequence[Sequence[int]]) -> Walk:
    """The best way through the lines: a dynamic program from each start."""
    if not kept:
        return 0, 0, 0, 0, ()
    if all(len(some) == 1 for some in kept):
        return _only_way(section, [some[0] for some in kept])
    return min(_walk_from(section, kept, start) for start in kept[0])


def _only_way(section: Section, chosen: Sequence[int]) -> Walk:
    row = [line[n] for line, n in zip(section.lines, chosen, strict=True)]
    repeats = changes = 0
    for one, other in _neighbours(row, ring=section.ring):
        repeats += _differs(one.kind, other.kind, equal=True)
        changes += _differs(one.held, other.held, equal=False)
    return (
        repeats,
        sum(one.merit[ALONE] for one in row),
        changes,
        sum(one.fresh for one in row),
        tuple(chosen),
    )


def _walk_from(section: Section, kept: Sequence[Sequence[int]], start: int) -> Walk:
    lines = section.lines
    first = lines[0][start]
    states: dict[int, Walk] = {start: (0, first.merit[ALONE], 0, first.fresh, (start,))}
    for n in range(1, len(kept)):
        states = {here: _step(lines[n - 1], states, lines[n][here], here) for here in kept[n]}
    if not section.ring or len(kept) == 1:
        return min(states.values())
    return min(_closed(lines[-1][end], first, walk) for end, walk in states.items())


def _closed(last: Candidate, first: Candidate, walk: Walk) -> Walk:
    repeats, misfit, changes, fresh, chosen = walk
    repeats += _differs(last.kind, first.kind, equal=True)
    changes += _differs(last.held, first.held, equal=False)
    return repeats, misfit, changes, fresh, chosen


def _step(before: Sequence[Candidate], states: Mapping[int, Walk], to: Candidate, here: int) -> Walk:
    return min(
        (
            repeats + _differs(before[at].kind, to.kind, equal=True),
            misfit + to.merit[ALONE],
            changes + _differs(before[at].held, to.held, equal=False),
            fresh + to.fresh,
            (*chosen, here),
        )
        for at, (repeats, misfit, changes, fresh, chosen) in states.items()
    )
