"""Join a group in private: consent first, screening next, then today's session."""

from collections.abc import Mapping
from datetime import date
from typing import Any, Final

from core.athletes.screening import next_screening_question, screen
from core.athletes.values import Branch, Profile, Screening
from core.desk.access import admitted
from core.desk.coached import coached_groups
from core.desk.commands import (
    AnswerScreening,
    DeclineConsent,
    GiveConsent,
    JoinGroup,
    SayCleared,
    ScreenAgain,
)
from core.desk.errors import Answered, StalePress
from core.desk.joining.answering import answer_in
from core.desk.joining.entry import (
    SCREENING,
    as_answers,
    ask_consent,
    ask_screening,
    ask_what_is_left,
    first_things,
)
from core.desk.joining.groups import continue_set_up
from core.desk.joining.says import ConsentDeclined, NotCleared, ScreeningDone
from core.desk.outcome import Outcome
from core.desk.profile.commands import ForgetMe
from core.desk.profile.own import forget_me
from core.desk.says import Help
from core.desk.scores.scoreboard import renew_board
from core.desk.talk.asked import BEFORE_ENTRY, WHILE_SCREENED
from core.desk.talk.not_got import short
from core.desk.talk.understood import in_own_words, matter
from core.desk.versions.version import version_in
from core.desk.visit import Standing, Visit
from core.notation.talk.ages import age_told, is_plainly_no, tells_of_a_minor
from core.notation.talk.yes_no import read_yes_no, says_answered_wrongly, says_by_mistake
from core.store.records import Group, GroupState


@admitted
async def join_group(visit: Visit, command: JoinGroup) -> Outcome:
    """A coach whose group has no zone yet is asked for it first; everybody else goes on to consent."""
    group = await visit.group(command.group)
    await take_over_units(visit, group)
    if visit.standing(group.id) is Standing.ADMIN and group.state is GroupState.NEW:
        return await continue_set_up(visit, group)
    return await continue_joining(visit, group.id)


async def take_over_units(visit: Visit, group: Group) -> None:
    """Somebody new is asked in the units that their group uses."""
    profile = await visit.profile()
    if profile.screening is None and profile.units is not group.units:
        units = profile.model_copy(update={"units": group.units})
        await visit.uow.profiles.save(visit.person.id, units, visit.now)


async def continue_joining(visit: Visit, group_id: int) -> Outcome:
    """The next step on the way in: consent, screening, or the version."""
    first = await first_things(visit, await visit.profile(), group_id)
    return first or await version_in(visit, group_id)


@admitted
async def give_consent(visit: Visit, command: GiveConsent) -> Outcome:
    if not await visit.uow.consents.given(visit.person.id):
        await visit.uow.consents.give(visit.person.id, visit.now)
    return await continue_joining(visit, command.group) + Outcome(settles=True)


@admitted
async def decline_consent(visit: Visit, command: DeclineConsent) -> Outcome:
    """Whoever agreed before takes everything back, which is asked once more."""
    if await visit.uow.consents.given(visit.person.id):
        return await forget_me(visit, ForgetMe())
    await visit.uow.questions.close(visit.chat)
    return visit.told(ConsentDeclined(group=command.group)) + Outcome(settles=True)


async def tell_consent(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """Consent in words; anything but a yes or a no is asked again."""
    group: int = refs["group"]
    match read_yes_no(text):
        case True:
            await visit.uow.consents.give(visit.person.id, visit.now)
            if age_told(text):
                await keep_age(visit, of_age=True)
            return await give_consent(visit, GiveConsent(group=group))
        case False:
            return await decline_consent(visit, DeclineConsent(group=group))
    if not text:
        return await ask_consent(visit, group)
    if any(act.act in WHILE_SCREENED for act in matter(in_own_words(text))):
        return await ask_consent(visit, group, again=True, unkept=short(text))
    # All of it is said once.
    door = Outcome() if refs.get("again") else visit.told(Help(coach=False, joined=True, door=group))
    return door + await ask_consent(visit, group, again=True)


@admitted
async def answer_screening(visit: Visit, command: AnswerScreening) -> Outcome:
    """Decide as soon as the answers suffice, else ask the next question.

    A slip can be put right on the day itself; a button from before then is too old to change who somebody is.
    """
    await visit.must_consent()
    profile = await visit.profile()
    if profile.screened_on not in {None, visit.now.date()} and not await is_asked(visit):
        raise StalePress
    alarmed = was_cut_short(profile)
    if (alarmed or profile.branch is Branch.NOT_ADULT) and not await is_asked(visit):
        return visit.told(NotCleared(group=command.group, branch=profile.branch))
    # Whoever said they're cleared isn't asked about the same signs again.
    letters = "yn" if alarmed and command.answers == "y" else command.answers
    answers = as_answers(letters)
    await must_not_ease(visit, answers)
    await keep_age(visit, of_age=answers[0])
    if next_screening_question(answers) is not None:
        return await ask_screening(visit, command.group, letters) + Outcome(settles=True)
    branch = screen(answers)
    gentle = alarmed and branch.screening is not Screening.STOP
    return await keep_screening(visit, command.group, Branch.CLEARED if gentle else branch)


async def must_not_ease(visit: Visit, answers: tuple[bool, ...]) -> None:
    """An old button of a question that was answered since is believed where it asks for more care; else Answered."""
    question = await visit.uow.questions.open_in(visit.chat)
    before = (await visit.profile()).screening
    if question is None or question.kind != SCREENING:
        if before is None:
            return
    elif len(answers) > len(question.refs["answers"]):
        return
    after = screen(answers).screening if next_screening_question(answers) is None else None
    if after is None or (before is not None and STRICTNESS.index(after) <= STRICTNESS.index(before)):
        raise Answered


STRICTNESS: Final = (Screening.CLEAR, Screening.MODERATE, Screening.STOP)


async def keep_age(visit: Visit, *, of_age: bool) -> None:
    profile = await visit.profile()
    if profile.of_age is not of_age:
        kept = profile.model_copy(update={"of_age": of_age})
        await visit.uow.profiles.save(visit.person.id, kept, visit.now)


def was_cut_short(profile: Profile) -> bool:
    """A stop sign was told before the first screening was through, so the rest of it is still to be asked."""
    return profile.branch is Branch.SYMPTOMS and profile.screened_on is None


async def is_asked(visit: Visit) -> bool:
    question = await visit.uow.questions.open_in(visit.chat)
    return question is not None and question.kind == SCREENING


async def tell_screening(visit: Visit, refs: Mapping[str, Any], text: str) -> Outcome:
    """A typed answer; a doubt is asked again with the safe advice, and after a slip the question before it."""
    group, so_far = refs["group"], refs["answers"]
    if says_by_mistake(text) or says_answered_wrongly(text):
        return await ask_screening(visit, group, so_far[:-1], again=not so_far)
    asked = next_screening_question(as_answers(so_far))
    assert asked is not None, "who has answered enough is not asked"
    age, read = age_told(text, asked=not so_far), answer_in(text, asked)
    if so_far and age is not None:
        return await ask_screening(visit, group, so_far)
    read = read if age is None else age
    is_beside = not so_far and age is None and read is False and not is_plainly_no(text)
    if read is None or is_beside:
        return await ask_screening(visit, group, so_far, again=True)
    return await answer_screening(
        visit, AnswerScreening(group=group, answers=so_far + ("y" if read else "n"))
    )


async def keep_screening(visit: Visit, group_id: int, branch: Branch) -> Outcome:
    await keep_branch(visit, branch, visit.now.date())
    done = visit.told(ScreeningDone(group=group_id, branch=branch)) + Outcome(settles=True)
    done += await off_the_boards(visit) if branch is Branch.NOT_ADULT else Outcome()
    if branch.screening is Screening.STOP:
        return done
    return done + await version_in(visit, group_id)


async def keep_branch(visit: Visit, branch: Branch, screened_on: date | None) -> None:
    profile = await visit.profile()
    facts = {"screening": branch.screening, "branch": branch, "screened_on": screened_on}
    await visit.uow.profiles.save(visit.person.id, profile.model_copy(update=facts), visit.now)
    await visit.uow.questions.close(visit.chat)


@admitted
async def say_cleared(visit: Visit, command: SayCleared) -> Outcome:
    """The athlete, not the coach, says that care has cleared them; they restart lighter."""
    profile = await visit.profile()
    if profile.branch is Branch.NOT_ADULT:
        return visit.told(NotCleared(group=command.group, branch=Branch.NOT_ADULT))
    if was_cut_short(profile):
        return await ask_what_is_left(visit, command.group, signs=False) + Outcome(settles=True)
    return await keep_screening(visit, command.group, Branch.CLEARED)


async def as_minor(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """Adults only, whenever it is told; kept, so that no later tap leads round it."""
    if not visit.private or not tells_of_a_minor(text):
        return None
    groups = await visit.memberships()
    if not groups or await coached_groups(visit):
        return None
    await keep_age(visit, of_age=False)
    await keep_branch(visit, Branch.NOT_ADULT, visit.now.date())
    told = visit.told(NotCleared(group=groups[0].group_id, branch=Branch.NOT_ADULT))
    return told + await off_the_boards(visit)


async def off_the_boards(visit: Visit) -> Outcome:
    """No child stands in public: what was taken of them before their age was known is withdrawn."""
    renewed = Outcome()
    for session_id in await visit.uow.personal.sessions_scored(visit.person.id):
        for score in await visit.uow.scores.of_person(session_id, visit.person.id):
            await visit.uow.scores.withdraw(score.id)
        record = await visit.uow.sessions.find(session_id, await visit.group_ids())
        renewed += await renew_board(visit, record) if record else Outcome()
    return renewed


async def as_held_minor(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """Of whoever is no adult nothing is noted; what they ask of the bot itself, and their age, is heard."""
    profile = await visit.profile()
    if profile.branch is not Branch.NOT_ADULT or not visit.private or await is_asked(visit):
        return None
    groups = await visit.memberships()
    if not groups or await coached_groups(visit) or is_put_right(text):
        return None
    acts = {act.act for act in in_own_words(text).acts}
    return (
        None
        if acts and acts <= BEFORE_ENTRY
        else visit.told(NotCleared(group=groups[0].group_id, branch=profile.branch))
    )


@admitted
async def screen_again(visit: Visit, command: ScreenAgain) -> Outcome:
    """The questions anew. Whoever may have no session is let in by what licensed care says, not by other answers."""
    await visit.must_consent()
    profile = await visit.profile()
    if profile.screening is Screening.STOP:
        return visit.told(NotCleared(group=command.group, branch=profile.branch))
    return await ask_what_is_left(visit, command.group)


async def as_put_right(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """A slip in the questions of the start is put right by answering them anew; None while they are asked first."""
    wrongly = says_answered_wrongly(text)
    profile, groups = await visit.profile(), await visit.memberships()
    if not is_put_right(text, held=profile.branch is Branch.NOT_ADULT) or await is_asked(visit):
        return None
    if groups and profile.branch is Branch.NOT_ADULT:
        return await ask_screening(visit, groups[0].group_id, "")
    if groups and wrongly and profile.screened_on is not None:
        return await screen_again(visit, ScreenAgain(group=groups[0].group_id))
    return None


def is_put_right(text: str, *, held: bool = True) -> bool:
    """A slip, or the age of whoever is `held` as no adult."""
    return says_answered_wrongly(text) or says_by_mistake(text) or bool(age_told(text, asked=held))
