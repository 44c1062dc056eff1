"""What Bellwether does with what happens."""

from telegram import Bot

from bot.conduct import Conduct
from bot.delivery.bells import Bells
from bot.delivery.clock import Clock
from bot.telegram.dispatch import Dispatch
from bot.telegram.dues import DueDesk
from bot.telegram.letters import Writer
from bot.telegram.patience import Patience
from bot.telegram.seals import Seal
from bot.telegram.standing import Standings
from bot.telegram.use_cases import COMMANDS
from core.desk.post_office import Store


def make_conduct(
    bot: Bot,
    store: Store,
    clock: Clock,
    bells: Bells,
    patience: Patience | None = None,
    owner: int | None = None,
) -> Conduct:
    """Make it for a bot that knows its own name.

    Without `patience` everybody may send as much as they like; `owner` (a user id) hears of what was parked.
    """
    writer = Writer(bot.username, Seal(store.press_key))
    standings = Standings(store, clock, bot)
    limited = patience or Patience(limited=False)
    dispatch = Dispatch(store, clock, bot, bells, writer, standings, limited, owner)
    desk = DueDesk(store, clock, bells, writer, standings)
    commands = [{"command": name, "description": about} for name, (_, about) in COMMANDS.items()]
    return Conduct(dispatch.handle, dispatch.parked, desk.carry_out, [{"commands": commands}])
