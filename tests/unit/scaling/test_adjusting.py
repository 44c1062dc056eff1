"""A line a step easier or harder, as the athlete asks for it."""

from decimal import Decimal
from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.athletes.values import Evidence
from core.movements.lookup import catalogue
from core.scaling.adjusting import Barred, as_written, easier, harder, something_else
from core.scaling.orders import Orders, Pin
from core.scaling.questions import next_question
from core.scaling.values import Because, Change, Spot, Version
from core.scaling.version import version_for
from tests.unit.scaling.people import athlete, did
from tests.unit.scaling.people import session as read
from tests.unit.scaling.test_properties import TEXTS, athletes

MOST_STEPS = 60
session = cache(read)
SQUATS = "AMRAP 12\n12 goblet squats @ 16 kg\n200 m run"
PUSH_UPS = "AMRAP 12\n10 push-ups\n200 m run"
FIRST, SECOND = Spot(1, "lines", 1), Spot(1, "lines", 2)
STRONG = athlete(
    owns=["kettlebell 8 12 16", "chair", "table"], tests=[did("push-up", 30), did("goblet squat", 30, 16)]
)


def made(text, who, *pins):
    version = version_for(session(text), who, catalogue(), Orders(pins=pins))
    assert isinstance(version, Version)
    return version


def line_at(version, spot):
    return dict(version.spots)[spot]


def step(how, text, who, spot, *pins):
    """The line after one more step, and its pin."""
    pin = how(session(text), who, catalogue(), spot, line_at(made(text, who, *pins), spot))
    return pin, (line_at(made(text, who, pin), spot) if pin else None)


def test_easier_takes_the_next_lighter_one_of_the_same_thing():
    pin, line = step(easier, SQUATS, STRONG, FIRST)
    assert (line.load_kg, line.implement, line.amount) == (Decimal(12), "kettlebell", 12)
    assert line.reason.because is Because.ASKED
    assert line.reason.keeps == "movement"
    _, lighter = step(easier, SQUATS, STRONG, FIRST, pin)
    assert lighter.load_kg == Decimal(8)


def test_easier_push_ups_are_a_lighter_way_of_push_ups():
    _, line = step(easier, PUSH_UPS, STRONG, FIRST)
    assert line.movement == "push-up"
    assert line.change is Change.VARIANT
    assert line.load_moved_kg < line_at(made(PUSH_UPS, STRONG), FIRST).load_moved_kg


def test_easier_where_nothing_lighter_is_there_is_fewer():
    alone = athlete(tests=[did("air squat", 60)])
    text = "AMRAP 12\n20 air squats\n200 m run"
    shown = []
    pins: tuple[Pin, ...] = ()
    for _ in range(MOST_STEPS):
        pin, line = step(easier, text, alone, FIRST, *pins)
        if pin is None:
            break
        pins = (pin,)
        shown.append(line.amount)
    assert shown[-1] < 20
    assert shown == sorted(shown, reverse=True)


def test_an_easier_run_is_a_shorter_or_a_slower_one():
    pin, line = step(easier, SQUATS, STRONG, SECOND)
    assert pin is not None
    assert (line.variant, line.amount) != ("flat", 200)


def test_harder_goes_back_up_to_what_is_written_and_then_to_a_harder_way():
    heavier = athlete(owns=["kettlebell 12 16 24"], tests=[did("goblet squat", 30, 16)])
    down, _ = step(easier, SQUATS, heavier, FIRST)
    up, line = step(harder, SQUATS, heavier, FIRST, down)
    assert (line.variant, line.load_kg) == (line_at(made(SQUATS, heavier), FIRST).variant, Decimal(16))
    _, slow = step(harder, SQUATS, heavier, FIRST, up)
    assert slow.variant != line.variant
    assert slow.load_kg <= 16


def test_harder_push_ups_are_for_those_who_ask():
    strong = athlete(owns=["chair"], tests=[did("push-up", 60)])
    assert line_at(made(PUSH_UPS, strong), FIRST).change is Change.NONE
    pin, line = step(harder, PUSH_UPS, strong, FIRST)
    assert pin is not None
    assert line.set_cost > line_at(made(PUSH_UPS, strong), FIRST).set_cost


def test_something_else_asks_about_the_same():
    who = athlete(owns=["kettlebell 12", "dumbbell 12", "chair", "table"], tests=[did("push-up", 30)])
    pin, line = step(something_else, "AMRAP 12\n15 air squats\n200 m run", who, FIRST)
    assert pin is None or (line.movement, line.variant) != ("air squat", "floor")


def test_as_written_is_there_for_the_asking():
    weak = athlete(owns=["kettlebell 8 16"], tests=[did("goblet squat", 12, 16)])
    assert line_at(made(SQUATS, weak), FIRST).load_kg == Decimal(8)
    pin = as_written(session(SQUATS), weak, catalogue(), FIRST)
    assert isinstance(pin, Pin)
    assert line_at(made(SQUATS, weak, pin), FIRST).load_kg == Decimal(16)


@pytest.mark.parametrize(
    ("known", "because", "about"),
    [
        ({"limits": ("wrist",)}, Because.LIMIT, "wrist"),
        ({"tests": [did("push-up", 0)]}, Because.TOO_HEAVY, None),
    ],
)
def test_what_is_not_safe_as_written_says_why(known, because, about):
    barred = as_written(session(PUSH_UPS), athlete(owns=["chair"], **known), catalogue(), FIRST)
    assert barred == Barred(because, about)


def test_what_is_not_there_can_not_be_done_as_written():
    barred = as_written(session(SQUATS), athlete(), catalogue(), FIRST)
    assert barred.because is Because.NOT_OWNED


def test_a_pin_that_is_not_safe_any_more_gives_way_to_the_best_choice():
    pin = as_written(session(PUSH_UPS), STRONG, catalogue(), FIRST)
    sore = STRONG.model_copy(update={"limits": ("wrist",)})
    line = line_at(made(PUSH_UPS, sore, pin), FIRST)
    assert line == line_at(made(PUSH_UPS, sore), FIRST)


@settings(deadline=None, max_examples=30)
@given(athletes, st.sampled_from(TEXTS), st.integers(0, 4))
def test_easier_is_easier_safe_and_comes_to_an_end(who, text, place):
    version = version_for(session(text), who, catalogue())
    if not isinstance(version, Version):
        return
    spot, line = version.spots[place % len(version.spots)]
    for _ in range(MOST_STEPS):
        pin = easier(session(text), who, catalogue(), spot, line)
        if pin is None:
            return
        after = line_at(made(text, who, pin), spot)
        assert after.reason.because is Because.ASKED
        if after.set_cost is not None and line.set_cost is not None:
            assert after.set_cost < line.set_cost
        else:
            assert after != line
        line = after
    raise AssertionError(f"{text} never came to an end for {who}")


@settings(deadline=None, max_examples=30)
@given(athletes, st.sampled_from(TEXTS), st.integers(0, 4))
def test_harder_is_harder_and_never_above_what_is_written(who, text, place):
    version = version_for(session(text), who, catalogue())
    if not isinstance(version, Version):
        return
    spot, line = version.spots[place % len(version.spots)]
    pin = harder(session(text), who, catalogue(), spot, line)
    if pin is None:
        return
    after = line_at(made(text, who, pin), spot)
    if after.set_cost is not None and line.set_cost is not None:
        assert after.set_cost > line.set_cost
    written = session(text).blocks[0].lines[spot.line - 1].loads_kg
    if written and after.load_kg is not None:
        assert after.load_kg * after.count <= max(written) * 2 * Decimal("1.03")


@pytest.mark.parametrize("cause", ["too-hard", "too-easy"])
def test_how_a_set_was_found_is_no_test_of_what_goes(cause):
    found = Evidence(kind="easier", cause=cause, movement="push-up", reps=10)
    knows = STRONG.model_copy(update={"evidence": (*STRONG.evidence, found)})
    assert made(PUSH_UPS, knows) == made(PUSH_UPS, STRONG)
    alone = athlete(limits=())
    told = alone.model_copy(update={"evidence": (found,)})
    assert next_question(told, session(PUSH_UPS), catalogue()) == next_question(
        alone, session(PUSH_UPS), catalogue()
    )
