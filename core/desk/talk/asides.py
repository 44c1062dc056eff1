"""What is said beside the matter, and how the day goes so far for a coach who asks."""

from core.desk.classes.meetings import Meeting, meetings_on, shown
from core.desk.coached import coached_groups, names_in
from core.desk.coaching.digest import digest_of
from core.desk.coaching.digest_says import ClassSignUps, WhoIsIn
from core.desk.days import clock_of, today_in
from core.desk.outcome import Outcome
from core.desk.says import Kindness, Welcome
from core.desk.today.elsewhere import before_them
from core.desk.today.pain import done_lately
from core.desk.visit import Visit
from core.notation.moments import find_days
from core.notation.small_talk import read_small_talk
from core.store.records import Group


async def be_kind(visit: Visit, text: str) -> Outcome | None:
    """What was said for its own sake gets a short answer of its own kind; a stranger is shown the way in instead."""
    talk = read_small_talk(text)
    if talk is None or not await visit.memberships():
        return None
    if talk == "thanks":
        return visit.told(Welcome())
    unscored = await before_them(visit) is not None and await done_lately(visit) is None
    return visit.told(Kindness(talk=talk, unscored=unscored))


async def how_it_goes(visit: Visit) -> Outcome | None:
    """The digest before its hour, of each group; None for whoever coaches none."""
    outcome = None
    for group in await coached_groups(visit):
        clock = await clock_of(visit.uow, visit.person.id, group)
        found = await digest_of(visit.uow, visit.now, group, today_in(group, visit.now), clock)
        outcome = (outcome or Outcome()) + visit.told(found.model_copy(update={"so_far": True}))
    return outcome


async def who_is_in(visit: Visit, group: Group, text: str) -> WhoIsIn:
    today = today_in(group, visit.now)
    day = next(iter(find_days(text, today)), today)
    clock = await clock_of(visit.uow, visit.person.id, group)
    meetings = await meetings_on(visit.uow, group.id, day)
    return WhoIsIn(
        group=group.title,
        day=day,
        today=day == today,
        classes=tuple([await sign_ups_of(visit, one, clock.key) for one in meetings]),
        sessions=(await digest_of(visit.uow, visit.now, group, day, clock)).sessions,
    )


async def sign_ups_of(visit: Visit, meeting: Meeting, clock: str) -> ClassSignUps:
    people = await visit.uow.sign_ups.coming(meeting.class_id, meeting.slot)
    names = await names_in(visit.uow, meeting.record.group_id)
    called = tuple(names.get(person.id, person.name) for person, _ in people)
    return ClassSignUps(date=shown(meeting, clock), names=called)
