"""What was decided beside the session: standing choices, and what the group's coach allows."""

from datetime import date
from decimal import Decimal
from typing import Literal

from core.scaling.values import Part, Spot, VersionLine
from core.scores.values import EXACTLY, Tolerance
from core.values import Value


def is_called(name: str | None, movement: str) -> bool:
    """Whether a movement bears a name, or is called after it: a run on the spot is a run."""
    return name is not None and set(name.split()) <= set(movement.split())


class Pin(Value):
    """A standing choice for one line: only options that match every field that is set are left.

    `line` counts from 1 in `part` of the block. `share`: of the written amount, at most 1. A pin that nothing
    safe matches is not followed. An athlete's own says for which `cause`. `without`: a movement that is not to be done;
    `bare`: with nothing in the hands. It counts on the days from `since` to `until`, where these are told.
    """

    block: int
    line: int
    part: Part = "lines"
    movement: str | None = None
    variant: str | None = None
    implement: str | None = None
    count: int | None = None
    load_kg: Decimal | None = None
    share: float | None = None
    without: str | None = None
    bare: bool = False
    since: date | None = None
    until: date | None = None
    by: Literal["coach", "athlete"] = "coach"
    cause: str | None = None

    def leaves_out(self, movement: str) -> bool:
        """Whether it is what is not to be done, or is called after it: no run on the spot either."""
        return is_called(self.without, movement)

    def meets(self, other: "Pin") -> bool:
        """Whether there is a day on which both count."""
        begins = max(self.since or date.min, other.since or date.min)
        return begins <= min(self.until or date.max, other.until or date.max)

    def counts_on(self, day: date) -> bool:
        return (self.since is None or self.since <= day) and (self.until is None or day <= self.until)


class Fault(Value):
    """How an athlete does a movement that their coach wants otherwise: `words` to read, at most `cap_kg` in the hands.

    Without a number no set of it costs more than half. It speaks of everything of the movement's pattern.
    """

    movement: str
    words: str = ""
    cap_kg: Decimal | None = None


class Most(Value):
    """At most so much in the hands altogether, whatever is done with it."""

    cap_kg: Decimal


Noted = Fault | Most


class Orders(Value):
    """What was decided beside the session: standing choices, and last time's lines for steadiness.

    `heavier`: the coach allows more than written. `volume_first`: fewer repetitions are an option at once.
    `tolerance`: what counts as written in the group. `faults`: what the coach noted; they don't bind the lines `past`
    them, of which the coach has decided since. `stood_in`: in earlier parts
    of the session so many movements stood in, each with the line that it stood for. `left_out`: names of movements that
    stand in for nothing, wherever anything else can.
    """

    pins: tuple[Pin, ...] = ()
    last: tuple[VersionLine, ...] = ()
    heavier: bool = False
    volume_first: bool = False
    tolerance: Tolerance = EXACTLY
    faults: tuple[Noted, ...] = ()
    past: tuple[Spot, ...] = ()
    stood_in: frozenset[tuple[str, str]] = frozenset()
    left_out: tuple[str, ...] = ()

    def leave_out(self, movement: str) -> bool:
        return any(is_called(one, movement) for one in self.left_out)


NO_ORDERS = Orders()
