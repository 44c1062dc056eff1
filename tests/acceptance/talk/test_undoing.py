"""What was taken last is taken back in words, by whoever it was taken from."""

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world


@world
async def ilse(crew):
    person = await crew.has("Ilse")
    await crew.gets()
    await answers_what_is_asked(person)
    return person


async def test_an_athlete_undoes_their_score(crew, ilse):
    await ilse.says("7+12")
    await ilse.hears("How hard")
    await ilse.says("undo")
    await ilse.hears("Taken off the board")


async def test_an_athlete_undoes_what_they_said_of_their_things(crew, ilse):
    await ilse.says("I bought a 24 kg kettlebell")
    await ilse.hears("24 kg")
    await ilse.says("oops, take that back")
    await ilse.hears("Undone")


async def test_an_athlete_undoes_the_line_they_changed(crew, ilse):
    await ilse.says("push-ups too hard")
    await ilse.hears("Changed:")
    await ilse.says("undo")
    await ilse.hears("Here's your new version")


async def test_a_coach_undoes_an_order_and_deletes_a_score_by_name(crew, ilse):
    await ilse.says("7+12")
    await ilse.hears("How hard")
    await crew.coach.says("no push-ups for Ilse this week")
    await crew.coach.hears("Ilse, as I'd do it")
    await crew.coach.says("undo")
    await crew.coach.hears("Taken back")
    await crew.coach.says("delete ilse's score")
    await crew.coach.hears("not counted by Marit")
    await ilse.hears("off the board for now")


async def test_where_there_is_nothing_to_take_back_it_is_said(crew, ilse):
    await ilse.says("hello")
    await ilse.hears("Hello")
    await ilse.says("undo")
    await ilse.hears("nothing of just now that I could take back")


async def test_a_score_goes_from_the_board_alone(crew, ilse):
    await ilse.says("7+12")
    await ilse.hears("How hard")
    await ilse.says("i dont want my score on the board")
    await ilse.hears("off the board")
