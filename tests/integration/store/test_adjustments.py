"""What athletes asked of their lines, and what they did last time."""

from datetime import timedelta
from decimal import Decimal

import pytest

from core.scaling.orders import Pin
from core.scaling.values import Spot
from core.scores.values import Score
from core.store.records import Told
from tests.integration.store.builders import NOW
from tests.integration.store.test_training import DAY, VERSION, draft

SPOT, OTHER = Spot(1, "lines", 1), Spot(1, "cash_out", 1)


def pin(load, spot=SPOT):
    return Pin(**spot._asdict(), load_kg=Decimal(load), by="athlete", cause="too-hard")


@pytest.fixture
async def shown(store, group, coach, ilse):
    async with store.unit() as unit:
        session = await draft(unit, group, coach)
        return await unit.versions.show(session.id, 1, ilse.id, VERSION, NOW)


async def ask(unit, shown, made, spot=SPOT, step="easier"):
    await unit.adjustments.add(
        session_id=shown.session_id,
        person_id=shown.person_id,
        version_id=shown.id,
        spot=spot,
        step=step,
        cause="too-hard",
        pin=made,
        now=NOW,
    )


async def test_the_newest_word_on_a_line_stands(store, shown):
    async with store.unit() as unit:
        await ask(unit, shown, pin("12.5"))
        await ask(unit, shown, pin(8))
        await ask(unit, shown, pin(6, OTHER), OTHER)
        standing = await unit.adjustments.standing(shown.session_id, shown.person_id)
        asked = await unit.adjustments.of_session(shown.session_id)
    assert set(standing) == {pin(8), pin(6, OTHER)}
    assert [one.pin for one in asked] == [pin("12.5"), pin(8), pin(6, OTHER)]


async def test_undone_a_line_is_free_again(store, shown):
    async with store.unit() as unit:
        await ask(unit, shown, pin(8))
        await unit.adjustments.undo(shown.session_id, shown.person_id, SPOT, NOW)
        assert await unit.adjustments.standing(shown.session_id, shown.person_id) == ()
        assert len(await unit.adjustments.of_session(shown.session_id)) == 1


async def test_a_word_without_a_pin_leaves_the_line_as_it_is(store, shown):
    async with store.unit() as unit:
        await ask(unit, shown, pin(8))
        await ask(unit, shown, None, step="harder")
        assert await unit.adjustments.standing(shown.session_id, shown.person_id) == (pin(8),)


async def test_somebody_elses_word_is_not_mine(store, shown, coach):
    async with store.unit() as unit:
        await ask(unit, shown, pin(8))
        assert await unit.adjustments.standing(shown.session_id, coach.id) == ()


async def test_what_was_done_comes_newest_first_with_its_version(store, group, coach, ilse, shown):
    async with store.unit() as unit:
        for rounds in (5, 7):
            await unit.scores.record(
                session_id=shown.session_id,
                block=0,
                person_id=ilse.id,
                version_id=shown.id,
                told=Told(str(rounds)),
                score=Score(value=rounds, unit="rounds"),
                entered_by=ilse.id,
                now=NOW + timedelta(minutes=rounds),
            )
        (done,) = await unit.scores.done_by(ilse.id, limit=5)
        assert await unit.scores.done_by(coach.id, limit=5) == []
    assert (done.day, done.block, done.score.value, done.version) == (DAY, 0, 7, VERSION)
