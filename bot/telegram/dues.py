"""What to do when something is due: worded then, from references."""

from collections.abc import Awaitable, Callable, Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Final

from bot.delivery.bells import Bells
from bot.delivery.clock import Clock
from bot.telegram.letters import Cause, Writer
from bot.telegram.standing import Place, Standings, follow
from core.desk.classes.reminding import ATTENDANCE, REMIND, attendance_due, remind_due
from core.desk.coaching.digest import DIGEST, digest_due, digest_is_for
from core.desk.outcome import Outcome
from core.desk.post_office import Due, Store, Unit
from core.desk.profile.own import CLOSE_CHAT, close_chat_due
from core.desk.sessions.scheduled import POST, post_due, post_is_by
from core.desk.sessions.undelivered import UNDELIVERED, undelivered_due
from core.desk.today.pain import REVIEW, review_due
from core.desk.versions.waiting import STILL_WAITS, still_waits_due, waits_for_coach
from core.desk.visit import Sighting

DueCase = Callable[[Unit, datetime, Mapping[str, Any]], Awaitable[Outcome]]

DUE_CASES: Final[Mapping[str, DueCase]] = {
    POST: post_due,
    REMIND: remind_due,
    ATTENDANCE: attendance_due,
    DIGEST: digest_due,
    REVIEW: review_due,
    CLOSE_CHAT: close_chat_due,
    STILL_WAITS: still_waits_due,
    UNDELIVERED: undelivered_due,
}


# Which group's coach is told, or says something to it, by group and user.
OF_COACHES: Final[Mapping[str, Callable[[Unit, Mapping[str, Any]], Awaitable[Place | None]]]] = {
    DIGEST: digest_is_for,
    STILL_WAITS: waits_for_coach,
    POST: post_is_by,
}


@dataclass(frozen=True, slots=True)
class DueDesk:
    """Carries out due rows, each once, in one transaction."""

    store: Store
    clock: Clock
    bells: Bells
    writer: Writer
    standings: Standings

    async def carry_out(self, due: Due) -> None:
        coaches = await self._coaches(due)
        now = self.clock.now()
        async with self.store.unit() as uow:
            await follow(uow, coaches.items())
            outcome = await DUE_CASES[due.kind](uow, now, due.refs)
            await self.writer.write(uow, now, Cause(f"due:{due.id}"), outcome)
            await uow.dues.done(due.id, now)
        self.bells.something_was_done()

    async def _coaches(self, due: Due) -> dict[Place, Sighting]:
        """What is for a coach's eyes, or from their hand, is theirs whom the platform calls so now."""
        if due.kind not in OF_COACHES:
            return {}
        async with self.store.reading() as uow:
            place = await OF_COACHES[due.kind](uow, due.refs)
        return await self.standings.look_up([place] if place else [], needed=False)
