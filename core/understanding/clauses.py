"""Where one telling may end and the next begin."""

from collections.abc import Sequence
from typing import Final, NamedTuple

from core.understanding.marks import Marked

# More pieces than these are a list, or a session: neighbours are put together.
MOST_PIECES: Final = 14
_ENDS: Final = frozenset(".!?;\n")
_PARTS: Final = frozenset(",()&|")
_FACES: Final = 0x2600


class Piece(NamedTuple):
    """Tokens `start` to `end`; `hard`: a sentence ends before it."""

    start: int
    end: int
    hard: bool


def pieces(marked: Marked, joining: frozenset[str]) -> list[Piece]:
    """The smallest stretches of a message that may tell something by themselves. `joining`: and, but, also ..."""
    found: list[Piece] = []
    start, hard = 0, True
    for at in range(len(marked.words)):
        parting = _parts(marked, at, joining)
        if parting is None:
            continue
        word = marked.text.tokens[at].kind == "word"
        end = at if word else at + 1
        if _tells(marked, start, end):
            found.append(Piece(start, end, hard))
            start, hard = end, parting == "hard"
        elif not word:
            hard = hard or parting == "hard"
    if _tells(marked, start, len(marked.words)):
        found.append(Piece(start, len(marked.words), hard))
    elif found:
        found[-1] = found[-1]._replace(end=len(marked.words))
    return _fewer(found)


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
    if mark is not None and (mark.start != at or mark.end > at + 1):
        return None
    return "soft" if marked.words[at] in joining and not _between_numbers(marked, at) else None


def _between_numbers(marked: Marked, at: int) -> bool:
    """`between 21:30 and 6:45`, `12 and 16 kg`: one telling."""
    before = marked.mark_at[at - 1] if at > 0 else None
    after = marked.mark_at[at + 1] if at + 1 < len(marked.words) else None
    return bool(before and before.quantity and after and after.quantity)


def _stands_free(marked: Marked, at: int) -> bool:
    return not marked.text.tokens[at].glued and (
        at + 1 < len(marked.words) and not marked.text.tokens[at + 1].glued
    )


def _tells(marked: Marked, start: int, end: int) -> bool:
    """Whether anything but joints and punctuation stands here."""
    return any(
        marked.text.tokens[at].kind != "mark" or marked.text.tokens[at].word == "?"
        for at in range(start, end)
    )


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
