"""What heads a block fits what somebody has to do it with."""

import pytest

from bot.words.headings import block_heading
from core.athletes.easing import FIRST_WEEK_BACK
from core.athletes.values import Equipment, Profile, Screening, Today
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.scaling.version import version_for


def heading_for(screening=Screening.CLEAR, **told):
    session = read_session("build to a heavy 2 in the clean and jerk, 20 minutes", catalogue()).session
    assert session is not None
    version = version_for(session, Profile(name="Ilse", limits=(), screening=screening, **told), catalogue())
    return block_heading(version.blocks[0])


def test_whoever_has_a_bar_works_up_to_the_heaviest():
    assert "Work up to the heaviest" in heading_for(
        equipment=(Equipment(implement="barbell", loads_kg=(20, 60, 80)),)
    )


@pytest.mark.parametrize("gently", [False, True])
def test_with_empty_hands_there_is_nothing_to_work_up_to(gently):
    told = {"screening": Screening.MODERATE} if gently else {}
    said = heading_for(equipment=(), **told)
    assert "heaviest" not in said
    assert "with all the rest you need" in said


@pytest.mark.parametrize(
    ("written", "heading"),
    [
        ("5 x 400 m run, 90 sec rest between", "5 rounds, each for time, 90 s rest after each"),
        (
            "3 rounds for time, rest 2 min between rounds\n10 burpees\n200 m run",
            "3 rounds for time, 2 minutes rest after each",
        ),
        ("5 rounds: 40 s work, 20 s rest\nburpees\nsquats", "5 rounds, 40 s work and 20 s rest at each"),
    ],
)
def test_the_rest_between_rounds_is_told(written, heading):
    session = read_session(written, catalogue()).session
    assert session is not None
    version = version_for(session, Profile(name="Ilse", limits=(), screening=Screening.CLEAR), catalogue())
    assert block_heading(version.blocks[0]) == heading


@pytest.mark.parametrize(
    ("written", "heading"),
    [
        ("2 rounds, no clock\n10 squats\n10 bridges", "One round, no clock: take your time"),
        ("2 rounds for time\n10 squats\n10 bridges", "One round at an easy pace, 20 minutes at most"),
        (
            "4 rounds for time, rest 2 min between rounds\n10 squats\n10 bridges",
            "2 rounds at an easy pace, 2 minutes rest after each",
        ),
    ],
)
def test_of_rounds_that_get_fewer_it_is_told_how_many_are_left(written, heading):
    session = read_session(written, catalogue()).session
    assert session is not None
    back = Profile(name="Ilse", limits=(), screening=Screening.CLEAR, today=Today(easing=FIRST_WEEK_BACK))
    assert block_heading(version_for(session, back, catalogue()).blocks[0]) == heading


def test_whoever_works_for_less_than_the_clock_gives_is_told_to_rest_on():
    text = "6 rounds: 40 s work, 20 s rest\nsquats\nplank"
    new = Profile(name="Ilse", limits=(), screening=Screening.CLEAR, experience="new", birth_year=1950)
    session = read_session(text, catalogue()).session
    assert session is not None
    told = block_heading(version_for(session, new, catalogue(), year=2026).blocks[0])
    assert told.endswith("20 s rest at each; where it says less, stop then and rest")
