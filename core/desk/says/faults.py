"""What is said about what a coach noted of how an athlete moves."""

from decimal import Decimal

from core.desk.outcome import Said
from core.measures import MassUnit
from core.values import Value


class FaultShown(Value):
    """One note: `words` as the athlete reads them, at most `cap_kg` in the hands."""

    id: int
    movement: str
    words: str
    cap_kg: Decimal | None


class FaultRead(Said):
    """To the coach: what the athlete will read, in `theirs`, and what it does. `units`: the group's."""

    fault: FaultShown
    athlete: str
    units: MassUnit
    theirs: MassUnit


class FaultUnclear(Said):
    """To the coach: it wasn't said of which movement, or (with one) what about it."""

    athlete: str
    movement: str | None


class AskFaultWords(Said):
    """To the coach: how it should read instead."""

    athlete: str
    again: bool = False


class FaultMade(Said):
    """To the coach: it stands, and the athlete knows."""

    fault: FaultShown
    athlete: str


class FaultDropped(Said):
    """To the coach: nothing was noted."""


class FaultTold(Said):
    """To the athlete: their coach noted something."""

    fault: FaultShown
    units: MassUnit


class FaultLifted(Said):
    """To the coach."""

    athlete: str
    movement: str


class FaultOver(Said):
    """To the athlete: their coach has lifted it."""

    movement: str


class FaultsStanding(Said):
    """To the coach: what stands, by athlete."""

    shown: tuple[tuple[str, FaultShown], ...]
    units: MassUnit


class NoFaults(Said):
    """To the coach: nothing stands; for `athlete`, or for anybody."""

    athlete: str | None
