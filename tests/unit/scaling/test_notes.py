"""What a coach noted about how somebody moves: words with every line of its pattern, and less in the hands."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.words.reasons import reason_words
from bot.words.versions import cue_words
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.scaling.adjusting import Barred, as_written, easier, harder
from core.scaling.athlete import ABOUT_HALF
from core.scaling.group import view_of
from core.scaling.orders import Fault, Most, Orders, Pin
from core.scaling.values import Because, Change, Spot
from core.scaling.warm_up import warm_up_for
from tests.unit.scaling.people import athlete, did, lines, only_line, session, version
from tests.unit.scaling.test_properties import TEXTS, known, trains

DEADLIFTS = "AMRAP 12\n8 deadlifts @ 60 kg"
SPOT = Spot(1, "lines", 1)
FLAT = "keep your back flat"
LIFTER = athlete(
    owns=["2x kettlebell 12 16 24", "barbell 20 30 40 60"],
    tests=[did("deadlift", 25, 60), did("swing", 40, 24), did("push-up", 30)],
)


def noted(*faults, **more):
    return Orders(faults=faults, **more)


def fault(movement="deadlift", words=FLAT, cap=None):
    return Fault(movement=movement, words=words, cap_kg=None if cap is None else Decimal(cap))


def in_the_hands(line):
    return (line.load_kg or 0) * (line.count or 0)


def pattern(line):
    return catalogue().movement(line.movement).pattern


@pytest.mark.parametrize("written", ["8 deadlifts @ 60 kg", "12 swings @ 24 kg", "10 presses @ 40 kg"])
def test_a_most_of_all_is_never_more_in_the_hands_and_the_lowest_number_counts(written):
    orders = noted(Most(cap_kg=Decimal(16)), fault("swing", "", 12))
    line = only_line(f"AMRAP 12\n{written}", LIFTER, orders=orders)
    assert in_the_hands(line) <= (12 if line.movement == "swing" else 16)


@pytest.mark.parametrize("written", ["8 deadlifts @ 60 kg", "12 swings @ 16 kg", "10 glute bridges"])
def test_the_words_stand_with_every_line_of_the_pattern(written):
    assert only_line(f"AMRAP 12\n{written}", LIFTER, orders=noted(fault())).cues == (FLAT,)


def test_no_other_pattern_hears_of_it():
    line = only_line("AMRAP 12\n10 push-ups", LIFTER, orders=noted(fault()))
    assert (line.cues, line.reason.because) == ((), Because.AS_WRITTEN)


def test_a_number_is_the_most_in_the_hands_and_the_reason_says_whose_it_is():
    assert only_line(DEADLIFTS, LIFTER).load_kg == 60
    line = only_line(DEADLIFTS, LIFTER, orders=noted(fault(cap=30)))
    assert (line.movement, in_the_hands(line), line.reason.because) == ("deadlift", 30, Because.NOTED)
    assert reason_words(line, MassUnit.KG).startswith("Lighter for now: your coach noted something")
    assert cue_words(line, MassUnit.KG) == "Your coach: keep your back flat. At most 30 kg in your hands."


def test_two_things_in_the_hands_count_together():
    line = only_line("AMRAP 12\n8 deadlifts 2 x 24 kg", LIFTER, orders=noted(fault(cap=30)))
    assert 0 < in_the_hands(line) <= 30


def test_a_stand_in_of_the_pattern_has_no_more_either():
    line = only_line("AMRAP 12\n12 swings @ 24 kg", LIFTER, orders=noted(fault(cap=14)))
    assert (pattern(line).value, in_the_hands(line) <= 14) == ("hinge", True)


def test_of_two_numbers_the_lower_counts():
    orders = noted(fault(cap=40), fault("swing", "let your arms hang", 20))
    line = only_line(DEADLIFTS, LIFTER, orders=orders)
    assert (in_the_hands(line), line.cues) == (20, (FLAT, "let your arms hang"))


def test_a_number_above_what_is_done_anyway_changes_nothing_but_stands_there():
    line = only_line(DEADLIFTS, LIFTER, orders=noted(fault(cap=80)))
    assert (line.load_kg, line.change, line.reason.because) == (60, Change.NONE, Because.AS_WRITTEN)
    assert line.at_most_kg == 80


def test_what_is_lighter_for_another_reason_says_that_one():
    weak = athlete(owns=["barbell 20 30 40 60"], tests=[did("deadlift", 9, 30)])
    free, line = (only_line(DEADLIFTS, weak, orders=orders) for orders in (Orders(), noted(fault(cap=50))))
    assert (line.load_kg, line.reason) == (free.load_kg, free.reason)


def test_without_a_number_no_set_costs_more_than_half():
    usual = only_line("AMRAP 12\n10 push-ups", athlete(owns=["chair"], tests=[did("push-up", 14)]))
    assert usual.set_cost > 0.5
    line = only_line(
        "AMRAP 12\n10 push-ups",
        athlete(owns=["chair"], tests=[did("push-up", 14)]),
        orders=noted(fault("push-up", "keep your elbows in")),
    )
    assert (line.set_cost <= 0.5, line.reason.because) == (True, Because.NOTED)
    assert reason_words(line, MassUnit.KG).startswith("Easier for now: your coach noted something")


def test_who_works_up_to_the_heaviest_reads_where_to_stop():
    line = only_line("Find a heavy 5 deadlift", LIFTER, orders=noted(fault(cap=30)))
    assert "At most 30 kg" in cue_words(line, MassUnit.KG)


@pytest.mark.parametrize(("step", "cap"), [(harder, 30), (harder, 40)])
def test_whoever_asks_for_more_gets_no_more_than_the_number(step, cap):
    faults = (fault(cap=cap),)
    shown = only_line(DEADLIFTS, LIFTER, orders=noted(*faults))
    pin = step(session(DEADLIFTS), LIFTER, catalogue(), SPOT, shown, faults)
    assert pin is None or (pin.load_kg or 0) * (pin.count or 0) <= cap


def test_whoever_asks_for_less_gets_it():
    faults = (fault(cap=30),)
    shown = only_line(DEADLIFTS, LIFTER, orders=noted(*faults))
    pin = easier(session(DEADLIFTS), LIFTER, catalogue(), SPOT, shown, faults)
    assert in_the_hands(only_line(DEADLIFTS, LIFTER, orders=noted(*faults, pins=(pin,)))) < 30


def test_as_written_is_refused_for_the_note_s_sake():
    assert as_written(session(DEADLIFTS), LIFTER, catalogue(), SPOT, (fault(cap=30),)) == Barred(
        Because.NOTED, None
    )


def test_a_pin_does_not_get_round_a_number():
    pin = Pin(block=1, line=1, movement="deadlift", load_kg=Decimal(60))
    line = only_line(DEADLIFTS, LIFTER, orders=noted(fault(cap=30), pins=(pin,)))
    assert in_the_hands(line) <= 30


def test_what_the_coach_decided_since_goes_past_it_and_the_words_stay():
    pin = Pin(block=1, line=1, movement="deadlift", load_kg=Decimal(60))
    line = only_line(DEADLIFTS, LIFTER, orders=noted(fault(cap=30), pins=(pin,), past=(SPOT,)))
    assert (line.load_kg, line.reason.because, line.cues) == (60, Because.COACH, (FLAT,))
    assert line.at_most_kg is None


def test_a_warm_up_is_as_it_was():
    plan = session(DEADLIFTS)
    free, with_note = (
        warm_up_for(plan, version(DEADLIFTS, LIFTER, orders=one), LIFTER, catalogue())
        for one in (Orders(), noted(fault()))
    )
    assert with_note == free


def test_nothing_of_it_is_said_aloud_to_the_group():
    view = view_of([version(DEADLIFTS, LIFTER, orders=noted(fault(cap=30))) for _ in range(3)])
    assert view.say == ()


@known
@given(st.sampled_from((*TEXTS, DEADLIFTS)), trains, st.sampled_from((0, 6, 10, 15, 30)), st.booleans())
def test_with_a_number_no_line_of_the_pattern_has_more_in_the_hands_whatever_is_owned(
    text, who, cap, heavier
):
    faults = (fault(cap=cap), fault("air squat", "", cap))
    patterns = {catalogue().movement(one.movement).pattern for one in faults}
    for line in lines(text, who, orders=noted(*faults, heavier=heavier)):
        assert pattern(line) not in patterns or in_the_hands(line) <= cap


@known
@given(st.sampled_from(TEXTS), trains)
def test_without_a_number_no_set_of_the_pattern_costs_more_than_half(text, who):
    for line in lines(text, who, orders=noted(fault("push-up"), fault("air squat"))):
        if pattern(line).value in {"horizontal-push", "squat"} and line.set_cost is not None:
            assert line.set_cost <= 0.5 * (ABOUT_HALF if line.load_kg else 1) + 1e-9
