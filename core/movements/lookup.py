"""The catalogue in use: by id, by what people type, and by what can stand in for what."""

from collections import deque
from collections.abc import Callable, Iterable, Iterator, Mapping
from functools import cache, cached_property
from pathlib import Path
from typing import NamedTuple, TypeVar

from core.errors import Refusal
from core.movements.lints import Severity, lint
from core.movements.loading import IMPLEMENTS, BrokenCatalogue, read_implements, read_movements
from core.movements.names import key
from core.movements.values import Implement, Movement, Variant
from core.values import Value

FOLDER = Path(__file__).parent / "catalogue"

SAME_MOVEMENT = 3
SAME_PATTERN = 4
NEIGHBOURING_PATTERN = 5

Thing = TypeVar("Thing")


class UnknownMovement(Refusal):
    """No movement, variant or implement has this id."""


class Reach(Value):
    """Something that can stand in. `distance`: 3 variant of the same movement, 4 same pattern, 5 another.

    `steps`: how many edges of the graph lie between; a movement's own variants are one edge apart at most.
    """

    id: str
    distance: int
    steps: int


class Named(NamedTuple):
    """What a spelling means."""

    movement: Movement
    variant: Variant | None


class Catalogue:
    """All movements and implements. Ids of variants are written `movement/variant` (`push-up/knees`)."""

    def __init__(self, movements: Iterable[Movement], implements: Iterable[Implement]) -> None:
        self.movements = tuple(movements)
        self.implements = tuple(implements)
        self._movements = {movement.id: movement for movement in self.movements}
        self._implements = {implement.id: implement for implement in self.implements}
        self._pairs = {
            f"{movement.id}/{variant.id}": (movement, variant) for movement, variant in self.pairs()
        }
        self._order = {name: place for place, name in enumerate(self._pairs)}
        self._reachable: dict[str, tuple[Reach, ...]] = {}

    def pairs(self) -> Iterator[tuple[Movement, Variant]]:
        """Every variant beside its movement, in catalogue order."""
        return ((movement, variant) for movement in self.movements for variant in movement.variants)

    def ids(self) -> tuple[str, ...]:
        """Every `movement/variant`, in catalogue order."""
        return tuple(self._pairs)

    def knows(self, movement_id: str) -> bool:
        """Whether there is a movement of this id."""
        return movement_id in self._movements

    def movement(self, movement_id: str) -> Movement:
        """Movement of this id; raises UnknownMovement."""
        return _found(self._movements, movement_id)

    def variant(self, variant_id: str) -> tuple[Movement, Variant]:
        """Movement and variant of a `movement/variant` id; raises UnknownMovement."""
        return _found(self._pairs, variant_id)

    def implement(self, implement_id: str) -> Implement:
        """Thing of this id; raises UnknownMovement."""
        return _found(self._implements, implement_id)

    def order(self, variant_id: str) -> int:
        """Place of a variant in the catalogue, from 0: the last tie-break of a choice."""
        return _found(self._order, variant_id)

    def by_name(self, text: str) -> Named | None:
        """Meaning of a typed spelling; no variant where only the movement was named; None if unknown."""
        return self._by_key.get(key(text))

    def implement_by_name(self, text: str) -> Implement | None:
        """Thing that a typed spelling means; None if unknown."""
        return self._implement_by_key.get(key(text))

    def names(self) -> tuple[str, ...]:
        """Every spelling of movements and variants as the catalogue writes it, to look for near ones."""
        return tuple(name for name, _ in self.spellings())

    def spellings(self) -> Iterator[tuple[str, Named]]:
        """Every spelling with what it means."""
        for movement in self.movements:
            yield from ((name, Named(movement, None)) for name in (movement.id, *movement.names))
            for variant in movement.variants:
                yield from ((name, Named(movement, variant)) for name in variant.names)

    def below(self, variant_id: str) -> tuple[str, ...]:
        """All that is easier, down the ladder: what is a step away comes first. Raises UnknownMovement."""
        return tuple(self._climb(variant_id, lambda way: way.easier))

    def above(self, variant_id: str) -> tuple[str, ...]:
        """All that is harder, up the ladder: what is a step away comes first. Raises UnknownMovement."""
        return tuple(self._climb(variant_id, lambda way: way.harder))

    def rungs(self, variant_id: str, other_id: str) -> int | None:
        """Steps of the ladder from one variant up to the other, negative where it is easier.

        None where no steps lead only up or only down. Raises UnknownMovement.
        """
        if variant_id == other_id:
            return 0
        down = self._climb(variant_id, lambda way: way.easier).get(other_id)
        return -down if down else self._climb(variant_id, lambda way: way.harder).get(other_id)

    def _climb(self, start: str, onward: Callable[[Variant], tuple[str, ...]]) -> dict[str, int]:
        steps = {start: 0}
        waiting = deque([start])
        while waiting:
            here = waiting.popleft()
            for near in onward(self.variant(here)[1]):
                if near in self._pairs and near not in steps:
                    steps[near] = steps[here] + 1
                    waiting.append(near)
        del steps[start]
        return steps

    def instead(self, variant_id: str) -> tuple[str, ...]:
        """What stands in off the ladder, the best first. Raises UnknownMovement."""
        movement, variant = self.variant(variant_id)
        return movement.instead_of(variant)

    def reachable(self, variant_id: str) -> tuple[Reach, ...]:
        """All that can stand in for a variant, itself left out: nearest first, then catalogue order.

        Ways lead over easier, harder and the variants of one movement, and cross into another pattern at most
        once: by the variant's `instead`, if there are any, else by any of its pattern. What is done sitting
        leads on to nothing else, unless it is where one starts. Raises UnknownMovement.
        """
        if variant_id not in self._reachable:
            self.variant(variant_id)
            self._reachable[variant_id] = self._search(variant_id)
        return self._reachable[variant_id]

    def _search(self, start: str) -> tuple[Reach, ...]:
        home, own = self._pairs[start][0].pattern, self.instead(start)
        steps = {start: 0}
        waiting = deque([start])
        while waiting:
            here = waiting.popleft()
            crossing = here == start or (not own and self._pairs[here][0].pattern is home)
            confined = here != start and self._pairs[here][1].is_on_a_seat
            for near in self._near(here, crossing=crossing):
                if near not in steps and (self._pairs[near][1].is_on_a_seat or not confined):
                    steps[near] = steps[here] + 1
                    waiting.append(near)
        found = [self._reach(start, there, count) for there, count in steps.items() if there != start]
        return tuple(sorted(found, key=lambda reach: (reach.distance, reach.steps, self._order[reach.id])))

    def _near(self, variant_id: str, *, crossing: bool) -> Iterator[str]:
        movement, variant = self._pairs[variant_id]
        ways = variant.easier + variant.harder + (self.instead(variant_id) if crossing else ())
        yield from (way for way in ways if way in self._pairs)
        yield from (f"{movement.id}/{sibling.id}" for sibling in movement.variants)

    def _reach(self, start: str, there: str, steps: int) -> Reach:
        mine, theirs = self._pairs[start][0], self._pairs[there][0]
        if mine.id == theirs.id:
            return Reach(id=there, distance=SAME_MOVEMENT, steps=steps)
        same = mine.pattern is theirs.pattern
        return Reach(id=there, distance=SAME_PATTERN if same else NEIGHBOURING_PATTERN, steps=steps)

    @cached_property
    def _by_key(self) -> dict[str, Named]:
        return {key(name): meaning for name, meaning in self.spellings()}

    @cached_property
    def _implement_by_key(self) -> dict[str, Implement]:
        return {
            key(name): thing for thing in self.implements for name in (thing.id, thing.label, *thing.names)
        }


@cache
def catalogue() -> Catalogue:
    """Catalogue that comes with the program, read once. Raises BrokenCatalogue for its form.

    Tests hold that the lints find nothing in it: no start needs to look again.
    """
    return Catalogue(*_read(FOLDER))


def read_catalogue(folder: Path) -> Catalogue:
    """Catalogue of a folder: one file per pattern, and the implements.

    Raises BrokenCatalogue with every problem of form, or, where the form is right, every error of the lints.
    """
    movements, implements = _read(folder)
    errors = [finding for finding in lint(movements, implements) if finding.severity is Severity.ERROR]
    if errors:
        raise BrokenCatalogue(map(str, errors))
    return Catalogue(movements, implements)


def _read(folder: Path) -> tuple[tuple[Movement, ...], tuple[Implement, ...]]:
    return read_movements(folder), read_implements(folder / IMPLEMENTS)


def _found(things: Mapping[str, Thing], wanted: str) -> Thing:
    if wanted not in things:
        raise UnknownMovement(f"There is no {wanted} in the catalogue.")
    return things[wanted]
