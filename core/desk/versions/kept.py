"""What was stored of somebody: said back where no version shows it, and not undone by an old button."""

from core.desk.errors import Answered
from core.desk.joining.entry import held_answer, may_train
from core.desk.outcome import Outcome
from core.desk.versions.says import AnswerKept, Understood
from core.desk.visit import Visit
from core.scaling.values import Ask


async def answer_kept(visit: Visit, understood: Understood) -> Outcome:
    """Said back; of whoever is held, with the way out, as no version shows it."""
    waits = not may_train(await visit.profile())
    kept = visit.told(AnswerKept(understood=understood, waits=waits))
    return kept + (await held_answer(visit) or Outcome())


async def must_still_ask(visit: Visit, ask: Ask, *, answered: bool) -> None:
    """Raises Answered for an old button of a question that was answered since: it would undo what was told."""
    question = await visit.uow.questions.open_in(visit.chat)
    if answered and (question is None or question.kind != ask):
        raise Answered
