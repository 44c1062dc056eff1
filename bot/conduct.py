"""What a bot does with what happens, as a port: the loops carry it out whatever it is."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any

from telegram import Bot

from bot.delivery.bells import Bells
from bot.delivery.clock import Clock
from bot.delivery.dues import CarryOut
from bot.telegram.lanes import Handler
from core.desk.post_office import Store


@dataclass(frozen=True, slots=True)
class Conduct:
    """`commands`: parameters of `set_my_commands`, one call each."""

    handle: Handler
    on_parked: Handler
    carry_out: CarryOut
    commands: Sequence[dict[str, Any]] = ()


MakeConduct = Callable[[Bot, Store, Clock, Bells], Conduct]
"""Called once the bot knows its own name."""
