"""Whatever the platform does meanwhile: nothing that was said is lost, and nobody is left waiting in vain."""

import asyncio
from datetime import timedelta

import pytest

from bot.rehearsal import errors
from tests.acceptance.people import SESSION, answers_what_is_asked, start_link
from tests.support.durable import Tables, eventually


@pytest.fixture
def tables(settings):
    return Tables(settings.database)


async def in_time(room, hearing):
    """Let time go by until it is heard."""
    waiting = asyncio.create_task(hearing)
    while not waiting.done():
        await room.travels(timedelta(seconds=0.5))
        await asyncio.sleep(0.05)
    return waiting.result()


async def test_a_hiccup_of_the_platform_discards_nothing(crew, tables):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.room.faults.decline("getChatMember", errors.too_many_requests(3), times=3)
    await crew.coach.presses("Post now")
    await in_time(crew.room, crew.group.hears("Tap for your own version"))
    assert "parked" not in tables.states("inbox")


async def test_a_newcomer_is_let_in_once_the_platform_answers(crew):
    ilse = await crew.room.person("Ilse")
    await ilse.joins(crew.group)
    await crew.room.faults.decline("getChatMember", errors.Declined(502, "Bad Gateway"), times=4)
    await ilse.opens(await start_link(crew.group))
    await in_time(crew.room, ilse.hears("May I keep these notes?"))


async def test_who_comes_back_is_asked_the_open_question_again(crew):
    ilse = await crew.room.person("Ilse")
    await ilse.joins(crew.group)
    await ilse.opens(await start_link(crew.group))
    await ilse.hears("May I keep these notes?")
    await ilse.presses("Yes, keep them")
    await ilse.hears("18 or older")
    await ilse.says("/start")
    await ilse.hears("18 or older")
    await ilse.blocks_bot()
    await ilse.unblocks_bot()
    await ilse.hears("18 or older")
    await ilse.says("/help")
    await ilse.hears("18 or older")


async def test_a_coach_hears_that_a_post_never_reached_the_group(crew):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.room.faults.decline("sendMessage", errors.bad_request("CHAT_RESTRICTED"), to=crew.group)
    await crew.coach.presses("Post now")
    lost = await crew.coach.hears("never reached Harbour crew")
    assert "tap below" in lost.text.lower()
    await crew.coach.presses("Try again")
    await crew.coach.hears("sending it to Harbour crew again")
    await crew.group.hears("Tap for your own version")


async def test_somebody_else_cannot_try_again_for_the_coach(crew):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.room.faults.decline("sendMessage", errors.bad_request("CHAT_RESTRICTED"), to=crew.group)
    await crew.coach.presses("Post now")
    lost = await crew.coach.hears("never reached Harbour crew")
    bo = await crew.has("Bo")
    mine = await bo.last_message
    [button] = lost.all_buttons
    await bo.presses_data(mine, button.data)
    await bo.sees_toast("Only the coach")


async def with_a_score(crew):
    ilse = await crew.has("Ilse")
    post = await crew.gets(SESSION)
    await answers_what_is_asked(ilse)
    await ilse.says("7+12")
    await ilse.hears("Noted")
    return ilse, post, await crew.group.hears("Scoreboard")


async def test_a_deleted_board_comes_back_with_the_next_score_and_is_pinned_as_before(crew, tables):
    await crew.coach.promotes_bot(crew.group)
    ilse, _, board = await with_a_score(crew)
    await eventually(lambda: "leased" not in tables.states("outbox"))
    await crew.coach.pins(board)
    await crew.coach.deletes(board)
    await eventually(lambda: set(tables.states("inbox")) == {"done"})
    await ilse.says("sorry 7+13")
    anew = await crew.group.hears("7 rounds + 13")
    assert anew.message_id != board.message_id
    await eventually(lambda: tables.rows("SELECT 1 FROM outbox WHERE method LIKE 'pin%' AND state = 'sent'"))
    assert (await crew.group.pinned)[-1] == anew.message_id


async def test_after_a_move_the_board_and_the_buttons_under_older_posts_work(crew, tables):
    ilse, _, _ = await with_a_score(crew)
    before = crew.group.id
    old = await crew.group.last_message
    await crew.group.becomes_supergroup(by=crew.coach)
    await eventually(lambda: set(tables.states("inbox")) == {"done"})
    await ilse.says("sorry 7+13")
    await crew.group.hears("7 rounds + 13")
    await ilse.says("sorry 7+14")
    await crew.group.hears("7 rounds + 14")
    boards = [one for one in await crew.group.messages if "Scoreboard" in one.text]
    assert len(boards) == 1
    assert old.chat == before != crew.group.id
    assert tables.column("SELECT count(*) FROM training_group") == [1]
    assert tables.column("SELECT state FROM training_group") == ["ready"]
