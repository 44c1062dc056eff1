"""Join a group in private: consent first, screening next, then today's session."""

from core.athletes.screening import (
    Branch,
    ScreeningQuestion,
    is_due,
    next_screening_question,
    screen,
)
from core.athletes.values import Screening
from core.desk.commands import (
    AnswerScreening,
    DeclineConsent,
    GiveConsent,
    JoinGroup,
    MyVersion,
    SayCleared,
)
from core.desk.errors import NeedsConsent
from core.desk.outcome import Outcome
from core.desk.says.groups import AskZone
from core.desk.says.joining import AskConsent, AskScreening, ConsentDeclined, NotCleared, ScreeningDone
from core.desk.versions import my_version
from core.desk.visit import Standing, Visit
from core.store.records import Role


async def join_group(visit: Visit, command: JoinGroup) -> Outcome:
    """A coach whose group has no zone yet is asked for it first; everybody else goes on to consent."""
    standing = visit.must_belong(command.group)
    group = await visit.group(command.group)
    role = Role.COACH if standing is Standing.ADMIN else Role.ATHLETE
    await visit.uow.groups.join(person_id=visit.person.id, group_id=group.id, role=role, now=visit.now)
    if standing is Standing.ADMIN and group.zone is None:
        await visit.uow.questions.ask(visit.chat, "zone", {"group": group.id}, visit.now)
        return visit.told(AskZone(group=group.id, title=group.title))
    return await continue_joining(visit, group.id)


async def continue_joining(visit: Visit, group_id: int) -> Outcome:
    """The next step on the way in: consent, screening, or the version."""
    if not await visit.uow.consents.given(visit.person.id):
        group = await visit.group(group_id)
        return visit.told(AskConsent(group=group.id, title=group.title, name=visit.person.name))
    profile = await visit.profile()
    if is_due(profile, visit.now.date()):
        return ask_screening(visit, group_id, "")
    return await my_version(visit, MyVersion())


def ask_screening(visit: Visit, group_id: int, answers: str) -> Outcome:
    question = next_screening_question(as_answers(answers))
    assert isinstance(question, ScreeningQuestion)
    return visit.told(AskScreening(group=group_id, question=question, answers=answers))


async def give_consent(visit: Visit, command: GiveConsent) -> Outcome:
    if not await visit.uow.consents.given(visit.person.id):
        await visit.uow.consents.give(visit.person.id, visit.now)
    return await continue_joining(visit, command.group) + Outcome(settles=True)


async def decline_consent(visit: Visit, command: DeclineConsent) -> Outcome:
    return visit.told(ConsentDeclined(group=command.group)) + Outcome(settles=True)


async def answer_screening(visit: Visit, command: AnswerScreening) -> Outcome:
    """Decide as soon as the answers suffice, else ask the next question."""
    if not await visit.uow.consents.given(visit.person.id):
        raise NeedsConsent
    answers = as_answers(command.answers)
    if next_screening_question(answers) is not None:
        return ask_screening(visit, command.group, command.answers) + Outcome(settles=True)
    return await keep_screening(visit, command.group, screen(answers))


async def keep_screening(visit: Visit, group_id: int, branch: Branch) -> Outcome:
    profile = await visit.profile()
    facts = {"screening": branch.screening, "branch": branch, "screened_on": visit.now.date()}
    kept = profile.model_copy(update=facts)
    await visit.uow.profiles.save(visit.person.id, kept, visit.now)
    done = visit.told(ScreeningDone(group=group_id, branch=branch)) + Outcome(settles=True)
    if branch.screening is Screening.STOP:
        return done
    return done + await my_version(visit, MyVersion())


async def say_cleared(visit: Visit, command: SayCleared) -> Outcome:
    """The athlete, not the coach, says that care has cleared them; they restart lighter."""
    if (await visit.profile()).branch is Branch.NOT_ADULT:
        return visit.told(NotCleared(group=command.group, branch=Branch.NOT_ADULT))
    return await keep_screening(visit, command.group, Branch.CLEARED)


def as_answers(letters: str) -> tuple[bool, ...]:
    """`yn` -> (True, False)."""
    return tuple(letter == "y" for letter in letters)
