"""A bot that repeats what it is told, through the whole durable middle: `python -m tests.support.echo`."""

import asyncio
from dataclasses import dataclass

from telegram import Bot

from bot.bootstrap import build, run_until_signalled
from bot.conduct import Conduct
from bot.delivery.bells import Bells
from bot.delivery.clock import Clock
from bot.settings import read_settings
from core.store.records import Due, InboxItem, NewLetter, Purpose
from core.store.unit import Store, Unit


@dataclass(frozen=True, slots=True)
class Echo:
    store: Store
    clock: Clock

    async def handle(self, item: InboxItem) -> None:
        async with self.store.unit() as unit:
            if "text" in item.body.get("message", {}):
                await self._answer(unit, item)
            await unit.inbox.done(item.id)

    async def ignore(self, item: InboxItem) -> None:
        pass

    async def carry_out(self, due: Due) -> None:
        async with self.store.unit() as unit:
            await unit.dues.done(due.id, self.clock.now())

    async def _answer(self, unit: Unit, item: InboxItem) -> None:
        message, now = item.body["message"], self.clock.now()
        chat = await unit.chats.group_chat(message["chat"]["id"])
        letter = NewLetter(
            chat_id=chat.id,
            purpose=Purpose.ANSWER,
            method="send_message",
            payload={"text": message["text"]},
            key=f"update:{item.update_id}",
        )
        await unit.outbox.add([letter], now)


def echo_conduct(_bot: Bot, store: Store, clock: Clock, _bells: Bells) -> Conduct:
    echo = Echo(store, clock)
    return Conduct(echo.handle, echo.ignore, echo.carry_out)


if __name__ == "__main__":
    asyncio.run(run_until_signalled(build(read_settings(), echo_conduct)))
