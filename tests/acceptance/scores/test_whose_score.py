"""A coach speaks of scores: nothing goes on the board that nobody said or agreed to."""

from datetime import timedelta

import pytest

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world


@world
async def ilse(crew):
    """Has her version of today's session."""
    person = await crew.has("Ilse")
    await crew.gets()
    await answers_what_is_asked(person)
    return person


async def test_a_coachs_own_score_is_taken_with_their_yes_only(crew, ilse):
    await crew.coach.says("7+12")
    asked = await crew.coach.hears("Is 7 rounds + 12 your own score?")
    await crew.group.hears_nothing()
    await crew.coach.presses("Yes, it's mine", on=asked)
    await crew.coach.hears("Noted: 7 rounds + 12")
    await crew.group.hears("Marit")


@pytest.mark.parametrize("answer", ["No", "no", "cancel", "stop"])
async def test_a_coach_who_says_no_is_on_no_board(crew, ilse, answer):
    await crew.coach.says("7+12")
    asked = await crew.coach.hears("your own score?")
    await (crew.coach.presses("No", on=asked) if answer == "No" else crew.coach.says(answer))
    await crew.coach.hears("All right, I've noted nothing.")
    await crew.group.hears_nothing()


async def test_a_rest_day_is_no_answer_to_a_question_about_a_score(crew, ilse):
    await crew.coach.says("7+12")
    await crew.coach.hears("your own score?")
    await crew.coach.says("today is a rest day!")
    assert "What was" not in (await crew.coach.hears("")).text
    await crew.group.hears_nothing()


async def test_a_score_of_somebody_in_so_many_words_is_taken_and_goes_at_a_tap(crew, ilse):
    await crew.coach.says("Ilse got 6 rounds and 3 reps")
    await crew.coach.hears("Noted for Ilse: 6 rounds + 3")
    await crew.group.hears("Ilse")
    await crew.coach.presses("Take it back")
    await crew.coach.hears("not counted by Marit")
    await ilse.hears("Marit noted your score for you")
    await ilse.hears("off the board for now")


async def test_a_name_and_a_score_in_short_may_be_asked_about_and_then_counts(crew, ilse):
    await crew.coach.says("Ilse 7+12")
    answer = await crew.coach.hears("7 rounds + 12")
    if "Shall I note" in answer.text:
        await crew.group.hears_nothing()
        await crew.coach.presses("Yes, for Ilse", on=answer)
        await crew.coach.hears("Noted for Ilse: 7 rounds + 12")
    await ilse.hears("Marit noted your score for you: 7 rounds + 12")


@pytest.mark.parametrize(
    "order", ["Ilse 2 rounds less please", "Ilse max 3 rounds", "let Ilse do 5 rounds", "Ilse do 10 kg less"]
)
async def test_an_order_about_somebody_is_not_their_score(crew, ilse, order):
    await crew.coach.says(order)
    assert "Noted for Ilse" not in (await crew.coach.hears("")).text
    await crew.group.hears_nothing()
    await ilse.hears_nothing()


@pytest.mark.parametrize("words", ["Bo got 6 rounds and 3 reps", "Kim 16:20", "Bo: 7+12"])
async def test_a_name_that_nobody_has_is_said_and_never_guessed(crew, ilse, words):
    await crew.coach.says(words)
    await crew.coach.hears(
        f"I know nobody called {words[:3].strip(' :')} in Harbour crew, so I've noted nothing."
    )
    await crew.group.hears_nothing()


@pytest.mark.parametrize("words", ["time cap 25", "1 min rest b/w"])
async def test_a_change_of_the_session_is_no_score(crew, ilse, words):
    await crew.coach.says(words)
    assert "score" not in (await crew.coach.hears("")).text


@pytest.mark.parametrize("words", ["cancel", "stop", "no"])
async def test_a_no_to_nothing_changes_nothing_and_says_so(crew, ilse, words):
    await crew.coach.says(words)
    await crew.coach.hears("Nothing was waiting for an answer")


@pytest.mark.parametrize(
    "pasted",
    [
        "Strength Friday\n5x5 back squat\nFinisher 3 rounds: 40s on 20s off",
        "3 rounds\n12 push-ups",
        "Finisher\n3 rounds\n40s on 20s off plank",
    ],
)
async def test_lines_that_a_coach_pasted_are_never_a_score(crew, ilse, pasted):
    await crew.coach.says(pasted)
    assert "Noted" not in (await crew.coach.hears("")).text
    await crew.group.hears_nothing()


async def test_a_coachs_reply_in_the_group_is_asked_about_in_private(crew, posted):
    post = await crew.group.last_message
    await crew.coach.says("7+12", in_=crew.group, reply_to=post)
    await crew.coach.hears("Is 7 rounds + 12 your own score?")
    await crew.group.hears_nothing()


HILLS = "Hill sprints\n8 x 20s hard uphill run, walk back down"


@world
async def two_days(crew):
    """A session of yesterday that goes for time, and one of today that goes by the metre."""
    ilse = await crew.has("Ilse")
    await crew.gets("Monday, slow and strong\n3 rounds for time:\n10 goblet squats\n12 lunges\n200 m run")
    await crew.room.travels(timedelta(hours=24))
    await crew.gets(HILLS)
    return ilse


@pytest.mark.parametrize(
    "words", ["Ilse got 15:20 on monday", "Ilse 15:20 yesterday", "Ilse did 15:20 on Monday"]
)
async def test_a_score_of_a_day_that_is_named_is_of_that_days_session(crew, two_days, words):
    await crew.coach.says(words)
    told = await crew.coach.hears("15:20")
    if "Shall I note" in told.text:
        await crew.coach.presses("Yes, for Ilse", on=told)
        told = await crew.coach.hears("Noted for Ilse")
    assert "Monday, slow and strong" in told.text


async def test_a_day_without_a_session_is_asked_about(crew, two_days):
    await crew.coach.says("Ilse got 15:20 on saturday")
    await crew.coach.hears("Which session")
    await crew.group.hears_nothing()


@pytest.mark.parametrize(
    ("words", "asked"),
    [
        ("Ilse got 4200 m", "Really 4200 m?"),
        ("Ilse told me she ran 4.2k in 25 min", "Really 4200 m?"),
    ],
)
async def test_what_is_no_score_of_that_day_is_asked_before_anybody_reads_it(crew, two_days, words, asked):
    await crew.coach.says(words)
    await crew.coach.hears(asked)
    await crew.group.hears_nothing()


async def test_a_score_put_right_takes_the_place_of_the_one_before(crew, two_days):
    await crew.coach.says("Ilse did 15:10 yesterday")
    await crew.coach.hears("Noted for Ilse: 15:10")
    await crew.coach.says("Ilse did 14:10 yesterday not 15:10")
    await crew.coach.hears("Noted for Ilse: 14:10")


async def test_a_number_in_another_matter_answers_no_question_about_a_score(crew, two_days):
    await crew.coach.says("Ilse got 15:20")
    asked = await crew.coach.hears("")
    await crew.coach.says("Petra starts with us on monday, she's 62")
    assert (await crew.coach.hears("")).text != asked.text
    await crew.group.hears_nothing()


async def test_a_small_name_that_nobody_has_is_nobodys_score(crew, ilse):
    await crew.coach.says("ole got 4")
    await crew.coach.hears("I know nobody called ole in Harbour crew, so I've noted nothing.")
    await crew.group.hears_nothing()


async def test_what_each_of_two_did_is_noted_for_both(crew, ilse):
    await crew.has("Bo")
    await crew.coach.says("ilse n bo did 3 rounds each")
    told = await crew.coach.hears("Ilse: 3 rounds, scaled")
    assert "Bo: 3 rounds, scaled" in told.text


async def test_whether_somebody_may_do_something_is_their_midwifes_to_say(crew, ilse):
    await crew.coach.says("is it ok for ilse to run at 28 weeks?")
    await crew.coach.hears("midwife or doctor says so first")


@pytest.mark.parametrize(
    "words",
    [
        "ilses score from today should be 3+12 not 3+20",
        "change Ilse's score from today to 3+12",
        "ilses score was 3+12",
    ],
)
async def test_a_coach_puts_somebodys_score_right_however_it_is_said(crew, ilse, words):
    await crew.coach.says("Ilse got 3+20")
    await crew.coach.hears("Noted for Ilse: 3 rounds + 20")
    await crew.coach.says(words)
    await crew.coach.hears("Noted for Ilse: 3 rounds + 12")


async def test_of_several_scores_in_one_message_what_is_asked_tells_whose(crew, ilse):
    await crew.has("Bo")
    await crew.coach.says("ilse got 3+12, bo got 4 or 5 rounds")
    told = await crew.coach.hears("Ilse: 3 rounds + 12, scaled")
    assert "Bo: “4 or 5 rounds”: I can't tell what score that is" in told.text
