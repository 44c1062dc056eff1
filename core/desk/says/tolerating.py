"""What is said of what counts as written."""

from core.desk.outcome import Said
from core.scores.values import Tolerance


class AskTolerance(Said):
    """To the coach: what counts as written in the group now, and what else may."""

    group: int
    title: str
    tolerance: Tolerance


class ToleranceSet(Said):
    """To the coach: what counts from now on. `moved`: so many scores of the last day changed their place."""

    title: str
    tolerance: Tolerance
    moved: int
