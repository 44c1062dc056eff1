"""A coach takes a session once more: `use the same as wed for sun`, `repeat last wednesdays one`."""

import re
from typing import Final

from core.desk.coached import coached_groups
from core.desk.commands import DraftSession
from core.desk.days import today_in
from core.desk.outcome import Outcome
from core.desk.sessions.meant import at_hand, called_so, names_a_day, of_day, one_of
from core.desk.sessions.posting import draft_session
from core.desk.sessions.says import NothingOfDay
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.calendar.moments import DAY_WORD, TOMORROW, find_days
from core.notation.edits.parts import on_another_day
from core.store.records import SessionRecord, SessionState

_WHEN: Final = rf"(?:(?:this|next|coming)\s)?(?:{DAY_WORD}|today|{TOMORROW})\b(?:\s[0-9]\S*(?:\s\w+)?)?"
_REPEATS: Final = re.compile(
    r"^\W*(?:(?:please|pls|can (?:we|you|i)|could (?:we|you)|let'?s|and|ok|ill|i'?ll)\W+)*"
    r"(?:(?:(?:use|do|have|take|make|post|draft|put|run|give them)\s+)?(?:the\s+)?(?:exact\s+)?same"
    r"(?:\s+(?:one|session|workout|thing|board))?(?:\s+again)?\s+(?:as|like|from|of)|repeat|copy|reuse|re-use)\s+"
    rf"(?P<which>[^\n]+?)(?:\s+again)?(?:,?\s+(?:for|on|to|onto|as)\s+(?P<when>{_WHEN}))?\W*$"
    r"|^\W*(?:(?:please|pls|and|ok)\W+)*(?:send|use|do|post|put|run|make)\s+(?:the\s+)?same(?:\s+(?:one|session|workout|training|board))?"
    rf"(?:\s+(?:again|also|too))*\s+(?:for|on|to)\s+(?P<day>{_WHEN})(?:\s+(?:again|also|too))*\W*$",
    re.IGNORECASE,
)
_LAST: Final = re.compile(r"\blast\b", re.IGNORECASE)


async def as_repeated(visit: Visit, text: str, meant: SessionRecord | None) -> Outcome | None:
    """A draft of what a session says, for the day that is told, else for its own; None where none is named so."""
    asked = None if text.rstrip().endswith("?") else _REPEATS.match(text)
    groups = await coached_groups(visit) if asked else []
    if asked is None or not groups:
        return None
    which, when = asked["which"], asked["when"] or asked["day"]
    record = meant or (await once_more(visit, which) if which else await one_of(visit, await at_hand(visit)))
    if record is None:
        return visit.told(NothingOfDay()) if which and await names_a_day(visit, which) else None
    today = today_in(await visit.group(record.group_id), visit.now)
    days = find_days(when, today) if when else ()
    again = on_another_day(record.text, days[0] if days else None, today, catalogue())
    return await draft_session(visit, DraftSession(text=again))


async def once_more(visit: Visit, which: str) -> SessionRecord | None:
    """Of the day or the title that is named; `last` is of what was posted."""
    found = await at_hand(visit)
    if _LAST.search(which):
        found = [one for one in found if one.state is SessionState.POSTED]
    titled = (one for one in found if called_so(which, one))
    return await of_day(visit, which, found) or next(titled, None)
