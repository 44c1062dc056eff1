"""What is told under an open question of the profile beside its answer, or in place of it."""

import re
from typing import Final

from core.desk.outcome import Outcome
from core.desk.profile.abilities import keep_other_ability
from core.desk.scores.whose import own_score
from core.desk.talk.asked import ASKED_FOR_VERSIONS
from core.desk.visit import Visit
from core.notation.ability_answers import Answer, ability_answer
from core.notation.part_labels import find_part
from core.scaling.values import Ask, Question
from core.store.records import OpenQuestion

# Asked what there is; `part 1 was 20 kg` is no answer to that.
OF_THINGS: Final = frozenset({"equipment", "set", "weight"})
_NUMBER: Final = re.compile(r"[0-9]")


async def other_told(visit: Visit, question: OpenQuestion, text: str) -> Outcome | None:
    """How many they can do of another movement than was asked for, or the score of a part that is named."""
    if question.kind in OF_THINGS and find_part(text) and _NUMBER.search(text):
        return await own_score(visit, text, None)
    told = _answer_in(question, text)
    if told is None or told.movement in {None, _asked(question)}:
        return None
    return await keep_other_ability(visit, told)


def rest_beside(question: OpenQuestion, text: str) -> str | None:
    """What else is told beside how many they can do of what was asked for; None where nothing is."""
    told = _answer_in(question, text) if question.kind == Ask.ABILITY else None
    return told.rest if told and any(one.isalnum() for one in told.rest) else None


def _answer_in(question: OpenQuestion, text: str) -> Answer | None:
    if question.kind not in ASKED_FOR_VERSIONS:
        return None
    told = ability_answer(text, _asked(question))
    return told if told and told.reps is not None else None


def _asked(question: OpenQuestion) -> str | None:
    return Question.model_validate(question.refs["question"]).movement
