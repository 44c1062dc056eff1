"""Whatever else is surely told while a question is open is done, and the question asked once more."""

import asyncio

import pytest

from tests.acceptance.people import consents, start_link
from tests.acceptance.worlds import world

SESSION = """Tuesday
AMRAP 12
10 v-ups
12 goblet squats @ 16 kg
200 m run"""


async def goes_on_to(person, words):
    await person.presses("My version")
    for _ in range(12):
        message = await person.hears("")
        if words in message.text:
            return
        if "What do you have" in message.text:
            await person.says("a 16 kg kettlebell")
        elif "What do you weigh" in message.text:
            await person.says("70")
        elif "in a row" in message.text:
            await person.says("25")
        elif message.all_buttons:
            await person.presses(message.all_buttons[0].label, on=message)
    raise AssertionError(f"“{words}” was never said")


@world
async def asked_how_many(crew):
    bo = await crew.has("Bo")
    await crew.gets(SESSION)
    await goes_on_to(bo, "How many v-ups")
    return bo


@world
async def asked_how_hard(crew):
    bo = await crew.has("Bo")
    await crew.gets(SESSION)
    await goes_on_to(bo, "Your version")
    await bo.says("5+3")
    await bo.hears("How hard")
    return bo


@world
async def asked_for_consent(crew):
    alva = await crew.room.person("Alva")
    await alva.joins(crew.group)
    await crew.gets(SESSION)
    await alva.opens(await start_link(crew.group))
    await alva.hears("May I keep")
    return alva


@pytest.mark.parametrize(
    ("said", "answered"),
    [
        ("left knee twinges on squats", "I'm sorry about your left knee"),
        ("how long will this take?", "The session has 12 minutes"),
        ("i only have 25 minutes", "25 minutes, for today"),
        ("can i do squats instead", "tap “Change a line” under it"),
        ("is class on tonight?", "No live class is planned"),
    ],
)
async def test_another_matter_is_answered_and_the_question_stays(asked_how_many, said, answered):
    await asked_how_many.says(said)
    await asked_how_many.hears(answered)
    await asked_how_many.hears("How many v-ups")
    await asked_how_many.says("about 12")
    assert "v-ups can you" not in (await asked_how_many.hears("")).text


async def test_no_pain_is_no_number(asked_how_many):
    await asked_how_many.says("no pain")
    await asked_how_many.hears("Good. Then nothing changes.")
    await asked_how_many.hears("How many v-ups")


async def test_minutes_told_before_there_is_a_version_are_in_the_first(asked_how_many):
    await asked_how_many.says("i only have 10 minutes")
    await asked_how_many.hears("How many v-ups")
    for _ in range(4):
        await asked_how_many.says("20")
        message = await asked_how_many.hears("")
        if "Your version" in message.text:
            assert "12 minutes" not in message.text
            return
    raise AssertionError("no version after four answers")


@pytest.mark.parametrize(
    ("said", "answered"),
    [
        ("8, left knee hurt", "until you tell me your left knee is fine"),
        ("7 and nothing hurts", "Good to hear"),
        ("8 running sucks", "Did anything hurt?"),
    ],
)
async def test_how_hard_it_was_and_what_hurt_are_told_in_one(asked_how_hard, said, answered):
    await asked_how_hard.says(said)
    assert answered.lower() in (await asked_how_hard.hears("")).text.lower()


async def test_what_hurt_is_told_in_words_as_well(asked_how_hard):
    await asked_how_hard.says("8")
    await asked_how_hard.hears("Did anything hurt?")
    await asked_how_hard.says("bit sore in the legs")
    await asked_how_hard.hears("Sore muscles are a normal answer")


@pytest.mark.parametrize("said", ["i have a bad knee", "right knee is bad", "no idea"])
async def test_only_a_yes_is_a_yes(asked_for_consent, said):
    await asked_for_consent.says(said)
    await asked_for_consent.hears("May I keep these notes?")


async def test_help_is_there_before_anything_else(asked_for_consent):
    await asked_for_consent.says("whats the class link")
    await asked_for_consent.hears("No live class is planned")
    await consents(asked_for_consent)
    await asked_for_consent.says("what can you do?")
    await asked_for_consent.hears("Here's what you can send me")
    await asked_for_consent.hears("18 or older")


async def test_a_medicine_is_heard_while_something_is_asked_and_the_question_stays(asked_how_many):
    await asked_how_many.says("I take beta blockers by the way")
    await asked_how_many.hears("never go by a watch")
    await asked_how_many.hears("I'll keep in mind: beta blockers")
    await asked_how_many.hears("How many v-ups")


async def test_feeling_sick_of_training_is_heard_and_no_number_of_it_answers(asked_how_many):
    await asked_how_many.says("was it ok to stop after 2 rounds? felt a bit sick after")
    await asked_how_many.hears("Stopping was right")
    await asked_how_many.hears("How many v-ups")


async def test_what_is_told_before_the_yes_is_said_not_to_be_kept(asked_for_consent):
    await asked_for_consent.says("my knee is a bit dodgy")
    await asked_for_consent.hears("I haven't kept “my knee is a bit dodgy”")
    await asked_for_consent.says("Yes, you may. I am 71 and take a blood thinner.")
    await asked_for_consent.hears("bruise and bleed")
    await asked_for_consent.hears("I'll keep in mind: blood thinners")
    await asked_for_consent.hears("Have you lately had any of these")


async def test_whoever_belongs_to_no_group_is_shown_the_way_in_whole_once(crew):
    stranger = await crew.room.person("Bo")
    await stranger.says("hi is this the training thing")
    await stranger.hears("I'm a helper for small training groups")
    await stranger.says("my knee is a bit dodgy")
    await stranger.hears("I haven't kept “my knee is a bit dodgy”. Nothing you write here counts before")


@pytest.mark.parametrize("words", ["my coach said do it 3x only", "there were 2 rounds left"])
async def test_a_number_of_something_else_answers_nothing(asked_how_many, words):
    await asked_how_many.says(words)
    again = await asked_how_many.hears("I didn't get")
    assert "How many v-ups" in again.text


async def test_pain_beside_the_last_answer_is_heard_before_the_version_that_spares_it(asked_how_many):
    await asked_how_many.says("10ish, but my shoulder hurts")
    await asked_how_many.hears("I'm sorry about your shoulder")
    await asked_how_many.hears("stop if your shoulder hurts")  # the version: nothing else was to be asked


async def test_another_movement_than_the_asked_one_is_kept_as_that(asked_how_many):
    await asked_how_many.says("um maybe 3 pushups, from my knees?")
    await asked_how_many.hears("Kept as what you can do in a row: 3 push-ups")
    await asked_how_many.hears("How many")


async def test_who_wants_the_session_now_hears_how_many_questions_are_left_and_may_have_it_gentle(
    asked_how_many,
):
    await asked_how_many.says("/today")
    await asked_how_many.hears("then your version is there")
    await asked_how_many.presses("Something gentle now")
    shown = await asked_how_many.hears("Your version")
    assert "v-ups" not in shown.text.split("Why it's so")[0]


@world
async def has_version(crew):
    cal = await crew.has("Cal")
    await crew.gets("Tuesday\nStrength\n3 sets\n10 goblet squats @ 16/12\nAMRAP 12\n10 push-ups\n200 m run")
    await goes_on_to(cal, "Your version")
    return cal


async def test_a_score_that_was_just_noted_is_known(has_version):
    await has_version.says("6+4")
    noted = await has_version.hears("Noted, part 2")
    assert "part 2" in noted.text
    await has_version.says("how did I do?")
    await has_version.hears("6 rounds + 4")
    await has_version.says("how am I doing vs the others")
    await has_version.hears("1. Cal  6 rounds + 4")


async def test_what_somebody_else_reached_is_left_to_them(has_version):
    await has_version.says("did it w/ Bo, he got 3+2, me 6+4")
    await has_version.hears("“he got 3+2” is theirs")
    await has_version.hears("6 rounds + 4")
    await has_version.says("my sister did it with me, she got 4 rounds")
    await has_version.hears("How far did you get yourself?")


async def test_pain_beside_a_second_score_is_heard_and_both_can_be_taken_back(has_version):
    await has_version.says("6+4")
    await has_version.hears("Noted, part 2")
    await has_version.says("6+5 but knee sore")
    await has_version.hears("I'm sorry about your knee")
    await has_version.hears("Shall it be")
    await has_version.presses("No, leave it")
    await has_version.hears("I've noted nothing")
    await has_version.says("sorry my wrist hurts too")
    await has_version.hears("your wrist")
    await has_version.says("undo")
    asked = await has_version.hears("Which one isn't right?")
    labels = [one.label for one in asked.all_buttons]
    assert labels == ["6 rounds + 4 (part 2)", "Knee: it's fine", "Wrist: it's fine"]


# What an athlete tells, asks or wishes, and what of its answer shows that it was heard.
CLAUSES = {
    "I've only got 15 minutes": "15 minutes",
    "didnt sleep": "less is the clever thing",
    "push-ups too hard": "Changed:",
    "my clock is New York": "New York",
    "remind me 30 min before": "30 minutes",
    "got a 20 kg kettlebell now": "a kettlebell of 20 kg",
    "my knee hurts": "your knee",
}


@pytest.mark.parametrize("first", CLAUSES)
async def test_of_two_things_told_together_each_has_its_answer(has_version, first):
    for second in CLAUSES.keys() - {first}:
        before = len(await has_version.messages)
        await has_version.says(f"{first}, {second}")
        for _ in range(40):
            said = " ".join(one.text for one in (await has_version.messages)[before + 1 :])
            if CLAUSES[first] in said and CLAUSES[second] in said:
                break
            await asyncio.sleep(0.1)
        assert CLAUSES[first] in said, (first, second, said)
        assert CLAUSES[second] in said, (first, second, said)


async def test_a_medicine_told_early_stays_and_the_rest_is_still_asked_for(asked_for_consent):
    await asked_for_consent.says("yes, and I take a blood thinner")
    await asked_for_consent.hears("I'll keep in mind: blood thinners")
    await passes_on(asked_for_consent)
    await asked_for_consent.says("a 16 kg kettlebell")
    await asked_for_consent.hears("anything your body needs to spare?")
    await asked_for_consent.presses("No, all fine")
    await asked_for_consent.says("/me")
    known = await asked_for_consent.hears("here's what I know")
    assert "To spare: blood thinners" in known.text


async def passes_on(person):
    for words, answer in zip(
        ("18 or older", "lately had", "Has a doctor", "last three"), "YNNY", strict=True
    ):
        await person.hears(words)
        await person.presses({"Y": "Yes", "N": "No"}[answer])
    await person.hears("What do you have")


async def test_a_score_told_with_feeling_sick_is_taken_all_the_same(has_version):
    await has_version.says("3+2 felt sick after")
    await has_version.hears("Stopping was right")
    await has_version.hears("3 rounds + 2")


async def test_pain_is_heard_while_the_part_of_a_score_is_asked_for(has_version):
    await has_version.says("20 min")
    await has_version.hears("Which part is that score for")
    await has_version.says("push-ups hurt my wrist and i only have 20 min")
    await has_version.hears("your wrist")
    await has_version.hears("20 minutes")
