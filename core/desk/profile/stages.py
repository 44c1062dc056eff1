"""The weeks of a pregnancy or after a birth, and what a seat allows: tapped, or told in words."""

from collections.abc import Mapping

from core.athletes.circumstances import ASKED_OF, TAPPED
from core.athletes.values import AfterBirth, Pregnancy
from core.desk.access import admitted
from core.desk.commands import TellStage
from core.desk.errors import UnknownThing
from core.desk.outcome import Outcome
from core.desk.versions.answers import keep
from core.desk.visit import Visit


@admitted
async def tell_stage(visit: Visit, command: TellStage) -> Outcome:
    choices = TAPPED.get(command.about, ())
    if not 0 <= command.place < len(choices):
        raise UnknownThing
    told = choices[command.place]
    if isinstance(told, Pregnancy | AfterBirth):
        told = told.model_copy(update={"on": visit.now.date()})
    facts: Mapping[str, object] = {ASKED_OF[command.about]: told}
    return await keep(visit, command.session, None, **facts) + Outcome(settles=True)
