"""Short ways to say what a store is asked in these tests."""

from datetime import UTC, datetime, timedelta

from core.store.records import Letter, NewLetter, Outcome, Purpose, Settled
from core.store.unit import Store

NOW = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)


def minutes(count: float) -> timedelta:
    return timedelta(minutes=count)


def letter(key: str, chat_id: int, **more) -> NewLetter:
    given = {"purpose": Purpose.ANSWER, "method": "send_message", "payload": {"text": key}, **more}
    return NewLetter(key=key, chat_id=chat_id, **given)


def edit(key: str, chat_id: int, of: int, **more) -> NewLetter:
    return letter(key, chat_id, method="edit_message_text", edits_id=of, **more)


async def add(store: Store, *letters: NewLetter, now: datetime = NOW) -> dict[str, int]:
    async with store.unit() as unit:
        return await unit.outbox.add(letters, now)


async def lease(store: Store, now: datetime = NOW, limit: int = 10, blocked=(), resting=()) -> list[str]:
    """The keys of the letters that were leased, for a minute."""
    async with store.unit() as unit:
        leased = await unit.outbox.lease(now, limit, now + minutes(1), blocked, resting)
    return [one.key for one in leased]


async def settle(store: Store, key: str, outcome: Outcome, now: datetime = NOW, **more) -> None:
    async with store.unit() as unit:
        found = await unit.outbox.by_key(key)
        assert found is not None
        where = {"address": found.address} if outcome is Outcome.SENT else {}
        await unit.outbox.settle([Settled(letter_id=found.id, outcome=outcome, **(where | more))], now)


async def look(store: Store, key: str) -> Letter:
    async with store.reading() as unit:
        found = await unit.outbox.by_key(key)
    assert found is not None
    return found
