"""What athletes own, in their own words."""

from decimal import Decimal

import pytest

from core.athletes.values import Equipment
from core.measures import MassUnit
from core.understanding.things import ToldThings, read_things, read_weight


def own(implement, *loads, each=1, **more):
    return Equipment(implement=implement, loads_kg=tuple(map(Decimal, loads)), each=each, **more)


SAID = [
    (
        "two 10s, a 16 kettlebell and a chair",
        [own("dumbbell", 10, each=2), own("kettlebell", 16), own("chair")],
    ),
    ("one 12 kg dumbbell", [own("dumbbell", 12)]),
    ("12kg db", [own("dumbbell", 12)]),
    ("dumbell 10kg", [own("dumbbell", 10)]),
    ("kb 16", [own("kettlebell", 16)]),
    ("pair of 20 lb dumbbells", [own("dumbbell", "9.0718474", each=2)]),
    ("10 kg dumbbells", [own("dumbbell", 10, each=2)]),
    ("10 kg dumbbells x2", [own("dumbbell", 10, each=2)]),
    ("2x10kg dumbbells", [own("dumbbell", 10, each=2)]),
    ("2 kettlebells 16 kg", [own("kettlebell", 16, each=2)]),
    ("two dumbbells, 10 kg each", [own("dumbbell", 10, each=2)]),
    ("8 and 12 kg dumbbells", [own("dumbbell", 8, 12)]),
    ("dumbbells: 5, 10, 15 kg", [own("dumbbell", 5, 10, 15)]),
    ("a pair of 10s and 15s", [own("dumbbell", 10, 15, each=2)]),
    ("16kg kb\n24kg kb", [own("kettlebell", 16, 24)]),
    ("a table and stairs", [own("table"), own("stairs")]),
    ("chair 45 cm high", [own("chair", height_cm=Decimal(45))]),
    ("just a backpack", [own("backpack", to_kg=Decimal(10))]),
    ("backpack up to 15 kg, no bench", [own("backpack", to_kg=Decimal(15))]),
    (
        "adjustable dumbbell 2.5 to 24",
        [own("dumbbell", from_kg=Decimal("2.5"), to_kg=Decimal(24), step_kg=Decimal("2.5"))],
    ),
    (
        "adjustable dumbbells up to 20kg",
        [own("dumbbell", each=2, from_kg=Decimal("2.5"), to_kg=Decimal(20), step_kg=Decimal("2.5"))],
    ),
    ("I've got a band and a sturdy chair 🪑", [own("band"), own("chair")]),
    (
        "barbell 20kg, plates 2x10kg and 2x20kg, dumbbell 24kg",
        [own("barbell", 20), own("plate", 10, 20, each=2), own("dumbbell", 24)],
    ),
    ("dumbbells 5kg, 8kg and a 12 kg kettlebell", [own("dumbbell", 5, 8), own("kettlebell", 12)]),
    ("kettlebell 16kg, 8 and 12 kg dumbbells", [own("kettlebell", 16), own("dumbbell", 8, 12)]),
    ("kettlebell 16kg\n8 kg and 12 kg dumbbells", [own("kettlebell", 16), own("dumbbell", 8, 12)]),
    ("1 dumbbell 10 kg and 2 of 5 kg", [own("dumbbell", 10), own("dumbbell", 5, each=2)]),
    ("two 20 lb", [own("dumbbell", "9.0718474", each=2)]),
    ("2 x 10, 2 x 15", [own("dumbbell", 10, 15, each=2)]),
    ("10lb and 15lb dumbbells", [own("dumbbell", "4.5359237", "6.80388555")]),
    (
        "a treadmill, a rowing machine and a 20lb vest",
        [own("rower"), own("weight vest", "9.0718474")],
    ),
    ("Dumbbells 2x5 2x8 2x10", [own("dumbbell", 5, 8, 10, each=2)]),
    ("15lb dumbbells (2)", [own("dumbbell", "6.80388555", each=2)]),
    ("5kg weights", [own("dumbbell", 5, each=2)]),
    ("gymnastic rings hanging from a tree", [own("rings")]),
    ("pull-up bar, jump rope, sofa, yoga mat", [own("pull-up bar"), own("skipping rope")]),
    ("a door frame pull up bar", [own("pull-up bar")]),
    ("an old wooden kitchen stool", [own("chair")]),
    ("backpack with books 8kg", [own("backpack", 8)]),
    ("a backpack filled with some books, 8 kg", [own("backpack", 8)]),
    ("two 5 litre jugs of water", [own("jug", 5, each=2)]),
    ("wall and a chair, thats all i have", [own("chair")]),
    ("no weights, just a chair", [own("chair")]),
    ("I only have a 12kg kettlebell", [own("kettlebell", 12)]),
    ("nothing but a band", [own("band")]),
    ("Two dumbbells, one of 8 and one of 12", [own("dumbbell", 8, 12)]),
    (
        "a pair of adjustable dumbbells. Settings per dumbbell: 4, 6 and 8 kg",
        [own("dumbbell", 4, 6, 8, each=2)],
    ),
    ("barbell with plates 2x20 2x10, a squat rack", [own("barbell", 20), own("plate", 10, 20, each=2)]),
]


@pytest.mark.parametrize(("text", "owned"), SAID, ids=[text for text, _ in SAID])
def test_equipment_is_read_however_it_is_said(text, owned):
    read = read_things(text)
    assert read.equipment == tuple(owned)
    assert read.not_understood == ()


def test_bare_numbers_count_in_the_unit_of_the_person():
    assert read_things("two 20s", MassUnit.LB).equipment == (own("dumbbell", "9.0718474", each=2),)


NOTHING = [
    "nothing", "None.", "no equipment", "just me", "bodyweight only", "I have nothing at home", "no weights at all",
    "I don't have anything", "no gear, no bands, sorry", "a yoga mat", "a towel, and a wall", "just a sofa I think",
    "treadmill", "a punching bag",
]  # fmt: skip


@pytest.mark.parametrize("text", NOTHING)
def test_nothing_that_matters_is_an_answer(text):
    read = read_things(text)
    assert read == ToldThings(equipment=(), idle=read.idle)


@pytest.mark.parametrize(
    "text", ["", "\N{GRINNING FACE}", "spaceship", "10", "one dumbbell", "a 0 kg dumbbell", "9000 kg dumbbell",
             "8:43", "no bench"]
)  # fmt: skip
def test_what_is_no_answer_is_not_taken_for_nothing(text):
    assert read_things(text).equipment is None


def test_what_is_not_understood_is_given_back_beside_what_is():
    read = read_things("a 16 kettlebell and a flying saucer")
    assert read.equipment == (own("kettlebell", 16),)
    assert read.not_understood == ("a flying saucer",)


@pytest.mark.parametrize(
    "talk",
    ["that's all I have", "thats all i have", "just", "at home", "I think", "sorry", "nothing else", "a yoga mat",
     "and a wall", "that's everything", "not much really", "no bench", "sadly"],
)  # fmt: skip
def test_small_talk_and_what_matters_to_nothing_is_never_reported_as_missed(talk):
    read = read_things(f"a chair, {talk}")
    assert read == ToldThings(equipment=(own("chair"),), idle=read.idle)


def test_what_matters_to_nothing_is_named_all_the_same():
    assert read_things("a 16 kg kettlebell, a yoga mat and a stepper").idle == ("mat", "stepper")


WITHOUT_WEIGHT = [
    ("dumbells", [own("dumbbell", each=2)]),
    ("a kettlebell", [own("kettlebell")]),
    ("one dumbbell and a med ball", [own("dumbbell"), own("medicine ball")]),
]


@pytest.mark.parametrize(("text", "things"), WITHOUT_WEIGHT)
def test_a_thing_without_its_weight_is_told_apart_so_that_it_can_be_asked_for(text, things):
    assert read_things(text) == ToldThings(equipment=None, without_weight=tuple(things))


def test_what_is_complete_is_kept_beside_what_lacks_its_weight():
    read = read_things("a chair and a pair of dumbbells")
    assert (read.equipment, read.without_weight) == ((own("chair"),), (own("dumbbell", each=2),))


@pytest.mark.parametrize(
    ("answer", "things"),
    [
        ("10", [own("dumbbell", 10, each=2)]),
        ("10 kg each", [own("dumbbell", 10, each=2)]),
        ("22 lb", [own("dumbbell", "9.97903214", each=2)]),
        ("8 and 12", [own("dumbbell", 8, 12, each=2)]),
        (
            "2.5 to 24",
            [own("dumbbell", each=2, from_kg=Decimal("2.5"), to_kg=Decimal(24), step_kg=Decimal("2.5"))],
        ),
    ],
)
def test_the_answer_to_how_heavy_completes_the_thing(answer, things):
    assert read_weight(answer, own("dumbbell", each=2)) == tuple(things)


@pytest.mark.parametrize("answer", ["", "no idea", "heavy", "7+12", "8:43", "a chair"])
def test_what_tells_no_weight_completes_nothing(answer):
    assert read_weight(answer, own("dumbbell", each=2)) is None


ESTIMATED = [
    ("barbell", MassUnit.KG, [own("barbell", 20)]),
    ("a barbell", MassUnit.LB, [own("barbell", "20.41165665")]),
    ("couple of water bottles", MassUnit.KG, [own("jug", each=2, to_kg=Decimal("1.5"))]),
    ("a rucksack", MassUnit.KG, [own("backpack", to_kg=Decimal(10))]),
    (
        "barbell with 60kg of plates",
        MassUnit.KG,
        [own("barbell", from_kg=Decimal(20), to_kg=Decimal(80), step_kg=Decimal("2.5"))],
    ),
    (
        "barbell, 60 kg plates",
        MassUnit.KG,
        [own("barbell", from_kg=Decimal(20), to_kg=Decimal(80), step_kg=Decimal("2.5"))],
    ),
    (
        "full rack, barbell and 100 kg of plates",
        MassUnit.KG,
        [own("barbell", from_kg=Decimal(20), to_kg=Decimal(120), step_kg=Decimal("2.5"))],
    ),
]


@pytest.mark.parametrize(("text", "unit", "things"), ESTIMATED, ids=[text for text, _, _ in ESTIMATED])
def test_a_usual_weight_is_filled_in_and_told_as_an_estimate(text, unit, things):
    read = read_things(text, unit)
    assert read.equipment == tuple(things)
    assert read.estimated == (things[0].implement,)


def test_a_weight_that_was_told_is_no_estimate():
    assert read_things("barbell 15 kg, backpack up to 12 kg, a 5 litre jug").estimated == ()
