from datetime import timedelta

from core.athletes.values import Evidence
from tests.integration.store.builders import NOW, letter

LATER = NOW + timedelta(days=1)


async def test_meeting_someone_again_refreshes_their_name_and_keeps_who_they_are(store, ilse):
    async with store.unit() as unit:
        again = await unit.people.meet(ilse.user_id, "Ilse K.", "de", LATER)
    async with store.reading() as unit:
        assert await unit.people.get(ilse.id) == again
    assert (again.id, again.name, again.language, again.created_at) == (ilse.id, "Ilse K.", "de", NOW)


async def test_a_deleted_account_keeps_the_name_that_is_known(store, ilse):
    async with store.unit() as unit:
        again = await unit.people.meet(ilse.user_id, "", "en", LATER)
        nobody = await unit.people.meet(404, " ", "en", LATER)
    assert again.name == ilse.name
    assert nobody.name == "Somebody"


async def test_user_ids_beyond_four_bytes_are_kept(store):
    async with store.unit() as unit:
        person = await unit.people.meet(2**52, "Big", "en", NOW)
        assert await unit.people.by_user(2**52) == person


async def test_a_hostile_name_is_just_a_name(store):
    name = "Robin'); DROP TABLE person;--\u202e<b>"
    async with store.unit() as unit:
        await unit.people.meet(9, name, "en", NOW)
    async with store.reading() as unit:
        assert (await unit.people.by_user(9)).name == name


async def test_an_unknown_id_finds_nobody(store):
    async with store.reading() as unit:
        assert await unit.people.get(404) is None
        assert await unit.people.by_user(404) is None
        assert await unit.chats.get(404) is None
        assert await unit.chats.by_address(404) is None


async def test_a_chat_is_opened_once(store, ilse, private):
    async with store.unit() as unit:
        assert await unit.chats.private_chat(ilse.id, private.address) == private
        assert await unit.chats.private_of(ilse.id) == private


async def test_whoever_never_opened_a_chat_has_none(store, coach):
    async with store.reading() as unit:
        assert await unit.chats.private_of(coach.id) is None


async def test_a_chat_that_can_no_longer_be_reached_remembers_since_when(store, private):
    async with store.unit() as unit:
        await unit.chats.mark_reachable(private.id, yes=False, now=NOW)
        await unit.chats.mark_reachable(private.id, yes=False, now=LATER)
        lost = await unit.chats.get(private.id)
        await unit.chats.mark_reachable(private.id, yes=True, now=LATER)
        back = await unit.chats.get(private.id)
    assert (lost.reachable, lost.unreachable_since) == (False, NOW)
    assert (back.reachable, back.unreachable_since) == (True, None)


async def test_a_moved_chat_stays_the_same_chat(store, group_chat, group):
    async with store.unit() as unit:
        moved = await unit.chats.move(-5000, -1005000)
        assert await unit.chats.by_address(-5000) == moved
        assert await unit.groups.by_chat(moved.id) == group
    assert (moved.id, moved.address) == (group_chat.id, -1005000)


async def test_what_comes_from_the_old_address_comes_from_the_same_chat(store, group_chat):
    async with store.unit() as unit:
        await unit.chats.move(-5000, -1005000)
        assert (await unit.chats.group_chat(-5000)).id == group_chat.id


async def test_what_waits_from_the_old_address_goes_before_what_comes_from_the_new(store, group_chat):
    async with store.unit() as unit:
        await unit.inbox.store([(1, -5000, {}), (2, -1005000, {})], NOW)
        await unit.chats.move(-5000, -1005000)
        assert [item.update_id for item in await unit.inbox.next(5)] == [1]


async def test_what_was_said_at_the_new_address_before_the_move_was_known_is_said_in_the_same_chat(
    store, group_chat, group
):
    async with store.unit() as unit:
        stray = await unit.chats.group_chat(-1005000)
        await unit.groups.open(stray.id, "Crew", NOW)
        await unit.outbox.add([letter("hello", stray.id)], NOW)
        await unit.chats.move(-5000, -1005000)
        assert (await unit.outbox.by_key("hello")).chat_id == group_chat.id
        assert (await unit.chats.by_address(-1005000)).id == group_chat.id
        assert (await unit.groups.by_chat(stray.id)).state == "left"
        assert await unit.groups.by_chat(group_chat.id) == group


async def test_the_platforms_wish_for_silence_is_kept(store, group_chat):
    async with store.unit() as unit:
        await unit.chats.keep_silent(group_chat.id, LATER)
        assert await unit.chats.silent(NOW) == {group_chat.id: LATER}
        assert await unit.chats.silent(LATER) == {}


async def test_a_move_told_twice_is_one_move(store, group_chat):
    async with store.unit() as unit:
        first = await unit.chats.move(-5000, -1005000)
        assert await unit.chats.move(-5000, -1005000) == first
        assert await unit.chats.move(-1, -2) is None


async def test_a_move_wins_over_a_chat_already_seen_at_the_new_address(store, group_chat, group):
    async with store.unit() as unit:
        stray = await unit.chats.group_chat(-1005000)
        moved = await unit.chats.move(-5000, -1005000)
        assert moved.id == group_chat.id
        assert not (await unit.chats.get(stray.id)).reachable
        assert await unit.groups.by_chat(moved.id) == group


async def test_consent_stands_from_its_gift_to_its_withdrawal(store, ilse):
    async with store.unit() as unit:
        assert not await unit.consents.given(ilse.id)
        await unit.consents.give(ilse.id, NOW)
        await unit.consents.give(ilse.id, NOW)
        assert await unit.consents.given(ilse.id)
        await unit.consents.withdraw(ilse.id, LATER)
        assert not await unit.consents.given(ilse.id)
        await unit.consents.give(ilse.id, LATER)
        assert await unit.consents.given(ilse.id)


async def test_consent_is_each_persons_own(store, ilse, coach):
    async with store.unit() as unit:
        await unit.consents.give(ilse.id, NOW)
        assert not await unit.consents.given(coach.id)


async def test_asking_anew_takes_the_place_of_the_open_question(store, private):
    async with store.unit() as unit:
        await unit.questions.ask(private.id, "equipment", {"session": 1}, NOW)
        await unit.questions.ask(private.id, "limits", {"session": 2}, LATER)
        question = await unit.questions.open_in(private.id)
        assert (question.kind, question.refs, question.asked_at) == ("limits", {"session": 2}, LATER)
        await unit.questions.close(private.id)
        assert await unit.questions.open_in(private.id) is None


async def test_a_piece_of_evidence_is_taken_back_by_its_owner_only(store, ilse, coach):
    shown = Evidence(movement="push-up", reps=20)
    async with store.unit() as unit:
        kept = await unit.profiles.add_evidence(ilse.id, shown, NOW)
        assert not await unit.profiles.take_back(coach.id, kept)
        assert (await unit.profiles.get(ilse.id, "Ilse")).evidence == (shown,)
        assert await unit.profiles.take_back(ilse.id, kept)
        assert not await unit.profiles.take_back(ilse.id, kept)
        assert (await unit.profiles.get(ilse.id, "Ilse")).evidence == ()
