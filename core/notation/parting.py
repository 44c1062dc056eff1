"""Whether a part is over before a row that doesn't say so: sets after sets, as much as goes after what is counted."""

from collections.abc import Callable

from core.notation.drafts import Draft
from core.notation.formats import UNSCORED
from core.notation.pieces import Piece
from core.notation.reading import Reading
from core.sessions.values import Format

_DOSES = {"format", "rounds", "scheme", "every_s"}
# A part of one of these is over before the next sets.
_IN_SETS = {
    None, Format.SETS, Format.MAX_LOAD, Format.MAX_REPS, Format.HOLD, Format.TIME_TRIAL, Format.QUALITY,
}  # fmt: skip


def is_over(draft: Draft, reading: Reading) -> bool:
    """Whether what a row tells is done after the part before it, not in turn with it."""
    told = [piece for piece in reading.pieces if piece.meaning or piece.unread]
    in_turn = draft.in_turn and reading.letter == draft.letter
    if not draft.lines or not told or in_turn or draft.kind in UNSCORED:
        return False
    return any(rule(draft, told, reading.then) for rule in _RULES)


def take_back_off(reading: Reading, draft: Draft) -> None:
    """`Then 3 x 5 at 90 %` behind the heaviest of something are sets of the same."""
    if not draft.lines or draft.facts.get("format") is not Format.MAX_LOAD:
        return
    for piece in reading.pieces:
        if not (piece.meaning or piece.unread) and piece.sets and piece.amount:
            piece.meaning, piece.implement = draft.pieces[-1].meaning, draft.pieces[-1].implement


def _sets_begin(draft: Draft, told: list[Piece], _: bool) -> bool:
    """`3 x 8 ...` under sets, or under what is done once."""
    return _may_be_over(draft) and all(piece.sets for piece in told)


def _heaviest_is_found(draft: Draft, _told: list[Piece], _: bool) -> bool:
    return draft.facts.get("format") is Format.MAX_LOAD


def _most_begins(draft: Draft, told: list[Piece], _: bool) -> bool:
    """As much as goes after what is counted, and the other way round."""
    alone = draft.only and not draft.facts.keys() & {"rounds", "scheme"}
    if draft.facts.get("format") is Format.FOR_TIME and alone:
        return _are_most(told)
    return not draft.facts.keys() & _DOSES and _are_most(told) is not _are_most(draft.pieces)


def _sets_are_over(draft: Draft, told: list[Piece], then: bool) -> bool:
    """What is done once behind sets of their own; `then` goes on with it."""
    own = all(piece.sets for piece in draft.pieces) and not draft.facts.keys() & _DOSES
    return own and not then and all(piece.amount and not piece.sets for piece in told)


_RULES: tuple[Callable[[Draft, list[Piece], bool], bool], ...] = (
    _sets_begin,
    _heaviest_is_found,
    _most_begins,
    _sets_are_over,
)


def _may_be_over(draft: Draft) -> bool:
    said = draft.facts.get("format")
    return said in _IN_SETS and not (said in {None, Format.QUALITY} and "rounds" in draft.facts)


def _are_most(pieces: list[Piece]) -> bool:
    """Whether as much as goes is done of each."""
    return all(piece.most for piece in pieces)
