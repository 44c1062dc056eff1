"""What goes into understanding a message, and what comes out."""

from typing import Literal

from core.measures import MassUnit
from core.sessions.values import Session
from core.understanding.acts import AnyAct
from core.values import Value

# What may be asked before a message: data of the choice; "" where nothing is open.
OpenQuestion = Literal[
    "", "equipment", "limits", "weight", "ability", "pain", "effort", "consent", "screening", "score", "zone"
]


class Message(Value):
    """What was written, and by whom."""

    text: str
    role: Literal["athlete", "coach"] = "athlete"


class Context(Value):
    """What a message is read against. `people`: the names of the group; None where nobody knows them.

    `as_told`: what it only asks or supposes is so, by their yes.
    """

    question: OpenQuestion = ""
    session: Session | None = None
    people: tuple[str, ...] | None = None
    units: MassUnit = MassUnit.KG
    asked_movement: str | None = None
    as_told: bool = False


class Understood(Value):
    """What was told, in its order.

    `supposed`: what would be told if it weren't only asked or supposed; `asks`: nothing of it is told.
    `unread`: words that carry meaning and belong to no act; `between`: what doubtful words may be, by the names of
    acts: one short question settles it.
    """

    acts: tuple[AnyAct, ...] = ()
    supposed: tuple[AnyAct, ...] = ()
    asks: bool = False
    unread: tuple[str, ...] = ()
    between: tuple[str, ...] = ()
    language: str = "en"
