"""Groups: what a bot hears there, who may do what, and the move to a supergroup.

The table of privacy mode is the Bot API's "features" page (core.telegram.org/bots/features#privacy-mode).
"""

import pytest
from telegram.error import BadRequest, ChatMigrated, Forbidden

OTHER_TOKEN = "7000000002:another"

SAID = {
    "plain talk": "7+12 today",
    "a general command": "/board",
    "a command for it": "/board@bellwether_bot now",
    "a command for another": "/board@someone_else_bot",
    "a command in the middle": "what is /board",
    "its name": "@bellwether_bot hello",
}


@pytest.fixture
async def crew(room):
    coach, ilse = await room.person("Coach"), await room.person("Ilse")
    return coach, ilse, await room.group("Harbour crew", admins=[coach], members=[ilse])


async def heard(bot) -> list[str]:
    return [
        update.message.text
        for update in await bot.get_updates(timeout=0)
        if update.message and update.message.text
    ]


@pytest.mark.parametrize(
    ("as_admin", "privacy", "expected"),
    [
        (False, True, ["a general command", "a command for it"]),
        (True, True, list(SAID)),
        (False, False, list(SAID)),
    ],
    ids=["private", "admin", "privacy off"],
)
async def test_what_a_bot_hears_in_a_group(bot, room, crew, as_admin, privacy, expected):
    coach, ilse, group = crew
    await room.bot_privacy(on=privacy)
    await coach.adds_bot(group, as_admin=as_admin)
    for text in SAID.values():
        await ilse.says(text, in_=group)
    assert await heard(bot) == [SAID[name] for name in expected]


async def test_replies_to_the_bot_and_to_what_was_meant_for_it_are_heard(bot, crew):
    coach, ilse, group = crew
    await coach.adds_bot(group)
    await bot.send_message(group.id, "Scores?")
    await ilse.says("7+12", in_=group, reply_to=await group.last_message)
    command = await ilse.says("/board", in_=group)
    await coach.says("why?", in_=group, reply_to=command)
    talk = await ilse.says("nothing for it", in_=group)
    await coach.says("indeed", in_=group, reply_to=talk)
    assert await heard(bot) == ["7+12", "/board", "why?"]


async def test_service_messages_are_always_heard(bot, room, crew):
    coach, ilse, group = crew
    await coach.adds_bot(group)
    await ilse.leaves(group)
    await ilse.joins(group)
    messages = [update.message for update in await bot.get_updates(timeout=0) if update.message]
    assert [bool(message.left_chat_member) for message in messages] == [False, True, False]
    assert [len(message.new_chat_members) for message in messages] == [1, 0, 1]


async def test_stickers_are_talk_and_not_heard(bot, crew):
    coach, ilse, group = crew
    await coach.adds_bot(group)
    await ilse.sends("sticker", in_=group)
    await ilse.sends("location", in_=group)
    [added] = [update.message for update in await bot.get_updates(timeout=0) if update.message]
    assert added.new_chat_members


async def test_a_general_command_is_heard_by_the_bot_that_spoke_last(bot, platform, crew):
    coach, ilse, group = crew
    other = platform.add_bot("Other", "other_bot", OTHER_TOKEN)
    await coach.adds_bot(group)
    platform.groups[group.id].members[other.user.id] = platform.groups[group.id].member(other.user)
    platform.groups[group.id].members[other.user.id].status = "member"
    await bot.send_message(group.id, "Scores?")
    await ilse.says("/board", in_=group)
    await platform.call(OTHER_TOKEN, "sendMessage", {"chat_id": group.id, "text": "Hm"})
    await ilse.says("/other", in_=group)
    assert await heard(bot) == ["/board"]
    assert len(other.updates) == 1


async def test_privacy_is_settled_when_the_bot_joins(bot, room, crew):
    coach, ilse, group = crew
    await coach.adds_bot(group)
    await room.bot_privacy(on=False)
    await coach.promotes_bot(group)
    await coach.demotes_bot(group)
    await ilse.says("still private", in_=group)
    await coach.removes_bot(group)
    await coach.adds_bot(group)
    await ilse.says("now open", in_=group)
    assert await heard(bot) == ["now open"]


async def test_the_bot_is_told_where_it_was_added_and_removed(bot, crew):
    coach, _, group = crew
    await coach.adds_bot(group)
    await coach.removes_bot(group)
    changes = [update.my_chat_member for update in await bot.get_updates(timeout=0) if update.my_chat_member]
    assert [change.new_chat_member.status for change in changes] == ["member", "kicked"]
    assert {change.from_user.first_name for change in changes} == {"Coach"}


async def test_members_and_admins_can_be_asked_for(both):
    bot, room = both
    coach, second, ilse = [await room.person(name) for name in ("Coach", "Second", "Ilse")]
    group = await room.group("Harbour crew", admins=[coach, second], members=[ilse])
    await coach.adds_bot(group)
    assert [admin.user.first_name for admin in await bot.get_chat_administrators(group.id)] == [
        "Coach",
        "Second",
    ]
    assert await bot.get_chat_member_count(group.id) == 4
    assert (await bot.get_chat_member(group.id, coach.id)).status == "creator"
    assert (await bot.get_chat_member(group.id, ilse.id)).status == "member"
    await ilse.leaves(group)
    assert (await bot.get_chat_member(group.id, ilse.id)).status == "left"
    assert (await bot.get_chat(group.id)).title == "Harbour crew"
    with pytest.raises(BadRequest, match="User not found"):
        await bot.get_chat_member(group.id, 1)


async def test_admins_come_and_go(bot, room, crew):
    coach, ilse, group = crew
    await coach.adds_bot(group)
    await coach.promotes(ilse, in_=group)
    assert len(await bot.get_chat_administrators(group.id)) == 2
    await coach.demotes(ilse, in_=group)
    assert len(await bot.get_chat_administrators(group.id)) == 1
    with pytest.raises(AssertionError, match="no admin"):
        await ilse.promotes(ilse, in_=group)


async def test_a_private_chat_has_no_admins(bot, room):
    ilse = await room.person("Ilse")
    await ilse.says("hello")
    with pytest.raises(BadRequest, match="There are no administrators in the private chat"):
        await bot.get_chat_administrators(ilse.id)


@pytest.mark.parametrize("kind", ["group", "supergroup"])
async def test_a_bot_that_was_kicked_or_left_is_told_so(bot, room, kind):
    coach = await room.person("Coach")
    group = await room.group("Harbour crew", admins=[coach], kind=kind)
    with pytest.raises(BadRequest, match="Chat not found"):
        await bot.send_message(group.id, "hello")
    await coach.adds_bot(group)
    await bot.send_message(group.id, "hello")
    await coach.removes_bot(group)
    with pytest.raises(Forbidden, match=f"bot was kicked from the {kind} chat"):
        await bot.send_message(group.id, "hello")
    with pytest.raises(Forbidden, match=f"bot was kicked from the {kind} chat"):
        await bot.get_chat_administrators(group.id)


async def test_a_group_that_moves_tells_its_new_address(both):
    bot, room = both
    coach = await room.person("Coach")
    group = await room.group("Harbour crew", admins=[coach])
    await coach.adds_bot(group)
    old = group.id
    await bot.send_message(old, "before")
    await group.becomes_supergroup(coach)
    with pytest.raises(ChatMigrated) as moved:
        await bot.send_message(old, "lost?")
    assert moved.value.new_chat_id == group.id != old
    await bot.send_message(group.id, "after")
    assert (await group.hears("after")).chat == group.id
    service = [update.message for update in await bot.get_updates(timeout=0) if update.message][-2:]
    assert [(one.chat.id, one.migrate_to_chat_id, one.migrate_from_chat_id) for one in service] == [
        (old, group.id, None),
        (group.id, None, old),
    ]


async def test_only_an_admin_bot_deletes_what_others_wrote(bot, crew):
    coach, ilse, group = crew
    await coach.adds_bot(group)
    talk = await ilse.says("/oops", in_=group)
    with pytest.raises(BadRequest, match="Message can't be deleted"):
        await bot.delete_message(group.id, talk.message_id)
    await coach.promotes_bot(group)
    assert await bot.delete_message(group.id, talk.message_id)
    with pytest.raises(BadRequest, match="Message to delete not found"):
        await bot.delete_message(group.id, talk.message_id)
