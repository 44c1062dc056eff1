"""What runners and beginners ask of the work itself: a pace, and whether one rests between."""

import re
from typing import Final

from core.desk.outcome import Outcome
from core.desk.talk.asked import keeps
from core.desk.talk.says import PaceTold, RestsTold
from core.desk.talk.scene import scene_of
from core.desk.visit import Visit
from core.notation.talk.paces_asked import asked_pace
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
    if not _RESTS.search(plain(text).replace("\u2019", "'").casefold()) or await keeps(visit, "any_time"):
        return None
    scene = await scene_of(visit, text, replied_to)
    return visit.told(RestsTold(session=scene.record.session)) if scene.record else None
