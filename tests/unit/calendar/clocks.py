"""Classes and clocks for the calendar's tests."""

from datetime import date, datetime, time

from hypothesis import strategies as st

from core.calendar.values import Class, Habits, Quiet

# Both hemispheres, half hours, a half-hour change of clocks, and clocks that never change.
ZONES = (
    "Europe/Berlin", "America/New_York", "Australia/Lord_Howe", "America/St_Johns", "Asia/Kolkata",
    "Pacific/Auckland", "America/Sao_Paulo", "UTC", "Africa/Casablanca", "Pacific/Apia",
)  # fmt: skip
RULES = (
    "FREQ=WEEKLY;BYDAY=MO,TH", "FREQ=DAILY", "FREQ=WEEKLY;INTERVAL=2;BYDAY=TU,SU", "FREQ=MONTHLY;BYDAY=-1FR",
    "FREQ=DAILY;INTERVAL=3;COUNT=40", "FREQ=MONTHLY;BYMONTHDAY=31", "FREQ=YEARLY;BYMONTH=3;BYDAY=SU",
)  # fmt: skip

zones = st.sampled_from(ZONES)
days = st.dates(date(2024, 1, 1), date(2027, 12, 31))
walls = st.times().map(lambda wall: wall.replace(second=0, microsecond=0))
starts = st.builds(datetime.combine, days, walls)


@st.composite
def classes(draw):
    return Class(title="Class", zone=draw(zones), start=draw(starts), rule=draw(st.sampled_from(RULES)))


@st.composite
def habits(draw):
    quiet = draw(st.none() | st.builds(Quiet, start=walls, end=walls))
    return Habits(zone=draw(zones), lead_minutes=draw(st.integers(0, 3000)), quiet=quiet)


def meeting(start, rule=None, zone="Europe/Berlin", **more):
    return Class(title="Class", zone=zone, start=start, rule=rule, **more)


def at(text):
    return datetime.fromisoformat(text)


def quiet(start, end):
    return Quiet(start=time.fromisoformat(start), end=time.fromisoformat(end))
