"""Which session a coach's words mean: the one of the day that is named, else what is in hand."""

import re
from collections.abc import Awaitable, Callable, Sequence
from datetime import date, timedelta
from typing import Final

from core.athletes.easing import WEEK
from core.desk.coached import coached_groups, coached_ids
from core.desk.days import LOOKS_BACK, RECENT, days_of_title, own_days, today_in, zone_of
from core.desk.scores.which import WhichSession
from core.desk.visit import Visit
from core.notation.calendar.moments import DAY_WORD, TOMORROW, find_clock, find_days, names_only_a_weekday
from core.store.records import Group, SessionRecord, SessionState

_YESTERDAY: Final = re.compile(r"\b(?:yesterday|last night)", re.IGNORECASE)
_WORD: Final = re.compile(r"[^\W\d_]{2,}")
# Words of a title that don't tell it from another.
_ANY: Final = frozenset(
    {"the", "at", "by", "on", "in", "of", "and", "with", "to", "for", "session", "workout", "training", "day"}
)
_MADE: Final = re.compile(r"\b(?:make|change|set|turn)(?=\s+(?:to\s+|into\s+)?[0-9])", re.IGNORECASE)
_OF_DAY: Final = re.compile(
    rf"\b(?:(?:on|of|for|from|in)\s+)?(?:the\s+)?(?:{DAY_WORD}|today|tonight|{TOMORROW}|yesterday)(?:['\u2019]?s)?\b"
    r"(?:\s+(?:session|one|draft|workout|post)\b)?",
    re.IGNORECASE,
)


# `Call thu Heavy pulls`: the day is what gets the name.
_CALLED_DAY: Final = re.compile(
    rf"\b(?P<call>call|name|rename|title)\s+(?:the\s+)?{DAY_WORD}(?:['\u2019]?s)?(?:\s+(?:one|session|draft))?\b",
    re.IGNORECASE,
)


async def at_hand(visit: Visit) -> list[SessionRecord]:
    """What may be meant: one's own drafts, what is to be posted, then what was posted lately, the newest first."""
    groups = await coached_ids(visit)
    drafts = await visit.uow.sessions.drafts(visit.person.id, groups)
    coming = await visit.uow.sessions.scheduled_in(groups)
    return [*drafts, *coming, *await posted_lately(visit)]


async def posted_lately(visit: Visit) -> list[SessionRecord]:
    """What stands in their groups, the newest first."""
    return [
        one
        for group in await coached_ids(visit)
        for one in await visit.uow.sessions.posted_since(group, visit.now - LOOKS_BACK)
        if one.state is SessionState.POSTED
    ]


async def unposted(visit: Visit) -> list[SessionRecord]:
    """One's own drafts, the newest first, then what is to be posted."""
    return [one for one in await at_hand(visit) if one.state is not SessionState.POSTED]


async def replied(visit: Visit, session: int | None) -> SessionRecord | None:
    """The session of theirs that a coach replied to, or tapped where it was asked which is meant."""
    return next((one for one in await at_hand(visit) if one.id == session), None) if session else None


def the_one(found: Sequence[SessionRecord]) -> SessionRecord | None:
    """None of none. Raises WhichSession of several."""
    if len(found) > 1:
        raise WhichSession(tuple(one.id for one in found), to_change=True)
    return next(iter(found), None)


async def to_be_posted(visit: Visit, text: str, said_of: int | None = None) -> SessionRecord | None:
    """Which of one's drafts an order to post is about, else which of those that have their time.

    The one that was replied to; of the day that is named; without one on top where none is of that day; whose title is
    named; what was just shown. None where there is nothing. Raises WhichSession where several are left.
    """
    groups = await coached_ids(visit)
    drafts = await visit.uow.sessions.drafts(visit.person.id, groups)
    coming = await visit.uow.sessions.scheduled_in(groups)
    every = [*drafts, *coming]
    named = next((one for one in every if one.id == said_of), None) or await of_day(visit, text, drafts)
    if named is not None:
        return named
    if await names_a_day(visit, text):
        free = [one for one in drafts if not own_days(one)]
        named = await one_of(visit, free) or await of_day(visit, text, coming)
    titled = [one for one in every if called_so(text, one)]
    shown = await just_shown(visit, every) if find_clock(text) else None
    return named or next(iter(titled), None) or shown or await one_of(visit, drafts or coming)


async def to_be_changed(
    visit: Visit, text: str, said_of: int | None, fits: Callable[[SessionRecord], Awaitable[int]]
) -> tuple[SessionRecord | None, bool]:
    """Which session a change is of, and whether the words name it.

    The one that was replied to, or of the day that is named; of several that aren't posted yet the one in which most of
    it `fits`, whose title is named, or that was just shown. None where it is the newest, if any. Raises WhichSession.
    """
    named = await replied(visit, said_of) or await of_day(visit, text)
    if named is not None:
        return named, True
    found = await unposted(visit)
    fitting = [(one, await fits(one)) for one in found] if len(found) > 1 else []
    most = max((how_much for _, how_much in fitting), default=0)
    able = [one for one, how_much in fitting if how_much == most > 0]
    titled = [one for one in able if called_so(text, one)]
    return await one_of(visit, titled or able), False


async def one_of(visit: Visit, found: Sequence[SessionRecord]) -> SessionRecord | None:
    """The only one, or the one of them that was just shown. None of none. Raises WhichSession of several."""
    return await just_shown(visit, found) or the_one(found)


async def just_shown(visit: Visit, among: Sequence[SessionRecord]) -> SessionRecord | None:
    """What the last message about sessions was about; None where it was about several of these."""
    shown = await visit.uow.outbox.last_sessions(visit.chat, visit.now - RECENT)
    seen = [one for one in among if one.id in shown]
    return seen[0] if len(seen) == 1 else None


async def in_hand(visit: Visit) -> SessionRecord | None:
    """What the coach is about to post, else what was posted last and is still new."""
    unposted = await visit.uow.sessions.newest_unposted(visit.person.id, await coached_ids(visit))
    found = [one for one in await at_hand(visit) if one.posted_at and one.posted_at >= visit.now - RECENT]
    return unposted or next(iter(found), None)


async def of_day(
    visit: Visit, text: str, among: Sequence[SessionRecord] | None = None
) -> SessionRecord | None:
    """The session of the day that is named, `among` all at hand; None where no day is named, or has none.

    Of several on one day the one whose title says most of the words: `fri green`.
    """
    named: list[SessionRecord] = []
    ahead: list[SessionRecord] = []
    on_top: list[SessionRecord] = []
    for one in await at_hand(visit) if among is None else among:
        group = await visit.group(one.group_id)
        today = today_in(group, visit.now)
        days = days_named(text, today, past=one.state is SessionState.POSTED)
        if not days_of(one, group).isdisjoint(days) or is_titled_so(text, one):
            named.append(one)
        elif is_of_that_weekday(text, one, today):
            ahead.append(one)
        elif has_on_top(text, one):
            on_top.append(one)
    if named:
        return max(named, key=lambda one: len(called_so(text, one)))
    return min(ahead, key=lambda one: one.day, default=None) or next(iter(on_top), None)


def is_titled_so(text: str, record: SessionRecord) -> bool:
    """Whether it isn't posted yet and its title names the weekday that is named, whenever it is to go out."""
    return has_on_top(text, record) and bool(called_so(text, record))


def has_on_top(text: str, record: SessionRecord) -> bool:
    """Whether it isn't posted yet and has the weekday that is named on top."""
    said, titled = _OF_DAY.search(text), _OF_DAY.search(record.session.title or "")
    is_same = bool(said and titled and _initials(said[0]) == _initials(titled[0]))
    return is_same and record.state is not SessionState.POSTED


def called_so(text: str, record: SessionRecord) -> frozenset[str]:
    """The words of its title that are in a text, without the days."""
    title, words = (
        set(_WORD.findall(_OF_DAY.sub(" ", one).casefold())) for one in (record.session.title or "", text)
    )
    return frozenset(title & words - _ANY)


def is_of_that_weekday(text: str, record: SessionRecord, today: date) -> bool:
    """Whether a bare `wed` may mean what is written for a Wednesday further on; the nearer one goes first."""
    named = find_days(text, today) if names_only_a_weekday(text) else ()
    return bool(named) and record.day > today and record.day.weekday() == named[0].weekday()


def days_named(text: str, today: date, *, past: bool) -> set[date]:
    """The days that a text may mean. `past`: of a weekday also the last one; `yesterday`."""
    found = set(find_days(text, today))
    back = {one - WEEK for one in found} if past else set()
    return found | back | ({today - timedelta(days=1)} if past and _YESTERDAY.search(text) else set())


def days_of(record: SessionRecord, group: Group) -> set[date]:
    """The day that it is for, the one on which it goes out, and the weekday its title begins with."""
    out = record.post_at or record.posted_at
    goes_out = {out.astimezone(zone_of(group)).date()} if out else set[date]()
    return {record.day, *days_of_title(record.session, record.day)} | goes_out


def without_day(text: str) -> str:
    """The words without those that name the session: `make fridays push-ups 8`; what it shall be is said of it."""
    text = _CALLED_DAY.sub(r"\g<call> it", text)
    words = re.sub(r"\s{2,}", " ", _OF_DAY.sub(" ", text)).strip(" ,:")
    return _MADE.sub(r"\g<0> it", words, count=1)


async def meant(visit: Visit, text: str) -> SessionRecord | None:
    """Of the day that is named, else what is in hand."""
    return await of_day(visit, text) or await in_hand(visit)


async def names_a_day(visit: Visit, text: str) -> bool:
    today = [today_in(one, visit.now) for one in await coached_groups(visit)]
    return any(days_named(text, one, past=True) for one in today)


async def meant_to_move(
    visit: Visit, text: str, is_when: Callable[[str], bool]
) -> tuple[SessionRecord, str] | None:
    """Which of what isn't posted yet is named in front of another time, and that: `fridays green to sat 9`.

    The one most of whose words are there, where the rest is nothing but when; None where none is named so.
    """
    found: list[tuple[int, SessionRecord, str]] = []
    for one in await at_hand(visit):
        if one.state is SessionState.POSTED:
            continue
        rest, named = await without_name(visit, text, one)
        if named and is_when(rest):
            found.append((named, one, rest))
    best = max((named for named, _, _ in found), default=0)
    most = [(one, rest) for named, one, rest in found if named == best]
    return most[0] if len(most) == 1 else None


async def without_name(visit: Visit, text: str, record: SessionRecord) -> tuple[str, int]:
    """The words without its day and those of its title, and how many of these there were."""
    group = await visit.group(record.group_id)
    first = _OF_DAY.search(text)
    days = days_named(first[0], today_in(group, visit.now), past=False) if first else set[date]()
    is_of_day = has_on_top(text, record) or not days.isdisjoint(days_of(record, group))
    rest = f"{text[: first.start()]} {text[first.end() :]}" if first and is_of_day else text
    title = called_so(text, record)
    rest = _WORD.sub(lambda word: "" if word[0].casefold() in title else word[0], rest)
    return re.sub(r"\s{2,}", " ", rest).strip(" ,:"), len(title) + is_of_day


def _initials(day: str) -> str:
    """`on fridays`, `Fri` -> `fri`."""
    return day.rsplit(maxsplit=1)[-1].casefold()[:3]


_SAID_OF_ANY: Final = re.compile(
    r"\b(?:move|postpone|shift|push|put|bring|make|change|cancel|withdraw|drop|delete|scrap|discard|session|workout|training"
    r"|one|post|draft|please|pls|the|my|our|can|could|you|back|forward|it|that|from|out|instead|actually|sorry|ok|no|and)\b",
    re.IGNORECASE,
)


def is_a_day_alone(text: str) -> bool:
    """`Friday's`, `the sunday one`: no word but for a day."""
    rest = _SAID_OF_ANY.sub(" ", _OF_DAY.sub(" ", text))
    return bool(_OF_DAY.search(text)) and not _WORD.search(rest)


async def is_named_alone(visit: Visit, text: str, record: SessionRecord) -> bool:
    """Whether words are nothing but the name of this session: its day, or what it is called."""
    rest, named = await without_name(visit, text, record)
    return named > 0 and not _WORD.search(_SAID_OF_ANY.sub(" ", rest))


async def is_named_so(visit: Visit, text: str, record: SessionRecord) -> bool:
    """Whether words that name a session say nothing that isn't said of this one: `fridays green`, of another Friday."""
    rest, _ = await without_name(visit, text, record)
    return not _WORD.search(_SAID_OF_ANY.sub(" ", rest))
