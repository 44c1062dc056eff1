"""The fields of what an athlete asks."""

from collections.abc import Mapping
from typing import Final

from core.understanding.slots.fillers.plain import Fields, Filler, day, maybe_person, movement
from core.understanding.slots.stretch import Stretch


def _how_to(stretch: Stretch) -> Fields | None:
    """A word of the trade: one that is only that, else a word of every day that is asked about like one."""
    loose = (stretch.marked.helps(at, "term_word") for at in stretch.helps("term_word"))
    term = stretch.first("term") or _of_a_board(stretch)
    term = term or (next(loose, None) if stretch.means("question") else None)
    # A bell is a thing, and a swing to some: asked about like a word, it is the thing.
    only = [one for one in stretch.marks("movement") if one.value("thing") is None]
    return {"term": term} if term and not only else {"movement": stretch.first("movement")}


def _of_a_board(stretch: Stretch) -> str | None:
    """How boards write things: `16/12`, `4 sets`."""
    told = stretch.quantities("number", "load")
    pair = any(one.end < stretch.end and stretch.word(one.end) == "/" for one in told) and len(told) > 1
    return "two loads" if pair else "sets" if "sets" in [one.kind for one in stretch.quantities()] else None


def _swap(stretch: Stretch) -> Fields:
    """Which movement goes, and which comes: `rows instead of runs`, `swap runs for rows`, `rows instead`."""
    named = stretch.marks("movement")
    ids = [one.value("movement") for one in named]
    said = [(at, stretch.marked.helps(at, "instead")) for at in stretch.helps("instead")]
    before_of = [at for at, how in said if how in {"of", "other"}]
    if len(named) > 1:
        turned = any(named[0].end <= at < named[1].start for at in before_of)
        return {"movement": ids[1], "to": ids[0]} if turned else {"movement": ids[0], "to": ids[1]}
    if not named:
        return {}
    alone = [at for at, how in said if how == "alone"]
    if alone and not before_of and alone[0] >= named[0].end and not stretch.means("what"):
        return {"to": ids[0]}
    return {"movement": ids[0]}


def _my_version(stretch: Stretch) -> Fields | None:
    """Of a day to come nobody has a version: `what is on tomorrow` asks what is planned."""
    return None if _TO_COME.intersection(stretch.words) else {}


_TO_COME: Final = frozenset({"tomorrow", "tomorrows", "next"})
FILLERS: Final[Mapping[str, Filler]] = {
    "how_long": maybe_person,
    "how_to": _how_to,
    "how_heavy": movement,
    "swap": _swap,
    "my_version": _my_version,
    "my_history": movement,
    "board": day,
    "when_is_class": day,
    "why": movement,
}
