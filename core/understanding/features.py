"""What the choice looks at in a stretch of a message: words, what they mean, what is named, and the open question."""

from collections.abc import Iterator
from itertools import pairwise
from typing import Final

from core.understanding.marks import Marked

# What is named counts as its kind, so that one example stands for all of a kind; these keep their words too.
_KEEP_WORDS: Final = frozenset(
    {
        "place",
        "term",
        "wish",
        "illness",
        "condition",
        "sign",
        "not_sign",
        "units_word",
        "count",
        "format",
        "other_thing",
    }
    | {"everything", "side", "other_person"}
)
# That a stretch is all of a message.
WHOLE: Final = "whole"
_GRAM: Final = 4
_FEW, _SOME, _MANY = 2, 4, 9
_LINES: Final = 3


def features(
    marked: Marked, start: int, end: int, question: str = "", *, session: bool = False
) -> Iterator[str]:
    """Each fact once or more; the choice adds up what it learned of each."""
    symbols = list(_symbols(marked, start, end))
    words = [symbol for symbol in symbols if not symbol.startswith("<")]
    yield "bias"
    for word in words:
        yield f"w={word}"
        yield from _grams(word)
    yield from _tags(marked, start, end)
    around = ["^", *symbols, "$"]
    for one, other in pairwise(around):
        yield f"b={one} {other}"
    for one, two, three in zip(around, around[1:], around[2:], strict=False):
        yield f"3={one} {two} {three}"
    kinds = _kinds(marked, start, end)
    yield from (f"m={kind}" for kind in kinds)
    yield from _shape(marked, start, end, symbols)
    if session:
        yield from (f"s&m={kind}" for kind in kinds)
    if question:
        yield from _asked(marked, start, end, question, symbols, kinds)


def _symbols(marked: Marked, start: int, end: int) -> Iterator[str]:
    """The words in their order, kinds in place of what is named."""
    at = start
    while at < end:
        mark = marked.mark_at[at]
        token = marked.text.tokens[at]
        if mark is not None and mark.start >= start and mark.start == at:
            yield f"<{mark.kinds[0]}>"
            if _KEEP_WORDS.intersection(mark.kinds):
                yield from (marked.words[place] for place in range(mark.start, min(mark.end, end)))
            at = mark.end
            continue
        if token.kind == "word":
            yield marked.words[at]
        elif token.kind in {"number", "clock", "link"}:
            yield f"<{token.kind}>"
        elif token.word in "?+/:=" or token.word == "\n":
            yield token.word if token.word != "\n" else "<line>"
        elif ord(token.word[0]) > 0x2000:  # noqa: PLR2004 - emoji
            yield "<face>"
        at += 1


def _grams(word: str) -> Iterator[str]:
    if len(word) >= _GRAM:
        padded = f"_{word}_"
        for at in range(len(padded) - _GRAM + 1):
            yield f"g={padded[at : at + _GRAM]}"


def _tags(marked: Marked, start: int, end: int) -> Iterator[str]:
    """What the words are about."""
    seen = dict.fromkeys(tag for at in range(start, end) for tag in marked.meanings[at])
    yield from (f"t={tag}" for tag in seen)


def _kinds(marked: Marked, start: int, end: int) -> list[str]:
    counts: dict[str, int] = {}
    for mark in marked.within(start, end):
        for kind in mark.kinds:
            counts[kind] = counts.get(kind, 0) + 1
    several = [f"{kind}s" for kind, count in counts.items() if count > 1]
    return [*counts, *several]


def _shape(marked: Marked, start: int, end: int, symbols: list[str]) -> Iterator[str]:
    length = end - start
    yield f"len={0 if length <= _FEW else 1 if length <= _SOME else 2 if length <= _MANY else 3}"
    if symbols and symbols[-1] == "?":
        yield "asks"
    elif any(one == "?" for one in symbols):
        yield "asks inside"
    if symbols:
        yield f"first={symbols[0]}"
        yield f"last={symbols[-1]}"
    if any(
        marked.meanings[at] and "question" in marked.meanings[at] for at in range(start, min(start + 2, end))
    ):
        yield "begins as a question"
    if symbols.count("<line>") >= _LINES - 1:
        yield "lines"
    if not any(one.isalpha() for one in symbols) and symbols:
        yield "no words"
    if length == len(marked.words):
        yield WHOLE


def _asked(
    marked: Marked, start: int, end: int, question: str, symbols: list[str], kinds: list[str]
) -> Iterator[str]:
    yield f"q={question}"
    short = end - start <= _SOME
    yield f"q={question}&short={short}"
    yield from (f"q={question}&m={kind}" for kind in kinds)
    if short:
        yield from (f"q={question}&w={word}" for word in symbols)
    if symbols:
        yield f"q={question}&first={symbols[0]}"
    tags = {tag for at in range(start, end) for tag in marked.meanings[at]}
    yield from (f"q={question}&t={tag}" for tag in tags)
    if "?" in symbols:
        yield f"q={question}&asks"
