"""A coach who asks for the board before anybody told a score is shown the last one that there is."""


async def test_the_last_board_stands_behind_an_empty_one(crew):
    await crew.has("Ilse")
    await crew.gets()
    await crew.coach.says("Ilse got 7+3")
    await crew.coach.hears("Noted for Ilse")
    await crew.gets("Evening\nAMRAP 8\n10 lunges\n10 sit-ups")
    await crew.coach.says("/board")
    await crew.coach.hears("No scores yet for “Evening”")
    assert "7 rounds + 3" in (await crew.coach.hears("Scoreboard · Tuesday")).text


async def test_a_coach_is_told_how_scores_get_there(crew):
    await crew.gets()
    await crew.coach.says("/board")
    told = (await crew.coach.hears("No scores yet for “Tuesday”")).text
    assert "Be the first" not in told
