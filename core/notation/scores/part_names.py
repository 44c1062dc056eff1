"""Parts told without a label: by what is done in them, `press 50, dips 15 11 9`, or in their order, `4+2 and 3+9`."""

import re
from collections.abc import Iterator
from typing import Final, NamedTuple

from core.movements.names import key
from core.notation.part_labels import Part, Told, with_what_follows
from core.sessions.values import Block, BlockKind, Format, Session

_WORD: Final = re.compile(r"[a-z][a-z'-]{2,}")
_CUT: Final = re.compile(r"[,;|/\n]|\.(?=\s)|\b(?:and then|then|(?<!rounds )(?<!rds )and)\b", re.IGNORECASE)
_DIGIT: Final = re.compile(r"[0-9]")
# What a part may be called by its format, and no other part is.
_CALLED: Final = {
    Format.AMRAP: ("amrap",),
    Format.INTERVALS: ("emom", "tabata", "intervals"),
}
_LOADED: Final = {Format.MAX_LOAD, Format.SETS}
_BY_REPS: Final = {1: ("single",), 2: ("double",), 3: ("triple",), 5: ("five",), 8: ("eight",), 10: ("ten",)}
_NO_NAMES: Final = frozenset(
    {"the", "and", "for", "time", "max", "rest", "reps", "min", "with", "heavy", "one", "sec"}
)


class _Named(NamedTuple):
    block: int
    start: int
    end: int


def by_names(words: str, session: Session) -> Iterator[tuple[Told, ...]]:
    """The words told apart by what is done in each part; what is named nowhere belongs to the part that is left."""
    found = list(_found(words, session))
    named = {one.block for one in found}
    if len(found) == len(named) > 1:
        behind = _DIGIT.search(words[: found[0].start])
        if behind:
            yield _named_behind(words, found, session)
        if not behind or _CUT.search(words[: found[0].start]):
            yield _named_in_front(words, found, session)
    if len(named) == 1 and len(_scored(session)) > 1:
        yield from _beside(words, found[0].block, session)


def blocks_named(words: str, session: Session) -> frozenset[int]:
    """The scored blocks that are named by what is done in them and in no other."""
    return frozenset(one.block for one in _found(words, session))


def in_order(words: str, session: Session) -> Iterator[tuple[Told, ...]]:
    """As many pieces with a number as there are parts, one for each."""
    pieces, scored = _pieces(words), _scored(session)
    if len(pieces) == len(scored) > 1 and not list(_found(words, session)):
        yield tuple(Told(_part(block, session), piece) for block, piece in zip(scored, pieces, strict=True))


def _found(words: str, session: Session) -> Iterator[_Named]:
    """Where each part is named first, by words that no other part has, and those of its name that follow at once."""
    names = {block: _names(session.blocks[block]) for block in _scored(session)}
    named: _Named | None = None
    for match in _WORD.finditer(words.lower()):
        owners = [block for block, own in names.items() if key(match[0]) in own]
        if named and match.start() == named.end + 1 and named.block in owners:
            named = named._replace(end=match.end())
        elif len(owners) == 1 and (named is None or owners[0] != named.block):
            if named:
                yield named
            named = _Named(owners[0], match.start(), match.end())
    if named:
        yield named


def _names(block: Block) -> frozenset[str]:
    told = " ".join(f"{line.movement} {line.written}" for line in block.lines).lower()
    words = {key(word) for word in _WORD.findall(told)} - _NO_NAMES
    by_reps = (
        _BY_REPS.get(int(block.lines[0].amount or 0), ()) if block.format in _LOADED and block.lines else ()
    )
    by_kind = {key("strength")} if block.kind is BlockKind.STRENGTH else set()
    return frozenset(words | set(_CALLED.get(block.format, ())) | set(by_reps) | by_kind)


def _beside(words: str, named: int, session: Session) -> Iterator[tuple[Told, ...]]:
    """One part is named; a piece without its name is of another."""
    pieces = _pieces(words)
    theirs = [bool(list(_found(piece, session))) for piece in pieces]
    if len(pieces) == 2 and theirs.count(True) == 1:  # noqa: PLR2004 - one that is named and one that isn't
        yield tuple(
            Told(_part(named, session) if own else None, piece)
            for own, piece in zip(theirs, pieces, strict=True)
        )


def _pieces(words: str) -> list[str]:
    return with_what_follows(_CUT.split(words))


def _scored(session: Session) -> list[int]:
    return [at for at, block in enumerate(session.blocks) if block.scored]


def _part(block: int, session: Session) -> Part:
    return Part(_scored(session).index(block) + 1, of_scored=True)


def _named_behind(words: str, found: list[_Named], session: Session) -> tuple[Told, ...]:
    """`412 squats 230 press-ups`; what follows the last name belongs to its part."""
    starts = [0, *(one.end for one in found[:-1])]
    ends = [*(one.end for one in found[:-1]), len(words)]
    return tuple(
        Told(_part(one.block, session), words[start:end])
        for one, start, end in zip(found, starts, ends, strict=True)
    )


def _named_in_front(words: str, found: list[_Named], session: Session) -> tuple[Told, ...]:
    """`press 50 all fives, dips 15 11 9`; a clause before them is of what nobody scores: `ran 4 k, press 50`."""
    ends = [*(one.start for one in found[1:]), len(words)]
    return tuple(
        Told(_part(one.block, session), words[one.end : end]) for one, end in zip(found, ends, strict=True)
    )
