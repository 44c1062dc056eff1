"""Show an athlete their version of a session, asking first what this session needs and nobody knows yet."""

import logging

from core.athletes.values import Profile
from core.desk.access import admitted
from core.desk.coached import called_in
from core.desk.commands import MyVersion, ShowHow
from core.desk.days import RECENT
from core.desk.errors import UnknownThing, Withdrawn
from core.desk.joining.door import show_way_in
from core.desk.joining.entry import first_things
from core.desk.outcome import Outcome
from core.desk.today.breaks import ask_of_break
from core.desk.versions.says import (
    AskAbout,
    AskWhichGroup,
    Changed,
    CoachNeeded,
    HowTo,
    NothingPosted,
    NoVersion,
    Understood,
)
from core.desk.versions.showing import orders_for, profile_today, showing, today_of
from core.desk.versions.waiting import has_ok, to_coaches, wait, waits_for
from core.desk.visit import Visit
from core.errors import Defect
from core.forecast.today import version_today
from core.forecast.values import Foreseen
from core.movements.lookup import UnknownMovement, catalogue
from core.scaling.needs import calling
from core.scaling.questions import answered_with_care, next_question
from core.scaling.values import Question, Version, Withheld
from core.store.records import Purpose, Role, SessionRecord, SessionState

log = logging.getLogger(__name__)

# What comes of a stored value that no reckoning is ready for; a refusal, or a database that fails, is none.
UNREADY = (ValueError, ArithmeticError, LookupError, TypeError, AssertionError, Defect, UnknownMovement)


async def nothing_posted(visit: Visit) -> Outcome:
    """A stranger is shown the way in first; a coach posts themselves."""
    memberships = await visit.memberships()
    if not memberships:
        return await show_way_in(visit)
    return visit.told(NothingPosted(coach=any(one.role is Role.COACH for one in memberships)))


@admitted
async def my_version(
    visit: Visit, command: MyVersion, understood: Understood | None = None, changed: Changed | None = None
) -> Outcome:
    several = await of_several_groups(visit) if command.session is None else []
    if several:
        return visit.told(AskWhichGroup(sessions=tuple(several), then="version"))
    record = await session_meant(visit, command.session)
    if record is None:
        return await nothing_posted(visit)
    if record.state is SessionState.WITHDRAWN:
        raise Withdrawn
    profile = await visit.profile()
    first = await first_things(visit, profile, record.group_id)
    if first is not None:
        return first
    today = await profile_today(visit, record)
    asked = await ask_of_break(visit, record, today, await today_of(visit, record))
    if asked is not None:
        return asked
    # What a coach leaves out is no answer of theirs.
    question = still_to_ask(visit, record, today.model_copy(update={"limits": profile.limits}))
    if question is not None:
        known = await asked_just_now(visit, question)
        left = answered_with_care(today, record.session, catalogue())[0] if known else None
        return await ask(visit, question, today, record.id, understood, left=left)
    return await show(visit, record, today, understood, changed)


async def session_meant(visit: Visit, session_id: int | None) -> SessionRecord | None:
    """The posted session of that id, else the newest posted in the visitor's groups."""
    if session_id is not None:
        record = await visit.uow.sessions.find(session_id, await visit.group_ids())
        if record is None or record.posted_at is None:
            raise UnknownThing
        return record
    newest = await newest_by_group(visit)
    return newest[0] if newest else None


async def post_meant(visit: Visit, replied_to: int | None) -> SessionRecord | None:
    """The posted session that words are said of; None where they reply to one that isn't posted, or mean it."""
    records = visit.uow.sessions
    record = await records.find(replied_to, await visit.group_ids()) if replied_to is not None else None
    is_draft = record is not None and record.posted_at is None
    return None if is_draft else await session_meant(visit, replied_to)


async def newest_by_group(visit: Visit) -> list[SessionRecord]:
    """The session that each of the visitor's groups got last, the newest first."""
    found = [await visit.uow.sessions.latest_posted(group) for group in await visit.group_ids()]
    posted = [record for record in found if record and record.posted_at]
    return sorted(posted, key=lambda one: (one.posted_at or visit.now, one.id), reverse=True)


async def of_several_groups(visit: Visit) -> list[tuple[int, str]]:
    """The sessions of today by the titles of their groups, where two groups or more have one; else none."""
    newest = await newest_by_group(visit)
    recent = [one for one in newest if one.posted_at and one.posted_at >= visit.now - RECENT]
    if len(recent) < 2:  # noqa: PLR2004 - several
        return []
    return [(one.id, (await visit.group(one.group_id)).title) for one in recent]


async def version_in(visit: Visit, group_id: int) -> Outcome:
    """The version of the newest session of one group."""
    record = await visit.uow.sessions.latest_posted(group_id)
    return await my_version(visit, MyVersion(session=record.id)) if record else await nothing_posted(visit)


async def asked_just_now(visit: Visit, question: Question) -> bool:
    """Whether it is open, word for word."""
    now_open = await visit.uow.questions.open_in(visit.chat)
    return (
        now_open is not None
        and now_open.kind == question.ask
        and now_open.refs["question"] == question.model_dump(mode="json")
    )


async def remember(visit: Visit, question: Question, session_id: int | None, *, again: bool = False) -> None:
    """The next free text may be the answer to this; `again`: one before it was none."""
    refs = {"session": session_id, "question": question.model_dump(mode="json"), "again": again}
    await visit.uow.questions.ask(visit.chat, question.ask, refs, visit.now)


async def ask(
    visit: Visit,
    question: Question,
    profile: Profile,
    session_id: int | None,
    understood: Understood | None = None,
    *,
    again: bool = False,
    left: int | None = None,
) -> Outcome:
    """Ask, and remember in one row that the next free text may be the answer."""
    known = await asked_just_now(visit, question)
    await remember(visit, question, session_id, again=again)
    asked = AskAbout(
        session=session_id,
        question=question,
        units=profile.units,
        understood=understood,
        again=again,
        left=left,
        known=known,
    )
    return visit.told(asked)


async def show(
    visit: Visit,
    record: SessionRecord,
    profile: Profile,
    understood: Understood | None,
    changed: Changed | None = None,
) -> Outcome:
    """Make the version, freeze it, show it."""
    version = await worked_out(visit, record, profile)
    if isinstance(version, Withheld):
        return visit.told(NoVersion(withheld=version, ill_in=record.id if profile.today.sick else None))
    shown = await visit.uow.versions.show(
        session_id=record.id,
        session_revision=record.revision,
        person_id=visit.person.id,
        version=version,
        now=visit.now,
    )
    what = await showing(visit, record, profile, shown, understood, changed)
    expected = tuple(one and one.forecast for one in what.outlooks)
    await visit.uow.versions.foresee(shown.id, Foreseen(blocks=expected))
    await visit.uow.questions.close(visit.chat)
    why = await waits_for(visit, record, version)
    if why is not None:
        return await wait(visit, record, shown, why)
    told = visit.told(what, Purpose.VERSION, session=record.id, version=shown.id)
    return told + await tell_coaches(visit, record, version)


def still_to_ask(visit: Visit, record: SessionRecord, profile: Profile) -> Question | None:
    """What this session needs to know first; nothing where that can't be worked out, as no version will be either."""
    try:
        return next_question(profile, record.session, catalogue())
    except UNREADY:
        log.exception("no question can be worked out for person %d", visit.person.id)
        return None


async def worked_out(visit: Visit, record: SessionRecord, profile: Profile) -> Version | Withheld:
    """The visitor's version; `unclear` where what is stored about them can't be worked out."""
    try:
        orders = await orders_for(visit, record)
        return version_today(record.session, profile, catalogue(), orders, year=visit.now.year)
    except UNREADY:
        log.exception("no version can be worked out for person %d", visit.person.id)
        return Withheld(athlete=visit.person.name, because="unclear")


async def tell_coaches(visit: Visit, record: SessionRecord, version: Version) -> Outcome:
    """Lines that need the coach reach every coach of the group, once, unless one has looked already."""
    needs = tuple(need for need in calling(version.needs_coach) if need.written is not None)
    if not needs or await has_ok(visit, record):
        return Outcome()
    group = await visit.group(record.group_id)
    what = CoachNeeded(
        session_id=record.id,
        person=visit.person.id,
        athlete=await called_in(visit, group.id),
        needs=needs,
        units=group.units,
    )
    return Outcome(await to_coaches(visit, group.id, what, f"needs:{record.id}:{visit.person.id}"))


@admitted
async def show_how(visit: Visit, command: ShowHow) -> Outcome:
    record = await visit.uow.versions.find(command.version, visit.person.id)
    if record is None:
        raise UnknownThing
    lines = [line for block in record.version.blocks for line in block.lines]
    variants = dict.fromkeys((line.movement, line.variant) for line in lines)
    return visit.told(HowTo(variants=tuple(variants)))
