"""What is sent next: order within a chat, priority between chats, what is dropped."""

from core.store.records import ChatKind, LetterState, Outcome, Purpose
from tests.integration.store.builders import NOW, add, edit, lease, letter, look, minutes, settle


async def test_a_letter_is_leased_with_all_that_sending_needs(store, group_chat):
    await add(store, letter("hello", group_chat.id, refs={"session": 4}))
    async with store.unit() as unit:
        [one] = await unit.outbox.lease(NOW, 4, NOW + minutes(1))
    assert (one.address, one.chat_kind) == (-5000, ChatKind.GROUP)
    assert (one.payload, one.refs) == ({"text": "hello"}, {"session": 4})
    assert (one.state, one.tries) == (LetterState.LEASED, 1)


async def test_a_known_key_is_left_alone(store, private):
    first = await add(store, letter("hello", private.id))
    assert await add(store, letter("hello", private.id, payload={"text": "other"})) == {}
    kept = await look(store, "hello")
    assert (kept.id, kept.payload) == (first["hello"], {"text": "hello"})


async def test_a_letter_that_is_leased_is_not_leased_twice(store, private):
    await add(store, letter("hello", private.id))
    assert await lease(store) == ["hello"]
    assert await lease(store) == []


async def test_a_chat_gets_its_letters_one_after_the_other(store, private):
    await add(store, letter("one", private.id), letter("two", private.id))
    assert await lease(store) == ["one"]
    await settle(store, "one", Outcome.SENT, message_id=1)
    assert await lease(store) == ["two"]


async def test_a_more_urgent_letter_does_not_overtake_within_its_chat(store, private):
    await add(store, letter("news", private.id, purpose=Purpose.BULK), letter("answer", private.id))
    assert await lease(store) == ["news"]


async def test_between_chats_answers_go_before_bulk(store, private, group_chat):
    await add(store, letter("news", group_chat.id, purpose=Purpose.BULK), letter("answer", private.id))
    assert await lease(store, limit=1) == ["answer"]


async def test_a_letter_put_back_keeps_its_place(store, private):
    await add(store, letter("one", private.id), letter("two", private.id))
    await lease(store)
    await settle(store, "one", Outcome.NOT_SENT, again_at=NOW + minutes(5))
    assert await lease(store, now=NOW + minutes(1)) == []
    assert await lease(store, now=NOW + minutes(5)) == ["one"]


async def test_a_letter_of_tomorrow_holds_nothing_up(store, private):
    await add(store, letter("tomorrow", private.id, due_at=NOW + minutes(1440)), letter("now", private.id))
    assert await lease(store) == ["now"]


async def test_a_blocked_chat_waits_and_others_do_not(store, private, group_chat):
    await add(store, letter("private", private.id), letter("group", group_chat.id))
    assert await lease(store, blocked=[private.id]) == ["group"]


async def test_a_letter_that_comes_too_late_is_dropped(store, private):
    await add(store, letter("stretch", private.id, expires_at=NOW + minutes(10)), letter("next", private.id))
    assert await lease(store, now=NOW + minutes(10)) == ["next"]
    assert (await look(store, "stretch")).state is LetterState.DROPPED


async def test_the_newest_state_takes_the_place_of_what_still_waits(store, group_chat):
    await add(store, letter("board 1", group_chat.id, subject="board:4"), letter("other", group_chat.id))
    await add(store, letter("board 2", group_chat.id, subject="board:4"))
    assert (await look(store, "board 1")).state is LetterState.DROPPED
    assert await lease(store) == ["other"]


async def test_a_repeated_letter_replaces_nothing(store, group_chat):
    await add(store, letter("board 1", group_chat.id, subject="board:4"))
    await add(store, letter("board 2", group_chat.id, subject="board:4"))
    await add(store, letter("board 1", group_chat.id, subject="board:4"))
    assert await lease(store) == ["board 2"]


async def test_what_is_on_its_way_is_not_replaced(store, group_chat):
    await add(store, letter("board 1", group_chat.id, subject="board:4"))
    await lease(store)
    await add(store, letter("board 2", group_chat.id, subject="board:4"))
    assert (await look(store, "board 1")).state is LetterState.LEASED


async def test_an_edit_never_replaces_the_letter_that_it_edits(store, group_chat):
    ids = await add(store, letter("board", group_chat.id, subject="board:4"))
    await add(store, edit("edit 1", group_chat.id, of=ids["board"], subject="board:4"))
    await add(store, edit("edit 2", group_chat.id, of=ids["board"], subject="board:4"))
    assert await lease(store) == ["board"]
    await settle(store, "board", Outcome.SENT, message_id=77)
    assert await lease(store) == ["edit 2"]
    assert (await look(store, "edit 2")).edits_message_id == 77


async def test_an_edit_of_a_letter_that_never_arrived_is_dropped(store, group_chat):
    ids = await add(store, letter("board", group_chat.id))
    await add(store, edit("edit", group_chat.id, of=ids["board"]))
    await lease(store)
    await settle(store, "board", Outcome.REFUSED)
    assert await lease(store) == []
    assert (await look(store, "edit")).state is LetterState.DROPPED


async def test_a_chat_that_moved_is_written_to_at_its_new_address(store, group_chat):
    await add(store, letter("hello", group_chat.id))
    async with store.unit() as unit:
        await unit.chats.move(-5000, -1005000)
        [one] = await unit.outbox.lease(NOW, 4, NOW + minutes(1))
    assert one.address == -1005000


async def test_the_next_due_moment_is_known(store, private):
    async with store.reading() as unit:
        assert await unit.outbox.next_due_at() is None
    await add(store, letter("one", private.id), letter("later", private.id, due_at=NOW + minutes(9)))
    async with store.reading() as unit:
        assert await unit.outbox.next_due_at() == NOW
        assert await unit.outbox.next_due_at(after=NOW) == NOW + minutes(9)
