"""A coach types sessions as they come to mind, not always beginning with how they are scored."""

import pytest

from tests.acceptance.people import answers_what_is_asked

TYPED = [
    ("21-15-9\nThrusters 43/30kg\nPull ups\n\nTime cap 12 min", "Time cap: 12 min"),
    ("3 rounds\n15 goblet squats 16/12kg\n10 pull ups\n\nTime cap 12 min", "3 rounds for time"),
    ("3 rounds\n15 burpees\n10 pull ups", "3 rounds"),
    ("Hello all\n3 rounds\n15 burpees\n10 pull ups\nhave fun", "10 pull-ups"),
    ("Back squat 5x5 @ 75%\nrest 2-3 min", "5 sets"),
    ("5 x 5 Back squat @75%", "5 sets"),
    ("5 km run", "5000 m run"),
    ("Run 5 km for time", "5000 m run"),
    ("8x400m run, rest 90s", "400 m run"),
    ("10 push ups\n20 air squats", "for time"),
    ("3 rounds\n15 wall balls", "done without a clock"),
    ("21-15-9\nthrusters\ncal row", "cal row"),
]


@pytest.mark.parametrize(
    ("typed", "title"),
    [
        ("right tmrw lets do legs: 3 rounds, 15 squats, 10 lunges, 20 sit ups, rest 1 min", "tmrw legs"),
        ("evening session thurs: 4 rounds 10 press ups, 20 squats and a 200m run", "thurs evening session"),
    ],
)
async def test_a_session_told_in_one_breath_is_read_back(crew, typed, title):
    await crew.coach.says(typed)
    told = (await crew.coach.hears("Here's how I read it")).text
    assert title in told
    assert "squats" in told


@pytest.mark.parametrize(("typed", "read_back"), TYPED)
async def test_what_can_only_be_work_is_read_back_to_the_coach_as_a_session(crew, typed, read_back):
    await crew.coach.says(typed)
    await crew.coach.hears(read_back)


async def test_a_ladder_without_an_end_is_answered_with_how_to_write_it(crew):
    await crew.coach.says("Death by burpees")
    await crew.coach.hears("→ EMOM 10: 1-2-3-4-5-6-7-8-9-10 burpees")
    await crew.coach.says("EMOM 5: 1-2-3-4-5 burpees")
    await crew.coach.hears("1-2-3-4-5")
    await crew.coach.says("AMRAP 10\n10 air squats\n\nDeath by burpees")
    await crew.coach.hears("did you mean EMOM 10: 1-2-3-4-5-6-7-8-9-10 burpees?")


@pytest.mark.parametrize("typed", ["hello everybody", "bring 2 dumbbells", "see you at 8"])
async def test_a_coach_who_chats_drafts_nothing(crew, typed):
    await crew.coach.says(typed)
    assert "Post" not in (await crew.coach.last_message).text


async def test_a_minute_of_rest_stands_in_read_back_post_and_version(crew, ilse):
    minutes = "min 1: 15 wall balls 9/6kg\nmin 2: 12 KB swings 24/16\nmin 3: 10 burpees\nmin 4: 40s plank\nmin 5: rest"
    await crew.coach.says(f"EMOM 15\n{minutes}")
    await crew.coach.hears("Minute 5: rest")
    await crew.coach.presses("Post now")
    await crew.group.hears("Minute 5: rest")
    await answers_what_is_asked(ilse)
    version = (await ilse.last_message).text
    assert [f"Minute {place}: " in version for place in range(1, 6)] == [True] * 5
    assert "Minute 5: rest" in version


async def test_two_parts_without_a_title_can_be_told_apart_in_read_back_post_and_version(crew, ilse):
    await crew.coach.says("every 2 min x 6\n5 back squats\n\nAMRAP 10\n10 burpees")
    await crew.coach.hears("Main 2\nAs many rounds as possible in 10 min")
    await crew.coach.presses("Post now")
    await crew.group.hears("Main 1\nEvery 2 min")
    await answers_what_is_asked(ilse)
    version = (await ilse.last_message).text
    assert version.index("Main 1") < version.index("Main 2")


async def test_two_movements_of_one_minute_stand_in_read_back_post_and_version(crew, ilse):
    await crew.coach.says("EMOM 12\nmin 1: 10 sit-ups\nmin 2: 5 push-ups, 10 air squats")
    await crew.coach.hears("Minute 2: 10 air squats")
    await crew.coach.presses("Post now")
    await crew.group.hears("Minute 2: 10 air squats")
    await answers_what_is_asked(ilse)
    assert (await ilse.last_message).text.count("Minute 2: ") == 2


async def test_calories_stay_calories_in_the_version(crew, ilse):
    await crew.coach.says("max cal row in 2 min")
    await crew.coach.hears("cal row")
    await crew.coach.presses("Post now")
    await crew.group.hears("cal row")
    await answers_what_is_asked(ilse)
    await ilse.says("bought a rowing machine")
    await ilse.hears("rowing machine")
    await ilse.says("/today")
    await ilse.hears("row on the machine for calories")


async def test_a_sentence_about_somebody_of_the_group_posts_nothing_to_all(crew):
    await crew.has("Ilse")
    await crew.coach.says("AMRAP 9\n5 push-ups\n10 air squats")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("send it out to Ilse")
    await crew.coach.hears("When shall I post it?")
    assert not any("My version" in one.labels for one in await crew.group.messages)
    await crew.coach.says("post it")
    await crew.group.hears("Tap for your own version")


async def test_a_scheduled_post_is_moved_and_sent_in_words(crew):
    await crew.coach.says("AMRAP 9\n5 push-ups\n10 air squats")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("post it tomorrow at 6am")
    await crew.coach.hears("at 06:00")
    await crew.coach.says("change it to 7am")
    await crew.coach.hears("at 07:00")
    await crew.coach.says("actually post it now please")
    await crew.coach.hears("Posted to")


async def test_how_somebody_is_doing_are_their_latest_scores(crew, posted):
    ilse = await crew.has("Ilse")
    await crew.coach.says("how is Ilse?")
    await crew.coach.hears("I know of no score of Ilse so far")
    await answers_what_is_asked(ilse)
    await ilse.says("7+3")
    await ilse.hears("Noted")
    await crew.coach.says("how is Ilse doing?")
    told = await crew.coach.hears("Ilse did lately:")
    assert "2 March: 7 rounds" in told.text
    assert "too few scores yet" in told.text
    await crew.coach.presses("Their version", on=told)
    await crew.coach.hears("Ilse, as I'd do it")


async def test_who_asks_how_somebody_is_hears_scores_told_without_a_version_and_what_they_have(crew, ilse):
    await ilse.says("i have a 12 kg kettlebell")
    await ilse.hears("At home you have now")
    await crew.gets()
    await ilse.says("7+12")
    await ilse.hears("Noted")
    await crew.coach.says("how is Ilse?")
    told = (await crew.coach.hears("did lately")).text
    assert "7 rounds + 12" in told
    assert "At home: a kettlebell of 12 kg." in told


async def test_a_number_that_answers_no_question_is_nobodys_score(crew, ilse):
    await crew.gets("Today\n10 goblet squats @ 16/12\nmax push-ups in 2 min")
    await ilse.says("i have a 12 kg kettlebell")
    await ilse.hears("At home you have now")
    await ilse.presses("My version")
    await ilse.hears("Which is meant for you?")
    await ilse.says("30")
    await ilse.hears("Which is meant for you?")
    assert not [one for one in await crew.group.messages if "Scoreboard" in one.text]
