"""Parts told by what is done in them, `press 50, dips 15 11 9`, by letters too, or in their order, `4+2 and 3+9`."""

import re
from collections.abc import Iterator
from typing import Final, NamedTuple

from core.movements.lookup import catalogue
from core.movements.names import key
from core.notation.names.catalogued import lexicon
from core.notation.part_labels import Part, Told, labels_in, with_what_follows
from core.notation.part_places import block_of, parts_of
from core.notation.scores.spoken import in_digits
from core.sessions.values import Block, BlockKind, Format, Session

_WORD: Final = re.compile(r"[a-z][a-z'-]+")
_SHORTEST: Final = 3
# A letter alone names a part where another part is named too; `a` is mostly a word.
_LETTER: Final = re.compile(r"(?:^|[.;,/|!]\s+)(?:and |then )*(?P<letter>[b-h]|a(?=\s[0-9]))\s(?=\S)")
_CUT: Final = re.compile(r"[,;|/\n&]|\.(?=\s)|\b(?:and then|then|(?<!rounds )(?<!rds )and)\b", re.IGNORECASE)
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
    found = _mentioned(words, session)
    named = {one.block for one in found}
    if not found or len(_scored(session)) == 1:
        return
    front = words[: found[0].start]
    behind = _DIGIT.search(in_digits(front.lower()))
    if len(named) == 1:
        yield from _beside(words, found[0].block, session)
    if behind and len(found) == len(named) > 1:
        yield _named_behind(words, found, session)
    if len(named) > 1 and (not behind or _CUT.search(front)):
        yield _named_in_front(words, found, session)
    if behind and len(_scored(session)) == len(named) + 1:
        yield (Told(None, front), *_named_in_front(words, found, session))
    if len(named) > 1:
        yield from _piece_by_piece(words, session)


def _piece_by_piece(words: str, session: Session) -> Iterator[tuple[Told, ...]]:
    """`deadlift 120, then 5 rounds and 4 burpees`: each piece names its part, or goes on about the one before."""
    told: dict[int, str] = {}
    block: int | None = None
    for piece in pieces_of(words):
        named = {one.block for one in _mentioned(piece, session)}
        block = named.pop() if len(named) == 1 else block
        if named or block is None:
            return
        told[block] = f"{told[block]}, {piece}" if block in told else piece
    if len(told) > 1:
        yield tuple(Told(_part(block, session), said) for block, said in told.items())


def blocks_named(words: str, session: Session) -> frozenset[int]:
    """The scored blocks that are named by what is done in them and in no other."""
    return frozenset(one.block for one in _found(words, session))


def in_order(words: str, session: Session) -> Iterator[tuple[Told, ...]]:
    """As many pieces with a number as there are parts, one for each."""
    pieces, scored = pieces_of(words), _scored(session)
    if len(pieces) == len(scored) > 1 and not list(_found(words, session)):
        yield tuple(Told(_part(block, session), piece) for block, piece in zip(scored, pieces, strict=True))


def _mentioned(words: str, session: Session) -> list[_Named]:
    """Where parts are named by what is done in them, or by a letter, as often as they are."""
    by_letter = {chr(ord("a") + at): block for at, block in enumerate(parts_of(session))}
    scored, named = set(_scored(session)), list(_found(words, session))
    letters = [
        _Named(by_letter[match["letter"]], match.start("letter"), match.end("letter"))
        for match in _LETTER.finditer(words.lower())
        if by_letter.get(match["letter"]) in scored
    ]
    labels = [
        _Named(block, one.start, one.end)
        for one in labels_in(words)
        if not one.part.of_scored and (block := block_of(one.part, session)) is not None
    ]
    kept: list[_Named] = []
    for one in sorted((*labels, *letters, *named), key=lambda each: each.start):
        if kept and one.block == kept[-1].block and not _DIGIT.search(words[kept[-1].end : one.start]):
            kept[-1] = kept[-1]._replace(end=max(one.end, kept[-1].end))
        elif not kept or one.start >= kept[-1].end:
            kept.append(one)
    return kept if named or labels else []


def _found(words: str, session: Session) -> Iterator[_Named]:
    """Where parts are named by words that no other part has, and by those of their name that follow at once."""
    names = {block: _names(session.blocks[block]) for block in _scored(session)}
    named: _Named | None = None
    for match in _WORD.finditer(words.lower()):
        owners = [block for block, own in names.items() if key(match[0]) in own] or _called_short(
            match[0], session
        )
        if named and match.start() == named.end + 1 and named.block in owners:
            named = named._replace(end=match.end())
        elif len(owners) == 1 and (named is None or owners[0] != named.block):
            if named:
                yield named
            named = _Named(owners[0], match.start(), match.end())
    if named:
        yield named


def _called_short(word: str, session: Session) -> list[int]:
    """`dl`, `fs`, `bnch`: the parts with what the word is short for."""
    names, long = lexicon(catalogue()), lexicon(catalogue()).written_out(word)[0]
    if long == word:
        meaning = names.exact(word) if len(word) < _SHORTEST else None
        return [at for at in _scored(session) if meaning and _does(meaning.movement, session.blocks[at])]
    said = [key(one) for one in long.split()]
    return [at for at in _scored(session) if all(one in _names(session.blocks[at]) for one in said)]


def _does(movement: str, block: Block) -> bool:
    return any(line.movement == movement for line in block.lines)


def _names(block: Block) -> frozenset[str]:
    told = " ".join(f"{line.movement} {line.written}" for line in block.lines).lower()
    words = {key(word) for word in _WORD.findall(told) if len(word) >= _SHORTEST} - _NO_NAMES
    by_reps = (
        _BY_REPS.get(int(block.lines[0].amount or 0), ()) if block.format in _LOADED and block.lines else ()
    )
    by_kind = {key("strength")} if block.kind is BlockKind.STRENGTH else set()
    return frozenset(words | set(_CALLED.get(block.format, ())) | set(by_reps) | by_kind)


def _beside(words: str, named: int, session: Session) -> Iterator[tuple[Told, ...]]:
    """One part is named; a piece without its name is of another."""
    pieces = pieces_of(words)
    theirs = [bool(list(_found(piece, session))) for piece in pieces]
    if len(pieces) == 2 and theirs.count(True) == 1:  # noqa: PLR2004 - one that is named and one that isn't
        yield tuple(
            Told(_part(named, session) if own else None, piece)
            for own, piece in zip(theirs, pieces, strict=True)
        )


def pieces_of(words: str) -> list[str]:
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
    """`press 50 all fives, dips 15 11 9`; all that is told of one part, put together."""
    ends = [*(one.start for one in found[1:]), len(words)]
    told: dict[int, str] = {}
    for one, end in zip(found, ends, strict=True):
        again = one.block in told
        told[one.block] = f"{told[one.block]}{words[one.start : end]}" if again else words[one.end : end]
    return tuple(Told(_part(block, session), said) for block, said in told.items())
