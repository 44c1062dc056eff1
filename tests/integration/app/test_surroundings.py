"""A database that can't be used is named in one sentence; one process at a time holds it."""

import sqlite3
from contextlib import closing
from datetime import UTC, datetime, timedelta

import pytest

from bot.bootstrap import build
from bot.rehearsal.platform import TOKEN
from bot.settings import Settings
from core.errors import Trouble
from core.store.copies import back_up, look_through, restore
from core.store.lock import alone_on
from core.store.migrate import migrate
from core.store.records import NewLetter, Purpose
from core.store.unit import Store
from tests.support.durable import Tables
from tests.support.echo import echo_conduct
from tests.support.in_process import InProcessRequest

NOW = datetime(2026, 3, 3, 12, tzinfo=UTC)


@pytest.fixture
def path(tmp_path):
    return tmp_path / "bellwether.db"


@pytest.fixture
def app(path, platform):
    settings = Settings(_env_file=None, token=TOKEN, api_url="http://rehearsal.invalid", database=str(path))
    return build(settings, echo_conduct, clock=platform.clock, request=InProcessRequest(platform))


def _text(path):
    path.write_text("a shopping list\n" * 500)


def _empty(path):
    path.write_bytes(b"")


def _folder(path):
    path.unlink()
    path.mkdir()


def _cut(path):
    content = path.read_bytes()
    path.write_bytes(content[: len(content) // 3 // 4096 * 4096])


def _broken_beginning(path):
    path.write_bytes(b"\xff" * 64 + path.read_bytes()[64:])


def _newer(path):
    with closing(sqlite3.connect(path)) as connection, connection:
        connection.execute("UPDATE alembic_version SET version_num = '9999'")


@pytest.mark.parametrize(
    ("break_it", "words"),
    [
        (_text, "is no database"),
        (_empty, "the file is empty"),
        (_folder, "a folder"),
        (_broken_beginning, "is no database"),
        (_cut, "damaged"),
        (_newer, "newer than this program"),
    ],
)
async def test_a_database_that_can_not_be_used_is_named(path, app, break_it, words):
    await migrate(path)
    break_it(path)

    with pytest.raises(Trouble, match=words):
        await app.run()


async def test_a_folder_that_is_not_there_is_named(tmp_path, platform):
    database = str(tmp_path / "nowhere" / "b.db")
    settings = Settings(_env_file=None, token=TOKEN, api_url="http://rehearsal.invalid", database=database)

    with pytest.raises(Trouble, match="there is no folder"):
        await build(settings, echo_conduct, clock=platform.clock, request=InProcessRequest(platform)).run()


async def test_a_second_process_is_told_and_the_lock_ends_with_its_holder(path, app):
    with alone_on(path), pytest.raises(Trouble, match="another process"):
        await app.run()

    with alone_on(path):
        pass


async def test_a_database_that_somebody_else_holds_ends_the_process(path, app, monkeypatch):
    monkeypatch.setattr("core.store.sqlite.BUSY_TIMEOUT_S", 0.1)
    monkeypatch.setattr("core.store.sqlite._PRAGMAS", ("journal_mode=WAL", "busy_timeout=100"))
    await migrate(path)
    with closing(sqlite3.connect(path, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        with pytest.raises(Trouble, match="holding it"):
            await app.run()


async def some(store, now=NOW):
    """Somebody's words that are not handled yet, a letter that waits, and a due that has passed."""
    async with store.unit() as unit:
        await unit.inbox.store([(1, 5, {"message": {"text": "7+12"}})], now)
        chat = await unit.chats.group_chat(-5)
        letter = NewLetter(
            chat_id=chat.id, purpose=Purpose.ANSWER, method="send_message", payload={"text": "hi"}, key="k"
        )
        await unit.outbox.add([letter], now)
        await unit.dues.add("past", "none", now - timedelta(hours=1), {})
        await unit.dues.add("coming", "none", now + timedelta(hours=1), {})


async def test_a_copy_is_whole_and_comes_back_without_old_letters(path, tmp_path):
    await migrate(path)
    copy = tmp_path / "copy.db"
    async with Store(path) as store:
        await some(store)
        found = back_up(path, copy)
    assert (found.findings, found.counts["updates waiting"]) == ((), 1)
    assert copy.stat().st_mode & 0o077 == 0

    done = restore(path, copy, NOW)

    assert (done.letters_dropped, done.dues_dropped) == (1, 1)
    assert Tables(path).states("outbox") == ["dropped"]
    assert Tables(path).rows("SELECT key, state FROM due ORDER BY id") == [
        ("past", "dropped"),
        ("coming", "waiting"),
    ]
    assert Tables(path).states("inbox") == ["waiting"]
    assert done.kept is not None
    assert look_through(done.kept).findings == look_through(path).findings == ()


async def test_a_copy_is_never_written_over_anything(path, tmp_path):
    await migrate(path)
    (tmp_path / "there").write_text("mine")

    with pytest.raises(Trouble, match="already"):
        back_up(path, tmp_path / "there")
    assert (tmp_path / "there").read_text() == "mine"


async def test_no_damaged_copy_is_brought_back(path, tmp_path):
    await migrate(path)
    copy = tmp_path / "copy.db"
    back_up(path, copy)
    content = bytearray(copy.read_bytes())
    content[8192:12288] = b"\xaa" * 4096
    copy.write_bytes(content)

    with pytest.raises(Trouble, match="no good copy"):
        restore(path, copy, NOW)
    assert look_through(path).findings == ()


async def test_nothing_is_restored_under_a_running_bot(path, tmp_path):
    await migrate(path)
    back_up(path, tmp_path / "copy.db")

    with alone_on(path), pytest.raises(Trouble, match="another process"):
        restore(path, tmp_path / "copy.db", NOW)
