"""Equipment that comes and goes is told in the middle of a chat; ordinary chat never becomes it."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.athletes.equipment import everything
from core.athletes.values import Equipment
from core.measures import MassUnit
from core.movements.lookup import catalogue
from core.understanding.equipment_changes import UNNAMED, EquipmentChange, read_equipment_change

CHAIR, BAND = Equipment(implement="chair"), Equipment(implement="band")


def weights(implement, *kilograms, each=1):
    return Equipment(implement=implement, loads_kg=tuple(map(Decimal, kilograms)), each=each)


@pytest.mark.parametrize(
    ("said", "came"),
    [
        ("bought a 24 kg kettlebell", (weights("kettlebell", 24),)),
        ("I just bought two 10s and a chair!", (weights("dumbbell", 10, each=2), CHAIR)),
        ("bought a table for the kitchen", (Equipment(implement="table"),)),
        ("Bought a new bench yesterday", (Equipment(implement="bench"),)),
        ("got a new 16 kg kettlebell", (weights("kettlebell", 16),)),
        ("I've borrowed a band from a friend", (BAND,)),
        ("we bought 2 x 12.5 kg dumbbells", (weights("dumbbell", "12.5", each=2),)),
    ],
)
def test_what_came(said, came):
    assert read_equipment_change(said) == EquipmentChange(came=came)


@pytest.mark.parametrize(
    ("said", "went"),
    [
        ("sold the chair", (CHAIR,)),
        ("lent my 10s", (weights("dumbbell", 10, each=2),)),
        ("Lent my 10s to my brother", (weights("dumbbell", 10, each=2),)),
        ("gave away two 8 kg dumbbells", (weights("dumbbell", 8, each=2),)),
        ("lost my kettlebell", (Equipment(implement="kettlebell"),)),
        ("I don't have the band anymore", (BAND,)),
        ("returned the 20 kg dumbbell", (weights("dumbbell", 20),)),
        ("sold my 24", (weights(UNNAMED, 24),)),
    ],
)
def test_what_went(said, went):
    assert read_equipment_change(said) == EquipmentChange(went=went)


@pytest.mark.parametrize(
    ("said", "place", "whole"),
    [
        ("trip: a band", "trip", (BAND,)),
        ("on trips I have a band and a chair", "trip", (BAND, CHAIR)),
        ("when travelling I only have a band", "trip", (BAND,)),
        ("at the gym I have everything", "gym", everything()),
        ("Gym: everything", "gym", everything()),
        ("at home there's a chair", "home", (CHAIR,)),
        ("home: nothing", "home", ()),
    ],
)
def test_what_all_is_there_in_a_place(said, place, whole):
    assert read_equipment_change(said) == EquipmentChange(place=place, whole=whole)


def test_a_bare_weight_is_of_something_that_is_not_named():
    assert read_equipment_change("bought a 24") == EquipmentChange(bare=weights(UNNAMED, 24))
    pounds = read_equipment_change("bought a 35", MassUnit.LB)
    assert round(pounds.bare.loads_kg[0], 2) == Decimal("15.88")


@pytest.mark.parametrize(
    "chat",
    [
        "I lost 5 kg",
        "lost 10s on the last round",
        "lost 10s",
        "sold out",
        "bought groceries",
        "broke my wrist",
        "broke my record!",
        "broke a 20 min barrier",
        "gave up after 12",
        "got 7 rounds and 12",
        "got a new best: 120 kg",
        "gym: 7+12",
        "home: 8:43",
        "at the gym I have pain in my knee",
        "at home there's a baby",
        "did I sell the chair?",
        "have you bought a kettlebell?",
        "lent my brother some money",
        "I have 24 minutes",
        "sold my car and the dumbbells fell out",
        "see you at the gym",
        "trip: back on Friday",
        "",
        "🙂",
    ],
)
def test_ordinary_chat_is_no_change(chat):
    assert read_equipment_change(chat) is None


VERBS = (
    "bought",
    "sold",
    "lent my",
    "got a new",
    "lost",
    "broke the",
    "i have",
    "trip:",
    "at the gym i have",
    "returned",
)
CHATTER = (
    "7 rounds", "8:43", "my knee", "hurts", "tomorrow", "yesterday", "the coach", "a record", "5 kg", "10s", "phew",
    "push-ups", "amrap", "20 min", "felt good", "minutes", "a coffee", "my mind", "everyone", "12 reps", "the race",
)  # fmt: skip


@given(
    st.sampled_from(VERBS),
    st.lists(st.sampled_from(CHATTER), min_size=1, max_size=4),
    st.sampled_from([" ", ", ", " and "]),
)
def test_chatter_after_a_verb_never_becomes_a_thing(verb, words, glue):
    """A bare weight between the chatter may be a thing that was not named."""
    change = read_equipment_change(f"{verb} {glue.join(words)}")
    assert change is None or not {"5 kg", "10s"}.isdisjoint(words)


@given(st.text(max_size=200))
def test_any_text_is_read_without_harm_and_names_what_there_is(text):
    change = read_equipment_change(text)
    known = {thing.id for thing in catalogue().implements} | {UNNAMED}
    named = (*change.came, *change.went, *(change.whole or ())) if change else ()
    assert {thing.implement for thing in named} <= known


@given(
    st.sampled_from(["bought", "I just bought", "sold", "gave away"]),
    st.sampled_from(["dumbbell", "kettlebell"]),
    st.integers(2, 60),
)
def test_a_named_weight_is_always_read(verb, thing, kilograms):
    change = read_equipment_change(f"{verb} a {kilograms} kg {thing}")
    assert (change.came or change.went) == (weights(thing, kilograms),)


@pytest.mark.parametrize(
    "typed",
    [
        "I also have a pull-up bar",
        "oh i have a pull up bar too",
        "forgot to say I have a pull-up bar",
        "sorry, I've got a pull-up bar as well",
    ],
)
def test_what_was_forgotten_is_told_later(typed):
    change = read_equipment_change(typed)
    assert change is not None
    assert change.forgotten
    assert [one.implement for one in change.came] == ["pull-up bar"]


@pytest.mark.parametrize("typed", ["I have a question too", "I also have a sore knee", "I have a band"])
def test_what_else_somebody_has_is_no_equipment(typed):
    assert read_equipment_change(typed) is None
