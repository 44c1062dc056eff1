"""What is said to a coach of what they ordered for an athlete."""

from datetime import date
from typing import Literal

from core.desk.outcome import Said


class Ordered(Said):
    """What a coach ordered in words for one athlete. `order`: what takes it back.

    `lasts`: it counts for every session from `since` to `until`, for ever where these aren't told; else for the one of
    `title` and `day`. `seen`: they have a version of that one already; not `tried`: there was none to look at.
    `limit`: what goes of whatever line it is in. `to`: what comes for the `movement`; `amount`: how many, or kg.
    `counted`: a number was told beside what comes, which is worked out instead. `so_already`: they do just what they
    did before. `spares`: limits that what stands in spares in that session.
    """

    athlete: str
    group: int
    person: int
    order: int
    step: str
    movement: str | None
    title: str | None
    day: date
    lasts: bool
    since: date | None
    until: date | None
    seen: bool = False
    tried: bool = False
    limit: str | None = None
    to: str | None = None
    amount: float | None = None
    counted: bool = False
    so_already: bool = False
    spares: tuple[str, ...] = ()

    def counts_on(self, day: date) -> bool:
        return (self.since or day) <= day <= (self.until or day)


class InForce(Said):
    """What a coach ordered and still stands, of one `athlete` or of everybody; `away`: only who is left out."""

    orders: tuple[Ordered, ...]
    athlete: str | None
    away: bool = False


class HeldNow(Said):
    """To the coach who asks: whose versions wait for their OK, always."""

    names: tuple[str, ...]


# Why an order in words changed nothing: it isn't clear what it means, is about rounds, is only possible in one session,
# names no line of it, would be more than is written, has no such step, or leads to nothing that is safe and there.
WhyNot = Literal[
    "unclear",
    "rounds",
    "one_session",
    "no_line",
    "more",
    "no_step",
    "no_number",
    "not_theirs",
    "nothing_fits",
]


class OrderNotDone(Said):
    """`movement`: what was to go; `to`: what was to come; `amount`: the number that nothing of it has."""

    athlete: str
    why: WhyNot
    movement: str | None
    to: str | None
    title: str | None
    amount: float | None = None
    way: bool = False


class AwayTold(Said):
    """Somebody is left out of what a coach looks after, from `since` to `until`, or until it is taken back."""

    athlete: str
    group: int
    person: int
    order: int
    since: date
    until: date | None


class BackTold(Said):
    """Somebody is back; not `was_away`: the coach had never left them out."""

    athlete: str
    was_away: bool


class OrdersGone(Said):
    """What was ordered in words for an athlete counts no longer. `none`: nothing of the kind stood.

    `movement`: only what was ordered of this one.
    """

    athlete: str
    none: bool = False
    movement: str | None = None


class OnlyTheyErase(Said):
    """To the coach: what is kept of an athlete only they can have erased."""

    athlete: str


class NobodyCalled(Said):
    """To the coach: nobody of theirs is called so, and nothing has changed for them. `known`: whom the coach has."""

    names: tuple[str, ...]
    known: tuple[str, ...]


class NothingToLookAt(Said):
    """To the coach: there is no session to show this athlete's version of; or they have none today."""

    athlete: str
