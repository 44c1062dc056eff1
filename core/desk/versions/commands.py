"""What an athlete can do with a version: change a line, say how today differs, tell what comes and goes.

`version` is the revision that was looked at; `place` counts all its lines from 1.
"""

from decimal import Decimal
from typing import Annotated, Literal

from pydantic import Field

from core.athletes.values import SetName, Severity, Side
from core.desk.commands import Command, Word
from core.sessions.values import MOST_BLOCKS

Place = Annotated[int, Field(ge=1, le=1000)]
Day = Annotated[int, Field(ge=1, le=1_000_000)]


class ChangeLines(Command):
    """I'd like to change a line."""

    version: int


class OpenLine(Command):
    version: int
    place: Place


class EaseLine(Command):
    """Easier, for a cause: `too-hard`, `sore`, `time`, `hurts` or `so`; None asks for it."""

    version: int
    place: Place
    cause: Literal["too-hard", "sore", "time", "hurts", "so"] | None = None


class HardenLine(Command):
    """Harder, for a cause: `too-easy` or `bored`; None asks for it."""

    version: int
    place: Place
    cause: Literal["too-easy", "bored"] | None = None


class LackThing(Command):
    """I don't have that: just `today`, or it is `gone`; None asks."""

    version: int
    place: Place
    how: Literal["today", "gone"] | None = None


class LineHurts(Command):
    """It hurts: what, on which side, how bad; the first that is None is asked. A limit without sides skips it."""

    version: int
    place: Place
    limit: Word | None = None
    side: Side | None = None
    severity: Severity | None = None


class TellSide(Command):
    """On which side it hurts, where the pain was told without."""

    limit: Word
    side: Side


class DoAsWritten(Command):
    version: int
    place: Place


class FreeLine(Command):
    """Back to what would be chosen for me."""

    version: int
    place: Place


class ShowLine(Command):
    """Show me how this line is done."""

    version: int
    place: Place


class ReviewLimit(Command):
    """How it is now; `asked` is the day of the question, as an ordinal."""

    group: int
    limit: Word
    asked: Day
    how: Literal["gone", "better", "same", "worse"]


class TodayDiffers(Command):
    version: int


class BeSick(Command):
    version: int
    how: Literal["fever", "recovering"] | None = None


class BeSore(Command):
    version: int
    where: Word | None = None


class BeShort(Command):
    version: int
    minutes: Annotated[int, Field(ge=1, le=600)] | None = None


class BeElsewhere(Command):
    version: int
    place: SetName | None = None


class BeBack(Command):
    """Back after a break: some gentle weeks."""

    version: int


class TakeItEasy(Command):
    """An easy week for myself."""

    version: int


class SayBreak(Command):
    """Whether they had a break, while nothing was told for long."""

    session: int
    had: bool


class DoMore(Command):
    """Whether somebody who started gently wants to do more now."""

    yes: bool


class DayLasts(Command):
    """What is different lasts until that day (an ordinal). `kind`: sick, minutes, place or a sore place."""

    session: int
    kind: Word
    until: Day


class AsUsual(Command):
    session: int


class FurnishSet(Command):
    """I'd like to tell what is there in a place."""

    place: SetName


class AddThing(Command):
    """A weight that came, and of what it is."""

    place: SetName
    implement: Word
    kg: Annotated[Decimal, Field(gt=0, le=500)]
    each: Annotated[int, Field(ge=1, le=20)]


class GiveTimer(Command):
    """The clock of a block, to be heard; of the main one where none is named. `block` counts from 1."""

    session: int
    block: Annotated[int, Field(ge=1, le=MOST_BLOCKS)] | None = None


class UndoEquipment(Command):
    change: int
