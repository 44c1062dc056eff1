"""What a coach's words do: each act with its use case, the same that its button has."""

import re
from datetime import timedelta
from typing import Final

from core.desk.classes.in_words import of_a_session
from core.desk.classes.telling import each_proposed
from core.desk.coached import coached_athletes, coached_groups, coached_ids, names_in
from core.desk.coaching import overseeing
from core.desk.coaching.announcing import ask_announce, to_nobody
from core.desk.coaching.says import FaultUnclear
from core.desk.commands import DraftSession
from core.desk.days import today_in
from core.desk.outcome import Outcome
from core.desk.scores.progress import how_they_do
from core.desk.sessions.amending import line_like
from core.desk.sessions.coming import whats_scheduled
from core.desk.sessions.drafting import as_another_time, each_on_its_day, posting
from core.desk.sessions.expecting import how_long_for
from core.desk.sessions.expecting import what_if as try_change
from core.desk.sessions.meant import is_named_so, to_be_posted
from core.desk.sessions.posting import draft_session
from core.desk.sessions.says import AskWhen, NotAmended
from core.desk.sessions.withdrawing import withdraw_of_day
from core.desk.talk.acts_asked import how_long as own_length
from core.desk.talk.acts_wished import classes
from core.desk.talk.asides import WEEKS_BACK, how_it_goes, who_is_in, who_trained
from core.desk.talk.explaining import explain
from core.desk.talk.ordered import look
from core.desk.talk.says import HowTheyJoin, NotPostedYet, OneByOne, WhoTrains
from core.desk.talk.scene import Scene
from core.desk.talk.understood import as_opened
from core.desk.today.easy_weeks import as_told
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.calendar.moments import DAY_WORD, TOMORROW
from core.notation.calendar.timetables import classes_in
from core.notation.people import addressed, find_name
from core.notation.talk.chat import calls_a_rest_day
from core.store.records import Membership, Role, SessionRecord
from core.understanding import acts as a

# Whatever an `it` and a `post` beside it look like, nothing goes out by such words.
_NOT_YET: Final = re.compile(r"\b(?:hold|wait|hang on|keep|not|nothing|don'?t|no)\b", re.IGNORECASE)
_POSTS: Final = re.compile(r"\b(?:post|send|schedule|publish|share|out|up|go|it)\b", re.IGNORECASE)
_WHEN: Final = re.compile(
    rf"\b(?:{DAY_WORD}|today|tonight|{TOMORROW})s?\b|\b(?:am|pm|at|to|on)\b|[0-9]+(?:[ap]m)?", re.IGNORECASE
)
_OF_CLASS: Final = re.compile(r"\bclass(?:es)?\b", re.IGNORECASE)
_OF_SESSION: Final = re.compile(
    r"\b(?:post|send|schedule|publish|share|session|workout|draft|board)\b", re.IGNORECASE
)
_SEVERAL: Final = re.compile(
    r"\b(?:both|all of them|them(?: all)?|all (?:two|three|four|five|[2-9])|each)\b", re.IGNORECASE
)
# So long somebody is new in a group (estimate).
NEW_FOR: Final = timedelta(days=14)


async def session(visit: Visit, act: a.TellsSession, _: Scene) -> Outcome | None:
    """A rest day is told to everybody, with the coach's yes; None where nobody could do anything of it."""
    if calls_a_rest_day(act.text):
        return await ask_announce(visit, act.text)
    if not read_session(act.text, catalogue()).holds_work:
        return None
    return await draft_session(visit, DraftSession(text=act.text))


async def class_off(visit: Visit, act: a.ClassOff, scene: Scene) -> Outcome | None:
    """`No training tomorrow` is a rest day as well."""
    if calls_a_rest_day(act.text):
        return await ask_announce(visit, act.text)
    return await of_a_session(visit, scene.text) or await classes(visit, act, scene)


async def tells_class(visit: Visit, act: a.TellsClass, scene: Scene) -> Outcome | None:
    """Whatever words tell of it, read back before it is set up; the list where no day and no hour is told."""
    groups = await coached_groups(visit)
    read = classes_in(act.text, today_in(groups[0], visit.now)) if groups else ()
    unnamed = tuple(one.model_copy(update={"title": None}) for one in read)
    return await each_proposed(visit, unnamed, act.text, groups) if read else await classes(visit, act, scene)


async def easy_week(visit: Visit, act: a.EasyWeek, _: Scene) -> Outcome | None:
    return await as_told(visit, act.person, act.text)


async def class_change(visit: Visit, act: a.ClassChange, scene: Scene) -> Outcome | None:
    return await of_a_session(visit, scene.text) or await classes(visit, act, scene)


async def edit(visit: Visit, act: a.Edit, _: Scene) -> Outcome | None:
    """What can be carried out was read before; a time is when it is posted, else it is said how to write it."""
    draft = await to_be_posted(visit, act.text)
    if draft is None:
        return None
    moved = await as_another_time(visit, draft, act.text)
    return moved or visit.told(NotAmended(left=(act.text,), like=line_like(draft.session)))


async def post(visit: Visit, act: a.Post, scene: Scene) -> Outcome | None:
    """Of a sentence that names somebody of the group it isn't sure what goes to whom: then nothing goes to all.

    A time told of a class is none of a session.
    """
    if _OF_CLASS.search(scene.text) and not _OF_SESSION.search(act.text):
        return None
    if _SEVERAL.search(act.text):
        return await each_on_its_day(visit, act.text) or visit.told(OneByOne())
    draft = await to_be_posted(visit, act.text, scene.replied_to)
    return await post_this(visit, act, draft) if draft else None


async def post_this(visit: Visit, act: a.Post, draft: SessionRecord) -> Outcome | None:
    if not _POSTS.search(act.text) and not await is_named_so(visit, _WHEN.sub(" ", act.text), draft):
        return visit.told(AskWhen())
    if _NOT_YET.search(act.text):
        return await whats_scheduled(visit)
    names = await names_in(visit.uow, draft.group_id)
    if find_name(act.text, names.values()):
        return visit.told(AskWhen())
    return await posting(visit, draft, act.when or "", act.text)


async def withdraw(visit: Visit, act: a.Withdraw, _: Scene) -> Outcome | None:
    """Of the day that is named, if one is."""
    return await withdraw_of_day(visit, act.text)


async def how_is(visit: Visit, act: a.HowIs, _: Scene) -> Outcome | None:
    athlete = await athlete_named(visit, act.person)
    return await how_they_do(visit, athlete, await coached_ids(visit)) if athlete else None


async def order(visit: Visit, act: a.Order, _: Scene) -> Outcome | None:
    """What can be carried out was read before."""
    athlete = await athlete_named(visit, act.person)
    return await look(visit, act, athlete) if athlete else None


async def note_fault(visit: Visit, act: a.NoteFault, _: Scene) -> Outcome | None:
    athlete = await athlete_named(visit, act.person)
    if athlete is None:
        return None
    return visit.told(FaultUnclear(athlete=athlete.person.name, movement=act.movement))


async def athlete_named(visit: Visit, name: str) -> Membership | None:
    athletes = await coached_athletes(visit)
    found = find_name(name, athletes)
    return athletes[found.name] if found else None


async def who_reported(visit: Visit, act: a.WhoReported, scene: Scene) -> Outcome | None:
    """Of a day that is named sign-ups, looks and scores, of a week who trained, of a class who is in; else so far."""
    if act.day is None:
        of_class = _OF_CLASS.search(scene.text)
        return await classes(visit, act, scene) if of_class else await how_it_goes(visit)
    in_group = who_trained if act.day in WEEKS_BACK else who_is_in
    told = [await in_group(visit, group, act.text) for group in await coached_groups(visit)]
    outcome = Outcome()
    for one in told:
        outcome += visit.told(one)
    return outcome if told else None


async def announce(visit: Visit, act: a.Announce, scene: Scene) -> Outcome | None:
    """Whoever is named in front of a colon isn't everybody."""
    whom = addressed(scene.text) if as_opened(scene.text) is None else None
    if whom is not None:
        return visit.told(to_nobody(whom, await coached_athletes(visit)))
    before, colon, _ = scene.text.partition(":")
    if colon and find_name(before, tuple(await coached_athletes(visit))):
        return visit.told(to_nobody(before.strip(), await coached_athletes(visit)))
    return await ask_announce(visit, act.text)


async def teach(visit: Visit, act: a.Teach, _: Scene) -> Outcome | None:
    return await explain(visit, act.movement) if act.movement else None


async def roster(visit: Visit, _: a.Roster, __: Scene) -> Outcome | None:
    members = [
        (group.title, await visit.uow.groups.members(group.id, role=Role.ATHLETE))
        for group in await coached_groups(visit)
    ]
    if not members:
        return None
    groups = tuple((title, tuple(one.person.name for one in found)) for title, found in members)
    lately = tuple(
        one.person.name for _, found in members for one in found if one.joined_at > visit.now - NEW_FOR
    )
    return visit.told(WhoTrains(groups=groups, new=lately))


async def newcomer(visit: Visit, _: a.Newcomer, __: Scene) -> Outcome | None:
    """They join by themselves, and tell of their health themselves."""
    groups = await coached_groups(visit)
    return visit.told(HowTheyJoin(groups=tuple(one.title for one in groups))) if groups else None


async def who_needs_me(visit: Visit, _: a.WhoNeedsMe, __: Scene) -> Outcome | None:
    return await overseeing.who_needs_me(visit)


async def whats_coming(visit: Visit, _: a.WhatsComing, scene: Scene) -> Outcome | None:
    scheduled = await whats_scheduled(visit)
    if scheduled is not None or not await visit.memberships():
        return scheduled
    return visit.told(NotPostedYet(session=scene.record.id if scene.record else None))


async def how_long(visit: Visit, act: a.HowLong, scene: Scene) -> Outcome | None:
    """Of those they coach, of what is about to be posted first; their own where they train there and name nobody."""
    draft = await visit.uow.sessions.newest_unposted(visit.person.id, await coached_ids(visit))
    about_to_be = draft if scene.replied_to is None and scene.version is None else None
    record = about_to_be or scene.record
    if record is None or record.group_id not in await coached_ids(visit):
        return await own_length(visit, act, scene)
    athlete = await athlete_named(visit, act.person) if act.person else None
    if act.person and athlete is None:
        return None
    if athlete is None and scene.version is not None:
        return await own_length(visit, act, scene)
    return await how_long_for(visit, record, athlete.person.name if athlete else None)


async def what_if(visit: Visit, act: a.WhatIf, _: Scene) -> Outcome | None:
    return await try_change(visit, act.change)
