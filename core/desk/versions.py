"""Show an athlete their version of a session, asking first what this session needs and nobody knows yet."""

from core.athletes.screening import is_due, next_screening_question
from core.athletes.values import Profile, Screening
from core.desk.commands import MyVersion, ShowHow
from core.desk.errors import NotAMember, UnknownThing
from core.desk.outcome import Outcome, Say
from core.desk.reading import notes_of
from core.desk.says.joining import AskConsent, AskScreening, NotCleared
from core.desk.says.versions import (
    AskAbout,
    CoachNeeded,
    HowTo,
    NothingPosted,
    NoVersion,
    ShowVersion,
    Understood,
)
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.scaling.questions import next_question
from core.scaling.values import Question, Version, Withheld
from core.scaling.version import version_for
from core.store.records import Purpose, Role, SessionRecord


async def my_version(visit: Visit, command: MyVersion, understood: Understood | None = None) -> Outcome:
    record = await session_meant(visit, command.session)
    if record is None:
        return visit.told(NothingPosted())
    await belong(visit, record.group_id)
    profile = await visit.profile()
    first = await first_things(visit, profile, record.group_id)
    if first is not None:
        return first
    question = next_question(profile, record.session, catalogue())
    if question is not None:
        return await ask(visit, question, profile, record.id, understood)
    return await show(visit, record, profile, understood)


async def session_meant(visit: Visit, session_id: int | None) -> SessionRecord | None:
    """The posted session of that id, else the newest posted in the actor's groups."""
    if session_id is not None:
        record = await visit.uow.sessions.get(session_id)
        if record is None or record.posted_at is None:
            raise UnknownThing
        return record
    newest = [
        await visit.uow.sessions.latest_posted(member.group_id)
        for member in await visit.uow.groups.groups_of(visit.person.id)
    ]
    posted = {record.posted_at: record for record in newest if record and record.posted_at}
    return posted[max(posted)] if posted else None


async def belong(visit: Visit, group_id: int) -> None:
    """Membership, made on the way in for somebody the platform knows as a member of the group."""
    if await visit.uow.groups.membership(visit.person.id, group_id) is not None:
        return
    if group_id not in visit.standings:
        raise NotAMember
    visit.must_belong(group_id)
    await visit.uow.groups.join(
        person_id=visit.person.id, group_id=group_id, role=Role.ATHLETE, now=visit.now
    )


async def first_things(visit: Visit, profile: Profile, group_id: int) -> Outcome | None:
    """Consent and screening come before any session."""
    if not await visit.uow.consents.given(visit.person.id):
        group = await visit.uow.groups.get(group_id)
        assert group is not None
        return visit.told(AskConsent(group=group_id, title=group.title, name=visit.person.name))
    if is_due(profile, visit.now.date()):
        question = next_screening_question(())
        assert question is not None
        return visit.told(AskScreening(group=group_id, question=question, answers=""))
    if profile.screening is Screening.STOP:
        return visit.told(NotCleared(group=group_id, branch=profile.branch))
    return None


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
) -> Outcome:
    """Make the version, freeze it, show it."""
    version = version_for(record.session, profile, catalogue())
    if isinstance(version, Withheld):
        return visit.told(NoVersion(withheld=version))
    shown = await visit.uow.versions.show(
        session_id=record.id,
        session_revision=record.revision,
        person_id=visit.person.id,
        version=version,
        now=visit.now,
    )
    what = ShowVersion(
        version_id=shown.id,
        session_id=record.id,
        session=record.session,
        version=version,
        units=profile.units,
        notes=notes_of(record, await visit.group(record.group_id)),
        understood=understood,
    )
    await visit.uow.questions.close(visit.chat)
    told = visit.told(what, Purpose.VERSION, session=record.id, version=shown.id)
    return told + await tell_coaches(visit, record, version)


async def tell_coaches(visit: Visit, record: SessionRecord, version: Version) -> Outcome:
    """Lines that need the coach reach every coach of the group, once per athlete and session."""
    if not version.needs_coach:
        return Outcome()
    group = await visit.group(record.group_id)
    what = CoachNeeded(athlete=version.athlete, needs=version.needs_coach, units=group.units)
    says: list[Say] = []
    for coach in await visit.uow.groups.members(group.id, role=Role.COACH):
        chat = await visit.uow.chats.private_of(coach.person_id)
        if chat is not None:
            key = f"needs:{record.id}:{visit.person.id}:{chat.id}"
            says.append(Say(chat.id, what, key=key, refs={"session": record.id}))
    return Outcome(tuple(says))


async def show_how(visit: Visit, command: ShowHow) -> Outcome:
    record = await visit.uow.versions.get(command.version)
    if record is None or record.person_id != visit.person.id:
        raise UnknownThing
    lines = [line for block in record.version.blocks for line in block.lines]
    variants = dict.fromkeys((line.movement, line.variant) for line in lines)
    return visit.told(HowTo(variants=tuple(variants)))
