"""What is said while an athlete changes a line of their version, and when pain is asked about again."""

from datetime import date
from typing import Literal

from core.athletes.values import Complaint, Equipment, SetName, Severity, Side
from core.desk.outcome import Said
from core.measures import MassUnit
from core.scaling.values import Because, VersionLine


class ChooseLine(Said):
    """Ask which line it is about."""

    version_id: int
    lines: tuple[VersionLine, ...]
    units: MassUnit


class StopWhatHurts(Said):
    """Something hurts, nobody said where; the lines to tell it under follow."""


class LineSaid(Said):
    """Base of what is said about one line; `place` counts all lines of the version from 1."""

    version_id: int
    place: int
    line: VersionLine
    units: MassUnit


class LineMenu(LineSaid):
    """What can be done with it. `changed`: the athlete asked for something before; `thing`: it uses one."""

    changed: bool
    thing: bool


class AskWhy(LineSaid):
    """Why easier, or why harder."""

    step: Literal["easier", "harder"]


class AskLack(LineSaid):
    """Ask whether it is missing just today, or gone."""

    thing: Equipment
    where: SetName


class AskWhatHurts(LineSaid):
    """Which joint? The likeliest of this movement first."""

    limits: tuple[str, ...]


class AskSide(LineSaid):
    limit: str


class AskHowBad(LineSaid):
    limit: str
    side: Side | None


class NothingEasier(LineSaid):
    """This is the easiest that is known for the line."""


class AsHardAsItGets(LineSaid):
    """Harder than this there is nothing that's safe, or nothing the coach allowed."""


class NotAsWritten(LineSaid):
    because: Because
    about: str | None


class AskReview(Said):
    """Ask how it is after a week."""

    complaint: Complaint
    group: int


class ReviewKept(Said):
    """`how`: gone, better, same or worse."""

    limit: str
    side: Side | None
    how: str
    review_on: date | None


class PainNoted(Said):
    """Pain pauses the movements that load it; `review_on`: when it's asked about again.

    `comforted`: they heard already that somebody is sorry about it. `asks_side`: the side is still to be told.
    """

    limit: str
    side: Side | None
    severity: Severity
    review_on: date
    comforted: bool = False
    asks_side: bool = False


class SideNoted(Said):
    """`unchanged`: no line of their version is different for it."""

    limit: str
    side: Side
    unchanged: bool = False
