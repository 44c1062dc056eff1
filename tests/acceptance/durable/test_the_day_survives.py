"""The demo's whole day over the real process, with ten kills thrown in: nothing is lost."""

import asyncio

import pytest

from bot.rehearsal.day import EVE, play
from tests.acceptance.mortal import (
    MOMENTS,
    assert_every_letter_went_out,
    assert_every_update_was_kept,
    assert_only_what_was_on_its_way_was_repeated,
)
from tests.support.durable import eventually

PATIENCE_S = 90
# Long enough for the new process to be in the middle of the day's work.
BETWEEN_KILLS_S = 0.5


async def kill_ten_times(mortal):
    """One moment after the other; what was on its way at a kill is settled before the next.

    The same letter lost twice in a row is not sent a third time (`core.store.policy`), and so another promise.
    """
    for number, moment in enumerate(MOMENTS, 1):
        await asyncio.sleep(BETWEEN_KILLS_S)
        mortal.arm(moment)
        await eventually(lambda number=number: mortal.ends == number, PATIENCE_S)
        await eventually(lambda: mortal.leased.isdisjoint(still_to_go(mortal)), PATIENCE_S)


def still_to_go(mortal):
    return mortal.tables.column("SELECT id FROM outbox WHERE state IN ('waiting', 'leased')")


@pytest.mark.timeout(900)
async def test_the_whole_day_goes_on_through_ten_kills(mortal, running_room):
    await running_room.travels_to(EVE)
    killing = asyncio.create_task(kill_ten_times(mortal))
    await play(running_room)
    await asyncio.wait_for(killing, PATIENCE_S)

    tables = mortal.tables
    assert mortal.kills == 10
    await eventually(lambda: set(tables.states("outbox")).isdisjoint({"waiting", "leased"}), PATIENCE_S)
    await eventually(lambda: set(tables.states("inbox")) == {"done"}, PATIENCE_S)
    assert_every_update_was_kept(tables)
    assert_every_letter_went_out(tables)
    assert_only_what_was_on_its_way_was_repeated(tables, mortal.leased)
