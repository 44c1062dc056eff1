"""What changes from set to set: `3 x 8 @ 60/65/70 %`, `5 @ rpe 6, 7, 8`, `12-10-8: 12-14-16 kg`."""

import re
from dataclasses import replace

from core.measures import MassUnit
from core.notation.drafts import Draft, Placed
from core.notation.pieces import EachSet, Piece
from core.notation.quantities import MASS_UNIT, kilograms
from core.notation.text import Strip
from core.sessions.values import MOST_PERCENT, Format, LoadRule

_NUMBER = r"[0-9]{1,3}(?:\.[0-9]{1,2})?"
# Two with a hyphen between them are a range.
_LIST = rf"{_NUMBER}(?:(?:\s?[/,]\s?{_NUMBER}){{1,9}}|(?:\s?-\s?{_NUMBER}){{2,9}})"
_PERCENTS = re.compile(
    rf"(?:@\s?|\bat\s)?(?<![0-9.x/\-])(?P<all>{_NUMBER}\s?%?(?:(?:\s?[/,]\s?{_NUMBER}\s?%?){{1,9}}|(?:\s?-\s?{_NUMBER}\s?%?){{2,9}}))(?<=%)"
    rf"|(?:@\s?|\bat\s)?(?<![0-9.x/\-])(?P<bare>{_LIST})\s?%"
)
_EFFORTS = re.compile(rf"(?:@\s?|\bat\s)?\b(?:rpe|effort)\s?:?\s?(?P<all>{_LIST})(?![0-9%])")
_LOADS = re.compile(
    rf"(?:@\s?|\bat\s|\bwith\s)?(?<![0-9.x/\-])(?P<all>{_NUMBER}(?:\s?[,\-]\s?{_NUMBER}){{2,9}})\s?(?P<unit>{MASS_UNIT})"
)
_COMMAS = re.compile(
    rf"(?:@|\bat\b|\brpe\b)\s?{_NUMBER}(?:\s?%)?(?:,\s{_NUMBER}(?:\s?%)?(?![0-9]|\s?[a-z@]|\s?x\s?[0-9])){{1,9}}"
)
_HARDEST = 10


def with_lists_bound(text: str) -> str:
    """The text with the commas of such a list moved up to what follows, so that they part nothing: `60, 70, 80 %`."""
    return _COMMAS.sub(lambda match: match[0].replace(", ", " ,"), text)


def take_each_set(piece: Piece, strip: Strip, unit: MassUnit) -> bool:
    """Takes a list of loads, shares or efforts away, one for each set; whether there was one."""
    if match := strip.take(_PERCENTS):
        told = [float(one) for one in re.findall(_NUMBER, match["all"] or match["bare"])]
        piece.each_set = tuple(LoadRule(percent=one) for one in told if 0 < one <= MOST_PERCENT)
    elif match := strip.take(_EFFORTS):
        told = [float(one) for one in re.findall(_NUMBER, match["all"])]
        piece.each_set = tuple(LoadRule(effort=one) for one in told if one <= _HARDEST)
    elif match := strip.take(_LOADS):
        told_kg = re.findall(_NUMBER, match["all"])
        piece.each_set = tuple(kilograms(one, match["unit"], unit) for one in told_kg)
    if match:
        piece.each_said = match[0].strip("@ ")
    return match is not None


def set_by_set(draft: Draft) -> Draft:
    """The part with a line for each set, where as many are told as there are sets; else the list is a note."""
    lines = [placed for one in draft.lines for placed in _of_line(one, draft)]
    if len(lines) == len(draft.lines):
        return replace(draft, lines=lines)
    facts = {name: told for name, told in draft.facts.items() if name not in {"scheme", "rounds"}}
    return replace(draft, lines=lines, facts=facts | {"format": Format.SETS})


def _of_line(placed: Placed, draft: Draft) -> list[Placed]:
    piece = placed.piece
    if not piece.each_set:
        return [placed]
    scheme = draft.facts.get("scheme", ())
    sets = piece.sets or len(scheme) or draft.facts.get("rounds") or len(piece.each_set)
    told = draft.only is not None and draft.facts.get("format") in {None, Format.SETS}
    if not told or sets != len(piece.each_set) or (scheme and len(scheme) != sets):
        return [placed._replace(piece=replace(piece, notes=(*piece.notes, piece.each_said), each_set=()))]
    amounts = scheme or (piece.amount,) * sets
    return [
        placed._replace(piece=_one_set(piece, amount, each))
        for amount, each in zip(amounts, piece.each_set, strict=True)
    ]


def _one_set(piece: Piece, amount: float | None, each: EachSet) -> Piece:
    told = replace(piece, amount=amount and float(amount), sets=None, each_set=())
    return replace(told, load_rule=each) if isinstance(each, LoadRule) else replace(told, loads_kg=(each,))
