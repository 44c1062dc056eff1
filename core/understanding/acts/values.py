"""What every act is made of."""

from decimal import Decimal
from typing import Literal

from core.values import Value

Stop = Literal["chest", "breath", "faint", "heart", "swelling", "calves"]
Side = Literal["left", "right"]


class Result(Value):
    """A score as it was told: of each kind only what was said. `unfinished`: they stopped early."""

    rounds: int | None = None
    reps: int | None = None
    seconds: float | None = None
    load_kg: Decimal | None = None
    distance_m: float | None = None
    calories: int | None = None
    unfinished: bool = False


# Nothing that is told in minutes is longer than a week.
WEEK_MIN = 7 * 24 * 60


class Act(Value):
    """`text`: the words it was read from. Days are as they were said, in plain words; people by their names."""

    text: str = ""
