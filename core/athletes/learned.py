"""What scores taught of somebody: how far they are from what was expected of them.

What is unknown of a person stands under a name (`strength`, `tempo of burpee`), as a standard normal number: in spreads
of what is expected of them, so that it keeps its meaning when a new test changes that. What is named nowhere is as
unknown as of anybody.
"""

from collections.abc import Collection, Mapping
from datetime import date
from math import exp, sqrt
from typing import Annotated

from pydantic import Field, model_validator

from core.values import Value

# What nobody showed again is forgotten with this time constant (estimate: people change within a year).
FADES_DAYS = 300.0
MOST_NAMES = 80

STRENGTH, RECOVERY, TEMPO, RATE = "strength", "recovery", "tempo", "rate"
# How much of what is unknown of one movement is unknown of all of them: a good day, a strong person (estimate).
IN_COMMON = 0.6

Name = Annotated[str, Field(max_length=80)]
Row = Annotated[tuple[float, ...], Field(max_length=MOST_NAMES)]


def strength_of(movement: str) -> dict[str, float]:
    """What is unknown of the strength in a movement, by shares: something of all, something of its own."""
    return {STRENGTH: IN_COMMON, f"{STRENGTH} of {movement}": sqrt(1 - IN_COMMON**2)}


def tempo_of(movement: str) -> str:
    """How fast somebody repeats a movement, beside how fast they go about everything."""
    return f"{TEMPO} of {movement}"


class Learned(Value):
    """The middle and the covariance of what was unknown, `names` in order, as it was after the scores until `on`.

    `away_days`: so long nothing was scored since.
    `seen`: so many scores were looked at, the last of them `until`, so that it is known what came or went since.
    """

    on: date
    names: Annotated[tuple[Name, ...], Field(max_length=MOST_NAMES)] = ()
    middle: Row = ()
    covariance: Annotated[tuple[Row, ...], Field(max_length=MOST_NAMES)] = ()
    away_days: Annotated[int, Field(ge=0)] = 0
    seen: Annotated[int, Field(ge=0)] = 0
    until: Annotated[int, Field(ge=0)] = 0

    @model_validator(mode="after")
    def _fits_together(self) -> "Learned":
        count = len(self.names)
        if len(self.middle) != count or any(len(row) != count for row in (*self.covariance, self.middle)):
            raise ValueError("a row for each name")
        return self

    def of_sum(self, shares: Mapping[str, float]) -> tuple[float, float]:
        """Middle and spread of the sum of some unknowns, each times its share."""
        known = [(self.names.index(name), share) for name, share in shares.items() if name in self.names]
        middle = sum(share * self.middle[place] for place, share in known)
        variance = sum(share**2 for name, share in shares.items() if name not in self.names)
        variance += sum(
            one * two * self.covariance[place][other] for place, one in known for other, two in known
        )
        return middle, sqrt(max(variance, 0.0))

    def without(self, forgotten: Collection[str]) -> "Learned":
        """As unknown again as of anybody: what is `forgotten`, because something newer says it."""
        kept = [place for place, name in enumerate(self.names) if name not in forgotten]
        if len(kept) == len(self.names):
            return self
        return self.model_copy(
            update={
                "names": tuple(self.names[place] for place in kept),
                "middle": tuple(self.middle[place] for place in kept),
                "covariance": tuple(tuple(self.covariance[row][column] for column in kept) for row in kept),
            }
        )

    def as_of(self, day: date) -> "Learned":
        """What is left of it on a later day: everything goes back to where it came from."""
        days = max((day - self.on).days, 0)
        left = exp(-days / FADES_DAYS)
        if left == 1.0:
            return self
        covariance = tuple(
            tuple(
                left * left * value + (1 - left * left if row == column else 0.0)
                for column, value in enumerate(values)
            )
            for row, values in enumerate(self.covariance)
        )
        return self.model_copy(
            update={
                "on": day,
                "away_days": self.away_days + days,
                "middle": tuple(left * one for one in self.middle),
                "covariance": covariance,
            }
        )
