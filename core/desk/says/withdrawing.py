"""What is said when a coach withdraws a session."""

from datetime import date

from core.desk.outcome import Said


class AskWithdraw(Said):
    """Nothing is withdrawn without a yes. `changed`: it took the place of an earlier post, which may count again."""

    session_id: int
    group: str
    title: str | None
    day: date
    changed: bool


class SessionKept(Said):
    """The coach thought better of it."""


class WasWithdrawn(Said):
    """`again`: the earlier post counts again."""

    group: str
    again: bool


class PostWithdrawn(Said):
    """What the post says from now on: not what was in it, as nobody should do it."""

    title: str | None
    day: date


class SessionWithdrawn(Said):
    """To somebody who has a version of it and told no score. `again`: the earlier session, if it counts again."""

    group: str
    title: str | None
    day: date
    again: int | None
