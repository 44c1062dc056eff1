"""What was understood of a message, in a line for people."""

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
