"""What an athlete writes in a hurry: several things with no comma, what nobody knows, a class they won't make."""

import pytest

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world

ROUNDS = """Thursday
5 rounds for time
400 m run
15 kettlebell swings @ 16/12 kg
10 burpees"""


@world
async def tove(crew):
    person = await crew.has("Tove")
    await crew.gets()
    await answers_what_is_asked(person)
    return person


@world
async def sven(crew):
    person = await crew.has("Sven")
    await crew.gets(ROUNDS)
    await answers_what_is_asked(person)
    return person


async def test_each_of_three_things_told_in_one_breath_is_taken(crew, tove):
    await tove.says("home again 40 min wrist fine now")
    told = await tove.hears("Noted: 40 minutes")
    assert "Welcome home!" in told.text
    assert "your wrist" in told.text


async def test_a_tight_muscle_and_a_bad_night_are_both_heard(crew, tove):
    await tove.says("tight calf + slept badly")
    told = await tove.hears("sore calves")
    assert "sleep is training" in told.text


async def test_one_joint_is_fine_and_the_next_is_spared(crew, tove):
    await tove.says("knees fine, shoulder not so good")
    told = await tove.hears("Good to hear about your knee")
    assert "I'm sorry about your shoulder" in told.text


async def test_what_is_sold_and_what_came_need_no_comma(crew, tove):
    await tove.says("got a band sold the chair")
    told = await tove.hears("New: a band")
    assert "Gone: the chair" in told.text


@pytest.mark.parametrize("words", ["couldn't tell you", "beats me tbh", "no idea, never done one"])
async def test_whoever_cannot_tell_a_score_is_let_go(crew, tove, words):
    await tove.says("DNF")
    await tove.hears("Stopping is fine")
    await tove.says(words)
    await tove.hears("it needs no number")


async def test_what_was_left_out_stays_with_the_number_that_comes_later(crew, sven):
    await sven.says("DNF")
    await sven.hears("How many repetitions")
    await sven.says("only 3 of 5")
    await sven.hears("Noted: 3 rounds")


async def test_a_reminder_by_the_clock_is_told_to_be_none(crew, tove):
    await tove.says("remind me at 6pm")
    await tove.hears("I can't ring at a time of its own")


async def test_the_share_of_a_best_is_reckoned_once_it_is_known(crew, tove):
    await tove.says("80% of my back squat")
    await tove.hears("your best back squat I don't know yet")
    await tove.says("my best back squat is 100 kg")
    await tove.hears("1 back squat with 100 kg")
    await tove.says("80% of my back squat")
    await tove.hears("80 kg")


async def test_the_one_class_of_a_day_is_left_with_a_way_back(crew, tove):
    await crew.coach.says("Class every Saturday at 9:00, 60 min")
    await crew.coach.presses("Yes, set it up", on=await crew.coach.hears("Here's how I read your class"))
    await crew.coach.hears("Done: Live class")
    await tove.says("I'm in for Saturday")
    await tove.hears("You're in")
    await tove.says("I won't make it Saturday")
    left = await tove.hears("OK, you're not in for Live class")
    await tove.presses("I'm in", on=left)
    await tove.hears("You're in")
    await tove.says("can't come friday")
    await tove.hears("No worries")
