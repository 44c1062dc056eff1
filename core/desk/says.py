"""What may be said at any time."""

from typing import Literal

from core.desk.commands import Media
from core.desk.outcome import Said
from core.notation.talk.small_talk import Talk

# The words of the trade that are explained.
Term = Literal[
    "amrap", "emom", "for time", "cap", "rounds", "reps", "scaled", "as written", "unbroken", "buy-in", "cash-out",
    "superset", "dumbbell", "kettlebell", "effort", "ladder", "tempo", "tabata", "1rm", "pb", "chipper", "complex",
    "deload", "interval", "max effort", "touch and go", "not for time", "zone 2", "doms", "sets", "rest", "two loads",
]  # fmt: skip


class LeftAsItIs(Said):
    """After a no: nothing has changed."""


class Refused(Said):
    """A refusal: `why` is the name of its class in `core.desk.errors`."""

    why: str


class TooQuick(Said):
    """Much came at once, and what came last was left out."""


class PutAside(Said):
    """To whoever runs the bot: an update could not be handled. `count`: how many there are by now."""

    update: int
    count: int


class Taken(Said):
    """What was written is taken in, and there is nothing new to say to it."""


class Help(Said):
    """What can be done here; `coach` where the asker coaches a group. `more`: everything, not only what is daily.

    `door`: the group of an athlete who hasn't agreed to any notes; `said_no`: and who isn't just being asked.
    """

    coach: bool
    joined: bool
    more: bool = False
    door: int | None = None
    said_no: bool = False


class Welcome(Said):
    """To somebody who says thanks."""


class Kindness(Said):
    """To what was said for its own sake. `unscored`: the session before them has no score of theirs yet."""

    talk: Talk
    unscored: bool = False


class Explained(Said):
    """What a word of the trade means."""

    term: Term


class NotText(Said):
    """A photo, a voice message or a file, where words are needed; None for anything else."""

    media: Media | None = None


class Lost(Said):
    """Something of theirs could not be handled; it is kept, and people look at it."""
