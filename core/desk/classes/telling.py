"""When classes are, told by their coach in words: new ones, how they are from now on, what isn't right yet."""

from datetime import date, timedelta
from itertools import takewhile
from typing import Final

from core.desk.classes.coming import see_classes
from core.desk.classes.commands import SeeClasses
from core.desk.classes.meetings import known_class, weekdays_of
from core.desk.classes.setting_up import SHOWN, propose_class, read_of
from core.desk.coached import coached_groups, coached_ids
from core.desk.days import today_in
from core.desk.outcome import Outcome
from core.desk.visit import Visit
from core.notation.calendar.classes import (
    ReadClass,
    class_in,
    read_class,
    read_moved_for_good,
    read_title,
    told_of_it,
)
from core.notation.calendar.timetables import as_it_is, classes_in
from core.store.records import ClassRecord, ClassState, Group

_HALF_A_DAY: Final = timedelta(hours=12)


async def as_timetable(visit: Visit, text: str, groups: list[Group]) -> Outcome | None:
    """Classes at another time from now on, or new ones, each read back; None for words about something else."""
    today = today_in(groups[0], visit.now)
    groups = sorted(groups, key=lambda one: one.title.casefold() not in text.casefold())
    for_good = read_moved_for_good(text, today)
    now_so = (for_good,) if for_good else as_they_are(as_it_is(text), today)
    if now_so:
        return await as_they_are_now(visit, now_so, text, groups)
    words = without_titles(text, groups)
    alone = read_class(words, today)
    if alone is None:
        return None
    several = classes_in(words, today)
    return await each_proposed(visit, several if len(several) > 1 else (alone,), text, groups)


def as_they_are(words: str, today: date) -> tuple[ReadClass, ...]:
    """How classes are said to be; () where no hour and no day is told. They keep the names they have."""
    alone = class_in(words, today)
    found = classes_in(words, today) or ((alone,) if alone.at or alone.tells_days else ())
    return tuple(one.model_copy(update={"title": None}) for one in found)


def without_titles(text: str, groups: list[Group]) -> str:
    """The group a class is for is no name of it."""
    for one in groups:
        at = text.casefold().find(one.title.casefold())
        text = text[:at] + text[at + len(one.title) :] if at >= 0 else text
    return text


async def each_proposed(visit: Visit, read: tuple[ReadClass, ...], text: str, groups: list[Group]) -> Outcome:
    told = [await propose_class(visit, one, text, groups) for one in read]
    return sum(told, Outcome())


async def as_they_are_now(
    visit: Visit, read: tuple[ReadClass, ...], text: str, groups: list[Group]
) -> Outcome:
    """Each in the place of the one on its days, or of the only one there is; the list where all is so already."""
    live = [one for group in groups for one in await visit.uow.classes.live(group.id)]
    only = live[0] if len(live) == len(read) == 1 else None
    told = Outcome()
    for one in read:
        if any(is_so(known, one, alone=len(read) == 1) for known in live):
            continue
        before = next((known for known in live if shares_a_day(known, one)), only)
        live = [known for known in live if known is not before]
        own = [group for group in groups if before is None or group.id == before.group_id]
        told += await propose_class(visit, one, text, own, before.id if before else None)
    return told if told.says else await see_classes(visit, SeeClasses())


def shares_a_day(known: ClassRecord, read: ReadClass) -> bool:
    return not set(weekdays_of(known.of)).isdisjoint(read.weekdays)


def is_so(known: ClassRecord, read: ReadClass, *, alone: bool) -> bool:
    """Whether a class is as it is said to be; of one that is told `alone` not all days need be named."""
    is_now, said = read_of(known.of), read_of(known.of).put_right(read)
    is_among = alone and set(said.weekdays) <= set(is_now.weekdays)
    return is_now == (said.model_copy(update={"weekdays": is_now.weekdays}) if is_among else said)


async def as_class_put_right(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`Not 18:15 but 19`, `call it evening training`: the class that waits for a yes, where it was shown last.

    Of several the one on the day that is told; without one none is put right.
    """
    shown = await shown_last(visit)
    if not shown:
        return None
    group = await visit.group(shown[0].group_id)
    title = read_title(text)
    told = ReadClass(title=title) if title else told_of_it(text, today_in(group, visit.now))
    if told is None:
        return None
    waits = [one for one in shown if len(shown) == 1 or shares_a_day(one, told)]
    if len(waits) != 1:
        return None
    await visit.uow.classes.set_state(waits[0].id, ClassState.DISCARDED)
    groups = [group, *(one for one in await coached_groups(visit) if one.id != group.id)]
    read = read_of(waits[0].of).put_right(told)
    return await propose_class(visit, read, text, groups, waits[0].replaces_id)


async def shown_last(visit: Visit) -> list[ClassRecord]:
    """The classes that the newest messages read back and that still wait for their yes; none behind anything else."""
    refs = await visit.uow.outbox.last_refs(visit.chat, visit.now - _HALF_A_DAY)
    about = list(takewhile(lambda one: SHOWN in one, refs)) if await coached_ids(visit) else []
    found = [await known_class(visit, one[SHOWN]) for one in about]
    return [one for one in found if one.state is ClassState.PROPOSED]
