"""Numbers that belong to a thing named beside them: `8 and 12 kg dumbbells`, `dumbbells: 5, 10`."""

from dataclasses import replace
from itertools import groupby

from core.notation.equipment_items import Item

_SEVERAL = 2


def shared(items: list[Item]) -> list[Item]:
    """The items, each bare number with the thing and unit of its neighbours; two of a kind are dumbbells."""
    told: list[Item] = []
    runs = [(bare, list(run)) for bare, run in groupby(items, key=lambda item: item.is_bare)]
    for place, (bare, run) in enumerate(runs):
        after = runs[place + 1][1] if place + 1 < len(runs) else []
        if not bare:
            told += run
        elif after and _belongs_to_next(run, told[-1] if told else None, after[0]):
            told += [_like(item, after[0]) for item in run]
            after[0] = _one_each(after[0])
        elif told and told[-1].is_held:
            told += _after(told.pop(), run)
        else:
            told += [_dumbbells(item) for item in run]
    return told


def _belongs_to_next(run: list[Item], before: Item | None, after: Item) -> bool:
    """Whether bare numbers speak of the thing behind them rather than of the one before."""
    if not after.is_held or not after.has_loads or after.named_first:
        return False
    if before is None or not before.is_held:
        return True
    if after.begins_anew or not before.has_loads:
        return False
    marks = run[0].mark, after.mark
    if marks[0] != marks[1]:
        return "\n" in marks[0] or ("and" in marks[1] and "\n" not in marks[1])
    return not before.named_first


def _after(before: Item, run: list[Item]) -> list[Item]:
    """The named item and those that go on with it."""
    if before.has_loads:
        return [_one_each(before), *(_like(item, before, each=item.each or before.each) for item in run)]
    first, *others = run
    unit = first.unit or before.unit or next((item.unit for item in others if item.unit), None)
    taken = replace(before, each=before.each or first.each, loads=first.loads, unit=unit)
    if not others:
        return [taken]
    return [_one_each(taken), *(_like(item, taken, each=item.each or taken.each) for item in others)]


def _one_each(item: Item) -> Item:
    """A plural that several loads share says nothing of how many there are of each."""
    return replace(item, each=item.each or 1)


def _like(item: Item, other: Item, each: int | None = None) -> Item:
    each = each or item.each or 1
    unit = item.unit or other.unit
    return replace(item, implement=other.implement, is_held=True, unit=unit, each=each)


def _dumbbells(item: Item) -> Item:
    """`two 20 lb`, `2 x 10`: what comes in pairs and has no name."""
    if (item.each or 1) < _SEVERAL:
        return item
    return replace(item, implement="dumbbell", is_held=True)
