"""What counts as written, and what doesn't."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.measures import AmountUnit
from core.scaling.counting import counts_as_written, judged, line_counts
from core.scaling.values import Because, Change, Reason, Version, VersionBlock, VersionLine
from core.scores.values import EXACTLY, Tolerance
from core.sessions.values import Block, Format, Session


def line(change=Change.LOAD, load=16, count=1, written=16):
    return VersionLine(
        line=1,
        written="12 goblet squats @ 16 kg",
        movement="goblet squat",
        variant="goblet",
        count=count,
        load_kg=None if load is None else Decimal(str(load)),
        written_kg=None if written is None else Decimal(str(written)),
        amount=12,
        unit=AmountUnit.REPS,
        change=change,
        reason=Reason(because=Because.AS_WRITTEN),
    )


@pytest.mark.parametrize(
    ("load", "percent", "counts"),
    [
        (15, 0, False),
        (15.9, 0, True),  # 35 lb for 16 kg
        (15, 10, True),
        (14.4, 10, True),
        (14, 10, False),
        (13, 20, True),
        (20, 0, True),  # heavier, as the coach allowed it
    ],
)
def test_a_lighter_load_counts_as_far_as_the_coach_lets_it(load, percent, counts):
    assert line_counts(line(load=load), Tolerance(lighter_percent=percent)) is counts


def test_another_implement_counts_only_where_the_coach_lets_it_and_as_heavy():
    other = line(Change.IMPLEMENT)
    assert not line_counts(other, Tolerance(lighter_percent=50))
    assert line_counts(other, Tolerance(other_implement=True))
    assert not line_counts(line(Change.IMPLEMENT, load=12), Tolerance(other_implement=True))


def test_two_in_the_hands_weigh_together():
    assert line_counts(line(Change.IMPLEMENT, load=10, count=2, written=20), Tolerance(other_implement=True))


@pytest.mark.parametrize("change", [Change.VARIANT, Change.MOVEMENT, Change.AMOUNT, Change.REST])
def test_another_way_or_fewer_never_counts(change):
    assert not line_counts(line(change), Tolerance(lighter_percent=50, other_implement=True))


def test_a_shorter_day_never_counts():
    written = Block(kind="main", format=Format.AMRAP, minutes=12, lines=())
    made = VersionBlock(block=1, format=Format.AMRAP, minutes=10, lines=())
    assert not counts_as_written(Session(blocks=(written,)), (made,), Tolerance(lighter_percent=50))


@given(st.decimals(1, 60, places=1), st.integers(0, 50), st.integers(0, 50))
def test_more_tolerance_never_takes_away_what_counted(load, one, other):
    less, more = sorted((one, other))
    if line_counts(line(load=load), Tolerance(lighter_percent=less)):
        assert line_counts(line(load=load), Tolerance(lighter_percent=more))


def test_a_version_is_judged_anew_and_says_under_what():
    session = Session(blocks=(Block(kind="main", format=Format.AMRAP, minutes=12, lines=()),))
    made = VersionBlock(block=1, format=Format.AMRAP, minutes=12, lines=(line(load=15),))
    version = Version(athlete="Ilse", as_written=False, blocks=(made,))
    assert not judged(session, version, EXACTLY).as_written
    ten = judged(session, version, Tolerance(lighter_percent=10))
    assert (ten.as_written, ten.tolerance.lighter_percent, ten.is_exact) == (True, 10, False)
