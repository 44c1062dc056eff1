"""How many of a movement somebody can do in a row: the answer to that question, by a tap or in words."""

from core.athletes.values import Evidence
from core.desk.access import admitted
from core.desk.commands import MyVersion, TellAbility
from core.desk.errors import UnknownThing
from core.desk.outcome import Outcome
from core.desk.versions.kept import must_still_ask
from core.desk.versions.says import Understood
from core.desk.versions.version import my_version
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.notation.ability_answers import ability_answer
from core.notation.unknowing import is_new_to_it
from core.scaling.values import Ask, Question


@admitted
async def tell_ability(visit: Visit, command: TellAbility) -> Outcome:
    if not catalogue().knows(command.movement):
        raise UnknownThing
    told = any(one.movement == command.movement for one in (await visit.profile()).evidence)
    await must_still_ask(visit, Ask.ABILITY, answered=told)
    evidence = Evidence(
        movement=command.movement,
        variant=await variant_asked_for(visit, command.movement),
        on=visit.now.date(),
        reps=command.reps,
        load_kg=command.load_kg,
    )
    return await keep_ability(visit, evidence, command.session) + Outcome(settles=True)


async def keep_ability(visit: Visit, evidence: Evidence, session_id: int, *, gently: bool = False) -> Outcome:
    await visit.must_consent()
    await visit.uow.profiles.add_evidence(visit.person.id, evidence, visit.now)
    return await my_version(visit, MyVersion(session=session_id), Understood(gently=True) if gently else None)


async def variant_asked_for(visit: Visit, movement: str) -> str | None:
    """Of which variant the open question is, if it is about this movement: twenty from the knees are not twenty."""
    asked = await visit.uow.questions.open_in(visit.chat)
    if asked is None or asked.kind != Ask.ABILITY:
        return None
    question = Question.model_validate(asked.refs["question"])
    return question.variant if question.movement == movement else None


async def tell_ability_in_words(
    visit: Visit, question: Question, session_id: int, text: str
) -> Outcome | None:
    """None for what is no answer, or one about another movement."""
    told = ability_answer(text, question.movement)
    if told is None or question.movement is None or told.movement not in {None, question.movement}:
        return None
    evidence = Evidence(
        movement=question.movement,
        variant=told.variant or question.variant,
        on=visit.now.date(),
        reps=told.reps,
        # With what they hold in it one from the knees or the wall isn't done.
        load_kg=None if told.variant else question.load_kg,
    )
    return await keep_ability(visit, evidence, session_id, gently=is_new_to_it(text))
