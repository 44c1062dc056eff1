"""What is said about what is stored of somebody, and about messages they changed."""

from collections.abc import Mapping
from datetime import date, datetime
from typing import Any, ClassVar

from core.desk.outcome import Said
from core.desk.versions.says import Sharing
from core.notation.talk.privacy import Topic
from core.values import Value


class SheetRow(Value):
    """One score. `part`: which block of the session, from 1. `at`: on the group's clock.

    `minutes`: what their shorter day had, where the block has more.
    """

    name: str
    part: int
    score: str
    scaled: bool
    minutes: float | None
    at: datetime


class ScoreSheet(Said):
    """To the coach: the scores of a session as a file, on the group's clock, which is called `zone`."""

    stands_alone: ClassVar[bool] = True

    title: str | None
    day: date
    zone: str
    rows: tuple[SheetRow, ...]


class Mine(Said):
    """To a person: everything stored about them, by table, as a file."""

    stands_alone: ClassVar[bool] = True

    on: date
    stored: Mapping[str, Any]


class AskForget(Said):
    """`coach`: what they posted to groups stays there."""

    coach: bool


class Forgotten(Said):
    pass


class NothingForgotten(Said):
    pass


class ChangeNotTaken(Said):
    """A message was changed that was already gone by."""


class ChangeTooLate(Said):
    """The session of a changed message stands in the group already."""

    group: str


class LimitsShared(Said):
    """From now on the coach may see what they spare, or no longer. `group`: for who belongs to several."""

    yes: bool
    group: str | None = None


class Privacy(Said):
    """What is kept, and who sees it. `shares`: whose coaches may see what they spare, by group."""

    topic: Topic
    shares: tuple[Sharing, ...]
