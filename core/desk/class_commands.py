"""What a person can do about classes and reminders. `slot`: a date's original local start, 202603031830."""

from core.desk.commands import Command


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
    slot: int


class MoveDate(Command):
    """Move one date to the local start `to`."""

    class_id: int
    slot: int
    to: int


class ComeTo(Command):
    """I'm in for this date."""

    class_id: int
    slot: int


class StayAway(Command):
    """I can't make it on this date."""

    class_id: int
    slot: int


class TellAttended(Command):
    class_id: int
    slot: int
    yes: bool


class AboutReminders(Command):
    """How I'm reminded, and how to change it."""


class SetLead(Command):
    minutes: int


class SetQuiet(Command):
    """Quiet hours as minutes of the day; equal ends: none."""

    start: int
    end: int


class SetOwnZone(Command):
    zone: str


class SetDigest(Command):
    """When the evening digest comes, as minutes of the day."""

    minute: int


class WantDigest(Command):
    """Whether the evening digest comes at all."""

    yes: bool


class AskHabit(Command):
    """Ask me anew: `lead`, `quiet`, `own_zone` or `digest`."""

    which: str
