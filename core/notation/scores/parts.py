"""The scores of several parts told at once: `6+3 first part, 80 cals second`."""

import re
from collections.abc import Iterator, Sequence
from itertools import chain
from typing import Final, NamedTuple

from core.measures import MassUnit
from core.notation.part_labels import Part, Told, by_parts
from core.notation.part_places import block_of
from core.notation.scores.accounted import is_of_part
from core.notation.scores.loads import heaviest
from core.notation.scores.part_names import by_names, in_order, pieces_of
from core.notation.scores.reading import LONGEST_SCORE, is_said_of, read_score
from core.notation.scores.said import told
from core.notation.scores.spoken import in_digits
from core.notation.text import plain
from core.scores.values import ReadScore
from core.sessions.values import Block, Format, Session

_CLOCK: Final = re.compile(r"[0-9]:[0-5][0-9]")
_TIMED: Final = {Format.FOR_TIME, Format.TIME_TRIAL}
_LOADED: Final = {Format.SETS, Format.MAX_LOAD}


_DIGIT: Final = re.compile(r"[0-9]")
_ONLY_DONE: Final = re.compile(
    r"^\W*(?:(?:did|done|finished|completed|all|the|it|of|[0-9]{1,2}(?= sets?\b)|sets?)\b\W*)+$"
)


_BETWEEN: Final = re.compile(r"[,;\n]|\band then\b|\bthen\b")


class PartScore(NamedTuple):
    """One part's score, and the words that tell it."""

    words: str
    read: ReadScore


def read_parts(text: str, session: Session, unit: MassUnit = MassUnit.KG) -> tuple[PartScore, ...]:
    """One sure score of each of at least two parts, in their order; empty where the words don't tell so.

    Of a part that is only `done` nothing is kept, so that it's asked about.
    """
    words = ", ".join(plain(line) for line in text[:LONGEST_SCORE].splitlines())
    ways = (
        by_parts(words),
        by_names(words, session),
        in_order(words, session),
        in_any_order(words, session, unit),
    )
    for one_way in chain.from_iterable(ways):
        blocks = _blocks_of(one_way, session)
        if len(set(blocks)) != len(one_way) or None in blocks:
            continue
        found = [
            _read(one, block, session, unit)
            for one, block in zip(one_way, blocks, strict=True)
            if not _ONLY_DONE.match(one.words.lower()) and _DIGIT.search(in_digits(one.words.lower()))
        ]
        if found and all(one.read.sure for one in found) and not _is_some_left(found, session):
            return tuple(sorted(found, key=lambda one: one.read.block))
    return ()


def in_any_order(words: str, session: Session, unit: MassUnit) -> Iterator[tuple[Told, ...]]:
    """`12:10 and 35 lb`: each piece is surely a score of one part, and of no other."""
    scored = [at for at, block in enumerate(session.blocks) if block.scored]
    pieces = pieces_of(words)
    if not 1 < len(pieces) <= len(scored):
        return
    fits = [[at for at in scored if read_score(one, session, at, unit).sure] for one in pieces]
    if all(len(one) == 1 for one in fits):
        yield tuple(
            Told(Part(scored.index(at) + 1, of_scored=True), piece)
            for (at,), piece in zip(fits, pieces, strict=True)
        )


def _is_some_left(found: Sequence[PartScore], session: Session) -> bool:
    """Whether a number is told beside the parts that is of none of them: `B 14:20, edit B 14:02`."""
    scores = [(one.read.score, session.blocks[one.read.block]) for one in found if one.read.score]
    tellings = (told(one.words.lower()) for one in found)
    return any(
        not any(is_of_part(one, said, *told_of) for told_of in scores)
        for said in tellings
        for one in said.of(*_OF_SCORES)
    )


_OF_SCORES: Final = frozenset({"bare", "clock", "rounds", "reps", "times", "cal", "metres", "load", "hands"})


def told_apart(text: str, parts: Sequence[str]) -> tuple[str, ...]:
    """The pieces of a text with a number that none of the parts is told in: `ran 4 k` beside two strength parts."""
    pieces = (piece.strip(" .!") for piece in _BETWEEN.split(plain(text)))
    return tuple(
        one for one in pieces if _DIGIT.search(one) and not any(part in one or one in part for part in parts)
    )


def _read(piece: Told, block: int | None, session: Session, unit: MassUnit) -> PartScore:
    return PartScore(piece.words.strip(" ,;.-"), read_score(piece.words, session, block, unit))


def _blocks_of(pieces: Sequence[Told], session: Session) -> list[int | None]:
    """The index of each part's block; None for one that isn't there, or of which the words can't be told."""
    named = [block_of(one.part, session) if one.part else None for one in pieces]
    others = [at for at, block in enumerate(session.blocks) if block.scored and at not in named]
    return [
        block if one.part else _only(others, one.words, session)
        for block, one in zip(named, pieces, strict=True)
    ]


def _only(others: Sequence[int], words: str, session: Session) -> int | None:
    """The one part that is left, where the words have the shape of its scores; else they may belong to the other."""
    return others[0] if len(others) == 1 and _has_shape_of(words, session.blocks[others[0]]) else None


def _has_shape_of(words: str, block: Block) -> bool:
    loaded = block.format in _LOADED and heaviest(told(plain(words).lower()), MassUnit.KG) is not None
    return loaded or is_said_of(words, block) or bool(_CLOCK.search(words) and block.format in _TIMED)
