"""A ladder on the minute told without its end: `1 burpee in minute 1, 2 in minute 2, ... until you can't`.

A block has rounds or minutes, so how far the ladder goes must be written; what could be meant is offered.
"""

import re
from itertools import pairwise
from typing import NamedTuple

# Where nobody says how far it goes, ten minutes are offered (estimate).
_USUAL_END = 10
_LONGEST = 30
_ORDINALS = {"first": 1, "second": 2, "third": 3, "fourth": 4}
_NAME = r"(?!(?:in|on|at|for|the)\b)[a-z][a-z'\- ]{0,40}?"
_MINUTE = r"(?:minutes?|mins?)"
# The trade's word for it, whatever the movement (common practice, no source).
_BY_NAME = re.compile(rf"^\W*death by:? (?:(?P<n>[0-9]{{1,2}})\s)?(?P<what>{_NAME})\W*$")
_RUNG = re.compile(
    rf"(?<![0-9])(?P<n>[0-9]{{1,2}})\s(?:(?P<what>{_NAME})\s)?(?:in |on |at |for )?(?:the )?"
    rf"{_MINUTE} (?P<at>[0-9]{{1,2}})\b"
)
_ADDED = re.compile(
    rf"(?<![0-9])(?P<n>[0-9]{{1,2}}) (?P<what>{_NAME})(?: (?:in|on|at) (?:the )?{_MINUTE} 1)?"
    rf"[\W_]+(?:(?:and|then) )?(?:adding|add|plus|\+)\s?(?P<step>[0-9]{{1,2}}|one)\b[a-z\- ]{{0,30}}?"
    rf"\b(?:each|every|per|a) (?:minute|min)\b"
)
_END = re.compile(
    rf"\b(?:until|till?|up to|to|through)\s(?:{_MINUTE}\s)?(?P<end>[0-9]{{1,2}})\b(?!\s?[a-z])"
    rf"|\bfor (?P<for>[0-9]{{1,2}}) {_MINUTE}"
)
_NO_MORE = {"", "more", "reps", "rep"}


class _Ladder(NamedTuple):
    what: str
    first: int
    step: int
    end: int | None = None


def with_an_end(text: str) -> str | None:
    """The ladder of a row as it can be read, `EMOM 10: 1-2-3-4-5-6-7-8-9-10 burpees`; None if it tells none."""
    words = _counted(" ".join(text.lower().split()))
    found = _by_name(words) or _added(words) or _rung_by_rung(words)
    if found is None:
        return None
    told = _END.search(words)
    end = found.end or (int(told["end"] or told["for"]) if told else _USUAL_END)
    if not 1 < end <= _LONGEST:
        end = _USUAL_END
    rungs = "-".join(str(found.first + found.step * number) for number in range(end))
    name = found.what if found.what.endswith("s") else f"{found.what}s"
    return f"EMOM {end}: {rungs} {name}"


def _counted(words: str) -> str:
    """`the first minute, 2 the second` -> `minute 1, 2 minute 2`, where it is about minutes at all."""
    if not re.search(_MINUTE, words):
        return words
    for ordinal, number in _ORDINALS.items():
        words = re.sub(rf"(?:the )?\b{ordinal}\b(?: {_MINUTE})?", f"minute {number}", words)
    return words


def _by_name(words: str) -> _Ladder | None:
    found = _BY_NAME.match(words)
    return _Ladder(found["what"], 1, 1) if found else None


def _added(words: str) -> _Ladder | None:
    found = _ADDED.search(words)
    if found is None:
        return None
    step = 1 if found["step"] == "one" else int(found["step"])
    return _Ladder(found["what"], int(found["n"]), step) if step else None


def _rung_by_rung(words: str) -> _Ladder | None:
    """At least two rungs that rise evenly from the first minute, all of one movement."""
    rungs = [(int(one["n"]), one["what"] or "", int(one["at"])) for one in _RUNG.finditer(words)]
    if len(rungs) < 2 or [at for _, _, at in rungs[:2]] != [1, 2]:  # noqa: PLR2004 - two make a step
        return None
    (first, what, _), (second, _, _) = rungs[:2]
    step = second - first
    evenly = all(
        later - before == step * (at - then) for (before, _, then), (later, _, at) in pairwise(rungs)
    )
    same = all(name in _NO_MORE or name.rstrip("s") == what.rstrip("s") for _, name, _ in rungs[1:])
    if not what or step <= 0 or not evenly or not same:
        return None
    last = rungs[-1][2]
    return _Ladder(what, first, step, last if last > len(rungs) else None)
