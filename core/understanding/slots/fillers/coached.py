"""The fields of what a coach tells and asks."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from typing import Final

from core.understanding.slots import days
from core.understanding.slots.fillers.plain import (
    THIS_DAY,
    Fields,
    Filler,
    day,
    each_day,
    maybe_person,
    movement,
    passed_on,
)
from core.understanding.slots.stretch import Stretch

# Not what a class recurs on.
_NO_RULE: Final = frozenset(
    {"today", "tomorrow", "this week", "next week", "last week", "next month", "yesterday"}
)


def _with_person(*more: Callable[[Stretch], Fields]) -> Filler:
    """One act for each person who is named, or is meant by a `him`, with what is told beside them."""

    def filler(stretch: Stretch) -> Sequence[Fields] | None:
        found: list[Fields] = []
        for part in stretch.parts("person"):
            person = part.named("person")
            told = {name: value for one in more for name, value in one(part).items()}
            found += [{"person": person, "text": part.said} | told] if person else []
        return found or None

    return filler


def _class(stretch: Stretch) -> Fields:
    named = " and ".join(one for one in days.days(stretch, counted=False) if one not in _NO_RULE)
    every = any(True for _ in stretch.helps("every_word"))
    links = [one.typed for one in stretch.marked.text.tokens if one.kind == "link"]
    return {
        "rule": (f"every {named}" if every else named) if named else None,
        "time": days.one_clock(stretch, of_class=True),
        "minutes": days.minutes(stretch),
        "link": links[0] if links else None,
    }


def _class_change(stretch: Stretch) -> Fields:
    found = days.meant(stretch)
    clock = days.one_clock(stretch, of_class=True)
    to = " ".join(one for one in (*found[1:2], clock) if one)
    return {"day": found[0] if found else None, "to": to or None}


def _post(stretch: Stretch) -> Fields | None:
    """Not where it is refused: `don't post yet`."""
    if any(True for _ in stretch.helps("denial")):
        return None
    own = days.days(stretch)
    # The day stands above a board; what is told after it has days of its own.
    above = replace(stretch, start=0, end=stretch.end)
    named = next((one for one in own or days.days(above) if one not in THIS_DAY), None)
    told = [one for one in (named, days.one_clock(stretch)) if one]
    later = "tonight" if "tonight" in own else "now"
    return {"when": " ".join(told) or later}


def _withdraw(stretch: Stretch) -> Fields:
    """Of a session its day too: `take yesterday's session down`."""
    said = (stretch.marked.helps(at, "what_word") for at in stretch.helps("what_word"))
    what = next(said, "session")
    day = next(iter(days.days(stretch)), None) if what == "session" else None
    return {"what": f"{day}'s {what}" if day else what}


def _what_if(stretch: Stretch) -> Fields:
    """What stands behind the `if`."""
    ifs = list(stretch.helps("if_word"))
    start = ifs[-1] + 1 if ifs else stretch.start
    return {"change": (stretch.marked.text.words(start, stretch.end) or stretch.said).rstrip(" ?!.")}


FILLERS: Final[Mapping[str, Filler]] = {
    "announce": passed_on,
    "post": _post,
    "withdraw": _withdraw,
    "class": _class,
    "class_change": _class_change,
    "class_off": each_day,
    "order": _with_person(),
    "note_fault": _with_person(movement),
    "easy_week": maybe_person,
    "teach": movement,
    "event": day,
    "who_reported": day,
    "how_is": _with_person(),
    "what_if": _what_if,
}
