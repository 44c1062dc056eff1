import pytest

from core.notation.asides import asks_how_it_goes, asks_who_is_in, is_thanks
from core.notation.yes_no import read_age, says_by_mistake


@pytest.mark.parametrize(
    "text",
    [
        "thanks",
        "Thank you!",
        "ok thanks",
        "great, thank you so much!",
        "thx",
        "cool",
        "Perfect, thanks a lot",
    ],
)
def test_thanks_are_heard(text):
    assert is_thanks(text)


@pytest.mark.parametrize(
    "text",
    [
        "no thanks, nothing hurts",
        "thanks, 7+12",
        "thanks but my wrist hurts",
        "ok 9:24",
        "",
        "great lunges today",
    ],
)
def test_what_says_more_is_no_mere_thanks(text):
    assert not is_thanks(text)


@pytest.mark.parametrize(
    "text",
    ["who hasn't reported?", "Who has trained?", "how is everyone doing", "who's missing", "digest",
     "show me the digest", "how did it go today", "who hasn't done it yet?", "How are my people?"],
)  # fmt: skip
def test_a_coach_may_ask_how_it_goes(text):
    assert asks_how_it_goes(text)


@pytest.mark.parametrize(
    "text",
    ["digest at 21:15", "no more digests", "how is it done?", "who are you", "how do I do a lunge?", "7+12"],
)
def test_other_questions_are_left_alone(text):
    assert not asks_how_it_goes(text)


@pytest.mark.parametrize(
    ("text", "of_age"),
    [("27", True), ("I'm 27", True), ("i am 18 years old", True), ("17", False), ("I'm 15", False), ("7+12", None),
     ("0", None), ("300", None), ("yes", None), ("no, I'm 34", True), ("27 kg", None)],
)  # fmt: skip
def test_an_age_tells_whether_somebody_is_of_age(text, of_age):
    assert read_age(text) is of_age


@pytest.mark.parametrize(
    "text", ["I pressed wrong", "sorry, wrong button", "that was a mistake", "I'm an adult!"]
)
def test_a_slip_can_be_told(text):
    assert says_by_mistake(text)


WHO_IS_IN = [
    "who's in today?", "Who is in", "whos in tonight", "who's coming to today's class?", "who signed up for tomorrow?",
    "who has signed up for the class on Tuesday?", "so who is training today", "who's in for Tuesday's class",
    "sign-ups", "who will be there tomorrow?", "who comes today?",
]  # fmt: skip


@pytest.mark.parametrize("text", WHO_IS_IN)
def test_who_is_in_is_asked_in_many_words(text):
    assert asks_who_is_in(text)
    assert not asks_how_it_goes(text)


@pytest.mark.parametrize(
    "text", ["who hasn't reported?", "who's in charge?", "who scored", "who can come early?"]
)
def test_another_question_about_people_is_no_such_question(text):
    assert not asks_who_is_in(text)
