"""What Bellwether does with what happens."""

from telegram import Bot

from bot.conduct import Conduct
from bot.delivery.bells import Bells
from bot.delivery.clock import Clock
from bot.telegram.dispatch import Dispatch
from bot.telegram.dues import DueDesk
from bot.telegram.letters import Writer
from bot.telegram.standing import Standings
from bot.telegram.use_cases import COMMANDS
from core.desk.post_office import Store


def make_conduct(bot: Bot, store: Store, clock: Clock, bells: Bells) -> Conduct:
    """Make it for a bot that knows its own name."""
    writer = Writer(bot.username)
    standings = Standings(store, clock, bot)
    dispatch = Dispatch(store, clock, bot, bells, writer, standings)
    desk = DueDesk(store, clock, bells, writer, standings)
    commands = [{"command": name, "description": about} for name, (_, about) in COMMANDS.items()]
    return Conduct(dispatch.handle, dispatch.parked, desk.carry_out, [{"commands": commands}])
