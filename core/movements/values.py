"""The catalogue's strict shape: movements, their variants, and what one repetition asks of body and room."""

from enum import StrEnum
from itertools import pairwise
from typing import Annotated, Literal

from pydantic import BeforeValidator, Field, PlainSerializer

from core.measures import AmountUnit
from core.values import Value

Id = Annotated[str, Field(pattern=r"^[a-z0-9]+([ -][a-z0-9]+)*$")]
Words = Annotated[str, Field(min_length=2)]
Sides = Literal["both", "one", "alternating"]


def _as_choice(written: object) -> object:
    if isinstance(written, str):
        return (written,)
    if isinstance(written, list) and len(written) == 1:
        raise ValueError("a choice has two things or more; one is written by itself")
    return tuple(written) if isinstance(written, list) else written


def _as_written(choice: tuple[str, ...]) -> str | tuple[str, ...]:
    return choice if len(choice) > 1 else choice[0]


# Who can't stand is on it already.
SEAT = "seat"

# One thing, or a list of which any one will do, the best first.
Need = Annotated[
    tuple[Id, ...],
    Field(min_length=1),
    BeforeValidator(_as_choice, json_schema_input_type=Id | Annotated[list[Id], Field(min_length=2)]),
    PlainSerializer(_as_written, return_type=str | tuple[str, ...]),
]


class Pattern(StrEnum):
    """Families of movement; a reserve is kept per pattern (beside grip and low back)."""

    SQUAT = "squat"
    HINGE = "hinge"
    LUNGE = "lunge"
    HORIZONTAL_PUSH = "horizontal-push"
    VERTICAL_PUSH = "vertical-push"
    HORIZONTAL_PULL = "horizontal-pull"
    VERTICAL_PULL = "vertical-pull"
    DIP = "dip"
    HANG = "hang"  # holding on, from a bar or a weight
    INVERSION = "inversion"  # held up by the arms: head down, overhead, low over the floor
    ARMS = "arms"  # elbows or shoulders by themselves: curls, raises
    TRUNK = "trunk"
    LIFT = "lift"  # from the ground, or above the knee, to shoulders or overhead in one go
    CARRY = "carry"
    JUMP = "jump"
    TRAVEL = "travel"
    MOBILITY = "mobility"


class Part(StrEnum):
    """What training trains: a stand-in keeps the parts of what it stands for. One leg is no part of its own."""

    SQUAT = "squat"  # knees and hips: lunges and steps too
    HINGE = "hinge"  # the back of the body: hips, hamstrings, lower back
    CALVES = "calves"
    PUSH = "push"  # forward, and down in dips
    PRESS = "press"  # overhead
    ROW = "row"  # pulling in
    PULL = "pull"  # pulling down, or oneself up
    ARMS = "arms"  # elbows or shoulders by themselves
    GRIP = "grip"
    BRACE = "brace"  # a trunk that keeps still
    BEND = "bend"  # a trunk that bends or turns
    CARRY = "carry"
    JUMP = "jump"  # spring
    BREATH = "breath"  # heart and lungs: all that travels
    MOBILITY = "mobility"
    SKILL = "skill"  # something that only practice of itself teaches


class Demand(StrEnum):
    """What a variant asks of the body or the room; limits and space rule these out or lighten them."""

    GRIP = "grip"
    OVERHEAD = "overhead"
    WRIST_BENT = "wrist-bent"
    WRIST_CARRIES = "wrist-carries"  # one weight overhead in both hands, and the wrists give a little
    ELBOW_LOAD = "elbow-load"
    ELBOW_BEND = "elbow-bend"  # a bent arm draws in what it holds, as lightly as one likes
    SHOULDER_LOAD = "shoulder-load"
    SHORT_PRESS = "short-press"  # the arms press, and never get behind the body
    ARMS_BEHIND = "arms-behind"  # the arms press from behind the body
    SPINAL_LOAD = "spinal-load"
    ARCH = "arch"  # the back arches against its own weight
    SPINE_BEND = "spine-bend"  # the back rounds under effort: sit-ups
    ROUNDING = "rounding"  # the back rounds, with nothing to lift
    FORWARD_BEND = "forward-bend"  # leaning over from the hips under effort
    LEANT = "leant"  # leaning over under a weight, held up by a hand
    TWIST = "twist"
    DEEP_KNEE_BEND = "deep-knee-bend"
    KNEE_LOAD = "knee-load"  # one knee carries, or a weight is driven up or caught fast; neither is bent far
    KNEELING = "kneeling"
    FLOOR = "floor"  # down to the floor and up again
    UP_AND_DOWN = "up-and-down"  # down to the floor and up again in every repetition
    LYING = "lying"
    FACE_DOWN = "face-down"  # belly towards the floor and close to it
    HANGING = "hanging"
    UPSIDE_DOWN = "upside-down"
    HEAD_LOW = "head-low"  # the head hangs below the hips
    BALANCE = "balance"
    BREATH_HOLDING = "breath-holding"
    FAST_LOAD = "fast-load"  # a weight caught or turned round in motion
    FAST_PULL = "fast-pull"  # a weight in both hands drawn up with speed from the hips
    RACKED = "racked"  # weights caught or held at the shoulders, elbows ahead
    IMPACT = "impact"  # every landing, a running step too
    JUMPING = "jumping"  # both feet leave the ground
    ROOM = "room"  # more than the space of a mat
    NOISE = "noise"  # heard below
    HEADROOM = (
        "headroom"  # higher than a standing person reaches: a weight overhead, a rope, a jump onto a box
    )
    WALL = "wall"  # a free wall to lean on, kick up to or throw at
    DOORWAY = "doorway"
    STANDING = "standing"  # on the feet, or up onto them: steps, a lean on the wall, a bar to hang from
    TRUNK_HOLD = "trunk-hold"  # a trunk that holds itself up with nothing to lean on or hold
    BELLY = "belly"  # something presses against it
    BELLY_HANGS = "belly-hangs"  # on hands and toes, the trunk holds what hangs
    HELD_OVERHEAD = "held-overhead"  # a weight overhead on one's feet, with no hand to hold on
    QUICK_STEPS = "quick-steps"  # the feet hurry to the side, with nothing to hold
    UNHELD = "unheld"  # from foot to foot, bent over or pulled down, with no hand to hold on
    UNDERFOOT = "underfoot"  # standing on a band
    FEET_HELD = "feet-held"  # the feet are held down, and the hips pull
    LEG_CURL = "leg-curl"  # the back of the thigh alone bends the knee, or holds it
    BOLD = "bold"  # hung from furniture, high on its edge, on one leg or up on the toes: for whoever trusts their body
    LEGS = "legs"  # the legs hold or push though nobody stands: on the toes, bridges, pedals


class ShownBy(Value):
    """Whoever does so many of another way has shown a skill as well: its id and the repetitions."""

    of: Words
    reps: int = Field(gt=0)


class Sourced(Value):
    """A number and where it comes from: a publication, a segment table, or `estimate`."""

    value: float = Field(gt=0)
    source: Words


class HeightShare(Value):
    """Share of body mass at one height of the hands (or feet) above the floor."""

    height_cm: float = Field(ge=0)
    value: float = Field(gt=0)


class Share(Value):
    """Share of body mass that one repetition moves: `value` at the usual height of what is needed.

    `by_height` goes upwards; between two heights it is interpolated, beyond its ends clamped.
    """

    value: float = Field(ge=0)
    source: Words
    by_height: tuple[HeightShare, ...] = ()

    def at(self, height_cm: float | None) -> float:
        """Share at `height_cm`; None means the usual height."""
        if height_cm is None or not self.by_height:
            return self.value
        for low, high in pairwise(self.by_height):
            if height_cm < high.height_cm:
                return _between(low, high, height_cm)
        return self.by_height[-1].value


def _between(low: HeightShare, high: HeightShare, height_cm: float) -> float:
    part = max(0.0, (height_cm - low.height_cm) / (high.height_cm - low.height_cm))
    return low.value + part * (high.value - low.value)


class Implement(Value):
    """A thing to lift or use. `names` are the spellings people type.

    `kind`: held (it has a load) or there (it carries the person; a band too, as nobody knows its load).
    `seat`: whoever uses it sits or lies in it. `height_cm`: usual height to lean or sit on.
    `caution` belongs to every line that uses it.
    """

    id: Id
    label: Words
    names: tuple[Words, ...] = ()
    kind: Literal["held", "there"]
    improvised: bool = False
    seat: bool = False
    height_cm: Sourced | None = None
    caution: Words


class Hold(Value):
    """One way of loading a variant: `count` of an implement, and how much of each kg is moved."""

    implement: Id
    count: int = Field(default=1, ge=1, le=2)
    factor: float = Field(default=1.0, gt=0)
    source: Words = "estimate"

    def fits(self, implement: str | None, count: int | None) -> bool:
        """Whether this is what was said to be held, as far as anything was said."""
        return implement in {None, self.implement} and count in {None, self.count}


# How much of each part, against the part that is trained most, which is 1.
Trained = dict[Part, Annotated[float, Field(gt=0, le=1)]]


class Cue(Value):
    """The cue card, in our own words: how to start, what counts as a repetition, and what to look after."""

    start: Words
    counts: Words
    cues: tuple[Words, Words]
    fault: Words
    caution: Words


class Variant(Value):
    """A way of doing a movement. The written one comes first in its movement.

    `needs`: things that must be there beside what is held (chair, bar); a floor always
    are. Of a list in it any one will do, and the first is the usual one. `holds`: empty means unloaded; one that
    can't be done without a load lists at least one.
    `one_handed`: of what is done with one side only the hand is one: hips and legs work as ever.
    `unit`, `sides`, `trains`: only where they differ from the movement's. Where units differ, an amount is carried over
    by its time: amount x seconds / seconds.
    `reserves`: share of one repetition's cost by reserve name; the limiting one sets the count.
    `seconds`: of one repetition, or of one metre; 1 for a hold. `met`: at that cadence, without a break.
    `few`: so many are a set of it where nobody wrote it, as its cue says.
    `counts_kcal`: the machine does, so that kilocalories can be asked for.
    `seated`: stands in only for those who can't stand; whoever is written it does it.
    `spares`: what its like asks for and it is made to spare: behind them for whoever needn't.
    `make_believe`: the motion alone, or a drill of it: no work for whoever is able.
    `ratio`: S against the pattern's reference; where there is a distance, speed against the reference's.
    `easier`, `harder`: `movement/variant` ids one step down or up the ladder, of the same pattern and the same main
    part, nearest first. `instead`: stand-ins off the ladder, only where they differ from the movement's.
    """

    id: Id
    names: tuple[Words, ...] = ()
    label: Words
    trains: Trained = Field(default_factory=dict)
    needs: tuple[Need, ...] = ()
    holds: tuple[Hold, ...] = ()
    unit: AmountUnit | None = None
    sides: Sides | None = None
    one_handed: bool = False
    body_share: Share
    reserves: dict[str, Annotated[float, Field(gt=0, le=1)]] = Field(min_length=1)
    seconds: Sourced
    met: Sourced | None = None
    few: int | None = Field(default=None, gt=0)
    demands: tuple[Demand, ...] = ()
    skill: bool = False
    seated: bool = False
    spares: tuple[Demand, ...] = ()
    make_believe: bool = False
    counts_kcal: bool = False
    ratio: Sourced
    shown_by: ShownBy | None = None
    easier: tuple[str, ...] = ()
    harder: tuple[str, ...] = ()
    instead: tuple[str, ...] = ()
    cue: Cue

    def takes(self, implement: str | None, count: int | None) -> bool:
        """Whether it is done with what was said: held in one of its holds, or needed."""
        return implement in self.things or any(hold.fits(implement, count) for hold in self.holds)

    @property
    def things(self) -> tuple[str, ...]:
        """Everything that it may be done on, in the order of its needs."""
        return tuple(thing for need in self.needs for thing in need)

    @property
    def is_on_a_seat(self) -> bool:
        """Whether it is done sitting: made for whoever can't stand, or by anybody on a seat."""
        return self.seated or SEAT in self.things

    def is_usual_with(self, implement: str | None) -> bool:
        """Whether it is usually done with this: held, or the first of what will do."""
        return implement in {*(need[0] for need in self.needs), *(hold.implement for hold in self.holds)}


class MovementRow(Value):
    """A movement as its file holds it; the file names the pattern once for all.

    `trains`: the parts that it trains, set by judgement: the main part is 1, and no other. `instead`:
    `movement/variant` ids off the ladder, the best first; where it trains several parts, some that keep each of them.
    `worth`: so many repetitions of another movement are as much as one; None where one is as much as one.
    """

    id: Id
    names: tuple[Words, ...] = ()
    unit: AmountUnit = AmountUnit.REPS
    sides: Sides = "both"
    k: Sourced | None = None
    worth: Sourced | None = None
    trains: Trained = Field(min_length=1)
    instead: tuple[str, ...] = ()
    variants: tuple[Variant, ...] = Field(min_length=1)


class Movement(MovementRow):
    """A named pattern. `id` is its plain name (`goblet squat`); `names` are the spellings people type.

    `k`: prior of N(L) = k (S/L - 1) for this movement, in its unit; None where no count of repetitions (or
    seconds of a hold) applies, as in running. `file`: where it is written, for whoever looks after it.
    """

    pattern: Pattern
    file: str = ""

    def unit_of(self, variant: Variant) -> AmountUnit:
        """Count a line of this variant in this unit."""
        return variant.unit or self.unit

    def sides_of(self, variant: Variant) -> Sides:
        """Whether one repetition works both sides, one, or one after the other."""
        return variant.sides or self.sides

    def trains_of(self, variant: Variant) -> Trained:
        """The parts that this variant trains, and how much of each."""
        return variant.trains or self.trains

    def instead_of(self, variant: Variant) -> tuple[str, ...]:
        """What stands in for this variant off the ladder, the best first."""
        own = f"{self.id}/{variant.id}"
        return tuple(other for other in variant.instead or self.instead if other != own)

    def main_of(self, variant: Variant) -> Part:
        """The part that this variant trains most."""
        trained = self.trains_of(variant)
        return max(trained, key=trained.__getitem__)

    def meant(
        self,
        variant_id: str | None,
        *,
        loaded: bool = False,
        implement: str | None = None,
        count: int | None = None,
    ) -> Variant:
        """The variant of this id; else the first that is usually done with what is said to be held; else the first.

        `loaded`: a load was told. `lunge` with two dumbbells is the lunge with a weight in each hand, and a
        `row` with a band the one that needs a band.
        """
        named = next((way for way in self.variants if way.id == variant_id), None)
        if named is not None or not (loaded or implement or count):
            return named or self.variants[0]
        fitting = (way for way in self.variants if way.takes(implement, count))
        return min(fitting, key=lambda way: not way.is_usual_with(implement), default=self.variants[0])
