"""A coach sets up a class in words, changes it, and ends it."""

import re
from collections.abc import Mapping
from datetime import date, datetime, timedelta
from functools import reduce
from typing import Any
from zoneinfo import ZoneInfo

from core.calendar.occurrences import instant
from core.calendar.slots import slot_of
from core.calendar.values import Class, rule_parts
from core.desk.access import admitted
from core.desk.classes.coming import seen_by
from core.desk.classes.commands import (
    ChangeClass,
    ConfirmClass,
    DropClass,
    EndClass,
    ManageClass,
    PlaceClass,
)
from core.desk.classes.meetings import known_class, meetings_to_come, next_of, plan_of, shown, weekdays_of
from core.desk.classes.reminding import disarm
from core.desk.classes.says import (
    AskClass,
    ClassDropped,
    ClassEnded,
    ClassReadBack,
    ClassReady,
    ClassToManage,
    NewClass,
)
from core.desk.coached import coached_groups
from core.desk.days import today_in
from core.desk.errors import StalePress
from core.desk.joining.groups import keep_till_set_up
from core.desk.outcome import Outcome, Say
from core.desk.visit import Visit
from core.notation.calendar.classes import ReadClass, class_in
from core.notation.talk.yes_no import calls_it_off
from core.store.records import ClassRecord, ClassState, Group, Purpose

TITLE = "Live class"
MINUTES = 60
_WEEK = 7
_HALF_A_DAY = timedelta(hours=12)
# Who says `7:30` of a class that isn't in the morning means one in the evening (common practice, no source).
_EVENING, _EARLY = 16, range(4, 10)
_MOST_TEXT = 400
# What a message that shows a class speaks of.
SHOWN = "class"
_LATER = re.compile(r"\b(?:not now|later|forget it|never ?mind|leave it|no class)\b", re.IGNORECASE)


async def propose_class(
    visit: Visit, read: ReadClass, text: str, groups: list[Group], replaces: int | None = None
) -> Outcome:
    """Read a class back to its coach, asking first for what is missing; what a change doesn't speak of stays."""
    group = groups[0]
    if group.zone is None:
        return await keep_till_set_up(visit, group, text)
    read = read_of((await known_class(visit, replaces)).of).put_right(read) if replaces else read
    missing = what_is_missing(read, group, visit.now)
    if missing is not None:
        refs = {"text": text[:_MOST_TEXT], "replaces": replaces, "group": group.id}
        await visit.uow.questions.ask(visit.chat, "class", refs, visit.now)
        return visit.told(AskClass(missing=missing, title=read.title))
    of = class_of(read, group.zone, visit.now)
    await visit.uow.questions.close(visit.chat)
    record = await visit.uow.classes.propose(
        group_id=group.id, author_id=visit.person.id, of=of, now=visit.now, replaces_id=replaces
    )
    known = read.half_known and (read.half_told or not await is_like_the_evening_ones(visit, record))
    return read_back(visit, record, group, groups, half_known=known)


async def is_like_the_evening_ones(visit: Visit, record: ClassRecord) -> bool:
    """Whether all other classes of the group are in the evening, and this one could be, half a day later."""
    others = [one for one in await visit.uow.classes.live(record.group_id) if one.id != record.id]
    in_the_evening = all(one.of.start.hour >= _EVENING for one in others)
    return bool(others) and in_the_evening and record.of.start.hour in _EARLY


def what_is_missing(read: ReadClass, group: Group, now: datetime) -> str | None:
    """`day`, `time`, or `past` for a class that is held once and is over."""
    if not read.weekdays and read.on is None:
        return "day"
    if read.at is None:
        return "time"
    past = read.on is not None and instant(datetime.combine(read.on, read.at), group.zone or "UTC") <= now
    return "past" if past else None


def class_of(read: ReadClass, zone: str, now: datetime) -> Class:
    """The class from its next possible date on."""
    assert read.at is not None, "asked for before"
    return Class(
        title=read.title or TITLE,
        zone=zone,
        start=first_start(read, zone, now),
        rule=read.rule,
        minutes=read.minutes or MINUTES,
        link=read.link,
    )


def first_start(read: ReadClass, zone: str, now: datetime) -> datetime:
    assert read.at is not None, "asked for before"
    if read.on is not None:
        return datetime.combine(read.on, read.at)
    first = max(day_in(zone, now), read.since or date.min)
    days = (first + timedelta(days=ahead) for ahead in range(_WEEK + 1))
    starts = (datetime.combine(day, read.at) for day in days if day.weekday() in read.weekdays)
    return next(start for start in starts if instant(start, zone) > now)


def day_in(zone: str, now: datetime) -> date:
    return now.astimezone(ZoneInfo(zone)).date()


def read_of(of: Class) -> ReadClass:
    """A class as if its coach had told all of it."""
    parts = rule_parts(of.rule) if of.rule else {}
    return ReadClass(
        weekdays=weekdays_of(of),
        weeks=int(parts.get("INTERVAL", "1")),
        on=None if of.rule else of.start.date(),
        at=of.start.time(),
        minutes=of.minutes,
        link=of.link,
        title=of.title,
    )


def read_back(
    visit: Visit, record: ClassRecord, group: Group, groups: list[Group], *, half_known: bool
) -> Outcome:
    others = [(other.id, other.title) for other in groups if other.id != group.id and other.zone]
    said = ClassReadBack(
        plan=plan_of(record),
        group=group.title,
        half_known=half_known,
        replaces=record.replaces_id is not None,
        others=() if record.replaces_id is not None else tuple(others),
    )
    return Outcome((Say(visit.chat, said, refs={SHOWN: record.id}),))


async def tell_class_again(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """What was missing, in the coach's words; beside what they said before. A no ends it."""
    if calls_it_off(text) or _LATER.search(text):
        await visit.uow.questions.close(visit.chat)
        return visit.told(ClassDropped())
    group = await visit.group(refs["group"])
    groups = [group, *(one for one in await coached_groups(visit) if one.id != group.id)]
    today = today_in(group, visit.now)
    before, later = class_told(refs["text"], today), class_in(text, today)
    read = before.put_right(later).model_copy(update={"title": before.title or later.title})
    whole = f"{refs['text']}\n{text}".strip()
    return await propose_class(visit, read, whole, groups, refs.get("replaces"))


def class_told(text: str, today: date) -> ReadClass:
    """Each line puts right what those above it tell."""
    return reduce(ReadClass.put_right, (class_in(line, today) for line in text.split("\n")))


async def proposed(visit: Visit, class_id: int) -> ClassRecord:
    """A class that still waits for the coach's yes."""
    record = await known_class(visit, class_id)
    if record.state is not ClassState.PROPOSED:
        raise StalePress
    return record


@admitted
async def confirm_class(visit: Visit, command: ConfirmClass) -> Outcome:
    """It takes place from now on; the group hears of it, and an older one that it replaces ends."""
    record = await proposed(visit, command.class_id)
    if command.evening:
        await visit.uow.classes.put_off(record.id, record.of.start + _HALF_A_DAY, record.of.rule)
    await visit.uow.classes.set_state(record.id, ClassState.LIVE)
    record = await known_class(visit, record.id)
    ended = await end(visit, record.replaces_id) if record.replaces_id else Outcome()
    group = await visit.group(record.group_id)
    ready = visit.told(ClassReady(plan=plan_of(record), group=group.title))
    return ready + announced(visit, record, group) + ended + Outcome(settles=True)


def announced(visit: Visit, record: ClassRecord, group: Group) -> Outcome:
    coming = next_of(record, visit.now)
    if coming is None:
        return Outcome()
    said = NewClass(plan=plan_of(record), changed=record.replaces_id is not None, next=shown(coming))
    return Outcome((Say(group.chat_id, said, Purpose.POST, key=f"class:{record.id}"),))


@admitted
async def drop_class(visit: Visit, command: DropClass) -> Outcome:
    record = await proposed(visit, command.class_id)
    await visit.uow.classes.set_state(record.id, ClassState.DISCARDED)
    return visit.told(ClassDropped()) + Outcome(settles=True)


@admitted
async def place_class(visit: Visit, command: PlaceClass) -> Outcome:
    """The same class for another of the coach's groups, on that group's clock."""
    record = await proposed(visit, command.class_id)
    group = await visit.group(command.group)
    await visit.uow.classes.set_state(record.id, ClassState.DISCARDED)
    of = record.of.model_copy(update={"zone": group.zone or record.of.zone})
    placed = await visit.uow.classes.propose(
        group_id=group.id, author_id=visit.person.id, of=of, now=visit.now
    )
    groups = await coached_groups(visit)
    return read_back(visit, placed, group, groups, half_known=True) + Outcome(settles=True)


async def live_class(visit: Visit, class_id: int) -> ClassRecord:
    """A class that takes place, for its coach."""
    record = await known_class(visit, class_id)
    if record.state is not ClassState.LIVE:
        raise StalePress
    return record


@admitted
async def manage_class(visit: Visit, command: ManageClass) -> Outcome:
    record = await live_class(visit, command.class_id)
    coming = await meetings_to_come(visit.uow, [record.group_id], visit.now, timedelta(days=35))
    dates = [await seen_by(visit, one, coach=True) for one in coming if one.class_id == record.id][:4]
    return visit.told(ClassToManage(plan=plan_of(record), dates=tuple(dates)))


@admitted
async def change_class(visit: Visit, command: ChangeClass) -> Outcome:
    record = await live_class(visit, command.class_id)
    refs = {"text": "", "replaces": record.id, "group": record.group_id}
    await visit.uow.questions.ask(visit.chat, "class", refs, visit.now)
    return visit.told(AskClass(missing="all", title=record.of.title))


@admitted
async def end_class(visit: Visit, command: EndClass) -> Outcome:
    """No more dates; whoever was in for one is told."""
    record = await live_class(visit, command.class_id)
    group = await visit.group(record.group_id)
    told = await end(visit, record.id)
    note = Say(group.chat_id, ClassEnded(title=record.of.title), Purpose.POST, key=f"end:{record.id}")
    done = visit.told(ClassEnded(title=record.of.title, told=len(told.says)))
    return done + Outcome((note,), settles=True) + told


async def end(visit: Visit, class_id: int) -> Outcome:
    """End a class and tell those who were in for a date that is still to come."""
    record = await known_class(visit, class_id)
    if record.state is not ClassState.LIVE:
        return Outcome()
    await visit.uow.classes.set_state(class_id, ClassState.ENDED)
    today = datetime.combine(day_in(record.of.zone, visit.now), datetime.min.time())
    says: dict[int, Say] = {}
    for person, sign_up in await visit.uow.sign_ups.coming_from(class_id, slot_of(today)):
        await disarm(visit.uow, person.id, class_id, sign_up.slot)
        chat = await visit.uow.chats.private_of(person.id)
        if chat is not None:
            said = ClassEnded(title=record.of.title)
            says[chat.id] = Say(chat.id, said, Purpose.REMINDER, key=f"end:{class_id}:{person.id}")
    return Outcome(tuple(says.values()))
