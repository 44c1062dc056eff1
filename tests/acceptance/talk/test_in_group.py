"""Replies in the group, by people who can't be reached in private too."""

from tests.acceptance.versions.test_changing_a_version import has_a_version
from tests.acceptance.worlds import world

HEALTH = ("dizzy", "chest", "doctor", "heart", "faint")


@world
async def post(crew):
    await crew.gets()
    return await crew.group.last_message


async def member(crew, name):
    person = await crew.room.person(name)
    await person.joins(crew.group)
    return person


async def out_of_reach(crew, name):
    """Somebody who agreed to everything, and blocked the private chat since."""
    person = await crew.has(name)
    await person.blocks_bot()
    return person


async def test_a_stop_sign_in_a_reply_gets_help_at_once_and_no_word_about_health(crew, post):
    tam = await member(crew, "Tam")
    await tam.says("5 rounds + 3!! but i felt dizzy", in_=crew.group, reply_to=post)
    helped = await crew.group.hears("call your local emergency number")
    assert not any(word in helped.text for word in HEALTH)
    assert helped.labels == ["Talk to me"]
    await crew.group.hears_nothing()


async def test_a_stop_sign_in_the_group_holds_the_sessions_of_who_is_known(crew):
    ilse = await has_a_version(crew)
    post = next(one for one in await crew.group.messages if "Tap for your own version" in one.text)
    await ilse.says("7+12, chest hurts a bit", in_=crew.group, reply_to=post)
    await crew.group.hears("stop now, sit down")
    await ilse.hears("Stop now and sit down")
    await ilse.says("/today")
    await ilse.hears("no session for you yet")


async def test_who_must_not_train_reads_why_in_private_only(crew):
    ilse = await has_a_version(crew)
    post = next(one for one in await crew.group.messages if "Tap for your own version" in one.text)
    await ilse.says("felt dizzy")
    await ilse.hears("Stop now and sit down")
    await ilse.blocks_bot()
    await ilse.says("7+12", in_=crew.group, reply_to=post)
    told = await crew.group.hears("in private")
    assert not any(word in told.text for word in HEALTH)


async def test_a_score_is_put_right_in_words(crew, post):
    tam = await out_of_reach(crew, "Tam")
    await tam.says("5+3", in_=crew.group, reply_to=post)
    await crew.group.hears("Noted: 5 rounds + 3")
    await tam.says("oops 4+3", in_=crew.group, reply_to=post)
    await crew.group.hears("Put right: 4 rounds + 3")


async def test_what_it_should_be_is_answered_with_a_reply(crew, post):
    tam = await out_of_reach(crew, "Tam")
    await tam.says("5+3", in_=crew.group, reply_to=post)
    await tam.presses("Not right", on=await crew.group.hears("Noted: 5 rounds + 3"))
    asked = await crew.group.hears("What should it be")
    await tam.says("4+3", in_=crew.group, reply_to=asked)
    await crew.group.hears("Put right: 4 rounds + 3")


async def test_nobody_says_yes_for_somebody_else(crew, post):
    tam, bo = await out_of_reach(crew, "Tam"), await out_of_reach(crew, "Bo")
    await tam.says("5+3", in_=crew.group, reply_to=post)
    await crew.group.hears("Noted: 5 rounds + 3")
    await tam.says("4+3", in_=crew.group, reply_to=post)
    asked = await crew.group.hears("Shall it be 4 rounds + 3 instead?")
    await bo.presses("Yes, change it", on=asked)
    await bo.sees_toast("for whoever told me that score")
    await bo.says("yes", in_=crew.group, reply_to=asked)
    await crew.group.hears_nothing()
    await tam.says("yes", in_=crew.group, reply_to=asked)
    await crew.group.hears("Put right: 4 rounds + 3")


async def test_a_score_told_with_joy_counts(crew, post):
    tam = await out_of_reach(crew, "Tam")
    await tam.says("DONE 💪 6+2!!!", in_=crew.group, reply_to=post)
    await crew.group.hears("Noted: 6 rounds + 2")
