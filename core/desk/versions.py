"""Show an athlete their version of a session, asking first what this session needs and nobody knows yet."""

from core.athletes.values import Profile
from core.desk.breaks import ask_of_break
from core.desk.commands import MyVersion, ShowHow
from core.desk.entry import first_things
from core.desk.errors import UnknownThing, Withdrawn
from core.desk.outcome import Outcome
from core.desk.says.common import Help
from core.desk.says.versions import (
    AskAbout,
    Changed,
    CoachNeeded,
    HowTo,
    NothingPosted,
    NoVersion,
    Understood,
)
from core.desk.showing import orders_for, profile_today, showing, today_of
from core.desk.visit import Visit
from core.desk.waiting import has_ok, to_coaches, wait, waits_for
from core.movements.lookup import catalogue
from core.scaling.questions import next_question
from core.scaling.values import Question, Version, Withheld
from core.scaling.version import version_for
from core.store.records import Purpose, Role, SessionRecord, SessionState


async def nothing_posted(visit: Visit) -> Outcome:
    """A stranger is shown the way in first; a coach posts themselves."""
    memberships = await visit.memberships()
    if not memberships:
        return visit.told(Help(coach=False, joined=False))
    return visit.told(NothingPosted(coach=any(one.role is Role.COACH for one in memberships)))


async def my_version(
    visit: Visit, command: MyVersion, understood: Understood | None = None, changed: Changed | None = None
) -> Outcome:
    record = await session_meant(visit, command.session)
    if record is None:
        return await nothing_posted(visit)
    await belong(visit, record.group_id)
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
    question = next_question(today, record.session, catalogue())
    if question is not None:
        return await ask(visit, question, today, record.id, understood)
    return await show(visit, record, today, understood, changed)


async def session_meant(visit: Visit, session_id: int | None) -> SessionRecord | None:
    """The posted session of that id, else the newest posted in the actor's groups."""
    if session_id is not None:
        record = await visit.uow.sessions.get(session_id)
        if record is None or record.posted_at is None:
            raise UnknownThing
        return record
    newest = [await visit.uow.sessions.latest_posted(member.group_id) for member in await visit.memberships()]
    posted = {record.posted_at: record for record in newest if record and record.posted_at}
    return posted[max(posted)] if posted else None


async def belong(visit: Visit, group_id: int) -> None:
    """Membership, made on the way in for somebody the platform knows as a member of the group."""
    if await visit.uow.groups.membership(visit.person.id, group_id) is not None:
        return
    visit.must_belong(group_id)
    await visit.join(group_id, Role.ATHLETE)


async def ask(
    visit: Visit,
    question: Question,
    profile: Profile,
    session_id: int | None,
    understood: Understood | None = None,
    *,
    again: bool = False,
) -> Outcome:
    """Ask, and remember in one row that the next free text may be the answer."""
    refs = {"session": session_id, "question": question.model_dump(mode="json")}
    await visit.uow.questions.ask(visit.chat, question.ask, refs, visit.now)
    asked = AskAbout(
        session=session_id, question=question, units=profile.units, understood=understood, again=again
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
    version = version_for(record.session, profile, catalogue(), await orders_for(visit, record))
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
    await visit.uow.questions.close(visit.chat)
    why = await waits_for(visit, record, version)
    if why is not None:
        return await wait(visit, record, shown, why)
    told = visit.told(what, Purpose.VERSION, session=record.id, version=shown.id)
    return told + await tell_coaches(visit, record, version)


async def tell_coaches(visit: Visit, record: SessionRecord, version: Version) -> Outcome:
    """Lines that need the coach reach every coach of the group, once, unless one has looked already."""
    needs = tuple(need for need in version.needs_coach if need.written is not None)
    if not needs or await has_ok(visit, record):
        return Outcome()
    group = await visit.group(record.group_id)
    what = CoachNeeded(
        session_id=record.id,
        person=visit.person.id,
        athlete=version.athlete,
        needs=needs,
        units=group.units,
    )
    return Outcome(await to_coaches(visit, group.id, what, f"needs:{record.id}:{visit.person.id}"))


async def show_how(visit: Visit, command: ShowHow) -> Outcome:
    record = await visit.uow.versions.get(command.version)
    if record is None or record.person_id != visit.person.id:
        raise UnknownThing
    lines = [line for block in record.version.blocks for line in block.lines]
    variants = dict.fromkeys((line.movement, line.variant) for line in lines)
    return visit.told(HowTo(variants=tuple(variants)))
