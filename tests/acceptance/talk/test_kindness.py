"""Whatever people do, they get a kind answer, and nothing breaks."""

import pytest

from tests.acceptance.people import answers_what_is_asked, consents, start_link

HOSTILE = (
    "<b>Bo</b> & Söhne",
    "'); DROP TABLE person;--",
    "👩‍🚀 Ünïcode \u202ereversed",
    "x" * 60,
    "</code>\n\n*",
)


async def test_a_repeated_press_is_answered_and_does_nothing_twice(crew):
    await crew.coach.says("AMRAP 12\n10 push-ups\n200 m run")
    draft = await crew.coach.hears("Here's how I read it")
    await crew.coach.presses("Post now", on=draft)
    await crew.group.hears("10 push-ups")
    await crew.coach.presses("Post now", on=draft)
    await crew.coach.sees_toast("done already")
    await crew.group.hears_nothing()


async def test_a_strangers_press_under_the_coachs_draft_posts_nothing(crew):
    await crew.coach.says("AMRAP 12\n10 push-ups\n200 m run")
    draft = await crew.coach.hears("Here's how I read it")
    stranger = await crew.room.person("Stranger")
    await stranger.opens(await crew.room.start_link())
    hello = await stranger.hears("Hello!")
    await stranger.presses_data(hello, draft.button("Post now").data)
    await stranger.sees_toast("for members of its group")
    await crew.group.hears_nothing()


async def test_a_member_who_is_no_admin_can_not_post(crew):
    await crew.coach.says("AMRAP 12\n10 push-ups\n200 m run")
    draft = await crew.coach.hears("Here's how I read it")
    ilse = await crew.has("Ilse")
    mine = await ilse.hears("Nothing is posted yet")
    await ilse.presses_data(mine, draft.button("Post now").data)
    await ilse.sees_toast("Only the coach")
    await crew.group.hears_nothing()


async def test_a_coach_who_is_no_admin_any_more_can_not_post(crew, bo):
    await crew.coach.promotes(bo, in_=crew.group)
    await bo.opens(await start_link(crew.group))
    await bo.hears("Nothing is posted yet")
    await bo.says("AMRAP 12\n10 push-ups\n200 m run")
    draft = await bo.hears("Here's how I read it")
    await crew.coach.demotes(bo, in_=crew.group)
    await bo.presses("Post now", on=draft)
    await bo.sees_toast("Only the coach")
    await crew.group.hears_nothing()


async def test_an_athletes_session_is_declined_kindly(crew, ilse):
    await ilse.says("AMRAP 12\n10 push-ups\n12 goblet squats @ 16/12 kg\n200 m run")
    await ilse.hears("Only a coach can post one")


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("that was brutal but fun!", "I'm glad you liked it. Well done! And your score?"),
        ("new PB!!", "Congratulations, that's wonderful! And your score?"),
        ("sorry I was late", "No worries, all good!"),
        ("good morning", "Hello! Good to hear from you."),
    ],
)
async def test_what_is_said_for_its_own_sake_gets_a_short_answer(crew, words, told, ilse, posted):
    await answers_what_is_asked(ilse)
    await ilse.says(words)
    await ilse.hears(told)
    await ilse.hears_nothing()


async def test_whoever_told_their_score_is_not_asked_for_it_again(crew, ilse, posted):
    await answers_what_is_asked(ilse)
    await ilse.says("7+12")
    await ilse.hears("How hard was")
    await ilse.says("thanks, that was brutal but fun!")
    assert (await ilse.hears("I'm glad you liked it")).text == "I'm glad you liked it. Well done!"


async def test_a_stranger_is_shown_the_way_in_instead(crew):
    stranger = await crew.room.person("Stranger")
    await stranger.says("good morning")
    await stranger.hears("Hello! I'm a helper for small training groups")


@pytest.mark.parametrize(
    ("data", "told"),
    [
        ("gc", "before something changed"),
        ("zz:1:2", "before something changed"),
        ("ta:1:push-up:many:", "before something changed"),
        ("ps:999999:1", "can't find that"),
        ("fs:12345", "can't find that"),
        ("sh:12345", "can't find that"),
    ],
)
async def test_a_forged_press_is_answered_kindly(crew, data, told, ilse):
    message = await ilse.hears("Nothing is posted yet")
    await ilse.presses_data(message, data)
    await ilse.sees_toast(told)


async def test_somebody_elses_score_can_not_be_taken_back(crew, ilse, bo, posted):
    await answers_what_is_asked(ilse)
    await ilse.says("7+12")
    noted = await ilse.hears("Noted")
    message = await bo.hears("Nothing is posted yet")
    await bo.presses_data(message, noted.button("Take it back").data)
    await bo.sees_toast("for whoever told me that score")
    assert "7 rounds + 12" in (await crew.group.hears("Scoreboard")).text


@pytest.mark.parametrize("text", ["🙂", "🏋️‍♀️🏋️‍♀️", "   .   ", "/", "/start g", "/start g1x", "/nonsense"])
async def test_odd_texts_are_answered_with_help(crew, text, ilse):
    await ilse.hears("Nothing is posted yet")
    await ilse.says(text)
    await ilse.hears("Here's what you can send me")


async def test_ten_thousand_characters_are_answered(crew):
    await crew.coach.says("AMRAP 12\n" + "10 push-ups and then some more of it\n" * 300)
    await crew.coach.hears("")
    ilse = await crew.has("Ilse")
    await ilse.hears("Nothing is posted yet")
    await ilse.says("lorem ipsum " * 850)
    await ilse.hears("I didn't get “lorem ipsum")


async def test_something_without_words_is_answered(crew, ilse):
    await ilse.sends("sticker")
    await ilse.hears("only read text")


@pytest.mark.parametrize("name", HOSTILE)
async def test_a_hostile_name_stands_as_it_is_on_the_board(crew, name):
    person = await crew.has(name)
    await crew.gets()
    await answers_what_is_asked(person)
    await person.says("7+12")
    await person.hears("Noted")
    board = await crew.group.hears("Scoreboard")
    assert " ".join(name.split())[:20] in " ".join(board.text.split())


async def test_two_people_of_one_name_are_told_apart(crew):
    first, second = await crew.has("Ilse"), await crew.has("Ilse")
    await crew.gets()
    for person, score in ((first, "7+12"), (second, "8+1")):
        await answers_what_is_asked(person)
        await person.says(score)
        await person.hears("Noted")
    await crew.group.hears("Ilse (2)")


async def test_whoever_blocked_the_bot_and_comes_back_is_answered(crew, ilse):
    await ilse.hears("Nothing is posted yet")
    await ilse.blocks_bot()
    await ilse.unblocks_bot()
    await ilse.says("/help")
    await ilse.hears("Here's what you can send me")


async def test_a_group_that_becomes_a_supergroup_stays_the_same_group(crew, ilse):
    await crew.group.becomes_supergroup(crew.coach)
    await crew.gets()
    await answers_what_is_asked(ilse)
    await ilse.says("7+12")
    await ilse.hears("Noted")
    await crew.group.hears("Scoreboard")


async def test_the_link_of_a_group_that_never_was_is_declined(bellwether, room):
    stranger = await room.person("Stranger")
    await stranger.opens(await room.start_link("g99"))
    await stranger.hears("for members of its group")
    await stranger.opens(await room.start_link("v99"))
    await stranger.hears("for members of its group")


async def test_commands_in_the_group_lead_into_the_private_chat(crew, ilse):
    await ilse.says("/today", in_=crew.group)
    await crew.group.hears("Let's do that in private")
    await ilse.says("just chatting, 7+12 was great", in_=crew.group)
    await crew.group.hears_nothing()


async def test_pressing_consent_twice_is_harmless(crew):
    bo = await crew.room.person("Bo")
    await bo.joins(crew.group)
    await bo.opens(await start_link(crew.group))
    await consents(bo)
    await bo.hears("18 or older")
    await bo.presses_again()
    await bo.hears("18 or older")


async def test_what_nobody_can_read_is_quoted_as_it_is(crew, ilse):
    await ilse.says("<b> &amp under the shelf")
    await ilse.hears("I didn't get “<b> &amp under the shelf”")
