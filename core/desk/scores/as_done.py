"""What a score counts as: scaled or as written, ranked or not, of how many minutes."""

from typing import NamedTuple

from core.athletes.limits import day_rule
from core.athletes.values import Profile, Screening
from core.desk.versions.showing import as_counts
from core.desk.visit import Visit
from core.measures import AmountUnit
from core.scaling.counting import block_counts, minutes_had
from core.scaling.values import VersionBlock
from core.scores.values import Score
from core.store.records import Person, SessionRecord, VersionRecord


class Done(NamedTuple):
    """One block of a session, and the version in which somebody did it, if they had one."""

    record: SessionRecord
    athlete: Person
    version: VersionRecord | None
    block: int


async def as_done(visit: Visit, done: Done, score: Score) -> Score:
    """The score with what the version says of it: scaled or as written, ranked (light duty isn't), how long.

    Without a version nobody knows how it was done: scaled, unless the athlete says otherwise.
    """
    if done.version is None:
        profile = await visit.uow.profiles.get(done.athlete.id, name=done.athlete.name)
        ranked = is_ranked(await as_counts(visit, profile, done.athlete.id, done.record))
        return score.model_copy(update={"scaled": score.scaled or not score.claimed, "ranked": ranked})
    version, written = done.version.version, done.record.session.blocks[done.block]
    made = version.blocks[done.block]
    as_written = version.easing is None and block_counts(written, made, version.tolerance)
    seen = {
        "scaled": score.scaled or not as_written,
        "ranked": made.scored,
        "minutes": minutes_had(written, made),
        "unit": counted_in(score, made),
    }
    return score.model_copy(update=seen)


def is_ranked(today: Profile) -> bool:
    """Whether nothing that is known of somebody keeps them from a rank today: light duty, a pregnancy, an easy week."""
    light = today.screening in {Screening.MODERATE, Screening.STOP} or today.today.sick
    return not light and today.today.easing is None and day_rule(today.limits or ()).scored


def counted_in(score: Score, made: VersionBlock) -> str:
    """Calories only where the version's line has them: another movement in their stead is counted as it is done."""
    in_kcal = all(line.unit is AmountUnit.KCAL for line in made.every_line)
    return AmountUnit.REPS if score.unit == AmountUnit.KCAL and not in_kcal else score.unit
