"""What a day is made of."""

from collections.abc import Awaitable, Callable
from dataclasses import dataclass
from datetime import datetime

from bot.rehearsal.day.cast import Company


@dataclass(frozen=True, slots=True)
class Scene:
    """A part of the day: it begins `at` that time. `point`: what there is to see in it, in a line.

    `shows`: words said or done in it (`taps [Yes]`) that bear title and point out; the story prints their lines.
    """

    at: datetime
    title: str
    point: str
    play: Callable[[Company], Awaitable[None]]
    shows: tuple[str, ...]
