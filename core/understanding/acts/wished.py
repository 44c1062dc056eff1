"""What an athlete wishes."""

from typing import Annotated, Literal

from pydantic import Field

from core.measures import MassUnit
from core.understanding.acts.values import WEEK_MIN, Act


class JoinsClass(Act):
    act: Literal["joins_class"] = "joins_class"
    day: str | None = None


class LeavesClass(Act):
    act: Literal["leaves_class"] = "leaves_class"
    day: str | None = None


class Remind(Act):
    act: Literal["remind"] = "remind"
    minutes_before: Annotated[int, Field(ge=0, le=WEEK_MIN)] | None = None


class NoReminders(Act):
    act: Literal["no_reminders"] = "no_reminders"
    day: str | None = None


class Quiet(Act):
    """`since`, `to`: clock times as `22:00`; JSON calls the first `from`."""

    act: Literal["quiet"] = "quiet"
    since: str | None = Field(default=None, serialization_alias="from")
    to: str | None = None


class Zone(Act):
    act: Literal["zone"] = "zone"
    place: str


class Units(Act):
    act: Literal["units"] = "units"
    units: MassUnit


class ToCoach(Act):
    act: Literal["to_coach"] = "to_coach"


class ForgetMe(Act):
    act: Literal["forget_me"] = "forget_me"


class ExportMe(Act):
    act: Literal["export_me"] = "export_me"


class WantsTimer(Act):
    act: Literal["wants_timer"] = "wants_timer"


Wished = (
    JoinsClass | LeavesClass | Remind | NoReminders | Quiet | Zone | Units | ToCoach | ForgetMe | ExportMe
    | WantsTimer
)  # fmt: skip
