"""A gentle version of the session with what is known so far, while questions are still open."""

from core.athletes.values import Screening
from core.desk.access import admitted
from core.desk.commands import GiveGentle
from core.desk.errors import UnknownThing, Withdrawn
from core.desk.joining.entry import first_things
from core.desk.outcome import Outcome
from core.desk.versions.says import Understood
from core.desk.versions.showing import profile_today
from core.desk.versions.version import session_meant, show
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.scaling.questions import answered_with_care
from core.store.records import SessionState


@admitted
async def give_gentle(visit: Visit, command: GiveGentle) -> Outcome:
    """Nothing is kept of what was guessed; the questions that are left are asked the next time."""
    record = await session_meant(visit, command.session)
    if record is None:
        raise UnknownThing
    if record.state is SessionState.WITHDRAWN:
        raise Withdrawn
    first = await first_things(visit, await visit.profile(), record.group_id)
    if first is not None:
        return first + Outcome(settles=True)
    guessed = answered_with_care(await profile_today(visit, record), record.session, catalogue())[1]
    stricter = Screening.STOP if guessed.screening is Screening.STOP else Screening.MODERATE
    gentle = guessed.model_copy(update={"screening": stricter})
    return await show(visit, record, gentle, Understood(gently=True)) + Outcome(settles=True)
