"""Everything that can be told, asked or wished in a message: a closed union of frozen values."""

from decimal import Decimal
from typing import Annotated, Any, Final, Literal, get_args

from pydantic import Field

from core.athletes.values import Equipment, SetName
from core.measures import MassUnit
from core.values import Value

Stop = Literal["chest", "breath", "faint", "heart", "swelling", "calves"]
Side = Literal["left", "right"]


class Result(Value):
    """A score as it was told: of each kind only what was said. `unfinished`: they stopped early."""

    rounds: int | None = None
    reps: int | None = None
    seconds: float | None = None
    load_kg: Decimal | None = None
    distance_m: float | None = None
    calories: int | None = None
    unfinished: bool = False


# Nothing that is told in minutes is longer than a week.
_WEEK_MIN = 7 * 24 * 60


class Act(Value):
    """`text`: the words it was read from. Days are as they were said, in plain words; people by their names."""

    text: str = ""


# An athlete tells.


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
    minutes: Annotated[int, Field(ge=0, le=_WEEK_MIN)] | None = None


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


class Agrees(Act):
    act: Literal["agrees"] = "agrees"


class Declines(Act):
    act: Literal["declines"] = "declines"


class Skips(Act):
    act: Literal["skips"] = "skips"
    day: str | None = None


# An athlete asks.


class MyVersion(Act):
    act: Literal["my_version"] = "my_version"


class HowLong(Act):
    """A coach may ask it of one person."""

    act: Literal["how_long"] = "how_long"
    person: str | None = None


class HowToPace(Act):
    act: Literal["how_to_pace"] = "how_to_pace"


class HowTo(Act):
    act: Literal["how_to"] = "how_to"
    movement: str | None = None
    term: str | None = None


class HowHeavy(Act):
    act: Literal["how_heavy"] = "how_heavy"
    movement: str | None = None


class Swap(Act):
    act: Literal["swap"] = "swap"
    movement: str | None = None
    to: str | None = None


class MyHistory(Act):
    act: Literal["my_history"] = "my_history"
    movement: str | None = None


class MyProgress(Act):
    act: Literal["my_progress"] = "my_progress"


class Board(Act):
    act: Literal["board"] = "board"
    day: str | None = None


class WhenIsClass(Act):
    act: Literal["when_is_class"] = "when_is_class"
    day: str | None = None


class ClassLink(Act):
    act: Literal["class_link"] = "class_link"


class Why(Act):
    act: Literal["why"] = "why"
    movement: str | None = None


class MyData(Act):
    act: Literal["my_data"] = "my_data"


class Help(Act):
    act: Literal["help"] = "help"


# An athlete wishes.


class JoinsClass(Act):
    act: Literal["joins_class"] = "joins_class"
    day: str | None = None


class LeavesClass(Act):
    act: Literal["leaves_class"] = "leaves_class"
    day: str | None = None


class Remind(Act):
    act: Literal["remind"] = "remind"
    minutes_before: Annotated[int, Field(ge=0, le=_WEEK_MIN)] | None = None


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


# A coach tells and asks; what everybody says.


class TellsSession(Act):
    act: Literal["session"] = "session"


class Edit(Act):
    act: Literal["edit"] = "edit"


class Post(Act):
    act: Literal["post"] = "post"
    when: str | None = None


class Withdraw(Act):
    act: Literal["withdraw"] = "withdraw"
    what: str | None = None


class TellsClass(Act):
    act: Literal["class"] = "class"
    rule: str | None = None
    time: str | None = None
    minutes: Annotated[int, Field(ge=0, le=_WEEK_MIN)] | None = None
    link: str | None = None


class ClassChange(Act):
    act: Literal["class_change"] = "class_change"
    day: str | None = None
    to: str | None = None


class ClassOff(Act):
    act: Literal["class_off"] = "class_off"
    day: str | None = None


class Order(Act):
    act: Literal["order"] = "order"
    person: str


class NoteFault(Act):
    act: Literal["note_fault"] = "note_fault"
    person: str
    movement: str | None = None


class EasyWeek(Act):
    act: Literal["easy_week"] = "easy_week"
    person: str | None = None


class Announce(Act):
    act: Literal["announce"] = "announce"


class Teach(Act):
    act: Literal["teach"] = "teach"
    movement: str | None = None


class Event(Act):
    act: Literal["event"] = "event"
    day: str | None = None


class WhoReported(Act):
    act: Literal["who_reported"] = "who_reported"
    day: str | None = None


class HowIs(Act):
    act: Literal["how_is"] = "how_is"
    person: str


class WhoNeedsMe(Act):
    act: Literal["who_needs_me"] = "who_needs_me"


class WhatIf(Act):
    act: Literal["what_if"] = "what_if"
    change: str


class Roster(Act):
    act: Literal["roster"] = "roster"


class Thanks(Act):
    act: Literal["thanks"] = "thanks"


class Greeting(Act):
    act: Literal["greeting"] = "greeting"


class SmallTalk(Act):
    act: Literal["small_talk"] = "small_talk"


Told = (
    Has | HasNothing | Got | Lost | Shares | Spares | WellAgain | Sign | Condition | Weighs | Can | Scored | Corrects
    | Effort | Hurt | NothingHurt | Sore | HasMinutes | Sick | Well | Elsewhere | HomeAgain | BackAfter | WantsEasy
    | TooHard | TooEasy | DidAsWritten | DidScaled | Agrees | Declines | Skips
)  # fmt: skip
Asked = (
    MyVersion | HowLong | HowToPace | HowTo | HowHeavy | Swap | MyHistory | MyProgress | Board | WhenIsClass | ClassLink
    | Why | MyData | Help
)  # fmt: skip
Wished = (
    JoinsClass | LeavesClass | Remind | NoReminders | Quiet | Zone | Units | ToCoach | ForgetMe | ExportMe
)
Coached = (
    TellsSession | Edit | Post | Withdraw | TellsClass | ClassChange | ClassOff | Order | NoteFault | EasyWeek
    | Announce | Teach | Event | WhoReported | HowIs | WhoNeedsMe | WhatIf | Roster
)  # fmt: skip
Said = Thanks | Greeting | SmallTalk
AnyAct = Told | Asked | Wished | Coached | Said

# By the name that stands in JSON and in the examples.
ACTS: Final[dict[str, type[Act]]] = {
    cls.model_fields["act"].default: cls
    for kind in (Told, Asked, Wished, Coached, Said)
    for cls in get_args(kind)
}
_BOTH: Final = frozenset({"scored", "sign", "how_long", "board", "thanks", "greeting", "small_talk"})
OF_COACH: Final = frozenset(cls.model_fields["act"].default for cls in get_args(Coached)) | _BOTH
OF_ATHLETE: Final = frozenset(ACTS) - OF_COACH | _BOTH


def document(act: AnyAct) -> dict[str, Any]:
    """The JSON form: what isn't known is left out."""
    fields = act.model_dump(by_alias=True, exclude_none=True, exclude_defaults=True)
    return {"act": act.act} | {name: value for name, value in fields.items() if value not in ((), [])}
