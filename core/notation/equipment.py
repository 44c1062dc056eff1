"""An athlete's own words about what is there -> Equipment."""

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import NamedTuple

from core.athletes.values import MOST_LOADS, Equipment
from core.errors import TooMuch
from core.measures import LEAST_STEP_KG, MOST_CM, MassUnit, to_kg
from core.movements.lookup import Catalogue, catalogue
from core.notation import equipment_words as words
from core.notation.equipment_items import Item, read_item
from core.notation.equipment_partners import mark_shared
from core.notation.equipment_settings import one_wording
from core.notation.equipment_sharing import shared
from core.notation.quantities import canonical, kilograms, mass_unit
from core.notation.text import plain_row
from core.notation.values import ReadEquipment

LONGEST = 1000
_MOST_THINGS = 40
_HEAVIEST_KG = 500
_BARBELL, _PLATE = "barbell", "plate"
# The heaviest plates made for a bar (common practice, no source).
_HEAVIEST_PLATE_KG = 25
# Estimates, on the safe side, for what people leave out; the bot shows them, and they can be changed.
_FULL_KG = {"backpack": Decimal(10), "jug": Decimal(5)}
_BOTTLE_KG = Decimal("1.5")
_STEPS = {MassUnit.KG: Decimal("2.5"), MassUnit.LB: Decimal(5)}
_BAR = {MassUnit.KG: Decimal(20), MassUnit.LB: Decimal(45)}


class _Owned(NamedTuple):
    """A thing as data. `weightless`: it has a weight that nobody told; `estimated`: we filled it in."""

    thing: Equipment
    estimated: bool = False
    weightless: bool = False


def read_equipment(text: str, unit: MassUnit = MassUnit.KG, things: Catalogue | None = None) -> ReadEquipment:
    """Reads what an athlete owns; bare numbers count in `unit`, and `two 10s` are dumbbells.

    `equipment` is () for those who say they have nothing, None where no thing was understood in full.
    """
    known = things or catalogue()
    marked = mark_shared(text[:LONGEST])
    stretches = list(_stretches(_plain(marked.text)))
    told = [(mark, part) for mark, part in stretches if not _says_nothing(part)]
    items = _with_plates(shared([read_item(part, mark, known) for mark, part in told[:_MOST_THINGS]]), unit)
    made = [(item, _owned_by(item, unit, marked.partners)) for item in items if not item.no_matter]
    owned = [one for _, one in made if one and not one.weightless]
    unread = (*(item.text for item, one in made if one is None), *(part for _, part in told[_MOST_THINGS:]))
    is_nothing = len(made) == 0 and (items or any(_is_nothing(part) for _, part in stretches))
    return ReadEquipment(
        equipment=_merged([one.thing for one in owned]) if owned else () if is_nothing else None,
        without_weight=tuple(dict.fromkeys(one.thing for _, one in made if one and one.weightless)),
        estimated=tuple(dict.fromkeys(one.thing.implement for one in owned if one.estimated)),
        not_understood=unread,
    )


def read_weight(
    text: str, thing: Equipment, unit: MassUnit = MassUnit.KG, things: Catalogue | None = None
) -> tuple[Equipment, ...] | None:
    """The answer to how heavy a thing is that was named without its weight: `10`, `8 and 12 kg`, `2 to 24`.

    None where the words tell no weight of it.
    """
    if re.search(r"[0-9]\s?\+\s?[0-9]", text):
        return None  # a score
    adjustable = "adjustable " if words.RANGE.search(text) or words.UP_TO.search(text) else ""
    read = read_equipment(f"{adjustable}{text} {thing.implement}", unit, things)
    found = [one for one in read.equipment or () if one.implement == thing.implement]
    if not found or read.not_understood or read.estimated:
        return None
    told = {"shared_with": thing.shared_with}
    return tuple(one.model_copy(update=told | {"each": max(one.each, thing.each)}) for one in found)


def _plain(text: str) -> str:
    said = "\n".join(plain_row(line).text for line in text[:LONGEST].splitlines()).lower()
    return one_wording(re.sub(r"\bbottles? of water\b", "water bottles", said))


def _stretches(said: str) -> list[tuple[str, str]]:
    """What stands between marks, each with the mark in front of it; all of it where all says `nothing`."""
    if words.NOTHING.match(said):
        return [("", said)]
    told, start, mark = [], 0, ""
    for parting in words.PARTING.finditer(said):
        told.append((mark, said[start : parting.start()]))
        start, mark = parting.end(), parting[0].strip(" ") or parting[0]
    told.append((mark, said[start:]))
    return [(mark, part) for mark, part in told if re.search(r"\w", part)]


def _says_nothing(part: str) -> bool:
    """Small talk, or what isn't there."""
    if _is_nothing(part) or words.LACKING.match(part):
        return True
    talk = re.sub(r"\bthat'?s everything\b", " ", part)
    return not re.search(
        r"\w", words.SMALL_TALK.sub(" ", words.FILLER.sub(" ", words.SMALL_TALK.sub(" ", talk)))
    )


def _is_nothing(part: str) -> bool:
    return words.NOTHING.match(part) is not None


def _with_plates(items: list[Item], unit: MassUnit) -> list[Item]:
    """Plates told by their weight together belong to the bar, if there is one."""
    bar = next((item for item in items if item.implement == _BARBELL), None)
    items = [_in_all(item, unit) for item in items]
    loose = next((item for item in items if item.plates and item.implement != _BARBELL), None)
    if bar is None or loose is None or bar.plates:
        return items
    loaded = replace(bar, plates=loose.plates, unit=bar.unit or loose.unit)
    return [loaded if item is bar else item for item in items if item is not loose]


def _in_all(item: Item, unit: MassUnit) -> Item:
    """`100 kg plates`: no single plate is so heavy."""
    if item.implement != _PLATE or item.each or len(item.loads) != 1:
        return item
    (load,) = item.loads
    heavy = kilograms(load, item.unit, unit) > _HEAVIEST_PLATE_KG
    return replace(item, plates=load, loads=()) if heavy else item


def _owned(item: Item, unit: MassUnit) -> _Owned | None:
    """The thing as data; None where it isn't known or its weight can't be."""
    if item.implement is None:
        return None
    if not item.is_held:
        height = item.height_cm if item.height_cm and item.height_cm <= MOST_CM else None
        return _Owned(Equipment(implement=item.implement, each=item.each or 1, height_cm=height))
    each = item.each or (2 if item.plural else 1)
    loads = [kilograms(load, item.unit, unit) for load in (item.low, item.high, *item.loads) if load]
    meant = len(loads) <= MOST_LOADS and all(0 < load <= _HEAVIEST_KG for load in loads)
    return _held(item, each, loads, unit) if meant else None


def _owned_by(item: Item, unit: MassUnit, partners: Sequence[str]) -> _Owned | None:
    owned = _owned(item, unit)
    if owned is None or item.partner is None:
        return owned
    partner = partners[ord(item.partner) - ord("a")]
    return owned._replace(thing=owned.thing.model_copy(update={"shared_with": partner}))


def _held(item: Item, each: int, loads: list[Decimal], unit: MassUnit) -> _Owned | None:
    """Something with a load: fillable, a bar, adjustable or fixed."""
    assert item.implement is not None
    if item.implement in _FULL_KG:
        return _fillable(item, each, loads)
    if item.high and (item.adjustable or item.implement == _BARBELL):
        return _adjustable(item, each, unit)
    if item.implement == _BARBELL:
        return _bar(item, each, loads, unit)
    thing = Equipment(implement=item.implement, each=each, loads_kg=tuple(sorted(set(loads))))
    return _Owned(thing, weightless=not loads)


def _fillable(item: Item, each: int, loads: list[Decimal]) -> _Owned | None:
    """A bag or jug, filled as heavy as is wished, or with what is in it; a litre of water weighs a kilogram."""
    assert item.implement is not None
    if item.litres and item.implement == "jug" and not loads:
        loads = [canonical(Decimal(item.litres))]
    if any(not 0 < load <= _HEAVIEST_KG for load in loads):
        return None
    if item.filled and loads and item.implement != "jug":
        return _Owned(Equipment(implement=item.implement, each=each, loads_kg=tuple(sorted(set(loads)))))
    usual = _BOTTLE_KG if "bottle" in item.text else _FULL_KG[item.implement]
    thing = Equipment(implement=item.implement, each=each, to_kg=max(loads, default=usual))
    return _Owned(thing, estimated=not loads)


def _bar(item: Item, each: int, loads: list[Decimal], unit: MassUnit) -> _Owned | None:
    """A bar of its told or usual weight, up to all of its plates if it is said what they weigh together."""
    typed = mass_unit(item.unit, unit)
    bar = max(loads, default=canonical(to_kg(_BAR[typed], typed)))
    if item.plates is None:
        own = tuple(sorted(set(loads))) or (bar,)
        return _Owned(Equipment(implement=_BARBELL, each=each, loads_kg=own), estimated=not loads)
    step = canonical(to_kg(_STEPS[typed], typed))
    high = canonical(bar + kilograms(item.plates, item.unit, unit))
    if not bar < high <= _HEAVIEST_KG:
        return None
    thing = Equipment(implement=_BARBELL, each=each, from_kg=bar, to_kg=high, step_kg=step)
    return _Owned(thing, estimated=True)


def _adjustable(item: Item, each: int, unit: MassUnit) -> _Owned | None:
    assert item.implement is not None and item.high is not None  # noqa: PT018 - both are the caller's
    typed = mass_unit(item.unit, unit)
    step = kilograms(item.step, item.unit, unit) if item.step else to_kg(_STEPS[typed], typed)
    start = to_kg(_BAR[typed], typed) if item.implement == _BARBELL else step
    low = kilograms(item.low, item.unit, unit) if item.low else start
    high = kilograms(item.high, item.unit, unit)
    if low > high or step < LEAST_STEP_KG:
        return None
    low, step = canonical(low), canonical(step)
    return _Owned(Equipment(implement=item.implement, each=each, from_kg=low, to_kg=high, step_kg=step))


def _merged(owned: list[Equipment]) -> tuple[Equipment, ...]:
    """Fixed loads of one kind, as many of each, stand together."""
    merged: list[Equipment] = []
    for thing in owned:
        same = next((one for one in merged if _joins(one, thing)), None)
        if same and len({*same.loads_kg, *thing.loads_kg}) > MOST_LOADS:
            raise TooMuch("more weights of a kind than are kept")
        if same is None:
            merged.append(thing)
        else:
            loads = tuple(sorted({*same.loads_kg, *thing.loads_kg}))
            merged[merged.index(same)] = same.model_copy(update={"loads_kg": loads})
    return tuple(dict.fromkeys(merged))


def _joins(one: Equipment, other: Equipment) -> bool:
    fixed = bool(one.loads_kg and other.loads_kg)
    alike = (one.implement, one.each, one.shared_with) == (other.implement, other.each, other.shared_with)
    return fixed and alike
