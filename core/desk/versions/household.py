"""Whoever has nothing to train with taps what a household has: several at once, in the one question.

What is ticked stands in the open question, so that of two quick taps none is lost.
"""

from core.athletes.household import ESTIMATED, HOUSEHOLD, with_household
from core.desk.access import admitted
from core.desk.commands import OwnTicked, TickThing
from core.desk.errors import StalePress, UnknownThing
from core.desk.outcome import Outcome
from core.desk.versions.answers import keep
from core.desk.versions.says import AskAbout, Understood
from core.desk.versions.version import remember
from core.desk.visit import Visit
from core.scaling.values import Ask, Question


@admitted
async def tick_thing(visit: Visit, command: TickThing) -> Outcome:
    """The pressed question shows what is ticked; what is typed next is added to it."""
    if command.thing not in HOUSEHOLD:
        raise UnknownThing
    ticked = set(await _ticked(visit)) ^ {command.thing}
    question = Question(ask=Ask.EQUIPMENT, ticked=tuple(one for one in HOUSEHOLD if one in ticked))
    await remember(visit, question, command.session)
    units = (await visit.profile()).units
    return Outcome(becomes=AskAbout(session=command.session, question=question, units=units))


@admitted
async def own_ticked(visit: Visit, command: OwnTicked) -> Outcome:
    """That is all there is; how heavy it gets is taken to be usual, and said."""
    things = with_household((), await _ticked(visit))
    estimated = tuple(one.implement for one in things if one.implement in ESTIMATED)
    units = (await visit.profile()).units
    understood = Understood(equipment=things, estimated=estimated, units=units)
    return await keep(visit, command.session, understood, equipment=things) + Outcome(settles=True)


async def _ticked(visit: Visit) -> tuple[str, ...]:
    await visit.must_consent()
    asked = await visit.uow.questions.open_in(visit.chat)
    if asked is None or asked.kind != Ask.EQUIPMENT:
        raise StalePress
    return Question.model_validate(asked.refs["question"]).ticked
