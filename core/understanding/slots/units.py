"""The unit that somebody wants, out of a stretch."""

from typing import Final

from core.measures import MassUnit
from core.understanding.slots.stretch import Stretch

# Between what goes and what comes: `pounds to kg`, `lb -> kg`.
_INTO: Final = frozenset({"to", "into", "-", ">"})


def wanted(stretch: Stretch) -> MassUnit | None:
    """The first unit that isn't refused; `lb` where only kilos are: `i don't speak kilo`."""
    named = stretch.marks("units_word")
    kept = [one for one in named if not _is_left_behind(stretch, one.start)]
    if kept:
        return MassUnit(kept[0].value("units_word") or "kg")
    if not named:
        return None
    return MassUnit.LB if named[0].value("units_word") == "kg" else MassUnit.KG


def _is_left_behind(stretch: Stretch, at: int) -> bool:
    """`not pounds`, `from pounds`, `instead of pounds`, `pounds to kg`."""
    helps = stretch.marked.helps
    before = any(helps(at - 1, kind) is not None for kind in ("after_word", "instead"))
    to_another = stretch.word(at + 1) in _INTO and any(one.start > at for one in stretch.marks("units_word"))
    return stretch.is_denied(at) or before or to_another
