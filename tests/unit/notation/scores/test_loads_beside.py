"""Loads that are told beside a score; how people say it is common practice, no source."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores.loads_beside import read_loads

SESSION = read_session(
    "AMRAP 10\n5 deadlifts @ 100 kg\n10 push-ups\n8 goblet squats @ 16 kg", catalogue()
).session
ONE_LOAD = read_session("AMRAP 10\n10 goblet squats @ 16 kg\n10 push-ups", catalogue()).session
DEADLIFTS, SQUATS = 0, 2


@pytest.mark.parametrize(
    ("said", "loads"),
    [
        ("7+12, did 100 kg for the deadlifts", {DEADLIFTS: 100}),
        ("7+12, deadlifts at 80", {DEADLIFTS: 80}),
        ("7+12 deadlifts at 80", {DEADLIFTS: 80}),
        ("7+12, deadlifts with 80 kg, goblet squats with 12", {DEADLIFTS: 80, SQUATS: 12}),
        ("7+12, used 80 for the deadlifts and 12 kg for the squats", {DEADLIFTS: 80, SQUATS: 12}),
        ("7+12, used 20s", {}),
        ("7+12", {}),
        ("7+12 with 10 reps left", {}),
    ],
)
def test_loads_beside_a_score(said, loads):
    assert dict(read_loads(said, SESSION.blocks[0], MassUnit.KG, catalogue())) == loads


@pytest.mark.parametrize("said", ["7+12 used 20s", "7+12, used 20", "7+12 with 20 kg", "7+12 with two 20s"])
def test_a_load_alone_is_of_the_only_line_that_has_one(said):
    assert dict(read_loads(said, ONE_LOAD.blocks[0], MassUnit.KG, catalogue())) == {0: 20}


@given(st.text(max_size=200))
def test_any_text_is_read(text):
    assert read_loads(text, SESSION.blocks[0], MassUnit.KG, catalogue()) is not None
