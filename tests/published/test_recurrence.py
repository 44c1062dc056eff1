"""Classes against the worked examples of RFC 5545, 3.8.5.3, and its rule for changes of clocks, 3.3.5."""

from datetime import date, datetime

import pytest

from core.calendar.occurrences import occurrences
from core.calendar.values import Class

YEARS = (date(1997, 1, 1), date(1999, 12, 31))


def in_new_york(start, rule):
    return Class(title="RFC 5545", zone="America/New_York", start=datetime.fromisoformat(start), rule=rule)


def dates(start, rule):
    return [f"{one.local:%m-%d}" for one in occurrences(in_new_york(start, rule), *YEARS)]


def test_daily_until_december_24_keeps_nine_o_clock_through_the_change_of_clocks():
    """RFC 5545 3.8.5.3, read: 113 times 09:00 local; 13:00Z, and from October 26 on 14:00Z."""
    of = in_new_york("1997-09-02T09:00", "FREQ=DAILY;UNTIL=19971224T000000Z")
    found = occurrences(of, *YEARS)
    assert len(found) == 113
    assert {one.local.hour for one in found} == {9}
    assert {one.starts.hour for one in found if one.local.date() < date(1997, 10, 26)} == {13}
    assert {one.starts.hour for one in found if one.local.date() >= date(1997, 10, 26)} == {14}


@pytest.mark.parametrize(
    ("week_start", "expected"),
    [("MO", ["08-05", "08-10", "08-19", "08-24"]), ("SU", ["08-05", "08-17", "08-19", "08-31"])],
)
def test_the_start_of_the_week_matters_for_every_other_week(week_start, expected):
    """RFC 5545 3.8.5.3, from memory, reproduced."""
    rule = f"FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST={week_start}"
    assert dates("1997-08-05T09:00", rule) == expected


# RFC 5545 3.8.5.3, the examples from memory.
@pytest.mark.parametrize(
    ("start", "rule", "expected"),
    [
        ("1997-09-02T09:00", "FREQ=WEEKLY;COUNT=3", ["09-02", "09-09", "09-16"]),
        (
            "1997-09-02T09:00",
            "FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH",
            ["09-02", "09-04", "09-16", "09-18", "09-30", "10-02", "10-14", "10-16"],
        ),
        ("1997-09-05T09:00", "FREQ=MONTHLY;COUNT=4;BYDAY=1FR", ["09-05", "10-03", "11-07", "12-05"]),
        ("1997-09-22T09:00", "FREQ=MONTHLY;COUNT=3;BYDAY=-2MO", ["09-22", "10-20", "11-17"]),
        ("1997-09-28T09:00", "FREQ=MONTHLY;BYMONTHDAY=-3;COUNT=3", ["09-28", "10-29", "11-28"]),
        ("1997-09-04T09:00", "FREQ=MONTHLY;COUNT=3;BYDAY=TU,WE,TH;BYSETPOS=3", ["09-04", "10-07", "11-06"]),
    ],
)
def test_the_standards_own_examples(start, rule, expected):
    assert dates(start, rule) == expected


def test_a_time_that_is_skipped_takes_the_offset_before_and_one_that_comes_twice_the_first():
    """RFC 5545 3.3.5, from memory: 02:30 on April 1, 2007 in the text; the zone's rules of 1997 here."""
    daily = in_new_york("1997-04-05T02:30", "FREQ=DAILY;COUNT=3")
    assert [f"{one.starts:%H:%M}" for one in occurrences(daily, *YEARS)] == ["07:30", "07:30", "06:30"]
    fold = in_new_york("1997-10-26T01:30", "FREQ=DAILY;COUNT=1")
    assert [f"{one.starts:%H:%M}" for one in occurrences(fold, *YEARS)] == ["05:30"]
