"""Whatever an athlete tells is kept, or quoted back: nothing goes without a word."""

from tests.acceptance.worlds import world


@world
async def trond(crew):
    """Asked what he has to train with."""
    person = await crew.has("Trond")
    await crew.gets("Tuesday\nAMRAP 10\n8 push-ups\n10 kettlebell swings @ 24/16 kg")
    await person.presses("My version")
    await person.hears("What do you have to train with?")
    return person


async def test_each_lift_of_a_list_is_kept_whatever_is_asked(trond):
    await trond.says("back squat 150, dead 190, 12 pullups")
    kept = await trond.hears("1 back squat with 150 kg")
    assert "1 deadlift with 190 kg" in kept.text
    assert "12 pull-ups" in kept.text
    await trond.hears("What do you have to train with?")
    await trond.says("/me")
    known = await trond.hears("You can do:")
    assert all(told in known.text for told in ("150 kg", "190 kg", "12 pull-ups"))
    await trond.presses("Not right: 12 pull-ups")
    await trond.hears("Forgotten")
    await trond.says("/me")
    assert "12 pull-ups" not in (await trond.hears("You can do:")).text


async def test_what_is_told_once_more_takes_the_place_of_what_was_read(trond):
    await trond.says("my back squat is 105 kg for 1")
    await trond.hears("1 back squat with 105 kg")
    await trond.says("back squat 105 kg for 5")
    await trond.hears("5 back squats with 105 kg")
    await trond.says("/me")
    assert (await trond.hears("You can do:")).text.count("105 kg") == 1


async def test_what_of_a_list_nobody_knows_is_quoted(trond):
    await trond.says("back squat 150, zorbits 77")
    kept = await trond.hears("1 back squat with 150 kg")
    assert "zorbits 77" in kept.text


async def test_things_are_kept_though_a_no_stands_in_front(trond):
    await trond.says("i not have nothing only the bag school of my son and bottle water")
    kept = await trond.hears("I've noted")
    assert "backpack" in kept.text
    assert "water bottle" in kept.text


async def test_a_run_beside_no_kit_is_kept(trond):
    await trond.says("no equipment, I run 5k in 25 min")
    kept = await trond.hears("5000 m of run in 25:00")
    assert "nothing, just you" in kept.text


async def test_something_else_than_the_session_stands_on_no_board(crew, trond):
    await trond.says("nothing")
    await trond.says("ran 10k instead of the session, 47:50")
    await trond.hears("something else than the session")
    await crew.coach.says("/board")
    await crew.coach.hears("No scores yet")


async def test_an_effort_and_what_hurts_are_both_kept(trond):
    await trond.says("5+3")
    await trond.hears("How hard was")
    await trond.says("very hard for me. shoulder pain more")
    await trond.hears("shoulder")
    await trond.says("/export")
    await trond.hears("Everything I've stored")


@world
async def kjell(crew):
    """Has kettlebells and a version."""
    person = await crew.has("Kjell")
    await crew.gets("Tuesday\nAMRAP 15\n10 push-ups\n12 kettlebell swings @ 16/12 kg\n200 m run")
    await person.presses("My version")
    await person.hears("What do you have to train with?")
    await person.says("two kettlebells of 16 kg")
    await person.hears("Which is meant for you?")
    await person.presses("The first (heavier)")
    await person.hears("needs to spare")
    await person.presses("No, all fine")
    await person.hears("What do you weigh")
    await person.says("80")
    await person.hears("How many push-ups")
    await person.says("25")
    await person.hears("Your version")
    return person


async def test_two_questions_and_a_word_for_the_coach_are_each_answered(crew, kjell):
    await kjell.says("when is class, what's the rest and tell my coach I liked it")
    await crew.coach.hears("I liked it")
    answer = await kjell.hears("No live class is planned")
    assert "rest" in answer.text.rpartition("No live class")[2]
    assert "Your coach in Harbour crew reads it" in answer.text


async def test_a_bare_weight_is_of_what_is_there_and_what_was_not_is_said_not_to_have_been(kjell):
    await kjell.says("sold the 12, got a 20")
    answer = await kjell.hears("I hadn't noted anything of 12 kg")
    assert "New: a kettlebell of 20 kg" in answer.text


async def test_a_cramp_is_heard_beside_the_score(kjell):
    await kjell.says("6+15 but got a cramp in my calf")
    answer = await kjell.hears("A cramp: stop")
    assert "6 rounds + 15" in (answer.text + (await kjell.hears("Noted")).text)


async def test_another_run_is_no_score_and_an_easy_one_shows_nothing(kjell):
    await kjell.says("ran 5k in 23:40 easy")
    answer = await kjell.hears("4:44 a kilometre")
    assert "something else than the session" in answer.text
    assert "Kept" not in answer.text


async def test_minutes_of_several_days_are_kept_for_each(kjell):
    await kjell.says("tues and thurs 20 min")
    answer = await kjell.hears("for Tuesday, 3 March")
    assert "for Thursday, 5 March" in answer.text


async def test_two_wishes_of_lines_and_what_hurts_are_all_done(kjell):
    await kjell.says("skip the run, half the swings, and my wrist is sore")
    await kjell.hears("sorry about your wrist")
    await kjell.hears("Changed: 6 swings")


async def test_what_was_never_there_takes_nothing_else_with_it(kjell):
    await kjell.says("sold the treadmill lol")
    answer = await kjell.hears("I hadn't noted a treadmill")
    assert "2 kettlebells of 16 kg" in answer.text


async def test_what_nobody_shall_hear_of_is_kept_all_the_same(kjell):
    await kjell.says("my knee hurts but dont tell anyone")
    await kjell.hears("sorry about your knee")
    await kjell.hears("never shown to the group")


async def test_a_runner_gets_a_time_reckoned_from_what_they_told(kjell):
    await kjell.says("5k pb 19:50")
    await kjell.hears("5000 m of run in 19:50")
    await kjell.says("whats my 10k then")
    await kjell.hears("10 km comes to about 41:21")


async def test_a_question_that_nobody_here_can_answer_goes_to_the_coach_at_a_tap(crew, kjell):
    await kjell.says("is chocolate good for recovery")
    await kjell.hears("Your coach can")
    await kjell.presses("Ask my coach")
    await crew.coach.hears("is chocolate good for recovery")
