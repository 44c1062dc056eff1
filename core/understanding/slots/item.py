"""One thing as it is said, filled mark by mark: its name, how many, its loads, its steps."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from typing import Final

from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.talk.equipment_partners import SHARED
from core.understanding.marks import Mark
from core.understanding.quantities import Quantity
from core.understanding.slots.stretch import Stretch, exact_kg, in_kg, plain

_MOST_OF_ONE: Final = 6


@dataclass
class Item:
    """One thing as it is said.

    `words`: its name as it was typed; `by_times`: counted as `2x20`; `partner`: whose else it is.
    """

    thing: str | None = None
    plural: bool = False
    count: int | None = None
    loads: list[tuple[float, str]] = field(default_factory=list)  # with the unit as it was typed, "" for none
    step: Decimal | None = None
    awaits_step: bool = False
    low: Decimal | None = None
    high: Decimal | None = None
    lacks: bool = False
    filled: bool = False
    adjustable: bool = False
    named_first: bool = False
    by_times: bool = False
    height_cm: Decimal | None = None
    words: str = ""
    partner: str | None = None

    @property
    def is_bare(self) -> bool:
        return self.thing is None and bool(self.loads or self.high)

    @property
    def only_counts(self) -> bool:
        return self.thing is None and not self.loads and self.high is None and self.count is not None

    def loads_of_next(self, stretch: Stretch, at: int) -> list[tuple[float, str]]:
        """`barbell with 120 kg plates`: what stands between a `with` and the next thing is of that one."""
        of = stretch.marked.helps(at - 1, "of_word") is not None
        before = stretch.marked.mark_at[at - 2 if of else at - 1]
        told = self.loads and (self.named_first or len(self.loads) > 1)
        if not (told and before and before.quantity):
            return []
        beside = stretch.marked.helps(before.start - 1, "with_word") is not None
        return [self.loads.pop()] if beside and before.start > stretch.start else []

    def loads_in(self, units: MassUnit) -> list[Decimal]:
        """In kg; a bare number takes the unit that is typed beside it: `20, 35 and 50 lb`."""
        typed = next((unit for _, unit in self.loads if unit), "")
        return [exact_kg(load) if unit else _bare(load, typed, units) for load, unit in self.loads]


def is_held(implement: str) -> bool:
    return any(one.id == implement and one.kind == "held" for one in catalogue().implements)


def thing_of(mark: Mark, stretch: Stretch) -> str | None:
    """What it names; what is a part of the body, too, is that where a body is spoken of: `bad back, disc`."""
    of_body = mark.value("part") and any(one is not mark for one in stretch.marks("part", "maybe_part"))
    return None if of_body else mark.value("thing", "other_thing")


def parts_at(stretch: Stretch, at: int) -> bool:
    token = stretch.marked.text.tokens[at]
    if token.kind == "mark":
        return token.word in ",;.\n&+/!("
    return stretch.marked.helps(at, "joint") is not None or stretch.marked.helps(at, "or") is not None


def take(item: Item, mark: Mark, stretch: Stretch, *, gone: bool) -> None:
    thing = thing_of(mark, stretch)
    if tells_step(item, mark, stretch):
        item.awaits_step = stretch.marked.helps(mark.end, "of_word") is not None
        if not item.awaits_step and item.step is None:
            item.step = item.loads_in(stretch.context.units)[-1]
            item.loads.pop()
        return
    if thing:
        item.named_first = not (item.loads or item.high)
        item.thing = thing
        item.words = stretch.marked.text.words(mark.start, mark.end)
        item.plural = stretch.words[mark.end - 1 - stretch.start].endswith("s")
        item.lacks = item.lacks or stretch.is_denied(mark.start, near=5)
        return
    count = mark.value("count")
    if count is not None:
        item.lacks = item.lacks or count == "0"
        item.count = int(count) or None
        return
    if mark.quantity and (gone or not stretch.is_denied(mark.start, near=2)):
        _take_quantity(item, mark.quantity, stretch)


def tells_step(item: Item, mark: Mark, stretch: Stretch) -> bool:
    """`in steps of 2`, `in 2.5 kg steps`: no stairs."""
    helps = stretch.marked.helps
    step = mark.value("thing") == "stairs" and helps(mark.start, "step_word") is not None
    told = bool(item.loads) or item.step is not None
    return step and (helps(mark.end, "of_word") is not None or told)


def _take_quantity(item: Item, one: Quantity, stretch: Stretch) -> None:
    units = stretch.context.units
    goes_up = item.high is not None and item.step is None and one.value < item.high / 2
    if (item.awaits_step or goes_up) and one.kind in {"load", "number"}:
        item.step, item.awaits_step = (exact_kg(one.value) if one.unit else in_kg(one.value, units)), False
    elif one.kind in _TAKEN_AS:
        _TAKEN_AS[one.kind](item, one, stretch)


def _is_most(item: Item, one: Quantity, stretch: Stretch) -> bool:
    """`up to 20`, and `dumbbells to 20` where nothing else is told of them."""
    helps, before = stretch.marked.helps, one.start - 1
    bare = item.thing is not None and not item.loads and item.low is None
    return one.start > stretch.start and (
        helps(before, "up_to") is not None or (bare and helps(before, "before_word") is not None)
    )


def _take_load(item: Item, one: Quantity, stretch: Stretch) -> None:
    _load(item, one.value, one.unit, up_to=_is_most(item, one, stretch))


def _take_range(item: Item, one: Quantity, stretch: Stretch) -> None:
    units, is_kg = stretch.context.units, one.kind == "load_range"
    item.low = exact_kg(one.low or 0) if is_kg else in_kg(one.low or 0, units)
    item.high = exact_kg(one.value) if is_kg else in_kg(one.value, units)


def _take_times(item: Item, one: Quantity, _: Stretch) -> None:
    item.count = int(one.value) if one.value <= _MOST_OF_ONE else item.count
    item.by_times = True
    item.loads.append((one.second or 0, one.unit))


def _take_pieces(item: Item, one: Quantity, _: Stretch) -> None:
    item.count = int(one.value) or None


def _take_height(item: Item, one: Quantity, _: Stretch) -> None:
    item.height_cm = plain(Decimal(f"{one.value:.2f}"))


def _take_plural(item: Item, one: Quantity, _: Stretch) -> None:
    """`two 10s`: no seconds."""
    if one.unit == "s":
        item.plural = True
        item.thing = item.thing or "dumbbell"
        _load(item, one.value, "", up_to=False)


def _take_number(item: Item, one: Quantity, stretch: Stretch) -> None:
    _number(item, one, stretch, up_to=_is_most(item, one, stretch))


_TAKEN_AS: Final[Mapping[str, Callable[[Item, Quantity, Stretch], None]]] = {
    "load": _take_load,
    "load_range": _take_range,
    "range": _take_range,
    "times": _take_times,
    "pieces": _take_pieces,
    "height": _take_height,
    "span": _take_plural,
    "number": _take_number,
}


def _number(item: Item, one: Quantity, stretch: Stretch, *, up_to: bool) -> None:
    """How many, in front of a thing or a load; else a load without its unit."""
    after_x = stretch.word(one.start - 1) == "x"
    if after_x and item.loads and one.value <= _MOST_OF_ONE:
        item.count = int(one.value)
        return
    counted = item.count is not None
    free = item.thing is None and not counted
    first = not (item.loads or item.high) and (free or stretch.word(one.end) in {"of", "x"})
    whole = one.value == int(one.value) and 1 <= one.value <= _MOST_OF_ONE
    if first and whole and not _ends(stretch, one.end):
        item.count = int(one.value)
        return
    if stretch.marked.text.tokens[one.start].kind == "word" and one.value <= _MOST_OF_ONE and not counted:
        return
    _load(item, one.value, "", up_to=up_to, units=stretch.context.units)


def _ends(stretch: Stretch, at: int) -> bool:
    return at >= stretch.end or parts_at(stretch, at)


def _load(item: Item, load: float, unit: str, *, up_to: bool, units: MassUnit = MassUnit.KG) -> None:
    if up_to:
        item.high = exact_kg(load) if unit else in_kg(load, units)
    else:
        item.loads.append((load, unit))


def _bare(load: float, typed: str, units: MassUnit) -> Decimal:
    return in_kg(load, MassUnit.LB if typed == "lb" else MassUnit.KG if typed else units)


def take_word(item: Item, stretch: Stretch, at: int) -> None:
    marked = stretch.marked
    shared = SHARED.fullmatch(marked.words[at])
    item.partner = shared["which"] if shared else item.partner
    item.filled = item.filled or marked.helps(at, "filled") is not None
    item.adjustable = item.adjustable or marked.helps(at, "adjustable") is not None
    if marked.helps(at, "each") is not None and item.loads and item.count is None:
        item.count = 2
