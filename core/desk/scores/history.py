"""What somebody did before: their latest scores, or those with one movement."""

from core.desk.outcome import Outcome
from core.desk.scores.says import PastScore, PastScores
from core.desk.versions.showing import lines_of
from core.desk.visit import Visit
from core.movements.lookup import catalogue
from core.scaling.values import Change
from core.store.records import Done

SHOWN = 8
# Among so many of the latest a movement is looked for.
LOOKED_THROUGH = 120


async def past_scores(visit: Visit, movement: str | None = None) -> Outcome:
    """The newest first; of a movement, each with the way it was done then."""
    named = catalogue().by_name(movement) if movement else None
    done = await visit.uow.scores.done_by(visit.person.id, LOOKED_THROUGH)
    found = [past(one, named.movement.id if named else None) for one in done]
    if named is None:
        found = await with_those_without_version(visit, found)
    shown = tuple(one for one in found if one.lines or named is None)[:SHOWN]
    units = (await visit.profile()).units
    return visit.told(PastScores(movement=named.movement.id if named else None, scores=shown, units=units))


async def with_those_without_version(visit: Visit, found: list[PastScore]) -> list[PastScore]:
    """All that counts, whether or not it is known how it was done."""
    known = {(one.on, one.score): one for one in found}
    lately = await visit.uow.scores.lately_of(visit.person.id, await visit.group_ids(), SHOWN)
    return [known.get((on, score), PastScore(on=on, score=score, lines=())) for on, score in lately]


def past(done: Done, movement: str | None) -> PastScore:
    """`lines`: all that was scored, or only those of the movement."""
    lines = (one for one in lines_of(done) if one.change is not Change.REST)
    return PastScore(
        on=done.day,
        score=done.score,
        lines=tuple(one for one in lines if movement in {None, one.movement}),
    )
