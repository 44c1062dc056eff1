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

from collections.abc import Collection, Iterable, Sequence
from functools import cached_property
from itertools import product
from typing import NamedTuple

from core.scaling.ring import Alone, Candidate, Section, Walk, differs, join, neighbours, walk

Head = tuple[int, int, int, int, int]

# A shared thing and how it is set; a setting sets them all.
At = tuple[int, float]
Setting = tuple[At, ...]


Value = tuple[int, int, int, int, int, int, int, int, int, tuple[int, ...]]


def choose(sections: Sequence[Section]) -> tuple[int, ...]:
    """The index of the chosen candidate of every line, section after section.

    Every line needs a candidate that uses no shared thing (rest is one).
    """
    obvious = _obvious(sections)
    if obvious is not None:
        return obvious
    tables = _tables(sections)
    best: Walk | None = None
    for least, setting in _best_settings([table for row in tables for table in row]):
        if best is not None and (0, least) > best[:2]:
            break
        kept = [[table.survivors(setting) for table in row] for row in tables]
        way = join([walk(section, some) for section, some in zip(sections, kept, strict=True)])
        if best is None or way < best:
            best = way
    assert best is not None
    return best[4]


def _obvious(sections: Sequence[Section]) -> tuple[int, ...] | None:
    """The choice where each line has one best candidate by itself, and they set what they share alike; else None."""
    chosen: list[int] = []
    settings: dict[int, float] = {}
    for section in sections:
        for line in section.lines:
            alone = [one.alone for one in line]
            best = min(alone)
            if alone.count(best) > 1:
                return None
            one = line[alone.index(best)]
            if one.thing is not None and settings.setdefault(one.thing, one.load) != one.load:
                return None
            chosen.append(alone.index(best))
    return tuple(chosen)


def value_of(sections: Sequence[Section], chosen: Sequence[int]) -> Value:
    """The value of one choice for every line, straight from the definition above."""
    rest = iter(chosen)
    picks = [[line[next(rest)] for line in section.lines] for section in sections]
    everyone = [pick for section in picks for pick in section]
    pairs = [
        pair
        for section, row in zip(sections, picks, strict=True)
        for pair in neighbours(row, ring=section.ring)
    ]
    return (
        *_sum(pick.alone for pick in everyone),
        sum(differs(one.kind, other.kind, equal=True) for one, other in pairs),
        sum(pick.misfit for pick in everyone),
        sum(differs(one.held, other.held, equal=False) for one, other in pairs),
        sum(pick.fresh for pick in everyone),
        tuple(chosen),
    )


def _sum(merits: Iterable[Alone]) -> Head:
    unsafe, beyond, distance, breathing = zip(*merits, strict=True)
    return sum(unsafe), max(beyond), sum(beyond), sum(distance), sum(breathing)


# The smallest merit alone among some candidates of a line, and the least misfit within tolerance that goes with it.
Rank = tuple[Alone, int]


class _Group(NamedTuple):
    """The best candidates of a line among some: their rank, and the places of all that have its merit alone."""

    rank: Rank
    members: list[int]


# What meets no equal on another line, whatever it is.
UNMET = object()


class _Met:
    """Which kinds and things in the hands stand on more than one line; looked up only where it matters."""

    def __init__(self, lines: Sequence[Sequence[Candidate]]) -> None:
        self._lines = lines

    @cached_property
    def kinds(self) -> set[object]:
        return _on_several([{one.kind for one in line} for line in self._lines]) | {None}

    @cached_property
    def held(self) -> set[object]:
        return _on_several([{one.held for one in line} for line in self._lines]) | {None}

    def as_met(self, one: Candidate) -> tuple[object, object]:
        """What counts of a candidate where neighbours are compared."""
        return one.kind if one.kind in self.kinds else UNMET, one.held if one.held in self.held else UNMET


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
        self._kept: dict[Setting, list[int]] = {}
        self._distinct: dict[At | None, list[int]] = {}

    def _shared(self, solo: Collection[int]) -> dict[At, _Group]:
        most, by_setting = self.free.rank[0], dict[At, list[int]]()
        for n, one in enumerate(self.line):
            if one.thing is not None and one.thing not in solo and one.alone <= most:
                by_setting.setdefault((one.thing, one.load), []).append(n)
        return {at: _best_of(self.line, some) for at, some in by_setting.items()}

    def rank(self, setting: Setting) -> Rank:
        """The line's best rank under this setting."""
        return min([self.free.rank, *(self.shared[at].rank for at in setting if at in self.shared)])

    def survivors(self, setting: Setting) -> list[int]:
        """The candidates that have the line's smallest merit alone under this setting, in their order.

        Of those that meet their neighbours alike only the best is kept.
        """
        used = tuple(at for at in setting if at in self.shared) if self.shared else ()
        if used not in self._kept:
            self._kept[used] = self._survivors(used)
        return self._kept[used]

    def _survivors(self, used: Setting) -> list[int]:
        best, _ = self.rank(used)
        groups = [at for at in used if self.shared[at].rank[0] == best]
        some = self._of(None) if self.free.rank[0] == best else []
        if not groups:
            return some
        return self._distinct_of([*some, *(n for at in groups for n in self._of(at))])

    def _of(self, at: At | None) -> list[int]:
        """What is distinct of those that share nothing, or of those at one setting."""
        if at not in self._distinct:
            group = self.free if at is None else self.shared[at]
            self._distinct[at] = self._distinct_of(group.members)
        return self._distinct[at]

    def _distinct_of(self, some: list[int]) -> list[int]:
        if len(some) == 1:
            return some
        kept: dict[tuple[object, object], tuple[int, int, int]] = {}
        for n in some:
            one = self.line[n]
            ranked, meets = (one.misfit, one.fresh, n), self._met.as_met(one)
            if meets not in kept or ranked < kept[meets]:
                kept[meets] = ranked
        return sorted([n for _, _, n in kept.values()])


def _tables(sections: Sequence[Section]) -> list[list[_Table]]:
    lines = [line for section in sections for line in section.lines]
    users: dict[int, int] = {}
    for line in lines:
        for thing in {one.thing for one in line if one.thing is not None}:
            users[thing] = users.get(thing, 0) + 1
    solo = {thing for thing, count in users.items() if count == 1}
    met = _Met(lines)
    return [[_Table(line, solo, met) for line in section.lines] for section in sections]


def _best_of(line: Sequence[Candidate], some: Sequence[int]) -> _Group:
    best = min([line[n].alone for n in some])
    members = [n for n in some if line[n].alone == best]
    return _Group((best, min([line[n].misfit for n in members])), members)


def _best_settings(tables: Sequence[_Table]) -> Sequence[tuple[int, Setting]]:
    """The settings of what any line could use at which parts 1-4 are smallest, those of the least misfit first."""
    rest = [table.free.rank for table in tables if not table.shared]
    movable = [table for table in tables if table.shared]
    found = []
    for setting in _settings(movable):
        ranks = [*rest, *(table.rank(setting) for table in movable)]
        found.append((_sum(alone for alone, _ in ranks), sum(least for _, least in ranks), setting))
    best = min(found)[0]
    return sorted((least, setting) for head, least, setting in found if head == best)


def _settings(tables: Sequence[_Table]) -> Iterable[Setting]:
    """Every way of setting the things that any line could use."""
    loads: dict[int, set[float]] = {}
    for table in tables:
        for thing, load in table.shared:
            loads.setdefault(thing, set()).add(load)
    for values in product(*(sorted(settings) for settings in loads.values())):
        yield tuple(zip(loads, values, strict=True))
