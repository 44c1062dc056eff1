"""What a sound catalogue keeps to, as a table of named lints with severities."""

import re
from collections import Counter, defaultdict
from collections.abc import Callable, Iterable, Iterator, Mapping
from enum import StrEnum
from itertools import pairwise

from core.movements.book import Book
from core.movements.names import key
from core.movements.values import Demand, Implement, Movement, Pattern, Variant
from core.values import Value

# No count of repetitions or seconds to failure applies here.
UNCOUNTED = {Pattern.TRAVEL, Pattern.MOBILITY}
# All of these is done on the feet, but in a seat.
STOOD = {Pattern.SQUAT, Pattern.LUNGE, Pattern.JUMP, Pattern.CARRY, Pattern.LIFT}
RESERVES = {*Pattern, "grip", "low-back"}
REFERENCE = "reference of the pattern"
# A year, a named protocol, or an honest word that it is none.
_SOURCE = re.compile(
    r"^estimate\b|\b(19|20)\d\d\b|^reference of the pattern$|test protocol|Ruffier-Dickson|thesis"
    r"|^a (hold|time): |^the whole body "
)
_SENTENCE = re.compile(r"^[A-Z].*[.!?]$", re.DOTALL)


class Severity(StrEnum):
    """An error makes the catalogue unusable; a warning is for whoever writes it."""

    ERROR = "error"
    WARNING = "warning"


class Finding(Value):
    """What a lint says about a movement, a variant or a thing."""

    lint: str
    severity: Severity
    file: str
    about: str
    problem: str

    def __str__(self) -> str:
        return f"{self.file}: {self.about}: {self.problem} ({self.lint})"


Problems = Iterator[tuple[str, str]]


def _unique_ids(book: Book) -> Problems:
    movements = Counter(one.id for one in book.movements)
    things = Counter(thing.id for thing in book.implement_rows)
    variants = Counter(f"{one.id}/{way.id}" for one in book.movements for way in one.variants)
    for name, count in (movements + things + variants).items():
        if count > 1:
            yield name, "stands here more than once"


def _unique_spellings(book: Book) -> Problems:
    for spellings in (_movement_spellings(book), _thing_spellings(book)):
        owners = defaultdict(set)
        for name, owner in spellings:
            owners[key(name)].add(owner)
        for name, claimed in owners.items():
            if len(claimed) > 1:
                yield min(claimed), f"shares the spelling {name} with {', '.join(sorted(claimed)[1:])}"


def _movement_spellings(book: Book) -> Iterator[tuple[str, str]]:
    for one in book.movements:
        yield from ((name, one.id) for name in (one.id, *one.names))
        yield from ((name, f"{one.id}/{way.id}") for way in one.variants for name in way.names)


def _thing_spellings(book: Book) -> Iterator[tuple[str, str]]:
    return ((name, thing.id) for thing in book.implement_rows for name in (thing.id, *thing.names))


def _known_ways(book: Book) -> Problems:
    for name, (_, way) in book.variants.items():
        for other in (*way.easier, *way.harder, *book.instead(name)):
            if other not in book.variants or other == name:
                yield name, f"leads to {other}, which is no other variant"


def _own_pattern(book: Book) -> Problems:
    for name, (one, way) in book.variants.items():
        for other in way.easier + way.harder:
            if other in book.variants and book.variants[other][0].pattern is not one.pattern:
                yield name, f"{other} is of another pattern: it belongs under instead"
        for other in book.instead(name):
            its, variant = book.variants.get(other, (None, way))
            if its is one and one.main_of(variant) is one.main_of(one.variants[0]):
                yield name, f"{other} is the same movement: it belongs under easier or harder"


def _same_main_part(book: Book) -> Problems:
    for name, (one, way) in book.variants.items():
        for other in book.easier(name):
            its, variant = book.variants[other]
            if its.main_of(variant) is not one.main_of(way):
                yield name, f"{other} trains something else mainly: it belongs under instead"


def _one_step(book: Book) -> Problems:
    for name in book.variants:
        steps = set(book.easier(name))
        for between in steps:
            for far in steps & book.all_easier(between):
                yield name, f"{far} is two steps away, through {between}"


def _symmetric(book: Book) -> Problems:
    for name, (_, way) in book.variants.items():
        for other in book.easier(name):
            if name not in book.variants[other][1].harder:
                yield name, f"{other} is easier, but doesn't call this harder"
        for other in way.harder:
            if other in book.variants and name not in book.variants[other][1].easier:
                yield name, f"{other} is harder, but doesn't call this easier"


def _no_circle(book: Book) -> Problems:
    for name in book.variants:
        if name in book.all_easier(name):
            yield name, "is easier than itself, in a circle"


def _no_dead_end(book: Book) -> Problems:
    for name in book.variants:
        below = (name, *book.all_easier(name))
        ways = {*below, *(other for way in below for other in book.instead(way))} & book.variants.keys()
        if not any(_is_always_there(book.variants[way][1]) for way in ways):
            yield name, "no easier way and no stand-in needs no equipment"


def _is_always_there(way: Variant) -> bool:
    return not (way.needs or way.holds or way.skill)


def _connected(book: Book) -> Problems:
    """Whatever of a movement trains the same mainly lies on one ladder."""
    for one in book.movements:
        groups = defaultdict(list)
        for way in one.variants:
            groups[one.main_of(way)].append(f"{one.id}/{way.id}")
        for names in groups.values():
            lost = set(names) - _linked(book, names[0])
            if lost:
                yield one.id, f"no ladder leads from {names[0]} to {', '.join(sorted(lost))}"


def _linked(book: Book, start: str) -> set[str]:
    found, waiting = {start}, [start]
    while waiting:
        _, way = book.variants[waiting.pop()]
        near = {*way.easier, *way.harder}
        fresh = (near & book.variants.keys()) - found
        found |= fresh
        waiting += fresh
    return found


def _known_things(book: Book) -> Problems:
    for name, (_, way) in book.variants.items():
        if len(set(way.things)) < len(way.things):
            yield name, "needs the same thing twice"
        yield from _missing(book, name, way.things, "there")
        yield from _missing(book, name, (hold.implement for hold in way.holds), "held")


def _missing(book: Book, name: str, things: Iterable[str], kind: str) -> Problems:
    for thing in things:
        if thing not in book.implements or book.implements[thing].kind != kind:
            yield name, f"{thing} is no implement of the kind {kind!r}"


def _known_reserves(book: Book) -> Problems:
    for name, (_, way) in book.variants.items():
        for unknown in sorted(way.reserves.keys() - RESERVES):
            yield name, f"there is no reserve {unknown}"


def _heights(book: Book) -> Problems:
    for name, (_, way) in book.variants.items():
        share = way.body_share
        if any(high.height_cm <= low.height_cm for low, high in pairwise(share.by_height)):
            yield name, "heights don't go upwards"
        elif share.by_height and abs(share.value - share.at(_usual_height(book, way))) > 0.005:  # noqa: PLR2004
            yield name, "the share isn't the one at the usual height of what it needs"


def _usual_height(book: Book, way: Variant) -> float | None:
    heights = (book.implements[thing].height_cm for thing in way.things if thing in book.implements)
    return next((height.value for height in heights if height), None)


def _sourced(book: Book) -> Problems:
    for name, source in _sources(book):
        if not _SOURCE.search(source):
            yield name, f"{source!r} names no publication, table, protocol or estimate"


def _sources(book: Book) -> Iterator[tuple[str, str]]:
    for thing in book.implement_rows:
        yield from ((thing.id, height.source) for height in [thing.height_cm] if height)
    for one in book.movements:
        yield from ((one.id, k.source) for k in [one.k] if k)
    for name, (_, way) in book.variants.items():
        yield from ((name, number.source) for number in (way.seconds, way.met, way.ratio) if number)
        yield name, way.body_share.source
        yield from ((name, hold.source) for hold in way.holds)


def _one_reference(book: Book) -> Problems:
    references: Mapping[Pattern, list[str]] = {one.pattern: [] for one in book.movements}
    for name, (one, way) in book.variants.items():
        if way.ratio.source == REFERENCE:
            references[one.pattern].append(name)
            if way.ratio.value != 1:
                yield name, "is the reference of its pattern, so its ratio is 1"
    for pattern, names in references.items():
        if len(names) != 1:
            yield pattern, f"needs exactly one reference, has {len(names)}"


def _counted(book: Book) -> Problems:
    for one in book.movements:
        if (one.k is None) is not (one.pattern in UNCOUNTED):
            yield one.id, "k belongs to everything but travel and mobility"


def _on_the_feet(book: Book) -> Problems:
    for name, (one, way) in book.variants.items():
        sits = any(
            book.implements[hold.implement].seat for hold in way.holds if hold.implement in book.implements
        )
        if one.pattern in STOOD and Demand.STANDING not in way.demands and not sits:
            yield name, f"every {one.pattern} is done standing, and its demands don't say so"


def _one_main_part(book: Book) -> Problems:
    for name, (one, way) in book.variants.items():
        if list(one.trains_of(way).values()).count(1.0) != 1:
            yield name, "trains one part most, at 1, and all others less"


def _cue_card(book: Book) -> Problems:
    for name, (_, way) in book.variants.items():
        card = way.cue
        for sentence in (card.start, card.counts, *card.cues, card.fault, card.caution):
            if not _SENTENCE.match(sentence):
                yield name, f"the cue card needs whole sentences, not {sentence!r}"
    for thing in book.implement_rows:
        if not _SENTENCE.match(thing.caution):
            yield thing.id, f"the caution needs whole sentences, not {thing.caution!r}"


def _easier_is_lighter(book: Book) -> Problems:
    """Only where two numbers can be set side by side: no load, the same movement, the same unit."""
    for name, (one, way) in book.variants.items():
        for other_id in book.easier(name):
            other_one, other = book.variants[other_id]
            comparable = one is other_one and one.k and one.unit_of(way) is one.unit_of(other)
            if comparable and not (way.holds or other.holds) and _effort(other) > _effort(way) * 1.001:
                yield name, f"{other_id} is called easier, but its numbers are heavier"


def _effort(way: Variant) -> float:
    return way.body_share.value / way.ratio.value


Lint = Callable[[Book], Problems]
LINTS: dict[str, tuple[Severity, Lint]] = {
    "unique-ids": (Severity.ERROR, _unique_ids),
    "unique-spellings": (Severity.ERROR, _unique_spellings),
    "known-ways": (Severity.ERROR, _known_ways),
    "own-pattern": (Severity.ERROR, _own_pattern),
    "same-main-part": (Severity.ERROR, _same_main_part),
    "one-step": (Severity.ERROR, _one_step),
    "symmetric": (Severity.ERROR, _symmetric),
    "no-circle": (Severity.ERROR, _no_circle),
    "no-dead-end": (Severity.ERROR, _no_dead_end),
    "connected": (Severity.ERROR, _connected),
    "known-things": (Severity.ERROR, _known_things),
    "known-reserves": (Severity.ERROR, _known_reserves),
    "heights": (Severity.ERROR, _heights),
    "one-reference": (Severity.ERROR, _one_reference),
    "counted": (Severity.ERROR, _counted),
    "sourced": (Severity.ERROR, _sourced),
    "on-the-feet": (Severity.ERROR, _on_the_feet),
    "one-main-part": (Severity.ERROR, _one_main_part),
    "cue-card": (Severity.ERROR, _cue_card),
    "easier-is-lighter": (Severity.WARNING, _easier_is_lighter),
}


def lint(movements: Iterable[Movement], implements: Iterable[Implement]) -> tuple[Finding, ...]:
    """Everything that the lints find, in the order of the table."""
    book = Book(tuple(movements), tuple(implements))
    return tuple(
        Finding(lint=name, severity=severity, file=book.file_of(about), about=about, problem=problem)
        for name, (severity, find) in LINTS.items()
        for about, problem in find(book)
    )
