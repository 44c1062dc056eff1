"""What a coach can do about single athletes, as frozen values. `place` counts the lines of a version from 1."""

from typing import Annotated, Literal

from pydantic import Field

from core.desk.commands import Command


class SeeNeeds(Command):
    """Go through the athletes who need the coach for this session."""

    session: int
    revision: int


class SeeWhoGetsWhat(Command):
    """What everybody gets of each line of a session."""

    session: int
    revision: int


class LookAtAthlete(Command):
    """One athlete's version of a session, before or after it is posted."""

    session: int
    person: int


class OrderLine(Command):
    """Change a line for one athlete, for this session."""

    session: int
    person: int
    place: Annotated[int, Field(ge=1, le=1000)]
    step: Literal["menu", "easier", "harder", "other", "written", "free"]


class MakeStanding(Command):
    """What was decided for this line stands whenever the movement is written for this athlete."""

    session: int
    person: int
    place: Annotated[int, Field(ge=1, le=1000)]


class AcceptVersion(Command):
    """Fine as proposed: what waits for it goes out."""

    session: int
    revision: int
    person: int


class TakeOrdersBack(Command):
    """What was ordered in words for an athlete, in the same words as `order`, counts no longer."""

    group: int
    person: int
    order: int


class HoldAthlete(Command):
    """From now on this athlete's versions wait for a coach's OK; `yes` False: no longer."""

    group: int
    person: int
    yes: bool


class LetGoHeavier(Command):
    """This athlete may go heavier than written where it suits; `yes` False: no longer."""

    group: int
    person: int
    yes: bool


class PutVolumeFirst(Command):
    """Fewer of what is written come before an easier way for this athlete; `yes` False: no longer."""

    group: int
    person: int
    yes: bool


class CallWeekEasy(Command):
    """The week from `monday` (an ordinal) is easy for everybody, or for one athlete; `yes` False: no longer."""

    group: int
    monday: Annotated[int, Field(ge=1, le=1_000_000)]
    yes: bool
    person: int | None = None


class NoteScores(Command):
    """The scores of several that this word of mine tells: of this `block`, and (`sure`) in place of earlier ones."""

    word: int
    session: int
    block: Annotated[int, Field(ge=0, le=1000)] | None
    sure: bool


class TakeScoresOff(Command):
    """All scores of an athlete in this session go off the board."""

    session: int
    person: int


class PingQuiet(Command):
    """Yes, ask everybody for their score who hasn't told one of this session."""

    session: int


class KeepFault(Command):
    """Yes, note this about how the athlete moves."""

    fault: int


class RewordFault(Command):
    """The athlete should read it in other words."""

    fault: int


class DropFault(Command):
    """No, note nothing."""

    fault: int


class LiftFault(Command):
    """What was noted stands no more."""

    fault: int


class SeeSession(Command):
    """The session as it was posted, for whoever waits for their version."""

    session: int


class AskAthlete(Command):
    """Ask the athlete what they could do instead; the answer comes back to the coach."""

    session: int
    person: int


class AskWhatCounts(Command):
    """What counts as written in the group, and what else may."""

    group: int


class SetTolerance(Command):
    """Let this count as written: so many percent lighter, and perhaps another implement."""

    group: int
    lighter: Annotated[int, Field(ge=0, le=50)]
    other_implement: bool


class WithdrawSession(Command):
    """Take a posted session back: this `one`, `all` that were changes of each other, or `keep` it. None: ask how."""

    session: int
    how: Literal["one", "all", "keep"] | None = None


class Announce(Command):
    """Yes, this word of mine goes to everybody in the group."""

    word: int
    group: int


class SendWord(Command):
    """Yes, this word of mine goes to this athlete alone."""

    word: int
    person: int


class AskInWords(Command):
    """Yes, ask this athlete so, and bring me the answer."""

    word: int
    person: int


class DropAnnouncement(Command):
    """No, nobody is to read it."""

    word: int
