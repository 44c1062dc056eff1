"""Which of the days that are named a change of classes is about."""

import pytest

from core.understanding.marks import mark
from core.understanding.slots.days import meant
from core.understanding.slots.stretch import Stretch
from core.understanding.values import Context


def days(text):
    marked = mark(text)
    return meant(Stretch(marked, 0, len(marked.words), Context()))


@pytest.mark.parametrize(
    ("text", "about"),
    [
        ("no class tuesday and friday", ["tuesday", "friday"]),
        ("wednesday is off, not thursday", ["wednesday"]),
        ("no not thursday, WEDNESDAY is off", ["wednesday"]),
        ("the 9th is off, we keep the 2nd and the 23rd", ["9th"]),
        ("monday's cancelled. tuesday goes ahead", ["monday"]),
        ("donnerstag fällt aus, freitag bleibt", ["thursday"]),
        ("no hay clase el martes, el jueves sigue", ["tuesday"]),
        ("thursday stays", ["thursday"]),  # nothing else is named
    ],
)
def test_what_stays_or_is_refused_is_not_meant(text, about):
    assert days(text) == about
