"""What is said on the way to a personal version, and while a line of it is changed."""

from datetime import date
from decimal import Decimal
from typing import ClassVar, Literal

from core.athletes.values import (
    Complaint,
    Different,
    Equipment,
    EquipmentSet,
    Evidence,
    Experience,
    SetName,
    Severity,
    Side,
)
from core.desk.outcome import Said
from core.forecast.values import Clock, Outlook
from core.measures import MassUnit
from core.scaling.stepping import BigStep
from core.scaling.values import (
    Because,
    Improvised,
    NeedsCoach,
    Question,
    Version,
    VersionBlock,
    VersionLine,
    Withheld,
)
from core.scores.values import Score
from core.sessions.values import Session
from core.values import Value


class Understood(Said):
    """What was just taken from the athlete's words, so that a misreading is seen at once.

    `gently`: they couldn't tell, so they start with what is light.
    """

    equipment: tuple[Equipment, ...] | None = None
    limits: tuple[str, ...] | None = None
    sides: tuple[tuple[str, Side], ...] = ()
    unread: tuple[str, ...] = ()
    estimated: tuple[str, ...] = ()
    units: MassUnit = MassUnit.KG
    idle: tuple[str, ...] = ()
    gently: bool = False


class AskWeight(Said):
    """How heavy a thing is that was named without its weight."""

    session: int | None
    thing: Equipment
    units: MassUnit
    again: bool = False


class ThingLeftOut(Said):
    """They can't tell how heavy it is."""

    thing: Equipment


class AskAbout(Said):
    """The next question this session needs. `again`: the last answer could not be read.

    `left`: so many are left, where the version was wished for while this was open; `known`: it was asked just before.
    """

    session: int | None
    question: Question
    units: MassUnit
    understood: Understood | None = None
    again: bool = False
    left: int | None = None
    known: bool = False


class LastTime(Value):
    """What was done of a movement before: a line with its block's score, or a test of `reps` in a row.

    `place` is the line's in the version that is shown, counted from 1.
    """

    place: int
    on: date
    line: VersionLine | None = None
    score: Score | None = None
    reps: float | None = None
    load_kg: Decimal | None = None


class Changed(Value):
    """What an athlete changed just now: a step of the line at `place`, or their whole day where it is None."""

    place: int | None = None
    cause: str | None = None


class ShowVersion(Said):
    """`day` is today on the group's clock; `different` is what counts of it.

    `warm_up`: made to fit, where the coach wrote none; `rising`: the sets that lead up to heavy ones. `improvised`:
    what a packed bag would do for, where no weight is known. `group`: its title, for who belongs to several.
    `outlooks`: what is expected in each block. `is_timed`: something of it runs by a clock.
    `steps`: loads that are much more than they trained with so far.
    """

    version_id: int
    session_id: int
    session: Session
    version: Version
    units: MassUnit
    notes: tuple[str, ...] = ()
    understood: Understood | None = None
    changed: Changed | None = None
    last: tuple[LastTime, ...] = ()
    different: tuple[Different, ...] = ()
    day: date | None = None
    warm_up: VersionBlock | None = None
    group: str | None = None
    rising: tuple[VersionLine, ...] = ()
    improvised: Improvised | None = None
    outlooks: tuple[Outlook | None, ...] = ()
    is_timed: bool = False
    steps: tuple[BigStep, ...] = ()


class Timer(Said):
    """The clock of a block, to be heard and read. `others`: what else of the session has one; blocks count from 1."""

    stands_alone: ClassVar[bool] = True

    session_id: int
    session: Session
    block: int
    clock: Clock
    others: tuple[int, ...] = ()


class NoTimer(Said):
    """Nothing of the session, or not the block that was meant, runs by a clock that can be counted."""


class LineTold(Value):
    """A line that was asked about, with its last time."""

    line: VersionLine
    last: LastTime | None = None


class LinesTold(Said):
    """Why these lines are as they are, or how heavy they are; none where nothing was changed, or nothing is held.

    `spoken`: they are those whose way was spoken of.
    """

    version_id: int
    session_id: int
    about: Literal["why", "how_heavy"]
    lines: tuple[LineTold, ...]
    units: MassUnit
    spoken: bool = False


class NoSuchLine(Said):
    """They ask of a movement that isn't in their version."""

    version_id: int
    session_id: int
    movement: str


class AskWhichGroup(Said):
    """Several groups have a session now. `sessions`: id, and the title of its group; `then`: what is shown of it."""

    sessions: tuple[tuple[int, str], ...]
    then: Literal["version", "board", "scores"]


class NoVersion(Said):
    """No version today, for the athlete's own sake. `ill_in`: the session, where they said that they're sick."""

    withheld: Withheld
    ill_in: int | None = None


class HeldForCoach(Said):
    """To the athlete: the coach looks at their version first. `told`: for something that the athlete told."""

    session_id: int
    why: Literal["told", "held"]


class LookAtVersion(Said):
    """To the coach: a version that waits for their OK; `again`: it has waited for a while."""

    session_id: int
    revision: int
    person: int
    version: Version
    why: Literal["told", "held"]
    units: MassUnit
    again: bool = False


class VersionReleased(Said):
    """To the coach: it went out; or it will without waiting, once it is `asked` for."""

    athlete: str
    asked: bool = True


class CoachNeeded(Said):
    """To the coach: lines of an athlete's version that somebody should look at."""

    session_id: int
    person: int
    athlete: str
    needs: tuple[NeedsCoach, ...]
    units: MassUnit


class NothingPosted(Said):
    """No session is posted yet in the asker's groups; `coach` where they coach one."""

    coach: bool = False


class HowTo(Said):
    """The cue cards of a version: movement and variant ids. `own`: their way of what was asked, if another."""

    variants: tuple[tuple[str, str], ...]
    own: tuple[str, str] | None = None


class Sharing(Value):
    """Whether the coaches of one group may see what the athlete spares."""

    group: int
    title: str
    yes: bool


class Me(Said):
    """What is known of the athlete; shown to nobody else. `shares`: whose coaches may see what is spared.

    `screened_in`: the group for which the safety questions can be answered anew; `abilities`: what they said they can
    do, each with the id by which it can be taken back.
    """

    name: str
    equipment: tuple[Equipment, ...] | None
    limits: tuple[str, ...] | None
    body_mass_kg: Decimal | None
    units: MassUnit
    groups: tuple[str, ...]
    sets: tuple[EquipmentSet, ...] = ()
    complaints: tuple[Complaint, ...] = ()
    different: tuple[Different, ...] = ()
    shares: tuple[Sharing, ...] = ()
    screened_in: int | None = None
    abilities: tuple[tuple[int, Evidence], ...] = ()
    experience: Experience | None = None


class UnitsKept(Said):
    """In which units their loads are written from now on. `waits`: there is no version to show so yet."""

    units: MassUnit
    waits: bool = False


class BodyMassNoted(Said):
    """They told what they weigh when nobody asked. `waits`: there is no version to show with it yet."""

    mass_kg: Decimal
    units: MassUnit
    waits: bool = False


class AbilityNoted(Said):
    """What they told of an ability, kept: of kind `score`, it went so in a session, and more may go.

    `waits`: there is no version to show with it yet.
    """

    evidence_id: int
    evidence: Evidence
    units: MassUnit
    waits: bool = False


class ExperienceNoted(Said):
    """How used to training they are."""

    level: Experience


class AbilityTakenBack(Said):
    """It counts no more."""


class AnswerKept(Said):
    """A changed answer was stored. `waits`: there is no version to show with it yet."""

    understood: Understood
    waits: bool = False


class ChooseLine(Said):
    """Ask which line it is about. `of`: the day and title of its session, where a newer one counts."""

    version_id: int
    of: tuple[date, str | None] | None = None
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
