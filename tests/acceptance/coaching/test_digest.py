"""The coach's evening: what the day was like, in a few warm words."""

import json
import sqlite3
from contextlib import closing
from datetime import timedelta

from tests.acceptance.classes.test_classes import SESSION, berlin, comes, set_up
from tests.acceptance.people import answers_screening, answers_what_is_asked, consents, start_link


async def test_the_evening_tells_who_trained_who_looked_and_who_was_there(crew):
    ilse, bo, tam = [await crew.has(name) for name in ("Ilse", "Bo", "Tam")]
    class_ = await set_up(crew, "class Mondays 18:00, 45 min")
    await crew.gets(SESSION)
    for athlete in (ilse, bo):
        await answers_what_is_asked(athlete)
    await ilse.says("7+9, my wrist hurts")
    await ilse.hears("Noted")
    await comes(ilse, class_)
    await comes(tam, class_)
    await crew.room.travels_to(berlin("2026-03-02T18:45"))
    await ilse.presses("Yes", on=await ilse.hears("Were you there?"))
    await ilse.hears("Good to hear!")
    await crew.room.travels_to(berlin("2026-03-02T19:59"))
    assert "Your evening" not in "".join(one.text for one in await crew.coach.messages)
    await crew.room.travels_to(berlin("2026-03-02T20:00"))
    evening = await crew.coach.hears("Your evening with Harbour crew, Monday 2 March")
    assert "Trained: 1" in evening.text
    assert "Ilse: 7 rounds + 9" in evening.text
    assert "Looked at their version, not reported yet: Bo" in evening.text
    assert "Haven't opened it: Tam. That may be rest, or just a quiet day." in evening.text
    assert "There: Ilse" in evening.text
    assert "Haven't said: Tam" in evening.text
    assert "wrist" not in evening.text
    assert "One person mentioned pain" in evening.text


async def test_the_digest_comes_at_the_coachs_own_hour_and_once(crew):
    await crew.gets(SESSION)
    await crew.coach.says("digest at 21:15")
    await crew.coach.hears("Evening digest: 21:15")
    await crew.room.travels_to(berlin("2026-03-02T21:00"))
    assert "Your evening" not in "".join(one.text for one in await crew.coach.messages)
    await crew.room.travels_to(berlin("2026-03-02T21:15"))
    await crew.coach.hears("No scores yet")
    await crew.coach.says("digest at 22")
    await crew.coach.hears("Evening digest: 22:00")
    await crew.room.travels_to(berlin("2026-03-04T09:00"))
    await crew.coach.hears_nothing()


async def test_days_without_a_session_have_no_digest(crew):
    await set_up(crew)
    await crew.room.travels_to(berlin("2026-03-03T23:00"))
    assert "Your evening" not in "".join(one.text for one in await crew.coach.messages)


async def test_a_session_posted_after_that_hour_is_told_about_the_next_evening(crew):
    await crew.room.travels_to(berlin("2026-03-02T20:30"))
    await crew.gets(SESSION)
    await crew.room.travels_to(berlin("2026-03-03T19:59"))
    assert "Your evening" not in "".join(one.text for one in await crew.coach.messages)
    await crew.room.travels_to(berlin("2026-03-03T20:00"))
    await crew.coach.hears("Your evening with Harbour crew, Monday 2 March")


async def test_who_never_opened_a_private_chat_is_named_so(crew):
    tam, ada = [await crew.room.person(name) for name in ("Tam", "Ada")]
    for one in (tam, ada):
        await one.joins(crew.group)
    await ada.opens(await start_link(crew.group))
    await ada.hears("May I keep these notes?")
    await crew.gets(SESSION)
    await tam.says("6+10", in_=crew.group, reply_to=await crew.group.last_message)
    await crew.group.hears("I keep nothing of you without your yes")
    await crew.room.travels_to(berlin("2026-03-02T20:00"))
    evening = await crew.coach.hears("Your evening")
    assert "6 rounds + 10" not in evening.text
    assert "In the group only: Tam." in evening.text
    assert "Still at my first questions: Ada." in evening.text


async def test_who_may_not_train_yet_has_not_just_failed_to_open_it(crew):
    ruth = await crew.room.person("Ruth")
    await ruth.joins(crew.group)
    await ruth.opens(await start_link(crew.group))
    await consents(ruth)
    await answers_screening(ruth, ("Yes", "Yes"))
    await ruth.hears("Please see a doctor")
    await crew.gets(SESSION)
    await crew.room.travels_to(berlin("2026-03-02T20:00"))
    evening = await crew.coach.hears("Your evening")
    assert "No version for now: Ruth." in evening.text
    assert "Haven't opened it" not in evening.text


async def test_the_coach_switches_the_digest_off_and_on_again_in_words(crew):
    await crew.gets(SESSION)
    await crew.coach.says("no evening digest please")
    await crew.coach.hears("Evening digest: none")
    await crew.room.travels_to(berlin("2026-03-02T23:00"))
    await crew.coach.hears_nothing()
    await crew.room.travels_to(berlin("2026-03-03T09:00"))
    await crew.gets(SESSION)
    await crew.coach.says("digest on again")
    await crew.coach.hears("Evening digest: 20:00, on your group's clock")
    await crew.room.travels_to(berlin("2026-03-03T20:00"))
    await crew.coach.hears("Your evening with Harbour crew, Tuesday 3 March")


async def test_a_tap_under_the_digest_stops_the_next_ones(crew):
    await crew.gets(SESSION)
    await crew.room.travels_to(berlin("2026-03-02T20:00"))
    evening = await crew.coach.hears("Your evening")
    await crew.coach.presses("No more digests", on=evening)
    kept = await crew.coach.hears("Evening digest: none")
    await crew.room.travels_to(berlin("2026-03-03T09:00"))
    await crew.gets(SESSION)
    await crew.room.travels_to(berlin("2026-03-03T23:00"))
    await crew.coach.hears_nothing()
    await crew.coach.presses("Evening digest", on=kept)
    await crew.coach.presses("21:00", on=await crew.coach.hears("When shall the evening digest come?"))
    await crew.coach.hears("Evening digest: 21:00")


async def test_a_tap_under_the_digest_chooses_another_hour_in_words(crew):
    await crew.gets(SESSION)
    await crew.room.travels_to(berlin("2026-03-02T20:00"))
    await crew.coach.presses("Another hour", on=await crew.coach.hears("Your evening"))
    await crew.coach.hears("When shall the evening digest come?")
    await crew.coach.says("half past nine, so 21:30")
    await crew.coach.hears("Evening digest: 21:30")
    await crew.room.travels_to(berlin("2026-03-03T09:00"))
    await crew.gets(SESSION)
    await crew.room.travels_to(berlin("2026-03-03T21:29"))
    await crew.coach.hears_nothing()
    await crew.room.travels_to(berlin("2026-03-03T21:30"))
    await crew.coach.hears("Your evening with Harbour crew, Tuesday 3 March")


async def waits_for_an_ok(crew):
    """Somebody pregnant, whose version the coach looks at first."""
    lene = await crew.has("Lene")
    await crew.gets(SESSION)
    await lene.presses("My version")
    await lene.hears("What do you have")
    await lene.says("a chair")
    for _ in range(10):
        message = await lene.hears("")
        if "looks at your version first" in message.text:
            break
        if "needs to spare" in message.text or "need to spare" in message.text:
            await lene.says("24 weeks pregnant")
        elif message.all_buttons:
            await lene.presses(message.all_buttons[0].label, on=message)
    return lene


async def test_a_version_that_has_the_coachs_ok_asks_for_no_word_in_the_evening(crew):
    lene = await waits_for_an_ok(crew)
    await crew.coach.hears("needs your OK before this session")
    await crew.coach.presses("OK, send it to them")
    await lene.hears("Your version")
    await crew.room.travels_to(berlin("2026-03-02T20:00"))
    evening = await crew.coach.hears("Your evening")
    assert "Looked at their version, not reported yet: Lene" in evening.text
    assert "need a word from you" not in evening.text


async def test_whoever_is_pregnant_gets_no_rank_before_the_coachs_ok_either(crew):
    lene = await waits_for_an_ok(crew)
    await lene.says("4+3")
    noted = await lene.hears("Noted: 4 rounds + 3")
    assert "No rank today" in noted.text
    assert "It was as written" not in noted.labels


async def test_a_coach_who_asks_sees_the_day_so_far(crew, ilse):
    await crew.coach.says("who hasn't reported?")
    await crew.coach.hears("No session was posted today")
    await crew.gets(SESSION)
    await answers_what_is_asked(ilse)
    await crew.coach.says("who hasn't reported yet?")
    so_far = await crew.coach.hears("So far today in Harbour crew")
    assert "not reported yet: Ilse" in so_far.text
    await ilse.says("how is everyone doing?")
    assert "So far" not in (await ilse.hears("")).text


async def test_thanks_are_taken_kindly_and_leave_the_question_open(crew):
    await crew.gets(SESSION)
    ilse = await crew.has("Ilse")
    await ilse.hears("What do you have")
    await ilse.says("great, thank you!")
    await ilse.hears("You're welcome!")
    await ilse.says("a chair")
    await ilse.hears("I've noted: a chair")


async def test_a_coach_alone_hears_of_six_scores_far_above_what_was_expected(crew, settings, ilse):
    for day in range(6):
        await crew.gets(f"Session {'abcdef'[day]}\nAMRAP 12\n8 push-ups\n15 air squats")
        await answers_what_is_asked(ilse)
        await ilse.says(f"8+{day}")
        await ilse.hears("How hard was")
        await ilse.presses("9")
        await crew.room.travels(timedelta(days=1) if day < 5 else timedelta(minutes=1))
    expected_of_all(settings, {"unit": "rounds", "low": 4, "expected": 5, "high": 6})
    await crew.coach.says("how did it go?")
    told = await crew.coach.hears("So far today")
    assert "Six times running far above what I'd expect: Ilse" in told.text


def expected_of_all(settings, forecast):
    """As if that had been expected of every version when it was shown."""
    with closing(sqlite3.connect(settings.database)) as connection, connection:
        connection.execute("UPDATE version SET foreseen = ?", (json.dumps({"blocks": [forecast]}),))


async def test_the_evening_names_who_gave_nearly_all_in_their_first_sessions(crew):
    ilse, bo = await crew.has("Ilse"), await crew.has("Bo")
    await crew.gets(SESSION)
    for athlete, effort in ((ilse, "9"), (bo, "5")):
        await athlete.says("7+9")
        await athlete.presses(effort, on=await athlete.hears("How hard was the whole session"))
        await athlete.hears("Did anything hurt?")
    await crew.coach.says("how is it going?")
    so_far = await crew.coach.hears("So far today")
    assert "in their first sessions or twice in a row: Ilse." in so_far.text


async def test_who_said_no_to_notes_is_neither_at_the_questions_nor_waited_for(crew):
    await crew.gets()
    bridie = await crew.room.person("Bridie")
    await bridie.joins(crew.group)
    await bridie.opens(await start_link(crew.group))
    await bridie.hears("May I keep these notes?")
    await bridie.presses("No")
    await crew.coach.says("how is it going?")
    told = (await crew.coach.hears("So far today")).text
    assert "Said no to my notes, and train from the post as it is: Bridie." in told
    assert "first questions" not in told
    assert "Haven't opened it" not in told
