"""Whose version a coach was shown last: `her` means them for a while."""

from datetime import timedelta
from typing import Final

from core.desk.coached import Roster
from core.desk.visit import Visit

# Whoever was looked at longer ago isn't `her` any more (estimate).
IN_VIEW: Final = timedelta(hours=2)


async def in_view(visit: Visit, athletes: Roster) -> str | None:
    refs = await visit.uow.outbox.last_refs(visit.chat, visit.now - IN_VIEW)
    person = next((one["person"] for one in refs if "person" in one), None)
    return next((one.person.name for one in athletes.everybody if one.person_id == person), None)
