"""What words are about: the session before the visitor, and their version of it."""

from dataclasses import dataclass

from core.desk.days import RECENT
from core.desk.versions.version import post_meant
from core.desk.versions.waiting import seen_by
from core.desk.visit import Visit
from core.store.records import SessionRecord


@dataclass(frozen=True, slots=True)
class Scene:
    """`text`: the whole message. `replied_to`: the session that it was a reply to."""

    text: str
    replied_to: int | None = None
    record: SessionRecord | None = None
    version: int | None = None


async def scene_of(visit: Visit, text: str, replied_to: int | None) -> Scene:
    record = await post_meant(visit, replied_to)
    if record is None or record.posted_at is None or record.posted_at < visit.now - RECENT:
        return Scene(text, replied_to)
    seen = await seen_by(visit, record, visit.person)
    return Scene(text, replied_to, record, seen.id if seen else None)
