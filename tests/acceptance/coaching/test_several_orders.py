"""A coach's message may hold several wishes: each is done for whom it names, and what isn't done is quoted."""

import pytest

from tests.acceptance.people import answers_what_is_asked
from tests.acceptance.worlds import world

HARD = "Thursday strength\n3 rounds:\n10 burpees\n12 bent-over rows\n15 push-ups\n200 m run"


@world
async def ilse(crew):
    person = await crew.has("Ilse")
    bo = await crew.has("Bo")
    await crew.gets(HARD)
    await answers_what_is_asked(person)
    await answers_what_is_asked(bo)
    return person


async def test_each_who_is_named_gets_what_is_said_of_them(crew, ilse):
    await crew.coach.says("Ilse no burpees, Bo no runs, n make the push-ups 8 for everyone")
    await crew.coach.hears("Done for Ilse")
    assert "burpee" not in (await crew.coach.hears("Ilse, as I'd do it")).text
    await crew.coach.hears("Done for Bo")
    assert "burpee" in (await crew.coach.hears("Bo, as I'd do it")).text
    await crew.coach.hears("I didn't get “make the push-ups 8 for everyone”")


async def test_what_stands_behind_an_order_and_is_none_is_quoted(crew, ilse):
    await crew.coach.says("no burpees for Ilse. post it thurs 530pm")
    await crew.coach.hears("Done for Ilse")
    await crew.coach.hears("I didn't get “post it thurs 530pm”")


@pytest.mark.parametrize("words", ["take it back for ilse", "undo that ilse thing!!"])
async def test_an_order_is_taken_back_by_the_name_of_whom_it_was_for(crew, ilse, words):
    await crew.coach.says("Ilse no burpees")
    await crew.coach.hears("Done for Ilse")
    await crew.coach.says("Bo no runs")
    await crew.coach.hears("Done for Bo")
    await crew.coach.says(words)
    await crew.coach.hears("Taken back: Ilse gets what I'd give them")
    await crew.coach.says("show me Ilse")
    assert "burpee" in (await crew.coach.hears("Ilse, as I'd do it")).text


async def test_rows_are_those_that_stand_there(crew, ilse):
    await crew.coach.says("no rows for Ilse")
    heard = await crew.coach.hears("Ilse")
    assert "There are no" not in heard.text


async def test_done_is_only_said_where_a_line_changed(crew, ilse):
    await crew.coach.says("Ilse no burpees")
    await crew.coach.hears("Done for Ilse")
    await crew.coach.says("Ilse no burpees")
    await crew.coach.hears("For Ilse this changes no line")
