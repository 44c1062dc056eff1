"""The many ways to say that one thing has many weights, made one: `a dumbbell I can set from 2.5 to 24`."""

import re
from typing import Final

from core.notation.quantities import MASS_UNIT, NUMBER

_MASS: Final = rf"{NUMBER}\s?(?:{MASS_UNIT})?"
_SPAN: Final = (
    rf"(?:from )?{_MASS}\s?(?:-|to|up to|until|through)\s?{NUMBER}"
    rf"|(?:up to|max(?:imum)?(?: of)?|to)\s?{NUMBER}"
)
_BETWEEN: Final = re.compile(rf"\bbetween (?P<a>{_MASS}) and (?P<b>{NUMBER})")
_SET: Final = re.compile(
    r"\b(?:that |which )?(?:(?:i|you|we|one) )?(?:can |could )?(?:be )?"
    rf"(?:sets?|adjusts?|adjusted|adjusting|changed|dialled|dialed|goes|runs)(?: it)?(?: anywhere)?\s(?={_SPAN})"
)
# One thing and its span, with a mark between them.
_APART: Final = re.compile(rf"(?P<thing>\badjustable\b[^,;:\n(]{{0,40}}?)\s?[,:]\s?(?={_SPAN})")


def one_wording(said: str) -> str:
    """`adjustable` beside its span, whatever was said; `said` is plain and in small letters."""
    told = _BETWEEN.sub(r"from \g<a> to \g<b>", said)
    return _APART.sub(r"\g<thing> ", _SET.sub("adjustable ", told))
