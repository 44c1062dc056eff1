"""The best choice for all lines of a block at once: exact, and equal to brute force always.

What a choice costs is a sum of whole points: what each line costs by itself, what neighbours add, the round closing on
itself (the same movement side by side, another thing in the hands), and what lines add wherever they are done (a part
that another trains already, a joint that another tires for the same reason, one movement done as two). Of choices that
cost the same the first in the order of the options is taken. Lines meet in one more place: a thing with one setting per
block (an adjustable, a filled bag) is set alike wherever it is used. So the settings are enumerated, and a search with
a bound decides the rest.
"""

from collections.abc import Collection, Iterable, Sequence
from itertools import combinations, pairwise, product
from typing import NamedTuple

# Of every shared thing that is used, how it is set.
Setting = dict[int, float]
At = tuple[int, float]

# Points, and the index of the candidate of every line.
Walk = tuple[int, tuple[int, ...]]


class Candidate(NamedTuple):
    """One option of a line, reduced to what decides.

    `cost`: by itself. `kind`: the movement. `held`: what is in the hands, None if nothing; equal values need no change.
    `thing`, `load`: the shared thing it uses, and how it is set. `part`: what it trains most; `adds`: that isn't what
    its line is for. `joint`: for whose sake it isn't what is written, or goes easy. `asked`: the movement of its line.
    `line`: all of its line but the amount; `done`: the way, and what it is done with.
    """

    cost: int
    kind: object = None
    held: object = None
    thing: int | None = None
    load: float = 0.0
    part: object = None
    adds: bool = False
    joint: object = None
    asked: object = None
    line: object = None
    done: object = None


class Section(NamedTuple):
    """Lines done one after the other; `ring`: the last is followed by the first again."""

    lines: Sequence[Sequence[Candidate]]
    ring: bool = True


class Meeting(NamedTuple):
    """What it costs that neighbours repeat a movement, or need another thing in the hands.

    `heaps`: that two lines of a section are done as one movement, and again if one of them isn't for the part that
    both train; `strains`: that they meet in a joint; `parted`: that one movement is asked for in both, and done as two,
    or the same line in two ways.
    """

    repeats: int
    change: int
    heaps: int = 0
    strains: int = 0
    parted: int = 0

    def between(self, one: Candidate, other: Candidate) -> int:
        """What one adds that is done right after the other."""
        repeated = one.kind is not None and one.kind == other.kind and not _ask_for_one(one, other)
        changed = one.held is not None and other.held is not None and one.held != other.held
        return self.repeats * repeated + self.change * changed

    def anywhere(self, one: Candidate, other: Candidate) -> int:
        """What two lines of a section add, wherever they are."""
        strained = one.joint is not None and one.joint == other.joint
        if _ask_for_one(one, other):
            is_parted = one.kind != other.kind or (one.line == other.line and one.done != other.done)
            return self.parted * is_parted + self.strains * strained
        same_movement = one.kind is not None and one.kind == other.kind
        if not (one.adds or other.adds):
            return self.heaps * same_movement + self.strains * strained
        same_part = one.part is not None and one.part == other.part
        return self.heaps * (same_part + same_movement) + self.strains * strained


def _ask_for_one(one: Candidate, other: Candidate) -> bool:
    """Whether their lines ask for the same movement: a minute hard and a minute easy of it."""
    return one.asked is not None and one.asked == other.asked


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
    """The lines of a section. `met`: how the other lines see the candidates of each."""

    def __init__(self, section: Section, meeting: Meeting) -> None:
        self._lines, self._ring, self._meeting = section.lines, section.ring, meeting
        kinds, held, parts, joints, lines = (
            _on_several([{getattr(one, field) for one in line} for line in section.lines])
            for field in ("kind", "held", "part", "joint", "line")
        )
        self._met = [
            [
                (
                    one.kind in kinds and one.kind,
                    one.held if one.held in held else one.held and UNMET,
                    one.part in parts and one.part,
                    one.adds,
                    one.joint in joints and one.joint,
                    one.line in lines and one.done,
                )
                for one in line
            ]
            for line in section.lines
        ]

    def best(self, setting: Setting) -> Walk:
        """The cheapest way through the lines under this setting: each line's cheapest, if they don't meet."""
        usable = [self._usable(line, setting) for line in self._lines]
        first = [self._cheapest(place, row) for place, row in enumerate(usable)]
        least = [line[n].cost for line, n in zip(self._lines, first, strict=True)]
        row = [line[n] for line, n in zip(self._lines, first, strict=True)]
        most = sum(least) + self._meetings(row)
        if most == sum(least):
            return most, tuple(first)
        slack = most - sum(least)
        kept = [self._kept(n, row, least[n] + slack) for n, row in enumerate(usable)]
        return self._search(kept, least, most)

    def _cheapest(self, place: int, usable: Sequence[int]) -> int:
        """The first of the cheapest."""
        costs = [self._lines[place][n].cost for n in usable]
        return usable[costs.index(min(costs))]

    def _meetings(self, row: Sequence[Candidate]) -> int:
        near = sum(self._meeting.between(*pair) for pair in neighbours(row, ring=self._ring))
        return near + sum(self._meeting.anywhere(*pair) for pair in combinations(row, 2))

    @staticmethod
    def _usable(line: Sequence[Candidate], setting: Setting) -> list[int]:
        return [
            n
            for n, one in enumerate(line)
            if one.thing is None or setting.get(one.thing, one.load) == one.load
        ]

    def _kept(self, place: int, usable: Sequence[int], most: int) -> list[int]:
        """The candidates that others could make the best: of those that meet them alike only the first cheapest."""
        line, met = self._lines[place], self._met[place]
        kept: dict[tuple[object, ...], int] = {}
        for n in usable:
            cost = line[n].cost
            if cost <= most and (met[n] not in kept or cost < line[kept[met[n]]].cost):
                kept[met[n]] = n
        return sorted(kept.values())

    def _search(self, rows: Sequence[Sequence[int]], least: Sequence[int], most: int) -> Walk:
        """The first of the cheapest choices: line by line, as long as the rest may still cost no more than the best."""
        rest = [sum(least[place + 1 :]) for place in range(len(rows))]
        best: Walk = most + 1, ()
        done: list[Candidate] = []

        def go_on(cost: int, chosen: tuple[int, ...]) -> None:
            nonlocal best
            place = len(done)
            if place == len(rows):
                best = cost, chosen
                return
            for n in rows[place]:
                one = self._lines[place][n]
                so_far = cost + one.cost + self._added(done, one)
                if so_far + rest[place] < best[0]:
                    done.append(one)
                    go_on(so_far, (*chosen, n))
                    done.pop()

        go_on(0, ())
        return best

    def _added(self, done: Sequence[Candidate], one: Candidate) -> int:
        """What it adds to those before it; the last of a ring to the first as well."""
        if not done:
            return 0
        added = self._meeting.between(done[-1], one)
        if self._ring and len(done) + 1 == len(self._lines):
            added += self._meeting.between(one, done[0])
        return added + sum([self._meeting.anywhere(other, one) for other in done])


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
