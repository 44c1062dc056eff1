"""Show an athlete their version of a session, asking first what this session needs and nobody knows yet."""

from core.athletes.values import Profile
from core.desk.commands import MyVersion, ReleaseVersion, ShowHow
from core.desk.entry import first_things
from core.desk.errors import NotTheCoach, UnknownThing
from core.desk.outcome import Outcome, Said, Say
from core.desk.reading import notes_of
from core.desk.says.versions import (
    AskAbout,
    Changed,
    CoachNeeded,
    HeldForCoach,
    HowTo,
    LookAtVersion,
    NothingPosted,
    NoVersion,
    ShowVersion,
    Understood,
    VersionReleased,
)
from core.desk.showing import orders_for, profile_today, showing
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.scaling.questions import next_question
from core.scaling.values import Question, Version, Withheld
from core.scaling.version import version_for
from core.store.records import Purpose, Role, SessionRecord, VersionRecord


async def my_version(
    visit: Visit, command: MyVersion, understood: Understood | None = None, changed: Changed | None = None
) -> Outcome:
    record = await session_meant(visit, command.session)
    if record is None:
        return visit.told(NothingPosted())
    await belong(visit, record.group_id)
    profile = await visit.profile()
    first = await first_things(visit, profile, record.group_id)
    if first is not None:
        return first
    today = await profile_today(visit, record)
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
    if waits_for_coach(version) and not await is_released(visit, record):
        return visit.told(HeldForCoach()) + await ask_coaches(visit, record, shown)
    told = visit.told(what, Purpose.VERSION, session=record.id, version=shown.id)
    return told + await tell_coaches(visit, record, version)


def waits_for_coach(version: Version) -> bool:
    """Whether a coach must look at the whole of it first (design case 8)."""
    return any(need.written is None for need in version.needs_coach)


async def is_released(visit: Visit, record: SessionRecord) -> bool:
    """Whether a coach has let this athlete's version of the session out."""
    return await visit.uow.outbox.by_key(released_key(record.id, visit.person.id)) is not None


def released_key(session_id: int, person_id: int) -> str:
    return f"released:{session_id}:{person_id}"


async def ask_coaches(visit: Visit, record: SessionRecord, shown: VersionRecord) -> Outcome:
    """Every coach gets the version to look at, once per athlete and session."""
    group = await visit.group(record.group_id)
    what = LookAtVersion(version_id=shown.id, version=shown.version, units=group.units)
    says = await to_coaches(visit, group.id, what, f"look:{record.id}:{visit.person.id}")
    return Outcome(says)


async def release_version(visit: Visit, command: ReleaseVersion) -> Outcome:
    """A coach's OK: the athlete's newest version of that session goes out."""
    looked_at = await visit.uow.versions.get(command.version)
    record = await visit.uow.sessions.get(looked_at.session_id) if looked_at else None
    if looked_at is None or record is None:
        raise UnknownThing
    membership = await visit.uow.groups.membership(visit.person.id, record.group_id)
    if membership is None or membership.role is not Role.COACH:
        raise NotTheCoach
    newest = await visit.uow.versions.current(record.id, looked_at.person_id) or looked_at
    chat = await visit.uow.chats.private_of(looked_at.person_id)
    if chat is None:
        raise UnknownThing
    profile = await visit.uow.profiles.get(looked_at.person_id, name=newest.version.athlete)
    what = ShowVersion(
        version_id=newest.id,
        session_id=record.id,
        session=record.session,
        version=newest.version,
        units=profile.units,
        notes=notes_of(record, await visit.group(record.group_id)),
    )
    key = released_key(record.id, looked_at.person_id)
    refs = {"session": record.id, "version": newest.id}
    out = Say(chat.id, what, Purpose.VERSION, key=key, refs=refs)
    return Outcome((out,), settles=True) + visit.told(VersionReleased(athlete=newest.version.athlete))


async def tell_coaches(visit: Visit, record: SessionRecord, version: Version) -> Outcome:
    """Lines that need the coach reach every coach of the group, once per athlete and session."""
    needs = tuple(need for need in version.needs_coach if need.written is not None)
    if not needs:
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


async def to_coaches(visit: Visit, group_id: int, what: Said, key: str) -> tuple[Say, ...]:
    """The same to every coach who has a private chat, once for ever per `key`."""
    coaches = await visit.uow.groups.members(group_id, role=Role.COACH)
    chats = [await visit.uow.chats.private_of(coach.person_id) for coach in coaches]
    return tuple(Say(chat.id, what, key=f"{key}:{chat.id}") for chat in chats if chat is not None)


async def show_how(visit: Visit, command: ShowHow) -> Outcome:
    record = await visit.uow.versions.get(command.version)
    if record is None or record.person_id != visit.person.id:
        raise UnknownThing
    lines = [line for block in record.version.blocks for line in block.lines]
    variants = dict.fromkeys((line.movement, line.variant) for line in lines)
    return visit.told(HowTo(variants=tuple(variants)))
