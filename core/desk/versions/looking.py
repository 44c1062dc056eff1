"""The line that an athlete looked at, in the version that still counts; anything older is a stale press."""

from dataclasses import dataclass
from typing import Any

from core.athletes.values import Profile
from core.desk.commands import MyVersion
from core.desk.errors import StalePress, UnknownThing, Withdrawn
from core.desk.outcome import Outcome
from core.desk.versions.says import Changed
from core.desk.versions.showing import orders_for, profile_today
from core.desk.versions.version import my_version
from core.desk.visit import Visit
from core.scaling.orders import Noted
from core.scaling.values import Spot, VersionLine
from core.store.records import SessionRecord, SessionState, VersionRecord, VersionState


@dataclass(frozen=True, slots=True)
class Looked:
    """The line that was looked at, in the version that still counts; `profile` as it is today.

    `faults`: what the coach noted, as far as it binds this line.
    """

    record: SessionRecord
    version: VersionRecord
    place: int
    spot: Spot
    line: VersionLine
    profile: Profile
    faults: tuple[Noted, ...]

    @property
    def about(self) -> dict[str, Any]:
        """The fields that everything said about a line has."""
        return {
            "version_id": self.version.id,
            "place": self.place,
            "line": self.line,
            "units": self.profile.units,
        }


async def current(visit: Visit, version_id: int) -> tuple[SessionRecord, VersionRecord]:
    """The visitor's version of that id, if it still counts, and its session."""
    version = await visit.uow.versions.find(version_id, visit.person.id)
    if version is None:
        raise UnknownThing
    record = await visit.uow.sessions.find(version.session_id, await visit.group_ids())
    if record is not None and record.state is SessionState.WITHDRAWN:
        raise Withdrawn
    newest = version.state is VersionState.CURRENT
    if record is None or not newest or record.revision != version.session_revision:
        raise StalePress
    await visit.must_consent()
    return record, version


async def look(visit: Visit, version_id: int, place: int) -> Looked:
    record, version = await current(visit, version_id)
    spots = version.version.spots
    if not 1 <= place <= len(spots):
        raise UnknownThing
    spot, line = spots[place - 1]
    orders = await orders_for(visit, record)
    faults = () if spot in orders.past else orders.faults
    return Looked(record, version, place, spot, line, await profile_today(visit, record), faults)


async def show_again(visit: Visit, session_id: int, cause: str, place: int | None = None) -> Outcome:
    """The version made anew, with what changed on top."""
    changed = Changed(place=place, cause=cause)
    return await my_version(visit, MyVersion(session=session_id), changed=changed) + Outcome(settles=True)
