"""Raw messages are kept for a while only; what tells of health goes first."""

from datetime import UTC, datetime, timedelta

import pytest

from core.desk.keeping import let_go_of_health, let_go_of_old, tells_of_health
from core.store.records import NewLetter, Outcome, Purpose, Settled

NOW = datetime(2026, 3, 20, 12, tzinfo=UTC)
DAY = timedelta(days=1)


async def handled(store, number, text, received_at):
    async with store.unit() as unit:
        await unit.inbox.store([(number, 5, {"message": {"text": text}})], received_at)
        (item,) = await unit.inbox.next(1)
        await unit.inbox.done(item.id)


@pytest.mark.parametrize(
    "words", ["my left wrist hurts", "no jumping, I'm pregnant", "chest pain", "I have a fever", "bad knee"]
)
def test_words_about_health_are_known(words):
    assert tells_of_health(words)


@pytest.mark.parametrize("words", ["7+12", "bought a 24", "/today", "", "AMRAP 12\n10 push-ups"])
def test_other_words_are_not_taken_for_such(words):
    assert not tells_of_health(words)


async def test_words_about_health_go_after_a_day_and_others_stay(store, tables):
    await handled(store, 1, "my left wrist hurts", NOW - 2 * DAY)
    await handled(store, 2, "bought a 24", NOW - 2 * DAY)
    await handled(store, 3, "my left wrist hurts", NOW)

    await let_go_of_health(store, NOW)

    assert ["wrist" in body for body in tables.column("SELECT body FROM inbox ORDER BY id")] == [
        False,
        False,
        True,
    ]
    assert "24" in tables.column("SELECT body FROM inbox WHERE update_id = 2")[0]


async def test_what_is_old_goes_and_what_waits_or_is_answered_to_stays(store, tables):
    await handled(store, 1, "7+12", NOW - 15 * DAY)
    await handled(store, 2, "8:43", NOW)
    async with store.unit() as unit:
        await unit.inbox.store([(3, 5, {"message": {"text": "waits"}})], NOW - 15 * DAY)
        chat = await unit.chats.group_chat(-5)
        letters = [
            NewLetter(chat_id=chat.id, purpose=purpose, method="send_message", payload={}, key=purpose)
            for purpose in (Purpose.ANSWER, Purpose.POST, Purpose.VERSION)
        ]
        ids = await unit.outbox.add(letters, NOW - 16 * DAY)
        sent = [Settled(letter_id=one, outcome=Outcome.SENT, message_id=one) for one in ids.values()]
        await unit.outbox.settle(sent, NOW - 15 * DAY)

    await let_go_of_old(store, NOW, 14 * DAY)

    assert tables.column("SELECT update_id FROM inbox ORDER BY id") == [2, 3]
    assert tables.column("SELECT key FROM outbox ORDER BY id") == ["post", "version"]
