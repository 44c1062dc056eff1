"""What is there, out of a stretch: `two 10s and a mat`, `KBs 16 24 32`, `dumbbells from 2 to 24`."""

import tomllib
from collections.abc import Iterator, Sequence
from decimal import Decimal
from functools import cache
from pathlib import Path
from typing import Final

from core.athletes.barbells import BAR, BARBELL, HEAVIEST_KG, STEP, with_plates
from core.athletes.values import MOST_LOADS, MOST_OF_EACH, Equipment
from core.measures import LEAST_STEP_KG, MassUnit, to_kg
from core.understanding.lexicon import lexicon
from core.understanding.marks import Mark
from core.understanding.slots.item import Item, is_held, parts_at, take, take_word, tells_step, thing_of
from core.understanding.slots.stretch import Stretch, plain
from core.understanding.text import stem

_GYM: Final = Path(__file__).with_name("gym.toml")
_FILLABLE: Final = frozenset({"backpack", "jug"})
# Estimates, on the safe side, for what people leave out; they are shown, and can be changed.
_FULL_KG: Final = {"backpack": Decimal(10), "jug": Decimal(5)}


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
    return (is_, is_not) if is_held(is_) and is_held(is_not) else None


_OWNS: Final = frozenset({"have", "ive", "got", "own", "owns", "has", "bought", "with"})


@cache
def full_gym() -> tuple[Equipment, ...]:
    """What a gym has that has everything: an estimate, shown before it counts."""
    table = tomllib.loads(_GYM.read_text(encoding="utf-8"), parse_float=Decimal)
    return tuple(Equipment.model_validate(one) for one in table["equipment"])


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
            thing = thing_of(mark, stretch)
            if thing and item.thing and not tells_step(item, mark, stretch):
                loads = item.loads_of_next(stretch, mark.start)
                yield item
                item = Item(loads=loads)
            take(item, mark, stretch, gone=gone)
            at = mark.end
            continue
        if parts_at(stretch, at):
            if item.thing or item.loads or item.high or item.only_counts:
                yield item
                lacks = item.lacks and stretch.marked.helps(at, "or") is not None
                item = Item(lacks=lacks)
        else:
            take_word(item, stretch, at)
        at += 1
    if item.thing or item.loads or item.high or item.only_counts:
        yield item


def _end_of_lift(mark: Mark, stretch: Stretch) -> int | None:
    """Where `bench 92.5 kg` ends: of what names a movement, too, a load is told of that; None for a thing."""
    behind = stretch.marked.mark_at[mark.end] if mark.end < stretch.end else None
    is_load = behind is not None and behind.quantity is not None and behind.quantity.kind == "load"
    named, thing = mark.value("movement"), mark.value("thing")
    return behind.end if behind and is_load and named and thing and not is_held(thing) else None


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
    return item.thing is not None and is_held(item.thing)


def _as_equipment(item: Item, units: MassUnit) -> Equipment | None:
    assert item.thing is not None
    each = min(item.count or 1, MOST_OF_EACH)
    if not is_held(item.thing):
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
