"""A coach has those asked who haven't told a score: one tap, and each of them reads it in private."""

from core.desk.access import admitted
from core.desk.coached import coached_groups, coached_ids
from core.desk.coaching.absence import away_on
from core.desk.coaching.commands import PingQuiet
from core.desk.coaching.says import AskPing, CoachWaits, Pinged
from core.desk.errors import AlreadyDone, UnknownThing
from core.desk.outcome import Outcome, Say
from core.desk.visit import Visit
from core.notation.coaching.pinging import asks_to_ping
from core.store.records import Membership, Role, SessionRecord


async def as_ping(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """`Ping them`: shown first, for the newest session of each group; None for whoever coaches none."""
    groups = await coached_groups(visit) if asks_to_ping(text) else []
    found = [await visit.uow.sessions.latest_posted(group.id) for group in groups]
    asked = [await ask_ping(visit, record) for record in found if record is not None]
    return sum(asked, Outcome()) if asked else None


async def ask_ping(visit: Visit, record: SessionRecord) -> Outcome:
    names = tuple(one.person.name for one in await quiet_in(visit, record))
    return visit.told(
        AskPing(session=record.id, title=record.session.title, day=record.day, names=names), session=record.id
    )


async def quiet_in(visit: Visit, record: SessionRecord) -> list[Membership]:
    """The athletes without a score of this session who can be written to; without who is away."""
    told = {score.person_id for _, score in await visit.uow.scores.standing_in(record.id)}
    away = await away_on(visit.uow, record.group_id, record.day)
    members = await visit.uow.groups.members(record.group_id, role=Role.ATHLETE)
    left = [one for one in members if one.person_id not in told | set(away)]
    return [one for one in left if await visit.uow.chats.private_of(one.person_id) is not None]


@admitted
async def ping_quiet(visit: Visit, command: PingQuiet) -> Outcome:
    """Whoever has told one meanwhile is left in peace."""
    record = await visit.uow.sessions.find(command.session, await coached_ids(visit))
    if record is None:
        raise UnknownThing
    quiet = await quiet_in(visit, record)
    if not quiet:
        raise AlreadyDone
    waits = CoachWaits(coach=visit.person.name, title=record.session.title, day=record.day)
    chats = [await visit.uow.chats.private_of(one.person_id) for one in quiet]
    says = tuple(Say(chat.id, waits, refs={"session": record.id}) for chat in chats if chat is not None)
    return visit.told(Pinged(names=tuple(one.person.name for one in quiet))) + Outcome(says, settles=True)
