"""Whether somebody gets better, and what they are thought to be able to do."""

from datetime import date

from core.ability.capacity import Capacity
from core.athletes.today import as_of
from core.desk.days import today_in
from core.desk.outcome import Outcome
from core.desk.profile.learning import LEARNS_FROM, with_learned
from core.desk.scores.says import ToldProgress
from core.desk.visit import Visit
from core.forecast.progress import Scored, believed_of, beside_forecasts, done_again, is_best, trend_of
from core.forecast.values import Progress
from core.movements.lookup import catalogue
from core.store.records import Done

SHOWN_AGAIN, SHOWN_BELIEVED = 3, 6


async def progress(visit: Visit) -> Outcome:
    """To an athlete who asks how they are getting on."""
    done = await visit.uow.scores.done_by(visit.person.id, LEARNS_FROM)
    scored = [one for found in map(scored_of, done) for one in found]
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


async def _day_of(visit: Visit) -> date:
    groups = await visit.group_ids()
    return today_in(await visit.group(groups[0]), visit.now) if groups else visit.now.date()
