"""Medicines that change how to train are heard in any sentence of the speaker's own; feeling sick of training, too."""

import pytest

from core.athletes.limits import limit
from core.notation.body.medicines import kinds_of, limits_of, medicines_in
from core.notation.body.queasy import felt_queasy


@pytest.mark.parametrize(
    ("text", "limits"),
    [
        ("I am 71 and take beta blockers and a blood thinner", ("beta-blockers", "blood-thinners")),
        ("im on atenolol btw", ("beta-blockers",)),
        ("warfarin", ("blood-thinners",)),
        ("sore knee, metoprolol", ("beta-blockers",)),
        ("I inject insulin", ("insulin",)),
        ("bp tablets and a bad hip", ("high-blood-pressure",)),
        ("no but I take something for the heart", ("heart",)),
    ],
)
def test_who_takes_one_is_kept_with_its_limit(text: str, limits: tuple[str, ...]):
    told = medicines_in(text)

    assert told is not None
    assert limits_of(told.taken) == limits
    assert [limit(one).kind for one in limits] == ["condition"] * len(limits)
    assert limits_of(kinds_of(limits)) == limits


@pytest.mark.parametrize("text", ["can i train with beta blockers", "what do my pills mean for the effort?"])
def test_who_only_asks_is_answered_and_nothing_is_taken(text: str):
    told = medicines_in(text)

    assert told is not None
    assert told.kinds
    assert told.taken == ()


@pytest.mark.parametrize(
    "text",
    [
        "my mum takes beta blockers",
        "I don't take warfarin any more",
        "came off the insulin",
        "7+12",
        "2 rounds",
    ],
)
def test_what_is_anothers_or_over_is_nothing(text: str):
    assert medicines_in(text) is None


def test_what_else_a_message_holds_is_left_to_others():
    told = medicines_in("a sore shoulder and I take ramipril")

    assert told is not None
    assert told.rest == "a sore shoulder"


@pytest.mark.parametrize(
    ("text", "clause"),
    [
        ("was it ok to stop after 2 rounds? felt a bit sick after", "felt a bit sick after"),
        ("nearly threw up in the last round", "nearly threw up in the last round"),
        ("didn't feel sick after", None),
        ("i'm sick today", None),
        ("sick of burpees", None),
    ],
)
def test_feeling_sick_of_training_is_heard(text: str, clause: str | None):
    assert felt_queasy(text) == clause
