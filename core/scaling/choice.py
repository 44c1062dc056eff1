"""The best choice for all lines of a block at once: exact, and equal to brute force always (coach.md 2).

What a choice costs is a sum of whole points: what each line costs by itself, and what neighbours add, the round closing
on itself: the same movement side by side, and another thing in the hands. Of choices that cost the same the first in
the order of the options is taken. Lines meet in one more place: a thing with one setting per block (an adjustable, a
filled bag) is set alike wherever it is used. So the settings are enumerated, and a walk round
the ring decides the rest.
"""

from collections.abc import Collection, Iterable, Sequence
from itertools import pairwise, product
from typing import NamedTuple

# Of every shared thing that is used, how it is set.
Setting = dict[int, float]
At = tuple[int, float]

# Points, and the index of the candidate of every line.
Walk = tuple[int, tuple[int, ...]]


class Candidate(NamedTuple):
    """One option of a line, reduced to what decides.

    `cost`: by itself. `kind`: the movement, None where repeating it beside itself is no matter. `held`: what is in the
    hands, None if nothing; equal values need no change. `thing`, `load`: the shared thing it uses, and how it is set.
    """

    cost: int
    kind: object = None
    held: object = None
    thing: int | None = None
    load: float = 0.0


class Section(NamedTuple):
    """Lines done one after the other; `ring`: the last is followed by the first again."""

    lines: Sequence[Sequence[Candidate]]
    ring: bool = True


class Meeting(NamedTuple):
    """What it costs that neighbours repeat a movement, or need another thing in the hands."""

    repeats: int
    change: int

    def between(self, one: Candidate, other: Candidate) -> int:
        repeated = one.kind is not None and one.kind == other.kind
        changed = one.held is not None and other.held is not None and one.held != other.held
        return self.repeats * repeated + self.change * changed


def choose(sections: Sequence[Section], meeting: Meeting) -> Walk:
    """What the best choice costs, and the index of the chosen candidate of every line, section after section.

    Every line needs a candidate that uses no shared thing (rest is one).
    """
    best: Walk | None = None
    rounds = [_Round(section, meeting) for section in sections if section.lines]
    for least, setting in _settings(sections):
        if best is not None and least > best[0]:
            break
        way = _joined([one.best(setting) for one in rounds])
        if best is None or way < best:
            best = way
    assert best is not None
    return best


def value_of(sections: Sequence[Section], chosen: Sequence[int], meeting: Meeting) -> Walk:
    """What one choice for every line costs, straight from the definition above."""
    rest = iter(chosen)
    cost = 0
    for section in sections:
        row = [line[next(rest)] for line in section.lines]
        cost += sum(one.cost for one in row)
        cost += sum(meeting.between(*pair) for pair in neighbours(row, ring=section.ring))
    return cost, tuple(chosen)


def neighbours(row: Sequence[Candidate], *, ring: bool) -> Iterable[tuple[Candidate, Candidate]]:
    """Each line and the one that is done after it."""
    yield from pairwise(row)
    if ring and len(row) > 1:
        yield row[-1], row[0]


def _settings(sections: Sequence[Section]) -> list[tuple[int, Setting]]:
    """Every way of setting the things that lines could use, with the least that it may cost, the least first."""
    lines = [line for section in sections for line in section.lines]
    loads = _loads_of_shared(lines)
    cheapest = [_cheapest(line, loads.keys()) for line in lines]
    every = (dict(zip(loads, values, strict=True)) for values in product(*map(sorted, loads.values())))
    bounded = [(sum(_least(line, setting) for line in cheapest), setting) for setting in every]
    return sorted(bounded, key=lambda one: one[0])


def _loads_of_shared(lines: Sequence[Sequence[Candidate]]) -> dict[int, set[float]]:
    """What more than one line could use, and how it could be set."""
    used = [{one.thing for one in line if one.thing is not None} for line in lines]
    shared = {
        thing: set[float]() for things in used for thing in things if sum(thing in some for some in used) > 1
    }
    for line in lines:
        for one in line:
            if one.thing in shared:
                shared[one.thing].add(one.load)
    return shared


def _cheapest(line: Sequence[Candidate], shared: Collection[int]) -> dict[At | None, int]:
    """The least that a line costs with nothing shared, under None, and with each setting of a shared thing."""
    found: dict[At | None, int] = {}
    for one in line:
        at = (one.thing, one.load) if one.thing is not None and one.thing in shared else None
        found[at] = min(one.cost, found.get(at, one.cost))
    return found


def _least(line: dict[At | None, int], setting: Setting) -> int:
    return min(line[at] for at in (None, *setting.items()) if at in line)


class _Round:
    """The lines of a section. `met`: how the neighbours of each line see its candidates."""

    def __init__(self, section: Section, meeting: Meeting) -> None:
        self._lines, self._ring, self._meeting = section.lines, section.ring, meeting
        kinds = _on_several([{one.kind for one in line} for line in section.lines])
        held = _on_several([{one.held for one in line} for line in section.lines])
        self._met = [
            [
                (one.kind in kinds and one.kind, one.held if one.held in held else one.held and UNMET)
                for one in line
            ]
            for line in section.lines
        ]

    def best(self, setting: Setting) -> Walk:
        """The cheapest way through the lines under this setting: from each start, always the cheapest so far."""
        rows = [self._kept(n, setting) for n in range(len(self._lines))]
        return min([self._from(start, rows) for start in rows[0]])

    def _kept(self, place: int, setting: Setting) -> list[int]:
        """The candidates that neighbours could make the best: of those that meet them alike only the first cheapest."""
        line, met = self._lines[place], self._met[place]
        usable = [
            n
            for n, one in enumerate(line)
            if one.thing is None or setting.get(one.thing, one.load) == one.load
        ]
        most = min([line[n].cost for n in usable]) + 2 * (self._meeting.repeats + self._meeting.change)
        kept: dict[tuple[object, object], int] = {}
        for n in usable:
            cost = line[n].cost
            if cost <= most and (met[n] not in kept or cost < line[kept[met[n]]].cost):
                kept[met[n]] = n
        return sorted(kept.values())

    def _from(self, start: int, rows: Sequence[Sequence[int]]) -> Walk:
        lines, between = self._lines, self._meeting.between
        first = lines[0][start]
        states: dict[int, Walk] = {start: (first.cost, (start,))}
        for before, line, row in zip(lines, lines[1:], rows[1:], strict=False):
            states = {
                here: min(
                    [
                        (cost + between(before[at], line[here]) + line[here].cost, (*chosen, here))
                        for at, (cost, chosen) in states.items()
                    ]
                )
                for here in row
            }
        if not self._ring or len(rows) == 1:
            return min(states.values())
        return min(
            [(cost + between(lines[-1][end], first), chosen) for end, (cost, chosen) in states.items()]
        )


# What is in the hands on no other line.
UNMET = object()


def _on_several(sets: Sequence[set[object]]) -> set[object]:
    seen: set[object] = set()
    several: set[object] = set()
    for one in sets:
        several |= seen & one
        seen |= one
    return several


def _joined(parts: Sequence[Walk]) -> Walk:
    costs, chosen = zip(*parts, strict=True)
    return sum(costs), tuple(pick for one in chosen for pick in one)
