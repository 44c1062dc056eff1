"""Whether somebody gets better, and what they are thought to be able to do."""

from collections.abc import Collection
from datetime import date

from core.ability.capacity import Capacity
from core.athletes.easing import STARTS_GENTLY
from core.athletes.today import as_of
from core.desk.days import today_in
from core.desk.outcome import Outcome
from core.desk.profile.learning import LEARNS_FROM, with_learned
from core.desk.scores.history import past_scores
from core.desk.scores.says import HowTheyDo, ToldProgress
from core.desk.visit import Visit
from core.forecast.progress import Scored, believed_of, beside_forecasts, done_again, is_best, trend_of
from core.forecast.values import Progress
from core.movements.lookup import catalogue
from core.store.records import Done, Membership

SHOWN_AGAIN, SHOWN_BELIEVED, SHOWN_TO_COACH = 3, 6, 5


async def progress(visit: Visit) -> Outcome:
    """To an athlete who asks how they are getting on."""
    done = await visit.uow.scores.done_by(visit.person.id, LEARNS_FROM)
    scored = [one for found in map(scored_of, done) for one in found]
    if not scored:
        return await past_scores(visit)
    beside = beside_forecasts(scored)
    profile = await with_learned(visit.uow, visit.person.id, await visit.profile(), visit.now)
    day = await _day_of(visit)
    lines = [line for one in scored for line in one.block.every_line]
    capacity = Capacity(as_of(profile, day), catalogue(), day.year)
    told = Progress(
        beside=beside,
        trend=trend_of(beside),
        again=done_again(scored)[:SHOWN_AGAIN],
        believed=believed_of(lines, capacity, catalogue())[:SHOWN_BELIEVED],
    )
    return visit.told(ToldProgress(progress=told, scores=len(scored), units=profile.units))


def scored_of(done: Done) -> list[Scored]:
    """The block of the version that the score is of."""
    blocks = (one for one in done.version.blocks if one.block == done.block + 1)
    return [Scored(done.day, block, done.score, done.foreseen) for block in blocks]


async def is_best_yet(visit: Visit, score_id: int) -> bool:
    """Whether this score of the visitor's is better than every time before that they did the same."""
    done = await visit.uow.scores.done_by(visit.person.id, LEARNS_FROM)
    told = [scored for one in done if one.score_id == score_id for scored in scored_of(one)]
    before = [scored for one in done if one.score_id != score_id for scored in scored_of(one)]
    return any(is_best(one, before) for one in told)


async def how_they_do(visit: Visit, athlete: Membership, groups: Collection[int]) -> Outcome:
    """To a coach, of one of theirs: what they did in the coach's groups, and whether they get better there."""
    done = await visit.uow.scores.done_by(athlete.person_id, LEARNS_FROM, groups=groups)
    beside = beside_forecasts([one for found in map(scored_of, done) for one in found])
    latest = await visit.uow.sessions.latest_posted(athlete.group_id)
    profile = await visit.seen_as(athlete.person).profile()
    told = HowTheyDo(
        athlete=athlete.person.name,
        person=athlete.person_id,
        scores=tuple(await visit.uow.scores.lately_of(athlete.person_id, groups, SHOWN_TO_COACH)),
        trend=trend_of(beside),
        session_id=latest.id if latest else None,
        units=(await visit.group(athlete.group_id)).units,
        owns=profile.equipment,
        gently=profile.branch in STARTS_GENTLY,
    )
    return visit.told(told, person=athlete.person_id)


async def _day_of(visit: Visit) -> date:
    groups = await visit.group_ids()
    return today_in(await visit.group(groups[0]), visit.now) if groups else visit.now.date()
