"""A session with less to do, as a coach would cut it (common practice, no source)."""

from datetime import date

import pytest
from hypothesis import given, settings

from core.athletes.easing import EASY_WEEK, FIRST_WEEK_BACK, SECOND_WEEK_BACK
from core.athletes.values import Screening, Today
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.notation.boards.writing import write_session
from core.scaling.adjusting import as_written
from core.scaling.easing import eased
from core.scaling.values import Change, Spot
from core.scaling.version import version_for
from tests.unit.scaling.people import athlete, did, lines, session, version
from tests.unit.scaling.test_properties import texts, trains

TODAY = date(2026, 3, 2)


def cut(text, easing=EASY_WEEK):
    return write_session(eased(session(text), easing), MassUnit.KG).splitlines()[1:]


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("5 rounds for time\n12 lunges", ["3 rounds for time", "12 lunges"]),
        ("21-15-9 for time\nair squats\npush-ups", ["For time", "14-10-6", "air squats", "push-ups"]),
        ("AMRAP 20\n10 push-ups", ["As many rounds as possible in 13 min", "10 push-ups"]),
        (
            "5 x 5 back squats @ 60 kg, rest 3 min",
            ["3 sets", "Rest 3 min between sets", "5 back squats @ 60 kg"],
        ),
        ("for time\n50 air squats\n400 m run", ["For time", "33 air squats", "250 m run"]),
        ("5 km run for time", ["Time trial", "3350 m run"]),
        (
            "3 rounds, no clock:\n10 air squats\nthen 10 minutes walk",
            ["Not for time", "2 rounds", "10 air squats", "Cash-out: 7 min walk"],
        ),
        ("30 min easy ride", ["Not for time", "20 min easy ride"]),
        (
            "AMRAP 15\nbuy-in: 400 m run\n10 burpees",
            ["As many rounds as possible in 10 min", "Buy-in: 250 m run", "10 burpees"],
        ),
    ],
)
def test_an_easy_week_leaves_a_third_of_the_work_out_and_keeps_the_loads(text, told):
    assert cut(text) == told


def test_turns_are_left_out_in_whole_cycles_and_one_is_left():
    three = "EMOM 12\nMinute 1: 10 swings @ 16 kg\nMinute 2: 8 burpees\nMinute 3: rest"
    assert cut(three)[1] == "In 6 min"
    assert cut(three.replace("EMOM 12", "EMOM 3"), FIRST_WEEK_BACK)[1] == "In 3 min"


def test_warm_up_and_cool_down_stay():
    text = "Warm-up\n3 rounds\n10 air squats\n\nMain\n5 rounds for time\n12 lunges"
    told = write_session(eased(session(text), FIRST_WEEK_BACK), MassUnit.KG)
    assert "3 rounds" in told.split("Main")[0]


def who(easing, **known):
    tests = [did("push-up", 30), did("goblet squat", 30, 16)]
    easier = athlete(owns=["kettlebell 16"], tests=tests, **known)
    return easier.model_copy(update={"today": Today(easing=easing)})


TEXT = "5 rounds for time\n10 push-ups\n12 goblet squats @ 16 kg"


def test_an_easy_week_keeps_the_way_and_the_load_and_ranks_nobody():
    made = version(TEXT, who(EASY_WEEK))
    assert [(line.change, line.amount) for line in made.blocks[0].lines] == [
        (Change.NONE, 10),
        (Change.NONE, 12),
    ]
    assert (made.blocks[0].rounds, made.effort_at_most, made.scored, made.as_written) == (3, 6, False, False)


def test_the_first_week_back_costs_no_more_than_half_of_what_would_go():
    made = version(TEXT, who(FIRST_WEEK_BACK))
    assert (made.blocks[0].rounds, made.effort_at_most) == (3, 4)
    assert all(line.set_cost <= 0.5 for line in made.blocks[0].lines)


def test_a_limit_on_effort_and_an_easing_hold_both():
    made = version(TEXT, who(SECOND_WEEK_BACK, limits=("pregnancy",)))
    assert made.effort_at_most <= 6
    assert made.blocks[0].rounds == 4


def test_as_written_is_as_much_as_is_asked_today():
    profile = who(EASY_WEEK)
    pin = as_written(session("for time\n50 air squats"), profile, catalogue(), Spot(1, "lines", 1))
    assert lines("for time\n50 air squats", profile)[0].amount == 33
    assert pin.share in {None, 1}


def done_with(line):
    return line.movement, line.variant, line.implement, line.count, line.load_kg


@settings(max_examples=60, deadline=None)
@given(texts, trains.filter(lambda one: one.screening is Screening.CLEAR and not one.limits))
def test_an_easy_week_changes_how_much_and_not_with_what(text, somebody):
    easy = somebody.model_copy(update={"today": Today(easing=EASY_WEEK)})
    for usual, less in zip(lines(text, somebody), lines(text, easy), strict=True):
        if usual.change is not Change.AMOUNT:
            assert done_with(less) == done_with(usual)


def test_one_heavy_dumbbell_is_lifted_in_an_easy_week_as_in_any_other():
    who = athlete(sex="male", mass=85, owns=["dumbbell 32"], tests=[did("deadlift", 20, 32)])
    text = "5 sets\n6 deadlifts @ 60 kg\nrest 2 min"
    easy = who.model_copy(update={"today": Today(easing=EASY_WEEK)})
    assert done_with(lines(text, easy)[0]) == done_with(lines(text, who)[0])


@settings(max_examples=40, deadline=None)
@given(texts, trains)
def test_less_is_never_more_and_nothing_else_changes_the_ways_but_light_duty(text, somebody):
    usual = version_for(session(text), somebody, catalogue())
    eased_ = version_for(
        session(text), somebody.model_copy(update={"today": Today(easing=EASY_WEEK)}), catalogue()
    )
    for before, after in zip(usual.blocks, eased_.blocks, strict=True):
        assert (after.minutes or 0) <= (before.minutes or 0)
        assert (after.rounds or 0) <= (before.rounds or 0)
        assert sum(after.scheme) <= sum(before.scheme)
    assert not eased_.scored


def test_whoever_comes_back_keeps_their_breath_in_what_takes_it():
    burpees = "AMRAP 12\n12 burpees\n10 air squats"
    (back, _) = lines(burpees, athlete(tests=[did("push-up", 20)], today=Today(easing=FIRST_WEEK_BACK)))
    assert back.amount is not None
    assert back.amount <= 8
