"""Medicines that change how to train are heard in any sentence of the speaker's own; feeling sick of training, too."""

import pytest

from core.athletes.limits import limit
from core.notation.body.during import told_of_training
from core.notation.body.medicines import given_up, kinds_of, limits_of, medicines_in


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
    ("text", "what", "rest"),
    [
        (
            "was it ok to stop after 2 rounds? felt a bit sick after",
            "queasy",
            "was it ok to stop after 2 rounds?",
        ),
        ("nearly threw up in the last round", "queasy", ""),
        ("6+15 but got a cramp in my calf", "cramp", "6+15"),
        ("my hamstring cramped up", "cramp", ""),
    ],
)
def test_what_training_did_to_the_body_is_heard(text: str, what: str, rest: str):
    told = told_of_training(text)

    assert told is not None
    assert (told.what, told.rest) == (what, rest)


@pytest.mark.parametrize(
    "text",
    ["didn't feel sick after", "i'm sick today", "sick of burpees", "cramps today", "no cramps in my legs"],
)
def test_illness_a_period_and_what_is_denied_are_none_of_it(text: str):
    assert told_of_training(text) is None


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("I don't take beta blockers any more", ("pulse",)),
        ("stopped taking my blood thinners", ("thinner",)),
        ("doctor took me off the gliclazide", ("sugar",)),
        ("stopped taking my pills", ("unknown",)),
    ],
)
def test_what_is_given_up_is_no_medicine_that_somebody_takes(text: str, kinds: tuple[str, ...]):
    told = given_up(text)

    assert medicines_in(text) is None
    assert told is not None
    assert told.kinds == kinds


@pytest.mark.parametrize(
    "text",
    [
        "can I stop taking my beta blockers?",
        "my mum stopped taking warfarin",
        "stopped training since the beta blockers",
        "I take insulin",
    ],
)
def test_what_is_asked_anothers_or_still_taken_is_not_given_up(text: str):
    assert given_up(text) is None


def test_a_medicine_without_a_name_is_by_what_it_is_told_to_be_for():
    told = medicines_in("yes high blood pressure, i take tablets")

    assert told is not None
    assert told.taken == ("pressure",)
