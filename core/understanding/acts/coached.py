"""What a coach tells and asks, and what everybody says."""

from typing import Annotated, Literal

from pydantic import Field

from core.understanding.acts.values import WEEK_MIN, Act


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
    minutes: Annotated[int, Field(ge=0, le=WEEK_MIN)] | None = None
    link: str | None = None


class ClassChange(Act):
    act: Literal["class_change"] = "class_change"
    day: str | None = None
    to: str | None = None


class ClassOff(Act):
    act: Literal["class_off"] = "class_off"
    day: str | None = None


# What becomes of a line, or of all of them: it is left out, something else, easier, harder, with empty hands, as it is
# written, so many fewer, fewer, half of it, so many or so heavy; or other rounds, or they rest; or it is theirs again.
Step = Literal[
    "out",
    "other",
    "easier",
    "harder",
    "bare",
    "written",
    "fewer",
    "less",
    "allowed",
    "half",
    "amount",
    "load",
    "at_most",
    "more",
    "number",
    "rounds",
    "spare",
    "normal",
    "rest",
    "away",
    "back",
]


class Order(Act):
    """`movement`: the one that goes, `to` the one that comes, `way` how it is done if that is said (its variant).

    `called`: how it was named, where the session has it under a name of its own.
    `limit`: what of many lines goes, as `bellwether limits` lists it.
    `amount`: repetitions, metres, seconds or kilograms, in place of `instead_of` where a number is told for a number.
    `until`: a day or `always`. No `step`: what is ordered isn't clear.
    """

    act: Literal["order"] = "order"
    person: str
    step: Step | None = None
    movement: str | None = None
    to: str | None = None
    way: str | None = None
    limit: str | None = None
    called: str | None = None
    amount: float | None = None
    instead_of: float | None = None
    day: str | None = None
    until: str | None = None


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


class WhatsComing(Act):
    """What is to be posted, and when."""

    act: Literal["whats_coming"] = "whats_coming"
    day: str | None = None


class Newcomer(Act):
    """Somebody joins them: the coach tells of it, or asks how that is done."""

    act: Literal["newcomer"] = "newcomer"


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


Coached = (
    TellsSession | Edit | Post | Withdraw | TellsClass | ClassChange | ClassOff | Order | NoteFault | EasyWeek
    | Announce | Teach | Event | WhoReported | HowIs | WhoNeedsMe | WhatIf | WhatsComing
    | Roster | Newcomer
)  # fmt: skip
Said = Thanks | Greeting | SmallTalk
