"""What runners, lifters and beginners ask of the work itself: a pace, a share of a best, whether one rests between."""

from decimal import Decimal

from core.ability.whole_body import pace_of
from core.athletes.values import Evidence
from core.desk.coached import coached_groups
from core.desk.outcome import Outcome
from core.desk.profile.abilities import keep_shown
from core.desk.talk.asked import keeps
from core.desk.talk.not_got import word_for_coach
from core.desk.talk.says import DoneOtherwise, PaceTold, RestsTold, RunReckoned, RunsOnTreadmill, ShareTold
from core.desk.talk.scene import scene_of
from core.desk.talk.together import as_one
from core.desk.visit import Visit
from core.notation.talk.paces_asked import (
    FarAndLong,
    ToldRun,
    asked_pace,
    asked_time,
    asks_for_rest,
    names_treadmill,
    told_best,
    told_run,
)
from core.notation.talk.shares_asked import asked_share
from core.sessions.values import Session

# Run more often than so in one session, a line's distance is what nobody writes (estimate).
_TIMES_AS_FAR = 12
# From a run so many times as long or short a time is still worth reckoning (estimate).
_AS_NEAR = 5


async def as_work_question(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    """Answered from what was asked, or from the session before them; None for all else."""
    if names_treadmill(text):
        return visit.told(RunsOnTreadmill())
    return (
        await of_share_asked(visit, text, replied_to)
        or await of_runs_asked(visit, text)
        or await of_runs_told(visit, text, replied_to)
        or await of_rest(visit, text, replied_to)
    )


async def of_share_asked(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    """`80 %`: in kilos, where they told the best that it is of; else of what, and that it be told."""
    asked = asked_share(text)
    if asked is None or not visit.private or await coached_groups(visit):
        return None
    scene = await scene_of(visit, text, replied_to)
    movement = asked.movement or (lifted_in(scene.record.session) if scene.record else None)
    told = [one for _, one in await visit.uow.profiles.told(visit.person.id)]
    shown = [one for one in told if one.movement == movement and one.load_kg and one.reps]
    best = max(shown, key=once_kg, default=None)
    share = ShareTold(percent=asked.percent, movement=movement, units=(await visit.profile()).units)
    if best is None:
        return visit.told(share)
    return visit.told(
        share.model_copy(update={"best_kg": Decimal(round(once_kg(best), 1)), "reps": round(best.reps or 1)})
    )


def once_kg(shown: Evidence) -> float:
    """What goes once where so many repetitions went: Epley (1985)."""
    reps = float(shown.reps or 1)
    return float(shown.load_kg or 0) * (1 if reps <= 1 else 1 + reps / 30)


def lifted_in(session: Session) -> str | None:
    """The one lift of it whose load is a share of a best, or else is open."""
    found = {line.movement for block in session.blocks for line in block.lines if line.load_rule is not None}
    return found.pop() if len(found) == 1 else None


async def of_runs_asked(visit: Visit, text: str) -> Outcome | None:
    """A pace, or a time."""
    pace = asked_pace(text)
    if pace is not None:
        return visit.told(PaceTold(metres=pace.metres, seconds=pace.seconds))
    return await as_time_asked(visit, text)


async def of_runs_told(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    """One that isn't of the session, or a best; a coach tells of somebody else."""
    if await coached_groups(visit):
        return None
    run, best = told_run(text), told_best(text)
    other = await another_run(visit, run, text, replied_to) if run else None
    return other or (await keep_best(visit, best, text, replied_to) if best else None)


async def of_rest(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    if not asks_for_rest(text) or await keeps(visit, "any_time"):
        return None
    scene = await scene_of(visit, text, replied_to)
    return visit.told(RestsTold(session=scene.record.session)) if scene.record else None


async def as_time_asked(visit: Visit, text: str) -> Outcome | None:
    """Reckoned from a run that they told; None where none is asked for, or none is near enough to tell anything."""
    metres = asked_time(text)
    told = [one for _, one in await visit.uow.profiles.told(visit.person.id)] if metres else []
    pace = pace_of(told, "run") if metres else None
    if metres is None or pace is None or not 1 / _AS_NEAR <= metres / pace.metres <= _AS_NEAR:
        return None
    return visit.told(
        RunReckoned(
            metres=metres, seconds=pace.seconds_for(metres), of_metres=pace.metres, of_seconds=pace.seconds
        )
    )


async def keep_best(
    visit: Visit, best: FarAndLong, text: str, replied_to: int | None, movement: str = "run"
) -> Outcome | None:
    """As what they can do; None on a day on which just that is run, as it is the score then."""
    scene = await scene_of(visit, text, replied_to)
    if scene.record and best.metres in far_in(scene.record.session, movement):
        return None
    if not await visit.memberships() or not await visit.uow.consents.given(visit.person.id):
        return None
    told = Evidence(movement=movement, on=visit.now.date(), distance_m=best.metres, seconds=best.seconds)
    return await keep_shown(visit, told, (await visit.profile()).units)


async def another_run(visit: Visit, told: ToldRun, text: str, replied_to: int | None) -> Outcome | None:
    """What is none of the session's is no score of it; None where it may be, or there is no session."""
    scene = await scene_of(visit, text, replied_to)
    lines = far_in(scene.record.session, told.movement) if scene.record else []
    if scene.record is None or told.run.metres <= _TIMES_AS_FAR * max(lines, default=0.0):
        return None
    is_run = told.movement == "run"
    said = visit.told(PaceTold(metres=told.run.metres, seconds=told.run.seconds)) if is_run else Outcome()
    shown = None if told.easy else await keep_best(visit, told.run, text, replied_to, told.movement)
    otherwise = visit.told(DoneOtherwise(word=await word_for_coach(visit, text)))
    return as_one(visit, said + (shown or Outcome()) + otherwise)


def far_in(session: Session, movement: str) -> list[float]:
    """How far each line of it goes."""
    lines = [line for block in session.blocks for line in block.lines]
    return [float(line.amount) for line in lines if line.movement == movement and line.amount]
