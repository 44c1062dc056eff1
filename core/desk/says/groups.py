"""What is said while a group is being set up."""

from core.desk.outcome import Said
from core.measures import MassUnit


class GroupGreeting(Said):
    """To the group: who I am, and the way into the private chat."""

    group: int
    title: str


class AskZone(Said):
    """To the coach: where the group's clock is. `unread`: what was typed and not found."""

    group: int
    title: str
    unread: str | None = None
    guesses: tuple[str, ...] = ()


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
