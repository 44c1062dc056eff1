"""Claiming stays flat as history grows: no query of a day walks a whole table, no claim sorts what it finds.

The statements are caught as they are sent to SQLite, and SQLite is asked how it carries them out.
"""

from datetime import date

import pytest
from sqlalchemy import event

from core.calendar.slots import slot_of
from core.calendar.values import Class
from core.scaling.values import Spot
from core.sessions.values import Session
from core.store.records import Outcome, Role, Settled
from core.store.unit import Store
from tests.integration.store.builders import NOW, edit, letter, minutes


async def a_person(unit):
    person = await unit.people.meet(7, "Ana", "en", NOW)
    await unit.consents.give(person.id, NOW)
    await unit.profiles.get(person.id, "Ana")
    return person


async def a_group(unit, person):
    chat = await unit.chats.group_chat(-7)
    await unit.chats.private_of(person.id)
    group = await unit.groups.open(chat.id, "Group", NOW)
    await unit.groups.join(person.id, group.id, Role.COACH, NOW)
    await unit.groups.groups_of(person.id)
    await unit.groups.members(group.id)
    return group


async def a_session(unit, person, group):
    day = date(2026, 3, 2)
    session = await unit.sessions.draft(
        group_id=group.id, author_id=person.id, day=day, text="", session=Session(blocks=()), now=NOW
    )
    await unit.sessions.newest_draft(person.id, [group.id])
    await unit.scores.told_in(group.chat_id, 7)
    await unit.scores.pains_in(1)
    await unit.sessions.posted_on(group.id, day)
    await unit.sessions.all_posted_on(group.id, day)
    await unit.sessions.latest_posted(group.id)
    await unit.sessions.last_set_for(group.id)
    await unit.versions.current(session.id, person.id)
    await unit.scores.counting(session.id, 0)
    await unit.scores.of_person(session.id, person.id)
    await unit.scores.done_by(person.id, 5)
    await unit.adjustments.undo(session.id, person.id, Spot(1, "lines", 1), NOW)
    await unit.adjustments.standing(session.id, person.id)
    await unit.adjustments.of_session(session.id)
    await unit.oks.give(session_id=session.id, revision=1, person_id=person.id, by_id=person.id, now=NOW)
    await unit.faults.standing(group.id, person.id)
    await unit.words.seen_of(group.id, person.id)
    await unit.words.to_tell(group.id, day)
    await unit.words.hold_back(person.id, group.id)
    await unit.groups.hold(person.id, group.id, yes=True)


async def updates(unit):
    await unit.inbox.store([(1, 1, {}), (2, 2, {})], NOW)
    await unit.inbox.interrupted()
    await unit.inbox.parked()
    for item in await unit.inbox.next(5, [9]):
        await unit.inbox.begin([item.id])
        await unit.inbox.not_tried(item.id, "")
        await unit.inbox.done(item.id)
        await unit.inbox.failed(item.id, "", park=False)


async def letters(unit, chat_id):
    ids = await unit.outbox.add([letter("one", chat_id, subject="s")], NOW)
    await unit.outbox.add([edit("two", chat_id, of=ids["one"], subject="s")], NOW)
    await unit.outbox.lease(NOW, 4, NOW + minutes(1), [9], [9])
    await unit.outbox.settle([Settled(letter_id=ids["one"], outcome=Outcome.UNKNOWN)], NOW)
    await unit.outbox.recover(NOW)
    await unit.outbox.by_message(chat_id, 5)
    await unit.chats.by_address(-404)
    await unit.outbox.by_key("one")
    await unit.outbox.next_due_at(after=NOW)


async def classes(unit, person, group):
    of = Class(title="Class", zone="Europe/Berlin", start="2026-03-03T18:30", rule="FREQ=WEEKLY;BYDAY=TU")
    made = await unit.classes.propose(group_id=group.id, author_id=person.id, of=of, now=NOW)
    await unit.classes.cancel(made.id, of.start, NOW)
    await unit.classes.live(group.id)
    await unit.classes.get(made.id)
    slot = slot_of(of.start)
    for coming in (True, False):
        await unit.sign_ups.put(person.id, made.id, slot, NOW, coming=coming)
    await unit.sign_ups.tell_attended(person.id, made.id, slot, yes=True)
    await unit.sign_ups.coming(made.id, slot)
    await unit.sign_ups.coming_from(made.id, slot)
    await unit.sign_ups.of_person(person.id, slot)
    await unit.habits.get(person.id)


async def dues(unit):
    await unit.dues.add("key", "post", NOW, {})
    await unit.dues.arm("key", "post", NOW, {})
    for due in await unit.dues.take(NOW, 5):
        await unit.dues.done(due.id, NOW)
    await unit.dues.drop("key")
    await unit.dues.next_at()


@pytest.fixture
async def plans(migrated) -> list[tuple[str, list[str]]]:
    """Each statement of a day, with SQLite's steps for it."""
    sent = {}

    def catch(_connection, _cursor, statement, parameters, _context, executemany):
        sent[statement] = parameters[0] if executemany else parameters

    async with Store(migrated) as store:
        event.listen(store.engine.sync_engine, "before_cursor_execute", catch)
        async with store.reading() as unit:
            person = await a_person(unit)
            group = await a_group(unit, person)
            await a_session(unit, person, group)
            await updates(unit)
            await letters(unit, group.chat_id)
            await classes(unit, person, group)
            await dues(unit)
        event.remove(store.engine.sync_engine, "before_cursor_execute", catch)
        async with store.engine.connect() as connection:
            asked = [sql for sql in sent if sql.startswith(("SELECT", "UPDATE"))]
            return [(sql, await steps_of(connection, sql, sent[sql])) for sql in asked]


async def steps_of(connection, sql, parameters):
    rows = await connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {sql}", parameters)
    return [row.detail for row in rows]


def test_the_day_asks_enough(plans):
    assert len(plans) > 30


def test_no_query_walks_a_whole_table(plans):
    assert not [
        (sql, steps)
        for sql, steps in plans
        for step in steps
        if step.startswith("SCAN") and "CONSTANT" not in step
    ]


@pytest.mark.parametrize("table", ["inbox", "outbox", "due"])
def test_claiming_finds_its_rows_in_order(plans, table):
    claims = [(sql, steps) for sql, steps in plans if f"FROM {table} " in sql]
    assert claims
    assert not [(sql, steps) for sql, steps in claims if any("TEMP B-TREE" in step for step in steps)]


def test_the_order_of_a_chat_is_kept_without_walking_its_history(plans):
    [steps] = [steps for sql, steps in plans if "AS ahead" in sql]
    assert [step for step in steps if "ahead" in step and "chat_id=? AND state=? AND" in step]


def test_the_order_of_a_lane_is_kept_without_walking_its_history(plans):
    [steps] = [steps for sql, steps in plans if "AS earlier" in sql]
    assert [step for step in steps if "earlier" in step and "state=? AND lane=? AND" in step]
