import asyncio
from datetime import timedelta

import pytest
import pytest_asyncio

from bot.delivery.budget import NO_LIMIT, PLATFORM, Budget
from bot.delivery.sender import Sender
from bot.rehearsal import errors
from core.store.records import Purpose
from tests.support.durable import eventually


async def texts(person):
    return [message.text for message in await person.messages if message.from_bot]


def outcomes(tables):
    return tables.column("SELECT outcome FROM attempt ORDER BY id")


class SetBack:
    """A clock that somebody set wrong; its seconds go on as before."""

    def __init__(self, clock, by):
        self._clock, self._by = clock, by
        self.monotonic, self.sleep_to = clock.monotonic, clock.sleep_to

    def now(self):
        return self._clock.now() + self._by

    async def sleep_until(self, moment):
        await self._clock.sleep_until(moment - self._by)


async def test_a_letter_is_sent_and_keeps_its_message_id(running, post, ilse, tables):
    await post.letter(ilse.id, "hello")
    await running.sender()
    message = await ilse.hears("hello")
    await eventually(lambda: tables.states("outbox") == ["sent"])
    assert tables.column("SELECT message_id FROM outbox") == [message.message_id]


async def test_letters_of_a_chat_arrive_in_order(running, post, ilse, tables):
    for number in range(3):
        await post.letter(ilse.id, f"letter {number}")
    await running.sender()
    await eventually(lambda: tables.states("outbox") == ["sent"] * 3)
    assert await texts(ilse) == ["letter 0", "letter 1", "letter 2"]


async def test_a_letter_added_later_wakes_the_sender(running, post, ilse):
    await running.sender()
    await asyncio.sleep(0.05)
    await post.letter(ilse.id, "late")
    await ilse.hears("late")


async def test_a_letter_waits_for_its_moment(running, post, ilse, room, platform):
    moment = platform.clock.now() + timedelta(hours=3)
    await running.sender()
    await post.letter(ilse.id, "class in ten minutes", due_at=moment, purpose=Purpose.REMINDER)
    await ilse.hears_nothing(0.1)
    await room.travels_to(moment)
    await ilse.hears("class in ten minutes")


async def test_an_edit_rewrites_the_message_of_its_original(running, post, ilse, tables):
    board = await post.letter(ilse.id, "1. Ilse", purpose=Purpose.BOARD)
    edit = {"method": "edit_message_text", "edits_id": board, "purpose": Purpose.BOARD}
    await post.letter(ilse.id, "1. Tomas", **edit)
    await running.sender()
    await eventually(lambda: tables.states("outbox") == ["sent", "sent"])
    assert await texts(ilse) == ["1. Tomas"]


async def test_an_edit_that_changes_nothing_counts_as_sent(running, post, ilse, tables):
    board = await post.letter(ilse.id, "1. Ilse", purpose=Purpose.BOARD)
    edit = {"method": "edit_message_text", "edits_id": board, "purpose": Purpose.BOARD}
    await post.letter(ilse.id, "1. Ilse", **edit)
    await running.sender()
    await eventually(lambda: tables.states("outbox") == ["sent", "sent"])


@pytest.mark.parametrize("seeming", ["connect error", "connect timeout", "pool timeout"])
async def test_what_surely_was_not_sent_is_sent_again(seeming, running, room, post, ilse, tables):
    await room.faults.lose_request("sendMessage", seeming=seeming)
    await post.letter(ilse.id, "hello", purpose=Purpose.BULK)
    await running.sender()
    await eventually(lambda: outcomes(tables) == ["not_sent"])
    await room.travels(timedelta(seconds=1.1))
    await ilse.hears("hello")
    await eventually(lambda: outcomes(tables) == ["not_sent", "sent"])
    assert await texts(ilse) == ["hello"]


async def test_without_a_connection_nobody_else_is_tried_in_vain(running, room, post, ilse, tomas, tables):
    await room.faults.lose_request("sendMessage", times=1, seeming="connect error")
    await post.letter(ilse.id, "to Ilse")
    await running.sender()
    await eventually(lambda: outcomes(tables) == ["not_sent"])
    await post.letter(tomas.id, "to Tomas")
    await tomas.hears_nothing(0.1)
    await room.travels(timedelta(seconds=1.1))
    await tomas.hears("to Tomas")
    await ilse.hears("to Ilse")


async def in_time(room, condition):
    """Let time go by until `condition()` is true."""
    for _ in range(400):
        if condition():
            return
        await room.travels(timedelta(seconds=0.5))
        await asyncio.sleep(0.03)
    raise AssertionError("it never happened")


@pytest.mark.parametrize("purpose", [one for one in Purpose if one is not Purpose.BULK])
async def test_a_letter_of_unknown_fate_is_sent_until_an_answer_comes(
    purpose, running, room, post, ilse, tables
):
    await room.faults.lose_answer("sendMessage", times=3)
    await post.letter(ilse.id, "hello", purpose=purpose)
    await running.sender()
    await eventually(lambda: outcomes(tables) == ["unknown"])
    await in_time(room, lambda: tables.states("outbox") == ["sent"])
    assert outcomes(tables) == ["unknown", "unknown", "unknown", "sent"]
    assert await texts(ilse) == ["hello"] * 4


async def test_what_the_platform_failed_at_is_sent_again_and_arrives_once(running, room, post, ilse, tables):
    await room.faults.decline("sendMessage", errors.Declined(502, "Bad Gateway"), times=4)
    await post.letter(ilse.id, "hello", purpose=Purpose.BULK)
    await running.sender()
    await eventually(lambda: outcomes(tables) == ["not_taken"])
    await in_time(room, lambda: tables.states("outbox") == ["sent"])
    assert await texts(ilse) == ["hello"]


async def test_an_outage_of_ten_seconds_loses_nothing(running, room, post, platform, tables, monkeypatch):
    crew = [await room.person(f"Athlete {number}") for number in range(6)]
    for person in crew:
        await person.opens(await room.start_link())
        await post.letter(person.id)
    call = platform.call
    back_at = platform.clock.now() + timedelta(seconds=10)

    async def away(token, method, params):
        if platform.clock.now() < back_at:
            raise errors.Declined(502, "Bad Gateway")
        return await call(token, method, params)

    monkeypatch.setattr(platform, "call", away)
    await running.sender()
    await in_time(room, lambda: tables.states("outbox") == ["sent"] * 6)
    assert platform.clock.now() >= back_at


async def test_letters_that_hang_hold_nobody_else_up(
    running, room, post, platform, ilse, tables, monkeypatch
):
    stuck = [await room.person(f"Athlete {number}") for number in range(4)]
    for person in stuck:
        await person.opens(await room.start_link())
        await post.letter(person.id)
    hanging, call, never = {person.id for person in stuck}, platform.call, asyncio.Event()

    async def hang(token, method, params):
        if params.get("chat_id") in hanging:
            await never.wait()
        return await call(token, method, params)

    monkeypatch.setattr(platform, "call", hang)
    sender = await running.sender()
    await eventually(lambda: tables.states("outbox") == ["leased"] * 4)
    await post.letter(ilse.id, "good morning")
    await in_time(room, lambda: tables.states("outbox")[-1] == "sent")
    await ilse.hears("good morning")
    never.set()
    await running.stop(sender)
    assert tables.states("outbox") == ["sent"] * 5


async def test_what_hung_through_a_silence_is_sent_again_as_soon_as_it_is_over(
    running, room, post, platform, ilse, tomas, tables, monkeypatch
):
    call, never, silent = platform.call, asyncio.Event(), [True]

    async def hang(token, method, params):
        if silent[0]:
            await never.wait()
        return await call(token, method, params)

    monkeypatch.setattr(platform, "call", hang)
    await post.letter(ilse.id, "to Ilse")
    await running.sender()
    await eventually(lambda: tables.states("outbox") == ["leased"])
    for _ in range(10):
        await room.travels(timedelta(seconds=0.5))
        await asyncio.sleep(0.03)
    silent[0] = False
    await post.letter(tomas.id, "to Tomas")
    await in_time(room, lambda: tables.states("outbox") == ["sent", "sent"])
    assert await texts(ilse) == ["to Ilse"]
    assert outcomes(tables)[0] == "unknown"


async def test_after_a_restart_the_limits_still_count_what_was_sent_before(running, room, post, ilse, tables):
    await room.faults.enforce_rates()
    for number in range(3):
        await post.letter(ilse.id, f"letter {number}")
    first = await running.sender()
    await eventually(lambda: tables.states("outbox") == ["sent"] * 3)
    await ilse.hears("letter 2")
    await running.stop(first)
    await post.letter(ilse.id, "one more")
    await running.sender()
    await ilse.hears_nothing(0.1)
    await room.travels(timedelta(seconds=3.1))
    await ilse.hears("one more")
    await eventually(lambda: outcomes(tables) == ["sent"] * 4)


async def test_after_a_restart_the_silence_that_the_platform_asked_for_still_counts(
    running, room, post, ilse, tables
):
    await room.faults.decline("sendMessage", errors.too_many_requests(20))
    await post.letter(ilse.id, "hello")
    first = await running.sender()
    await eventually(lambda: outcomes(tables) == ["not_sent"])
    await running.stop(first)
    await running.sender()
    await room.travels(timedelta(seconds=19))
    await ilse.hears_nothing(0.1)
    await room.travels(timedelta(seconds=1.1))
    await ilse.hears("hello")


async def test_a_clock_that_was_set_back_holds_no_letter_up(bot, store, bells, post, ilse, tables, platform):
    await post.letter(ilse.id, "hello")
    clock = SetBack(platform.clock, timedelta(hours=-2))
    sender = Sender(bot, store, clock, bells, Budget(PLATFORM))
    running = asyncio.create_task(sender.run())
    await ilse.hears("hello")
    sender.stop()
    await running


async def test_bulk_of_unknown_fate_is_not_sent_twice(running, room, post, ilse, tables):
    await room.faults.lose_answer("sendMessage")
    await post.letter(ilse.id, "news", purpose=Purpose.BULK)
    await running.sender()
    await eventually(lambda: tables.states("outbox") == ["unknown"])
    await room.travels(timedelta(hours=1))
    await asyncio.sleep(0.1)
    assert await texts(ilse) == ["news"]


async def test_an_edit_of_unknown_fate_is_sent_until_it_is_known(running, room, post, ilse, tables):
    board = await post.letter(ilse.id, "1. Ilse", purpose=Purpose.BOARD)
    edit = {"method": "edit_message_text", "edits_id": board, "purpose": Purpose.BULK}
    await room.faults.lose_request("editMessageText", times=3, seeming="read timeout")
    await post.letter(ilse.id, "1. Tomas", **edit)
    await running.sender()
    for tries in (2, 3, 4):
        await eventually(lambda tries=tries: len(outcomes(tables)) == tries and None not in outcomes(tables))
        await room.travels(timedelta(seconds=60))
    await eventually(lambda: tables.states("outbox") == ["sent", "sent"])


async def a_board(running, post, group, text="1. Ilse"):
    """The board's letter, and the message that it became."""
    board = await post.letter(group.id, text, purpose=Purpose.BOARD)
    await running.sender(NO_LIMIT)
    return board, await group.hears(text)


def change_of(board):
    return {"method": "edit_message_text", "edits_id": board, "purpose": Purpose.BOARD}


@pytest_asyncio.fixture
async def birds(room, ilse):
    group = await room.group("Early birds", admins=[ilse])
    await ilse.adds_bot(group, as_admin=True)
    return group


async def test_a_board_that_somebody_deleted_is_sent_anew_and_kept_up(running, post, ilse, birds, bells):
    board, message = await a_board(running, post, birds)
    await ilse.deletes(message)
    await post.letter(birds.id, "1. Tomas", **change_of(board))
    anew = await birds.hears("1. Tomas")
    await post.letter(birds.id, "1. Piet", **change_of(board))
    assert (await birds.hears("1. Piet")).message_id == anew.message_id != message.message_id


async def test_a_pinned_board_is_pinned_again(running, post, ilse, birds, store, tables):
    board, message = await a_board(running, post, birds)
    await eventually(lambda: tables.states("outbox") == ["sent"])
    async with store.unit() as unit:
        chat = await unit.chats.by_address(birds.id)
        await unit.outbox.mark_pinned(chat.id, message.message_id)
    await ilse.deletes(message)
    await post.letter(birds.id, "1. Tomas", **change_of(board))
    anew = await birds.hears("1. Tomas")
    await eventually(lambda: tables.states("outbox") == ["sent"] * 3)
    assert await birds.pinned == [anew.message_id]


async def test_after_a_move_the_board_is_sent_anew_and_no_other_message_is_touched(
    running, room, post, ilse, birds
):
    board, _ = await a_board(running, post, birds)
    await birds.becomes_supergroup(by=ilse)
    await post.letter(birds.id, "something else")
    first = await birds.hears("something else")
    await post.letter(birds.id, "1. Tomas", **change_of(board))
    await birds.hears("1. Tomas")
    assert (await birds.messages)[first.message_id - 1].text == "something else"
    await post.letter(birds.id, "1. Piet", **change_of(board))
    await birds.hears("1. Piet")
    assert [one.text for one in await birds.messages if one.text.startswith("1. ")] == ["1. Piet"]


async def test_too_many_requests_stop_only_their_own_chat(running, room, post, ilse, tomas, tables):
    await room.faults.decline("sendMessage", errors.too_many_requests(7), to=ilse)
    await post.letter(ilse.id, "to Ilse")
    await running.sender()
    await eventually(lambda: outcomes(tables) == ["not_sent"])
    await post.letter(ilse.id, "to Ilse, second")
    await post.letter(tomas.id, "to Tomas")
    await tomas.hears("to Tomas")
    await room.travels(timedelta(seconds=6.9))
    await ilse.hears_nothing(0.1)
    await room.travels(timedelta(seconds=0.2))
    await ilse.hears("to Ilse, second")
    assert await texts(ilse) == ["to Ilse", "to Ilse, second"]


async def test_who_blocked_the_bot_is_not_written_to_again(running, post, ilse, tables):
    await ilse.blocks_bot()
    await post.letter(ilse.id, "hello")
    await running.sender()
    await eventually(lambda: tables.states("outbox") == ["refused"])
    assert tables.column("SELECT reachable FROM chat") == [0]


async def test_a_chat_that_does_not_exist_is_unreachable(running, post, tables):
    await post.letter(987654, "hello")
    await running.sender()
    await eventually(lambda: tables.states("outbox") == ["refused"])
    assert tables.column("SELECT reachable FROM chat") == [0]


async def test_a_group_that_moved_gets_its_letter_at_its_new_address(running, room, post, ilse, tables):
    group = await room.group("Early birds", admins=[ilse])
    await ilse.adds_bot(group)
    old_address = group.id
    await post.letter(old_address, "hello")
    await group.becomes_supergroup(by=ilse)
    await running.sender()
    await group.hears("hello")
    await eventually(lambda: tables.states("outbox") == ["sent"])
    assert tables.column("SELECT address FROM chat") == [group.id]


async def test_a_rejected_letter_is_kept_with_its_reason(running, post, ilse, tables, caplog):
    await post.letter(ilse.id, "x" * 5000)
    await post.letter(ilse.id, "the next one")
    await running.sender()
    await ilse.hears("the next one")
    await eventually(lambda: tables.states("outbox") == ["refused", "sent"])
    assert "too long" in tables.column("SELECT detail FROM attempt")[0]
    assert "was rejected" in caplog.text


async def test_an_answer_to_a_press_that_is_too_old_is_dropped(running, post, ilse, tables):
    press = {"callback_query_id": "404"}
    tap = {"method": "answer_callback_query", "payload": press, "purpose": Purpose.TAP}
    await post.letter(ilse.id, **tap)
    await running.sender()
    await eventually(lambda: tables.states("outbox") == ["dropped"])


async def test_at_most_four_letters_are_on_their_way(running, room, post, platform, tables, monkeypatch):
    crew = [await room.person(f"Athlete {number}") for number in range(6)]
    for person in crew:
        await person.opens(await room.start_link())
        await post.letter(person.id)
    gate, at_once = asyncio.Event(), []
    call = platform.call

    async def slow(token, method, params):
        at_once.append(method)
        await gate.wait()
        return await call(token, method, params)

    monkeypatch.setattr(platform, "call", slow)
    await running.sender()
    await eventually(lambda: len(at_once) == 4)
    await asyncio.sleep(0.1)
    assert tables.states("outbox").count("leased") == len(at_once) == 4
    gate.set()
    await room.travels(timedelta(seconds=1))
    await eventually(lambda: tables.states("outbox") == ["sent"] * 6)


async def test_the_budget_holds_letters_back_until_it_allows_them(running, room, post, ilse, tables):
    await room.faults.enforce_rates()
    for number in range(7):
        await post.letter(ilse.id, f"letter {number}")
    await running.sender()
    for sent in (3, 6, 7):
        await eventually(lambda sent=sent: tables.states("outbox").count("sent") == sent)
        await room.travels(timedelta(seconds=3.02))
    assert set(outcomes(tables)) == {"sent"}


async def test_answers_go_before_bulk(running, room, post, platform, tables):
    order = []
    platform.on_call.append(lambda call: order.append(call.params["text"]))
    crew = [await room.person(f"Athlete {number}") for number in range(6)]
    for person in crew:
        await person.opens(await room.start_link())
    for person in crew[:-1]:
        await post.letter(person.id, "news", purpose=Purpose.BULK)
    await post.letter(crew[-1].id, "your answer")
    await running.sender()
    await eventually(lambda: "sent" in tables.states("outbox"))
    assert order[0] == "your answer"


async def test_after_a_kill_what_was_on_its_way_is_sent_once_more(
    running, room, post, platform, ilse, tables, monkeypatch
):
    call, never = platform.call, asyncio.Event()

    async def answer_never(token, method, params):
        await call(token, method, params)
        await never.wait()

    monkeypatch.setattr(platform, "call", answer_never)
    await post.letter(ilse.id, "hello")
    dying = await running.sender()
    await ilse.hears("hello")
    await running.kill(dying)
    assert tables.states("outbox") == ["leased"]
    monkeypatch.setattr(platform, "call", call)
    await running.sender()
    await eventually(lambda: tables.states("outbox") == ["sent"])
    assert outcomes(tables) == ["unknown", "sent"]


async def test_stopping_waits_for_what_is_on_its_way(running, post, platform, ilse, tables, monkeypatch):
    gate, call = asyncio.Event(), platform.call

    async def slow(token, method, params):
        await gate.wait()
        return await call(token, method, params)

    monkeypatch.setattr(platform, "call", slow)
    await post.letter(ilse.id, "hello")
    sender = await running.sender()
    await eventually(lambda: tables.states("outbox") == ["leased"])
    await post.letter(ilse.id, "another")
    stopping = asyncio.create_task(running.stop(sender))
    await asyncio.sleep(0.05)
    gate.set()
    await stopping
    assert tables.states("outbox") == ["sent", "waiting"]
