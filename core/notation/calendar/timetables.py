"""Several classes in one text, each with its own days and hour: `Tue 18:30 45 min and Thu 7am`."""

import re
from collections.abc import Iterator
from datetime import date
from itertools import pairwise
from typing import Final

from core.notation.calendar.classes import LINK, ReadClass, class_in, with_lengths
from core.notation.calendar.moments import BARE_HOUR, DATE, DAY_WORD, SPAN, TIME
from core.notation.text import plain

_JOINT: Final = re.compile(r"\s*[,;/&+\n]\s*|\s+(?:and|n|plus|then)\s+", re.IGNORECASE)
_DAY: Final = re.compile(
    rf"\b(?:{DAY_WORD}s?|weekdays?|weekends?|every\s?day|daily|today|tomorrow)\b|{DATE.pattern}",
    re.IGNORECASE,
)
# `The class is at ...`: how it is from now on, of a class that there may be already.
_IS: Final = re.compile(
    r"^\W*(?:(?:hi|hey|ok|so|no|sorry|please|pls|actually)\W+)*(?:(?:(?:the|our|my)\s)?(?:live\s)?class(?:es)?"
    r"(?:['\u2019]?s|\s(?:is|are|will be|should be|has to be|have to be))"
    r"|we\s(?:all\s|usually\s|always\s|now\s)*(?:meet|train|practi[cs]e|have class(?:es)?))\s"
    r"(?!(?:off|cancell?ed|not|over|full|great|fun|hard|back)\b)",
    re.IGNORECASE,
)
_ON: Final = re.compile(rf"\bon\s+(?={DAY_WORD})", re.IGNORECASE)


def as_it_is(text: str) -> str:
    """`The class is at 18:30 tue`: what stands behind, of days that repeat; "" for what is said otherwise."""
    begun = _IS.match(text)
    return "" if begun is None or text.rstrip().endswith("?") else _ON.sub("", text[begun.end() :])


def classes_in(text: str, today: date) -> tuple[ReadClass, ...]:
    """One for each hour that is told with days; () where one has none. A link or a length told once is of all."""
    words = plain(text)
    link = LINK.search(words)
    read = [class_in(one, today) for one in by_hour(with_lengths(LINK.sub(" , ", words)))]
    if not read or not all(one.at and one.tells_days for one in read):
        return ()
    told = {one.minutes for one in read if one.minutes}
    beside = {
        "link": link[0].rstrip(".,;)") if link else None,
        **({"minutes": told.pop()} if len(told) == 1 else {}),
    }
    first = read[0].title
    return tuple(one.model_copy(update={"title": one.title or first, **beside}) for one in read)


def by_hour(words: str) -> list[str]:
    """The words about each hour.

    Days without an hour are those of the hour behind them, an hour without days has those of the one before it, and
    what tells neither is said of what stands before it.
    """
    told: list[str] = []
    waiting: list[str] = []
    for piece in _pieces(words):
        days = " ".join(match[0] for match in _DAY.finditer(" ".join([*waiting, piece])))
        alone = bool(TIME.search(piece))
        if alone and not days and told:
            told.append(f"{' '.join(match[0] for match in _DAY.finditer(told[-1]))} {piece}")
        elif days and (alone or _tells_hour(piece)):
            told.append(" , ".join([*waiting, piece]))
            waiting = []
        elif _DAY.search(piece) or not told:
            waiting.append(piece)
        else:
            told[-1] += f" , {piece}"
    if told and waiting:
        told[-1] += f" , {' , '.join(waiting)}"
    return told


def _tells_hour(words: str) -> bool:
    return bool(BARE_HOUR.search(DATE.sub(" ", SPAN.sub(" ", words))))


def _pieces(words: str) -> Iterator[str]:
    """What stands between joints, parted once more where a second hour is told: `tue 18:30 thu 7am`."""
    for piece in _JOINT.split(words):
        hours = list(TIME.finditer(piece))
        days = [one.start() for one in _DAY.finditer(piece)]
        is_led_by_days = bool(days and hours and days[0] < hours[0].start())
        start = 0
        for before, one in pairwise(hours):
            between = [day for day in days if before.end() <= day < one.start()]
            end = between[0] if is_led_by_days and between else one.start()
            yield piece[start:end]
            start = end
        yield piece[start:]
