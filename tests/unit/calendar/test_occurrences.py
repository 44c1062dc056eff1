"""A class takes place on its own wall clock, whatever the clocks of the world do."""

from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from dateutil import tz
from dateutil.rrule import rrulestr
from hypothesis import given, settings
from hypothesis import strategies as st
from pydantic import ValidationError

from core.calendar.occurrences import instant, occurrences, takes_place
from tests.unit.calendar.clocks import at, classes, days, meeting, starts, zones

SCRAPS = ("FREQ=", "WEEKLY", "DAILY", ";", "BYDAY=", "MO", ",", "-1", "COUNT=", "5", "UNTIL=", "BYMONTH=")
WEEKLY = "FREQ=WEEKLY;BYDAY=MO"
spans = st.tuples(days, st.integers(0, 90)).map(lambda span: (span[0], span[0] + timedelta(days=span[1])))


def locals_of(found):
    return [one.local for one in found]


@settings(max_examples=40)
@given(of=classes(), span=spans)
def test_every_meeting_shows_the_same_time_on_the_wall_unless_the_clocks_skip_it(of, span):
    for one in occurrences(of, *span):
        wall = one.starts.astimezone(ZoneInfo(of.zone)).replace(tzinfo=None)
        assert one.local.time() == of.start.time()
        assert wall == one.local or not tz.datetime_exists(one.local, tz.gettz(of.zone))


@settings(max_examples=40)
@given(of=classes(), span=spans)
def test_meetings_come_in_order_once_each_and_within_the_dates(of, span):
    found = occurrences(of, *span)
    assert [one.starts for one in found] == sorted({one.starts for one in found})
    assert all(span[0] <= one.local.date() <= span[1] and one.original >= of.start for one in found)


@settings(max_examples=40)
@given(of=classes(), span=spans)
def test_the_dates_are_those_of_the_reference_library(of, span):
    rule = rrulestr(f"DTSTART:{of.start:%Y%m%dT%H%M%S}\nRRULE:{of.rule}")
    expected = [
        one for one in rule.xafter(of.start, inc=True, count=1500) if span[0] <= one.date() <= span[1]
    ]
    assert locals_of(occurrences(of, *span)) == expected


@given(local=starts, zone=zones)
def test_the_instant_is_that_of_another_librarys_zones(local, zone):
    """dateutil reads zones with code of its own; gaps and folds are those of RFC 5545 3.3.5."""
    other = tz.resolve_imaginary(local.replace(tzinfo=tz.gettz(zone), fold=0))
    assert instant(local, zone) == datetime.fromtimestamp(other.timestamp(), UTC)


@settings(max_examples=40)
@given(of=classes(), span=spans, data=st.data())
def test_what_is_skipped_cancelled_or_moved_changes_nothing_else(of, span, data):
    found = occurrences(of, *span)
    if not found:
        return
    one = data.draw(st.sampled_from(found))
    others = [other for other in found if other != one]
    assert list(occurrences(of.model_copy(update={"skip": {one.local.date()}}), *span)) == others
    assert list(occurrences(of.model_copy(update={"cancelled": {one.original}}), *span)) == others
    moved = of.model_copy(update={"moved": {one.original: one.original + timedelta(minutes=7)}})
    found_again = {other.original: other for other in occurrences(moved, *span)}
    assert [other for other in found_again.values() if other.original != one.original] == others


def test_in_a_spring_gap_the_offset_before_it_counts():
    [one] = occurrences(meeting(at("2026-03-29T02:30")), date(2026, 3, 29), date(2026, 3, 29))
    assert one.original == at("2026-03-29T02:30")
    assert one.starts == at("2026-03-29T01:30Z")  # the wall shows 03:30


def test_in_a_fold_the_first_of_the_two_counts():
    [one] = occurrences(meeting(at("2026-10-25T02:30")), date(2026, 10, 25), date(2026, 10, 25))
    assert one.starts == at("2026-10-25T00:30Z")


def test_a_class_can_take_place_once():
    once = meeting(at("2026-03-04T18:30"))
    assert locals_of(occurrences(once, date(2026, 1, 1), date(2026, 12, 31))) == [at("2026-03-04T18:30")]
    assert occurrences(once, date(2026, 3, 5), date(2026, 12, 31)) == ()


def test_a_moved_meeting_is_found_on_its_new_date_by_its_old_key():
    moved = meeting(at("2026-03-02T18:30"), WEEKLY, moved={at("2026-03-09T18:30"): at("2026-03-11T19:00")})
    assert occurrences(moved, date(2026, 3, 9), date(2026, 3, 10)) == ()
    [one] = occurrences(moved, date(2026, 3, 10), date(2026, 3, 12))
    assert (one.original, one.local, one.starts) == (
        at("2026-03-09T18:30"),
        at("2026-03-11T19:00"),
        at("2026-03-11T18:00Z"),
    )


def test_what_was_moved_but_never_was_a_meeting_stays_away():
    stray = meeting(at("2026-03-02T18:30"), WEEKLY, moved={at("2026-03-10T18:30"): at("2026-03-11T19:00")})
    assert occurrences(stray, date(2026, 3, 10), date(2026, 3, 12)) == ()


def test_a_meeting_takes_place_until_it_is_called_off():
    weekly = meeting(at("2026-03-02T18:30"), WEEKLY)
    off = weekly.model_copy(update={"cancelled": frozenset({at("2026-03-09T18:30")})})
    assert takes_place(weekly, at("2026-03-09T18:30"))
    assert not takes_place(off, at("2026-03-09T18:30"))
    assert not takes_place(weekly, at("2026-03-10T18:30"))


@pytest.mark.parametrize(
    "until", ["20260316T173000Z", "20260316T183000", "20260316"], ids=["utc", "local", "date"]
)
def test_until_includes_its_own_moment(until):
    limited = meeting(at("2026-03-02T18:30"), f"{WEEKLY};UNTIL={until}")
    assert len(occurrences(limited, date(2026, 3, 1), date(2026, 4, 30))) == 3


def test_until_in_utc_leaves_out_what_comes_a_second_later():
    limited = meeting(at("2026-03-02T18:30"), f"{WEEKLY};UNTIL=20260316T172959Z")
    assert len(occurrences(limited, date(2026, 3, 1), date(2026, 4, 30))) == 2


@pytest.mark.parametrize(
    "rule",
    [
        "", "weekly", "FREQ=HOURLY", "FREQ=WEEKLY;BYDAY=XX", "FREQ=WEEKLY;BYDAY", "FREQ=WEEKLY;FREQ=DAILY",
        "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30", "FREQ=DAILY;COUNT=3;UNTIL=20260316", "FREQ=DAILY;INTERVAL=0",
        "FREQ=DAILY;UNTIL=soon", "FREQ=DAILY;COUNT=-1", "FREQ=DAILY;BYYEARDAY=366",
        "FREQ=DAILY;X=1", "FREQ=DAILY;BYSETPOS=2", "FREQ=DAILY;INTERVAL=x", "FREQ=DAILY;BYMONTH=13",
    ],
)  # fmt: skip
def test_what_is_no_rule_is_refused(rule):
    with pytest.raises(ValidationError):
        meeting(at("2026-03-02T18:30"), rule)


@given(text=st.text(max_size=40) | st.lists(st.sampled_from(SCRAPS)).map("".join))
def test_any_other_text_is_a_rule_or_refused_and_never_a_crash(text):
    try:
        found = meeting(at("2026-03-02T18:30"), text)
    except ValidationError:
        return
    occurrences(found, date(2026, 3, 2), date(2026, 3, 9))


@pytest.mark.parametrize(
    "wrong", [{"zone": "Europe/Nowhere"}, {"start": at("2026-03-02T18:30Z")}, {"minutes": 0}]
)
def test_a_class_needs_a_known_zone_a_local_start_and_a_length(wrong):
    with pytest.raises(ValidationError):
        meeting(**{"start": at("2026-03-02T18:30"), **wrong})
