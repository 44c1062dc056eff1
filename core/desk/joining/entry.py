"""What comes before any session: consent, then screening. Each waits in the one open question of the chat."""

from core.athletes.screening import is_due, next_screening_question
from core.athletes.values import Branch, Profile, Screening
from core.desk.joining.says import AskConsent, AskScreening, NotCleared
from core.desk.outcome import Outcome
from core.desk.visit import Visit

CONSENT = "consent"
SCREENING = "screening"
ENTRY = frozenset({CONSENT, SCREENING})


async def first_things(visit: Visit, profile: Profile, group_id: int) -> Outcome | None:
    """Consent and screening come before any session; None where both are done and nothing stands against it."""
    if not await visit.uow.consents.given(visit.person.id):
        return await ask_consent(visit, group_id)
    if is_due(profile, visit.now.date()):
        told = "y" if profile.of_age and profile.screened_on is None else ""
        return await ask_screening(visit, group_id, await answers_so_far(visit) or told)
    if profile.branch is Branch.NOT_ADULT and profile.of_age:
        return await ask_screening(visit, group_id, await answers_so_far(visit) or "y")
    if profile.screening is Screening.STOP:
        return visit.told(NotCleared(group=group_id, branch=profile.branch))
    return None


async def ask_consent(visit: Visit, group_id: int, *, again: bool = False, unkept: str = "") -> Outcome:
    """`unkept`: what was told before it may be kept."""
    group = await visit.group(group_id)
    await visit.uow.questions.ask(visit.chat, CONSENT, {"group": group_id, "again": again}, visit.now)
    said = AskConsent(group=group_id, again=again, title=group.title, name=visit.person.name, unkept=unkept)
    return visit.told(said)


async def ask_screening(visit: Visit, group_id: int, answers: str, *, again: bool = False) -> Outcome:
    """The next question after `answers`, one letter each."""
    question = next_screening_question(as_answers(answers))
    assert question is not None, "who has answered enough is not asked"
    doubts = await doubts_before(visit, answers) + 1 if again else 0
    refs = {"group": group_id, "answers": answers, "doubts": doubts}
    await visit.uow.questions.ask(visit.chat, SCREENING, refs, visit.now)
    return visit.told(AskScreening(group=group_id, question=question, answers=answers, doubts=doubts))


async def doubts_before(visit: Visit, answers: str) -> int:
    """How often this question was asked again already, so that nobody reads the same hint twice."""
    question = await visit.uow.questions.open_in(visit.chat)
    is_it = question is not None and question.kind == SCREENING and question.refs["answers"] == answers
    return int(question.refs.get("doubts", 0)) if question and is_it else 0


async def ask_entry_again(visit: Visit) -> Outcome | None:
    """Consent or the screening's question once more, where one of them is open here."""
    question = await visit.uow.questions.open_in(visit.chat)
    if question is None or question.kind not in ENTRY:
        return None
    if question.kind == CONSENT:
        return await ask_consent(visit, question.refs["group"], again=True)
    return await ask_screening(visit, question.refs["group"], question.refs["answers"])


async def ask_what_is_left(visit: Visit, group_id: int, *, signs: bool = True) -> Outcome:
    """The screening, without the age of whoever told it; `signs`: they are still to be asked about."""
    of_age = (await visit.profile()).of_age
    return await ask_screening(visit, group_id, "" if not of_age else "y" if signs else "yn")


async def answers_so_far(visit: Visit) -> str:
    """Whoever was interrupted goes on where they were."""
    question = await visit.uow.questions.open_in(visit.chat)
    return question.refs["answers"] if question and question.kind == SCREENING else ""


def may_train(profile: Profile) -> bool:
    """Whether there is a version to show: they were screened, and nothing stands against it."""
    return profile.screening not in {None, Screening.STOP}


async def held_answer(visit: Visit) -> Outcome | None:
    """Whoever is held after a stop sign needs the way out more than a list of what else there is."""
    branch = (await visit.profile()).branch
    groups = await visit.memberships() if branch is Branch.SYMPTOMS else []
    return visit.told(NotCleared(group=groups[0].group_id, branch=branch)) if groups and branch else None


def as_answers(letters: str) -> tuple[bool, ...]:
    """`yn` -> (True, False)."""
    return tuple(letter == "y" for letter in letters)
