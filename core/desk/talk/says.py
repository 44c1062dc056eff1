"""What is said back to words: several things as one, what was left over or not understood, words for the coach."""

from datetime import date
from decimal import Decimal
from typing import Literal

from core.desk.commands import Command
from core.desk.outcome import Said
from core.forecast.values import Outlook
from core.measures import MassUnit
from core.notation.talk.common_questions import Topic
from core.notation.talk.intentions import Intention
from core.sessions.values import Session
from core.values import Value

# What can be tapped in place of words that weren't understood.
Nearest = Literal[
    "version", "lines", "today", "board", "classes", "equipment", "limits", "weight", "reminders", "me", "export",
    "forget", "needs", "scores",
]  # fmt: skip


class Together(Said):
    """Several things said as one message."""

    parts: tuple[Said, ...]


class LeftOver(Said):
    """Words of a message of which something else was taken. `word`: what may be passed on to the coach."""

    words: tuple[str, ...]
    word: int | None = None


class NotGot(Said):
    """Nothing of it was understood. `nearest`: what it is likeliest to be; `word`: as in LeftOver.

    `session`, `version`, `revision`: what the buttons speak of. `asks`: it is a question of somebody who has a coach.
    """

    words: str
    asks: bool = False
    nearest: Nearest | None = None
    like: str | None = None
    word: int | None = None
    session: int | None = None
    version: int | None = None
    revision: int = 0


class HeldBack(Said):
    """A word to post, behind a change that wasn't carried out whole: its coach looks first."""

    words: str


class OneQuestion(Said):
    """Words that would ask something beside what is asked already: they wait, and nothing of them is done."""

    words: str


class NotYet(Said):
    """It was understood, and there is no way to do it so far. `act`: what was told, asked or wished."""

    act: str
    word: int | None = None


class WhatIsAsked(Said):
    """What the open question wants to know, in plain words. `kind`: of the question."""

    kind: str


class OnlyAsked(Said):
    """Nothing of it was noted, as it was only asked or supposed. `word`: their words, to be taken as told by a tap."""

    words: str
    word: int | None = None


class HowItFeelsDecides(Said):
    """Whether something is all right for them. `conditions`: the limits that licensed care has a say in.

    `careful`: the screening asks for it. `version`: what can be made easier; `word`: what may be passed on.
    """

    conditions: tuple[str, ...] = ()
    careful: bool = False
    version: int | None = None
    word: int | None = None


class AnyTimeWillDo(Said):
    """To whoever asks whether they may train at another hour, or on another day."""


class LessWillDo(Said):
    """To whoever asks whether all of it must be done. `version`: what can be made shorter or easier."""

    version: int | None = None


class RunsOnTreadmill(Said):
    """To whoever asks whether they may run on a treadmill."""


class StillOpen(Said):
    """To a coach, in reply to it: what was asked before and has no answer yet, with its keys."""

    stands_alone = True

    keys: tuple[tuple[str, Command], ...]


class GoOnLater(Said):
    """What was asked for their version waits until they want to go on."""


class NobodyJudges(Said):
    """To whoever is nervous."""

    version: int | None = None
    word: int | None = None


class DoneOtherwise(Said):
    """They trained, and it was something else than the session: on no board. `word`: for their coach."""

    word: int | None = None


class NothingWaits(Said):
    """To a `no` or `cancel` while nothing is asked."""


# How far somebody has come with us.
Stage = Literal[
    "coach", "consent", "screening", "stopped", "nothing_posted", "no_version", "has_version", "done"
]


class CommonAnswer(Said):
    """To a question about the bot itself."""

    topic: Topic
    stage: Stage


class WhatItGoesBy(Said):
    """To who asks why their version is so, before there is one."""


class NoSwap(Said):
    """What they want instead isn't safe for them, or isn't there. `to`: the movement; None: anything else."""

    version: int
    to: str | None


class OneByOne(Said):
    """To a coach who would have several things posted at once: nothing was, a tap under each does it."""


class HowItIsDone(Said):
    """To a coach who asks how something is done, or whether it can be: what they most likely want, one or two."""

    intentions: tuple[Intention, ...]


class NothingToUndo(Said):
    """To an `undo` where nothing was taken of late that could be taken back."""

    coach: bool = False


class AnswersOnly(Said):
    """To whoever wants nothing unasked any more; `yes` False: or does again."""

    yes: bool


class WhoTrains(Said):
    """To a coach who asked who is in: of each group its title and its athletes, first come first.

    `new`: who came in the last two weeks.
    """

    groups: tuple[tuple[str, tuple[str, ...]], ...]
    new: tuple[str, ...] = ()


class HowTheyJoin(Said):
    """To a coach who tells of a newcomer: how people join these groups."""

    groups: tuple[str, ...]


class ShareTold(Said):
    """`percent` of what somebody lifts once: of `best_kg`, None where nobody knows it yet; `reps` it was shown with.

    `movement`: None where no lift is meant.
    """

    percent: int
    movement: str | None
    units: MassUnit
    best_kg: Decimal | None = None
    reps: int = 1


class PaceTold(Said):
    """Arithmetic alone: so far in so long."""

    metres: float
    seconds: int


class RunReckoned(Said):
    """How long they'd take for `metres`, by a run that they told."""

    metres: float
    seconds: float
    of_metres: float
    of_seconds: float


class RestsTold(Said):
    """What the session says of rest, part by part."""

    session: Session


class HowLongItIs(Said):
    """What the session itself says of its length: minutes of its parts, as far as they are told.

    `theirs`: where it tells none, how long their version takes. `capped`: they are the most there is.
    `paced`: how to go about it was asked. `outlooks`: what is expected of the
    asker in each block, None where nothing is.
    """

    minutes: float | None
    capped: bool
    theirs: float | None = None
    aim: tuple[float | None, float | None] | None = None
    paced: bool = False
    outlooks: tuple[Outlook | None, ...] = ()


class WordShown(Value):
    """`passed`: the coach sees it."""

    id: int
    on: date
    text: str
    passed: bool


class OfferWord(Said):
    """To the athlete: whether the coach shall read their words, and of which group where they are in several.

    `unread`: nobody here could read them.
    """

    word: int
    text: str
    unread: bool = True
    groups: tuple[tuple[int, str], ...] = ()


class WordPassed(Said):
    """To the athlete: their coach in `group` reads it as they wrote it. `unread`: as nobody here could."""

    word: int
    text: str
    group: str
    unread: bool = False


class WordForgotten(Said):
    """To the athlete: it is gone."""


class MyWords(Said):
    """To the athlete: what they said for their coach."""

    words: tuple[WordShown, ...]


class AthleteStopped(Said):
    """To the coach, at once: somebody told of a stop sign. `words`: theirs, where they share such notes."""

    athlete: str
    words: str | None


class AthleteSays(Said):
    """To the coach: words that an athlete wants them to read."""

    athlete: str
    text: str


class NotPostedYet(Said):
    """To an athlete: what comes is seen once it is posted. `session`: the one that counts now."""

    session: int | None = None


class OnceYouHaveIt(Said):
    """What can be changed once there is a version: a line of it, that today is different, or that they are ill."""

    where: Literal["lines", "today", "sick"]
