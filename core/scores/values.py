"""What was done, and its place on the scoreboard."""

from decimal import Decimal
from enum import StrEnum
from typing import Annotated

from pydantic import Field

from core.measures import MassUnit
from core.scores.text import in_words
from core.sessions.values import Format
from core.values import Value


class Doubt(StrEnum):
    """Why a score must be asked about before it is kept."""

    UNREADABLE = "unreadable"
    UNCOUNTED = "uncounted"  # they did it, and don't know the number
    WHICH_BLOCK = "which_block"
    WHICH_NUMBER = "which_number"
    NOT_POSITIVE = "not_positive"
    IMPOSSIBLE = "impossible"
    BEYOND_ROUND = "beyond_round"
    BEYOND_CAP = "beyond_cap"
    FINISHED_OR_NOT = "finished_or_not"
    HOW_FAR = "how_far"
    MEANT = "meant"


MOST_SETS = 200

# Doubts whose question a plain yes answers.
SETTLED_BY_YES = frozenset({Doubt.MEANT, Doubt.BEYOND_ROUND, Doubt.IMPOSSIBLE})


class Mark(StrEnum):
    """What a coach decides about a score."""

    CHECKED = "checked"
    NOT_COUNTED = "not_counted"
    COUNTS_AGAIN = "counts_again"


class Hurt(StrEnum):
    """Sore muscles are not pain: which one it is gets asked."""

    NO = "no"
    SORE = "sore"
    PAIN = "pain"


class Score(Value):
    """One athlete's result for one block. `value` counts in `unit`: rounds, s, reps, kcal, kg or m.

    An amrap of 7 rounds and 12 has rounds 7 and reps 12, and as value the rounds with their part; calories are in
    `reps` too. `capped`: not finished within the cap; then `reps` were done. `note` keeps the athlete's other
    words, `pain` what hurt. `sets`: what each set, interval or attempt had, where that is told: in the unit of the
    score; under loads in repetitions, or as loads where only these are told of each. `ranked` is False where the
    person is not ranked (light duty). `minutes`: what their shorter day had, where the block has more. `claimed`:
    they said that it was as written.
    """

    value: float | None
    unit: str
    rounds: int | None = None
    reps: int | None = None
    seconds: float | None = None
    load_kg: Decimal | None = None
    sets: Annotated[tuple[float, ...], Field(max_length=MOST_SETS)] = ()
    capped: bool = False
    scaled: bool = False
    note: str | None = None
    pain: str | None = None
    ranked: bool = True
    minutes: float | None = None
    claimed: bool = False

    def in_words(self, unit: MassUnit = MassUnit.KG) -> str:
        """`7 rounds + 12`, `8:43`, `capped, 120 reps`, `60 kg`."""
        return in_words(self, unit)


class ReadScore(Value):
    """A score as understood from words.

    When not `sure`, `doubt` and `ask` (the same in plain words) are the one thing to settle, and `score` is
    the reading that a yes would confirm, or None. `block`: index of the block it belongs to, once known. `between`:
    the readings, or `among`: the indices of the blocks, one of which is meant.
    """

    score: Score | None
    sure: bool
    ask: str | None = None
    doubt: Doubt | None = None
    block: int = 0
    between: tuple[Score, ...] = ()
    among: tuple[int, ...] = ()


class Tolerance(Value):
    """What still counts as written in a group, beside exactly that and heavier: its coach says.

    `lighter_percent`: so much less load at most. `other_implement`: another thing in the hands counts too.
    """

    lighter_percent: Annotated[int, Field(ge=0, le=50)] = 0
    other_implement: bool = False


EXACTLY = Tolerance()


class Entry(Value):
    """A score with its owner, ready to be ranked; `apart`: of other work, to be listed without a place."""

    name: str
    score: Score
    team: str | None = None
    apart: bool = False


class Place(Value):
    """A row of the scoreboard: standard competition rank ("1224"), as written before scaled.

    `rank` is None for who did other work than was written: it stands behind all others, without a place.
    """

    rank: int | None
    name: str
    score: Score
    text: str


class TeamPlace(Value):
    """A team's total. A person earns a point for everybody ranked below or level, themselves included."""

    rank: int
    team: str
    points: int
    names: tuple[str, ...]


class Board(Value):
    format: Format
    places: tuple[Place, ...]
    teams: tuple[TeamPlace, ...] = ()
