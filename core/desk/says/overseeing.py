"""What is said to a coach about single athletes, and to an athlete on the coach's behalf."""

from datetime import date
from typing import Literal

from core.athletes.values import Side
from core.desk.outcome import Said
from core.desk.says.faults import FaultShown
from core.desk.says.passing_on import WordShown
from core.measures import MassUnit
from core.scaling.values import NeedsCoach, Version, VersionLine
from core.values import Value


class Needing(Said):
    """Who needs the coach: person id and name."""

    session_id: int
    people: tuple[tuple[int, str], ...]


class AthleteCard(Said):
    """One athlete's version as proposed. `ordered`: places of the lines that a coach decided.

    `held`: every version of theirs waits for a coach's OK. `goes_heavier`, `volume_first`: what they may do.
    `spares`: what they agreed to show of their limits. `faults`: what stands of the notes about how they move; `words`:
    what they said for their coach.
    """

    session_id: int
    revision: int
    group: int
    person: int
    version: Version
    held: bool
    goes_heavier: bool
    volume_first: bool
    spares: tuple[str, ...]
    sides: tuple[tuple[str, Side], ...]
    needs: tuple[NeedsCoach, ...]
    faults: tuple[FaultShown, ...]
    words: tuple[WordShown, ...]
    ordered: tuple[int, ...]
    units: MassUnit


class LineChoices(Said):
    """What can be decided about one line of an athlete's version."""

    session_id: int
    person: int
    athlete: str
    place: int
    line: VersionLine
    is_ordered: bool
    units: MassUnit


class NothingFurther(Said):
    """There is no further step of that kind for this line."""


class MadeStanding(Said):
    athlete: str
    movement: str


class CoachAsks(Said):
    """To the athlete: the coach asks what they could do for these lines."""

    coach: str
    written: tuple[str, ...]


class AthleteAsked(Said):
    athlete: str


class AthleteAnswers(Said):
    """To the coach: what the athlete wrote back."""

    athlete: str
    text: str


class AnswerPassedOn(Said):
    """To the athlete: the coach has their answer."""


class AthleteHeld(Said):
    """To the coach: from now on, or no longer, this athlete's versions wait for their OK."""

    group: int
    person: int
    athlete: str
    held: bool


class LeewayGiven(Said):
    """What an athlete may do from now on, or no longer: go heavier than written, or do fewer first."""

    group: int
    person: int
    athlete: str
    of: Literal["heavier", "volume"]
    yes: bool


class WeekEased(Said):
    """From Monday to Sunday it is easy, or as usual again, for everybody in the group or for one athlete."""

    group: int
    title: str
    monday: date
    yes: bool
    person: int | None = None
    athlete: str | None = None


class AskWhoseWeek(Said):
    """Ask whose week. `groups`: id and title of each that the visitor coaches."""

    monday: date
    yes: bool
    groups: tuple[tuple[int, str], ...]


class NobodyHeld(Said):
    """To the coach: `name` is no athlete, or more than one, so nobody is held. `known`: whom it could be."""

    name: str
    known: tuple[str, ...]


class OnlyFromThem(Said):
    """To the coach: what an athlete's body must spare is theirs to tell."""

    athlete: str


class NothingToLookAt(Said):
    """To the coach: there is no session to show this athlete's version of; or they have none today."""

    athlete: str


class Namesake(Value):
    """One of those who have a name: as their group calls them, since when they are in it, and which group it is."""

    member: int
    name: str
    since: date
    group: str


class AskWho(Said):
    """To the coach: several have the name that they typed."""

    name: str
    among: tuple[Namesake, ...]
