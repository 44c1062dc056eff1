"""The bot reads what it gives as an example: of every way a score is told, in the version and in its questions."""

import re

import pytest

from bot.words.en.versions.version import example
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session
from core.notation.scores import asking, read_score
from core.scores.ways import TELLINGS, Way, likes, way_of

BOARDS = {
    Way.ROUNDS: (
        "AMRAP 12\n10 push-ups\n200 m run",
        "AMRAP 20\n5 pull-ups\n10 push-ups\n15 squats",
        "AMRAP 5\n3 burpees",
    ),
    Way.TIME: (
        "5 rounds for time\n10 push-ups\n200 m run",
        "5 rounds for time, cap 20 min\n10 push-ups\n200 m run",
        "21-15-9 for time, cap 10 min\nthrusters @ 40/30 kg\npull-ups",
        "For time, cap 5 min\n30 burpees",
        "2000 m row for time",
    ),
    Way.HOLD: ("max plank hold",),
    Way.HOLDS: ("Wall sit 3 x max, 1 min rest", "Hollow hold 4 x 30 s"),
    Way.REPS: ("Max push-ups in 2 min",),
    Way.SETS_OF_REPS: ("3 x max push-ups, rest 2 min", "5 x max pull-ups"),
    Way.CALORIES: ("10 min bike for calories",),
    Way.DISTANCE: ("12 min run, how far",),
    Way.LOAD: ("5 x 5 deadlifts @ 60 kg, rest 2 min", "find a heavy single back squat", "Deadlift 5-3-1"),
    Way.SPLITS: ("3 x 400 m run, rest 2 min", "5 x 400 m run, rest 2 min", "10 x 100 m sprint"),
    Way.COUNTS: ("3 rounds\n40 s work 20 s rest\nburpees", "Tabata squats, 8 x 20 s work 10 s rest"),
    Way.MINUTES: ("EMOM 10\n12 burpees", "EMOM 12\n1) 12 push-ups\n2) 10 squats", "Every 2 min for 20 min\n5 burpees"),
    Way.DONE: ("Mobility 20 min\ncat-cow 2 min",),
}  # fmt: skip
EVERY = [(way, text) for way, texts in BOARDS.items() for text in texts]


def session(text):
    found = read_session(text, catalogue()).session
    assert found is not None
    return found


def test_there_is_a_board_for_every_way():
    assert set(BOARDS) == set(Way) == set(TELLINGS)


@pytest.mark.parametrize(("way", "text"), EVERY)
def test_every_example_of_a_score_is_read_as_one(way, text):
    found = session(text)
    assert way_of(found.blocks[0]) is way
    for told in (*likes(found.blocks[0]), example(found.blocks[0])):
        assert read_score(told, found).sure, f"{told} for {text}"


@pytest.mark.parametrize(("way", "text"), [pair for pair in EVERY if pair[0] is not Way.DONE])
def test_every_question_about_a_score_has_examples_that_are_read(way, text):
    found = session(text)
    for asked in (asking.unreadable(found.blocks[0]), asking.how_many_when_stopped(found.blocks[0])):
        examples = re.split(r", or: ", asked.ask.partition("For example: ")[2])
        assert examples, asked.ask
        assert all(read_score(told, found).sure for told in examples), f"{way}: {examples}"


@pytest.mark.parametrize(("way", "text"), [pair for pair in EVERY if pair[0] is not Way.DONE])
def test_what_somebody_remembers_roughly_is_read_and_asked_about(way, text):
    found = session(text)
    told = asking.uncounted(found.blocks[0]).ask.partition("For example: ")[2]
    read = read_score(told, found)
    assert read.score is not None, f"{way}: {told} for {text}"
    assert not read.sure
