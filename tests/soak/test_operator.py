"""What whoever runs the bot meets: each trouble is one clear sentence on standard error, and nothing is lost."""

import sqlite3
from contextlib import closing

import pytest

from tests.soak.operated import PATIENCE_S, Bot, assert_one_sentence


@pytest.fixture
def bot(address, tmp_path):
    return Bot(address, tmp_path)


async def test_one_process_at_a_time_and_copies_while_it_runs(bot, remote_room, tmp_path):
    await remote_room.lets_time_run()
    ilse = await remote_room.person("Ilse")
    copy = tmp_path / "copy.db"
    async with bot.serving():
        await ilse.opens(await remote_room.start_link())
        await ilse.hears("Hello", within=PATIENCE_S)

        assert_one_sentence(await bot.run("serve"), "another process (number")
        assert (await bot.run("backup", str(copy)))[0] == 0
        assert_one_sentence(await bot.run("backup", str(copy)), "already")
        assert_one_sentence(await bot.run("restore", str(copy)), "another process")
        assert "sound" in (await bot.run("check"))[1]

        await ilse.says("/help")
        await ilse.hears("Hello", within=PATIENCE_S)
    with closing(sqlite3.connect(copy)) as connection, connection:
        connection.execute(
            "UPDATE outbox SET state = 'waiting'"
        )  # as if it had been made in the middle of it
    before = len(await ilse.messages)

    code, told, _ = await bot.run("restore", str(copy))

    assert (code, "kept as" in told) == (0, True)
    assert "sound" in (await bot.run("check", str(bot.database)))[1]
    async with bot.serving():
        await ilse.says("/help")
        await ilse.hears("Hello", within=PATIENCE_S)
    assert len(await ilse.messages) == before + 2
    assert set(bot.tables.states("outbox")) == {"dropped", "sent"}


async def test_a_wrong_token_is_named_and_not_shown(bot):
    ending = await bot.run("serve", BELLWETHER_TOKEN="123:wrong")

    assert_one_sentence(ending, "BELLWETHER_TOKEN")
    assert "123:wrong" not in ending[2]


async def test_the_unit_file_names_this_folder(bot):
    code, told, _ = await bot.run("unit")

    assert code == 0
    assert f"WorkingDirectory={bot.folder}" in told
    assert "RestartPreventExitStatus=2" in told
