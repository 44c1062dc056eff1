"""All of a text as what is there to train with: the answer to that question, or the things of a change."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from decimal import Decimal
from typing import Final

from core.athletes.barbells import BAR, with_plates
from core.athletes.equipment import Things, everything, is_weightless, that_matter, that_matter_not
from core.athletes.values import MOST_LOADS, Equipment
from core.errors import TooMuch
from core.measures import MassUnit, to_kg
from core.notation.talk.equipment_partners import mark_shared
from core.understanding.marks import Marked, mark
from core.understanding.slots.equipment import merged, named, put_right
from core.understanding.slots.item import Item, parts_at
from core.understanding.slots.stretch import Stretch, plain
from core.understanding.understand import understand
from core.understanding.values import Context, Message
from core.values import Value

LONGEST: Final = 1000
# A bottle holds less than a jug does (estimate).
_BOTTLE_KG: Final = Decimal("1.5")
_SCORE: Final = re.compile(r"[0-9]\s?\+\s?[0-9]")
_SPAN: Final = re.compile(r"[0-9]\s?(?:-|to|up to|until|through)\s?[0-9]|(?:up to|max)\b")


class ToldThings(Value):
    """`equipment`: () for whoever has nothing that matters, None where no thing was understood in full.

    `without_weight`: things that were named, but not how heavy they are (`read_weight` reads the answer).
    `idle`: what was named and no version depends on, as mats.
    `estimated`: ids of things in `equipment` whose weight was filled in by estimate, to be shown as such.
    """

    equipment: Things | None = None
    without_weight: Things = ()
    estimated: tuple[str, ...] = ()
    not_understood: tuple[str, ...] = ()
    idle: tuple[str, ...] = ()

    @property
    def is_clear(self) -> bool:
        """Whether every word of it is equipment that is told in full."""
        return bool(self.equipment) and not (self.not_understood or self.without_weight)


@dataclass(frozen=True, slots=True)
class _Told:
    """A thing with what was left out of it."""

    thing: Equipment
    estimated: bool = False
    weightless: bool = False


def read_things(text: str, units: MassUnit = MassUnit.KG) -> ToldThings:
    """Whatever the text says besides is given back; bare numbers count in `units`.

    Raises TooMuch beyond what is kept.
    """
    sharing = mark_shared(text[:LONGEST])
    marked = mark(sharing.text)
    stretch = Stretch(marked, 0, len(marked.words), Context(units=units))
    told = [(item, thing) for item, thing in named(stretch) if _is_a_thing(item)]
    found = [(item, thing) for item, thing in told if thing is not None]
    matter = [_told(item, thing, sharing.partners, units) for item, thing in found if that_matter((thing,))]
    whole = [one for one in _completed(matter) if not one.weightless]
    kept = with_plates([one.thing for one in whole])
    if not matter and "gym" in stretch.values("everything"):
        kept = [*everything()]
    nothing = not matter and not kept and (bool(found) or _says_nothing(stretch))
    must_be_kept(kept)
    return ToldThings(
        equipment=merged(kept) if kept else () if nothing else None,
        without_weight=tuple(dict.fromkeys(one.thing for one in _completed(matter) if one.weightless)),
        estimated=tuple(dict.fromkeys(one.thing.implement for one in whole if one.estimated)),
        not_understood=(
            *(item.words for item, thing in told if thing is None),
            *(_unread(stretch) if found or kept else ()),
        ),
        idle=that_matter_not(tuple(thing for _, thing in found)),
    )


def thing_put_right(text: str) -> tuple[str, str] | None:
    """What something is and what it isn't, in words that say only that: `the ball is a kettlebell, not a dumbbell`."""
    marked = mark(text[:LONGEST])
    return put_right(Stretch(marked, 0, len(marked.words), Context()))


def names_a_thing(text: str) -> bool:
    """Whether it is said what something is; `got a 32 now` tells its weight alone."""
    marked = mark(text[:LONGEST])
    return bool(Stretch(marked, 0, len(marked.words), Context()).marks("thing", "other_thing"))


def read_weight(text: str, thing: Equipment, units: MassUnit = MassUnit.KG) -> Things | None:
    """The answer to how heavy a thing is that was named without its weight: `10`, `8 and 12 kg`, `2 to 24`.

    None where the words tell no weight of it.
    """
    if _SCORE.search(text):
        return None
    adjustable = "adjustable " if _SPAN.search(text) else ""
    read = read_things(f"{adjustable}{thing.implement}: {text}", units)
    found = [one for one in read.equipment or () if one.implement == thing.implement]
    if not found or read.not_understood or read.estimated or len(found) < len(read.equipment or ()):
        return None
    told = {"shared_with": thing.shared_with}
    return tuple(one.model_copy(update=told | {"each": max(one.each, thing.each)}) for one in found)


def _is_a_thing(item: Item) -> bool:
    """A number alone is no dumbbell: `10` may be anything, `two 10s` are."""
    return bool(item.words) or item.count is not None or item.plural


def _told(item: Item, thing: Equipment, partners: Sequence[str], units: MassUnit) -> _Told:
    if item.partner is not None:
        thing = thing.model_copy(update={"shared_with": partners[ord(item.partner) - ord("a")]})
    if thing.loads_kg or (thing.to_kg and (item.loads or item.high)):
        return _Told(thing, estimated=thing.implement == "barbell" and not item.loads and item.low is None)
    if thing.to_kg:
        most = _BOTTLE_KG if "bottle" in item.words.lower() else thing.to_kg
        return _Told(thing.model_copy(update={"to_kg": most}), estimated=True)
    if thing.implement == "barbell":
        bar = (plain(to_kg(BAR[units], units)),)
        return _Told(thing.model_copy(update={"loads_kg": bar}), estimated=True)
    return _Told(thing, weightless=is_weightless(thing))


def _completed(told: Sequence[_Told]) -> list[_Told]:
    """`a pair of adjustable dumbbells. Settings per dumbbell: 4, 6 and 8 kg`: what is told later belongs to them."""
    found: list[_Told] = []
    for one in told:
        last = found[-1] if found else None
        if last and last.weightless and not one.weightless and last.thing.implement == one.thing.implement:
            each = max(last.thing.each, one.thing.each)
            found[-1] = _Told(one.thing.model_copy(update={"each": each}), one.estimated)
        else:
            found.append(one)
    return found


def _says_nothing(stretch: Stretch) -> bool:
    """Whoever only says what they lack, as in `no bench`, may have a lot."""
    told = understand(Message(text=stretch.said), Context(question="equipment"))
    lacks = bool(stretch.marks("thing", "other_thing")) and not stretch.means("nothing")
    return not lacks and any(act.act == "has_nothing" for act in told.acts)


def _unread(stretch: Stretch) -> Iterator[str]:
    """Parts that name nothing and hold a word that nobody here knows."""
    marked = stretch.marked
    for start, end in _parts(stretch):
        if not marked.within(start, end) and _is_unknown(marked, start, end):
            yield marked.text.words(start, end)


def _parts(stretch: Stretch) -> Iterator[tuple[int, int]]:
    start = stretch.start
    for at in range(stretch.start, stretch.end + 1):
        if at == stretch.end or parts_at(stretch, at):
            if start < at:
                yield start, at
            start = at + 1


def _is_unknown(marked: Marked, start: int, end: int) -> bool:
    return any(
        marked.text.tokens[at].kind == "word" and not marked.meanings[at] and not marked.helping[at]
        for at in range(start, end)
    )


def must_be_kept(things: Sequence[Equipment]) -> None:
    """Raises TooMuch for more weights of a kind than are kept."""
    for one in things:
        alike = {load for other in things if other.implement == one.implement for load in other.loads_kg}
        if len(alike) > MOST_LOADS:
            raise TooMuch("more weights of a kind than are kept")
