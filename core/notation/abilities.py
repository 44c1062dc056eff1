"""What somebody can do, told unasked: `I can do 10 deadlifts at 315 lb`, `my max deadlift is 140 kg`."""

import re
from collections.abc import Callable
from decimal import Decimal
from typing import Final

from core.measures import MassUnit
from core.movements.lookup import Catalogue, Named
from core.movements.values import Variant
from core.notation.quantities import MASS_UNIT, NUMBER, NUMBER_WORDS, kilograms
from core.notation.text import plain
from core.values import Value

_LONGEST: Final = 160
_MOST_REPS: Final = 300
_HEAVIEST_KG: Final = 400

_WORD: Final = "|".join(word for word in NUMBER_WORDS if " " not in word)
_N: Final = rf"(?P<n>[0-9]{{1,3}}|an?|{_WORD})"
_LOAD: Final = rf"(?P<kg>{NUMBER})\s?(?P<u>{MASS_UNIT})?(?:s\b)?"
_ABOUT: Final = (
    r"(?:(?:about|around|up to|at least|maybe|max(?:imum)?|easily|now|do|only|just|roughly|like) )*"
)
_NAME: Final = r"(?P<name>[a-z][a-z '\-]{1,40}?)"
_BREAK: Final = (
    r"(?: (?:in a row|unbroken|without (?:a )?(?:break|stopping)|in one (?:go|set)|straight|fresh"
    r"|when fresh|max))*"
)
_HELD: Final = r"(?:(?:a |an |the |my |one |two )?(?:(?:kettle|dumb|bar)bells?|kbs?|dbs?|bar)\b)"
_AT: Final = rf"(?: (?:at|with|@|of|using|w/) (?:an? |the |my |two |one )?{_LOAD}(?: {_HELD})?)?"
_TAIL: Final = r"[\s.!]*$"

_COUNTED: Final = re.compile(
    rf"^i (?:can|could) {_ABOUT}(?:do|manage|get|hit|make|lift)? ?{_ABOUT}{_N} (?:reps of |unbroken |strict )?{_NAME}"
    rf"{_BREAK}{_AT}{_BREAK}{_TAIL}"
)
_LIFTED: Final = re.compile(
    rf"^i (?:can|could) {_ABOUT}{_NAME} {_LOAD}(?: {_HELD})?"
    rf"(?:(?: for|,? ?x)? ?{_ABOUT}{_N}(?: reps?| times| x)?)?{_BREAK}{_TAIL}"
)
# A set that is usual tells nothing without its repetitions: taken for a maximum it would make them weak.
_USUAL: Final = re.compile(
    rf"^i (?:(?:usually|normally|typically|regularly|always) )?(?:can )?{_NAME} {_LOAD}(?: {_HELD})?"
    rf"(?: for|,? ?x) ?{_ABOUT}{_N}(?: reps?| times| x)?{_BREAK}{_TAIL}"
)
_BEST: Final = re.compile(
    rf"^my (?:(?P<n>[0-9]{{1,2}}) ?(?:rm|rep max)|1 ?rm|one rep max|max(?:imum)?|best|pb|pr|record) "
    rf"(?:for |on |in |at )?(?:the |a )?{_NAME}(?: is| was|'s|:) {_ABOUT}{_LOAD}{_TAIL}"
)
_BEST_BEHIND: Final = re.compile(
    rf"^my {_NAME} (?:(?P<n>[0-9]{{1,2}}) ?(?:rm|rep max)|1 ?rm|one rep max|max(?:imum)?|best|pb|pr|record)"
    rf"(?: is| was|'s|:) {_ABOUT}{_LOAD}{_TAIL}"
)
_IN_FRONT: Final = re.compile(
    r"^\W*(?:(?:btw|by the way|hi|hey|so|and|ok|fyi|also|actually|but)\W+)*", re.IGNORECASE
)


_BEGUN: Final = re.compile(rf"{_IN_FRONT.pattern}(?:i|my)\b", re.IGNORECASE)


class ToldAbility(Value):
    """So many repetitions in a row, fresh, with `load_kg` (per implement) where one was told."""

    movement: str
    variant: str | None = None
    reps: int
    load_kg: Decimal | None = None


def may_be_ability(text: str) -> bool:
    """Whether the words begin as somebody does who tells what they can do."""
    return bool(_BEGUN.match(text))


def read_ability(text: str, unit: MassUnit, things: Catalogue) -> ToldAbility | None:
    """The ability in a message; None where it is anything else. A bare load is in `unit`."""
    words = _IN_FRONT.sub("", plain(text).lower().replace("\u2019", "'"), count=1)
    if len(words) > _LONGEST or "?" in words or "\n" in text.strip():
        return None
    return next((told for reader in _READERS if (told := reader(words, unit, things))), None)


def _counted(words: str, unit: MassUnit, things: Catalogue) -> ToldAbility | None:
    match = _COUNTED.match(words)
    return _told(match, unit, things) if match else None


def _lifted(words: str, unit: MassUnit, things: Catalogue) -> ToldAbility | None:
    match = _LIFTED.match(words) or _USUAL.match(words)
    return _told(match, unit, things) if match else None


def _best(words: str, unit: MassUnit, things: Catalogue) -> ToldAbility | None:
    match = _BEST.match(words) or _BEST_BEHIND.match(words)
    return _told(match, unit, things) if match else None


_READERS: Final[tuple[Callable[[str, MassUnit, Catalogue], ToldAbility | None], ...]] = (
    _counted,
    _lifted,
    _best,
)


def _told(match: re.Match[str], unit: MassUnit, things: Catalogue) -> ToldAbility | None:
    load = kilograms(match["kg"], match["u"], unit) if match["kg"] else None
    named = named_movement(match["name"], things, loaded=load is not None)
    reps = _count(match["n"])
    if named is None or named.movement.k is None or not 0 < reps <= _MOST_REPS:
        return None
    if load is not None and not 0 < load <= _HEAVIEST_KG:
        return None
    variant = named.variant.id if named.variant else None
    return ToldAbility(movement=named.movement.id, variant=variant, reps=reps, load_kg=load)


def _count(typed: str | None) -> int:
    """A maximum is of one repetition unless it is said otherwise."""
    if typed is None or typed in {"a", "an"}:
        return 1
    return int(NUMBER_WORDS.get(typed) or typed)


def named_movement(name: str, things: Catalogue, *, loaded: bool) -> Named | None:
    """What a name means; with a load, only what can have one: `squat 100` is a back squat."""
    for typed in (name, f"back {name}", f"barbell {name}"):
        named = things.by_name(typed)
        if named is not None and (not loaded or any(way.holds for way in _variants(named))):
            return named
    return None


def _variants(named: Named) -> tuple[Variant, ...]:
    return (named.variant,) if named.variant else named.movement.variants
