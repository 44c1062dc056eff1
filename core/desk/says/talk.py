"""What is said back to words: several things as one, what was left over, and what isn't understood."""

from typing import Literal

from core.desk.outcome import Said

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
    """Nothing of it was understood. `nearest`: the next things it may be; `word`: as in LeftOver.

    `session`, `version`, `revision`: what the buttons speak of.
    """

    words: str
    nearest: tuple[Nearest, ...] = ()
    word: int | None = None
    session: int | None = None
    version: int | None = None
    revision: int = 0


class NotYet(Said):
    """It was understood, and there is no way to do it so far. `act`: what was told, asked or wished."""

    act: str
    word: int | None = None


class NothingWaits(Said):
    """To a `no` or `cancel` while nothing is asked."""


class NobodyNeedsYou(Said):
    """To a coach who asked whom to look at."""


class WhoTrains(Said):
    """To a coach who asked who is in: of each group its title and its athletes, first come first."""

    groups: tuple[tuple[str, tuple[str, ...]], ...]


class HowLongItIs(Said):
    """What the session itself says of its length: minutes of its parts, as far as they are told.

    `capped`: they are the most there is. `own`: they are of the asker's version. `paced`: how to go about it was asked.
    """

    minutes: float | None
    capped: bool
    aim: tuple[float | None, float | None] | None = None
    paced: bool = False
