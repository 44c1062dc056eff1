"""How a set is borne after sets of the same: each leaves a debt, which fades in two parts.

A set that costs a share of what goes fresh leaves that share as its debt; debts add up, and a set goes as long as all
of them stay below one. For whole-body work Chorley, Bott, Marwood & Lamb 2022 (Eur J Appl Physiol) measured two such
parts; for sets of a lift the trade knows five sets of five at a seven-repetition load with three minutes' rest to go
through (common practice, no source), so these are faster (estimates).
"""

from collections.abc import Sequence
from math import exp
from typing import NamedTuple


class Part(NamedTuple):
    """A share of a debt, and in how many seconds it falls to 1/e."""

    share: float
    seconds: float


LIFTING = (Part(0.62, 30.0), Part(0.38, 250.0))
WHOLE_BODY = (Part(0.5067, 21.5), Part(0.4933, 388.0))


def left_after(seconds: float, parts: Sequence[Part] = LIFTING) -> float:
    """What share of a debt is left after some time."""
    return sum(part.share * exp(-seconds / part.seconds) for part in parts)


def bearable(sets: int, seconds: float, parts: Sequence[Part] = LIFTING) -> float:
    """The highest cost of one of so many equal sets at which the last one goes too; `seconds` from end to end."""
    return 1 / sum(left_after(seconds * before, parts) for before in range(sets))
