"""A coach's message is cut where another wish begins, and every word of it is in one of them."""

from itertools import pairwise, permutations

import pytest

from core.notation.coaching.wishes import read_wish
from core.understanding.ordering import orders_in
from core.understanding.several import each_alone, matters

PEOPLE = ("Ilse", "Bo", "Odd", "Gunn")


def cut(text):
    return matters(text, PEOPLE, lambda words: bool(orders_in(words, PEOPLE) or read_wish(words, PEOPLE)))


@pytest.mark.parametrize(
    ("text", "wishes"),
    [
        (
            "drop the jog to 8 min and post thurs 530pm. also tell bo shes doing great",
            [
                ("change", "drop the jog to 8 min"),
                ("post", "post thurs 530pm."),
                ("word", "tell bo shes doing great"),
            ],
        ),
        (
            "ilse 5 runs not 6, bo no rows he has a bad disc, n make the run 300 for everyone",
            [
                ("people", "ilse 5 runs not 6"),
                ("people", "bo no rows he has a bad disc"),
                ("change", "make the run 300 for everyone"),
            ],
        ),
        (
            "gunn n odd are over 70, ilse is pregnant. go easy on them all week. bo no rows",
            [
                ("people", "gunn n odd are over 70, ilse is pregnant. go easy on them all week."),
                ("people", "bo no rows"),
            ],
        ),
        (
            "remind ilse about friday and bo about his score",
            [("word", "remind ilse about friday"), ("word", "remind Bo about his score")],
        ),
        ("tell ilse that bo is away", [("word", "tell ilse that bo is away")]),
        (
            "how did ilse and bo do this month, and who needs me?",
            [("ask", "how did ilse and bo do this month"), ("ask", "who needs me?")],
        ),
        (
            "how are ilse, odd and bo doing? odd lighter",
            [("ask", "how are ilse, odd and bo doing?"), ("people", "odd lighter")],
        ),
        (
            "leave odd out until monday, and let me know who needs me",
            [("people", "leave odd out until monday"), ("ask", "let me know who needs me")],
        ),
        ("class sat off, new one sun 10am", [("class", "class sat off"), ("class", "class sun 10am")]),
        ("odd hasnt done it, ask him why", [("people", "odd hasnt done it, ask him why")]),
        ("how is ilse, bo has a cold", [("ask", "how is ilse"), ("people", "bo has a cold")]),
        ("hold ilse, same for bo", [("people", "hold ilse"), ("people", "hold Bo")]),
        (
            "tues class is off next week, pls tell everyone",
            [("class", "tues class is off next week"), ("word", "announce: tues class is off next week")],
        ),
        (
            "who needs me? also ilse easier pls and leave odd out til monday",
            [("ask", "who needs me?"), ("people", "ilse easier pls"), ("people", "leave odd out til monday")],
        ),
        (
            "whats set for the weekend + whos not reported",
            [("ask", "whats set for the weekend"), ("ask", "whos not reported")],
        ),
        (
            "remind odd his scores are due, and what did gunn get",
            [("word", "remind odd his scores are due"), ("ask", "what did gunn get")],
        ),
        ("easy week for ilse n bo from monday", [("people", "easy week for ilse n bo from monday")]),
        ("whos done it and who needs me", [("ask", "whos done it"), ("ask", "who needs me")]),
    ],
)
def test_another_wish_begins_with_its_verb_or_with_somebody_else(text, wishes):
    assert cut(text) == tuple(wishes)


@pytest.mark.parametrize(
    "text",
    [
        "make it 12 min and 10 push-ups",
        "swap burpees and squats for rows and lunges",
        "Ilse and Bo no burpees",
        "no burpees for Ilse, she was up all night",
        "tell everyone to bring water, and that class is at 7",
        "Ilse no burpees, make it rows",
    ],
)
def test_what_goes_on_with_the_same_is_one_wish(text):
    assert len(cut(text)) == 1


STRETCHES = (
    "make the run 300 m",
    "post it at 6",
    "tell ilse well done",
    "bo no rows",
    "ilse 5 burpees not 10",
    "whos done it",
)


# Behind words that are passed on a question may be part of them.
IN_TURN = [
    said
    for said in permutations(STRETCHES, 3)
    if ("tell ilse well done", "whos done it") not in pairwise(said)
]


@pytest.mark.parametrize("said", IN_TURN)
def test_wishes_in_any_order_are_cut_and_no_word_is_lost(said):
    found = cut(", ".join(said))
    assert [one.words for one in found] == list(said)


@pytest.mark.parametrize(
    ("words", "each"),
    [
        ("hold bo and odd", ("hold Bo", "hold Odd")),
        ("bo, odd + gunn easy wk", ("Bo easy wk", "Odd easy wk", "Gunn easy wk")),
        (
            "bo and odd can go heavier, gunn too",
            ("Bo can go heavier", "Odd can go heavier", "Gunn can go heavier"),
        ),
        ("hold bo", ("hold Bo",)),
        ("make the run 200 m", ("make the run 200 m",)),
    ],
)
def test_what_is_said_of_a_list_of_people_is_said_of_each(words, each):
    assert each_alone(words, PEOPLE) == each
