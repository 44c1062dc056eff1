"""The three ready levels, and a warm-up where the coach wrote none."""

import pytest

from core.athletes.limits import limits, ruled_out
from core.athletes.values import Today
from core.movements.lookup import catalogue
from core.scaling.ready import ready_levels
from core.scaling.values import Change, Version
from core.scaling.version import version_for, withheld_from
from core.scaling.warm_up import warm_up_for
from tests.unit.scaling.people import athlete, did, session

TEXT = "AMRAP 20\n12 goblet squats @ 24/16 kg\n10 push-ups\n10 swings @ 24/16 kg\n200 m run"


def levels(text=TEXT):
    return ready_levels(session(text), catalogue())


def test_the_first_level_is_what_the_coach_wrote():
    (block,) = levels().as_written
    assert {line.change for line in block.lines} == {Change.NONE}
    assert [float(line.load_kg) for line in block.lines if line.load_kg] == [24, 24]


@pytest.mark.parametrize(
    "text",
    [
        "21-15-9 for time\nthrusters @ 40/30 kg\npull-ups",
        "5 x 5 back squats @ 80 kg, rest 3 min",
        "40 s on, 20 s off, 4 rounds\npush-ups\nplank",
        "5 rounds for time\n12 lunges\n30 s plank\n15/12 cal row",
    ],
)
def test_whatever_is_written_goes_as_written_for_the_able(text):
    lines = [line for block in levels(text).as_written for line in block.every_line]
    assert {line.change for line in lines} == {Change.NONE}


def test_the_second_level_is_lighter_and_no_line_is_heavier():
    (full,), (lighter,) = levels().as_written, levels().lighter
    for written, light in zip(full.lines, lighter.lines, strict=True):
        assert (light.load_kg or 0) <= (written.load_kg or 0)
    assert any(line.change is not Change.NONE for line in lighter.lines)


def test_the_third_level_needs_nothing():
    (block,) = levels().no_equipment
    assert {line.implement for line in block.lines} == {None}
    assert all(line.change is not Change.REST for line in block.lines)


def warm_up(who, text=TEXT):
    plan = session(text)
    version = version_for(plan, who, catalogue())
    assert isinstance(version, Version)
    return warm_up_for(plan, version, who, catalogue())


def test_a_warm_up_has_three_to_five_easy_lines_and_needs_no_reason():
    block = warm_up(athlete(owns=["kettlebell 16"], tests=[did("push-up", 15)]))
    assert 3 <= len(block.lines) <= 5
    assert {line.change for line in block.lines} == {Change.NONE}
    assert {line.load_kg for line in block.lines} == {None}
    assert all((line.set_cost or 0) <= 0.25 for line in block.lines)


def test_the_coachs_own_warm_up_is_left_alone():
    text = "Warm-up\n2 rounds not for time\n10 air squats\n\nMain\nAMRAP 10\n10 push-ups"
    assert warm_up(athlete(), text) is None


def test_whoever_is_sore_all_over_gets_no_warm_up():
    assert warm_up(athlete(today=Today(sore=("all over",)))) is None


@pytest.mark.parametrize("limit", [one.id for one in limits()])
def test_a_warm_up_respects_every_limit(limit):
    who = athlete(limits=(limit,), owns=["chair", "table"])
    if withheld_from(who) is not None:
        return
    block = warm_up(who)
    for line in block.lines:
        _, variant = catalogue().variant(f"{line.movement}/{line.variant}")
        assert not ruled_out((limit,)) & set(variant.demands)
    assert len(block.lines) >= 2


@pytest.mark.parametrize(
    ("owns", "text", "first"),
    [
        (["rower"], "AMRAP 12\n500 m row\n10 push-ups", "row"),
        ([], "AMRAP 12\n400 m run\n10 push-ups", "run"),
        (["chair"], "AMRAP 12\n10 push-ups\n10 burpees", "march"),
    ],
)
def test_the_pulse_comes_from_what_is_travelled_on_today(owns, text, first):
    assert warm_up(athlete(owns=owns), text).lines[0].movement == first


def test_easy_ones_train_what_is_to_come():
    """Squats before wall balls: not reaches with empty hands."""
    easy = warm_up(athlete(owns=["medicine ball 6"]), "AMRAP 12\n15 wall balls @ 9/6 kg\n10 push-ups").lines
    assert {"air squat", "push-up"} <= {line.movement for line in easy}
    assert "ground reach" not in {line.movement for line in easy}
