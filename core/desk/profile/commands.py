"""What a person can do with what is stored: take it along, let it be forgotten, put right what they wrote."""

from core.desk.commands import Command


class SaveScores(Command):
    """A coach takes the scores of a session along as a file."""

    session: int


class ExportMine(Command):
    """Hand over everything that is stored about me."""


class ForgetMe(Command):
    """Ask whether everything about me may be erased."""


class EraseMe(Command):
    """Yes, erase everything."""


class KeepMe(Command):
    """No, nothing is to be erased."""


class Retell(Command):
    """A message of theirs was changed afterwards; `message_id` is the platform's."""

    message_id: int
    text: str
    in_group: bool


class ShareLimits(Command):
    """Whether the coaches of this group may see what I spare."""

    group: int
    yes: bool


class PassOn(Command):
    """Yes, my coach may read what I said for them."""

    word: int


class PassOnTo(Command):
    """Yes, and it is for the coaches of this group."""

    word: int
    group: int


class TakeAsTold(Command):
    """What I only asked or supposed is so."""

    word: int


class ForgetWord(Command):
    """Let go of what I said for my coach."""

    word: int
