"""How many somebody can do is answered by a clause of nothing but that; what else is said is left over."""

import pytest

from core.notation.ability_answers import ability_answer


@pytest.mark.parametrize(
    ("text", "reps"),
    [
        ("15", 15), ("10ish", 10), ("about 3", 3), ("um... 4?", 4), ("8 or 9", 8), ("half a dozen", 6),
        ("not sure, maybe 10", 10), ("12 reps with the 12kg", 12), ("none yet", 0), ("can't do any", 0),
        ("never done one", 0), ("never done more than 5", 5),
    ],
)  # fmt: skip
def test_a_clause_of_nothing_but_a_number_answers(text, reps):
    told = ability_answer(text, "push-up")

    assert told is not None
    assert told.reps == reps
    assert told.rest == ""


@pytest.mark.parametrize(
    "text",
    [
        "my coach said do it 3x only", "was it ok to stop after 2 rounds?", "3 rounds", "20 kg", "im 71", "lots",
        "I have 2 dumbbells", "did 7+12", "class is at 6", "my son is 12",
    ],
)  # fmt: skip
def test_a_number_of_something_else_answers_nothing(text):
    assert ability_answer(text, "push-up") is None


@pytest.mark.parametrize(
    ("text", "movement", "variant"),
    [
        ("um maybe 3 pushups, from my knees?", "push-up", "knees"),
        ("like 5 wall push ups", "push-up", "hands-on-wall"),
        ("3 on my knees", None, "knees"),
        ("12 goblet squats", "goblet squat", None),
    ],
)
def test_the_movement_and_its_way_are_heard_with_it(text, movement, variant):
    told = ability_answer(text, "push-up")

    assert told is not None
    assert (told.movement, told.variant) == (movement, variant)


def test_what_stands_beside_the_answer_is_left_over():
    told = ability_answer("maybe 12 but my shoulder hurts", "push-up")

    assert told is not None
    assert (told.reps, told.rest) == (12, "but my shoulder hurts")
