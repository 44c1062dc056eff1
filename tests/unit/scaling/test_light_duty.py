"""Whoever may go up to moderate does nothing vigorous, however easy a set of it is."""

import pytest

from bot.words.reasons import reason_words
from core.athletes.values import Screening, Space, Today
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.scaling.barriers import SORE, is_vigorous
from core.scaling.values import Because, Change
from tests.unit.scaling.cases import Case
from tests.unit.scaling.people import athlete, did, lines

AMRAP = "AMRAP 15\n"


def known_disease(*owns, tests=(), **known):
    """Active, with a known disease and no symptoms: up to moderate until cleared for more."""
    return athlete(screening=Screening.MODERATE, owns=owns, tests=tests, **known)


INSTEAD = [
    Case("200 m run", known_disease(), "75 s brisk walk", Because.LIGHT_DUTY, "Easier on purpose"),
    Case(
        "10 burpees",
        known_disease("chair", tests=[did("burpee", 40)]),
        "8 burpees stepping back, hands on a chair",
        Because.LIGHT_DUTY,
        "Easier on purpose",
    ),
    Case(
        "500 m row",
        known_disease("rower"),
        "500 m row gently on the machine",
        Because.LIGHT_DUTY,
        "the distance stays the same",
    ),
    Case(
        "50 rope skips",
        known_disease("skipping rope", tests=[did("rope skip", 200)]),
        "40 quick heel lifts as if with a rope, no jump",
        Because.LIGHT_DUTY,
        "Easier on purpose",
    ),
    Case(
        "15 swings @ 12 kg",
        known_disease("kettlebell 12", tests=[did("swing", 50, 12)]),
        "10 swings, each from the floor (12 kg kettlebell)",
        Because.LIGHT_DUTY,
        "Easier on purpose",
    ),
    Case(
        "200 m run",
        athlete(limits=("after-illness",)),
        "75 s brisk walk",
        Because.LIGHT_DUTY,
        "Easier on purpose",
    ),
    Case("200 m run", athlete(screening=None), "75 s brisk walk", Because.LIGHT_DUTY, "Easier on purpose"),
]


@pytest.mark.parametrize("case", INSTEAD, ids=lambda case: f"{case.text} becomes {case.what}")
def test_what_is_vigorous_by_itself_becomes_something_moderate(case):
    case._replace(text=AMRAP + case.text).check()


AS_BEFORE = [
    Case("200 m run", athlete(), "200 m run", Because.AS_WRITTEN),
    Case("400 m walk", known_disease(), "400 m walk", Because.AS_WRITTEN),
]


@pytest.mark.parametrize("case", AS_BEFORE, ids=lambda case: case.what)
def test_what_is_moderate_and_who_is_cleared_stay_as_they_were(case):
    case._replace(text=AMRAP + case.text).check()


@pytest.mark.parametrize("text", ["10 burpees\n400 m run\n50 rope skips", "20 squat jumps\n30 cal row"])
@pytest.mark.parametrize("space", [Space(), Space(running=False, jumping=False)])
def test_nothing_vigorous_is_left_wherever_they_train(text, space):
    who = known_disease("rower", "skipping rope", "chair", space=space)
    for line in lines(AMRAP + text, who):
        assert not is_vigorous(*catalogue().variant(f"{line.movement}/{line.variant}")), line


@pytest.mark.parametrize(
    "text",
    [
        "15 thrusters @ 30 kg",
        "10 deadlifts @ 50 kg",
        "8 Romanian deadlifts @ 40 kg",
        "10 paused goblet squats",
    ],
)
@pytest.mark.parametrize("owns", [["2x dumbbell 4"], ["dumbbell 8"], ["kettlebell 6 12"], []])
def test_nothing_light_is_made_hard_for_whoever_should_find_it_easy(text, owns):
    line = lines(AMRAP + text, known_disease(*owns))[0]
    assert not any(word in line.variant for word in ("paused", "one-and-a-half", "deficit"))


@pytest.mark.parametrize("place", [*SORE, "all over"])
def test_there_is_a_version_whatever_is_sore(place):
    text = "3 rounds for time\n400 m run\n12 deadlifts @ 24/16 kg\n10 step-ups\n10 burpees"
    assert lines(text, athlete(owns=["2x dumbbell 12", "chair"], today=Today(sore=(place,))))


def test_what_is_sore_does_some_of_it_and_is_told_why():
    sore = athlete(tests=[did("air squat", 60)], today=Today(sore=("legs",)))
    squats, presses = lines("3 rounds for time\n21 air squats\n10 push-ups", sore)
    assert (squats.amount, squats.change) == (14, Change.AMOUNT)
    assert "for the sake of your sore legs" in reason_words(squats, MassUnit.KG)
    assert presses.change is not Change.AMOUNT
