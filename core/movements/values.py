"""The catalogue's strict shape: movements, their variants, and what one repetition asks of body and room."""

from enum import StrEnum
from typing import Literal

from core.measures import AmountUnit
from core.values import Value


class Pattern(StrEnum):
    """Families of movement; a reserve is kept per pattern (beside grip and low back)."""

    SQUAT = "squat"
    HINGE = "hinge"
    LUNGE = "lunge"
    HORIZONTAL_PUSH = "horizontal-push"
    VERTICAL_PUSH = "vertical-push"
    HORIZONTAL_PULL = "horizontal-pull"
    VERTICAL_PULL = "vertical-pull"
    TRUNK = "trunk"
    CARRY = "carry"
    JUMP = "jump"
    TRAVEL = "travel"
    MOBILITY = "mobility"


class Demand(StrEnum):
    """What a variant asks of the body or the room; limits and space rule these out or lighten them."""

    GRIP = "grip"
    OVERHEAD = "overhead"
    WRIST_BENT = "wrist-bent"
    IMPACT = "impact"
    LYING = "lying"
    HANGING = "hanging"
    ROOM = "room"
    NOISE = "noise"
    BALANCE = "balance"
    SPINAL_LOAD = "spinal-load"
    BREATH_HOLDING = "breath-holding"
    UPSIDE_DOWN = "upside-down"
    DEEP_KNEE_BEND = "deep-knee-bend"
    FORWARD_BEND = "forward-bend"
    TWIST = "twist"
    SHOULDER_LOAD = "shoulder-load"
    ELBOW_LOAD = "elbow-load"


class Sourced(Value):
    """A number and where it comes from: a publication, a segment table, or `estimate`."""

    value: float
    source: str


class HeightShare(Value):
    """Share of body mass at one height of the hands (or feet) above the floor."""

    height_cm: float
    value: float


class Share(Value):
    """Share of body mass that one repetition moves; `by_height` is interpolated and clamped beyond its ends."""

    value: float
    source: str
    by_height: tuple[HeightShare, ...] = ()


class Hold(Value):
    """One way of loading a variant: `count` of an implement, and how much of each kg is moved."""

    implement: str
    count: int = 1
    factor: float = 1.0
    source: str = "estimate"


class Cue(Value):
    """The cue card, in our own words."""

    start: str
    counts: str
    cues: tuple[str, str]
    fault: str
    caution: str


class Variant(Value):
    """A way of doing a movement. The written one comes first in its movement.

    `needs`: things that must be there beside what is held (chair, bar). `holds`: empty means unloaded.
    `reserves`: share of one repetition's cost by reserve name; the limiting one sets the count.
    `easier` and `harder`: `movement/variant` ids, nearest first; `instead`: safe stand-ins in another pattern.
    """

    id: str
    names: tuple[str, ...] = ()
    label: str
    needs: tuple[str, ...] = ()
    holds: tuple[Hold, ...] = ()
    body_share: Share
    reserves: dict[str, float]
    seconds: Sourced
    demands: tuple[Demand, ...] = ()
    skill: bool = False
    ratio: Sourced
    easier: tuple[str, ...] = ()
    harder: tuple[str, ...] = ()
    instead: tuple[str, ...] = ()
    cue: Cue


class Movement(Value):
    """A named pattern. `id` is its plain name (`goblet squat`); `names` are the spellings people type.

    `k`: prior of N(L) = k (S/L - 1) for this movement; `ratio` of each variant: its S against the pattern's.
    """

    id: str
    pattern: Pattern
    names: tuple[str, ...] = ()
    unit: AmountUnit = AmountUnit.REPS
    sides: Literal["both", "one", "alternating"] = "both"
    k: Sourced
    variants: tuple[Variant, ...]
