"""Questions about the bot itself, answered at any time; what is open is asked once more behind it."""

from typing import Final

from core.athletes.values import Screening
from core.desk.coached import coached_athletes, coached_groups
from core.desk.outcome import Outcome
from core.desk.talk.asked import keeps
from core.desk.talk.says import CommonAnswer, HowItIsDone, Stage
from core.desk.talk.scene import Scene, scene_of
from core.desk.visit import Visit
from core.notation.people import find_name
from core.notation.talk.common_questions import common_question
from core.notation.talk.intentions import asks_how, intentions_in, wondered_of


async def as_common_question(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    coach = bool(await coached_groups(visit))
    topic = common_question(text, coach=coach)
    if topic is None or not await visit.memberships() or await keeps(visit, "any_time"):
        return None
    if topic == "safe" and find_name(text, await coached_athletes(visit)) is None:
        return None
    stage = await stage_of(visit, text, replied_to, coach=coach)
    return (
        visit.told(CommonAnswer(topic=topic, stage=stage))
        if topic not in ON_THE_WAY_IN or stage in WAY_IN
        else None
    )


# What is asked of the session itself by whoever has come in.
ON_THE_WAY_IN: Final = frozenset({"long"})
WAY_IN: Final = frozenset({"consent", "screening"})


async def as_how(visit: Visit, text: str, _: int | None) -> Outcome | None:
    """A coach asks how something is done, or wonders about somebody: the one line of it, or the two that it may be."""
    if not await coached_groups(visit):
        return None
    named = find_name(text, tuple(await coached_athletes(visit)))
    found = intentions_in(text) if asks_how(text) else wondered_of(text, named.rest) if named else ()
    if named and set(found) & _OF_CARE:
        return visit.told(CommonAnswer(topic="safe", stage="coach"))
    return visit.told(HowItIsDone(intentions=found)) if found else None


# Of these a midwife or doctor has the first say.
_OF_CARE: Final = frozenset({"pregnant", "hurt"})


async def stage_of(visit: Visit, text: str, replied_to: int | None, *, coach: bool) -> Stage:
    """How far somebody has come, so that it can be said what follows."""
    if coach:
        return "coach"
    if not await visit.uow.consents.given(visit.person.id):
        return "consent"
    match (await visit.profile()).screening:
        case None:
            return "screening"
        case Screening.STOP:
            return "stopped"
    return await before_them(visit, await scene_of(visit, text, replied_to))


async def before_them(visit: Visit, scene: Scene) -> Stage:
    if scene.record is None:
        return "nothing_posted"
    if scene.version is None:
        return "no_version"
    return "done" if await visit.uow.scores.of_person(scene.record.id, visit.person.id) else "has_version"
