"""A yes or a no to the safety questions, with more around it."""

import pytest

from core.athletes.values import ScreeningQuestion
from core.desk.joining.answering import answer_in

ILLNESS, ACTIVE = ScreeningQuestion.KNOWN_DISEASE, ScreeningQuestion.ACTIVE


@pytest.mark.parametrize(
    ("text", "question", "read"),
    [
        ("no but my dad had a heart attack", ILLNESS, False),
        ("lol no never done anything", ACTIVE, False),
        ("run 4x a wk so yes", ACTIVE, True),
        ("yes I walk the dog every morning 40 minutes", ACTIVE, True),
        ("yes, diabetes", ILLNESS, True),
    ],
)
def test_what_stands_around_a_yes_or_a_no_takes_nothing_from_it(text, question, read):
    assert answer_in(text, question) is read


@pytest.mark.parametrize(
    "text",
    ["no but my calf hurts", "no but I had one", "yes I walk the dog every morning", "run 4x a wk so yes"],
)
def test_what_may_be_said_of_something_else_is_no_answer_to_a_question_of_health(text):
    assert answer_in(text, ScreeningQuestion.SYMPTOMS) is None


@pytest.mark.parametrize("text", ["yes when I run", "yes my calf hurts when walking", "yes"])
def test_a_yes_to_a_sign_counts_whatever_it_comes_with(text):
    assert answer_in(text, ScreeningQuestion.SYMPTOMS) is True
