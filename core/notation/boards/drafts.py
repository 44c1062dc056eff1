"""A block while its rows are read."""

from dataclasses import dataclass, field, replace
from typing import NamedTuple

from core.measures import MassUnit
from core.notation.lines.pieces import Piece, complete, completes, loads_of, names_again, repeats
from core.notation.phrases.aims import Facts
from core.notation.text import Row
from core.sessions.values import BlockKind, Format


class Placed(NamedTuple):
    """A piece and the row it stands in."""

    piece: Piece
    row: Row


class Rest(NamedTuple):
    """A station at which nothing is done, and the row that says so."""

    station: int
    row: Row


@dataclass
class Draft:
    """A block while its rows are read.

    `pauses`: in how many rows its rest is told; `rests_behind`: one of these stands behind several lines.
    `held`: the load told above the lines, for all that are done with one.
    `where` and `station`: where a row alone (`Cash-out:`, `Min 2:`) has sent the rows under it. `in_window`: it
    has its minutes from the clock (`6-12 min:`), and `over_all` is what was said of them all before the first.
    `listed`: the number of the row in a list that it began with, `shared` what was said above the list;
    `is_next`: others of that list stand before it.
    """

    row: Row
    where: str = "lines"
    station: int | None = None
    kind: BlockKind = BlockKind.MAIN
    headed: bool = False
    name: str | None = None
    letter: str | None = None
    facts: Facts = field(default_factory=dict)
    lines: list[Placed] = field(default_factory=list)
    buy_in: list[Placed] = field(default_factory=list)
    cash_out: list[Placed] = field(default_factory=list)
    rests: list[Rest] = field(default_factory=list)
    pauses: int = 0
    rests_behind: bool = False
    notes: list[str] = field(default_factory=list)
    broken: bool = False
    held: Piece | None = None
    in_window: bool = False
    over_all: Facts = field(default_factory=dict)
    listed: int | None = None
    shared: Facts = field(default_factory=dict)
    is_next: bool = False

    @property
    def says_more_than_time(self) -> bool:
        """Whether its head tells more than how long it takes, how hard it is, or that it isn't counted."""
        counted = self.facts.get("format", Format.QUALITY) is not Format.QUALITY
        return counted or not self.facts.keys() <= {"minutes", "format", "effort"}

    @property
    def heads_rows(self) -> bool:
        """Whether its heading stands alone in the row above its lines."""
        return self.headed and any(placed.row.number != self.row.number for placed in self.lines)

    @property
    def placed(self) -> list[Placed]:
        return self.buy_in + self.lines + self.cash_out

    @property
    def is_name_alone(self) -> bool:
        """Whether it only names what the rows under it say more of."""
        return self.only is not None and not (self.only.says_anything or self.facts)

    @property
    def in_turn(self) -> bool:
        """Whether a letter or the word for it says that its sets are done in turn."""
        return bool(self.letter) or any("super" in note.lower() for note in self.notes)

    @property
    def is_complex(self) -> bool:
        """Whether its lines are done in one go with one weight, time after time."""
        return any("complex" in note.lower() for note in self.notes)

    @property
    def pieces(self) -> list[Piece]:
        """What its lines say."""
        return [placed.piece for placed in self.lines]

    @property
    def is_empty(self) -> bool:
        return not (self.placed or self.facts or self.rests or self.notes or self.broken)

    @property
    def only(self) -> Piece | None:
        """What its only line says; None where it has several, or none."""
        return self.lines[0].piece if len(self.lines) == 1 else None

    def say_of_last(self, *words: str) -> None:
        """Words that say how its last line is done."""
        last = self.lines[-1]
        self.lines[-1] = last._replace(piece=replace(last.piece, notes=(*last.piece.notes, *words)))


def goes_on(lines: list[Placed], piece: Piece, row: Row, unit: MassUnit) -> bool:
    """Whether a nameless piece was one more set of the last line, or completed it."""
    last = lines[-1].piece
    if repeats(piece, last):
        piece.meaning, piece.implement = last.meaning, last.implement
        lines.append(Placed(piece, row))
        return True
    if not piece.per_side and (loads := loads_of(piece, last, unit)):
        piece = replace(piece, amount=None, second_amount=None, sets=None, loads_kg=loads, count=piece.sets)
    if lines[-1].row.number == row.number and names_again(piece, last):
        piece = replace(piece, meaning=None)
    if completes(piece, last):
        lines[-1] = Placed(complete(last, piece), lines[-1].row)
        return True
    return False
