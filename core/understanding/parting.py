"""Where one telling may end and the next begin: learned, as many people part what they tell with no comma at all."""

from collections.abc import Iterator, Mapping, Sequence
from functools import cache
from itertools import pairwise
from typing import Final

from core.choosers import Chooser, as_chooser
from core.understanding.choosing import document
from core.understanding.marks import Marked

# What the learned choice calls a place where a telling begins.
BEGINS: Final = "begins"
_BEFORE, _AFTER = 3, 4
# From so many words on each side a place is anywhere in the middle.
_MIDDLE: Final = 4


@cache
def begins() -> Chooser:
    """Whether a telling begins at a place, by the facts of `facts_of_places`."""
    return as_chooser(document()[BEGINS])


def odds_of_places(marked: Marked, chooser: Chooser) -> Mapping[int, float]:
    """Of each token where a telling might begin, the logarithmic odds that one does."""
    return {at: chooser.odds_of_only(found) for at, found in facts_of_places(marked).items()}


def facts_of_places(marked: Marked) -> Mapping[int, Sequence[str]]:
    """What is seen around each place where a telling might begin: before any word that isn't inside of a name."""
    units = list(_units(marked))
    kinds = [_kinds_at(marked, start) for start, _ in units]
    symbols = ["^", *(symbol for _, symbol in units), *["$"] * _AFTER]
    words = [marked.text.tokens[start].kind != "mark" for start, _ in units]
    found = {}
    for place, (at, symbol) in enumerate(units):
        if not place or not (words[place] or symbol == "+"):
            continue
        before = dict.fromkeys(kind for one in kinds[:place] for kind in one)
        after = {kind for one in kinds[place:] for kind in one}
        sizes = min(sum(words[:place]), _MIDDLE), min(sum(words[place:]), _MIDDLE)
        found[at] = [
            *_of_words(symbols, place + 1),
            *(f"t<{tag}" for tag in marked.meanings[at - 1]),
            *(f"t>{tag}" for tag in marked.meanings[at]),
            *(f"m<{kind}" for kind in before),
            *(f"m<>{kind}" for kind in before if kind in after),
            *(f"m={kind}" for kind in kinds[place]),
            *(f"m<{one}&{kind}" for one in before for kind in kinds[place]),
            f"so far {sizes[0]}",
            f"left {sizes[1]}",
        ]
    return found


def _units(marked: Marked) -> Iterator[tuple[int, str]]:
    """The tokens in their order, what is named as one; where each begins, and what it is."""
    at = 0
    while at < len(marked.words):
        mark, token = marked.mark_at[at], marked.text.tokens[at]
        if mark is not None and mark.start == at:
            yield at, f"<{mark.kinds[0]}>"
        elif token.word == "\n":
            yield at, "<line>"
        else:
            yield at, f"<{token.kind}>" if token.kind in {"number", "clock", "link"} else marked.words[at]
        at = mark.end if mark is not None and mark.start == at else at + 1


def _kinds_at(marked: Marked, at: int) -> tuple[str, ...]:
    mark = marked.mark_at[at]
    return tuple(mark.kinds) if mark is not None else ()


def _of_words(symbols: Sequence[str], at: int) -> Iterator[str]:
    """The words around the place before `symbols[at]`, one by one and in their order."""
    before, after = symbols[max(0, at - _BEFORE) : at], symbols[at : at + _AFTER]
    yield from (f"w-{back}={word}" for back, word in enumerate(reversed(before), 1))
    yield from (f"w+{ahead}={word}" for ahead, word in enumerate(after))
    yield f"b|{before[-1]} {after[0]}"
    yield f"b|{before[-1]} {after[0]} {after[1]}"
    yield f"b>{after[0]} {after[1]}"
    yield f"b>{after[0]} {after[1]} {after[2]}"
    for one, other in pairwise(before[-2:]):
        yield f"b<{one} {other}"
        yield f"b<{one} {other} {after[0]}"
