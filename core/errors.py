"""Everything that goes wrong on purpose.

BellwetherError
    Refusal          expected: a person asked for what can't be done; it is answered kindly
        TooMuch      a number or an amount of things beyond what is kept of anybody
    InputError       expected: a text or file could not be read; names its place
    Trouble          the surroundings don't do: a disk, a database; said to whoever runs the bot
    Defect           a broken promise of our own code or data; never shown as it is
"""


class BellwetherError(Exception):
    """Base of every error that this project raises itself."""


class Refusal(BellwetherError):
    """What was asked can't be done, for a reason that the asker is told."""


class TooMuch(Refusal):
    """More, or a larger number, than anybody means: it is not kept."""


class InputError(BellwetherError):
    """A text could not be read. `place` says where: `line 3`, `athlete 2 (Ilse)`."""

    def __init__(self, place: str, problem: str) -> None:
        super().__init__(f"{place}: {problem}")
        self.place = place
        self.problem = problem


class Trouble(BellwetherError):
    """The surroundings don't do: a disk, a database, the platform. Said to whoever runs the bot."""


class Defect(BellwetherError):
    """Our own code or data broke its promise."""
