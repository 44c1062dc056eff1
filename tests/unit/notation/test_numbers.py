from decimal import Decimal

import pytest

from core.measures import MassUnit
from core.notation.numbers import read_body_mass, read_reps
from core.notation.unknowing import does_not_know


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("62", 62), ("62 kg", 62), ("about 62kg", 62), ("62,5", "62.5"), ("137 lb", "62.14215469"),
        ("9 stone 11", "62.14215469"), ("9st 11lb", "62.14215469"), ("I'm 62 kilos", 62),
    ],
)  # fmt: skip
def test_body_mass_is_read_however_it_is_said(text, kg):
    assert read_body_mass(text) == Decimal(kg)


def test_a_bare_body_mass_counts_in_the_unit_of_the_person():
    assert read_body_mass("137", MassUnit.LB) == Decimal("62.14215469")


@pytest.mark.parametrize(
    "text", ["", "no", "rather not", "620", "-62", "1.62", "62 kg and 70 kg", "9" * 5000]
)
def test_what_can_be_no_body_mass_is_not_taken(text):
    assert read_body_mass(text) is None


@pytest.mark.parametrize(
    ("text", "reps"),
    [
        ("12", 12), ("about 12", 12), ("twelve", 12), ("a dozen", 12), ("12 reps", 12),
        ("10-12", 10), ("8 or 9", 8),
        ("about a dozen", 12), ("half a dozen", 6), ("10ish", 10), ("8-10", 8), ("not sure, maybe 10", 10),
        ("10+", 10), ("none", 0), ("zero", 0), ("not one", 0), ("can't", 0), ("0", 0),
        ("never", 0), ("never tried", 0), ("never done one", 0), ("haven't tried", 0), ("i never do this", 0),
        ("never done more than 5", 5),
    ],
)  # fmt: skip
def test_repetitions_are_read_however_they_are_said(text, reps):
    assert read_reps(text) == reps


@pytest.mark.parametrize("text", ["", "lots", "20 kg", "12.5", "3 sets of 10", "-3", "99999", "1:30"])
def test_what_can_be_no_repetitions_is_not_taken(text):
    assert read_reps(text) is None


UNKNOWN = [
    "idk", "IDK!", "no idea", "I have no idea", "no clue", "?", " ??? ", "dunno", "I don't know", "dont know",
    "not sure",
    "I'm not sure", "hard to say", "can't say", "I can't remember",
]  # fmt: skip


@pytest.mark.parametrize("text", UNKNOWN)
def test_who_does_not_know_is_not_taken_for_somebody_who_can_do_none(text):
    assert does_not_know(text)
    assert read_reps(text) is None


@pytest.mark.parametrize(
    "text", ["", "none", "no", "can't", "can't do any", "0", "12", "not one", "idk maybe 10"]
)
def test_a_number_or_none_is_known(text):
    assert not does_not_know(text)
