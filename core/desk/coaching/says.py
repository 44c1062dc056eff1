"""What is said to a coach about single athletes, and on the coach's behalf."""

from datetime import date
from decimal import Decimal
from typing import ClassVar, Literal

from core.athletes.values import Side
from core.desk.outcome import Said
from core.desk.sessions.says import InNeed
from core.desk.talk.says import WordShown
from core.measures import MassUnit
from core.scaling.values import NeedsCoach, Version, VersionLine
from core.values import Value


class FaultShown(Value):
    """One note: `words` as the athlete reads them, at most `cap_kg` in the hands."""

    id: int
    movement: str
    words: str
    cap_kg: Decimal | None


class FaultRead(Said):
    """To the coach: what the athlete will read, in `theirs`, and what it does. `units`: the group's."""

    fault: FaultShown
    athlete: str
    units: MassUnit
    theirs: MassUnit


class FaultUnclear(Said):
    """To the coach: it wasn't said of which movement, or (with one) what about it."""

    athlete: str
    movement: str | None


class AskFaultWords(Said):
    """To the coach: how it should read instead."""

    athlete: str
    again: bool = False


class FaultMade(Said):
    """To the coach: it stands, and the athlete knows."""

    fault: FaultShown
    athlete: str


class FaultDropped(Said):
    """To the coach: nothing was noted."""


class FaultTold(Said):
    """To the athlete: their coach noted something."""

    fault: FaultShown
    units: MassUnit


class FaultLifted(Said):
    """To the coach."""

    athlete: str
    movement: str


class FaultOver(Said):
    """To the athlete: their coach has lifted it."""

    movement: str


class FaultsStanding(Said):
    """To the coach: what stands, by athlete."""

    shown: tuple[tuple[str, FaultShown], ...]
    units: MassUnit


class NoFaults(Said):
    """To the coach: nothing stands; for `athlete`, or for anybody."""

    athlete: str | None


class SessionNamed(Value):
    """Which session it is; `group` where the coach has several."""

    title: str | None
    day: date
    posted: bool
    group: str | None = None


class NobodyNeedsYou(Said):
    """To a coach who asked whom to look at: nobody, for any of these."""

    sessions: tuple[SessionNamed, ...]


class Needing(Said):
    """Who needs the coach for which session; `stopped`: who has no session today.

    `is_later`: another session comes before it, and is told in full.
    """

    session_id: int
    revision: int
    of: SessionNamed
    people: tuple[InNeed, ...]
    stopped: tuple[str, ...] = ()
    is_later: bool = False


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

    stands_alone: ClassVar[bool] = True
    monday: date
    yes: bool
    groups: tuple[tuple[int, str], ...]


class NobodyHeld(Said):
    """To the coach: `name` is no athlete, or more than one, so nobody is held. `known`: whom it could be."""

    name: str
    known: tuple[str, ...]


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


class AskWord(Said):
    """To the coach, before their word goes to this athlete alone.

    `theirs`: it tells of what only the athlete tells of themselves. `asks`: it is a question, as it is said to them.
    """

    stands_alone: ClassVar[bool] = True
    word: int
    person: int
    athlete: str
    text: str
    theirs: bool = False
    asks: bool = False


class AskPing(Said):
    """To the coach, before these read that their score is waited for; no `names`: everybody has told one."""

    stands_alone: ClassVar[bool] = True
    session: int
    title: str | None
    day: date
    names: tuple[str, ...]


class Pinged(Said):
    names: tuple[str, ...]


class CoachWaits(Said):
    """To the athlete: their coach would like to hear how the session went."""

    coach: str
    title: str | None
    day: date


class NoSuchPart(Said):
    """To the coach: nobody knows who of a group `who` are."""

    who: str


class WordSent(Said):
    athlete: str


class CoachSays(Said):
    """To the athlete: a word from their coach."""

    coach: str
    text: str


class CoachWonders(Said):
    """To the athlete: their coach asks something; what they write next is the answer."""

    coach: str
    text: str


class WordToWhom(Said):
    """To the coach: nobody of that name is known, so nobody reads it."""

    name: str
    known: tuple[str, ...]


class AskAnnounce(Said):
    """To a coach, before everybody reads their words: as they'd stand, and in which of their groups (id, title)."""

    stands_alone: ClassVar[bool] = True
    word: int
    text: str
    groups: tuple[tuple[int, str], ...]


class Announced(Said):
    group: str


class AnnouncementDropped(Said):
    pass


class Announcement(Said):
    """In the group: what the coach has for everybody."""

    coach: str
    text: str
