"""What is said to a coach who asks why an athlete's version is as it is."""

from datetime import date
from typing import Literal

from core.desk.outcome import Said
from core.measures import MassUnit
from core.scaling.values import VersionLine
from core.values import Value


class TheirLine(Value):
    """`written`: the movement that the coach wrote there."""

    written: str
    line: VersionLine


class WhyTheirs(Said):
    """Lines of an athlete's version with their reasons, or with how their loads suit; none: nothing of it was changed.

    `shown`: the limits that the athlete lets the coach see; of any other it is only said that there is one.
    """

    athlete: str
    person: int
    session: int
    title: str | None
    day: date
    question: Literal["why", "load"]
    lines: tuple[TheirLine, ...]
    shown: frozenset[str]
    units: MassUnit
