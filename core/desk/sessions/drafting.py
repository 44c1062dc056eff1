"""What a coach types about their draft: `post now`, `post it tomorrow at 7`, `discard it`."""

import re
from datetime import UTC, date, datetime, time, timedelta
from typing import Final

from core.athletes.easing import WEEK
from core.desk.coached import coached_ids
from core.desk.commands import DiscardSession, PostLater, PostSession
from core.desk.days import day_to_post, own_days, today_in, zone_of
from core.desk.outcome import Outcome
from core.desk.sessions.landing import how_it_lands
from core.desk.sessions.meant import (
    in_hand,
    meant_to_move,
    of_day,
    one_of,
    replied,
    to_be_posted,
    unposted,
)
from core.desk.sessions.posting import discard_session, post_session, usual_hour
from core.desk.sessions.reading import unread_lines
from core.desk.sessions.repeating import as_repeated
from core.desk.sessions.says import AskOtherDay, AskPostWithout, AskWhen, NoHabit
from core.desk.sessions.scheduled import other_day, post_later, to_post
from core.desk.sessions.withdrawing import as_dropped
from core.desk.talk.not_got import left_over
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.calendar.moments import (
    DAY_WORD,
    RELATIVE_DAY,
    TOMORROW,
    Clock,
    find_clock,
    find_days,
    hints_at_an_hour,
    names_only_a_weekday,
)
from core.notation.calendar.timetables import by_hour
from core.store.records import Group, SessionRecord, SessionState

_NOW = re.compile(r"^\W*(?:now|right away|please|to the group|at once)?\W*$", re.IGNORECASE)
_OF_CLASS: Final = re.compile(r"\bclass(?:es)?\b", re.IGNORECASE)
_AT_ONCE: Final = re.compile(r"\b(?:now|right away|at once|straight away)\b", re.IGNORECASE)
_DISCARD = re.compile(
    r"^\W*(?:(?:actually|no|ok|okay|please|sorry)\W+)*(?:discard|cancel|forget|delete|drop|scrap)\b"
    r"(?: it| that| this| the session)?\W*$",
    re.IGNORECASE,
)


async def as_draft_order(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    """None unless the visitor has a draft and speaks of discarding it, or of another time for it.

    Raises WhichSession where several may be meant.
    """
    meant = await replied(visit, replied_to)
    if not _DISCARD.match(text):
        if _OF_CLASS.search(text):
            return None  # what is said of a class is no order about a session
        moved = await as_each_timed(visit, text) or await as_put_off(visit, text)
        moved = moved or await as_moved(visit, text, meant)
        dropped = moved or await as_dropped(visit, text, meant)
        return dropped or await as_repeated(visit, text, meant) or await as_landing(visit, text, meant)
    draft = meant or await one_of(visit, await unposted(visit))
    if draft is None or draft.state is SessionState.POSTED:
        return None
    return await discard_session(visit, DiscardSession(session=draft.id, revision=draft.revision))


_LANDS: Final = re.compile(
    r"^\W*(?:(?:so|and|ok|hey|hi|pls|please)\W+)*(?:show me |tell me )?how (?:does|will|would|do|did|is|are) "
    r"(?P<which>.{0,30}?)\s?"
    r"(?:land(?:s|ing)?|go down|fit|(?:look|work) (?:for|on) (?:every(?:one|body)|them|all|the group))\b.{0,30}$",
    re.IGNORECASE,
)


async def as_landing(visit: Visit, text: str, meant: SessionRecord | None) -> Outcome | None:
    """`How does it land`: what everybody gets of what isn't posted yet, or of what was posted last."""
    asked = _LANDS.match(text)
    if asked is None or not await coached_ids(visit):
        return None
    record = meant or await to_be_posted(visit, asked["which"]) or await in_hand(visit)
    return visit.told(await how_it_lands(visit, record), session=record.id) if record else None


# What stands before another time of a post: `actually make it 7`, `move it to tomorrow`.
_MOVE = re.compile(
    r"^\W*(?:(?:no|ok|okay|wait|sorry|actually|oh|please|and|can you|could you|let'?s|rather)\W+)*"
    r"(?:(?:make|change|move|set|put|push|schedule|do|send|post)\s+)?(?:it|that|this|the (?:post|time|session))?\s*"
    r"(?:(?:to|for|at|on|out|be)\s+)*",
    re.IGNORECASE,
)
_BY_ITS_DAY: Final = re.compile(
    rf"\b(?:post|send|schedule|publish)\s+(?:(?:the|my|for|on|out)\s+)*{DAY_WORD}\b", re.IGNORECASE
)
_NOON = 12
_HABIT = re.compile(
    r"\b(?:every|each|always|automatically|by default|from now on|as a rule|regularly|daily|weekly"
    r"|on (?:mon|tues|wednes|thurs|fri|satur|sun)days)\b",
    re.IGNORECASE,
)
_WHEN = re.compile(
    r"^(?:(?:(?:the )?(?:same|usual) (?:time|hour)"
    r"|at|on|in|the|half|quarter|past|to|this|next|morning|evening|afternoon|noon|instead|please|pls|o'?clock|then"
    rf"|today|tonight|{TOMORROW}|{DAY_WORD}|\d{{1,2}}(?:[:.]\d\d)?\s?(?:am|pm|h)?|am|pm)[\s,.!]*)+$",
    re.IGNORECASE,
)


def time_in(text: str) -> str:
    """What stands behind `make it`, where it can only be when; "" for all else."""
    when = _MOVE.sub("", text, count=1).strip()
    return when if _WHEN.match(when) else ""


_MOVES: Final = re.compile(
    r"^\W*(?:(?:no|ok|okay|wait|sorry|actually|oh|please|pls|and|can you|could you|let'?s|rather)\W+)*"
    r"(?:make|change|move|set|put|push|schedule|postpone|delay|shift|reschedule|bring)\s+(?:back|forward)?\s*",
    re.IGNORECASE,
)


_IT: Final = re.compile(r"(?:it|that|this)\b", re.IGNORECASE)
_LATER: Final = re.compile(r"\b(?:postpone|delay|push)\b", re.IGNORECASE)


_SO_MUCH: Final = r"(?:by\s)?(?:(?P<n>\d{1,2}|an?|one|half an)\s?)(?P<unit>hours?|h|hrs?|min(?:ute)?s?|days?)"
_BY: Final = (
    re.compile(rf"\b{_SO_MUCH}\s(?P<way>later|earlier|sooner|back|forward)\b", re.IGNORECASE),
    re.compile(rf"\b(?P<way>back|forward)\s{_SO_MUCH}\b", re.IGNORECASE),
)


_POSTS: Final = re.compile(
    r"^\W*(?:(?:and|then|ok|please|pls|can you|could you)\W+)*(?:post|send|schedule|publish|put|set)?\s*",
    re.IGNORECASE,
)
_ITS_OWN: Final = re.compile(r"\b(?:the|one|session|draft|board|goes|out)\b|['\u2019]s\b", re.IGNORECASE)


async def as_each_timed(visit: Visit, text: str) -> Outcome | None:
    """`Mon 6am wed 6:15 and fri 7`: of each day what isn't posted yet; None where none has anything."""
    told = by_hour(_ITS_OWN.sub(" ", _POSTS.sub("", text, count=1)))
    is_list = len(told) > 1 and all(_WHEN.match(one.strip()) and find_clock(one) for one in told)
    found = await unposted(visit) if is_list else []
    each = [(await of_day(visit, one, found), one) for one in told] if found else []
    named = [(record, one) for record, one in each if record is not None]
    if not named or len({record.id for record, _ in named}) < len(named):
        return None
    done = [await as_another_time(visit, record, one) for record, one in named]
    left = [one for record, one in each if record is None]
    outcome = sum((one for one in done if one), Outcome())
    return outcome + (await left_over(visit, left) if left else Outcome())


async def each_on_its_day(visit: Visit, text: str) -> Outcome | None:
    """`Post both at 5am`: each draft on the day on top of it; None where one has none, or no hour is told."""
    groups = await coached_ids(visit)
    drafts = await visit.uow.sessions.drafts(visit.person.id, groups)
    drafts = drafts or await visit.uow.sessions.scheduled_in(groups)
    clock = find_clock(_SO_MANY.sub(" ", text))
    if clock is None or not all(map(own_days, drafts)):
        return None
    told = Outcome()
    for one in sorted(drafts, key=lambda one: one.day):
        when = f"{one.day.day} {one.day:%B} at {clock.at:%H:%M}"
        told += await posting(visit, one, when, when)
    return told if told.says else None


_SO_MANY: Final = re.compile(r"\b(?:all|both)(?: (?:of them|[2-9]|two|three|four|five))?\b", re.IGNORECASE)


async def as_put_off(visit: Visit, text: str) -> Outcome | None:
    """`Make weds post an hour later`: what is to go out at its time, so much later or earlier."""
    by = next((found for one in _BY if (found := one.search(text))), None)
    scheduled = await visit.uow.sessions.scheduled_in(await coached_ids(visit)) if by else []
    if by is None or not scheduled or "class" in text.casefold():
        return None
    record = await of_day(visit, text, scheduled) or (scheduled[0] if len(scheduled) == 1 else None)
    if record is None or record.post_at is None:
        return None
    minutes = minutes_told(by["n"], by["unit"])
    ahead = -1 if by["way"].lower() in {"earlier", "sooner", "forward"} else 1
    moment = record.post_at + timedelta(minutes=ahead * minutes)
    return (
        await to_post(visit, record, moment)
        if moment > visit.now
        else visit.told(AskWhen(title=record.title))
    )


_MINUTES: Final = {"m": 1, "h": 60, "d": 24 * 60}


def minutes_told(count: str, unit: str) -> int:
    """`an hour`, `half an hour`, `30 min`."""
    number = 0.5 if count.lower().startswith("half") else int(count) if count.isdigit() else 1
    return round(number * _MINUTES[unit[0].lower()])


async def as_moved(visit: Visit, text: str, meant: SessionRecord | None) -> Outcome | None:
    """`Move fridays green to sat 9`: what is to be posted and is named by its day or its title, at another time.

    Of `move it to 7` it is asked which, where several have a time.
    """
    verb = _MOVES.match(text)
    found = await meant_to_move(visit, text[verb.end() :], lambda rest: bool(time_in(rest))) if verb else None
    is_later = bool(verb and _LATER.search(verb[0]))
    if verb and not found and (meant or _IT.match(text[verb.end() :])) and time_in(text):
        record = await to_be_posted(visit, text, meant.id if meant else None)
        found = (record, text) if record else None
    return await as_another_time(visit, *found, is_later=is_later) if found else None


async def as_another_time(
    visit: Visit, record: SessionRecord, text: str, *, is_later: bool = False
) -> Outcome | None:
    """Of what is to be posted later: the day or the hour that isn't named stays. None where no time is told.

    A draft that nothing was said of goes out at the usual hour of the day that is named, or at its own.
    `is_later`: a weekday is one behind the day it was set for.
    """
    text = behind_its_day(text)
    when = time_in(text)
    if record.state not in {SessionState.SCHEDULED, SessionState.DRAFT} or not when:
        return None
    group = await visit.group(record.group_id)
    today = today_in(group, visit.now)
    days, clock = find_days(when, today), find_clock(when)
    if not (days or clock) or (record.post_at is None and not days):
        return None
    if clock is None and hints_at_an_hour(when):
        return visit.told(AskWhen(title=record.title))
    set_for = record.post_at.astimezone(zone_of(group)) if record.post_at else None
    day = set_for.date() if set_for and not days else day_to_post(when, record, today) or today
    while (
        is_later
        and days
        and names_only_a_weekday(when)
        and day <= (set_for.date() if set_for else record.day)
    ):
        day += WEEK
    hour = set_for.time() if set_for else await usual_hour(visit, group)
    at = in_its_half(clock, set_for) if clock else hour
    moment = datetime.combine(day, at, zone_of(group)).astimezone(UTC)
    other = other_day(record, day) if days and names_it_by_its_day(text) else None
    if moment <= visit.now:
        return visit.told(AskWhen(title=record.title, over=moment.astimezone(zone_of(group))))
    if other:
        return visit.told(ask_other_day(record, moment, other, group, visit.now))
    return await at_that_time(visit, record, moment, group)


async def at_that_time(visit: Visit, record: SessionRecord, at: datetime, group: Group) -> Outcome:
    """It goes out then; of a draft with work that nobody would get it is said first."""
    lost = lost_lines(record, group) if record.state is SessionState.DRAFT else ()
    return (
        without(visit, record, lost, int(at.timestamp()) // 60) if lost else await to_post(visit, record, at)
    )


def names_it_by_its_day(text: str) -> bool:
    """`Post thu at 6`: the day may be which session, or when; `post it thu at 6` is when."""
    return bool(_BY_ITS_DAY.search(text))


async def as_timed(visit: Visit, text: str, said_of: int | None) -> Outcome | None:
    """`Post it friday at 7`, `make it 7`: of the one that is meant; None where the words are no time."""
    record = await to_be_posted(visit, text, said_of) if time_in(text) else None
    return await as_another_time(visit, record, text) if record else None


def in_its_half(clock: Clock, instead_of: datetime | None) -> time:
    """The hour told in place of another: `at 6` beside a post of the evening is of the evening."""
    late = (
        instead_of is not None and instead_of.hour >= _NOON and not clock.half_told and clock.at.hour < _NOON
    )
    return clock.at.replace(hour=clock.at.hour + _NOON) if late else clock.at


async def posting(visit: Visit, draft: SessionRecord, when: str, said: str = "") -> Outcome:
    """`said`: all the words, where the hour may stand bare: `post it wed 6`."""
    group = await visit.group(draft.group_id)
    when, said = behind_its_day(when), behind_its_day(said)
    lost = lost_lines(draft, group)
    if says_now(when, said):
        at_once = PostSession(session=draft.id, revision=draft.revision)
        return without(visit, draft, lost) if lost else await post_session(visit, at_once)
    if is_habit(said):
        return visit.told(NoHabit())
    set_for = draft.post_at.astimezone(zone_of(group)) if draft.post_at else None
    day = day_to_post(said or when, draft, today_in(group, visit.now))
    found = (moment_in(words, group, visit.now, day, set_for) for words in (when, said))
    moment = next((one for one in found if one), None)
    if moment is None:
        return visit.told(AskWhen(title=draft.title))
    other = other_day(draft, moment.astimezone(zone_of(group)).date())
    if other and names_it_by_its_day(said):
        return visit.told(ask_other_day(draft, moment, other, group, visit.now))
    minute = int(moment.timestamp()) // 60
    if lost:
        return without(visit, draft, lost, minute)
    return await post_later(visit, PostLater(session=draft.id, revision=draft.revision, minute=minute))


def says_now(when: str, said: str) -> bool:
    """`Post it now`, `post wed now`."""
    return bool(_NOW.match(when)) or bool(_AT_ONCE.search(said) and not find_clock(said))


def behind_its_day(text: str) -> str:
    """`Post thu tomorrow at 7`: of two days the first is which session, so that when is told behind it."""
    days = list(RELATIVE_DAY.finditer(text))
    if len(days) < 2 or not days[0]["day"] or find_clock(text[days[0].end() : days[1].start()]):  # noqa: PLR2004
        return text
    return text[days[0].end() :]


def ask_other_day(
    draft: SessionRecord, moment: datetime, on_top: date, group: Group, now: datetime
) -> AskOtherDay:
    local = moment.astimezone(zone_of(group))
    own = datetime.combine(on_top, local.time(), zone_of(group))
    return AskOtherDay(
        session_id=draft.id,
        revision=draft.revision,
        title=draft.session.title,
        at=local,
        on_top=on_top,
        own=own if own > now else None,
    )


def lost_lines(draft: SessionRecord, group: Group) -> tuple[str, ...]:
    """The work in a draft's text that is in nobody's version."""
    read = read_session(draft.text, catalogue(), group.units)
    unread = unread_lines(draft.text, read.not_understood, read.session)
    return tuple(one.text for one in unread if one.is_work and not one.doubtful)


def without(visit: Visit, draft: SessionRecord, lost: tuple[str, ...], minute: int | None = None) -> Outcome:
    asked = AskPostWithout(session_id=draft.id, revision=draft.revision, lines=lost, minute=minute)
    return visit.told(asked)


def is_habit(text: str) -> bool:
    """`Post on fridays at 6 automatically`: what shall be so each time is no word about this one."""
    return bool(_HABIT.search(text))


def moment_in(
    text: str, group: Group, now: datetime, day: date | None, instead_of: datetime | None = None
) -> datetime | None:
    """The moment meant on the group's clock, always to come; None where none is named. Without a `day`: the next."""
    clock = find_clock(text)
    if clock is None:
        return None
    at = in_its_half(clock, instead_of)
    moment = datetime.combine(day or today_in(group, now), at, zone_of(group))
    if moment <= now and day is None:
        moment = datetime.combine(today_in(group, now) + timedelta(days=1), at, zone_of(group))
    return moment.astimezone(UTC) if moment > now else None
