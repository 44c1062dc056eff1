"""What is known of an athlete: equipment, space, limits, evidence, and how today differs."""

from datetime import date
from decimal import Decimal
from enum import StrEnum
from typing import Annotated, Literal

from pydantic import Field

from core.athletes.learned import Learned
from core.measures import Centimetres, Kg, MassUnit, Metres, Minutes, Reps, Seconds, StepKg
from core.values import Value

# What a person may have told at most: beyond it nobody means it, and everybody would wait for it to be looked at.
MOST_THINGS, MOST_LOADS, MOST_OF_EACH = 100, 60, 100
Name = Annotated[str, Field(max_length=200)]


class Sex(StrEnum):
    """Asked only for published norms; may be left unsaid."""

    FEMALE = "female"
    MALE = "male"


class Screening(StrEnum):
    """What the screening allows (for its source see `screening.py`)."""

    CLEAR = "clear"
    MODERATE = "moderate"
    STOP = "stop"


class ScreeningQuestion(StrEnum):
    """What is asked, in this order; each is answered yes or no."""

    ADULT = "adult"
    SYMPTOMS = "symptoms"
    KNOWN_DISEASE = "known-disease"
    ACTIVE = "active"


class Branch(StrEnum):
    """How a screening ends."""

    NOT_ADULT = "not-adult"
    SYMPTOMS = "symptoms"  # any: no session until cleared
    DISEASE_INACTIVE = "disease-inactive"  # clearance first
    DISEASE_ACTIVE = "disease-active"  # up to moderate until cleared for more
    HEALTHY_INACTIVE = "healthy-inactive"  # start light to moderate
    HEALTHY_ACTIVE = "healthy-active"
    CLEARED = "cleared"  # the athlete says that licensed care cleared them: restart lighter

    @property
    def screening(self) -> Screening:
        """What this ending allows."""
        return _ALLOWS[self]


_ALLOWS = {
    Branch.NOT_ADULT: Screening.STOP,
    Branch.SYMPTOMS: Screening.STOP,
    Branch.DISEASE_INACTIVE: Screening.STOP,
    Branch.DISEASE_ACTIVE: Screening.MODERATE,
    Branch.HEALTHY_INACTIVE: Screening.MODERATE,
    Branch.HEALTHY_ACTIVE: Screening.CLEAR,
    Branch.CLEARED: Screening.MODERATE,
}


class Equipment(Value):
    """One kind of thing an athlete owns.

    Either fixed (`loads_kg`, `each` of every load), adjustable (`from_kg` to `to_kg` in `step_kg`), fillable
    (`to_kg` alone) or without a load (a chair). Heights in cm. `shared_with`: whose else it is, by the name that was
    told, "" where none was; None: theirs alone.
    """

    implement: Name
    loads_kg: Annotated[tuple[Kg, ...], Field(max_length=MOST_LOADS)] = ()
    each: Annotated[int, Field(ge=1, le=MOST_OF_EACH)] = 1
    from_kg: Kg | None = None
    to_kg: Kg | None = None
    step_kg: StepKg | None = None
    height_cm: Centimetres | None = None
    shared_with: Name | None = None


Things = Annotated[tuple[Equipment, ...], Field(max_length=MOST_THINGS)]


class Space(Value):
    """Where they train, and what may be done there. Not `overhead`: the ceiling is low."""

    jumping: bool = True
    running: bool = True
    overhead: bool = True


# Named sets of equipment. Home is where somebody trains unless they say otherwise.
SetName = Literal["home", "gym", "trip"]


class EquipmentSet(Value):
    """What is there in another place than home."""

    name: SetName
    equipment: Things
    space: Space = Space()


class Furnished(Value):
    """A change of what is there in a place: all of it before and after. None: nothing was told."""

    person_id: int
    place: SetName
    before: Things | None
    after: Things


class Severity(StrEnum):
    """How bad pain is, in the athlete's own judgement."""

    LITTLE = "little"  # felt in some movements, gone afterwards
    CLEAR = "clear"  # changes how they move
    BAD = "bad"  # at rest too, or too bad to move on


Side = Literal["left", "right", "both"]


class Complaint(Value):
    """What was told of pain that became a limit. Asked about again on `review_on`."""

    limit: Name
    side: Side | None = None
    severity: Severity
    since: date
    review_on: date


# New to training, back after a break, or a week in which everything is easier.
EaseOf = Literal["new", "returning", "easy-week"]


class Easing(Value):
    """Some days with less: this share of the work, at an effort (0-10) of at most so much."""

    of: EaseOf | Literal["condition"]
    share: Annotated[float, Field(gt=0, le=1)]
    effort_at_most: Annotated[int, Field(ge=0, le=10)]


class Today(Value):
    """Today is different: never touches ability."""

    minutes: Minutes | None = None
    sick: bool = False
    sore: tuple[Name, ...] = ()
    easing: Easing | None = None


class Different(Value):
    """How the days from `since` (None: from when it was said) up to and with `until` differ.

    One thing is said in each. `lacks`: what isn't there; `extra`: what is there besides.
    """

    since: date | None = None
    until: date
    sick: Literal["fever", "recovering"] | None = None
    sore: Name | None = None
    minutes: Minutes | None = None
    place: SetName | None = None
    lacks: Equipment | None = None
    extra: Equipment | None = None
    ease: EaseOf | None = None


Experience = Literal["new", "some", "trained"]


class Pregnancy(Value):
    """`week` on the day `on`: None where it wasn't told. `cleared`: their doctor or midwife agreed."""

    week: int | None = None
    cleared: bool = False
    on: date | None = None


class AfterBirth(Value):
    """`weeks` since the birth on the day `on`: None where they weren't told. `cleared`: doctor or midwife agreed."""

    weeks: int | None = None
    cleared: bool = False
    on: date | None = None


class Seated(Value):
    """Who trains on a seat: whether the trunk holds itself, and whether the floor is possible. None: not told."""

    trunk: bool | None = None
    floor: bool | None = None


class Place(Value):
    """The place where they train, as far as it was told: metres to run and of free floor, and what may be used."""

    run_m: float | None = None
    floor_m: float | None = None
    stairs: bool | None = None
    wall: bool | None = None
    table: bool | None = None
    doorway: bool | None = None
    bar_in_door: bool | None = None


# The ways of covering ground that are no running.
WALKS = frozenset({"brisk-walk", "walk"})


class Evidence(Value):
    """A dated fact about ability. `load_kg` is per implement; an undated test is the oldest.

    An `easier` says with its `cause` how the `reps` of one set of a version were found.
    """

    kind: Literal["test", "score", "effort", "easier"] = "test"
    cause: Literal["too-hard", "too-easy"] | None = None
    movement: Name
    variant: Name | None = None
    on: date | None = None
    reps: Reps | None = None
    load_kg: Annotated[Decimal, Field(ge=0, le=1000)] | None = None
    distance_m: Metres | None = None
    seconds: Seconds | None = None


class Profile(Value):
    """One athlete. None means not asked yet; an empty tuple means asked, and there is nothing.

    `branch`: how the screening ended, `screened_on` when; both None where it was told from outside;
    `before_alarm`: how it had ended before a stop sign was told; `of_age`: they said so once.
    `equipment` is what is there at home; `sets` are the other places. `complaints` tell more of some of the
    `limits`. `different` says how days differ; `today` is what comes of it (`core.athletes.today`).
    `spares_unasked`: some of the `limits` were told before all there is was asked for, so that it still is.
    `asked_on`: when they were last asked whether they had a break, or want to do more.
    `skills`: `movement/variant` ids, shown without a number. `weeks_off`: without training before today. What these,
    `pregnancy`, `after_birth`, `seated` and `place` come to is told by `core.athletes.circumstances`.
    `learned`: what their scores taught (`core.forecast.learning`).
    """

    name: str
    body_mass_kg: Annotated[Decimal, Field(ge=20, le=400)] | None = None
    body_mass_skipped: bool = False
    birth_year: Annotated[int, Field(ge=1900, le=2100)] | None = None
    sex: Sex | None = None
    units: MassUnit = MassUnit.KG
    pair: Literal[1, 2] | None = None
    screening: Screening | None = None
    branch: Branch | None = None
    screened_on: date | None = None
    before_alarm: Branch | None = None
    of_age: bool = False
    equipment: Things | None = None
    sets: Annotated[tuple[EquipmentSet, ...], Field(max_length=3)] = ()
    space: Space = Space()
    limits: Annotated[tuple[Name, ...], Field(max_length=200)] | None = None
    spares_unasked: bool = False
    complaints: Annotated[tuple[Complaint, ...], Field(max_length=200)] = ()
    evidence: tuple[Evidence, ...] = ()
    different: Annotated[tuple[Different, ...], Field(max_length=200)] = ()
    asked_on: date | None = None
    experience: Experience | None = None
    skills: tuple[str, ...] = ()
    weeks_off: float | None = None
    pregnancy: Pregnancy | None = None
    after_birth: AfterBirth | None = None
    seated: Seated | None = None
    place: Place | None = None
    learned: Learned | None = None
    today: Today = Today()

    @property
    def meant_pair(self) -> Literal[1, 2]:
        """Which load of a written pair is meant: as said, else the first for men, the second for others."""
        return self.pair or (1 if self.sex is Sex.MALE else 2)
