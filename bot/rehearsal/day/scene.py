"""What a day is made of."""

from collections.abc import Awaitable, Callable
from dataclasses import dataclass
from datetime import datetime
from typing import NamedTuple

from bot.rehearsal.day.cast import Company


class Through(NamedTuple):
    """All that one message says from the line with the first words through the line with the last."""

    first: str
    last: str


Shows = str | Through


@dataclass(frozen=True, slots=True)
class Scene:
    """A part of the day: it begins `at` that time. `point`: what there is to see in it, in a line.

    `shows`: words said or done in it (`taps [Yes]`) that bear title and point out; the story prints their lines.
    `for_coaches`: one of those that a coach in a hurry reads.
    """

    at: datetime
    title: str
    point: str
    play: Callable[[Company], Awaitable[None]]
    shows: tuple[Shows, ...]
    for_coaches: bool = False
