"""What a coach wishes about one athlete."""

import pytest

from core.notation.coaching.wishes import read_body_of_another, read_hold_of_somebody, read_wish

NAMES = ("Ilse", "Bo", "Anna Maria Vik", "Anna Berg")


@pytest.mark.parametrize(
    "text",
    [
        "hold Ilse for my OK",
        "Hold Ilse's versions until I say OK.",
        "please hold Ilse",
        "hold Ilse's versions for my okay from now on",
        "hold Ilse\u2019s sessions until I have looked at them",
        "keep Ilse's versions for my OK",
        "my OK first for Ilse",
        "Ilse needs my OK first",
        "let me see Ilse's versions first",
        "I want to check Ilse's version first",
        "can I hold ilse for my ok?",
        "Could you please hold Ilse?",
    ],
)
def test_a_wish_to_hold_is_read(text):
    assert read_wish(text, NAMES) == ("Ilse", "hold")


@pytest.mark.parametrize(
    "text",
    [
        "stop holding Ilse",
        "no more holding Ilse please",
        "don't hold Ilse any more",
        "unhold Ilse",
        "release Ilse",
        "lift the hold on Ilse",
        "lift Ilse's hold",
        "let Ilse's versions go out again",
        "Ilse needs no OK any more",
    ],
)
def test_a_wish_to_let_go_is_read(text):
    assert read_wish(text, NAMES) == ("Ilse", "lift")


@pytest.mark.parametrize(
    "text",
    [
        "Ilse",
        "show me Ilse",
        "what does Ilse's version look like",
        "what's Ilse doing?",
        "Ilse's version?",
        "what does Ilse get",
        "how does Ilse do it?",
    ],
)
def test_a_wish_to_look_is_read(text):
    assert read_wish(text, NAMES) == ("Ilse", "look")


@pytest.mark.parametrize(
    "text",
    [
        "Ilse 7+12",
        "hold",
        "hold the plank",
        "hold Tove for my OK",
        "30 s hold",
        "Anna",
        "Ilse and Bo",
        "",
        "hold Bobby",
    ],
)
def test_all_else_is_no_wish(text):
    assert read_wish(text, NAMES) is None


def test_of_two_with_one_first_name_the_whole_name_tells():
    assert read_wish("hold Anna Berg for my OK", NAMES) == ("Anna Berg", "hold")


@pytest.mark.parametrize(
    ("typed", "name"),
    [
        ("hold Tove for my OK", "Tove"),
        ("can i hold anna for my ok?", "anna"),
        ("Hold Tove's versions for my okay", "Tove"),
        ("hold the plank for 30 s", None),
        ("hold Tove", None),
    ],
)
def test_a_hold_of_somebody_unknown_is_told_from_other_words(typed, name):
    assert read_hold_of_somebody(typed) == name


@pytest.mark.parametrize(
    ("typed", "name"),
    [
        ("Ilse has a bad shoulder, no overhead for her", "Ilse"),
        ("bo is pregnant", "Bo"),
        ("no jumping for Bo please", "Bo"),
        ("Ilse 7+12, wrist hurts", None),
        ("Bo is great", None),
        ("make the row 200 m", None),
        ("does Ilse have a bad knee?", None),
    ],
)
def test_of_whom_a_coach_tells_what_they_must_spare(typed, name):
    assert read_body_of_another(typed, NAMES) == name


def test_what_is_asked_of_somebody_tells_nothing_of_their_body():
    assert read_body_of_another("Tove has a bad knee", ["Tove"]) == "Tove"
    assert read_body_of_another("how heavy should Tove go", ["Tove"]) is None
