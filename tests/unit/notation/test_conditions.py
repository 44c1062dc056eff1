"""Health that people tell of unasked."""

import pytest

from core.notation.conditions import read_conditions


@pytest.mark.parametrize(
    ("text", "limits"),
    [
        ("I'm pregnant", ("pregnancy",)),
        ("I just found out I\u2019m pregnant!", ("pregnancy",)),
        ("hi, I am pregnant, 14 weeks", ("pregnancy",)),
        ("I'm expecting a baby", ("pregnancy",)),
        ("I have high blood pressure", ("high-blood-pressure",)),
        ("I was told I have high blood pressure", ("high-blood-pressure",)),
        ("I had a baby 5 weeks ago", ("after-birth",)),
        ("I take blood thinners now", ("blood-thinners",)),
        ("I had knee surgery last week", ("knee", "surgery")),
        ("please no jumping", ("no-jumping",)),
        ("no running for me please", ("no-running",)),
    ],
)
def test_health_that_is_told_unasked_is_kept_in_mind(text, limits):
    read = read_conditions(text)
    assert read is not None
    assert read.limits == limits


@pytest.mark.parametrize(
    "text",
    [
        "my wife is pregnant",
        "I'm not pregnant",
        "am I allowed to do this if I'm pregnant?",
        "I'm expecting a parcel",
        "I love how this fits me",
        "no running today",
        "no class next Tuesday",
        "no",
        "no idea",
        "7+12",
        "I was pregnant last year",
    ],
)
def test_what_is_said_of_others_of_before_or_of_today_is_not(text):
    assert read_conditions(text) is None
