"""The tables of yesterday become the tables of today, with everything in them."""

import sqlite3
import subprocess
import sys
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext

from core.store.engine import open_engine
from core.store.migrate import migrate, newest, revision
from core.store.records import LetterState, Role
from core.store.tables import Row
from core.store.unit import Store
from tests.integration.store.builders import NOW
from tests.integration.store.test_training import DAY, SESSION, VERSION

OLD_FILES = sorted((Path(__file__).parent / "old").glob("*.sql"))


def differences(connection):
    context = MigrationContext.configure(connection, opts={"compare_type": True})
    return compare_metadata(context, Row.metadata)


async def ask(place, question):
    engine = open_engine(place)
    try:
        async with engine.connect() as connection:
            return await connection.run_sync(question)
    finally:
        await engine.dispose()


@pytest.fixture(params=OLD_FILES, ids=lambda path: path.stem)
async def old(request, tmp_path):
    """A store at head that was an old file before."""
    place = tmp_path / "old.db"
    connection = sqlite3.connect(place)
    connection.executescript(request.param.read_text())
    connection.close()
    await migrate(place)
    async with Store(place) as store:
        yield store


async def test_models_and_migrations_agree(migrated):
    assert await ask(migrated, differences) == []


async def test_migrating_twice_changes_nothing(migrated):
    await migrate(migrated)
    assert await ask(migrated, differences) == []


async def test_the_newest_migration_is_known_by_its_name(migrated):
    assert await ask(migrated, revision) == newest()


async def test_a_new_file_has_no_revision(tmp_path):
    assert await ask(tmp_path / "new.db", revision) is None


def test_a_start_at_the_newest_tables_loads_no_alembic(migrated):
    code = f"import asyncio, sys; from core.store.migrate import migrate; asyncio.run(migrate({str(migrated)!r}))"
    ended = subprocess.run(  # noqa: S603 - the code is written above
        [sys.executable, "-c", f"{code}; sys.exit('alembic' in sys.modules)"], check=False
    )
    assert ended.returncode == 0


async def test_a_url_is_as_good_as_a_path(tmp_path):
    place = f"sqlite:///{tmp_path}/by-url.db"
    await migrate(place)
    assert await ask(place, differences) == []


async def test_an_old_file_gets_the_tables_of_today(old):
    async with old.engine.connect() as connection:
        assert await connection.run_sync(differences) == []


async def test_an_old_file_keeps_its_people(old):
    async with old.reading() as unit:
        ilse = await unit.people.by_user(101)
        [member] = await unit.groups.groups_of(ilse.id)
        group = await unit.groups.get(member.group_id)
        profile = await unit.profiles.get(ilse.id, ilse.name)
        assert await unit.consents.given(ilse.id)
    assert (member.role, group.title, group.zone) == (Role.ATHLETE, "Early birds", "Europe/Vienna")
    assert profile.body_mass_kg == Decimal("61.5")
    assert profile.evidence[0].reps == 4


async def test_an_old_file_keeps_its_training(old):
    async with old.reading() as unit:
        ilse = await unit.people.by_user(101)
        [member] = await unit.groups.groups_of(ilse.id)
        session = await unit.sessions.posted_on(member.group_id, DAY)
        version = await unit.versions.current(session.id, ilse.id)
        [(name, score)] = await unit.scores.counting(session.id, 0)
    assert (session.session, version.version) == (SESSION, VERSION)
    assert (name, score.text, score.score.rounds, score.version_id) == ("Ilse", "7+3", 7, version.id)


async def test_an_old_file_goes_on_with_what_was_begun(old):
    async with old.unit() as unit:
        [update] = await unit.inbox.next(5)
        [due] = await unit.dues.take(NOW, 5)
        assert await unit.outbox.recover(NOW, at_start=True) == 1
        letter = await unit.outbox.by_key("hello")
        question = await unit.questions.open_in(letter.chat_id)
    assert (update.update_id, due.key, question.kind) == (900, "post:9", "limits")
    assert (letter.state, letter.resends) == (LetterState.WAITING, 0)


async def test_a_week_that_was_called_easy_is_an_order_of_its_days(tmp_path):
    """One of everybody in the group, and one that was taken back."""
    place = tmp_path / "old.db"
    connection = sqlite3.connect(place)
    connection.executescript(OLD_FILES[0].read_text())
    connection.close()
    await migrate(place, to="0020")
    connection = sqlite3.connect(place)
    for person, undone in ((None, None), (2, "2026-03-02 08:00:00.000000")):
        connection.execute(
            "INSERT INTO easy_week (group_id, person_id, monday, by_id, made_at, undone_at) "
            "VALUES (1, ?, '2026-03-02', 1, '2026-03-02 07:30:00.000000', ?)",
            (person, undone),
        )
    connection.commit()
    connection.close()
    await migrate(place)
    async with Store(place) as store, store.reading() as unit:
        [easy] = await unit.orders.of_everybody(1, DAY)
        assert (easy.person_id, easy.movement, easy.made_at) == (None, "*easy*", NOW)
        assert (easy.pin.since, easy.pin.until) == (date(2026, 3, 2), date(2026, 3, 8))
        assert await unit.orders.standing(1, 2) == []


async def test_what_was_typed_beside_a_score_moves_apart(tmp_path):
    """The file of before, with health in a score's words."""
    place = tmp_path / "old.db"
    connection = sqlite3.connect(place)
    connection.executescript(OLD_FILES[0].read_text())
    connection.execute(
        "UPDATE score SET text = '7+3 scaled, my knee hurts', body = json_set(body, '$.pain', 'my knee hurts')"
    )
    connection.commit()
    connection.close()
    await migrate(place)
    async with Store(place) as store, store.reading() as unit:
        ilse = await unit.people.by_user(101)
        [member] = await unit.groups.groups_of(ilse.id)
        session = await unit.sessions.posted_on(member.group_id, DAY)
        [(_, score)] = await unit.scores.counting(session.id, 0)
        assert (score.text, score.score.pain) == ("7+3 scaled", None)
        assert await unit.scores.pains_in(session.id) == {score.id: "my knee hurts"}
        assert await unit.scores.words_of(score) == "7+3 scaled, my knee hurts"
