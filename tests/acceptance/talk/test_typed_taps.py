"""Whatever has buttons can be answered in words."""

import pytest

from tests.acceptance.classes.test_classes import SESSION
from tests.acceptance.coaching.test_noting import ilse  # noqa: F401 - a world
from tests.acceptance.people import answers_what_is_asked

NOTE = "Ilse: deadlifts at most 30 kg, her back rounds"


async def test_a_coach_says_yes_to_a_note(crew, ilse):  # noqa: F811
    await crew.coach.says(NOTE)
    await crew.coach.hears("Shall I note this for Ilse?")
    await crew.coach.says("yes")
    await crew.coach.hears("Noted, and Ilse knows")
    await ilse.hears("Your coach looked closely at your deadlifts")


@pytest.mark.parametrize(("words", "told"), [("yep", "Withdrawn from"), ("no keep it", "it stays as it is")])
async def test_a_coach_says_whether_a_post_goes(crew, posted, words, told):
    await crew.coach.says("withdraw today's session")
    await crew.coach.hears("Shall I withdraw")
    await crew.coach.says(words)
    await crew.coach.hears(told)


async def test_a_coach_sets_up_a_class(crew):
    await crew.coach.says("class every Tuesday 19:00 for an hour")
    await crew.coach.hears("Here's how I read your class")
    await crew.coach.says("yes please")
    await crew.coach.hears("Done: ")


@pytest.mark.parametrize(
    ("words", "told"), [("yes", "Everything about you is erased"), ("nope", "stays as it is")]
)
async def test_somebody_says_whether_everything_is_erased(crew, posted, words, told):
    bo = await crew.has("Bo")
    await bo.says("/forget")
    await bo.hears("Shall I erase")
    await bo.says(words)
    await bo.hears(told)


async def test_the_coach_posts_in_the_words_of_the_button(crew):
    await crew.coach.says(SESSION)
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("Post now please")
    await crew.coach.hears("Posted to")


async def test_an_answered_question_is_answered_no_more(crew, posted):
    await crew.coach.says("withdraw today's session")
    await crew.coach.presses("No, keep it", on=await crew.coach.hears("Shall I withdraw"))
    await crew.coach.hears("it stays as it is")
    await crew.coach.says("no")
    await crew.coach.hears("Nothing was waiting")


async def test_a_question_that_a_version_follows_can_be_answered_too(crew, posted):
    bo = await crew.has("Bo")
    await answers_what_is_asked(bo)
    await bo.says("/me")
    await bo.presses("To spare", on=await bo.hears("here's what I know"))
    await bo.says("sore left wrist, a tube in my ear")
    await bo.hears("Shall I pass it on to your coach")
    await bo.hears("I'll keep in mind")
    await bo.says("yes")
    await bo.hears("reads it, in your words")


async def test_a_yes_to_both_is_no_tap_on_the_last_alone(crew):
    await crew.coach.says("announce: the quay is closed on friday")
    await crew.coach.hears("the quay is closed on friday")
    await crew.coach.says("announce: bring gloves")
    await crew.coach.hears("bring gloves")
    await crew.coach.says("yes post both")
    await crew.coach.hears("")
    await crew.group.hears_nothing()


async def test_a_yes_answers_all_that_one_message_led_to(crew):
    await crew.coach.says("class tues 18:30 and thurs 7am")
    await crew.coach.hears("Thursdays at 07:00")
    await crew.coach.says("yes")
    await crew.group.hears("Tuesdays at 18:30")
    await crew.group.hears("Thursdays at 07:00")


async def test_what_was_asked_before_the_last_question_is_named_behind_its_yes(crew):
    await crew.coach.says("announce: bring gloves")
    await crew.coach.hears("Shall everybody read this?")
    await crew.coach.says("class fridays 18:00")
    await crew.coach.hears("Here's how I read your class")
    await crew.coach.says("yes")
    await crew.coach.hears("Done: ")
    assert "Post to Harbour crew" in (await crew.coach.hears("This one is still open")).labels
    await crew.coach.says("yes")
    await crew.group.hears("bring gloves")


async def test_what_was_answered_or_put_right_is_not_named_again(crew):
    await crew.coach.says("class fridays 18:00")
    await crew.coach.hears("Fridays at 18:00")
    await crew.coach.says("not 18:00 but 19")
    await crew.coach.hears("Fridays at 19:00")
    await crew.coach.says("yes")
    await crew.coach.hears("Done: ")
    await crew.coach.hears_nothing()


async def test_a_class_called_off_and_told_takes_one_yes(crew):
    await crew.coach.says("class thursdays 18:00")
    await crew.coach.presses("Yes, set it up", on=await crew.coach.hears("Here's how I read your class"))
    await crew.group.hears("There's a live class now")
    await crew.coach.says("no class this thu, im sick. tell everyone")
    await crew.coach.hears("Call this off?")
    await crew.coach.says("yes")
    assert "sick" not in (await crew.group.hears("No class on Thu 5 March")).text
    await crew.group.hears_nothing()


async def test_a_yes_behind_something_else_names_what_is_open(crew):
    await crew.coach.says("class fridays 18:00")
    await crew.coach.hears("Here's how I read your class")
    await crew.coach.says("hmm")
    await crew.coach.hears("I didn't get")
    await crew.coach.says("yes")
    assert "Yes, set it up" in (await crew.coach.hears("This one is still open")).labels


async def test_what_is_set_for_a_day_may_be_left_where_it_was_to_be_dropped(crew):
    await crew.coach.says("Fri legs\n3 rounds for time\n10 squats")
    await crew.coach.says("post fri at 6")
    await crew.coach.hears("on Friday, 6 March at 06:00")
    await crew.coach.says("drop fri")
    await crew.coach.hears("Shall I drop it?")
    await crew.coach.says("no")
    await crew.coach.hears("it stays as it is")
    await crew.coach.hears_nothing()


async def test_what_only_shows_is_named_by_its_button_long_after_it_was_in_view(crew):
    bo = await crew.has("Bo")
    await crew.gets()
    await answers_what_is_asked(bo)
    await crew.coach.says("Friday\nAMRAP 10\n10 push-ups\n200 m run")
    await crew.coach.hears("Here's how I read it")
    await crew.coach.says("class every Tuesday 19:00 for an hour")
    await crew.coach.hears("Here's how I read your class")
    await crew.coach.says("who gets what?")
    assert "I didn't get" not in (await crew.coach.hears("")).text
