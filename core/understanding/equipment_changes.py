"""Equipment that comes or goes, told in the middle of a chat: `bought a 24`, `sold the chair`, `trip: a band`.

Precise before all: a message is a change only where it is nothing else. Whatever is left over, a question, or
a number that could be a score, makes it ordinary chat.
"""

import re
from typing import Final

from core.athletes.equipment import everything
from core.athletes.values import Equipment, SetName
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.quantities import MASS_UNIT, NUMBER, NUMBER_WORDS, kilograms
from core.notation.text import plain_row
from core.understanding.things import read_things
from core.values import Value

LONGEST: Final = 160
# Stands for the thing that isn't named; it never is equipment of anybody.
UNNAMED: Final = "unnamed"
_HEAVIEST_KG: Final = 100


class EquipmentChange(Value):
    """What came, what went, or what all is there now (`whole`), in a place.

    `bare`: a weight came, of a thing that isn't named. `forgotten`: it was there all along. `idle`: what was
    named and no version depends on.
    """

    place: SetName = "home"
    came: tuple[Equipment, ...] = ()
    went: tuple[Equipment, ...] = ()
    whole: tuple[Equipment, ...] | None = None
    bare: Equipment | None = None
    forgotten: bool = False
    idle: tuple[str, ...] = ()


_PLACES: Final[dict[str, SetName]] = {
    "home": "home",
    "house": "home",
    "gym": "gym",
    "box": "gym",
    "studio": "gym",
    "trip": "trip",
    "trips": "trip",
    "travel": "trip",
    "travelling": "trip",
    "traveling": "trip",
    "hotel": "trip",
    "holiday": "trip",
    "vacation": "trip",
    "on the road": "trip",
    "away": "trip",
    "away from home": "trip",
}
_PLACE = "|".join(sorted(_PLACES, key=len, reverse=True))
_SET: Final = re.compile(
    rf"^(?:(?:at|in|on|when|while|for)?\s?(?:the|a|my)?\s?(?P<a>{_PLACE})\s?(?::|=|-\s)\s*"
    rf"|(?:at|in|on|when|while|for)\s(?:the |a |my )?(?P<b>{_PLACE}),?\s(?:i (?:only |just )?(?:have|own|got)"
    rf"|i've(?: only| just)?(?: got)?|there(?:'s| is| are)|they have|we have)\s)(?P<things>.+)$"
)
_ALL: Final = re.compile(r"^(?:just about |nearly |almost )?(?:everything|all|anything|the lot)(?: i need)?$")
_CAME: Final = re.compile(
    r"^(?:i |we |i've |i have |we've )?(?:just |now |finally |also |recently )*(?:(?:bought|purchased|borrowed)\s"
    r"|(?:got|own|have)\s(?:me |myself )?(?=(?:an? |some |two |three )?(?:brand )?new\s))"
    r"(?:me |myself )?(?P<things>.+)$"
)
# `I have a band` alone may be the answer to a question; what is had beside the rest can only have been forgotten.
_HI: Final = r"^(?:(?:oh|and|sorry|btw|by the way|wait|hi|hey)\W+)*"
_FORGOT: Final = r"(?:i )?(?:just )?forgot(?: to (?:say|mention|tell you))?\W+(?:that )?"
_HAVE: Final = r"(?:i|we)?(?:'ve)? ?(?:have|own|got)(?: got)? "
_ALSO: Final = re.compile(
    rf"{_HI}(?:{_FORGOT}{_HAVE}|(?:i|we)(?:'ve)? also (?:have|own|got)(?: got)? |{_HAVE}also )(?P<things>.+)$"
    rf"|{_HI}(?:{_FORGOT})?{_HAVE}(?P<too>.+?),?\s(?:too|as well)$"
)
_WENT: Final = re.compile(
    r"^(?:i |we |i've |i have |we've )?(?:just |now |finally |also |recently )*(?P<verb>sold|lent|loaned|gave away"
    r"|given away|gave back|returned|broke|threw out|threw away|got rid of|lost)\s(?P<things>.+)$"
    r"|^(?:i |we )?(?:no longer have|don't have|do not have|haven't got)\s(?P<lacked>.+?)\s"
    r"(?:any ?more|any longer|now)$"
)
_TAIL: Final = re.compile(
    r"\s(?:today|yesterday|now|last week|this week|at the weekend|to (?:a|my) (?:friend|brother|sister|neighbour"
    r"|neighbor|mate)|from (?:a|my) (?:friend|brother|sister|neighbour|neighbor|mate)|for (?:home|training)"
    r"|by the way|btw|fyi)$"
)
_NEW: Final = re.compile(r"\b(?:brand )?new\b\s?|\bused\b\s?|\bsecond ?hand\b\s?")
_OWNERS: Final = re.compile(r"^(?:all )?(?:of )?(?:my|the|our|that|this|those|these|both)\s")
_BARE: Final = re.compile(
    rf"^(?:(?P<count>an?|one|two|2|another|a second)\s)?(?P<kg>{NUMBER})\s?(?P<u>{MASS_UNIT})?$"
)


def read_equipment_change(text: str, unit: MassUnit = MassUnit.KG) -> EquipmentChange | None:
    """The change in a message; None where it is anything else."""
    if len(text) > LONGEST or "\n" in text.strip() or "?" in text:
        return None
    words = plain_row(text).text.lower().strip(" .!")
    return _set(words, unit) or _came(words, unit) or _also(words, unit) or _went(words, unit)


def _set(words: str, unit: MassUnit) -> EquipmentChange | None:
    match = _SET.match(words)
    if match is None:
        return None
    place = _PLACES[match["a"] or match["b"]]
    told = match["things"].strip()
    if _ALL.match(told):
        return EquipmentChange(place=place, whole=everything())
    whole = _all_read(told, unit)
    return None if whole is None else EquipmentChange(place=place, whole=whole)


def _came(words: str, unit: MassUnit) -> EquipmentChange | None:
    match = _CAME.match(words)
    if match is None:
        return None
    told = _NEW.sub("", _trimmed(match["things"]))
    bare = _bare(told, unit)
    if bare is not None:
        return EquipmentChange(bare=bare)
    came = _all_read(told, unit)
    return EquipmentChange(came=came) if came else None


def _also(words: str, unit: MassUnit) -> EquipmentChange | None:
    match = _ALSO.match(words)
    if match is None:
        return None
    came = _all_read(_trimmed(match["things"] or match["too"]), unit)
    return EquipmentChange(came=came, forgotten=True) if came else None


def _went(words: str, unit: MassUnit) -> EquipmentChange | None:
    match = _WENT.match(words)
    if match is None:
        return None
    told = _trimmed(match["things"] or match["lacked"])
    owned = _OWNERS.sub("", told)
    named = catalogue().implement_by_name(owned.removeprefix("adjustable "))
    if named is not None:
        return EquipmentChange(went=(Equipment(implement=named.id),))
    bare = _bare(owned, unit)
    if bare is not None and (match["verb"] or "") != "lost":
        return EquipmentChange(went=(bare,))
    went = _all_read(owned, unit, lost=match["verb"] == "lost")
    return EquipmentChange(went=went) if went else None


def _trimmed(told: str) -> str:
    while match := _TAIL.search(told):
        told = told[: match.start()]
    return told.strip(" ,")


def _all_read(told: str, unit: MassUnit, *, lost: bool = False) -> tuple[Equipment, ...] | None:
    """Equipment, only if every word of it is equipment. `lost 10s` is a time: it must be named."""
    if lost and not any(
        name in told for thing in catalogue().implements for name in (thing.id, *thing.names)
    ):
        return None
    read = read_things(told, unit)
    return None if read.not_understood or read.without_weight else read.equipment


def _bare(told: str, unit: MassUnit) -> Equipment | None:
    """`a 24`: a weight of nothing that is named."""
    match = _BARE.match(told)
    if match is None:
        return None
    load = kilograms(match["kg"], match["u"], unit)
    if not 0 < load <= _HEAVIEST_KG:
        return None
    each = NUMBER_WORDS.get(match["count"] or "", 2 if match["count"] == "2" else 1)
    return Equipment(implement=UNNAMED, loads_kg=(load,), each=int(each))
