"""What runners and beginners ask of the work itself: a pace, and whether one rests between."""

import re
from typing import Final

from core.athletes.values import Evidence
from core.desk.outcome import Outcome
from core.desk.profile.abilities import keep_shown
from core.desk.talk.asked import keeps
from core.desk.talk.says import PaceTold, RestsTold
from core.desk.talk.scene import scene_of
from core.desk.visit import Visit
from core.notation.talk.paces_asked import FarAndLong, asked_pace, told_best
from core.notation.text import plain

_RESTS: Final = re.compile(
    r"\b(?:do|should|must|can|may|when do) (?:i|we|you) (?:have to |need to |get to )?rest (?:in )?between\b"
    r"|\bhow (?:long|much) (?:do|should|can|may)? ?(?:i|we|is the)? ?rest\b"
    r"|\b(?:what(?:'?s| is) the|is there an?y?) rest\b"
    r"|\brest (?:in )?between (?:\w+ )?(?:sets|rounds|reps)?\W*\?"
)


async def as_work_question(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    """Answered from what was asked, or from the session before them; None for all else."""
    pace = asked_pace(text)
    if pace is not None:
        return visit.told(PaceTold(metres=pace.metres, seconds=pace.seconds))
    best = told_best(text)
    if best is not None:
        return await keep_best(visit, best, text, replied_to)
    if not _RESTS.search(plain(text).replace("\u2019", "'").casefold()) or await keeps(visit, "any_time"):
        return None
    scene = await scene_of(visit, text, replied_to)
    return visit.told(RestsTold(session=scene.record.session)) if scene.record else None


async def keep_best(visit: Visit, best: FarAndLong, text: str, replied_to: int | None) -> Outcome | None:
    """As what they can do; None on a day on which just that is run, as it is the score then."""
    scene = await scene_of(visit, text, replied_to)
    blocks = scene.record.session.blocks if scene.record else ()
    if any(line.movement == "run" and line.amount == best.metres for one in blocks for line in one.lines):
        return None
    if not await visit.memberships() or not await visit.uow.consents.given(visit.person.id):
        return None
    told = Evidence(movement="run", on=visit.now.date(), distance_m=best.metres, seconds=best.seconds)
    return await keep_shown(visit, told, (await visit.profile()).units)
