"""What the platform says of people is kept for a while, and what can't be asked is decided with care."""

from datetime import timedelta

import pytest
import pytest_asyncio
from telegram.error import TelegramError

from bot.rehearsal.platform import TOKEN
from bot.telegram.api import make_bot
from bot.telegram.standing import Standings, follow
from core.desk.visit import Standing
from core.store.migrate import migrate
from core.store.records import Role
from core.store.unit import Store
from tests.support.in_process import BASE_URL, InProcessRequest


@pytest_asyncio.fixture
async def setting(platform, room, tmp_path):
    """A group with an admin and a member, known to the store as coach and athlete."""
    place = tmp_path / "bellwether.db"
    await migrate(place)
    coach, ilse = await room.person("Marit"), await room.person("Ilse")
    group = await room.group("Harbour crew", admins=[coach], members=[ilse])
    await coach.adds_bot(group)
    bot = make_bot(TOKEN, BASE_URL.removesuffix("/bot"), InProcessRequest(platform))
    async with Store(place) as store:
        now = platform.clock.now()
        async with store.unit() as unit:
            chat = await unit.chats.group_chat(group.id)
            kept = await unit.groups.open(chat_id=chat.id, title="Harbour crew", now=now)
            for person, role in ((coach, Role.COACH), (ilse, Role.ATHLETE)):
                known = await unit.people.meet(person.id, person.name, "en", now)
                await unit.groups.join(known.id, kept.id, role, now)
        yield Standings(store, platform.clock, bot), coach, ilse, group, kept


async def looks(standings, kept, person, *, needed=True):
    found = await standings.look_up([(kept.id, person.id)], needed=needed)
    return found[kept.id, person.id]


async def test_the_platform_says_who_is_what(setting, room):
    standings, coach, ilse, _, kept = setting
    stranger = await room.person("Stranger")
    said = [(await looks(standings, kept, one)).standing for one in (coach, ilse, stranger)]
    assert said == [Standing.ADMIN, Standing.MEMBER, Standing.OUTSIDE]


async def test_it_is_known_until_it_is_forgotten(setting):
    standings, coach, _, _, kept = setting
    await looks(standings, kept, coach)
    assert (kept.id, coach.id) in standings.known
    standings.forget(kept.id + 1)
    assert (kept.id, coach.id) in standings.known
    standings.forget(kept.id)
    assert not standings.known


async def test_the_store_follows(setting):
    standings, coach, ilse, group, kept = setting
    await coach.promotes(ilse, in_=group)
    await coach.leaves(group)
    found = await standings.look_up([(kept.id, coach.id), (kept.id, ilse.id)], needed=True)
    async with standings.store.unit() as unit:
        await follow(unit, found.items())
        members = await unit.groups.members(kept.id)
    assert [(one.own_name, one.role) for one in members] == [("Ilse", Role.COACH)]


async def test_where_the_platform_cant_be_asked_a_member_is_who_the_store_says(setting, room):
    standings, _, ilse, _, kept = setting
    await room.faults.lose_request("getChatMember")
    found = await looks(standings, kept, ilse, needed=False)
    assert (found.standing, found.told, found.stored) == (Standing.MEMBER, False, True)
    assert not standings.known


async def test_and_nobody_is_a_coach_without_its_word(setting, room):
    standings, coach, _, _, kept = setting
    await room.faults.lose_request("getChatMember")
    with pytest.raises(TelegramError):
        await looks(standings, kept, coach, needed=True)


async def test_only_so_many_are_kept(setting, monkeypatch):
    standings, coach, ilse, _, kept = setting
    monkeypatch.setattr("bot.telegram.standing._MOST", 1)
    await looks(standings, kept, coach)
    await looks(standings, kept, ilse)
    assert list(standings.known) == [(kept.id, ilse.id)]


async def test_it_says_when_it_was_asked(setting, room):
    standings, coach, _, _, kept = setting
    await room.travels(timedelta(minutes=5))
    assert (await looks(standings, kept, coach)).at == await room.now()
