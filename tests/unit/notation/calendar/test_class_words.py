"""How coaches write of classes, and how people write of reminders."""

from datetime import date, time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.notation.calendar.class_dates import read_called_off, read_moved
from core.notation.calendar.classes import class_in, read_class, read_moved_for_good
from core.notation.calendar.reminding import DigestHour, DigestWanted, Lead, OwnZone, QuietHours, read_wish
from core.notation.calendar.timetables import as_it_is, classes_in
from tests.strategies import any_text

MONDAY = date(2026, 3, 2)
LINK = "https://example.org/room"


@pytest.mark.parametrize(
    ("text", "rule", "at", "minutes", "link", "title"),
    [
        (f"class Tuesdays 18:30, 45 min, {LINK}", "FREQ=WEEKLY;BYDAY=TU", (18, 30), 45, LINK, None),
        ("every Monday and Thursday at 7", "FREQ=WEEKLY;BYDAY=MO,TH", (7, 0), None, None, None),
        (
            f"Class: Mobility with Marit, Wed 7pm, 30 minutes, {LINK}.",
            "FREQ=WEEKLY;BYDAY=WE", (19, 0), 30, LINK, "Mobility with Marit",
        ),
        ("every other Tuesday 18:30", "FREQ=WEEKLY;INTERVAL=2;BYDAY=TU", (18, 30), None, None, None),
        ("weekdays at 6:30", "FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR", (6, 30), None, None, None),
        ("class Mon-Fri 7:15", "FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR", (7, 15), None, None, None),
        ("Daily at 07:00, half an hour", "FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR,SA,SU", (7, 0), 30, None, None),
        ("Mondays and Fridays 6.30am, one hour", "FREQ=WEEKLY;BYDAY=MO,FR", (6, 30), 60, None, None),
        ("Class Tue & Thu 18.30", "FREQ=WEEKLY;BYDAY=TU,TH", (18, 30), None, None, None),
        ("new class Saturday 10am 1.5 hours", "FREQ=WEEKLY;BYDAY=SA", (10, 0), 90, None, None),
        ("class 45 minutes tuesday 18", "FREQ=WEEKLY;BYDAY=TU", (18, 0), 45, None, None),
        ("set up a weekly class on Tuesdays at noon", "FREQ=WEEKLY;BYDAY=TU", (12, 0), None, None, None),
        ("video class every Sunday 9 pm", "FREQ=WEEKLY;BYDAY=SU", (21, 0), None, None, "Video"),
    ],
)  # fmt: skip
def test_a_repeating_class_is_read(text, rule, at, minutes, link, title):
    found = read_class(text, MONDAY)
    assert found is not None
    assert (found.rule, found.at, found.minutes, found.link) == (rule, time(*at), minutes, link)
    assert found.title == title


@pytest.mark.parametrize(
    ("text", "on"),
    [
        ("class on 14 March at 10:00", date(2026, 3, 14)),
        ("class March 14th 10:00", date(2026, 3, 14)),
        ("class 2026-03-14 10:00", date(2026, 3, 14)),
        ("class on 14.3. at 10:00", date(2026, 3, 14)),
        ("class on 1 February at 10:00", date(2027, 2, 1)),
        ("class tomorrow at 10:00", date(2026, 3, 3)),
        ("class this Saturday 10:00", date(2026, 3, 7)),
        ("class on Saturday at 10:00", date(2026, 3, 7)),
    ],
)
def test_a_class_that_is_held_once_is_read(text, on):
    found = read_class(text, MONDAY)
    assert found is not None
    assert (found.on, found.rule, found.at) == (on, None, time(10, 0))


@pytest.mark.parametrize(
    ("text", "known"),
    [
        ("class Tue at 7", False),
        ("class Tue at 07:00", True),
        ("class Tue 7am", True),
        ("class Tue 19", True),
    ],
)
def test_a_bare_hour_may_be_of_the_morning_or_the_evening(text, known):
    found = read_class(text, MONDAY)
    assert found is not None
    assert found.half_known is known


def test_what_is_missing_stays_open_and_can_be_added():
    found = read_class("class every Tuesday", MONDAY)
    assert found is not None
    assert found.at is None
    assert class_in("class every Tuesday, 18:30", MONDAY).at == time(18, 30)


@pytest.mark.parametrize(
    "text",
    ["see you Tuesday at 7", "class was great", "which class?", "is there a class on Tuesday?", "7+12",
     "8:43", "", "I can't do Tuesdays", "AMRAP 12\n10 push-ups\n200 m run", "hello"],
)  # fmt: skip
def test_talk_is_no_class(text):
    assert read_class(text, MONDAY) is None


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("no class next Tuesday", (date(2026, 3, 3), date(2026, 3, 10))),
        ("no class next Monday", (date(2026, 3, 9),)),
        ("No class tomorrow!", (date(2026, 3, 3),)),
        ("cancel Thursday's class", (date(2026, 3, 5),)),
        ("Class on Friday is cancelled", (date(2026, 3, 6),)),
        ("there's no class on 14 March", (date(2026, 3, 14),)),
        ("skip Tuesday", (date(2026, 3, 3),)),
        ("no class", ()),
    ],
)
def test_a_date_that_is_called_off_is_read(text, days):
    found = read_called_off(text, MONDAY)
    assert found is not None
    assert found.days == days


@pytest.mark.parametrize(
    ("text", "days", "to_day", "to_time"),
    [
        ("move Tuesday's class to Wednesday 19:00", (date(2026, 3, 3),), date(2026, 3, 4), time(19)),
        ("Move class on Tuesday to 19:00", (date(2026, 3, 3),), None, time(19)),
        ("postpone tomorrow's class to Friday", (date(2026, 3, 3),), date(2026, 3, 6), None),
        ("move class to 7pm", (), None, time(19)),
    ],
)
def test_a_date_that_is_moved_is_read(text, days, to_day, to_time):
    found = read_moved(text, MONDAY)
    assert found is not None
    assert (found.days, found.to_day, found.to_time) == (days, to_day, to_time)


@pytest.mark.parametrize(
    "text", ["class at 7 instead", "the class at 7 instead please", "class is at 7 instead, this time"]
)
def test_another_hour_alone_moves_the_next_class(text):
    found = read_moved(text, MONDAY)
    assert (found.days, found.to_day, found.to_time, found.half_known) == ((), None, time(7), False)


def test_another_hour_of_a_named_day_moves_that_class():
    found = read_moved("tomorrow's class at 7 instead", MONDAY)
    assert (found.days, found.to_time) == ((date(2026, 3, 3),), time(7))


def test_another_hour_of_days_that_repeat_moves_no_single_date():
    assert read_moved("class at 7 on Tuesdays instead", MONDAY) is None


@pytest.mark.parametrize(
    ("text", "before", "to"),
    [
        ("move class to 7", time(18, 30), time(19)),
        ("move class to 7", time(9), time(7)),
        ("move class to 1", time(12), time(13)),
        ("move class to 11", time(18, 30), time(11)),
        ("move class to 12", time(18, 30), time(12)),
        ("move class to 7am", time(18, 30), time(7)),
        ("move class to 07:00", time(18, 30), time(7)),
        ("move class to 19", time(7), time(19)),
        ("move Tuesday's class to Friday", time(18, 30), time(18, 30)),
    ],
)
def test_a_bare_hour_is_of_the_half_of_the_day_that_the_class_is_in(text, before, to):
    assert read_moved(text, MONDAY).time_near(before) == to


@pytest.mark.parametrize(
    ("text", "wish"),
    [
        ("remind me 2 hours before", Lead(minutes=120)),
        ("Please remind me 30 min before class", Lead(minutes=30)),
        ("reminder an hour before", Lead(minutes=60)),
        ("remind me half an hour early", Lead(minutes=30)),
        ("remind me an hour and a half before", Lead(minutes=90)),
        ("remind me a day before", Lead(minutes=1440)),
        ("quiet hours 22 to 7", QuietHours(start=time(22), end=time(7))),
        ("quiet from 10pm to 7am", QuietHours(start=time(22), end=time(7))),
        ("no messages between 22:30 and 06:45", QuietHours(start=time(22, 30), end=time(6, 45))),
        ("don't write me from 9 till 8", QuietHours(start=time(21), end=time(8))),
        ("quiet 10-7", QuietHours(start=time(22), end=time(7))),
        ("quiet from 13 to 15", QuietHours(start=time(13), end=time(15))),
        ("no quiet hours", QuietHours(start=None, end=None)),
        ("I live in Lisbon", OwnZone(zones=("Europe/Lisbon",))),
        ("I'm in New York this week", OwnZone(zones=("America/New_York",))),
        ("my time zone is Europe/Madrid", OwnZone(zones=("Europe/Madrid",))),
        ("digest at 21:15", DigestHour(at=time(21, 15))),
        ("evening digest at 9", DigestHour(at=time(21))),
        ("digest off", DigestWanted(yes=False)),
        ("no more digests please", DigestWanted(yes=False)),
        ("please don't send me the evening report", DigestWanted(yes=False)),
        ("stop the evening summary", DigestWanted(yes=False)),
        ("digest on again", DigestWanted(yes=True)),
        ("I'd like the digest back", DigestWanted(yes=True)),
    ],
)
def test_wishes_are_read(text, wish):
    assert read_wish(text) == wish


@pytest.mark.parametrize(
    "text",
    [
        "I'm in",
        "I'm in pain",
        "remind me",
        "quiet",
        "my zone is Nowhere at all",
        "7+12",
        "",
        "quiet?",
        "the digest",
    ],
)
def test_talk_is_no_wish(text):
    assert read_wish(text) is None


@given(
    text=any_text()
    | st.lists(
        st.sampled_from(
            [
                "class",
                "no",
                "every",
                "Tue",
                "next",
                "7",
                "7pm",
                "99:99",
                "to",
                "min",
                "45",
                "31 April",
                "quiet",
                "remind",
                "before",
                "h",
            ]
        )
    ).map(" ".join)
)
def test_whatever_is_typed_never_crashes_the_readers(text):
    for found in (read_class(text, MONDAY), class_in(text, MONDAY)):
        assert found is None or found.minutes is None or 1 <= found.minutes <= 720
    read_called_off(text, MONDAY)
    read_moved(text, MONDAY)
    wish = read_wish(text)
    assert not isinstance(wish, Lead) or 0 <= wish.minutes <= 7 * 24 * 60


TUESDAY, NEXT_TUESDAY = date(2026, 3, 3), date(2026, 3, 10)
INSTEAD = [
    ("next Tuesday's class is at 7pm instead", (TUESDAY, NEXT_TUESDAY), None, time(19)),
    ("Tuesday's class is at 19:00 instead", (TUESDAY,), None, time(19)),
    ("tuesdays class is at 7pm instead", (TUESDAY,), None, time(19)),
    ("Sorry, tomorrow's class starts at 8", (TUESDAY,), None, time(8)),
    ("the class on Thursday is at 7pm", (date(2026, 3, 5),), None, time(19)),
    ("the class on 5 March will be at 18:00", (date(2026, 3, 5),), None, time(18)),
    ("let's have tomorrow's class at 8pm", (TUESDAY,), None, time(20)),
    ("make Tuesday's class 7pm", (TUESDAY,), None, time(19)),
    ("change Tuesday's class to 7pm", (TUESDAY,), None, time(19)),
    ("Tuesday's class moves to Wednesday 18:30", (TUESDAY,), date(2026, 3, 4), time(18, 30)),
    ("today's class is on Thursday instead", (MONDAY,), date(2026, 3, 5), None),
]


@pytest.mark.parametrize(("text", "days", "to_day", "to_time"), INSTEAD)
def test_a_class_that_is_said_to_be_at_another_time_is_moved(text, days, to_day, to_time):
    found = read_moved(text, MONDAY)
    assert found is not None
    assert (found.days, found.to_day, found.to_time) == (days, to_day, to_time)


NOT_MOVED = [
    "Class on Tuesdays starts at 7",
    "class on Thursday is at 7pm",
    "class Tuesdays 18:30",
    "new class Tuesday starts at 7pm",
    "is tomorrow's class at 7?",
    "Tuesday's class is great",
    "Tuesday's class is off",
]


@pytest.mark.parametrize("text", NOT_MOVED)
def test_a_new_class_a_question_or_praise_moves_nothing(text):
    assert read_moved(text, MONDAY) is None


def test_a_class_of_one_day_is_called_off():
    found = read_called_off("Tuesday's class is off", MONDAY)
    assert found is not None
    assert found.days == (TUESDAY,)


@pytest.mark.parametrize(
    ("words", "weekdays", "since"),
    [
        ("class moved to thursdays 19:00 from next wk", (3,), date(2026, 3, 9)),
        ("the class is now on fridays at 19:00", (4,), None),
    ],
)
def test_a_class_that_is_moved_for_good_is_told_with_all_its_days(words, weekdays, since):
    read = read_moved_for_good(words, date(2026, 3, 2))
    assert (read.weekdays, read.since, read.at, read.title) == (weekdays, since, time(19, 0), None)


@pytest.mark.parametrize(
    "words", ["class moved to thursday 19:00", "class thursdays 19:00", "is class on thursdays now?"]
)
def test_one_date_moved_or_a_new_class_is_none_moved_for_good(words):
    assert read_moved_for_good(words, date(2026, 3, 2)) is None


def told(read):
    return [(one.weekdays, one.at and f"{one.at:%H:%M}", one.minutes) for one in read]


@pytest.mark.parametrize(
    ("text", "classes"),
    [
        ("class tue 18:30 45min and thurs 7am 30 min", [((1,), "18:30", 45), ((3,), "07:00", 30)]),
        ("class tue 18:30 thu 7am", [((1,), "18:30", None), ((3,), "07:00", None)]),
        ("class 6:30pm tue 7am thurs", [((1,), "18:30", None), ((3,), "07:00", None)]),
        ("class tuesday 18:00 and 19:30", [((1,), "18:00", None), ((1,), "19:30", None)]),
        ("class mon/wed 18h, sat 9:30, 45 min", [((0, 2), "18:00", 45), ((5,), "09:30", 45)]),
        ("class tue 18:30-19:15 and thu 7-7:30am", [((1,), "18:30", 45), ((3,), "07:00", 30)]),
        ("class tue and thu 18:30", [((1, 3), "18:30", None)]),
    ],
)
def test_each_hour_that_has_days_is_a_class(text, classes):
    read = classes_in(text, MONDAY)
    assert told(read) == classes
    assert all(one.title is None for one in read)


@given(
    st.lists(
        st.sampled_from(["mon", "tuesday", "weds", "thurs", "fri"]), min_size=2, max_size=4, unique=True
    ),
    st.lists(st.sampled_from(["7am", "18:30", "6.15pm", "9:45"]), min_size=4, max_size=4),
    st.sampled_from([" and ", ", ", "\n", " / ", " "]),
)
def test_every_day_and_hour_that_is_told_is_in_what_is_read(days, hours, joint):
    said = [f"{day} {hour}" for day, hour in zip(days, hours, strict=False)]
    read = classes_in(f"class {joint.join(said)}", MONDAY)
    alone = [class_in(f"class {one}", MONDAY) for one in said]
    assert told(read) == told(alone)


def test_how_a_class_is_said_to_be_is_no_question_and_nothing_that_happened_to_it():
    assert as_it_is("the class is at 6:30pm tue")
    assert not as_it_is("is the class at 6:30pm tue?")
    assert not as_it_is("the class is cancelled on tue")
