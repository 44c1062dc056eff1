"""What reading gives back: what was understood, what was corrected, and what was not, at its place."""

from typing import Literal

from core.sessions.values import Format, Session
from core.values import Value

_AS_MUCH_AS_CAN_BE = {Format.MAX_REPS, Format.MAX_LOAD, Format.HOLD}
LooksLike = Literal["movement", "work", "note", "score"]


class NotUnderstood(Value):
    """A stretch of text that nobody should have to search for, in the typist's own words.

    Line and column count from 1; `guess` is a rewrite that would be understood, None where none is good.
    `looks_like`: a `movement` that isn't in the catalogue; other `work`, of which something is missing or
    can't be meant; a `note`, plain talk that asks for nothing to be done; or a part of which all was read but how
    it is scored. `block`: the block, from 1, in or
    right under whose lines it stands, and `after` how many of these; None for what is said of a line that was
    read, or of the block.
    """

    line: int
    column: int
    text: str
    guess: str | None = None
    looks_like: LooksLike = "work"
    block: int | None = None
    after: int | None = None

    @property
    def is_taken(self) -> bool:
        """Whether it is in the session, and may not be meant like that: `30 plank`."""
        return self.looks_like == "work" and self.block is not None and self.after is None


class Corrected(Value):
    """A near spelling that was read as something known."""

    line: int
    column: int
    text: str
    read_as: str


class ReadSession(Value):
    """A coach's text, read. The session holds what was understood; None if no block was.

    `rows`: the rows that say something of a block, with its number, both from 1.
    `format_known`: it was said how at least one part is done, even if nothing to do in it was understood.
    """

    session: Session | None
    not_understood: tuple[NotUnderstood, ...] = ()
    corrected: tuple[Corrected, ...] = ()
    rows: tuple[tuple[int, int], ...] = ()
    format_known: bool = False

    @property
    def holds_work(self) -> bool:
        """Whether some line says what to do and how much of it, be it as much as can be."""
        blocks = self.session.blocks if self.session else ()
        return any(
            line.amount or block.scheme or block.format in _AS_MUCH_AS_CAN_BE
            for block in blocks
            for line in block.lines
        )

    @property
    def is_clear(self) -> bool:
        """Whether nothing but names of movements, remarks, or what can be guessed was left unread."""
        return all(one.guess or one.looks_like != "work" for one in self.not_understood)

    @property
    def unread(self) -> tuple[NotUnderstood, ...]:
        """All but parts of which only how they are scored wasn't said."""
        return tuple(one for one in self.not_understood if one.looks_like != "score")

    @property
    def is_unscored(self) -> bool:
        """Whether of some part it wasn't said how it is scored; it is taken as not for time."""
        return len(self.unread) < len(self.not_understood)

    @property
    def unknown_movements(self) -> tuple[str, ...]:
        """Names that stand where a movement should, each once, as they were typed."""
        return tuple(dict.fromkeys(one.text for one in self.not_understood if one.looks_like == "movement"))


class ReadLimits(Value):
    """An athlete's own words about what to avoid: ids; () for nothing, None where nothing was understood."""

    limits: tuple[str, ...] | None = None
    not_understood: tuple[str, ...] = ()
