"""What changes from set to set: `3 x 8 @ 60/65/70 %`, `5 @ rpe 6, 7, 8`, `12-10-8: 12-14-16 kg`."""

import re

from core.measures import MassUnit
from core.notation.lines.pieces import Piece
from core.notation.quantities import MASS_UNIT, kilograms
from core.notation.text import Strip
from core.sessions.values import MOST_PERCENT, LoadRule

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
