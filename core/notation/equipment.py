"""An athlete's own words about what is there -> Equipment."""

import re
from dataclasses import dataclass, replace
from decimal import Decimal

from rapidfuzz import process
from rapidfuzz.distance import OSA

from core.athletes.values import Equipment
from core.measures import MassUnit, to_kg
from core.movements.lookup import Catalogue, catalogue
from core.movements.names import key
from core.movements.values import Implement
from core.notation.names import allowed_slips
from core.notation.quantities import MASS_UNIT, NUMBER, NUMBER_WORDS, canonical, kilograms, mass_unit
from core.notation.text import Strip, plain_row
from core.notation.values import ReadEquipment

LONGEST = 1000
_MOST_THINGS = 40
_HEAVIEST_KG = 500
# Estimates, on the safe side, for what people leave out; the bot shows them, and they can be changed.
_FULL_KG = {"backpack": Decimal(10), "jug": Decimal(5)}
_STEPS = {MassUnit.KG: Decimal("2.5"), MassUnit.LB: Decimal(5)}
_BAR = {MassUnit.KG: Decimal(20), MassUnit.LB: Decimal(45)}

_NOTHING = re.compile(
    r"^\W*(?:i (?:have|'ve got|own|got) )?(?:nothing|none|no|nope|nada|nil|no equipment|not a thing|no "
    r"gear|just (?:me|myself|my body|body ?weight)"
    r"|body ?weight(?: only)?|only (?:me|body ?weight)|zero)(?: at all| here| at home| really| today| "
    r"sorry)*\W*$"
)
_PARTING = re.compile(
    r"[,;\n!]+|\.(?=\s|$)|\b(?:and|plus|also|as well as|with(?=\s(?:(?:a|an|some|two|one)\s|[1-9]\s?x\s?[0-9]))|but)\b|\s\+\s"
    r"|\s?&\s?"
)
_LACKING = re.compile(r"^\s*(?:no|not|without|(?:i )?(?:don't|do not|haven't) (?:have|own|got)?)\b")
_PAIR = re.compile(
    r"(?<![0-9.])(?P<t>[1-9])\s?x\s?(?=[0-9])|(?<![0-9.])(?P<n>[1-9])(?: of)?\s(?=\s?(?!kg|lb|pound|kilo"
    r"|to\b|cm|in\b)[a-z0-9])"
    r"|\b(?:a )?(?P<c>one|two|three|four|pair|couple|set|double|both)(?: of)?\b|\bx\s?(?P<d>[1-9])\b"
    r"|\b(?P<e>each|pair)\b"
)
_RANGE = re.compile(
    rf"(?:from )?(?P<a>{NUMBER})\s?(?P<ua>{MASS_UNIT})?\s?(?:-|to|up to|until"
    rf"|through)\s?(?P<b>{NUMBER})\s?(?P<ub>{MASS_UNIT})?"
)
_UP_TO = re.compile(rf"(?:up to|max(?:imum)?(?: of)?|to)\s?(?P<b>{NUMBER})\s?(?P<ub>{MASS_UNIT})?")
_STEP = re.compile(
    rf"\b(?:in |by )?(?:steps? of )?(?P<a>{NUMBER})\s?(?P<u>{MASS_UNIT})?\s?(?:steps?|increments?"
    rf"|jumps?)\b|\b(?:steps?|increments?) of (?P<a2>{NUMBER})\s?(?P<u2>{MASS_UNIT})?"
)
_HEIGHT = re.compile(rf"(?P<a>{NUMBER})\s?(?P<u>cm|inch(?:es)?|in\b|\"|m\b)(?:\s?(?:high|tall))?")
_LOAD = re.compile(rf"(?<![0-9.])(?P<a>{NUMBER})(?:'?s\b)?\s?-?(?P<u>{MASS_UNIT})?(?:'?s\b)?")
_ADJUSTABLE = re.compile(r"\b(?:adjustable|selectable|variable)\b")
_FILLER = re.compile(
    r"\b(?:i've|i'm|it's|there's|i|have|got|own|there|is|are|a|an|the|some|my|of|just|only|at|home|here"
    r"|old|with|that|goes|go|from|up|to|each|heavy|light|small|big|sturdy|in|kg|also|maybe|weighing"
    r"|single|pair|set)\b"
)


@dataclass(frozen=True)
class _Item:
    """One thing as said: which, how many of each, its loads or its range."""

    text: str
    implement: str | None = None
    plural: bool = False
    each: int | None = None
    loads: tuple[str, ...] = ()
    low: str | None = None
    high: str | None = None
    step: str | None = None
    unit: str | None = None
    height_cm: Decimal | None = None
    adjustable: bool = False
    unread: str = ""

    @property
    def has_loads(self) -> bool:
        return bool(self.loads or self.high)

    @property
    def is_bare(self) -> bool:
        """Only a number, of a thing that is named beside it."""
        return self.implement is None and not self.unread and bool(self.loads)


def read_equipment(text: str, unit: MassUnit = MassUnit.KG, things: Catalogue | None = None) -> ReadEquipment:
    """Reads what an athlete owns; bare numbers count in `unit`, and `two 10s` are dumbbells.

    `equipment` is () for those who say they have nothing, None where nothing was understood.
    """
    words = "\n".join(plain_row(line).text for line in text[:LONGEST].splitlines()).lower()
    if _NOTHING.match(words):
        return ReadEquipment(equipment=())
    known = things or catalogue()
    parts = [
        part for part in _PARTING.split(words) if re.search("[a-z0-9]", part) and not _LACKING.match(part)
    ]
    items = _shared([_item(part, known) for part in parts[:_MOST_THINGS]])
    made = [(item, _equipment(item, unit, known)) for item in items]
    owned = [thing for _, thing in made if thing]
    unread = (*(item.text for item, thing in made if thing is None), *parts[_MOST_THINGS:])
    return ReadEquipment(equipment=_merged(owned) if owned else None, not_understood=unread)


def _item(text: str, things: Catalogue) -> _Item:
    strip = Strip(text)
    item = _Item(text.strip(" .:-"))
    if strip.take(_ADJUSTABLE):
        item = replace(item, adjustable=True)
    item = _with_step(item, strip)
    item = _with_height(item, strip)
    item = _with_count(item, strip)
    item = _with_loads(item, strip)
    return _with_implement(item, strip, things)


def _with_step(item: _Item, strip: Strip) -> _Item:
    match = strip.take(_STEP)
    if match is None:
        return item
    return replace(item, step=match["a"] or match["a2"], unit=match["u"] or match["u2"])


def _with_height(item: _Item, strip: Strip) -> _Item:
    match = strip.take(_HEIGHT)
    if match is None:
        return item
    factor = {"c": Decimal(1), "m": Decimal(100)}.get(match["u"][0], Decimal("2.54"))
    return replace(item, height_cm=canonical(Decimal(match["a"]) * factor))


def _with_count(item: _Item, strip: Strip) -> _Item:
    match = strip.take(_PAIR)
    if match is None:
        return item
    said = next(filter(None, match.groups()))
    pairs = {"pair": 2, "couple": 2, "set": 2, "double": 2, "each": 2}
    return replace(item, each=pairs.get(said) or NUMBER_WORDS.get(said) or int(said))


def _with_loads(item: _Item, strip: Strip) -> _Item:
    if match := strip.take(_RANGE):
        unit = match["ub"] or match["ua"]
        return replace(item, low=match["a"], high=match["b"], unit=unit or item.unit)
    if match := strip.take(_UP_TO):
        return replace(item, high=match["b"], unit=match["ub"] or item.unit)
    loads: list[str] = []
    unit = item.unit
    plural = False
    while match := strip.take(_LOAD):
        loads.append(match["a"])
        unit = match["u"] or unit
        plural |= match[0].rstrip().endswith("s") and not match["u"]
    return replace(item, loads=tuple(loads), unit=unit, plural=plural)


def _with_implement(item: _Item, strip: Strip, things: Catalogue) -> _Item:
    name = " ".join(re.sub(r"[^a-z ]", " ", _FILLER.sub(" ", strip.text.replace(Strip.MARK, " "))).split())
    if not name:
        # `two 10s`: only a plural number speaks of dumbbells by itself.
        return replace(item, implement="dumbbell") if item.plural and item.loads else item
    found = things.implement_by_name(name) or _near(name, things)
    if found is None:
        return replace(item, unread=item.text)
    return replace(item, implement=found.id, plural=item.plural or name.endswith("s"))


def _near(name: str, things: Catalogue) -> Implement | None:
    """The one thing spelled nearly like `name`; short names must be exact."""
    spellings = {key(spelling): thing for thing in things.implements for spelling in (thing.id, *thing.names)}
    allowed = allowed_slips(key(name))
    hit = process.extractOne(key(name), spellings.keys(), scorer=OSA.distance, score_cutoff=allowed)
    return spellings[hit[0]] if hit and allowed else None


def _shared(items: list[_Item]) -> list[_Item]:
    """`8 and 12 kg dumbbells`, `dumbbells: 5, 10`: a bare number takes its thing and unit from beside it."""
    for index in range(len(items) - 2, -1, -1):
        if items[index].is_bare and items[index + 1].has_loads and not items[index + 1].is_bare:
            items[index] = _like(items[index], items[index + 1], each=items[index].each)
            items[index + 1] = _one_each(items[index + 1])
    shared: list[_Item] = []
    for item in items:
        before = shared[-1] if shared else None
        if before is None or not item.is_bare or before.implement is None:
            shared.append(item)
        elif before.has_loads:
            shared[-1] = _one_each(before)
            shared.append(_like(item, before, each=item.each or before.each))
        else:
            each = before.each or item.each
            shared[-1] = replace(before, each=each, loads=item.loads, unit=item.unit or before.unit)
    return shared


def _one_each(item: _Item) -> _Item:
    """A plural that several loads share says nothing of how many there are of each."""
    return replace(item, each=item.each or 1)


def _like(item: _Item, other: _Item, *, each: int | None) -> _Item:
    each = each or 1
    return replace(item, implement=other.implement, unit=item.unit or other.unit, each=each)


def _equipment(item: _Item, unit: MassUnit, things: Catalogue) -> Equipment | None:
    """The thing as data; None where its weight is missing or can't be."""
    if item.implement is None:
        return None
    if things.implement(item.implement).kind == "there":
        return Equipment(implement=item.implement, each=item.each or 1, height_cm=item.height_cm)
    return _held(item, item.implement, item.each or (2 if item.plural else 1), unit)


def _held(item: _Item, implement: str, each: int, unit: MassUnit) -> Equipment | None:
    """Something with a load: fillable, adjustable or fixed."""
    loads = [kilograms(load, item.unit, unit) for load in (item.low, item.high, *item.loads) if load]
    if any(not 0 < load <= _HEAVIEST_KG for load in loads):
        return None
    if implement in _FULL_KG:
        return Equipment(implement=implement, each=each, to_kg=max(loads, default=_FULL_KG[implement]))
    if item.high and (item.adjustable or implement == "barbell"):
        return _adjustable(item, each, unit)
    if loads:
        return Equipment(implement=implement, each=each, loads_kg=tuple(sorted(set(loads))))
    return None


def _adjustable(item: _Item, each: int, unit: MassUnit) -> Equipment | None:
    assert item.implement is not None and item.high is not None  # noqa: PT018 - both are the caller's
    typed = mass_unit(item.unit, unit)
    step = kilograms(item.step, item.unit, unit) if item.step else to_kg(_STEPS[typed], typed)
    start = to_kg(_BAR[typed], typed) if item.implement == "barbell" else step
    low = kilograms(item.low, item.unit, unit) if item.low else start
    high = kilograms(item.high, item.unit, unit)
    if low > high or not step:
        return None
    return Equipment(implement=item.implement, each=each, from_kg=low, to_kg=high, step_kg=canonical(step))


def _merged(owned: list[Equipment]) -> tuple[Equipment, ...]:
    """Fixed loads of one kind, as many of each, stand together."""
    merged: list[Equipment] = []
    for thing in owned:
        same = next((one for one in merged if _joins(one, thing)), None)
        if same is None:
            merged.append(thing)
        else:
            loads = tuple(sorted({*same.loads_kg, *thing.loads_kg}))
            merged[merged.index(same)] = same.model_copy(update={"loads_kg": loads})
    return tuple(dict.fromkeys(merged))


def _joins(one: Equipment, other: Equipment) -> bool:
    fixed = bool(one.loads_kg and other.loads_kg)
    return fixed and (one.implement, one.each) == (other.implement, other.each)
