"""What reading gives back: what was understood, what was corrected, and what was not, at its place."""

from core.athletes.values import Equipment
from core.sessions.values import Session
from core.values import Value


class NotUnderstood(Value):
    """A piece of text that nobody should have to search for.

    Line and column count from 1; `guess` is a rewrite that would be understood, None where none is good.
    """

    line: int
    column: int
    text: str
    guess: str | None = None


class Corrected(Value):
    """A near spelling that was read as something known."""

    line: int
    column: int
    text: str
    read_as: str


class ReadSession(Value):
    """A coach's text, read. The session holds what was understood; None if no block was."""

    session: Session | None
    not_understood: tuple[NotUnderstood, ...] = ()
    corrected: tuple[Corrected, ...] = ()


class ReadEquipment(Value):
    """An athlete's own words about what is there: () for nothing, None where no thing was understood."""

    equipment: tuple[Equipment, ...] | None = None
    not_understood: tuple[str, ...] = ()


class ReadLimits(Value):
    """An athlete's own words about what to avoid: ids; () for nothing, None where nothing was understood."""

    limits: tuple[str, ...] | None = None
    not_understood: tuple[str, ...] = ()
