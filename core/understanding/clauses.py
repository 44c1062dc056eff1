"""Where one telling may end and the next begin."""

from collections.abc import Sequence
from itertools import accumulate
from typing import Final, NamedTuple

from core.understanding.marks import Marked

# More pieces than these are a list, or a session: neighbours are put together.
MOST_PIECES: Final = 14
_ENDS: Final = frozenset(".!?;\n")
_PARTS: Final = frozenset(",()&|")
_FACES: Final = 0x2600
# What tells a line of a session, and the words above and below the lines.
_AMOUNTS: Final = frozenset({"number", "reps", "times", "distance", "span", "cal", "range", "load"})
_HEADS: Final = frozenset({"format", "rounds", "term", "sets"})
_NOT_OF_BOARDS: Final = frozenset({"person", "clock", "hour", "plus", "day"})
_LONGEST_LINE, _SHORT, _MOST_BETWEEN = 16, 5, 2


class Piece(NamedTuple):
    """Tokens `start` to `end`; `hard`: a sentence ends before it."""

    start: int
    end: int
    hard: bool


def pieces(marked: Marked, joining: frozenset[str], *, boards: bool = False) -> list[Piece]:
    """The smallest stretches of a message that may tell something by themselves. `joining`: and, but, also ...

    `boards`: the lines of a session are one of them.
    """
    found: list[Piece] = []
    start, hard = 0, True
    telling = _telling(marked)
    for at in range(len(marked.words)):
        parting = _parts(marked, at, joining)
        if parting is None:
            continue
        word = marked.text.tokens[at].kind != "mark"
        end = at if word else at + 1
        if telling[end] > telling[start]:
            found.append(Piece(start, end, hard))
            start, hard = end, parting == "hard"
        elif not word:
            hard = hard or parting == "hard"
    if telling[-1] > telling[start]:
        found.append(Piece(start, len(marked.words), hard))
    elif found:
        found[-1] = found[-1]._replace(end=len(marked.words))
    return _fewer(_with_boards(found, marked) if boards else found)


def _with_boards(found: Sequence[Piece], marked: Marked) -> list[Piece]:
    """Pieces that are lines of a session put together, with the few words between them."""
    kinds = [_kind_of_line(marked, one) for one in found]
    joined: list[Piece] = []
    at = 0
    while at < len(found):
        end = _end_of_board(found, kinds, at)
        joined.append(found[at]._replace(end=found[end - 1].end))
        at = end
    return joined


def _end_of_board(found: Sequence[Piece], kinds: Sequence[str], at: int) -> int:
    """The end of the session that begins at a piece: the next piece where none does."""
    if kinds[at] not in {"line", "head"}:
        return at + 1
    last, lines, between = at, int(kinds[at] == "line"), 0
    for place in range(at + 1, len(found)):
        if kinds[place] == "other" or between >= _MOST_BETWEEN:
            break
        between = between + 1 if kinds[place] == "few words" else 0
        if kinds[place] != "few words":
            last, lines = place, lines + (kinds[place] == "line")
    return last + 1 if lines + (kinds[at] == "head") > 1 else at + 1


def _kind_of_line(marked: Marked, piece: Piece) -> str:
    """`line`: so many of a movement; `head`: rounds, a format or a cap; `few words`; or anything else."""
    inside = marked.within(piece.start, piece.end)
    kinds = {kind for one in inside for kind in one.kinds}
    words = sum(marked.text.tokens[at].kind != "mark" for at in range(piece.start, piece.end))
    if kinds & _NOT_OF_BOARDS or "?" in marked.words[piece.start : piece.end]:
        return "other"
    if "movement" in kinds and kinds & _AMOUNTS and words <= _LONGEST_LINE:
        return "line"
    if kinds & _HEADS and words <= _SHORT:
        return "head"
    return "few words" if words <= _SHORT and not marked.means(piece.start, "post") else "other"


def _parts(marked: Marked, at: int, joining: frozenset[str]) -> str | None:
    token = marked.text.tokens[at]
    if token.kind == "mark":
        if token.word in _ENDS:
            inside = token.word == "." and at + 1 < len(marked.words) and marked.text.tokens[at + 1].glued
            return None if inside else "hard"
        return (
            "soft"
            if token.word in _PARTS
            or ord(token.word[0]) >= _FACES
            or (token.word == "-" and _stands_free(marked, at))
            else None
        )
    mark = marked.mark_at[at]
    if (mark is None or mark.start == at) and _follows_hello(marked, at):
        return "soft"
    if mark is not None and (mark.start != at or mark.end > at + 1):
        return None
    return "soft" if marked.words[at] in joining and not _between_numbers(marked, at) else None


def _follows_hello(marked: Marked, at: int) -> bool:
    """`hello 7+12`: nobody writes a comma behind it, and what comes next is meant by itself."""
    if not at or not marked.means(0, "hello"):
        return False
    return not marked.means(at, "hello") and all(marked.means(one, "hello") for one in range(at))


def _between_numbers(marked: Marked, at: int) -> bool:
    """`between 21:30 and 6:45`, `12 and 16 kg`: one telling."""
    before = marked.mark_at[at - 1] if at > 0 else None
    after = marked.mark_at[at + 1] if at + 1 < len(marked.words) else None
    return bool(before and before.quantity and after and after.quantity)


def _stands_free(marked: Marked, at: int) -> bool:
    return not marked.text.tokens[at].glued and (
        at + 1 < len(marked.words) and not marked.text.tokens[at + 1].glued
    )


def _telling(marked: Marked) -> list[int]:
    """How many tokens before each place tell anything: joints and punctuation don't, a question mark does."""
    tells = (token.kind != "mark" or token.word == "?" for token in marked.text.tokens)
    return [*accumulate(tells, initial=0)]


def _fewer(found: Sequence[Piece]) -> list[Piece]:
    """Neighbours put together until they are few enough, the shortest first."""
    left = list(found)
    while len(left) > MOST_PIECES:
        if len(left) > 4 * MOST_PIECES:
            left = [
                one._replace(end=left[at + 1].end if at + 1 < len(left) else one.end)
                for at, one in enumerate(left)
                if at % 2 == 0
            ]
            continue
        at = min(range(1, len(left)), key=lambda i: (left[i].hard, left[i].end - left[i - 1].start))
        left[at - 1 : at + 1] = [Piece(left[at - 1].start, left[at].end, left[at - 1].hard)]
    return left
