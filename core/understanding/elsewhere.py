"""Training somewhere else, and with what: `I'm travelling, only a band`, `at my mum's, no weights`."""

import re
from datetime import date
from typing import Final

from core.athletes.equipment import everything
from core.athletes.values import Equipment, SetName
from core.measures import MassUnit
from core.notation.calendar.lasting import names_days, read_lasting
from core.notation.talk.chat import is_like_a_score
from core.notation.text import plain
from core.understanding.acts import Elsewhere as ElsewhereAct
from core.understanding.things import read_things
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
# Some other time, and nobody knows when.
_LATER: Final = re.compile(
    r"\b(?:next month|will be|going to|i'?ll be|was|were|last (?:week|month)|yesterday|soon)\b"
)
_WHEN: Final = (
    r"(?:(?:for )?(?:today|tomorrow|(?:this|next|all|the whole) week)"
    r"|(?:from|on|until|till|for|as of) (?:\w+ ?){1,4}?(?:on )?)"
)
# Whoever says so of some days alone has something else on the others.
_ONLY_HAVE: Final = re.compile(
    rf"^\W*(?:(?:hi|hey|hello|sorry|so|btw|by the way|ok|but)\W+)*(?:{_WHEN}\W+)?(?:i|we)(?:'ll| will)? ?"
    r"(?:(?:only|just) (?:have|got|'ve got)|(?:have|'ve got|have got|'ve)(?: got)? (?:only|just|nothing but))\b"
)
_DATED: Final = re.compile(rf"^\W*{_WHEN}\W+(?=i\b|i'|we\b)")
_NOTHING: Final = re.compile(
    r"\b(?:no|without(?: any| my)?|zero|not any|haven'?t (?:got )?(?:any|my)|don'?t have (?:any|my))"
    r" (?:weights?|equipment|gear|kit|gym|stuff|things|kettlebells?|dumbbells?)(?: (?:here|there|with me))?\b"
    r"|\b(?:wo|do|have|ha|ca)n'?t (?:have|got|get) (?:got )?(?:any(?:thing)?|a thing|access to anything)\b(?! else)"
    r"|\b(?:nothing|empty[- ]handed|body ?weight|just me|only me)(?: (?:only|here|there|with me|at all))*\b"
)
_GYM: Final = re.compile(r"\b(?:gym|studio|fitness (?:room|centre|center))\b")
# `Away in Spain, nothing with me`: where it is tells nothing of what is there.
_IN_SOME_PLACE: Final = re.compile(
    r"^\W*(?:in|to) (?!a\b|an\b|the\b|my\b)[a-z]{3,}(?=$|[,;.]| (?:and|with|w|no|nothing|so|i|we|but)\b)"
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

    `since`, `until`: the first day if it isn't today, and the last, where told. `later`: some other time.
    """

    place: SetName = "trip"
    things: tuple[Equipment, ...] | None = None
    unread: str = ""
    since: date | None = None
    until: date | None = None
    later: bool = False


def may_be_elsewhere(text: str) -> bool:
    """Whether the words begin with another place, or with what alone is there: worth a look at the rest."""
    words = _words(text)
    return bool(_AWAY.match(words) or _ONLY_HAVE.match(words) or _AWAY.match(_undated(words)))


def _undated(words: str) -> str:
    """Without the days in front: `next week I'm away`."""
    return _DATED.sub("", words, count=1)


def _words(text: str) -> str:
    return plain(text[: _LONGEST + 1]).lower().replace("\u2019", "'").strip(" .!")


def read_elsewhere(text: str, today: date, units: MassUnit) -> Elsewhere | None:
    """Where else they are; None where the words are about something else."""
    words = _words(text)
    lasting = read_lasting(words, today)
    away = _AWAY.match(lasting.rest)
    only = _ONLY_HAVE.match(lasting.rest) if away is None and names_days(words, today) else None
    begins = away or only
    if (
        begins is None
        or len(words) > _LONGEST
        or "?" in words
        or "\n" in text.strip()
        or is_like_a_score(words)
    ):
        return None
    is_gym = bool(away and away["gym"])
    if is_gym and not _THERE_NOW.search(words):
        return None
    things, unread = _things(lasting.rest[begins.end() :], units)
    if only and not things and not unread:
        return None
    if unread and not _SPEAKS_OF_THINGS.search(unread) and not read_things(unread, units).without_weight:
        return None
    return Elsewhere(
        place="gym" if is_gym else "trip",
        things=things,
        unread=unread,
        since=lasting.since,
        until=lasting.until,
        later=lasting.since is None and bool(_LATER.search(words)),
    )


def elsewhere_in(act: ElsewhereAct, text: str, today: date) -> Elsewhere:
    """The same of words that were understood to tell it, with the days of the whole message."""
    words = _words(text)
    lasting = read_lasting(words, today)
    nothing = _NOTHING.search(words) and not act.equipment
    return Elsewhere(
        place="gym" if _GYM.search(act.text.lower()) else "trip",
        things=() if nothing else act.equipment or None,
        since=lasting.since,
        until=lasting.until,
        later=lasting.since is None and bool(_LATER.search(words)),
    )


def _things(words: str, units: MassUnit) -> tuple[tuple[Equipment, ...] | None, str]:
    """What is there, and what wasn't understood of it."""
    nothing = _NOTHING.search(words)
    placed = _IN_SOME_PLACE.sub(" ", _NOTHING.sub(" ", words).strip(" ,;.:-"), count=1)
    left = _FILLING.sub("", placed.strip(" ,;.:-")).strip(" ,;.:-")
    if not left:
        return (() if nothing else None), ""
    if _ALL.match(left):
        return everything(), ""
    read = read_things(left, units)
    return (read.equipment, "") if read.is_clear else (None, left)
