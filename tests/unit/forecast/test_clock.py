"""What sounds when: the clock of a block, whatever its format."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.forecast.clock import APART_S, LONGEST_S, clock_of, clocks_of
from core.forecast.values import Forecast, Outlook, Pacing
from core.measures import AmountUnit
from core.sessions.values import Block, Format, Line

MINUTE = 60.0


def block(format_, lines=1, **facts):
    line = Line(written="10 push-ups", movement="push-up", amount=10)
    return Block(format=format_, lines=(line,) * lines, **facts)


def outlook(unit="rounds", low=9.0, expected=10.0, high=11.0, **pacing):
    return Outlook(
        forecast=Forecast(unit=unit, low=low, expected=expected, high=high), pacing=Pacing(**pacing)
    )


def test_every_clock_counts_three_down_and_starts_at_nought():
    clock = clock_of(block(Format.AMRAP, minutes=12))
    assert [(mark.at_s, mark.kind) for mark in clock.marks[:4]] == [
        (-3, "ready"), (-2, "ready"), (-1, "ready"), (0, "start"),
    ]  # fmt: skip


def test_twelve_minutes_have_a_half_a_last_minute_and_an_end():
    clock = clock_of(block(Format.AMRAP, minutes=12))
    assert (clock.of("halfway"), clock.of("last_minute"), clock.of("end")) == ((360,), (660,), (720,))


def test_what_is_short_has_neither_half_nor_last_minute():
    clock = clock_of(block(Format.MAX_REPS, minutes=2))
    assert (clock.of("halfway"), clock.of("last_minute"), clock.ends_s) == ((), (), 120)


def test_planned_rounds_tick_until_the_end_is_near():
    clock = clock_of(block(Format.AMRAP, minutes=10), outlook(round_s=112.4))
    assert clock.of("split") == (112, 225, 337, 450, 562)


def test_a_guess_that_tells_little_plans_nothing():
    clock = clock_of(block(Format.AMRAP, minutes=10), outlook(low=4, round_s=60.0))
    assert clock.of("split") == ()


def test_every_minute_begins_anew_and_is_counted_down_to():
    clock = clock_of(block(Format.INTERVALS, minutes=5, every_s=MINUTE))
    assert clock.of("work") == (60, 120, 180)  # the last minute begins in place of the fifth
    assert clock.of("last_minute") == (240,)
    assert {117, 118, 119} <= set(clock.of("ready"))


def test_a_minute_of_rest_sounds_like_rest():
    clock = clock_of(block(Format.INTERVALS, minutes=6, every_s=MINUTE, rest_stations=(3,)))
    assert clock.of("rest") == (120, 300)
    assert 119 not in clock.of("ready")


def test_work_and_rest_take_turns_through_every_line_and_end_with_work():
    clock = clock_of(block(Format.INTERVALS, lines=2, rounds=2, work_s=20, rest_s=10))
    assert (clock.of("work"), clock.of("rest"), clock.ends_s) == ((30, 60, 90), (20, 50, 80), 110)


def test_half_of_an_even_number_of_turns_is_told_where_the_next_begins():
    clock = clock_of(block(Format.INTERVALS, rounds=8, every_s=30, work_s=20, rest_s=10))
    assert clock.of("halfway") == (120,)


def test_each_interval_ticks_where_its_work_should_be_done():
    clock = clock_of(block(Format.INTERVALS, rounds=3, every_s=120), outlook("s", 40, 45, 50, round_s=45.0))
    assert clock.of("split") == (45, 165, 285)


def test_rounds_of_set_time_with_a_rest_are_turns():
    clock = clock_of(block(Format.MAX_REPS, minutes=1, rounds=2, rest_s=30))
    assert (clock.of("work"), clock.of("rest"), clock.ends_s) == ((90,), (60,), 150)


def test_a_cap_is_a_clock_and_its_half_ticks_where_it_is_planned():
    clock = clock_of(block(Format.FOR_TIME, cap_s=720), outlook("s", 500, 560, 600, half_s=270.0))
    assert (clock.of("split"), clock.ends_s) == ((270,), 720)


def test_work_until_it_is_done_has_only_its_plan():
    clock = clock_of(block(Format.FOR_TIME, rounds=3), outlook("s", 500, 561, 600, round_s=187.0))
    assert (clock.of("split"), clock.of("end"), clock.ends_s) == ((187, 374, 561), (), None)


def test_as_far_as_it_goes_in_set_seconds_is_a_clock():
    line = Line(written="5 min row", movement="row", amount=300, unit=AmountUnit.SECONDS)
    assert clock_of(Block(format=Format.TIME_TRIAL, lines=(line,))).ends_s == 300


@pytest.mark.parametrize(
    "without",
    [
        block(Format.SETS, rounds=5, rest_s=120),
        block(Format.QUALITY, rounds=3),
        block(Format.HOLD),
        block(Format.MAX_LOAD),
        block(Format.FOR_TIME, rounds=3),
        block(Format.INTERVALS, rounds=5, rest_s=120),
        block(Format.AMRAP, minutes=LONGEST_S / MINUTE + 1),
        block(Format.INTERVALS, rounds=20, every_s=2),
        block(Format.INTERVALS, minutes=1, every_s=90),
    ],
)
def test_what_runs_by_no_clock_that_can_be_counted_has_none(without):
    assert clock_of(without) is None


def test_clocks_are_known_by_the_number_of_their_block():
    blocks = (block(Format.SETS, rounds=5), block(Format.AMRAP, minutes=12))
    assert list(clocks_of(blocks)) == [2]
    assert clocks_of(blocks, (None, outlook(round_s=70.0)))[2].of("split")


a_span = st.none() | st.floats(0.5, 600)
written_somehow = st.builds(
    block,
    st.sampled_from(Format),
    lines=st.just(2),
    minutes=st.none() | st.integers(1, 120),
    rounds=st.none() | st.integers(1, 500),
    every_s=a_span,
    work_s=a_span,
    rest_s=st.none() | st.floats(0, 600),
    cap_s=st.none() | st.floats(1, 7200),
    rest_stations=st.lists(st.integers(1, 5), max_size=2).map(tuple),
)


@given(written=written_somehow, round_s=st.none() | st.floats(0.1, 900))
def test_whatever_is_written_its_marks_rise_apart_and_end_with_the_end(written, round_s):
    clock = clock_of(written, outlook("s", 300, 400, 500, round_s=round_s))
    if clock is None:
        return
    at = [mark.at_s for mark in clock.marks]
    assert all(after - before >= APART_S for before, after in pairwise(at))
    assert clock.of("start") == (0,)
    assert at[0] >= -3
    assert at[-1] <= LONGEST_S
    if clock.ends_s is not None:
        assert (clock.marks[-1].kind, at[-1]) == ("end", clock.ends_s)
