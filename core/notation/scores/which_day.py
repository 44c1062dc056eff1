"""Of which day a score is told: `yesterday's session`, `forgot to post yday`, `for monday: 7+12`."""

from datetime import date, timedelta
from typing import Final

from core.notation.calendar.moments import weekday_of
from core.notation.scores.wording import says
from core.notation.text import plain

_TODAY: Final = says("of_today")
_YESTERDAY: Final = says("of_yesterday")
_WEEKDAY: Final = says("of_a_weekday")
_AROUND: Final = says("around_a_day")
_A_WEEK: Final = 7


def day_told(text: str, today: date) -> date | None:
    """The day whose session the words are about; of a weekday the last one. None where none is told."""
    words = plain(text).lower()
    if _YESTERDAY.search(words):
        return today - timedelta(days=1)
    if named := _WEEKDAY.search(words):
        weekday = weekday_of(next(one for one in named.groups() if one))
        return today - timedelta(days=(today.weekday() - weekday) % _A_WEEK)
    return today if _TODAY.search(words) else None


def without_day(text: str) -> str:
    """The words without the day and what stands around it: `yesterday's session: 7+12` is `7+12`."""
    words = plain(text)
    for shape in (_AROUND, _YESTERDAY, _WEEKDAY, _TODAY):
        words = shape.sub(" ", words.lower())
    return words.strip(" ,:;.-") if words.split() != plain(text).lower().split() else text
