"""What was stored of somebody, said back where no version shows it."""

from core.desk.joining.entry import held_answer, may_train
from core.desk.outcome import Outcome
from core.desk.versions.says import AnswerKept, Understood
from core.desk.visit import Visit


async def answer_kept(visit: Visit, understood: Understood) -> Outcome:
    """Said back; of whoever is held, with the way out, as no version shows it."""
    waits = not may_train(await visit.profile())
    kept = visit.told(AnswerKept(understood=understood, waits=waits))
    return kept + (await held_answer(visit) or Outcome())
