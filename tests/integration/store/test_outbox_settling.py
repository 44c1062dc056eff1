"""What became of a letter, and what is done when nobody knows."""

import pytest
from sqlalchemy import select

from core.store import tables
from core.store.records import LetterState, Outcome, Purpose, Settled
from tests.integration.store.builders import NOW, add, edit, lease, letter, look, minutes, settle

AGAIN = [one for one in Purpose if one is not Purpose.BULK]


async def attempts_of(store, key):
    found = await look(store, key)
    async with store.engine.connect() as connection:
        attempt = tables.attempt
        rows = await connection.execute(
            select(attempt.c.outcome, attempt.c.detail)
            .where(attempt.c.outbox_id == found.id)
            .order_by(attempt.c.number)
        )
        return [tuple(row) for row in rows]


async def test_a_sent_letter_is_found_by_its_message(store, private):
    await add(store, letter("hello", private.id, refs={"session": 4}))
    await lease(store)
    await settle(store, "hello", Outcome.SENT, message_id=55)
    async with store.reading() as unit:
        found = await unit.outbox.by_message(private.id, 55)
        assert await unit.outbox.by_message(private.id, 56) is None
    assert found.state is LetterState.SENT
    assert found.refs == {"session": 4}


async def test_a_refused_letter_is_never_tried_again(store, private):
    await add(store, letter("hello", private.id))
    await lease(store)
    await settle(store, "hello", Outcome.REFUSED, detail="Forbidden: bot was blocked by the user")
    assert await lease(store, now=NOW + minutes(60)) == []
    assert await attempts_of(store, "hello") == [("refused", "Forbidden: bot was blocked by the user")]


async def test_every_try_is_kept(store, private):
    await add(store, letter("hello", private.id))
    await lease(store)
    await settle(store, "hello", Outcome.NOT_SENT, detail="ConnectError")
    await lease(store)
    await settle(store, "hello", Outcome.SENT, message_id=1)
    assert await attempts_of(store, "hello") == [("not_sent", "ConnectError"), ("sent", None)]


@pytest.mark.parametrize("purpose", AGAIN)
@pytest.mark.parametrize("outcome", [Outcome.UNKNOWN, Outcome.NOT_TAKEN])
async def test_a_letter_that_may_not_have_arrived_is_sent_until_an_answer_comes(
    store, private, purpose, outcome
):
    await add(store, letter("hello", private.id, purpose=purpose))
    for _ in range(5):
        assert await lease(store) == ["hello"]
        await settle(store, "hello", outcome)
    assert (await look(store, "hello")).resends == 5


async def test_what_failed_for_a_day_is_given_up_and_kept(store, private):
    await add(store, letter("hello", private.id))
    await lease(store)
    await settle(store, "hello", Outcome.UNKNOWN, now=NOW + minutes(24 * 60))
    assert await lease(store) == ["hello"]
    await settle(store, "hello", Outcome.NOT_TAKEN, now=NOW + minutes(24 * 60 + 1), detail="Bad Gateway")
    kept = await look(store, "hello")
    assert (kept.state, kept.payload) == (LetterState.UNKNOWN, {"text": "hello"})
    async with store.unit() as unit:
        [given_up] = await unit.undelivered.all()
        assert (given_up.id, given_up.why) == (kept.id, "Bad Gateway")
        assert await unit.undelivered.replay([kept.id + 1]) == []
        assert await unit.undelivered.replay([kept.id]) == [kept.id]
        assert await unit.undelivered.all() == []
    assert await lease(store, now=NOW + minutes(24 * 60 + 1)) == ["hello"]


async def test_without_a_connection_nothing_is_ever_given_up(store, private):
    await add(store, letter("hello", private.id))
    await lease(store)
    await settle(store, "hello", Outcome.NOT_SENT, now=NOW + minutes(3 * 24 * 60))
    assert await lease(store, now=NOW + minutes(3 * 24 * 60)) == ["hello"]


async def test_bulk_with_an_unknown_end_is_never_repeated(store, private):
    await add(store, letter("news", private.id, purpose=Purpose.BULK))
    await lease(store)
    await settle(store, "news", Outcome.UNKNOWN)
    assert await lease(store) == []
    assert (await look(store, "news")).state is LetterState.UNKNOWN


async def test_bulk_that_was_not_taken_goes_again(store, private):
    await add(store, letter("news", private.id, purpose=Purpose.BULK))
    await lease(store)
    await settle(store, "news", Outcome.NOT_TAKEN)
    assert await lease(store) == ["news"]


async def test_an_edit_with_an_unknown_end_is_repeated_until_it_is_known(store, group_chat):
    ids = await add(store, letter("board", group_chat.id))
    await lease(store)
    await settle(store, "board", Outcome.SENT, message_id=7)
    await add(store, edit("edit", group_chat.id, of=ids["board"], purpose=Purpose.BULK))
    for _ in range(3):
        assert await lease(store) == ["edit"]
        await settle(store, "edit", Outcome.UNKNOWN)


async def test_a_lease_that_ran_out_counts_as_unknown(store, private):
    await add(store, letter("hello", private.id))
    await lease(store)
    async with store.unit() as unit:
        assert await unit.outbox.recover(NOW + minutes(0.5)) == 0
        assert await unit.outbox.recover(NOW + minutes(1)) == 1
    [(outcome, why)] = await attempts_of(store, "hello")
    assert (outcome, why) == ("unknown", "the process ended before there was an answer")
    assert await lease(store, now=NOW + minutes(1)) == ["hello"]


async def test_a_kill_costs_a_letter_no_try(store, private):
    await add(store, letter("hello", private.id))
    for _ in range(12):
        assert await lease(store) == ["hello"]
        async with store.unit() as unit:
            await unit.outbox.recover(NOW, at_start=True)
    assert (await look(store, "hello")).resends == 0


async def test_a_letter_of_somebody_who_was_erased_meanwhile_is_no_ones(store, private):
    await add(store, letter("hello", private.id))
    await lease(store)
    gone = Settled(letter_id=404, outcome=Outcome.REFUSED)
    async with store.unit() as unit:
        assert (await unit.outbox.settle([gone], NOW)).given_up == frozenset()


async def test_what_was_given_up_is_told(store, private):
    ids = await add(store, letter("hello", private.id))
    await lease(store)
    refused = Settled(letter_id=ids["hello"], outcome=Outcome.REFUSED)
    async with store.unit() as unit:
        assert (await unit.outbox.settle([refused], NOW)).given_up == {ids["hello"]}


async def test_at_the_start_every_lease_belongs_to_the_dead(store, private, group_chat):
    await add(store, letter("answer", private.id), letter("news", group_chat.id, purpose=Purpose.BULK))
    await lease(store)
    async with store.unit() as unit:
        assert await unit.outbox.recover(NOW, at_start=True) == 2
    assert (await look(store, "answer")).state is LetterState.WAITING
    assert (await look(store, "news")).state is LetterState.UNKNOWN


async def test_an_arrival_reported_late_keeps_the_letter_from_going_twice(store, private):
    await add(store, letter("hello", private.id))
    await lease(store)
    async with store.unit() as unit:
        await unit.outbox.recover(NOW + minutes(1))
    await settle(store, "hello", Outcome.SENT, message_id=3)
    assert await lease(store, now=NOW + minutes(2)) == []
    assert (await look(store, "hello")).message_id == 3


async def test_nothing_unsends_a_letter(store, private):
    await add(store, letter("hello", private.id))
    await lease(store)
    await settle(store, "hello", Outcome.SENT, message_id=3)
    await settle(store, "hello", Outcome.NOT_SENT)
    kept = await look(store, "hello")
    assert (kept.state, kept.message_id) == (LetterState.SENT, 3)


async def test_many_ends_are_settled_at_once(store, private, group_chat):
    ids = await add(store, letter("one", private.id), letter("two", group_chat.id))
    await lease(store)
    async with store.unit() as unit:
        await unit.outbox.settle(
            [
                Settled(letter_id=ids["one"], outcome=Outcome.SENT, message_id=5),
                Settled(letter_id=ids["two"], outcome=Outcome.TOO_LATE),
            ],
            NOW,
        )
    assert (await look(store, "one")).state is LetterState.SENT
    assert (await look(store, "two")).state is LetterState.DROPPED
