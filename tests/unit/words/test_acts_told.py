"""What was understood of a message, in a line for people."""

from itertools import permutations
from typing import get_args

import pytest

from bot.words.en.talk.told import FIELDS, SIGNS, in_words
from core.desk.sessions.trial import Context, Message, message_in
from core.understanding.acts import ACTS, Stop


def told(words, role="athlete"):
    return [in_words(act) for act in message_in(Message(text=words, role=role), Context(), None).acts]


@pytest.mark.parametrize(
    ("words", "line"),
    [
        ("I weigh 62.5", "your weight: 62.5 kg"),
        ("remind me 2 hours before", "a reminder: 120 minutes before"),
        (
            "I have two 10 kg dumbbells and a chair",
            "what you have to train with: 2 dumbbells of 10 kg and a chair",
        ),
        ("my left knee hurts", "that something hurts: sore knee, left"),
        ("8:43", "a score: 8:43"),
        ("rpe 8", "how hard it was: 8 of 10"),
    ],
)
def test_a_line_says_what_it_is_and_what_was_told_of_it(words, line):
    assert told(words) == [line]


def test_every_field_of_every_act_has_words():
    fields = {name for act in ACTS.values() for name in act.model_fields} - {"act", "text"}
    assert fields == set(FIELDS)
    assert set(SIGNS) == set(get_args(Stop))


PEOPLE = ("Ilse", "Bo", "Cal", "Tam")


def of_people(words):
    found = message_in(Message(text=words, role="coach"), Context(people=PEOPLE), None)
    return [*(in_words(act) for act in found.acts), *(f"not understood: {one}" for one in found.unread)]


@pytest.mark.parametrize(
    ("words", "lines"),
    [
        (
            "leave Ilse out till fri and easy week for Tam",
            ["something for one athlete: Ilse, left out, until friday", "an easy week: Tam"],
        ),
        (
            "no burpees for Cal and Bo this wk",
            [
                "something for one athlete: Cal, without, burpee, this week",
                "something for one athlete: Bo, without, burpee, this week",
            ],
        ),
        (
            "Bo got 7+12, Ilse 6+3 and Tam DNF",
            [
                "a score: 7 rounds and 12 repetitions, Bo",
                "a score: 6 rounds and 3 repetitions, Ilse",
                "not understood: Tam DNF",
            ],
        ),
        ("whos not reported? ping them", ["who has reported", "a word to everybody"]),
        ("is the load right for Cal?", ["how somebody is doing: Cal"]),
    ],
)
def test_a_coach_reads_what_was_understood_for_whom(words, lines):
    assert of_people(words) == lines


CLAUSES = (
    "no burpees for Ilse",
    "Bo only 8 push-ups",
    "hold Cal",
    "easy week for Tam till sun",
    "Bo 4+1",
    "tell Cal well done",
    "Ilse was great on tuesday",
)


@pytest.mark.parametrize("pair", list(permutations(CLAUSES, 2)), ids=" + ".join)
def test_nobody_who_is_named_in_one_of_two_clauses_is_lost(pair):
    told = " ".join(of_people(" and ".join(pair)))
    assert all(name in told for name in PEOPLE if any(name in one for one in pair))
