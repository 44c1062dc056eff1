"""What was given up can be looked at, and tried anew, from the command line."""

import asyncio
import json
import sqlite3
from contextlib import closing
from datetime import UTC, datetime

import pytest

from bot import cli
from core.store.migrate import migrate
from core.store.records import NewLetter, Outcome, Purpose, Settled
from core.store.unit import Store

NOW = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
UPDATE = {"update_id": 7, "message": {"text": "my knee hurts", "chat": {"id": 42}}}


async def give_up(place):
    """An update that couldn't be handled, and a letter that nobody took."""
    await migrate(place)
    async with Store(place) as store, store.unit() as unit:
        await unit.inbox.store([(7, 42, UPDATE)], NOW)
        [item] = await unit.inbox.next(1)
        await unit.inbox.begin([item.id])
        await unit.inbox.failed(item.id, "KeyError: 'text'", park=True)
        chat = await unit.chats.group_chat(-5)
        letter = NewLetter(
            chat_id=chat.id, purpose=Purpose.POST, method="send_message", payload={"text": "hello"}, key="a"
        )
        ids = await unit.outbox.add([letter], NOW)
        await unit.outbox.lease(NOW, 1, NOW)
        await unit.outbox.settle(
            [Settled(letter_id=ids["a"], outcome=Outcome.REFUSED, detail="BadRequest: CHAT_RESTRICTED")], NOW
        )


@pytest.fixture
def place(tmp_path):
    found = tmp_path / "bot.db"
    asyncio.run(give_up(found))
    return str(found)


def run(*arguments):
    with pytest.raises(SystemExit) as ended:
        cli.main(arguments)
    return ended.value.code


def test_what_was_given_up_is_listed_with_its_reason_and_without_what_people_said(place, capsys):
    assert run("parked", "--database", place) == 0
    printed = capsys.readouterr().out
    assert "update-1: message of 2026-03-02 07:30 UTC in chat 42: KeyError: 'text'" in printed
    assert "letter-1: post of 2026-03-02 07:30 UTC to chat -5: BadRequest: CHAT_RESTRICTED" in printed
    assert "knee" not in printed


def test_for_programs_it_is_listed_whole(place, capsys):
    run("parked", "--json", "--database", place)
    found = json.loads(capsys.readouterr().out)
    assert found["updates"][0]["body"] == UPDATE
    assert found["letters"][0]["why"] == "BadRequest: CHAT_RESTRICTED"


def test_one_of_them_is_tried_anew(place, capsys):
    assert run("replay", "update-1", "--database", place) == 0
    run("parked", "--database", place)
    printed = capsys.readouterr().out
    assert "Trying anew: update-1." in printed
    assert "letter-1" in printed
    assert "update-1:" not in printed


def test_all_of_them_are_tried_anew(place, capsys):
    assert run("replay", "--all", "--database", place) == 0
    run("parked", "--database", place)
    printed = capsys.readouterr().out
    assert "Trying anew: update-1, letter-1." in printed
    assert "Nothing was given up." in printed


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        ((), "name what to try anew"),
        (("letter-1", "--all"), "name what to try anew"),
        (("letter-x",), "should be like update-7"),
        (("letter-77",), "is not among what was given up"),
    ],
)
def test_what_cannot_be_tried_anew_is_said_kindly(arguments, words, place, capsys):
    assert run("replay", *arguments, "--database", place) == 2
    assert words in capsys.readouterr().err


def test_a_database_that_is_not_there_is_not_made(tmp_path, capsys):
    place = tmp_path / "nothing.db"
    assert run("parked", "--database", str(place)) == 1
    assert "there is no such file" in capsys.readouterr().err
    assert not place.exists()


@pytest.mark.parametrize("command", [("parked",), ("replay", "--all")])
def test_tables_of_another_time_are_named_and_left_alone(command, place, capsys):
    for number, words in (("0001", "older than this program"), ("9999", "newer than this program")):
        with closing(sqlite3.connect(place)) as connection, connection:
            connection.execute("UPDATE alembic_version SET version_num = ?", (number,))

        assert run(*command, "--database", place) == 1

        complaint = capsys.readouterr().err
        assert words in complaint
        assert len(complaint.strip().splitlines()) == 1


def test_a_file_that_is_no_database_is_named(tmp_path, capsys):
    place = tmp_path / "list.txt"
    place.write_text("milk, bread and more")

    assert run("parked", "--database", str(place)) == 1
    assert "no database" in capsys.readouterr().err
