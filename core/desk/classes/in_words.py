"""What somebody types about classes and reminders, beside every button."""

import re

from core.desk.classes.coming import see_classes
from core.desk.classes.commands import SeeClasses
from core.desk.classes.dates import call_off_in_words, move_in_words
from core.desk.classes.habits import fulfil
from core.desk.classes.meetings import meets_on
from core.desk.classes.telling import as_timetable
from core.desk.coached import coached_groups
from core.desk.commands import SetZone
from core.desk.days import today_in
from core.desk.joining.groups import set_zone
from core.desk.outcome import Outcome
from core.desk.sessions.coming import which_draft
from core.desk.sessions.drafting import as_another_time
from core.desk.sessions.meant import at_hand, is_named_so, of_day
from core.desk.sessions.withdrawing import withdraw_of_day
from core.desk.talk.asked import keeps
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.calendar.class_dates import CalledOff, read_called_off, read_moved, tells_not_there
from core.notation.calendar.moments import find_days
from core.notation.calendar.reminding import OwnZone, read_wish
from core.notation.calendar.zones import places_in, read_zone
from core.store.records import Group

_LIST = re.compile(
    r"\W*(?:(?:my|the|next|all|show|see|list|upcoming)\s)*class(?:es)?\W*"
    r"|\W*when(?:'s| is| are)\s(?:(?:the|my|our|next)\s)*class(?:es)?\W*",
    re.IGNORECASE,
)
# So many ends of lines are no sentence.
_BREAKS = 2
_GROUP_CLOCK = re.compile(
    r"\b(?:group(?:['\u2019]?s)?|our|their|everybody['\u2019]?s|team(?:['\u2019]?s)?)\s+(?:clock|time ?zone|zone)\b\s*"
    r"(?:(?:is|to|on|in|should be|shall be|set to|now|as)\s+)*(?P<place>[^\n?]{2,60}?)(?:\s+time)?\W*$",
    re.IGNORECASE,
)


async def as_class_words(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """A class, a date called off or moved, the list of them, or a wish for reminders; None for all else."""
    if _LIST.fullmatch(text):
        return await see_classes(visit, SeeClasses())
    groups = await coached_groups(visit)
    if groups:
        coached = await as_coach(visit, text, groups)
        if coached is not None:
            return coached
    wish = read_wish(text)
    if wish is None or not await visit.memberships():
        return None
    if isinstance(wish, OwnZone) and await keeps(visit, "place"):
        return None  # a place is the answer to which clock the group goes by
    return await fulfil(visit, wish)


async def of_a_session(visit: Visit, text: str) -> Outcome | None:
    """`Cancel wednesday's`, `move wednesday's to thursday`, where there is no class then: the session of that day."""
    if "class" in text.casefold() or await meets_on(visit, text.partition(" to ")[0]):
        return None
    which, _, when = text.partition(" to ")
    record = await of_day(visit, which)
    if record is None:
        return None
    if not await is_named_so(visit, which, record):
        return await which_draft(visit, [one for one in await at_hand(visit) if one.posted_at is None])
    return await as_another_time(visit, record, when) if when else await withdraw_of_day(visit, which)


def group_clock(text: str) -> str | None:
    """The zone in `set the group's clock to London time`; None where no one place is told."""
    found = _GROUP_CLOCK.search(text)
    zones = (read_zone(found["place"]) or places_in(found["place"])) if found else ()
    return zones[0] if len(zones) == 1 else None


async def as_coach(visit: Visit, text: str, groups: list[Group]) -> Outcome | None:
    zone = group_clock(text)
    if zone is not None and len(groups) == 1:
        return await set_zone(visit, SetZone(group=groups[0].id, zone=zone))
    today = today_in(groups[0], visit.now)
    if tells_not_there(text):
        days = find_days(text, today)
        return (
            await call_off_in_words(visit, CalledOff(days=days), groups)
            if await meets_on(visit, text)
            else None
        )
    off, moved = read_called_off(text, today), read_moved(text, today)
    about = await of_a_session(visit, text) if off or moved else None
    if about:
        return about
    if off is not None:
        return await call_off_in_words(visit, off, groups)
    if moved is not None:
        return await move_in_words(visit, moved, groups)
    return None if await keeps(visit, "class") or is_board(text) else await as_timetable(visit, text, groups)


def is_board(text: str) -> bool:
    """Whether there is work in several rows, whatever day stands above."""
    return text.strip().count("\n") >= _BREAKS and read_session(text, catalogue()).holds_work
