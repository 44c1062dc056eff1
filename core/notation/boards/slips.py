"""Numbers that no coach means: slips of the finger, shown at their place and kept out of the block.

What may be meant stands with the values (`core.sessions.values`); here it is only asked.
"""

from collections.abc import Callable
from dataclasses import replace
from functools import cache
from typing import Any, Final

from pydantic import TypeAdapter, ValidationError

from core.measures import Minutes
from core.notation.boards.drafts import Draft, Placed
from core.notation.lines.pieces import Piece
from core.sessions.values import Amount, Count, Loads, Reps, Rest, Rounds, Scheme, Span, Station

_OF_A_LINE: Final[dict[str, Any]] = {
    "amount": Amount,
    "amount_to": Amount,
    "second_amount": Amount,
    "station": Station,
    "count": Count,
    "loads_kg": Loads,
    "sets": Rounds,
}
_OF_A_BLOCK: Final[dict[str, Any]] = {
    "minutes": Minutes,
    "rounds": Rounds,
    "scheme": Scheme,
    "amount": Reps,
    "every_s": Span,
    "work_s": Span,
    "rest_s": Rest,
    "cap_s": Span,
}


def without_slips(draft: Draft) -> tuple[Draft, list[Placed], bool]:
    """The draft without what can't be meant; the lines left out, and whether anything of the whole block was."""
    slips = [placed for placed in draft.placed if not _may_be_meant(placed.piece)]
    facts = {name: told for name, told in draft.facts.items() if _fits(_OF_A_BLOCK, name, told)}
    cut = len(facts) < len(draft.facts)
    if not slips and not cut:
        return draft, [], False
    kept = replace(
        draft,
        facts=facts,
        broken=draft.broken or bool(slips),
        lines=[placed for placed in draft.lines if placed not in slips],
        buy_in=[placed for placed in draft.buy_in if placed not in slips],
        cash_out=[placed for placed in draft.cash_out if placed not in slips],
    )
    return kept, slips, cut


def _may_be_meant(piece: Piece) -> bool:
    return all(_fits(_OF_A_LINE, name, getattr(piece, name)) for name in _OF_A_LINE)


def _fits(bounds: dict[str, Any], name: str, told: object) -> bool:
    """What isn't told fits; so does what is no number."""
    if told is None or name not in bounds:
        return True
    try:
        _checked(bounds[name])(told)
    except ValidationError:
        return False
    return True


@cache
def _checked(of: Any) -> Callable[[Any], Any]:
    return TypeAdapter(of).validate_python
