"""A coach's order for people who are named, or for the one who is looked at: `no burpees for Tove this week`."""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Any, Final, NamedTuple

from core.notation.people import find_name
from core.understanding.acts import Order
from core.understanding.marks import mark
from core.understanding.several import names_and_when, names_only, sentences_of
from core.understanding.slots import body
from core.understanding.slots.order_words import movements, says
from core.understanding.slots.orders import explains, is_only_when, like_before, order, tells_when, tells_why
from core.understanding.slots.stretch import Stretch
from core.understanding.values import Context

_ALL: Final = re.compile(
    r"\b(?:every(?:one|body)|all of (?:us|them|you)|the (?:whole )?group)\b", re.IGNORECASE
)


# `No burpees no runs for Bo`, with nothing between.
_NO_AND_NO: Final = re.compile(r"\b(no [^\W\d_][\w-]+(?: [\w-]+)?)\s+(?=no [^\W\d_])", re.IGNORECASE)


# `Swings -> deadlifts`.
_ARROW: Final = re.compile(r"\s*(?:-+>|=+>|\u2192)\s*")


# What is reckoned from what one session asks: a time that is told of something else isn't of it.
_OF_ONE_SESSION: Final = frozenset({"amount", "less", "number"})
_GIVEN: Final = frozenset({"amount", "load"})


class Why(NamedTuple):
    words: str
    of: tuple[str, ...]


class Told(NamedTuple):
    """The orders of a message; what else it tells.

    `left`: words that would order something, and of which nothing could be taken. `why`: what of somebody's body or
    age was told beside an order.
    """

    orders: tuple[Order, ...] = ()
    left: tuple[str, ...] = ()
    why: tuple[Why, ...] = ()

    def why_of(self, name: str) -> str:
        """What of it was told of them, and of nobody else."""
        return ", ".join(one.words for one in self.why if name in one.of)


class _Saying(NamedTuple):
    """The thoughts of a sentence that are of the same people; `people` is () where nobody is named."""

    people: tuple[str, ...]
    thoughts: tuple[str, ...]

    @property
    def words(self) -> str:
        return ", ".join(self.thoughts)


def strangers_in(text: str, people: Sequence[str]) -> tuple[str, ...]:
    """Who is named where only somebody can be, and is none of these; as if behind a `for`, as a name may come first."""
    marked = mark(f"for {text}", None, names_small=True)
    named = (one.value("person") or "" for one in marked.within(0, len(marked.words), "person"))
    return tuple(dict.fromkeys(one for one in named if find_name(one, people) is None))


def orders_in(text: str, people: Sequence[str], looked_at: str | None = None) -> tuple[Order, ...]:
    """The orders of a message, without what of it is no order for anybody."""
    return told_in(text, people, looked_at).orders


def told_in(text: str, people: Sequence[str], looked_at: str | None = None) -> Told:
    """Each order of a message for whom it names: `Ole no rows, Siri 5 runs and no burpees`.

    An order is one only where its fields account for every movement and every number beside it; what a stretch names is
    of its own people, and of those before it whom no order was for where it says `them`. `looked_at`: who is meant by
    `her` where nobody is named.
    """
    text = _ARROW.sub(" swap for ", _NO_AND_NO.sub(r"\1, ", text))
    told = Told()
    waiting: tuple[_Saying, ...] = ()
    last: tuple[str, ...] = (looked_at,) if looked_at else ()
    for saying in _by_whom(text, people):
        is_of_all = _means_several(saying.words, people)
        own = saying.people or (last if waiting or told.orders or _says_them(saying.words, people) else ())
        named = tuple(dict.fromkeys((*(name for one in waiting for name in one.people if is_of_all), *own)))
        found = _orders_of(saying, named, people)
        found = found if found.orders else _like_before(saying, told.orders, people)
        last = saying.people or last
        if not found.orders:
            waiting = (*waiting, saying)
            continue
        told = _with(told, found, waiting, frozenset(named), people)
        waiting = ()
    return (
        _with(told, Told(), waiting, frozenset(one.person for one in told.orders), people)
        if told.orders
        else Told()
    )


def _with(
    told: Told, found: Told, waiting: Sequence[_Saying], named: frozenset[str], people: Sequence[str]
) -> Told:
    """The same with what was found; of what waited what tells why, and what came to nothing."""
    why = [one for one in waiting if _tells_why(one.words, people)]
    plain = [one for one in waiting if named.issuperset(one.people) and _is_only_why(one.words, people)]
    left = [one.words for one in waiting if one not in why and one not in plain]
    return Told(
        (*told.orders, *found.orders),
        (*told.left, *left, *found.left),
        (*told.why, *(Why(one.words, one.people) for one in why), *found.why),
    )


def _by_whom(text: str, people: Sequence[str]) -> Iterator[_Saying]:
    """The thoughts of each sentence, put together as long as nobody else is named."""
    for sentence in sentences_of(text):
        so_far: list[str] = []
        named: tuple[str, ...] = ()
        thoughts = tuple(_with_names(sentence, people))
        for at, thought in enumerate(thoughts):
            theirs = tuple(_stretch(thought, people).values("person"))
            if named and (theirs or _is_of_next(so_far[-1], thoughts[at:], people)):
                yield _Saying(named, tuple(so_far))
                so_far, named = [], ()
            named = theirs or named
            so_far.append(thought)
        yield _Saying(named, tuple(so_far))


def _is_of_next(before: str, thoughts: Sequence[str], people: Sequence[str]) -> bool:
    """Whether names stand behind what is of them, `no rows for Bo`, so that an order is of who is named next."""
    found = find_name(before, people)
    is_behind = found is not None and found.rest.endswith("@")
    return (
        is_behind and any(find_name(one, people) for one in thoughts) and bool(_fields(thoughts[0], people))
    )


def _with_names(thoughts: Sequence[str], people: Sequence[str]) -> Iterator[str]:
    """Names alone with what they belong to: `Ilse and Bo no burpees`, `no burpees for Ilse and Bo`."""
    before = ""
    for at, thought in enumerate(thoughts):
        words = f"{before} and {thought}" if before else thought
        goes_on = at + 1 < len(thoughts) and _goes_on(words, thoughts[at + 1], people)
        if (goes_on and find_name(words, people)) or (names_only(words, people) and at + 1 < len(thoughts)):
            before = words
            continue
        yield words
        before = ""


def _goes_on(words: str, after: str, people: Sequence[str]) -> bool:
    """Whether what follows is of the same order: names, and for how long where that isn't told yet."""
    is_own = is_only_when(_stretch(after, people)) and tells_when(_stretch(words, people))
    return names_and_when(after, people) and not is_own


def _orders_of(saying: _Saying, named: Sequence[str], people: Sequence[str]) -> Told:
    """What is ordered in one breath, or else thought by thought; a thought that its order doesn't explain is left."""
    if not named or saying.words.endswith("?"):
        return Told()
    taken = [*_taken(saying.thoughts, people)]
    why = [one for one, fields in taken if _tells_why(one, people) and not fields]
    is_swapped = any(says(_stretch(one, people), "swapped") for one, _ in taken)
    if is_swapped or not _each_of_its_own(fields for _, fields in taken):
        ordered = ", ".join(one for one in saying.thoughts if one not in why)
        whole = _fields(saying.words, people) or _fields(ordered, people)
        if whole:
            return _told(saying.words, [whole], named, (), why)
    done = [*_at_one_time([fields for _, fields in taken if fields])]
    left = [one for one, fields in taken if not fields and one not in why and not _is_only_why(one, people)]
    return _told(saying.words, done, named, left, why) if done else Told()


def _taken(thoughts: Sequence[str], people: Sequence[str]) -> Iterator[tuple[str, dict[str, Any]]]:
    """Each thought with its fields; behind a number that is given, the next is given too: `3 burpees and 10 swings`."""
    before: dict[str, Any] = {}
    for one in thoughts:
        fields = _fields(one, people)
        if not fields and before.get("step") in _GIVEN:
            fields = _fields(f"only {one}", people)
        yield one, fields
        before = fields


def _like_before(saying: _Saying, before: Sequence[Order], people: Sequence[str]) -> Told:
    """`Half the burpees for Cal, Bo none`: what a word tells of the next is of what was ordered just before."""
    if not before or not saying.people:
        return Told()
    stretch = _stretch(saying.words, people)
    last = [one for one in before if (one.person, one.text) == (before[-1].person, before[-1].text)]
    done = [like_before(stretch, one.model_dump(exclude={"act", "text", "person"})) for one in last]
    return _told(saying.words, done, saying.people, (), ()) if all(done) else Told()


def _at_one_time(done: Sequence[dict[str, Any]]) -> Iterator[dict[str, Any]]:
    """`No burpees and no swings this week`: a time that is told once is of all that is ordered in one breath."""
    times = [when for one in done if (when := {key: one[key] for key in ("day", "until") if key in one})]
    shared = times[0] if len(times) == 1 else {}
    return (one if one.get("step") in _OF_ONE_SESSION else shared | one for one in done)


def _each_of_its_own(thoughts: Iterable[Mapping[str, Any]]) -> bool:
    """`No burpees, swings lighter`: each is of a movement of its own, so that none comes in place of another."""
    named = [one.get("movement") for one in thoughts]
    return len(named) > 1 and None not in named and len(set(named)) == len(named)


def _told(
    words: str, done: Sequence[dict[str, Any]], named: Sequence[str], left: Sequence[str], why: Sequence[str]
) -> Told:
    orders = tuple(Order(text=words.strip(), person=one, **fields) for fields in done for one in named)
    return Told(orders, tuple(left), tuple(Why(one, tuple(named)) for one in why))


def _fields(words: str, people: Sequence[str]) -> dict[str, Any]:
    """The fields of the order that words are; {} where they are none, or hold more than it says."""
    stretch = _stretch(words, people)
    fields = {} if _ALL.search(words) else order(stretch)
    is_one = fields.get("step") not in {None, "shorter"} and explains(stretch, fields)
    return fields if is_one else {}


def _stretch(words: str, people: Sequence[str]) -> Stretch:
    marked = mark(words, tuple(people), names_small=True)
    return Stretch(marked, 0, len(marked.words), Context(people=tuple(people)))


def movements_named(text: str) -> frozenset[str]:
    """What words name, as something to leave out too."""
    return frozenset(one.movement for one in movements(_stretch(text, ())))


def _says_them(words: str, people: Sequence[str]) -> bool:
    return says(_stretch(words, people), "them")


def _means_several(words: str, people: Sequence[str]) -> bool:
    return says(_stretch(words, people), "several")


def _tells_why(words: str, people: Sequence[str]) -> bool:
    return tells_why(_stretch(words, people))


def _is_only_why(words: str, people: Sequence[str]) -> bool:
    """`She's had a cold`, beside an order: nothing that shall be done, and no number of it."""
    stretch = _stretch(words, people)
    is_told = says(stretch, "them") or says(stretch, "because") or bool(stretch.values("person"))
    return is_told and not order(stretch) and explains(stretch, {})


class Wanted(NamedTuple):
    """What somebody wants of a line of their own: `movement` goes, `to` comes. `joints`: what hurts in it.

    `weather`: it keeps them from it.
    """

    step: str
    movement: str | None = None
    to: str | None = None
    joints: tuple[str, ...] = ()
    weather: bool = False


def _instead_of_one(stretch: Stretch) -> dict[str, Any]:
    """`What can I do instead of burpees`: anything else."""
    named = stretch.values("movement")
    said = {stretch.marked.helps(at, "instead") for at in stretch.helps("instead")}
    asks = bool(said & {"of", "other"}) or says(stretch, "else")
    return {"step": "out", "movement": named[0]} if len(named) == 1 and asks else {}


# `That's way too light`: some line is, and it isn't said which.
_TOO: Final = frozenset({"easier", "harder"})
_OF_A_LINE: Final = frozenset({"out", "other", "easier", "harder", "fewer", "half"})


def wanted_in(text: str) -> Wanted | None:
    """`can't do the run, it's pouring`, `rows instead of burpees`, `push-ups too hard`; None where no line is named."""
    marked = mark(text, ())
    stretch = Stretch(marked, 0, len(marked.words), Context())
    fields = order(stretch) or _instead_of_one(stretch)
    step = fields.get("step", "")
    if not fields.get("movement") and (step == "shorter" or (step in _TOO and "too" in stretch.words)):
        return Wanted(step)
    if step not in _OF_A_LINE or not (fields.get("movement") or fields.get("to")):
        return None
    return Wanted(
        step,
        fields.get("movement"),
        fields.get("to"),
        body.joints(stretch) if step == "out" else (),
        says(stretch, "weather"),
    )
