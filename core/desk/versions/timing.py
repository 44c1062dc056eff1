"""A clock to train by: the visitor's own version as a timer that is heard; for a coach the session as it is written."""

from collections.abc import Collection

from core.desk.access import admitted
from core.desk.commands import MyVersion
from core.desk.errors import Withdrawn
from core.desk.outcome import Outcome
from core.desk.versions.commands import GiveTimer
from core.desk.versions.expecting import outlooks_of
from core.desk.versions.says import NoTimer, Timer
from core.desk.versions.version import my_version, nothing_posted, session_meant
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.forecast.clock import clocks_of
from core.forecast.values import Clock
from core.sessions.values import BlockKind, Session
from core.store.records import SessionRecord, SessionState


@admitted
async def give_timer(visit: Visit, command: GiveTimer) -> Outcome:
    """Whoever has no version yet gets that first."""
    record = await session_meant(visit, command.session)
    if record is None:
        return await nothing_posted(visit)
    if record.state is SessionState.WITHDRAWN:
        raise Withdrawn
    clocks = await _clocks(visit, record)
    if clocks is None:
        return await my_version(visit, MyVersion(session=record.id))
    block = command.block or _main_of(record.session, clocks)
    if block not in clocks:
        return visit.told(NoTimer())
    others = tuple(number for number in clocks if number != block)
    timer = Timer(
        session_id=record.id, session=record.session, block=block, clock=clocks[block], others=others
    )
    return visit.told(timer, session=record.id)


async def _clocks(visit: Visit, record: SessionRecord) -> dict[int, Clock] | None:
    """By the numbers of their blocks; None while somebody who trains has no version."""
    shown = await seen_by(visit, record, visit.person)
    if shown is not None:
        await visit.must_consent()
        return clocks_of(shown.version.blocks, await outlooks_of(visit, record))
    coached = {one.group_id for one in await visit.coached()}
    return clocks_of(record.session.blocks) if record.group_id in coached else None


def _main_of(session: Session, numbers: Collection[int]) -> int | None:
    """The first that is scored among the main ones, else the first main one, else the first."""

    def rank(number: int) -> tuple[bool, bool, int]:
        block = session.blocks[number - 1]
        return block.kind is not BlockKind.MAIN, not block.scored, number

    return min(numbers, key=rank, default=None)
