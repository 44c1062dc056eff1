"""A score of which nobody knows the session: read in the way that its own numbers have."""

from itertools import pairwise
from typing import Final

from core.measures import AmountUnit, MassUnit
from core.notation.scores.asking import nothing_scored
from core.notation.scores.reading import read_score
from core.notation.scores.said import Told, told
from core.notation.text import plain
from core.scores.values import ReadScore
from core.sessions.values import Block, Format, Line, Session


def _of(format_: Format, unit: AmountUnit = AmountUnit.REPS) -> Session:
    lines = (Line(written="", movement="run", unit=unit),) if format_ is Format.MAX_REPS else ()
    return Session(blocks=(Block(format=format_, lines=lines),))


# From the plainest to what may be many things.
_BY_KIND: Final = (
    (("rounds",), _of(Format.AMRAP)),
    (("load", "hands"), _of(Format.MAX_LOAD)),
    (("clock",), _of(Format.FOR_TIME)),
    (("cal",), _of(Format.MAX_REPS, AmountUnit.KCAL)),
    (("reps",), _of(Format.MAX_REPS)),
    (("span",), _of(Format.FOR_TIME)),
    (("metres",), _of(Format.MAX_REPS, AmountUnit.METRES)),
)
_ROUNDS, _REPS = _of(Format.AMRAP), _of(Format.MAX_REPS)


def read_unseen(text: str, unit: MassUnit = MassUnit.KG, *, asked: bool = False) -> ReadScore:
    """The score that the words tell by themselves. `asked`: a score was asked for, so that a bare number is one."""
    said = told(plain(text).lower())
    session = _session_of(said, asked=asked)
    return read_score(text, session, 0, unit) if session else nothing_scored()


def _session_of(said: Told, *, asked: bool) -> Session | None:
    bare = said.of("bare")
    if any(said.gap(one, other).strip() == "+" for one, other in pairwise(bare)):
        return _ROUNDS
    found = next((session for kinds, session in _BY_KIND if said.of(*kinds)), None)
    return found or (_REPS if asked and len(bare) == 1 else None)
