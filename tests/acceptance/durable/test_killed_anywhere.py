"""The first promise: whatever is killed when, nothing said is lost, nothing is said twice without need."""

from collections import Counter

import pytest

from tests.acceptance.mortal import (
    MOMENTS,
    assert_every_letter_went_out,
    assert_every_update_was_kept,
    assert_only_what_was_on_its_way_was_repeated,
)
from tests.acceptance.people import SESSION, start_link
from tests.support.durable import eventually

PATIENCE_S = 40


async def hears(listener, fragment):
    return await listener.hears(fragment, within=PATIENCE_S)


class Exchange:
    """The main job from set-up to scoreboard, in steps."""

    def __init__(self, room):
        self.room = room

    async def is_set_up(self, kills):
        self.coach = await self.room.person("Marit")
        self.ilse = await self.room.person("Ilse")
        self.group = await self.room.group("Harbour crew", admins=[self.coach], members=[self.ilse])
        await kills.next()
        await self.coach.adds_bot(self.group)
        await hears(self.group, "Hello Harbour crew")
        await self._tap(kills, self.coach, "Start with me", "Which clock")
        await self._tap(kills, self.coach, "Berlin", "kg or lb")
        await self._tap(kills, self.coach, "Kilograms", "All set")

    async def ilse_joins(self, kills):
        await kills.next()
        await self.ilse.opens(await start_link(self.group))
        await hears(self.ilse, "May I keep these notes?")
        await self._tap(kills, self.ilse, "Yes, keep them", "18 or older")
        await self._tap(kills, self.ilse, "Yes", "lately had any of these")
        for answer, then in (("No", "Has a doctor ever"), ("No", "last three months"), ("Yes", "good to go")):
            await self._tap(None, self.ilse, answer, then)

    async def a_session_is_posted(self, kills):
        await kills.next()
        await self.coach.says(SESSION)
        await hears(self.coach, "Here's how I read it")
        await self._tap(kills, self.coach, "Post now", "Posted to Harbour crew")
        await hears(self.group, "Tap for your own version")

    async def ilse_gets_her_version(self, kills):
        await kills.next()
        await self.ilse.presses("My version")
        for _ in range(20):
            message = await hears(self.ilse, "")
            if "Your version" in message.text:
                return
            await self._answers(message)
        raise AssertionError("no version after twenty messages")

    async def ilse_reports_her_score(self, kills):
        await kills.next()
        await self.ilse.says("7+12")
        await hears(self.ilse, "7 rounds + 12")
        await hears(self.group, "Scoreboard")

    async def _answers(self, message):
        if "What do you have" in message.text:
            await self.ilse.says("a 10 kg dumbbell and a chair")
        elif "What do you weigh" in message.text:
            await self.ilse.says("62")
        elif message.all_buttons:
            await self.ilse.presses(message.all_buttons[0].label, on=message)

    async def _tap(self, kills, person, label, then):
        if kills is not None:
            await kills.next()
        await person.presses(label)
        await hears(person, then)


class Kills:
    """Arms one moment after the other, each once the one before has come."""

    def __init__(self, mortal, moments):
        self._mortal = mortal
        self._left = list(moments)
        self._armed = 0

    async def all_came(self):
        await eventually(lambda: self._mortal.kills == self._armed, PATIENCE_S)

    async def next(self):
        await self.all_came()
        if self._left:
            self._mortal.arm(self._left.pop(0))
            self._armed += 1


@pytest.mark.timeout(400)
async def test_killed_at_ten_moments_it_loses_nothing_and_repeats_only_what_was_on_its_way(
    mortal, running_room
):
    exchange = Exchange(running_room)
    kills = Kills(mortal, MOMENTS)
    await exchange.is_set_up(kills)
    await exchange.ilse_joins(kills)
    await exchange.a_session_is_posted(kills)
    await exchange.ilse_gets_her_version(kills)
    await exchange.ilse_reports_her_score(kills)

    await kills.all_came()
    assert mortal.kills == len(MOMENTS) == 10
    tables = mortal.tables
    await eventually(lambda: set(tables.states("outbox")).isdisjoint({"waiting", "leased"}), PATIENCE_S)
    await eventually(lambda: set(tables.states("inbox")) == {"done"}, PATIENCE_S)
    assert await running_room.waiting_updates() == 0
    assert_every_update_was_kept(tables)
    assert_every_letter_went_out(tables)
    assert_only_what_was_on_its_way_was_repeated(tables, mortal.leased)
    assert await repeated(exchange) <= len(mortal.leased)


async def repeated(exchange):
    """How many of the bot's messages say what another one of the same chat says."""
    chats = [await chat.messages for chat in (exchange.coach, exchange.ilse, exchange.group)]
    texts = Counter((one.chat, one.html) for chat in chats for one in chat if one.from_bot)
    return sum(number - 1 for number in texts.values())
