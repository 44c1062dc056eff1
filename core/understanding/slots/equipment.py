"""What is there, out of a stretch: `two 10s and a mat`, `KBs 16 24 32`, `dumbbells from 2 to 24`."""

import tomllib
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from decimal import Decimal
from functools import cache
from pathlib import Path
from typing import Final

from core.athletes.barbells import BAR, BARBELL, HEAVIEST_KG, STEP, with_plates
from core.athletes.values import MOST_LOADS, MOST_OF_EACH, Equipment
from core.measures import LEAST_STEP_KG, MassUnit, to_kg
from core.movements.lookup import catalogue
from core.notation.talk.equipment_partners import SHARED
from core.understanding.lexicon import lexicon
from core.understanding.marks import Mark
from core.understanding.quantities import Quantity
from core.understanding.slots.stretch import Stretch, exact_kg, in_kg, plain
from core.understanding.text import stem

_GYM: Final = Path(__file__).with_name("gym.toml")
_MOST_OF_ONE: Final = 6
_FILLABLE: Final = frozenset({"backpack", "jug"})
# Estimates, on the safe side, for what people leave out; they are shown, and can be changed.
_FULL_KG: Final = {"backpack": Decimal(10), "jug": Decimal(5)}


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


def equipment(stretch: Stretch, *, gone: bool = False) -> tuple[Equipment, ...]:
    """All that is named and isn't said to be missing; of what is `gone` a no is said of all of it."""
    found = [thing for _, thing in named(stretch, gone=gone) if thing is not None]
    found += [one for value in stretch.values("everything") if value == "gym" for one in full_gym()]
    return merged(with_plates(found))


def named(stretch: Stretch, *, gone: bool = False) -> list[tuple[Item, Equipment | None]]:
    """Each thing as it is said, and as what it is kept; None where that can't be meant."""
    items = _shared(list(_items(stretch, gone=gone)))
    told = [one for one in items if one.thing and (gone or not one.lacks)]
    return [(one, _as_equipment(one, stretch.context.units)) for one in told]


def put_right(stretch: Stretch) -> tuple[str, str] | None:
    """`It's a kettlebell, not a dumbbell`: what it is, and what it isn't.

    None where more is told, or it is told what there is: `I have a kettlebell but no barbell`.
    """
    named = stretch.marks("thing")
    denied = [one for one in named if stretch.is_denied(one.start, near=2)]
    if len(named) != 2 or len(denied) != 1 or _OWNS.intersection(stretch.words):  # noqa: PLR2004 - one of two
        return None
    is_not, is_ = denied[0].value("thing"), next(one for one in named if one not in denied).value("thing")
    if stretch.quantities("load", "load_range") or not is_ or not is_not or is_ == is_not:
        return None
    return (is_, is_not) if _is_held(is_) and _is_held(is_not) else None


_OWNS: Final = frozenset({"have", "ive", "got", "own", "owns", "has", "bought", "with"})


@cache
def full_gym() -> tuple[Equipment, ...]:
    """What a gym has that has everything: an estimate, shown before it counts."""
    table = tomllib.loads(_GYM.read_text(encoding="utf-8"), parse_float=Decimal)
    return tuple(Equipment.model_validate(one) for one in table["equipment"])


def _is_held(implement: str) -> bool:
    return any(one.id == implement and one.kind == "held" for one in catalogue().implements)


def _items(stretch: Stretch, *, gone: bool = False) -> Iterator[Item]:
    """From the left; a comma, an `and` or the next thing begins another."""
    item = Item()
    at = stretch.start
    while at < stretch.end:
        mark = stretch.marked.mark_at[at]
        if mark is not None and mark.start == at:
            lift = _end_of_lift(mark, stretch)
            if lift is not None or (item.thing is None and _is_of_something_else(mark, stretch)):
                at = lift or mark.end
                continue
            thing = _thing(mark, stretch)
            if thing and item.thing and not _tells_step(item, mark, stretch):
                loads = item.loads_of_next(stretch, mark.start)
                yield item
                item = Item(loads=loads)
            _take(item, mark, stretch, gone=gone)
            at = mark.end
            continue
        if parts_at(stretch, at):
            if item.thing or item.loads or item.high or item.only_counts:
                yield item
                lacks = item.lacks and stretch.marked.helps(at, "or") is not None
                item = Item(lacks=lacks)
        else:
            _take_word(item, stretch, at)
        at += 1
    if item.thing or item.loads or item.high or item.only_counts:
        yield item


def _thing(mark: Mark, stretch: Stretch) -> str | None:
    """What it names; what is a part of the body, too, is that where a body is spoken of: `bad back, disc`."""
    of_body = mark.value("part") and any(one is not mark for one in stretch.marks("part", "maybe_part"))
    return None if of_body else mark.value("thing", "other_thing")


def _end_of_lift(mark: Mark, stretch: Stretch) -> int | None:
    """Where `bench 92.5 kg` ends: of what names a movement, too, a load is told of that; None for a thing."""
    behind = stretch.marked.mark_at[mark.end] if mark.end < stretch.end else None
    is_load = behind is not None and behind.quantity is not None and behind.quantity.kind == "load"
    named, thing = mark.value("movement"), mark.value("thing")
    return behind.end if behind and is_load and named and thing and not _is_held(thing) else None


def _is_of_something_else(mark: Mark, stretch: Stretch) -> bool:
    """A number of what is done and isn't owned, or of what nobody knows: `press 60 for 3`, `zorbits 77`."""
    if mark.quantity is None:
        return False
    start, end = mark.start, mark.end
    while start > stretch.start and not parts_at(stretch, start - 1):
        start -= 1
    while end < stretch.end and not parts_at(stretch, end):
        end += 1
    named = stretch.marked.within(start, end)
    done = any(one.value("movement", "short_movement") for one in named)
    return not any(one.value("thing", "other_thing") for one in named) and (
        done or _is_unknown(stretch, mark.start - 1)
    )


def _is_unknown(stretch: Stretch, at: int) -> bool:
    """Whether a word that nobody here knows stands there."""
    if not stretch.start <= at < stretch.end or stretch.marked.text.tokens[at].kind != "word":
        return False
    word, known = stretch.marked.words[at], lexicon()
    return not any(one in known.words or one in known.senses for one in (word, stem(word)))


def parts_at(stretch: Stretch, at: int) -> bool:
    token = stretch.marked.text.tokens[at]
    if token.kind == "mark":
        return token.word in ",;.\n&+/!("
    return stretch.marked.helps(at, "joint") is not None or stretch.marked.helps(at, "or") is not None


def _take(item: Item, mark: Mark, stretch: Stretch, *, gone: bool) -> None:
    thing = _thing(mark, stretch)
    if _tells_step(item, mark, stretch):
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


def _tells_step(item: Item, mark: Mark, stretch: Stretch) -> bool:
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


def _take_word(item: Item, stretch: Stretch, at: int) -> None:
    marked = stretch.marked
    shared = SHARED.fullmatch(marked.words[at])
    item.partner = shared["which"] if shared else item.partner
    item.filled = item.filled or marked.helps(at, "filled") is not None
    item.adjustable = item.adjustable or marked.helps(at, "adjustable") is not None
    if marked.helps(at, "each") is not None and item.loads and item.count is None:
        item.count = 2


def _shared(items: list[Item]) -> list[Item]:
    """A load without a thing belongs to the thing beside it: `8, 12 and 16 kg kettlebells`, `dumbbells 8, 12`."""
    found: list[Item] = []
    waiting: list[Item] = []
    for at, item in enumerate(items):
        last = found[-1] if found else None
        if item.only_counts:
            if last and last.count is None:
                last.count = item.count
        elif not item.is_bare:
            for one in waiting:
                _give(one, item)
            waiting = []
            found.append(item)
        elif last and _takes(last, item) and not _of_next(items, at):
            found += _given(item, last)
        else:
            waiting.append(item)
    return _with_waiting(found, waiting)


def _takes(thing: Item, bare: Item) -> bool:
    return _is_weighty(thing) and not thing.lacks and (thing.named_first or _counts_apart(bare, thing))


def _counts_apart(bare: Item, thing: Item) -> bool:
    return bare.count is not None and bool(thing.loads or thing.count)


def _given(bare: Item, thing: Item) -> list[Item]:
    """`two of 4 kg, one of 6`: more of the kind; `two dumbbells, one of 8`: one of those that were named."""
    if not _counts_apart(bare, thing):
        _give(bare, thing)
        return []
    if not thing.loads:
        thing.loads, thing.count = bare.loads, bare.count
        return []
    bare.thing, bare.words = thing.thing, thing.words
    return [bare]


def _of_next(items: Sequence[Item], at: int) -> bool:
    """`a kettlebell of 16, 8 and 12 kg dumbbells`: several of the next kind, with no count of their own."""
    after = next((one for one in items[at + 1 :] if not one.is_bare), None)
    return bool(after and after.plural and after.loads and after.count is None and not after.named_first)


def _give(bare: Item, thing: Item) -> None:
    thing.loads = [*thing.loads, *bare.loads]
    thing.count = thing.count or bare.count
    thing.high = thing.high or bare.high
    thing.low = thing.low or bare.low
    thing.step = thing.step or bare.step
    thing.adjustable = thing.adjustable or bare.adjustable


def _with_waiting(found: list[Item], waiting: list[Item]) -> list[Item]:
    """Loads that no thing followed: of the last thing, or of dumbbells."""
    if not waiting:
        return found
    thing = found[-1] if found and _is_weighty(found[-1]) else Item("dumbbell")
    for one in waiting:
        _give(one, thing)
    return found if found and thing is found[-1] else [*found, thing]


def _is_weighty(item: Item) -> bool:
    return item.thing is not None and _is_held(item.thing)


def _as_equipment(item: Item, units: MassUnit) -> Equipment | None:
    assert item.thing is not None
    each = min(item.count or 1, MOST_OF_EACH)
    if not _is_held(item.thing):
        return Equipment(implement=item.thing, each=each, height_cm=item.height_cm)
    loads = tuple(sorted({load for load in item.loads_in(units) if 0 < load <= HEAVIEST_KG})[:MOST_LOADS])
    if item.thing in _FILLABLE:
        if loads and (item.filled or item.thing == "jug"):
            return Equipment(implement=item.thing, each=each, loads_kg=loads)
        most = item.high or max(loads, default=_FULL_KG[item.thing])
        return Equipment(implement=item.thing, each=each, to_kg=most)
    if item.high is None and item.adjustable and loads:
        item.high, loads = loads[-1], ()
    if item.high is not None:
        return _range(item, units)
    pairs = item.plural and item.count is None and len(loads) <= 1 and item.thing != BARBELL
    if item.named_first and not item.by_times and 1 < each == len(loads):  # `3 kettlebells: 8, 12, 16`
        each = 1
    return Equipment(implement=item.thing, each=2 if pairs else each, loads_kg=loads)


def _range(item: Item, units: MassUnit) -> Equipment | None:
    assert item.thing is not None and item.high is not None  # noqa: PT018 - both are the caller's
    step = plain(to_kg(STEP[units], units)) if item.step is None else item.step
    low = item.low or (plain(to_kg(BAR[units], units)) if item.thing == "barbell" else step)
    if not 0 < low <= item.high <= HEAVIEST_KG or step < LEAST_STEP_KG:
        return None
    each = item.count or (2 if item.plural else 1)
    return Equipment(implement=item.thing, each=each, from_kg=low, to_kg=item.high, step_kg=step)


def merged(found: Sequence[Equipment]) -> tuple[Equipment, ...]:
    """Fixed loads of one kind, as many of each, stand together."""
    merged: list[Equipment] = []
    for thing in found:
        same = next(
            (one for one in merged if (one.implement, one.each) == (thing.implement, thing.each)), None
        )
        if same is None or same.to_kg is not None or thing.to_kg is not None:
            merged.append(thing)
        else:
            loads = tuple(sorted({*same.loads_kg, *thing.loads_kg}))
            merged[merged.index(same)] = same.model_copy(update={"loads_kg": loads})
    return tuple(dict.fromkeys(merged))
