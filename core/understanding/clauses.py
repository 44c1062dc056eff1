"""A message cut where one telling may end and the next begin."""

from collections.abc import Mapping, Sequence
from itertools import accumulate
from typing import Final, NamedTuple

from core.understanding.marks import Marked

# More pieces than these are a list, or a session: neighbours are put together.
MOST_PIECES: Final = 20
# From these logarithmic odds on a telling may begin where no comma stands (a chance of one in twenty).
_MAY_BEGIN: Final = -2.9
_ENDS: Final = frozenset(".!?;\n")
_PARTS: Final = frozenset(",()&|")
# What tells a line of a session, and the words above and below the lines.
_AMOUNTS: Final = frozenset({"number", "reps", "times", "distance", "span", "cal", "range", "load"})
_HEADS: Final = frozenset({"format", "rounds", "term", "sets"})
_NOT_OF_BOARDS: Final = frozenset({"person", "clock", "hour", "plus", "day"})
_LONGEST_LINE, _SHORT, _MOST_BETWEEN = 16, 5, 2


class Piece(NamedTuple):
    """Tokens `start` to `end`; `odds`: the logarithmic odds that a telling begins with it; `hard`: a sentence does."""

    start: int
    end: int
    odds: float
    hard: bool


def pieces(marked: Marked, odds: Mapping[int, float], *, boards: bool = False) -> list[Piece]:
    """The smallest stretches of a message that may tell something by themselves.

    `odds`: of each place where a telling might begin; `boards`: the lines of a session are one of them.
    """
    telling = _telling(marked)
    found: list[Piece] = []
    start, hard = 0, True
    for at, chance in odds.items():
        ends = _ends_before(marked, at)
        parts = chance >= _MAY_BEGIN or marked.text.tokens[at - 1].word in _PARTS or ends
        if not parts or telling[at] == telling[start]:
            continue
        found.append(Piece(start, at, odds.get(start, 0.0), hard))
        start, hard = at, ends
    if telling[-1] > telling[start]:
        found.append(Piece(start, len(marked.words), odds.get(start, 0.0), hard))
    elif found:
        found[-1] = found[-1]._replace(end=len(marked.words))
    return _fewer(_with_boards(found, marked) if boards else found)


def _ends_before(marked: Marked, at: int) -> bool:
    """Whether a sentence ends before a token."""
    for place in range(at - 1, 0, -1):
        token = marked.text.tokens[place]
        if token.kind != "mark":
            return False
        if token.word in _ENDS:
            return not (token.word == "." and marked.text.tokens[place + 1].glued)
    return False


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


def _telling(marked: Marked) -> list[int]:
    """How many tokens before each place tell anything: joints and punctuation don't, a question mark does."""
    tells = (token.kind != "mark" or token.word == "?" for token in marked.text.tokens)
    return [*accumulate(tells, initial=0)]


def _fewer(found: Sequence[Piece]) -> list[Piece]:
    """Neighbours put together until they are few enough, those that are least likely two first."""
    left = list(found)
    while len(left) > MOST_PIECES:
        if len(left) > 4 * MOST_PIECES:
            left = [
                one._replace(end=left[at + 1].end if at + 1 < len(left) else one.end)
                for at, one in enumerate(left)
                if at % 2 == 0
            ]
            continue
        at = min(range(1, len(left)), key=lambda place: (left[place].hard, left[place].odds))
        left[at - 1 : at + 1] = [left[at - 1]._replace(end=left[at].end)]
    return left
