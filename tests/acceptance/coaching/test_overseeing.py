"""The coach decides for single athletes."""

from tests.acceptance.people import SESSION, answers_what_is_asked
from tests.acceptance.worlds import world

HARD = "Hard one\nAMRAP 12\n10 push-ups\n12 goblet squats @ 16/12 kg\n200 m run"


async def knows(crew, name):
    """Somebody whose version of a first session is made already."""
    person = await crew.has(name)
    await crew.gets("First\nAMRAP 10\n8 push-ups\n10 goblet squats @ 16/12 kg\n200 m run")
    await answers_what_is_asked(person)
    return person


@world
async def ilse(crew):
    return await knows(crew, "Ilse")


async def test_a_coach_changes_a_line_for_one_athlete_after_looking(crew, ilse):
    await crew.gets(HARD)
    await ilse.presses("My version")
    before = await ilse.hears("Your version")
    await crew.coach.presses_data(await crew.coach.last_message, look_at(1))
    card = await crew.coach.hears("Ilse, as I'd do it")
    await crew.coach.presses("1", on=card)
    await crew.coach.hears("Ilse:")
    await crew.coach.presses("Easier")
    changed = await crew.coach.hears("(your choice)")
    await crew.coach.presses("OK", on=changed)
    after = await ilse.hears("Your version")
    assert after.text != before.text


async def test_a_standing_order_stands_in_the_next_session(crew, ilse):
    await crew.gets(HARD)
    await crew.coach.presses_data(await crew.coach.last_message, look_at(1))
    await crew.coach.presses("1", on=await crew.coach.hears("Ilse, as I'd do it"))
    await crew.coach.hears("Ilse:")
    await crew.coach.presses("Easier")
    await crew.coach.presses("1", on=await crew.coach.hears("(your choice)"))
    await crew.coach.hears("Ilse:")
    await crew.coach.presses("Always like this")
    await crew.coach.hears("From now on, Ilse does it like this whenever you write push-up")
    await crew.coach.says(HARD.replace("12\n10", "14\n10"))
    await crew.coach.hears("Here's how I read it")
    await crew.coach.presses_data(await crew.coach.last_message, look_at(2))
    await crew.coach.hears("(your choice)")


async def test_what_a_coach_asks_and_an_athlete_answers_is_passed_on(crew, ilse):
    await crew.gets(HARD)
    await crew.coach.presses_data(await crew.coach.last_message, look_at(1))
    await crew.coach.presses("Ask them", on=await crew.coach.hears("Ilse, as I'd do it"))
    await ilse.hears("Marit asks")
    await ilse.says("I could borrow a kettlebell")
    await crew.coach.hears("Ilse answers: “I could borrow a kettlebell”")


async def test_an_athlete_can_not_look_at_somebody_elses_version(crew, ilse, bo):
    message = await bo.hears("")
    await bo.presses_data(message, look_at(0))
    await bo.sees_toast("Only the coach")


async def test_a_draft_is_posted_in_words(crew):
    await crew.coach.says(HARD)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("post it tomorrow at 7am")
    await crew.coach.hears("Tuesday, 3 March at 07:00")
    await crew.coach.says("post now")
    await crew.group.hears("10 push-ups")


async def test_a_draft_is_discarded_in_words(crew):
    await crew.coach.says(HARD)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("actually")
    await crew.coach.says("cancel it")
    await crew.coach.hears("Discarded")


def look_at(session):
    """The press that a coach finds under a session; Ilse is the second person there is."""
    return f"oa:{session + 1}:2"


async def test_the_group_view_counts_those_with_a_question_still_open(crew, ilse):
    await crew.coach.says("Heavy one\n5 x 5 deadlifts @ 32/24 kg, rest 2 min\nAMRAP 8\n10 push-ups")
    read = (await crew.coach.hears("Here's how I read it")).text
    assert "How it lands on your people" in read
    assert "Still on the way in" not in read


async def test_after_an_ok_the_coach_is_shown_who_is_left_and_then_nobody(crew):
    for name in ("Ilse", "Noor"):
        await knows(crew, name)
    for name in ("Ilse", "Noor"):
        await crew.coach.says(f"hold {name} for my OK")
        await crew.coach.hears(name)
    await crew.coach.says(HARD)
    await crew.coach.presses("Go through who needs you", on=await crew.coach.hears("2 need you"))
    needing = await crew.coach.hears("These people need you")
    await crew.coach.presses("Ilse", on=needing)
    await crew.coach.presses("OK", on=await crew.coach.hears("Ilse, as I'd do it"))
    await crew.coach.hears("These people need you")
    left = await crew.coach.last_message
    assert left.labels == ["Noor"]
    await crew.coach.presses("Noor", on=left)
    await crew.coach.presses("OK", on=await crew.coach.hears("Noor, as I'd do it"))
    await crew.coach.hears("OK: Noor gets it")
    assert "These people need you" not in (await crew.coach.last_message).text


async def test_a_tap_tells_what_everybody_gets(crew):
    ilse = await crew.has("Ilse")
    await crew.gets()
    await answers_what_is_asked(ilse)
    await crew.coach.says(SESSION.replace("Tuesday", "Wednesday"))
    read = await crew.coach.hears("Here's how I read it")
    await crew.coach.presses("Who gets what", on=read)
    told = (await crew.coach.hears("10 push-ups")).text
    assert "Ilse" in told.partition("12 goblet squats")[0]
    assert "goblet squats to a chair (10 kg dumbbell): Ilse" in told


async def test_asked_who_needs_them_a_coach_hears_of_who_was_stopped(crew):
    ilse = await crew.has("Ilse")
    await crew.gets()
    await answers_what_is_asked(ilse)
    await ilse.says("I have chest pain when I train")
    await crew.coach.says("who needs me?")
    await crew.coach.hears("No session today: Ilse")


async def test_who_needs_me_is_answered_with_no_session_too(crew):
    await crew.coach.says("who needs me?")
    await crew.coach.hears("Nothing is posted yet, and there is no draft")


async def test_who_needs_me_names_the_session_it_is_about(crew, ilse, posted):
    await crew.coach.says("hold Ilse")
    await crew.coach.hears("I show you Ilse's versions first")
    await crew.coach.says("who needs me?")
    needing = await crew.coach.hears("These people need you")
    assert "Tuesday, posted" in needing.text
    assert needing.labels == ["Ilse"]
    await crew.coach.says("AMRAP 8\n8 sit-ups\n8 lunges")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("who needs me?")
    assert "not posted yet" in (await crew.coach.hears("These people need you")).text


async def test_a_stop_sign_reaches_the_coach_at_once_without_what_it_was(crew, ilse, posted):
    await ilse.says("I did 2 rounds then stopped, felt dizzy")
    assert "Your coach hears that you stopped" in (await ilse.hears("Stop now and sit down")).text
    told = await crew.coach.hears("Ilse stopped: no session from me until they are cleared")
    assert "dizzy" not in told.text
    await ilse.says("still dizzy")
    await ilse.hears("Stop now and sit down")
    await crew.coach.hears_nothing()


async def test_what_was_only_asked_about_is_no_news_for_the_coach(crew, ilse, posted):
    await ilse.says("is it normal to feel dizzy?")
    await ilse.hears("If you feel that yourself")
    await crew.coach.hears_nothing()


async def test_the_phrases_of_the_help_work_while_a_question_is_open_that_the_coach_never_began(crew, posted):
    await crew.coach.says("can you write me a session for friday?")
    for typed, answer in (
        ("how is it going?", "So far today"),
        ("who needs me?", "Nobody needs you for"),
        ("who is in the group?", "Harbour crew"),
        ("what if 12 kg?", "I can't tell what it comes to"),
        ("what's scheduled?", "Nothing is scheduled"),
    ):
        await crew.coach.says(typed)
        await crew.coach.hears(answer)


async def test_a_coach_who_asks_why_hears_the_reason_and_nothing_of_what_they_keep_to_themselves(crew, ilse):
    await ilse.says("my wrist is sore")
    await ilse.hears("wrist")
    await crew.gets(HARD)
    await crew.coach.says("why did Ilse get other push-ups?")
    told = await crew.coach.hears("Ilse, Hard one:")
    assert "something that Ilse spares and may tell you themselves" in told.text
    assert "wrist" not in told.text
    assert "squat" not in told.text


async def test_whether_a_load_is_right_is_answered_with_what_is_expected_of_them(crew, ilse):
    await crew.gets(HARD)
    await crew.coach.says("is the load right for Ilse?")
    assert "in a row from Ilse when fresh" in (await crew.coach.hears("Ilse, Hard one:")).text
    await crew.coach.says("and why does she get so little")
    await crew.coach.hears("what you wrote would be too much in a row for Ilse")
