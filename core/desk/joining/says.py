"""What is said while a group is set up, and to somebody who joins: consent and screening."""

from core.athletes.screening import Branch, ScreeningQuestion
from core.desk.outcome import Said
from core.measures import MassUnit
from core.values import Value


class GroupClockSet(Said):
    """To a coach: the group goes by another clock from now on."""

    title: str
    zone: str


class AskConsent(Said):
    """`again`: all of it was said before, and what was typed since was no yes or no; `unkept`: what it told instead."""

    group: int
    again: bool = False
    title: str
    name: str
    unkept: str = ""


class AtTheDoor(Said):
    """The way in was told before. `told`: what was typed meanwhile, of which nothing is kept."""

    told: str


class ConsentDeclined(Said):
    group: int


class AskScreening(Said):
    """The next question; `answers` are those given so far. `doubts`: how often no clear yes or no was typed."""

    group: int
    question: ScreeningQuestion
    answers: str
    doubts: int = 0


class ScreeningDone(Said):
    group: int
    branch: Branch


class NotCleared(Said):
    """No session until licensed care has cleared them; for those who aren't adults, none at all."""

    group: int
    branch: Branch | None = None


class StopNow(Said):
    """They told of a stop sign, or (`asked`) asked about one.

    `group`: where they may say later that they were cleared. `expecting`: a sign of a pregnancy or after a birth.
    `coach_told`: their coach hears that they stopped.
    """

    group: int | None
    asked: bool = False
    expecting: bool = False
    coach_told: bool = False


class StopHere(Said):
    """To the group: help for whoever wrote of a stop sign there, with no word of it."""

    group: int


class AskSigns(Said):
    """Whether they had any of the signs themselves, once they say that they were misunderstood.

    `again`: what they wrote since was no answer.
    """

    group: int
    again: bool = False


class HelpThem(Said):
    """Somebody else has a stop sign."""


class Arriving(Value):
    """Who has no version of their own yet, by name.

    `at_questions`: talk with us, and haven't answered consent and screening; `in_group_only`: never opened a
    private chat, and may well train and tell scores in the group; `without_notes`: said no to being remembered.
    """

    at_questions: tuple[str, ...] = ()
    in_group_only: tuple[str, ...] = ()
    without_notes: tuple[str, ...] = ()

    @property
    def names(self) -> frozenset[str]:
        return frozenset((*self.at_questions, *self.in_group_only, *self.without_notes))


class GroupGreeting(Said):
    """To the group: who I am, and the way into the private chat."""

    group: int
    title: str


class AskZone(Said):
    """To the coach: where the group's clock is. `unread`: what was typed and not found; `kept`: it is done later."""

    group: int
    title: str
    unread: str | None = None
    guesses: tuple[str, ...] = ()
    kept: bool = False


class AskUnits(Said):
    group: int
    zone: str


class CoachReady(Said):
    group: int
    title: str
    zone: str
    units: MassUnit


class Undelivered(Said):
    """To a coach: something never reached the group. `title`: of the session, if it was one and has one.

    `shut_out`: the bot can't write there any more; else the platform didn't take it.
    """

    letter: int
    group: str
    is_session: bool
    title: str | None
    shut_out: bool


class SendingAgain(Said):
    group: str


class TalkInPrivate(Said):
    """To the group: that belongs in the private chat."""

    group: int
