"""Somebody isn't at their best today, and says from what: each has its own answer, and less is a tap away."""

from typing import Final

from core.desk.coached import coached_groups
from core.desk.outcome import Outcome
from core.desk.talk.asked import keeps
from core.desk.talk.scene import scene_of
from core.desk.today.says import NotAtTheirBest
from core.desk.versions.expecting import minutes_of_theirs
from core.desk.visit import Visit
from core.notation.body.unwell import unwell_from
from core.store.records import SessionRecord

# Less is about two thirds of what it takes, with a warm-up of so many minutes (estimates).
SHORTER: Final = 0.65
WARM_UP_MIN: Final = 5


async def as_unwell(visit: Visit, text: str, replied_to: int | None) -> Outcome | None:
    """Told and asked alike; None while something is asked that it may answer."""
    cause = unwell_from(text)
    if cause is None or not await visit.memberships() or await keeps(visit, "pain"):
        return None
    if await coached_groups(visit) or not await visit.uow.consents.given(visit.person.id):
        return None
    scene = await scene_of(visit, text, replied_to)
    shorter = await shorter_by(visit, scene.record) if scene.record and scene.version else None
    return visit.told(NotAtTheirBest(cause=cause, version=scene.version, minutes=shorter))


async def shorter_by(visit: Visit, record: SessionRecord) -> int | None:
    """The minutes of a shorter version, warm-up and rests included; None while they have none."""
    theirs = await minutes_of_theirs(visit, record)
    return None if theirs is None else max(1, round(SHORTER * (theirs + WARM_UP_MIN)))
