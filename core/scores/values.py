"""What was done, and its place on the scoreboard."""

from decimal import Decimal

from core.sessions.values import Format
from core.values import Value


class Score(Value):
    """One athlete's result for one block. `value` counts in `unit`: rounds, s, reps, kg or m.

    An amrap of 7 rounds and 12 has rounds 7 and reps 12. `capped`: not finished within the cap.
    """

    value: float | None
    unit: str
    rounds: int | None = None
    reps: int | None = None
    seconds: float | None = None
    load_kg: Decimal | None = None
    capped: bool = False
    scaled: bool = False
    note: str | None = None
    pain: str | None = None


class ReadScore(Value):
    """A score as understood from words; when not `sure`, `ask` is the one thing to settle."""

    score: Score | None
    sure: bool
    ask: str | None = None


class Entry(Value):
    """A score with its owner, ready to be ranked."""

    name: str
    score: Score
    team: str | None = None


class Place(Value):
    """A row of the scoreboard: standard competition rank within as written, then scaled."""

    rank: int
    name: str
    score: Score
    text: str


class Board(Value):
    format: Format
    places: tuple[Place, ...]
