"""Training somewhere else, and with what: `I'm travelling, only a band`, `at my mum's, no weights`."""

import re
from datetime import date, timedelta
from typing import Final

from core.athletes.equipment import everything
from core.athletes.values import Equipment, SetName
from core.measures import MassUnit
from core.notation.chat import is_like_a_score
from core.notation.equipment import read_equipment
from core.notation.moments import find_days
from core.notation.text import plain
from core.values import Value

_LONGEST: Final = 160
_WHOSE: Final = (
    r"(?:mum|mom|mother|dad|father|parents|in-?laws|grandma|grandpa|gran|nan|sister|brother|friend|boyfriend|girlfriend"
    r"|partner|aunt|uncle|cousin|son|daughter|mate|family|folks)"
)
_AWAY: Final = re.compile(
    r"^\W*(?:(?:hi|hey|hello|sorry|so|btw|by the way|ok)\W+)*(?:(?:i'?m|i am|i'?ll be|we'?re|we are|currently|still"
    r"|today|this week|staying|away|back|train(?:ing)?)\W+)*"
    r"(?:travell?ing|on the road|(?:on (?:a |my )?|for )?(?:(?:work|business|family) )?(?:trip|holidays?|vacation|hols)"
    r"|abroad|away(?: from home)?|not (?:at )?home|(?:in|at) (?:a|my|the|our) (?:hotel|hostel|airbnb|holiday home|cabin"
    rf"|holiday flat|campsite|office)|(?:at|with) (?:(?:my|our|the) )?{_WHOSE}(?:'?s'?)?(?: (?:place|house|flat|home))?"
    r"|at (?:a|my) (?:friend|mate|relative)'?s(?: (?:place|house|flat))?|at work|camping"
    r"|(?:at|in) (?:the|my|a|our) (?P<gym>gym|box|studio))\b"
    r"(?: for (?:work|business|fun|a while|now)\b)?"
)
_LATER: Final = re.compile(
    r"\b(?:tomorrow|next (?:week|month)|will be|going to|i'?ll be|was|were|last (?:week|month)|yesterday|soon)\b"
)
_UNTIL: Final = re.compile(
    r"\b(?:until|till|til|through|back on|back)\s(?P<day>.{3,20}?)(?=$|,|\bwith\b|\bonly\b|\bno\b|\bjust\b)"
)
_DAYS: Final = re.compile(
    r"\bfor (?:the next |another |the )?(?P<n>[0-9]{1,2}|a|one|two|three|four|five|six|few)\s(?P<unit>days?|weeks?)\b"
)
_WEEK: Final = re.compile(r"\b(?:this|all|the whole) week\b")
_NUMBERS: Final = {"a": 1, "one": 1, "two": 2, "three": 3, "few": 3, "four": 4, "five": 5, "six": 6}
_NOTHING: Final = re.compile(
    r"\b(?:no|without(?: any| my)?|zero|not any|haven'?t (?:got )?(?:any|my)|don'?t have (?:any|my))"
    r" (?:weights?|equipment|gear|kit|gym|stuff|things|kettlebells?|dumbbells?)(?: (?:here|there|with me))?\b"
    r"|\b(?:nothing|empty[- ]handed|body ?weight|just me|only me)(?: (?:only|here|there|with me|at all))*\b"
)
_ALL: Final = re.compile(r"^(?:just about |nearly )?(?:everything|all of it|the lot|all you need)$")
# `At the gym I have ...` tells what is there; `I'm at the gym` tells of today.
_THERE_NOW: Final = re.compile(r"\b(?:i'?m|i am|we're|we are|train(?:ing)?)\b")
_FILLING: Final = re.compile(
    r"^(?:(?:and|but|so|where|with|only|just|i|we|they|have|has|got|i've|there's|there|is|are|here|today|now|all|my"
    r"|to use|this week|next week|tomorrow|took|brought|packed)\b\W*)+"
    r"|(?:\W+(?:here|there|with me|today|now|only|to use|for now|and that's it))+$"
)


_SPEAKS_OF_THINGS: Final = re.compile(
    r"\b(?:gym|equipment|gear|weights?|bands?|bells?|dumbbells?|kettlebells?|barbells?)\b"
)


class Elsewhere(Value):
    """`things`: what is there, None where nothing was said of it; `unread`: what was said and not understood.

    `until`: the last day, where told. `later`: it isn't so today.
    """

    place: SetName = "trip"
    things: tuple[Equipment, ...] | None = None
    unread: str = ""
    until: date | None = None
    later: bool = False


def may_be_elsewhere(text: str) -> bool:
    """Whether the words begin with another place: worth a look at what is there."""
    return bool(_AWAY.match(_words(text)))


def _words(text: str) -> str:
    return plain(text[: _LONGEST + 1]).lower().replace("\u2019", "'").strip(" .!")


def read_elsewhere(text: str, today: date, units: MassUnit) -> Elsewhere | None:
    """Where else they are; None where the words are about something else."""
    words = _words(text)
    away = _AWAY.match(words)
    if (
        away is None
        or len(words) > _LONGEST
        or "?" in words
        or "\n" in text.strip()
        or is_like_a_score(words)
    ):
        return None
    until, rest = _until(words[away.end() :], today)
    if away["gym"] and not _THERE_NOW.search(words):
        return None
    things, unread = _things(rest, units)
    if unread and not _SPEAKS_OF_THINGS.search(unread) and not read_equipment(unread, units).without_weight:
        return None
    place: SetName = "gym" if away["gym"] else "trip"
    return Elsewhere(place=place, things=things, unread=unread, until=until, later=bool(_LATER.search(words)))


def _until(words: str, today: date) -> tuple[date | None, str]:
    """The last day that is named, and the words without it."""
    for pattern, last_day in ((_UNTIL, _named_day), (_DAYS, _after_days), (_WEEK, _end_of_week)):
        match = pattern.search(words)
        day = last_day(match, today) if match else None
        if match is not None and day is not None:
            return day, f"{words[: match.start()]} {words[match.end() :]}"
    return None, words


def _named_day(match: re.Match[str], today: date) -> date | None:
    return next(iter(find_days(match["day"], today)), None)


def _after_days(match: re.Match[str], today: date) -> date:
    count = int(_NUMBERS.get(match["n"]) or match["n"])
    return today + timedelta(days=count * (7 if match["unit"].startswith("week") else 1) - 1)


def _end_of_week(_: re.Match[str], today: date) -> date:
    return today + timedelta(days=6 - today.weekday())


def _things(words: str, units: MassUnit) -> tuple[tuple[Equipment, ...] | None, str]:
    """What is there, and what wasn't understood of it."""
    nothing = _NOTHING.search(words)
    left = _FILLING.sub("", _NOTHING.sub(" ", words).strip(" ,;.:-")).strip(" ,;.:-")
    if not left:
        return (() if nothing else None), ""
    if _ALL.match(left):
        return everything(), ""
    read = read_equipment(left, units)
    clear = read.equipment and not read.not_understood and not read.without_weight
    return (read.equipment, "") if clear else (None, left)
