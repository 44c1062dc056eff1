"""What is said beside the matter: thanks are taken, and a coach who asks how it goes sees the day so far."""

from core.desk.days import clock_of, today_in
from core.desk.digest import digest_of
from core.desk.outcome import Outcome
from core.desk.says.common import Welcome
from core.desk.sessions import coached_groups
from core.desk.visit import Visit
from core.notation.asides import asks_how_it_goes, is_thanks
from core.notation.yes_no import read_yes_no


async def as_thanks(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """A question that is open stays so; but `ok` may be its answer."""
    if not is_thanks(text):
        return None
    if read_yes_no(text) is not None and await visit.uow.questions.open_in(visit.chat):
        return None
    return visit.told(Welcome())


async def as_how_it_goes(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """The digest before its hour, of each group; None for whoever coaches none."""
    if not asks_how_it_goes(text):
        return None
    outcome = None
    for group in await coached_groups(visit):
        clock = await clock_of(visit.uow, visit.person.id, group)
        found = await digest_of(visit.uow, visit.now, group, today_in(group, visit.now), clock)
        outcome = (outcome or Outcome()) + visit.told(found.model_copy(update={"so_far": True}))
    return outcome
