"""What I can't read of what somebody spares, and what they want their coach to know, in their own words."""

from tests.acceptance.classes.test_classes import SESSION, berlin
from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world

PLATE = "sore left wrist, a tube in my ear"
OFFER = "I didn't get “a tube in my ear” myself. Shall I pass it on to your coach in your words?"


async def tells_limits(crew, text=PLATE, *, shares=False):
    """Somebody with a version who says what to spare."""
    ilse = await crew.has("Ilse")
    await crew.gets(SESSION)
    await answers_what_is_asked(ilse)
    await ilse.says("/me")
    known = await ilse.hears("here's what I know")
    if shares:
        await ilse.presses("Let my coach see what I spare", on=known)
        await ilse.hears("Your coach sees from now on")
    await ilse.presses("To spare", on=known)
    await ilse.hears("Is there anything your body needs to spare?")
    await ilse.says(text)
    return ilse


async def card_of(crew):
    await crew.coach.says("show me Ilse")
    return (await crew.coach.hears("Ilse, as I'd do it")).text


async def evening(crew, day="2026-03-02"):
    await crew.room.travels_to(berlin(f"{day}T20:00"))
    return (await crew.coach.hears("Your evening")).text


@world
async def ilse(crew):
    return await tells_limits(crew)


async def test_with_a_yes_the_coach_reads_what_i_could_not(crew, ilse):
    offer = await ilse.hears(OFFER)
    assert "I didn't get" not in (await ilse.hears("I'll keep in mind")).text
    assert "tube in my ear" not in await card_of(crew)
    await ilse.presses("Yes, pass it on", on=offer)
    await ilse.hears("Your coach in Harbour crew reads it, in your words")
    card = await card_of(crew)
    assert "In their words:\n\u2022 2 March: “a tube in my ear”" in card
    assert "wrist" not in card
    assert "For you, in their words:\n\u2022 Ilse: “a tube in my ear”" in await evening(crew)
    assert all("tube in my ear" not in one.text for one in await crew.group.messages)


async def test_it_stands_in_one_digest_only(crew, ilse):
    await ilse.presses("Yes, pass it on", on=await ilse.hears(OFFER))
    await ilse.hears("Your coach in Harbour crew reads it")
    assert "tube in my ear" in await evening(crew)
    await crew.room.travels_to(berlin("2026-03-03T08:00"))
    await crew.gets(SESSION.replace("12", "14"))
    assert "tube in my ear" not in await evening(crew, "2026-03-03")
    assert "tube in my ear" in await card_of(crew)


async def test_with_a_no_it_is_gone(crew, ilse):
    offer = await ilse.hears(OFFER)
    await ilse.presses("No, forget it", on=offer)
    await ilse.hears("It's gone")
    await ilse.presses_data(offer, "wp:1")
    await ilse.sees_toast("before something changed")
    assert "tube in my ear" not in await evening(crew)
    await ilse.says("my notes")
    await ilse.hears("You've told me nothing for your coach")


async def test_unanswered_nobody_reads_it(crew, ilse):
    await ilse.hears(OFFER)
    assert "tube in my ear" not in await card_of(crew)
    assert "tube in my ear" not in await evening(crew)
    await ilse.says("my notes")
    assert "(your coach doesn't see it)" in (await ilse.hears("What you've told me for your coach")).text


async def test_whoever_shows_the_coach_what_they_spare_is_not_asked(crew):
    ilse = await tells_limits(crew, shares=True)
    await ilse.hears("I didn't get “a tube in my ear” myself, so your coach in Harbour crew reads it")
    assert "tube in my ear" in await card_of(crew)


async def test_who_keeps_it_from_the_coach_again_keeps_this_too(crew):
    ilse = await tells_limits(crew, shares=True)
    await ilse.hears("so your coach in Harbour crew reads it")
    await ilse.says("/me")
    await ilse.presses("Keep what I spare from my coach", on=await ilse.hears("here's what I know"))
    await ilse.hears("Your coach doesn't see any more what you spare")
    assert "tube in my ear" not in await card_of(crew)
    assert "tube in my ear" not in await evening(crew)


async def test_where_i_can_read_nothing_it_may_be_passed_on_and_i_ask_again(crew):
    ilse = await tells_limits(
        crew, "a grommet in my ear since I was twelve, and the doctor says it may stay there"
    )
    offer = await ilse.hears("myself. Shall I pass it on")
    assert "and the doctor says it may stay there" in offer.text
    again = await ilse.hears("I only know the commoner things")
    assert "Go gentle with me" in again.labels
    await ilse.presses("Yes, pass it on", on=offer)
    await ilse.hears("Your coach in Harbour crew reads it")
    await ilse.presses_data(offer, "wp:1")
    await ilse.sees_toast("done already")
    await ilse.presses("No, all fine", on=again)
    await ilse.hears("Good.")


async def test_a_question_is_no_limit_to_pass_on(crew):
    ilse = await tells_limits(crew, "what do you mean by that?")
    again = await ilse.hears("Is there anything your body needs to spare?")
    assert "pass it on" not in again.text


async def test_whoever_has_a_word_for_the_coach_writes_it_at_any_time(crew):
    ilse = await crew.has("Ilse")
    await crew.gets(SESSION)
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("tell my coach I <3 the new rower & I'm away on Friday")
    await ilse.hears("Your coach in Harbour crew reads it, in your words")
    await crew.coach.hears("Ilse has this for you: “I <3 the new rower & I'm away on Friday”")
    await ilse.says("a chair")
    await ilse.hears("I've noted: a chair")


async def test_pain_in_it_is_spared_like_any_other(crew):
    ilse = await crew.has("Ilse")
    await crew.gets(SESSION)
    await answers_what_is_asked(ilse)
    await ilse.says("for the coach: my left wrist hurts")
    await ilse.hears("Your coach in Harbour crew reads it")
    await ilse.hears("wrist")
    await crew.coach.hears("my left wrist hurts")


async def test_the_coach_may_be_named_and_come_last(crew, ilse):
    await ilse.says("I twisted my knee, tell Marit")
    await ilse.hears("Your coach in Harbour crew reads it")
    await crew.coach.hears("Ilse has this for you: “I twisted my knee”")
    await ilse.hears("I'm sorry about your knee")


async def test_health_in_it_is_spared_too(crew, ilse):
    await ilse.says("tell my coach I have high blood pressure")
    await ilse.hears("Your coach in Harbour crew reads it")
    await ilse.hears("I'll keep in mind: high blood pressure")


async def test_a_stop_sign_gets_help_first(crew):
    ilse = await crew.has("Ilse")
    await crew.gets(SESSION)
    await ilse.presses("My version")
    await ilse.hears("What do you have")
    await ilse.says("tell my coach I have chest pain")
    await ilse.hears("emergency number")


async def test_what_was_said_is_seen_and_taken_back_word_by_word(crew):
    ilse = await crew.has("Ilse")
    await crew.gets(SESSION)
    await answers_what_is_asked(ilse)
    for words in ("first thing", "second thing"):
        await ilse.says(f"for my coach: {words}")
        await ilse.hears("reads it")
        await crew.coach.hears(words)
    await ilse.says("what did I tell my coach?")
    mine = await ilse.hears("What you've told me for your coach")
    assert "1. 2 March: “first thing”\n2. 2 March: “second thing”" in mine.text
    await ilse.presses("Delete 1", on=mine)
    await ilse.hears("It's gone")
    card = await card_of(crew)
    assert "first thing" not in card
    assert "second thing" in card


async def test_nobody_takes_back_what_is_another_s(crew):
    ilse, bo = await crew.has("Ilse"), await crew.has("Bo")
    await ilse.says("for my coach: mine alone")
    await crew.coach.hears("mine alone")
    await bo.presses_data(await bo.last_message, "wx:1")
    await bo.sees_toast("before something changed")
    await ilse.says("my notes")
    await ilse.hears("mine alone")


async def test_an_answer_to_what_the_coach_asked_stays_one(crew):
    ilse = await crew.has("Ilse")
    await crew.gets(SESSION)
    await answers_what_is_asked(ilse)
    await crew.coach.says("show me Ilse")
    await crew.coach.presses("Ask them", on=await crew.coach.hears("Ilse, as I'd do it"))
    await ilse.hears("what could you do")
    await ilse.says("tell my coach that squats are fine")
    await crew.coach.hears("Ilse answers: “tell my coach that squats are fine”")
