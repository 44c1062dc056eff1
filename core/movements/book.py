"""What lints look at: the whole catalogue, the wrong included."""

from collections.abc import Iterable, Iterator

from core.movements.values import Implement, Movement


class Book:
    """Variants by id, and which are easier or harder."""

    def __init__(self, movements: Iterable[Movement], implements: Iterable[Implement]) -> None:
        self.movements = tuple(movements)
        self.implements = {thing.id: thing for thing in implements}
        self.implement_rows = tuple(implements)
        self.variants = {f"{one.id}/{way.id}": (one, way) for one in self.movements for way in one.variants}

    def file_of(self, name: str) -> str:
        """The file in which a variant, movement or implement stands; a pattern has its own."""
        movement = next((one for one in self.movements if one.id == name.split("/", maxsplit=1)[0]), None)
        if movement is not None:
            return movement.file
        return "implements.toml" if name in self.implements else f"{name}.toml"

    def easier(self, variant_id: str) -> Iterator[str]:
        """Known easier ways, the unknown left to their own lint."""
        return (way for way in self.variants[variant_id][1].easier if way in self.variants)

    def instead(self, variant_id: str) -> tuple[str, ...]:
        """What stands in for a variant off the ladder, the unknown too."""
        movement, variant = self.variants[variant_id]
        return movement.instead_of(variant)

    def all_easier(self, variant_id: str) -> set[str]:
        """Everything down the easier ways, itself only if they lead in a circle."""
        found: set[str] = set()
        waiting = list(self.easier(variant_id))
        while waiting:
            here = waiting.pop()
            if here not in found:
                found.add(here)
                waiting += self.easier(here)
        return found
