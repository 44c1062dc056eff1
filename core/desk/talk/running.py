"""What runners and beginners ask of the work itself: a pace, and whether one rests between."""

from core.athletes.values import Evidence
from core.desk.outcome import Outcome
from core.desk.profile.abilities import keep_shown
from core.desk.talk.asked import keeps
from core.desk.talk.not_got import word_for_coach
from core.desk.talk.says import DoneOtherwise, PaceTold, RestsTold, RunsOnTreadmill
from core.desk.talk.scene import scene_of
from core.desk.talk.together import as_one
from core.desk.visit import Visit
from core.notation.talk.paces_asked import (
    FarAndLong,
    ToldRun,
    asked_pace,
    asks_for_rest,
    names_treadmill,
    told_best,
    told_run,
)
from core.sessions.values import Session

# Run more often than so in one session, a line's distance is what nobody writes (estimate).
_TIMES_AS_FAR = 12


async def as_work_question(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    """Answered from what was asked, or from the session before them; None for all else."""
    if names_treadmill(text):
        return visit.told(RunsOnTreadmill())
    pace = asked_pace(text)
    if pace is not None:
        return visit.told(PaceTold(metres=pace.metres, seconds=pace.seconds))
    run = told_run(text)
    if run is not None and (other := await another_run(visit, run, text, replied_to)):
        return other
    best = told_best(text)
    if best is not None:
        return await keep_best(visit, best, text, replied_to)
    if not asks_for_rest(text) or await keeps(visit, "any_time"):
        return None
    scene = await scene_of(visit, text, replied_to)
    return visit.told(RestsTold(session=scene.record.session)) if scene.record else None


async def keep_best(visit: Visit, best: FarAndLong, text: str, replied_to: int | None) -> Outcome | None:
    """As what they can do; None on a day on which just that is run, as it is the score then."""
    scene = await scene_of(visit, text, replied_to)
    if scene.record and best.metres in runs_of(scene.record.session):
        return None
    if not await visit.memberships() or not await visit.uow.consents.given(visit.person.id):
        return None
    told = Evidence(movement="run", on=visit.now.date(), distance_m=best.metres, seconds=best.seconds)
    return await keep_shown(visit, told, (await visit.profile()).units)


async def another_run(visit: Visit, told: ToldRun, text: str, replied_to: int | None) -> Outcome | None:
    """A run that is none of the session's is no score of it; None where it may be, or there is no session."""
    scene = await scene_of(visit, text, replied_to)
    runs = runs_of(scene.record.session) if scene.record else []
    if scene.record is None or told.run.metres <= _TIMES_AS_FAR * max(runs, default=0.0):
        return None
    said = visit.told(PaceTold(metres=told.run.metres, seconds=told.run.seconds))
    shown = None if told.easy else await keep_best(visit, told.run, text, replied_to)
    otherwise = visit.told(DoneOtherwise(word=await word_for_coach(visit, text)))
    return as_one(visit, said + (shown or Outcome()) + otherwise)


def runs_of(session: Session) -> list[float]:
    """How far each line of a run goes."""
    lines = [line for block in session.blocks for line in block.lines]
    return [float(line.amount) for line in lines if line.movement == "run" and line.amount]
