"""The bot reads what it gives as an example."""

import pytest

from bot.words.en.versions.version import EXAMPLES, example
from core.movements.lookup import catalogue
from core.notation.scores import read_score
from core.notation.session import read_session
from core.sessions.values import Format

SESSIONS = {
    Format.AMRAP: "AMRAP 12\n10 push-ups\n200 m run",
    Format.FOR_TIME: "5 rounds for time\n10 push-ups\n200 m run",
    Format.TIME_TRIAL: "2000 m row for time",
    Format.SETS: "5 x 5 deadlifts @ 60 kg, rest 2 min",
    Format.MAX_LOAD: "find a heavy single back squat",
    Format.MAX_REPS: "3 x max push-ups, rest 2 min",
    Format.HOLD: "max plank hold",
}
INTERVALS = ("3 x 400 m run, rest 2 min", "EMOM 10\n12 burpees", "3 rounds\n40 s work 20 s rest\nburpees")


@pytest.mark.parametrize("text", [*SESSIONS.values(), *INTERVALS])
def test_every_example_of_a_score_is_read_as_one(text):
    session = read_session(text, catalogue()).session
    assert session is not None
    told = example(session.blocks[0])
    assert read_score(told, session).sure, f"{told} for {text}"


@pytest.mark.parametrize(("format_", "text"), SESSIONS.items())
def test_each_format_has_its_own_example(format_, text):
    assert read_session(text, catalogue()).session.blocks[0].format is format_
    assert EXAMPLES[format_]
