"""A coach types sessions as they come to mind, not always beginning with how they are scored."""

import pytest

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
]


@pytest.mark.parametrize(("typed", "read_back"), TYPED)
async def test_what_can_only_be_work_is_read_back_to_the_coach_as_a_session(crew, typed, read_back):
    await crew.coach.says(typed)
    await crew.coach.hears(read_back)


@pytest.mark.parametrize("typed", ["hello everybody", "bring 2 dumbbells", "see you at 8"])
async def test_a_coach_who_chats_drafts_nothing(crew, typed):
    await crew.coach.says(typed)
    assert "Post" not in (await crew.coach.last_message).text
