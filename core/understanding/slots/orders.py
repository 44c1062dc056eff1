"""What a coach orders for somebody, out of a stretch: which line, and what shall become of it."""

import tomllib
from collections.abc import Iterator, Mapping
from functools import cache
from pathlib import Path
from typing import Any, Final, NamedTuple

from core.understanding.slots import days
from core.understanding.slots.stretch import Stretch

# Between what says a step and the movement of it.
_NEAR: Final = 4
_OF_ALL: Final = frozenset({"easier", "harder", "bare", "written", "rest", "half", "fewer", "shorter"})
# Where one word may say several steps, what says most counts.
_FIRST: Final = ("shorter", "rest", "bare", "written", "half", "fewer", "easier", "harder", "out")


@cache
def _table() -> Mapping[str, Mapping[str, Any]]:
    return tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))


def _wishes() -> Mapping[str, str]:
    return _table()["wishes"]


@cache
def _phrases() -> Mapping[str, Mapping[tuple[str, ...], str]]:
    of_words = (
        (kind, {tuple(one.split()): kind for one in said}) for kind, said in _table()["words"].items()
    )
    steps = {tuple(one.split()): step for step, said in _table()["steps"].items() for one in said}
    return {"steps": steps, **dict(of_words)}


def order(stretch: Stretch) -> dict[str, Any]:
    """The fields of an order; {} where nothing is ordered that anybody could carry out by itself."""
    if says(stretch, "told") or any(at == stretch.start for at, _, _ in _said(stretch, "asked")):
        return {}
    if stretch.marks("part", "maybe_part", "condition") and not _movements(stretch):
        return {}
    found = _swapped(stretch) or _stepped(stretch) or _counted(stretch)
    return found | _when(stretch) if found else {}


def says(stretch: Stretch, kind: str) -> bool:
    return any(True for _ in _said(stretch, kind))


def _said(stretch: Stretch, kind: str) -> Iterator[tuple[int, int, str]]:
    """Where phrases of a kind stand, the longest at each place, and what they say."""
    phrases, words = _phrases()[kind], stretch.words
    longest = max(map(len, phrases))
    at = 0
    while at < len(words):
        size = next((n for n in range(longest, 0, -1) if words[at : at + n] in phrases), 0)
        if size:
            yield stretch.start + at, stretch.start + at + size, phrases[words[at : at + size]]
        at += size or 1


class Named(NamedTuple):
    """A movement where it is named; `refused`: in words that leave it out, as `no running`."""

    start: int
    end: int
    movement: str
    refused: bool = False


def _movements(stretch: Stretch) -> list[Named]:
    """Each movement once, as it was named first."""
    found: dict[str, Named] = {}
    for one in stretch.marks("movement", "wish"):
        name = one.value("movement") or _wishes().get(one.value("wish") or "")
        if name is not None:
            found.setdefault(name, Named(one.start, one.end, name, one.value("movement") is None))
    return list(found.values())


def _swapped(stretch: Stretch) -> dict[str, Any]:
    """`rows not planks`, `no planks, rows instead`, `swap the plank for rows`: which goes, and which comes."""
    named = _movements(stretch)
    if len(named) != 2:  # noqa: PLR2004 - one goes, one comes
        return {}
    one, other = named
    refused = [at for at, _, _ in _said(stretch, "not")]
    out = [at for at, _, step in _said(stretch, "steps") if step == "out"]
    joined = any(one.end <= at < other.start for at, _, _ in _said(stretch, "for"))
    if other.refused or any(one.end <= at < other.start for at in (*refused, *out)):
        goes, comes = other, one
    elif (
        one.refused
        or any(one.start - _NEAR <= at < one.start for at in out)
        or (says(stretch, "swap") and joined)
    ):
        goes, comes = one, other
    elif joined and says(stretch, "gives"):
        goes, comes = other, one
    else:
        return {}
    return {"step": "other", "movement": goes.movement, "to": comes.movement}


def _stepped(stretch: Stretch) -> dict[str, Any]:
    """What is said of the one movement that is named, or of all of the session."""
    named = _movements(stretch)
    inside = {at for one in named for at in range(one.start, one.end)}
    told = [(end, step) for at, end, step in _said(stretch, "steps") if at not in inside]
    # `Rests 2 minutes between sets` is no day off.
    told = [one for one in told if one[1] != "rest" or not stretch.quantities("span")]
    told.sort(key=lambda one: _FIRST.index(one[1]))
    if not named:
        return {"step": told[0][1]} if told and told[0][1] in _OF_ALL else {}
    if len(named) > 1:
        return {}
    one = named[0]
    near = [step for end, step in told if step != "out" or 0 <= one.start - end <= _NEAR]
    if near[:1] == ["rest"]:
        return {"step": "rest"}
    if near or one.refused:
        return {"step": near[0] if near else "out", "movement": one.movement}
    alone = any(stretch.marked.helps(at, "instead") == "alone" for at in stretch.helps("instead"))
    return {"step": "other", "to": one.movement} if alone and not _numbers(stretch) else {}


def _numbers(stretch: Stretch) -> list[float]:
    return [one.value for one in stretch.quantities("number", "reps", "distance", "span", "load")]


def _counted(stretch: Stretch) -> dict[str, Any]:
    """`give Bo 8 push-ups`, `the run 100 m for Lene`, `Nina should use 12 kg for swings`."""
    named = _movements(stretch)
    if not named and stretch.quantities("rounds") and (says(stretch, "gives") or says(stretch, "steps")):
        return {"step": "rounds"}
    if len(named) != 1 or not says(stretch, "gives"):
        return {}
    told: dict[str, Any] = {"movement": named[0].movement}
    if loads := stretch.quantities("load"):
        return told | {"step": "load", "amount": loads[0].value}
    numbers = stretch.quantities("number", "reps", "distance", "span")
    is_one = len(numbers) == 1 or (len(numbers) > 1 and says(stretch, "not"))
    return told | {"step": "amount", "amount": numbers[0].value} if is_one else {}


def _when(stretch: Stretch) -> dict[str, Any]:
    until, named = days.until(stretch), days.days(stretch)
    if until is not None:
        return {"until": until}
    if says(stretch, "lasting") or (not named and any(True for _ in stretch.helps("until_word"))):
        return {"until": "always"}
    return {"day": named[0]} if named else {}
