"""One thing as it is said: which, how many of each, its loads or its range."""

import re
from dataclasses import dataclass, replace
from decimal import Decimal
from functools import lru_cache

from rapidfuzz import process
from rapidfuzz.distance import OSA

from core.movements.lookup import Catalogue
from core.movements.names import key
from core.movements.values import Implement
from core.notation import equipment_words as words
from core.notation.names import allowed_slips
from core.notation.quantities import NUMBER_WORDS, canonical
from core.notation.text import Strip

_CENTIMETRES = {"c": Decimal(1), "m": Decimal(100)}
_INCH_CM = Decimal("2.54")
_PAIRS = {"pair": 2, "couple": 2, "set": 2, "double": 2, "each": 2}
# The last word of a name says what it is (`wooden kitchen stool`), but not with these (`punching bag`).
_MOST_WORDS, _LONGEST_NAME = 5, 60
_ANY_WEIGHT = "weight"
_TOO_LOOSE = {"bag", "disc", "bar", "tube"}


@dataclass(frozen=True)
class Item:
    """A stretch about one thing. `mark` stands in front of it; `filled`: it is said what it is full of.

    `plates`: what the plates for a bar weigh together; `litres`: how much water goes in. `named_first`: the
    thing was named before its load. `no_matter`: known, and of no use to any version. `partner`: the mark of whose
    else it is.
    """

    text: str
    mark: str = ""
    implement: str | None = None
    is_held: bool = False
    plural: bool = False
    each: int | None = None
    loads: tuple[str, ...] = ()
    low: str | None = None
    high: str | None = None
    step: str | None = None
    unit: str | None = None
    plates: str | None = None
    litres: str | None = None
    height_cm: Decimal | None = None
    partner: str | None = None
    adjustable: bool = False
    filled: bool = False
    named_first: bool = False
    no_matter: bool = False
    unread: str = ""

    @property
    def has_loads(self) -> bool:
        return bool(self.loads or self.high)

    @property
    def is_bare(self) -> bool:
        """Only a number, of a thing that is named beside it."""
        return self.implement is None and not self.unread and not self.no_matter and bool(self.loads)

    @property
    def begins_anew(self) -> bool:
        return words.BEGINS_ANEW.match(self.text) is not None


def read_item(text: str, mark: str, things: Catalogue) -> Item:
    """What a stretch says; `unread` keeps it where the thing isn't known."""
    strip = Strip(text)
    item = Item(
        words.SHARED.sub(" ", text).strip(" .:-"),
        mark,
        partner=match["which"] if (match := strip.take(words.SHARED)) else None,
        adjustable=words.ADJUSTABLE.search(text) is not None,
        filled=strip.take(words.FILLED) is not None,
    )
    item = _with_measures(item, strip)
    item = _with_count(item, strip)
    at, item = _with_loads(item, strip)
    return _with_implement(item, strip, at, things)


def _with_measures(item: Item, strip: Strip) -> Item:
    """Plates in all, steps, height and litres: numbers that are no load of the thing itself."""
    if match := strip.take(words.PLATES_IN_ALL):
        item = replace(item, plates=match["a"], unit=match["u"])
    if match := strip.take(words.STEP):
        item = replace(item, step=match["a"] or match["a2"], unit=match["u"] or match["u2"])
    if match := strip.take(words.HEIGHT):
        factor = _CENTIMETRES.get(match["u"][0], _INCH_CM)
        item = replace(item, height_cm=canonical(Decimal(match["a"]) * factor))
    if match := strip.take(words.LITRES):
        item = replace(item, litres=match["a"])
    return item


def _with_count(item: Item, strip: Strip) -> Item:
    match = strip.take(words.PAIR)
    if match is None:
        return item
    while strip.take(words.TIMES):
        pass
    said = next(filter(None, match.groups()))
    return replace(item, each=_PAIRS.get(said) or NUMBER_WORDS.get(said) or int(said))


def _with_loads(item: Item, strip: Strip) -> tuple[int, Item]:
    """The item with its loads, and where the first of them stands."""
    if match := strip.take(words.RANGE):
        unit = match["ub"] or match["ua"] or item.unit
        return match.start(), replace(item, low=match["a"], high=match["b"], unit=unit)
    if match := strip.take(words.UP_TO):
        return match.start(), replace(item, high=match["b"], unit=match["ub"] or item.unit)
    loads: list[str] = []
    unit, plural, first = item.unit, False, len(strip.text)
    while match := strip.take(words.LOAD):
        loads.append(match["a"])
        first = min(first, match.start())
        unit = match["u"] or unit
        plural |= match[0].rstrip().endswith("s") and not match["u"]
    return first, replace(item, loads=tuple(loads), unit=unit, plural=plural)


def _with_implement(item: Item, strip: Strip, load_at: int, things: Catalogue) -> Item:
    said = re.sub(r"[^\w ]|[0-9_]", " ", strip.text.replace(Strip.MARK, " "))
    if re.search("[0-9]", strip.text):
        return replace(item, unread=item.text)
    if not words.FILLER.sub("", said).strip():
        return _unnamed(item, things)
    name = " ".join(words.FILLER.sub(" ", said).split())
    found = _thing(_trimmed(said), name, things)
    if found is None:
        no_matter = any(words.NO_MATTER.fullmatch(one) for one in (_trimmed(said), name))
        return replace(item, no_matter=no_matter, unread="" if no_matter else item.text)
    at = re.search(r"\w", words.FILLER.sub(lambda filler: " " * len(filler[0]), said))
    return replace(
        item,
        implement=found.id,
        is_held=found.kind == "held",
        plural=item.plural or name.endswith("s"),
        named_first=at is not None and at.start() < load_at,
    )


def _unnamed(item: Item, things: Catalogue) -> Item:
    """`60 kg of plates` names its thing with its load; `two 10s`: only a plural speaks of dumbbells by itself."""
    if item.plates:
        plate = things.implement_by_name("plates")
        return replace(item, implement=plate.id, is_held=True) if plate else item
    if item.plural and item.loads:
        return replace(item, implement="dumbbell", is_held=True)
    return item


def _trimmed(said: str) -> str:
    """The words without fillers at their ends: the `up` of a pull-up bar stays."""
    names = said.split()
    while names and words.FILLER.fullmatch(names[0]):
        names.pop(0)
    while names and words.FILLER.fullmatch(names[-1]):
        names.pop()
    return " ".join(names)


def _thing(trimmed: str, name: str, things: Catalogue) -> Implement | None:
    """By its name, by the end of a longer one, or by the one name spelled nearly alike."""
    for exact in (trimmed, name):
        if found := things.implement_by_name(exact):
            return found
    if words.NO_MATTER.fullmatch(trimmed) or words.NO_MATTER.fullmatch(name):
        return None
    names = words.PLACED.split(trimmed)[0].split()[-_MOST_WORDS:]
    if key(trimmed) == _ANY_WEIGHT:
        return things.implement_by_name("dumbbell")
    ends = (" ".join(names[at:]) for at in range(len(names)))
    by_end = (things.implement_by_name(end) for end in ends if key(end) not in _TOO_LOOSE)
    return next((found for found in by_end if found), None) or _near(name, things)


def _near(name: str, things: Catalogue) -> Implement | None:
    """The one thing spelled nearly like `name`; short names must be exact."""
    spellings = _spellings(things)
    allowed = allowed_slips(key(name)) if len(name) <= _LONGEST_NAME else 0
    hit = process.extractOne(key(name), spellings.keys(), scorer=OSA.distance, score_cutoff=allowed)
    return spellings[hit[0]] if hit and allowed else None


@lru_cache(maxsize=4)
def _spellings(things: Catalogue) -> dict[str, Implement]:
    return {key(spelling): thing for thing in things.implements for spelling in (thing.id, *thing.names)}
