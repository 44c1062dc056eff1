"""A reminder comes early by the lead, and never in quiet hours."""

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.calendar.reminders import LEAST, is_quiet, outside_quiet, reminder
from core.calendar.values import Habits
from tests.unit.calendar.clocks import at, habits, quiet

instants = st.datetimes(datetime(2024, 1, 1), datetime(2027, 12, 31)).map(
    lambda moment: moment.replace(second=0, microsecond=0, tzinfo=UTC)
)
NIGHT = quiet("22:00", "07:00")


def in_berlin(lead, hours):
    return Habits(zone="Europe/Berlin", lead_minutes=lead, quiet=hours)


@given(starts=instants, wants=habits())
def test_nobody_is_reminded_in_quiet_hours_or_after_the_start(starts, wants):
    found = reminder(starts, wants)
    assert found.due is None or (found.due <= starts and not is_quiet(found.due, wants))


@given(starts=instants, wants=habits())
def test_a_reminder_moves_only_when_it_must(starts, wants):
    wished = starts - timedelta(minutes=wants.lead_minutes)
    found = reminder(starts, wants)
    assert (found.moved is None) == (not is_quiet(wished, wants))
    assert found.moved is not None or found.due == wished


@given(starts=instants, wants=habits())
def test_a_moved_reminder_leaves_ten_minutes_or_comes_before_the_quiet_hours(starts, wants):
    wished = starts - timedelta(minutes=wants.lead_minutes)
    found = reminder(starts, wants)
    if found.moved is None or found.due is None:
        return
    assert starts - found.due >= LEAST if found.due > wished else found.due < wished
    between = sorted((found.due, wished))
    step, moment = timedelta(minutes=5), between[0] + timedelta(minutes=1)
    while moment < between[1]:
        assert is_quiet(moment, wants)
        moment += step


@given(moment=instants, wants=habits())
def test_what_has_time_waits_for_the_end_of_the_quiet_hours(moment, wants):
    later = outside_quiet(moment, wants)
    assert later >= moment
    assert (later == moment) == (not is_quiet(moment, wants))


@pytest.mark.parametrize(
    ("starts", "lead", "due", "moved"),
    [
        ("2026-03-03T18:30", 60, "2026-03-03T17:30", None),
        ("2026-03-03T07:30", 60, "2026-03-03T07:00", "end"),
        ("2026-03-03T07:10", 60, "2026-03-03T07:00", "end"),
        ("2026-03-03T07:09", 60, "2026-03-02T21:59", "before"),
        ("2026-03-03T06:00", 30, "2026-03-02T21:59", "before"),
        ("2026-03-03T07:30", 30, "2026-03-03T07:00", None),  # the end itself isn't quiet
        ("2026-03-03T23:00", 60, "2026-03-03T21:59", "before"),  # their beginning is
    ],
)
def test_quiet_hours_over_midnight(starts, lead, due, moved):
    zone = ZoneInfo("Europe/Berlin")
    found = reminder(at(starts).replace(tzinfo=zone), in_berlin(lead, NIGHT))
    assert found.due == at(due).replace(tzinfo=zone)
    assert moved in (found.moved or "") if moved else found.moved is None


def test_quiet_hours_go_by_the_persons_own_clock():
    starts = at("2026-03-03T18:30+01:00")  # 12:30 in New York
    there = Habits(zone="America/New_York", lead_minutes=60, quiet=quiet("09:00", "12:00"))
    assert reminder(starts, there).due == at("2026-03-03T12:00-05:00")


def test_equal_ends_mean_no_quiet_hours():
    starts = at("2026-03-03T07:30Z")
    assert reminder(starts, in_berlin(60, quiet("00:00", "00:00"))).moved is None


def test_where_the_only_hour_that_is_not_quiet_is_skipped_nobody_is_reminded():
    """Quiet but from 02:00 to 03:00, which this night doesn't have."""
    found = reminder(at("2026-03-29T10:00+02:00"), in_berlin(60, quiet("03:00", "02:00")))
    assert found.due is None
    assert "no moment" in (found.moved or "")


@pytest.mark.parametrize(
    ("starts", "hours", "due"),
    [
        # The quiet hours end at 02:30, which this night doesn't have: they are over with the skip.
        ("2026-03-29T03:15+02:00", ("22:00", "02:30"), "2026-03-29T03:00+02:00"),
        # They begin in the skip.
        ("2026-03-29T06:00+02:00", ("02:30", "07:00"), "2026-03-29T01:59+01:00"),
        # ... and which comes twice in autumn: the first is their end, but the second is 02:00 to 02:30 again.
        ("2026-10-25T02:50+02:00", ("22:00", "02:30"), "2026-10-25T02:30+02:00"),
        ("2026-10-25T02:45+01:00", ("22:00", "02:30"), "2026-10-25T02:30+01:00"),
    ],
)
def test_quiet_hours_on_the_nights_when_clocks_change(starts, hours, due):
    lead = 35 if "02:45" in starts else 60
    assert reminder(at(starts), in_berlin(lead, quiet(*hours))).due == at(due)
