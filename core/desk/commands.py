"""What a person can do, as frozen values. A button carries one whole command, so nothing waits in memory.

`session` and `revision` together name what the asker saw; an older revision is a stale press.
"""

from typing import Annotated, Any, Literal

from pydantic import Field, field_validator

from core.measures import MOST_REPS, Kg, MassUnit
from core.values import Value

Media = Literal["photo", "voice", "file"]
# What is pressed holds no more than a button does; free text is bounded by the platform.
Word = Annotated[str, Field(max_length=64)]
# A moment of posting: up to the year 2100, in minutes.
LAST_MINUTE = 68_374_080
_BEYOND_ALL_IDS = 2**63


class Command(Value):
    """Base of everything a person can do. No whole number in one is larger than what the store can hold."""

    @field_validator("*")
    @classmethod
    def _can_be_stored(cls, value: Any) -> Any:
        if isinstance(value, int) and not -_BEYOND_ALL_IDS < value < _BEYOND_ALL_IDS:
            raise ValueError("larger than any number here")
        return value


class OpenGroup(Command):
    """The bot was added to a group chat."""

    title: str


class LeaveGroup(Command):
    """The bot was removed from a group chat."""


class JoinGroup(Command):
    """Followed the group's link into the private chat."""

    group: int


class GiveConsent(Command):
    group: int


class DeclineConsent(Command):
    group: int


class GiveGentle(Command):
    """A gentle version now, with what is known, before all questions are answered."""

    session: int


class GoGentle(Command):
    """Something the bot doesn't know should be spared: light duty until licensed care has said more."""

    session: int | None


class ClaimAsWritten(Command):
    """A score without a version was done as written."""

    score: int


class ScreenAgain(Command):
    """Ask me the safety questions anew."""

    group: int


class AnswerScreening(Command):
    """All answers so far, one letter each in the order asked: `y` or `n`."""

    group: int
    answers: Annotated[str, Field(pattern="^[yn]{0,10}$")]


class SayCleared(Command):
    """The athlete says that licensed care has cleared them."""

    group: int


class SayMisunderstood(Command):
    """What was taken for a stop sign of theirs was none."""

    group: int


class TellSigns(Command):
    """Whether they had any of the stop signs themselves."""

    group: int
    had: bool


class SetZone(Command):
    group: int
    zone: Word


class SetUnits(Command):
    group: int
    units: MassUnit


class DraftSession(Command):
    """A coach pasted a session."""

    text: str


class RestoreDraft(Command):
    """What the draft said before: the text of an earlier revision. `revision`: the one looked at."""

    session: int
    revision: int
    earlier: int


class MeanLine(Command):
    """This line of the session is meant by the change that was typed last, counted from 0."""

    session: int
    revision: int
    line: int


class MeanDraft(Command):
    """What was typed last is a session of its own, or was meant as a change of this one."""

    session: int
    new: bool


class MoveDraft(Command):
    session: int
    revision: int
    group: int


class PostSession(Command):
    session: int
    revision: int


class BackToTime(Command):
    """What was put off goes out at its time before: minutes since 1970 in UTC."""

    session: int
    revision: int
    minute: Annotated[int, Field(ge=0, le=LAST_MINUTE)]


class PostLater(Command):
    """Post at a moment: minutes since 1970 in UTC."""

    session: int
    revision: int
    minute: Annotated[int, Field(ge=0, le=LAST_MINUTE)]


class LeaveIt(Command):
    """The no to what was asked: all stays as it is."""


class DiscardSession(Command):
    session: int
    revision: int


class MyVersion(Command):
    """Show my version of a session, or of the newest one posted in my groups."""

    session: int | None = None


class OwnNothing(Command):
    session: int | None


class TickThing(Command):
    """A thing of a household (`core.athletes.household`) is there, or isn't after all."""

    session: int | None
    thing: str


class OwnTicked(Command):
    """What is ticked is all there is to train with."""

    session: int | None


class TellStage(Command):
    """One of what can be tapped about a pregnancy, the time after a birth, a seat: its place among them."""

    session: int | None
    about: str
    place: int


class LeaveOut(Command):
    """How heavy a thing is can't be told: it is left out."""

    session: int | None


class NoLimits(Command):
    session: int | None


class SkipBodyMass(Command):
    session: int | None


class ChoosePair(Command):
    session: int | None
    pair: Annotated[int, Field(ge=1, le=2)]


class TellAbility(Command):
    """How many repetitions go without a break, fresh; with `load_kg` where a load was asked for.

    `reps` None: asked, and they can't tell.
    """

    session: int
    movement: Word
    reps: Annotated[int, Field(ge=0, le=MOST_REPS)] | None
    load_kg: Kg | None = None


class ForgetShown(Command):
    """What was told of an ability isn't right: let it go."""

    evidence: int


class ShowHow(Command):
    version: int


class SeeBoard(Command):
    session: int | None = None


class ConfirmScore(Command):
    """Yes: the score that was asked about was meant so."""

    session: int


class PickScore(Command):
    """Which of the readings, or of the parts, that were asked about was meant: the `nth` of them, from 1."""

    session: int
    nth: int


class LeaveScore(Command):
    """No: nothing of the score that was asked about is kept."""

    session: int


class WeighThis(Command):
    """The weight that was told is that of their body."""

    kg: Kg


class ScoreThis(Command):
    """The weight that was told is what they lifted in the session."""

    session: int
    kg: Kg


class FixScore(Command):
    score: int


class TakeScoreBack(Command):
    score: int


class RateEffort(Command):
    """How hard the whole session was, 0 to 10."""

    session: int
    effort: int = Field(ge=0, le=10)


class TellHurt(Command):
    """Whether anything hurt: `no`, `sore` or `pain`."""

    session: int
    hurt: Literal["no", "sore", "pain"]


class AllTold(Command):
    """No other part of the session has a score of theirs."""

    session: int


class SeeScores(Command):
    """A coach looks at the scores of a session one by one."""

    session: int | None = None


class LookAtScore(Command):
    score: int


class MarkScore(Command):
    """A coach checked a score, takes it out, or lets it count again."""

    score: int
    mark: Literal["checked", "not_counted", "counts_again"]


class AboutMe(Command):
    """What is known of me, and how to change it."""


class ChangeAnswer(Command):
    """Ask me again: `equipment`, `limits` or `body_mass`."""

    ask: Word


class AskHelp(Command):
    """Ask what can be done here; `more`: all of it."""

    more: bool = False


class Tell(Command):
    """Free text in the private chat. `reply_to`: the platform's id of the message that it replies to."""

    text: str
    reply_to: int | None = None


class MeanMember(Command):
    """This one is meant by the name in what was typed last: a membership."""

    member: int


class MeanSession(Command):
    """What was typed last is about this session."""

    session: int


class TalkInGroup(Command):
    """Something in a group chat that the bot gets to hear: a command, or a reply to one of its messages."""

    title: str
    command: str | None = None
    text: str | None = None
    reply_to: int | None = None


class SendNoText(Command):
    """A photo, a voice message, a file, or (None) a sticker and the like, or nothing at all."""

    media: Media | None = None


class Reach(Command):
    """The person let the bot write to them, or blocked it."""

    yes: bool


class ComeBack(Command):
    """`/start` with nothing behind it: the way back into a chat that has begun before."""


class PinMessage(Command):
    """Somebody pinned a message in a group's chat."""

    message_id: int


class SendAgain(Command):
    """A letter for the coach's group that never got there."""

    letter: int


class MoveGroup(Command):
    """The group's chat has a new address."""

    old: int
    new: int


class OnlyAnswer(Command):
    """Send me nothing unasked any more; `yes` False: all as before."""

    yes: bool
