"""What a person can do, as frozen values. A button carries one whole command, so nothing waits in memory.

`session` and `revision` together name what the asker saw; an older revision is a stale press.
"""

from decimal import Decimal
from typing import Literal

from pydantic import Field

from core.measures import MassUnit
from core.values import Value

Media = Literal["photo", "voice", "file"]


class Command(Value):
    """Base of everything a person can do."""


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


class GoGentle(Command):
    """Something the bot doesn't know should be spared: light duty until licensed care has said more."""

    session: int | None


class ClaimAsWritten(Command):
    """A score without a version was done as written."""

    score: int


class AnswerScreening(Command):
    """All answers so far, one letter each in the order asked: `y` or `n`."""

    group: int
    answers: str


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
    zone: str


class SetUnits(Command):
    group: int
    units: MassUnit


class DraftSession(Command):
    """A coach pasted a session."""

    text: str


class MoveDraft(Command):
    session: int
    revision: int
    group: int


class PostSession(Command):
    session: int
    revision: int


class PostLater(Command):
    """Post at a moment: minutes since 1970 in UTC."""

    session: int
    revision: int
    minute: int


class DiscardSession(Command):
    session: int
    revision: int


class MyVersion(Command):
    """Show my version of a session, or of the newest one posted in my groups."""

    session: int | None = None


class OwnNothing(Command):
    session: int | None


class LeaveOut(Command):
    """How heavy a thing is can't be told: it is left out."""

    session: int | None


class NoLimits(Command):
    session: int | None


class SkipBodyMass(Command):
    session: int | None


class ChoosePair(Command):
    session: int | None
    pair: int


class TellAbility(Command):
    """How many repetitions go without a break, fresh; with `load_kg` where a load was asked for.

    `reps` None: asked, and they can't tell.
    """

    session: int
    movement: str
    reps: int | None
    load_kg: Decimal | None = None


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

    ask: str


class AskHelp(Command):
    """Ask what can be done here."""


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
