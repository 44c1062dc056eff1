"""How hard a coach wants it is kept with the part it is said of, in their words and as ends of the scale."""

import pytest

from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.boards.writing import write_session
from core.sessions.values import Effort, Format

LINES = "\n10 squats\n10 push-ups\n200 m run"
SAID = [
    ("Easy day, 3 rounds, not for time", Effort(high=4, words="easy day")),
    ("3 rounds at an easy pace", Effort(high=4, words="at an easy pace")),
    ("AMRAP 40 minutes (easy, you can talk)", Effort(high=4, words="easy, you can talk")),
    ("40 minutes at a pace where you can talk:", Effort(high=4, words="at a pace where you can talk")),
    ("20 min steady:", Effort(low=3, high=6, words="steady")),
    ("4 rounds for time, hard but even", Effort(low=7, high=8, words="hard but even")),
    ("3 rounds for time, all out", Effort(low=9, words="all out")),
    ("3 rounds for time, not all out", Effort(low=5, high=8, words="not all out")),
    (
        "AMRAP 15\nKeep this at a conversational pace",
        Effort(high=4, words="keep this at a conversational pace"),
    ),
    ("Sunday easy, no clock\n3 rounds, easy:", Effort(high=4, words="easy")),
    ("AMRAP 15\nRPE 6-7", Effort(low=6, high=7, words="rpe 6-7")),
]


def read(text):
    found = read_session(text, catalogue())
    assert not found.not_understood
    return found.session


@pytest.mark.parametrize(("heading", "effort"), SAID)
def test_what_a_heading_says_of_how_hard_it_is_is_the_part_s_effort(heading, effort):
    assert read(heading + LINES).blocks[0].effort == effort


@pytest.mark.parametrize("heading", [heading for heading, _ in SAID])
def test_it_is_read_again_from_what_is_shown(heading):
    session = read(heading + LINES)
    again = read(write_session(session))
    assert [block.effort for block in again.blocks] == [block.effort for block in session.blocks]


def test_several_lines_under_minutes_that_are_easy_are_no_race():
    assert read("40 minutes, easy, you can talk:" + LINES).blocks[0].format is Format.QUALITY
    assert read("40 minutes:" + LINES).blocks[0].format is Format.AMRAP


def test_minutes_in_front_of_a_colon_are_those_of_what_stands_below():
    (block,) = read("40 minutes easy:\nrun").blocks
    (line,) = block.lines
    assert (line.movement, line.amount, block.effort) == ("run", 2400, Effort(high=4, words="easy"))


def test_the_day_s_effort_is_that_of_its_work_and_not_of_the_warm_up():
    session = read(
        "Light day\n\nWarm-up: 10 leg swings\n\nStrength: goblet squat 3x8\n\nAMRAP 12, hard: 10 swings, 10 push-ups"
    )
    assert [block.effort and block.effort.words for block in session.blocks] == [None, "light day", "hard"]


def test_what_goes_far_says_how_hard_it_is_in_its_own_line():
    assert read("6 x 400 m hard, 2 min easy walk between").blocks[0].effort == Effort(low=7, words="hard")
    assert read("Run 30 min, zone 2").blocks[0].effort == Effort(high=4, words="zone 2")
    assert read("10 squats, slow\n10 push-ups, slow\n3 rounds for time").blocks[0].effort is None


def test_heavy_above_the_lines_is_said_of_all_that_are_lifted():
    (block,) = read("Heavy: 5 x 3 deadlift").blocks
    assert block.lines[0].load_rule.heavy
