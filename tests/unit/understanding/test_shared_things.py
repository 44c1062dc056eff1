"""Whose else a thing is, and the many ways to say that it has many weights."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.athletes.values import Equipment
from core.measures import MassUnit, to_kg
from core.understanding.things import read_things


@pytest.mark.parametrize(
    ("text", "partner"),
    [
        ("an adjustable dumbbell 2.5-24 kg that I share with Bo", "Bo"),
        ("an adjustable dumbbell 2.5-24 kg (shared with Bo)", "Bo"),
        ("Bo and I share a 2.5-24 kg adjustable dumbbell", "Bo"),
        ("I share an adjustable dumbbell 2.5-24 with Bo", "Bo"),
        ("adjustable dumbbell 2.5-24 kg, I share it with Bo", "Bo"),
        ("adjustable dumbbell 2.5-24, the one Noor has", "Noor"),
        ("adjustable dumbbell 2.5-24 shared with my wife", "your wife"),
        ("adjustable dumbbell 2.5-24 kg, we share it", ""),
        ("adjustable dumbbell 2.5-24 kg", None),
    ],
)
def test_a_shared_thing_keeps_its_partner(text, partner):
    read = read_things(text)
    [thing] = read.equipment or ()
    assert (thing.shared_with, thing.to_kg, read.not_understood) == (partner, Decimal(24), ())


def test_only_the_thing_that_it_is_said_of_is_shared():
    chair, dumbbell = read_things("a chair, and a 12 kg dumbbell shared with Bo").equipment or ()
    assert (chair.shared_with, dumbbell.shared_with) == (None, "Bo")


@pytest.mark.parametrize(
    ("text", "count", "low", "high"),
    [
        ("one adjustable dumbbell, 2.5 to 24 kg", 1, "2.5", "24"),
        ("adjustable 2.5-24 kg dumbbell", 1, "2.5", "24"),
        ("a 2.5kg-24kg adjustable dumbbell", 1, "2.5", "24"),
        ("a dumbbell I can set from 2.5 to 24", 1, "2.5", "24"),
        ("a dumbbell that can be set from 2.5 to 24 kg", 1, "2.5", "24"),
        ("my dumbbell goes from 2.5 to 24 kg", 1, "2.5", "24"),
        ("one dumbbell adjustable between 2.5kg and 24kg", 1, "2.5", "24"),
        ("adjustable dumbbell from 2.5 up to 24 kilos", 1, "2.5", "24"),
        ("adjustable dumbbell (max 24kg)", 1, "2.5", "24"),
        ("adjustable dumbbells up to 24kg", 2, "2.5", "24"),
        ("pair of adjustable dumbbells 2.5-24 kg", 2, "2.5", "24"),
        ("2 adjustable dumbbells (2.5 - 24 kg each)", 2, "2.5", "24"),
        ("two adjustable dumbbells, 2.5 to 24 kg each", 2, "2.5", "24"),
        ("a set of adjustable dumbbells, max 24 kg", 2, "2.5", "24"),
        ("a pair of dial dumbbells 2.5-24 kg", 2, "2.5", "24"),
    ],
)
def test_an_adjustable_thing_is_read_however_it_is_said(text, count, low, high):
    read = read_things(text)
    [thing] = read.equipment or ()
    assert (thing.each, thing.from_kg, thing.to_kg) == (count, Decimal(low), Decimal(high))
    assert read.not_understood == ()


def test_pounds_are_read_too():
    [thing] = read_things("dial dumbbell 5-52 lb").equipment or ()
    assert thing.model_copy(update={"step_kg": None}) == Equipment(
        implement="dumbbell", from_kg=to_kg(Decimal(5), MassUnit.LB), to_kg=to_kg(Decimal(52), MassUnit.LB)
    )


@pytest.mark.parametrize("text", ["dumbbells 8 and 12 kg", "dumbbells, 8 kg and 12 kg"])
def test_several_fixed_weights_stay_fixed(text):
    [thing] = read_things(text).equipment or ()
    assert thing.loads_kg == (Decimal(8), Decimal(12))


@given(st.text(max_size=120))
def test_any_text_can_be_read(text):
    read_things(text)
