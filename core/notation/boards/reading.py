"""What one row of a coach's text says: heading, facts, pieces of lines, notes, and what was not understood."""

from collections.abc import Iterator
from dataclasses import dataclass, field, replace

from core.notation.boards.unread import Stretch, is_talk, joined, named
from core.notation.lines.pieces import Piece
from core.notation.phrases.aims import Facts
from core.notation.text import Row
from core.notation.values import Corrected, NotUnderstood
from core.sessions.values import BlockKind


@dataclass
class Reading:
    """What one row says."""

    row: Row
    kind: BlockKind | None = None
    name: str | None = None
    parts: bool = False
    is_named: bool = False
    where: str = "lines"
    facts: Facts = field(default_factory=dict)
    pieces: list[Piece] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    unread: list[Stretch] = field(default_factory=list)
    corrected: list[Corrected] = field(default_factory=list)
    number: int | None = None
    letter: str | None = None
    rest_station: int | None = None
    station: int | None = None
    is_rest: bool = False
    then: bool = False
    may_part: bool = False
    afterwards: bool = False
    begins: bool = False
    labelled: list[tuple[Stretch, Facts]] = field(default_factory=list)

    @property
    def not_understood(self) -> list[NotUnderstood]:
        return [named(self.row, stretch) for stretch in self.unread]

    def placed(self, before: int) -> Iterator[NotUnderstood]:
        """What it leaves unread, with how many lines of the block stand before it, of which so many above the row."""
        for stretch in self.unread:
            here = sum(bool(piece.meaning) for piece in self.pieces if piece.start < stretch.start)
            yield named(self.row, stretch).model_copy(update={"after": before + here})

    @property
    def is_empty(self) -> bool:
        return not (self.says_anything or self.unread)

    @property
    def says_anything(self) -> bool:
        """Whether some of it was understood."""
        read = any(piece.meaning or piece.says_anything for piece in self.pieces)
        said = (
            self.kind
            or self.parts
            or self.may_part
            or self.facts
            or self.notes
            or self.rest_station
            or self.station
        )
        return bool(said or self.then or self.is_rest or self.where != "lines" or read)

    @property
    def has_work(self) -> bool:
        """Whether something is to be done in it, read or not; what only words say is none."""
        return any(piece.meaning or (piece.unread and (piece.amount or piece.sets)) for piece in self.pieces)

    @property
    def is_heading_alone(self) -> bool:
        """Whether it says nothing but which part begins."""
        return not (self.facts or self.pieces or self.notes or self.unread or self.then)

    @property
    def is_open_work(self) -> bool:
        """Whether there is something to do in it that lacks what can be offered."""
        return any(one.guess and one.looks_like == "work" for one in self.unread)

    @property
    def is_remark(self) -> bool:
        """Whether it is said like talk and tells no amount, whatever it names: `Breathe!`."""
        told = any(replace(piece, notes=()).says_anything for piece in self.pieces)
        return is_talk(self.row.text.strip()) and not (
            told or self.facts or self.notes or self.kind or self.parts
        )

    @property
    def is_talk(self) -> bool:
        """Whether all of it is plain talk."""
        return bool(self.unread) and not self.says_anything and self.unread[0].looks_like == "note"


def take_back_formats(reading: Reading) -> None:
    """What only a label took for a format is talk, where it is known already how the part is done: `keep moving`."""
    for stretch, facts in reading.labelled:
        if "format" in facts and facts.keys() <= {"format", "every_s"}:
            reading.facts = {name: value for name, value in reading.facts.items() if name not in facts}
            reading.unread = list(joined([*reading.unread, stretch], reading.row.text))
