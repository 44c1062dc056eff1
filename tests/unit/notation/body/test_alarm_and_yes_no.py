"""Stop signs and plain yes or no."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.notation.body.alarm import name_others, read_alarm, read_birth_sign
from core.notation.body.clearance import says_cleared
from core.notation.talk.ages import age_told
from core.notation.talk.yes_no import read_yes_no, says_only_asking


@pytest.mark.parametrize(
    "text",
    [
        "my chest hurts and I feel dizzy",
        "I have a tight chest",
        "pain in my chest since the run",
        "I almost fainted",
        "i'm feeling light-headed",
        "passed out after the second round",
        "I can't breathe",
        "my heart is racing and it won't stop",
        "why do I feel dizzy after burpees?",
        "is it normal that I get dizzy, I'm feeling faint?",
        "my friend and I almost fainted",
        "dizzy",
        "7+12, a bit dizzy after the burpees",
        "got light headed",
        "some dizziness in round 3",
        "5+3 but dizzy",
        "no pain but dizzy",
        "the burpees made me dizzy",
        "I'm dizzzy",
        "my head is spinning",
        "everything went black for a moment",
        "chest pian",
        "my chest feels weird",
        "my heart skipped",
        "palpitations since the run",
        "tingling in my left arm",
        "I can barely breathe",
        "I'm still short of breath",
        "broke out in a cold sweat",
    ],
)
def test_stop_signs_are_heard(text):
    assert read_alarm(text) == "told"


@pytest.mark.parametrize(
    "text",
    [
        "7+12",
        "no chest pain at all",
        "chest press hurts my shoulder",
        "I don't feel dizzy",
        "10 chest-to-bar pull-ups, my wrist hurts",
        "the coach is dizzying",
        "no dizziness, all good",
        "my wrist hurts",
        "not dizzy anymore",
        "burned 300 calories, heart rate 160",
        "my heart rate monitor hurts",
        "out of breath but happy",
        "a faint memory of burpees",
    ],
)
def test_ordinary_words_are_no_alarm(text):
    assert read_alarm(text) is None


@pytest.mark.parametrize(
    "text",
    [
        "is it normal to feel dizzy after burpees?",
        "Should I stop if I feel faint?",
        "what to do with chest pain",
        "is chest pressure dangerous when training?",
        "is dizziness normal?",
        "is it normal to get dizzy after burpees",
    ],
)
def test_a_sign_that_is_asked_about_is_told_apart(text):
    assert read_alarm(text) in {"asked", "told"}


@pytest.mark.parametrize(
    "text",
    [
        "Bo fainted",
        "help, bo just passed out",
        "I think Bo fainted",
        "Bo Larsen is dizzy",
        "Bo has chest pain",
        "the guy fainted",
    ],
)
def test_whoever_is_named_has_the_sign(text):
    assert read_alarm(name_others(text, {"Bo", "Bo Larsen"})) == "other"


@pytest.mark.parametrize(
    "text",
    [
        "Kim fainted",
        "Bo and I fainted",
        "Bo says I look faint",
        "nearly fainted, Bo helped",
        "I saw stars",
        "I think I fainted",
    ],
)
def test_in_doubt_the_sign_is_the_speakers(text):
    assert read_alarm(name_others(text, {"Bo", "Bo Larsen"})) == "told"


def test_a_question_that_names_nobody_is_one():
    assert read_alarm("is it normal to feel dizzy after burpees?") == "asked"


@pytest.mark.parametrize(
    "text",
    [
        "what should I do if somebody feels faint?",
        "my mum fainted",
        "what if a friend passes out?",
        "he collapsed",
    ],
)
def test_a_sign_of_somebody_else_needs_help(text):
    assert read_alarm(text) == "other"


@pytest.mark.parametrize(
    ("text", "is_so"),
    [
        ("I was only asking", True),
        ("just asking!", True),
        ("that wasn't about me", True),
        ("it was just a general question", True),
        ("asking for a friend", True),
        ("I still feel dizzy", False),
        ("7+12", False),
    ],
)
def test_who_was_only_asking(text, is_so):
    assert says_only_asking(text) is is_so


@pytest.mark.parametrize(
    ("text", "is_so"),
    [
        ("my doctor has cleared me", True),
        ("I'm cleared", True),
        ("doctor says I'm fine", True),
        ("my doctor hasn't cleared me", False),
        ("not until my doctor has cleared me", False),
        ("am I cleared?", False),
        ("I'm okay now, doctor says all good", True),
        ("my doc gave me the green light", True),
        ("my gp said i can train", True),
        ("the doctor hasn't said it's fine", False),
    ],
)
def test_who_was_cleared(text, is_so):
    assert says_cleared(text) is is_so


@pytest.mark.parametrize("text", ["yes", "Yes!", "sure", "ok", "yes im 30", "I am", "yep"])
def test_a_typed_yes_counts(text):
    assert read_yes_no(text) is True


@pytest.mark.parametrize("text", ["no", "Nope.", "none of these", "never", "I don't"])
def test_a_typed_no_counts(text):
    assert read_yes_no(text) is False


@pytest.mark.parametrize(
    "text", ["what is this?", "my ankles are swollen sometimes", "no, but my ankle...", "17", "", "not sure"]
)
def test_a_doubt_is_neither(text):
    assert read_yes_no(text) is None


@given(st.text(max_size=200))
def test_any_text_is_read_without_a_crash(text):
    assert read_yes_no(text) in {True, False, None}
    assert read_alarm(text) in {None, "told", "asked", "other"}


@pytest.mark.parametrize(
    ("typed", "sign"),
    [
        ("4 rounds, felt some contractions", "sign"),
        ("I think my waters broke", "sign"),
        ("I'm bleeding", "sign if expecting"),
        ("the baby isn't moving much", "sign if expecting"),
        ("bad headache since this morning", "sign if expecting"),
        ("no bleeding, all good", None),
        ("muscle contractions", None),
        ("my sister has contractions", None),
        ("4 rounds, felt great", None),
    ],
)
def test_stop_signs_of_a_pregnancy(typed, sign):
    assert read_birth_sign(typed) == sign


@pytest.mark.parametrize(
    ("words", "of_age"),
    [("im 54 and havent done anything since school", True), ("I am a 45 year old", True), ("54", True),
     ("i'm 16 but strong", False), ("I'm 80 kg", None), ("i have 12 and 16 kg", None)],
)  # fmt: skip
def test_an_age_is_heard_amid_other_words(words, of_age):
    assert age_told(words) is of_age
