"""What is sent next: order within a chat, priority between chats, what is dropped."""

from core.store.outbox import AT_ONCE
from core.store.policy import PATIENCE
from core.store.records import ChatKind, LetterState, Outcome, Purpose, Settled
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
    ids = await add(store, letter("one", private.id), letter("two", private.id))
    await lease(store)
    await settle(store, "one", Outcome.NOT_SENT)
    assert await lease(store, resting=[ids["one"]]) == []
    assert await lease(store) == ["one"]


async def test_a_letter_that_failed_too_often_holds_its_chat_up_no_longer(store, private):
    ids = await add(store, letter("cursed", private.id), letter("next", private.id))
    for _ in range(PATIENCE):
        assert await lease(store) == ["cursed"]
        await settle(store, "cursed", Outcome.NOT_TAKEN)
    assert await lease(store, resting=[ids["cursed"]]) == ["next"]


async def test_a_clock_that_was_set_back_holds_up_nothing_that_is_to_be_sent_at_once(store, private):
    await add(store, letter("answer", private.id))
    await add(store, letter("later one", private.id), now=NOW - minutes(120))
    assert await lease(store, now=NOW - minutes(120)) == ["answer"]


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


async def test_a_mark_on_a_post_that_never_arrived_is_dropped(store, group_chat):
    ids = await add(store, letter("post", group_chat.id, purpose=Purpose.POST))
    await add(store, edit("withdrawn", group_chat.id, of=ids["post"], purpose=Purpose.POST))
    await lease(store)
    await settle(store, "post", Outcome.REFUSED)
    assert await lease(store) == []
    assert (await look(store, "withdrawn")).state is LetterState.DROPPED


async def leased_method(store):
    async with store.unit() as unit:
        [one] = await unit.outbox.lease(NOW, 4, NOW + minutes(1))
    return one.method, one.edits_message_id


async def a_board(store, chat_id):
    """A sent board, and an edit of it that waits."""
    ids = await add(store, letter("board", chat_id, purpose=Purpose.BOARD))
    await lease(store)
    await settle(store, "board", Outcome.SENT, message_id=7)
    await add(store, edit("edit", chat_id, of=ids["board"], purpose=Purpose.BOARD))
    return ids["board"]


async def test_a_board_that_never_arrived_is_sent_with_its_next_change(store, group_chat):
    ids = await add(store, letter("board", group_chat.id, purpose=Purpose.BOARD))
    await add(store, edit("edit", group_chat.id, of=ids["board"], purpose=Purpose.BOARD))
    await lease(store)
    await settle(store, "board", Outcome.REFUSED)
    assert await leased_method(store) == ("send_message", None)


async def test_a_board_that_is_gone_is_sent_anew_and_remembered(store, group_chat):
    board = await a_board(store, group_chat.id)
    await lease(store)
    await settle(store, "edit", Outcome.GONE)
    assert (await leased_method(store))[0] == "send_message"
    await settle(store, "edit", Outcome.SENT, message_id=20)
    assert (await look(store, "board")).message_id == 20
    await add(store, edit("edit 2", group_chat.id, of=board, purpose=Purpose.BOARD))
    assert await leased_method(store) == ("edit_message_text", 20)


async def test_a_mark_on_a_post_that_is_gone_is_dropped(store, group_chat):
    ids = await add(store, letter("post", group_chat.id, purpose=Purpose.POST))
    await lease(store)
    await settle(store, "post", Outcome.SENT, message_id=7)
    await add(store, edit("withdrawn", group_chat.id, of=ids["post"], purpose=Purpose.POST))
    await lease(store)
    await settle(store, "withdrawn", Outcome.GONE)
    assert (await look(store, "withdrawn")).state is LetterState.DROPPED


async def test_after_a_move_no_message_of_the_old_address_is_edited(store, group_chat):
    board = await a_board(store, group_chat.id)
    async with store.unit() as unit:
        await unit.chats.move(-5000, -1005000)
    assert await leased_method(store) == ("send_message", None)
    await settle(store, "edit", Outcome.SENT, message_id=2)
    await add(store, edit("edit 2", group_chat.id, of=board, purpose=Purpose.BOARD))
    assert await leased_method(store) == ("edit_message_text", 2)


async def test_a_number_from_before_the_move_names_no_message_after_it(store, group_chat):
    await a_board(store, group_chat.id)
    async with store.unit() as unit:
        assert (await unit.outbox.by_message(group_chat.id, 7)).key == "board"
        await unit.chats.move(-5000, -1005000)
        assert await unit.outbox.by_message(group_chat.id, 7) is None


async def test_where_a_pinned_message_was_sent_anew_the_pin_is_to_follow(store, group_chat):
    board = await a_board(store, group_chat.id)
    async with store.unit() as unit:
        await unit.outbox.mark_pinned(group_chat.id, 7)
        await unit.outbox.mark_pinned(group_chat.id, 8)
    await lease(store)
    await settle(store, "edit", Outcome.GONE)
    await lease(store)
    edit_id = (await look(store, "edit")).id
    arrived = Settled(letter_id=edit_id, outcome=Outcome.SENT, message_id=20, address=-5000)
    async with store.unit() as unit:
        assert (await unit.outbox.settle([arrived], NOW)).to_pin == {board}


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
        assert await unit.outbox.next_due_at() == AT_ONCE
        assert await unit.outbox.next_due_at(after=NOW) == NOW + minutes(9)
