from decimal import Decimal

import pytest

from core.measures import MassUnit
from core.notation.numbers import read_body_mass, read_reps


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
        ("10+", 10), ("none", 0), ("zero", 0), ("not one", 0), ("can't", 0), ("0", 0),
    ],
)  # fmt: skip
def test_repetitions_are_read_however_they_are_said(text, reps):
    assert read_reps(text) == reps


@pytest.mark.parametrize("text", ["", "lots", "20 kg", "12.5", "3 sets of 10", "-3", "99999", "1:30"])
def test_what_can_be_no_repetitions_is_not_taken(text):
    assert read_reps(text) is None
