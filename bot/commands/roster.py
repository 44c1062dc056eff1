"""Reads ROSTER.toml: athletes for a preview, strictly, with errors that name the athlete."""

from collections.abc import Iterator
from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import Annotated, Any, Literal, Self

from pydantic import BaseModel, ConfigDict, Field, model_validator

from bot.commands.given import Gathering, Mistakes, read_row, table_of, unknown
from core.athletes.values import (
    AfterBirth,
    Equipment,
    Evidence,
    Experience,
    Place,
    Pregnancy,
    Profile,
    Screening,
    Seated,
    Sex,
    Space,
    Today,
)
from core.desk.reference import Catalogue, limits, near_spellings
from core.desk.sessions.preview import Earlier, having_done, read_text
from core.desk.today.different import SORE_PLACES
from core.errors import InputError
from core.measures import MassUnit
from core.scores.values import Score
from core.values import Value

Kg = Annotated[Decimal, Field(gt=0, le=1000)]


class _Thing(Value):
    implement: str
    loads_kg: tuple[Kg, ...] = ()
    each: Annotated[int, Field(ge=1, le=100)] = 1
    from_kg: Kg | None = None
    to_kg: Kg | None = None
    step_kg: Kg | None = None
    height_cm: Annotated[Decimal, Field(gt=0, le=300)] | None = None

    @model_validator(mode="after")
    def _is_one_kind(self) -> Self:
        if self.loads_kg and self.to_kg is not None:
            raise ValueError("either loads_kg or from_kg, to_kg and step_kg")
        if self.to_kg is None and (self.from_kg is not None or self.step_kg is not None):
            raise ValueError("to_kg is missing")
        if self.to_kg is not None and self.from_kg is not None and self.from_kg > self.to_kg:
            raise ValueError("from_kg is above to_kg")
        return self


class _Test(Value):
    movement: str
    variant: str | None = None
    on: date | None = None
    reps: Annotated[float, Field(ge=0, le=10_000)] | None = None
    load_kg: Annotated[Decimal, Field(ge=0, le=1000)] | None = None
    distance_m: Annotated[float, Field(gt=0)] | None = None
    seconds: Annotated[float, Field(gt=0)] | None = None


class _Score(BaseModel):
    """As `read score` prints it; what else stands there is of no account."""

    model_config = ConfigDict(frozen=True, allow_inf_nan=False)

    value: Annotated[float, Field(ge=0)] | None = None
    unit: str = ""
    rounds: Annotated[int, Field(ge=0)] | None = None
    reps: Annotated[int, Field(ge=0)] | None = None
    seconds: Annotated[float, Field(gt=0)] | None = None
    load_kg: Annotated[Decimal, Field(gt=0)] | None = None
    capped: bool = False
    scaled: bool = False


class _Earlier(Value):
    date: date
    session: str
    score: _Score


class _Pregnancy(Value):
    week: Annotated[int, Field(ge=1, le=42)] | None = None
    cleared: bool = False


class _AfterBirth(Value):
    weeks: Annotated[int, Field(ge=0, le=520)] | None = None
    cleared: bool = False


class _Place(Place):
    run_m: Annotated[float, Field(ge=0)] | None = None
    floor_m: Annotated[float, Field(ge=0)] | None = None


class _Athlete(Value):
    name: Annotated[str, Field(min_length=1)]
    body_mass_kg: Annotated[Decimal, Field(ge=20, le=400)] | None = None
    birth_year: Annotated[int, Field(ge=1900, le=2100)] | None = None
    sex: Sex | None = None
    units: MassUnit = MassUnit.KG
    pair: Literal[1, 2] | None = None
    screening: Screening = Screening.CLEAR
    equipment: tuple[_Thing, ...] | None = None
    space: Space = Space()
    limits: tuple[str, ...] = ()
    today: Today = Today()
    experience: Experience | None = None
    skills: tuple[str, ...] = ()
    weeks_off: Annotated[float, Field(ge=0)] | None = None
    pregnancy: _Pregnancy | None = None
    after_birth: _AfterBirth | None = None
    seated: Seated | None = None
    place: _Place | None = None
    tests: tuple[_Test, ...] = ()
    scores: tuple[_Earlier, ...] = ()


def read_roster(path: Path, catalogue: Catalogue) -> list[Profile]:
    """The athletes of a roster file. Raises InputError naming the file, or all that is wrong by athlete."""
    rows = table_of(path, ["athlete"]).get("athlete", [])
    if not isinstance(rows, list) or not rows:
        raise InputError(str(path), "no [[athlete]] in it")
    found, gathering, numbers = [], Gathering(), dict[str, int]()
    for number, row in enumerate(rows, 1):
        place = f"{path}, {_place(number, row)}"
        with gathering.one():
            found.append(_profile(row, place, catalogue))
        with gathering.one():
            _must_be_new(row, number, place, numbers)
    gathering.settle()
    return found


def _must_be_new(row: Any, number: int, place: str, numbers: dict[str, int]) -> None:
    """Two of one name couldn't be told apart by anybody who reads their versions. Raises InputError."""
    name = _name(row).casefold()
    first = numbers.setdefault(name, number)
    if name and first != number:
        raise InputError(place, f"athlete {first} has this name too; add a letter to one of them")


def _name(row: Any) -> str:
    name = row.get("name") if isinstance(row, dict) else None
    return name.strip() if isinstance(name, str) else ""


def _place(number: int, row: Any) -> str:
    return f"athlete {number} ({_name(row)})" if _name(row) else f"athlete {number}"


def _profile(row: Any, place: str, catalogue: Catalogue) -> Profile:
    athlete, found = read_row(row, _Athlete, place)
    found += [InputError(place, name) for name in (_unknown_names(athlete, catalogue) if athlete else ())]
    if athlete is None or found:
        raise Mistakes(found)
    profile = Profile(
        name=athlete.name,
        body_mass_kg=athlete.body_mass_kg,
        birth_year=athlete.birth_year,
        sex=athlete.sex,
        units=athlete.units,
        pair=athlete.pair,
        screening=athlete.screening,
        equipment=None
        if athlete.equipment is None
        else tuple(_owned(one, catalogue) for one in athlete.equipment),
        space=athlete.space,
        limits=athlete.limits,
        evidence=tuple(_evidence(test, catalogue) for test in athlete.tests),
        today=athlete.today,
        experience=athlete.experience,
        skills=tuple(_skill(skill, catalogue) for skill in athlete.skills),
        weeks_off=athlete.weeks_off,
        pregnancy=athlete.pregnancy and Pregnancy.model_validate(athlete.pregnancy.model_dump()),
        after_birth=athlete.after_birth and AfterBirth.model_validate(athlete.after_birth.model_dump()),
        seated=athlete.seated,
        place=athlete.place and Place.model_validate(athlete.place.model_dump()),
    )
    return having_done(profile, [_earlier(one, f"{place}: scores") for one in athlete.scores])


def _earlier(told: _Earlier, place: str) -> Earlier:
    session = read_text(told.session).session
    if session is None:
        raise InputError(place, f"the session of {told.date} isn't understood")
    return Earlier(told.date, session, Score.model_validate(told.score.model_dump()))


def _owned(thing: _Thing, catalogue: Catalogue) -> Equipment:
    named = catalogue.implement_by_name(thing.implement)
    assert named is not None, "unknown names were refused before"
    return Equipment.model_validate(thing.model_dump() | {"implement": named.id})


def _skill(name: str, catalogue: Catalogue) -> str:
    """`movement/variant`: the one that is named, or the movement as it is usually written."""
    named = catalogue.by_name(name)
    assert named is not None, "unknown names were refused before"
    return f"{named.movement.id}/{(named.variant or named.movement.variants[0]).id}"


def _unknown_names(athlete: _Athlete, catalogue: Catalogue) -> Iterator[str]:
    yield from _unknown_bodies(athlete)
    things = [thing.id for thing in catalogue.implements]
    for thing in athlete.equipment or ():
        if catalogue.implement_by_name(thing.implement) is None:
            yield f"{unknown('implement', thing.implement, things)} (`bellwether implements` lists them)"
    for one in (*(test.movement for test in athlete.tests), *athlete.skills):
        if not catalogue.by_name(one):
            near = near_spellings(one)
            yield f"unknown movement {one}" + (f", did you mean {near[0]}?" if near else "")
    for test in athlete.tests:
        yield from _unknown_variant(test, catalogue)


def _unknown_bodies(athlete: _Athlete) -> Iterator[str]:
    spared = [limit.id for limit in limits()]
    for one in athlete.limits:
        if one not in spared:
            yield f"{unknown('limit', one, spared)} (`bellwether limits` lists them)"
    for one in athlete.today.sore:
        if one not in SORE_PLACES:
            yield f"today.sore: {unknown('part', one, SORE_PLACES)} (there are {', '.join(SORE_PLACES)})"


def _unknown_variant(test: _Test, catalogue: Catalogue) -> Iterator[str]:
    named = catalogue.by_name(test.movement)
    variants = [variant.id for variant in named.movement.variants] if named else []
    if test.variant and test.variant not in variants:
        yield unknown(f"variant of {test.movement}", test.variant, variants)


def _evidence(test: _Test, catalogue: Catalogue) -> Evidence:
    named = catalogue.by_name(test.movement)
    assert named is not None, "unknown names were refused before"
    variant = test.variant or (named.variant.id if named.variant else None)
    return Evidence.model_validate({**test.model_dump(), "movement": named.movement.id, "variant": variant})
