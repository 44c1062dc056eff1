"""What an athlete asks."""

from typing import Literal

from core.understanding.acts.values import Act


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


class IsItOk(Act):
    """Whether something is all right, safe or too much for them."""

    act: Literal["is_it_ok"] = "is_it_ok"


class AnotherTime(Act):
    """Whether they may train at another hour or on another day than it was posted for."""

    act: Literal["another_time"] = "another_time"


class DoesLess(Act):
    """Whether all of it must be done: every set, every round, every day."""

    act: Literal["does_less"] = "does_less"


class Help(Act):
    act: Literal["help"] = "help"


Asked = (
    MyVersion | HowLong | HowToPace | HowTo | HowHeavy | Swap | MyHistory | MyProgress | Board | WhenIsClass | ClassLink
    | Why | MyData | IsItOk | AnotherTime | DoesLess | Help
)  # fmt: skip
