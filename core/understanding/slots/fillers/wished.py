"""The fields of what an athlete wishes."""

import re
from collections.abc import Mapping, Sequence
from typing import Final

from core.understanding.slots import days, places, units
from core.understanding.slots.fillers.plain import Fields, Filler, day, each_day, passed_on
from core.understanding.slots.stretch import Stretch

_ONE_THING: Final = re.compile(r"\b(?:scores?|results?|entry|session)\b")
_ALL: Final = re.compile(r"\b(?:all|everything|data|account|me)\b")


def _each_day_wanted(stretch: Stretch) -> Sequence[Fields]:
    """`thursday and not friday`: without the refused day."""
    wanted = days.wanted(stretch)
    return [{"day": one} for one in wanted] if wanted else each_day(stretch)


def _remind(stretch: Stretch) -> Fields:
    return {"minutes_before": days.minutes(stretch)}


def _quiet(stretch: Stretch) -> Fields:
    since, to = days.clocks(stretch)
    return {"since": since, "to": to}


def _units(stretch: Stretch) -> Fields | None:
    wanted = units.wanted(stretch)
    return {"units": wanted} if wanted else None


def _zone(stretch: Stretch) -> Fields | None:
    place = (
        places.offset(stretch)
        or stretch.first("city")
        or stretch.first("zone_name")
        or places.behind_in(stretch)
    )
    if place is None and stretch.context.question == "zone":
        place = places.unknown_words(stretch)
    return {"place": place} if place else None


def _forget(stretch: Stretch) -> Fields | None:
    """All of somebody, not one thing that is named: `delete my score`."""
    said = stretch.said.lower()
    return None if _ONE_THING.search(said) and not _ALL.search(said) else {}


FILLERS: Final[Mapping[str, Filler]] = {
    "joins_class": _each_day_wanted,
    "leaves_class": each_day,
    "remind": _remind,
    "no_reminders": day,
    "quiet": _quiet,
    "zone": _zone,
    "units": _units,
    "forget_me": _forget,
    "to_coach": passed_on,
}
