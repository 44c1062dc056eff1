"""Of ways that the coach leaves to each everybody does the one that is nearest for them; invented people."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.scaling.adjusting import as_written
from core.scaling.values import Because, Change, Spot
from tests.unit.scaling.people import athlete, did, only_line

ROUNDS = "12 min AMRAP\n"
A_ROWER = ["rower"]
ABLE = [did("push-up", 40), did("sit-up", 60), did("air squat", 80), did("pull-up", 18)]


def able(**known):
    return athlete(**{"sex": "female", "mass": 62, "tests": ABLE, "experience": "trained", **known})


@pytest.mark.parametrize("row", ["12 cal row / 200 m run", "200 m run or 12 cal row"])
def test_whoever_has_no_machine_takes_the_way_without_one_as_it_is_written(row):
    line = only_line(ROUNDS + row, able(owns=["dumbbell 10"]))
    assert (line.movement, line.amount, line.change) == ("run", 200, Change.NONE)


def test_whoever_spares_the_knees_takes_the_machine_as_it_is_written():
    line = only_line(ROUNDS + "200 m run or 12 cal row", able(owns=A_ROWER, limits=("no-jumping",)))
    assert (line.movement, line.amount, line.change) == ("row", 12, Change.NONE)


def test_whoever_can_do_either_does_what_the_coach_named_first():
    line = only_line(ROUNDS + "12 cal row / 200 m run", able(owns=A_ROWER))
    assert (line.movement, line.amount) == ("row", 12)


def test_whoever_shows_no_pull_up_takes_the_rows():
    owns = ["rings", "pull-up bar"]
    line = only_line(ROUNDS + "8 pull-ups or 10 ring rows", able(owns=owns, tests=[did("pull-up", 0)]))
    assert line.movement == "ring row"
    line = only_line(ROUNDS + "8 pull-ups or 10 ring rows", able(owns=owns))
    assert line.movement == "pull-up"


def test_the_line_keeps_the_words_for_all_ways():
    line = only_line(ROUNDS + "12 cal row / 200 m run", able(owns=["dumbbell 10"]))
    assert (line.written, line.reason.because) == ("12 cal row / 200 m run", Because.AS_WRITTEN)


def test_as_written_is_the_way_that_is_theirs():
    session = read_session(ROUNDS + "12 cal row / 200 m run", catalogue()).session
    assert session is not None
    assert as_written(session, able(owns=["dumbbell 10"]), catalogue(), Spot(1, "lines", 1)).movement == "run"
