"""The dates of a group's classes, found and shown on somebody's clock."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from core.calendar.occurrences import occurrence, occurrences, takes_place
from core.calendar.slots import local_of, slot_of
from core.calendar.values import Class, Occurrence, rule_parts
from core.desk.classes.says import ClassDate, ClassPlan
from core.desk.coached import coached_groups
from core.desk.days import today_in
from core.desk.errors import StalePress, UnknownThing
from core.desk.visit import Visit
from core.notation.calendar.moments import find_days
from core.store.records import ClassRecord, ClassState
from core.store.unit import Unit

AHEAD = timedelta(days=14)
_WEEKDAYS = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")
_DAY = timedelta(days=1)
_NEAR = timedelta(days=400)


@dataclass(frozen=True, slots=True)
class Meeting:
    """One date of a stored class."""

    record: ClassRecord
    occurrence: Occurrence

    @property
    def slot(self) -> int:
        return slot_of(self.occurrence.original)

    @property
    def class_id(self) -> int:
        return self.record.id


async def known_class(visit: Visit, class_id: int) -> ClassRecord:
    """A class of the visitor's groups, or a refusal."""
    record = await visit.uow.classes.find(class_id, await visit.group_ids())
    if record is None:
        raise UnknownThing
    return record


async def known_meeting(visit: Visit, class_id: int, slot: int) -> Meeting:
    """The date, if it takes place; else a refusal."""
    found = find_meeting(await known_class(visit, class_id), slot)
    if found is None:
        raise StalePress
    return found


def find_meeting(record: ClassRecord, slot: int) -> Meeting | None:
    """The date of that original local start; None where it doesn't take place."""
    try:
        original = local_of(slot)
    except ValueError:
        return None
    if record.state is not ClassState.LIVE or not takes_place(record.of, original):
        return None
    return Meeting(record, occurrence(record.of, original))


async def meetings_to_come(
    uow: Unit, groups: Iterable[int], now: datetime, ahead: timedelta = AHEAD
) -> list[Meeting]:
    """The groups' dates that aren't over, in order of time."""
    live = [record for group in groups for record in await uow.classes.live(group)]
    found = [meeting for record in live for meeting in _between(record, now - _DAY, now + ahead)]
    return sorted(
        (one for one in found if one.occurrence.ends > now), key=lambda meeting: meeting.occurrence.starts
    )


async def meetings_on(uow: Unit, group_id: int, day: date) -> list[Meeting]:
    """The group's dates of one class-local day."""
    live = await uow.classes.live(group_id)
    found = [Meeting(record, one) for record in live for one in occurrences(record.of, day, day)]
    return sorted(found, key=lambda meeting: meeting.occurrence.starts)


def next_of(record: ClassRecord, now: datetime) -> Meeting | None:
    """The next date of a class that hasn't begun; None if there is none within a year or so."""
    coming = _between(record, now - _DAY, now + _NEAR)
    return next((one for one in coming if one.occurrence.starts > now), None)


def _between(record: ClassRecord, begins: datetime, ends: datetime) -> list[Meeting]:
    zone = ZoneInfo(record.of.zone)
    first, last = begins.astimezone(zone).date(), ends.astimezone(zone).date()
    return [Meeting(record, one) for one in occurrences(record.of, first, last)]


def shown(meeting: Meeting, zone: str | None = None, **more: object) -> ClassDate:
    """A date as it is said, on this clock or the class's own."""
    of = meeting.record.of
    clock = zone or of.zone
    return ClassDate.model_validate(
        {
            "class_id": meeting.class_id,
            "slot": meeting.slot,
            "title": of.title,
            "starts": meeting.occurrence.starts.astimezone(ZoneInfo(clock)),
            "zone": clock,
            "minutes": of.minutes,
            "link": of.link,
            **more,
        }
    )


def weekdays_of(of: Class) -> tuple[int, ...]:
    """Monday is 0; () for a class that is held once."""
    parts = rule_parts(of.rule) if of.rule else {}
    return tuple(_WEEKDAYS.index(day) for day in parts.get("BYDAY", "").split(",") if day)


def plan_of(record: ClassRecord) -> ClassPlan:
    """A class as it is said, on its own clock."""
    parts = rule_parts(record.of.rule) if record.of.rule else {}
    return ClassPlan(
        class_id=record.id,
        title=record.of.title,
        weekdays=weekdays_of(record.of),
        weeks=int(parts.get("INTERVAL", "1")),
        first=record.of.start.replace(tzinfo=ZoneInfo(record.of.zone)),
        zone=record.of.zone,
        minutes=record.of.minutes,
        link=record.of.link,
    )


async def meets_on(visit: Visit, text: str) -> bool:
    """Whether a class of theirs is on a day that the words may mean."""
    return any(
        [
            await meetings_on(visit.uow, group.id, day)
            for group in await coached_groups(visit)
            for day in find_days(text, today_in(group, visit.now))
        ]
    )
