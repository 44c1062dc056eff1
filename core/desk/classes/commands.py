"""What a person can do about classes and reminders. `slot`: a date's original local start, 202603031830."""

from typing import Annotated

from pydantic import AfterValidator, Field

from core.calendar.slots import local_of
from core.desk.commands import Command, Word

MINUTES_OF_A_DAY = 1440


def _is_moment(slot: int) -> int:
    local_of(slot)
    return slot


Slot = Annotated[int, Field(ge=190001010000, le=210012312359), AfterValidator(_is_moment)]
Minute = Annotated[int, Field(ge=0, lt=MINUTES_OF_A_DAY)]


class ConfirmClass(Command):
    """The coach's yes to a class as read back; `evening`: twelve hours later than read."""

    class_id: int
    evening: bool = False


class DropClass(Command):
    """The coach's no to a class as read back."""

    class_id: int


class PlaceClass(Command):
    """The class as read back is meant for another group."""

    class_id: int
    group: int


class SeeClasses(Command):
    """Which classes come, and whether I'm in."""


class ManageClass(Command):
    class_id: int


class ChangeClass(Command):
    """Ask me how the class should be from now on."""

    class_id: int


class EndClass(Command):
    class_id: int


class CancelDate(Command):
    class_id: int
    slot: Slot


class MoveDate(Command):
    """Move one date to the local start `to`."""

    class_id: int
    slot: Slot
    to: Slot


class ComeTo(Command):
    """I'm in for this date."""

    class_id: int
    slot: Slot


class StayAway(Command):
    """I can't make it on this date."""

    class_id: int
    slot: Slot


class TellAttended(Command):
    class_id: int
    slot: Slot
    yes: bool


class AboutReminders(Command):
    """How I'm reminded, and how to change it."""


class SetLead(Command):
    minutes: Annotated[int, Field(ge=0, le=7 * MINUTES_OF_A_DAY)]


class SetQuiet(Command):
    """Quiet hours as minutes of the day; equal ends: none."""

    start: Minute
    end: Minute


class SetOwnZone(Command):
    zone: Word


class SetDigest(Command):
    """When the evening digest comes, as minutes of the day."""

    minute: Minute


class WantDigest(Command):
    """Whether the evening digest comes at all."""

    yes: bool


class AskHabit(Command):
    """Ask me anew: `lead`, `quiet`, `own_zone` or `digest`."""

    which: Word
