"""What is stored lies within its bounds; what was stored beyond them before takes nothing else away."""

from decimal import Decimal

import pytest

from core.athletes.equipment import with_more
from core.athletes.values import MOST_LOADS, Equipment, Evidence, Profile
from core.errors import TooMuch
from core.store import documents


def test_a_copy_beyond_its_bounds_is_not_stored():
    profile = Profile(name="Ilse").model_copy(update={"body_mass_kg": Decimal(9999)})

    with pytest.raises(TooMuch):
        documents.write(profile)


def test_what_lies_beyond_is_left_out_when_it_is_read_and_all_else_stays():
    body = {
        "body_mass_kg": "62",
        "limits": ["wrist"],
        "equipment": [
            {"implement": "dumbbell", "loads_kg": ["8", "-5", "99999"], "each": 2},
            {"implement": "x" * 999},
            {"implement": "dumbbell", "from_kg": "1", "to_kg": "500", "step_kg": "0.00000001"},
        ],
    }

    profile = documents.read(documents.PROFILE, documents.PROFILE.schema, body, name="Ilse")

    assert profile.body_mass_kg == Decimal(62)
    assert profile.limits == ("wrist",)
    assert [(one.implement, one.loads_kg, one.step_kg) for one in profile.equipment] == [
        ("dumbbell", (Decimal(8),), None),
        ("dumbbell", (), None),
    ]


def test_evidence_of_endless_numbers_is_left_out():
    body = {"movement": "push-up", "reps": 1e300}

    assert documents.read(documents.EVIDENCE, documents.EVIDENCE.schema, body) == Evidence(movement="push-up")


def test_more_weights_than_anybody_has_are_refused():
    some = tuple(Equipment(implement="dumbbell", loads_kg=(Decimal(n),)) for n in range(1, MOST_LOADS + 2))

    with pytest.raises(TooMuch):
        with_more((), some)


def test_what_lies_beyond_is_logged_by_its_place_and_never_by_what_it_tells(caplog):
    body = {"body_mass_kg": "98765", "limits": ["zzsecretzz" * 50]}

    documents.read(documents.PROFILE, documents.PROFILE.schema, body, name="Ilse")

    assert "body_mass_kg" in caplog.text
    assert "98765" not in caplog.text
    assert "zzsecretzz" not in caplog.text
