"""What an athlete tells."""

from decimal import Decimal
from typing import Annotated, Literal

from pydantic import Field

from core.athletes.values import Equipment, Experience, SetName
from core.understanding.acts.values import WEEK_MIN, Act, Result, Side, Stop


class Has(Act):
    act: Literal["has"] = "has"
    equipment: tuple[Equipment, ...]
    until: str | None = None
    place: SetName | None = None


class HasNothing(Act):
    act: Literal["has_nothing"] = "has_nothing"


class Got(Act):
    act: Literal["got"] = "got"
    equipment: tuple[Equipment, ...]


class Lost(Act):
    act: Literal["lost"] = "lost"
    equipment: tuple[Equipment, ...]


class Shares(Act):
    act: Literal["shares"] = "shares"
    equipment: tuple[Equipment, ...] = ()
    person: str | None = None


class Spares(Act):
    act: Literal["spares"] = "spares"
    limits: tuple[str, ...]
    side: Side | None = None
    until: str | None = None


class WellAgain(Act):
    act: Literal["well_again"] = "well_again"
    limits: tuple[str, ...] = ()


class Sign(Act):
    """`person`: whose it is, where a coach tells of somebody."""

    act: Literal["sign"] = "sign"
    sign: Stop
    person: str | None = None


class Condition(Act):
    act: Literal["condition"] = "condition"
    limits: tuple[str, ...]


class Weighs(Act):
    act: Literal["weighs"] = "weighs"
    body_mass_kg: Decimal


class Can(Act):
    act: Literal["can"] = "can"
    movement: str | None = None
    reps: int | None = None
    load_kg: Decimal | None = None
    distance_m: float | None = None
    seconds: float | None = None


class Scored(Act):
    act: Literal["scored"] = "scored"
    score: Result
    day: str | None = None
    person: str | None = None


class Corrects(Act):
    act: Literal["corrects"] = "corrects"
    score: Result


class Effort(Act):
    act: Literal["effort"] = "effort"
    value: Annotated[float, Field(ge=0, le=10)]


class Hurt(Act):
    act: Literal["hurt"] = "hurt"
    limits: tuple[str, ...] = ()
    side: Side | None = None


class NothingHurt(Act):
    act: Literal["nothing_hurt"] = "nothing_hurt"


class Sore(Act):
    act: Literal["sore"] = "sore"
    where: str | None = None


class HasMinutes(Act):
    act: Literal["has_minutes"] = "has_minutes"
    minutes: Annotated[int, Field(ge=0, le=WEEK_MIN)] | None = None


class Sick(Act):
    act: Literal["sick"] = "sick"


class Well(Act):
    act: Literal["well"] = "well"


class Elsewhere(Act):
    act: Literal["elsewhere"] = "elsewhere"
    place: str | None = None
    until: str | None = None
    equipment: tuple[Equipment, ...] | None = None


class HomeAgain(Act):
    act: Literal["home_again"] = "home_again"


class BackAfter(Act):
    act: Literal["back_after"] = "back_after"
    days: int | None = None


class Trains(Act):
    """How used to training they say they are."""

    act: Literal["trains"] = "trains"
    level: Experience


class WantsEasy(Act):
    act: Literal["wants_easy"] = "wants_easy"


class TooHard(Act):
    act: Literal["too_hard"] = "too_hard"
    movement: str | None = None


class TooEasy(Act):
    act: Literal["too_easy"] = "too_easy"
    movement: str | None = None


class DidAsWritten(Act):
    act: Literal["did_as_written"] = "did_as_written"


class DidScaled(Act):
    act: Literal["did_scaled"] = "did_scaled"


class Worries(Act):
    """They are nervous, or think that they aren't good enough for it."""

    act: Literal["worries"] = "worries"


class Agrees(Act):
    act: Literal["agrees"] = "agrees"


class Declines(Act):
    act: Literal["declines"] = "declines"


class Skips(Act):
    act: Literal["skips"] = "skips"
    day: str | None = None


Told = (
    Has | HasNothing | Got | Lost | Shares | Spares | WellAgain | Sign | Condition | Weighs | Can | Scored | Corrects
    | Effort | Hurt | NothingHurt | Sore | HasMinutes | Sick | Well | Elsewhere | HomeAgain | BackAfter | Trains
    | WantsEasy | TooHard | TooEasy | Worries | DidAsWritten | DidScaled | Agrees | Declines | Skips
)  # fmt: skip
