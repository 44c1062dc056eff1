"""What athletes can lift, told when nobody asked, is kept and can be taken back."""

import json
from datetime import timedelta

from tests.acceptance.versions.test_changing_a_version import answers
from tests.acceptance.worlds import world

SESSION = "AMRAP 10\n5 deadlifts @ 100 kg\n10 push-ups"


@world
async def ilse(crew):
    person = await crew.has("Ilse")
    await crew.gets(SESSION)
    await answers(person, "a barbell with 150 kg")
    return person


async def evidence_of(person):
    await person.says("/export")
    message = await person.hears("Everything I've stored about you")
    stored = json.loads(await person.downloads(message))
    return [
        (one["body"]["movement"], one["body"]["kind"], one["body"]["reps"])
        for one in stored.get("evidence", [])
    ]


async def test_a_load_told_with_a_score_is_kept_and_said_back(ilse):
    before = await evidence_of(ilse)
    await ilse.says("7+12, did 225 lb for the deadlifts")
    await ilse.hears("Noted: 7 rounds + 12")
    kept = await ilse.hears("you used 225 lb for the deadlifts")
    assert await evidence_of(ilse) == [*before, ("deadlift", "score", 5.0)]
    await ilse.presses("Not right: ", on=kept)
    await ilse.hears("Forgotten")
    assert await evidence_of(ilse) == before


async def test_a_load_without_a_name_is_of_the_line_that_has_one(ilse):
    await ilse.says("7+12 used 80s")
    await ilse.hears("you used 80 kg for the deadlifts")


async def test_no_load_is_kept_from_a_session_that_hurt(ilse):
    before = await evidence_of(ilse)
    await ilse.says("7+12, deadlifts at 80 kg, my left wrist hurts")
    await ilse.hears("Until you tell me your left wrist is fine")
    assert await evidence_of(ilse) == before


async def test_what_they_can_do_is_kept_and_can_be_taken_back(ilse):
    before = await evidence_of(ilse)
    await ilse.says("I can do 10 deadlifts at 315 lb")
    kept = await ilse.hears("Kept as what you can do in a row: 10 deadlifts with 315 lb")
    assert await evidence_of(ilse) == [*before, ("deadlift", "test", 10.0)]
    await ilse.presses("Not right: ", on=kept)
    await ilse.hears("Forgotten")
    await ilse.presses("Not right: ", on=kept)
    await ilse.sees_toast("before something changed")


async def test_nobody_takes_back_what_somebody_else_told(crew, ilse):
    await ilse.says("I can do 20 push-ups")
    kept = await ilse.hears("20 push-ups")
    bo = await crew.has("Bo")
    message = await bo.hears("")
    await bo.presses_data(message, kept.button("Not right: ").data)
    await bo.sees_toast("before something changed")
    assert ("push-up", "test", 20.0) in await evidence_of(ilse)


async def test_an_ability_told_instead_of_the_answer_counts_and_the_way_goes_on(crew, bo):
    await crew.gets(SESSION)
    await bo.presses("My version")
    await bo.hears("What do you have")
    await bo.says("I can do 10 deadlifts at 140 kg")
    await bo.hears("10 deadlifts with 140 kg")
    await bo.hears("What do you have")


async def test_a_load_told_in_the_group_is_said_back_in_private_only(crew, ilse):
    tam = await crew.has("Tam")
    await tam.blocks_bot()
    post = next(one for one in reversed(await crew.group.messages) if "Tap for your own version" in one.text)
    await tam.says("6+10, deadlifts at 80 kg", in_=crew.group, reply_to=post)
    await crew.group.hears("Noted: 6 rounds + 10")
    await ilse.says("7+12, deadlifts at 80 kg", in_=crew.group, reply_to=post)
    await ilse.hears("you used 80 kg for the deadlifts")
    assert not any("you used" in one.text for one in await crew.group.messages)


async def test_what_goes_from_the_knees_is_asked_as_such_and_taken_for_no_more(crew, bo):
    await crew.gets("5 rounds for time\n20 push-ups from the knees")
    await bo.presses("My version")
    await bo.presses("Nothing, just me", on=await bo.hears("What do you have"))
    await bo.presses("No, all fine", on=await bo.hears("needs to spare"))
    await bo.hears("How many push-ups from the knees can you do in a row")
    await bo.says("24")
    assert "20 push-ups from the knees" in (await bo.hears("Your version")).text
    await crew.room.travels(timedelta(days=1))
    await crew.gets("More\n5 rounds for time\n20 push-ups")
    await bo.presses("My version")
    assert "20 push-ups on the floor" not in (await bo.hears("Your version")).text


async def test_a_load_without_its_unit_is_no_number_in_a_row(ilse):
    await ilse.says("back squat 150, dead 190, 12 pullups")
    kept = await ilse.hears("1 back squat with 150 kg")
    assert "12 pull-ups" in kept.text
    assert "1 deadlift with 190 kg" in kept.text
    assert ("back squat", "test", 1.0) in await evidence_of(ilse)


async def test_a_number_with_a_sigh_answers_the_question_that_is_open(crew, bo):
    await crew.gets("AMRAP 10\n10 push-ups")
    await bo.presses("My version")
    for _ in range(12):
        asked = await bo.hears("")
        if "in a row" in asked.text:
            break
        if "What do you have" in asked.text:
            await bo.says("a chair")
        elif asked.all_buttons:
            await bo.presses(asked.all_buttons[0].label, on=asked)
    await bo.says("oh goodness 2 maybe")
    await bo.hears("Your version")
    assert ("push-up", "test", 2.0) in await evidence_of(bo)
