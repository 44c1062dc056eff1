import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.measures import AmountUnit
from core.movements.catalogue import catalogue
from core.movements.lookup import UnknownMovement
from core.movements.names import key
from core.movements.values import Demand, HeightShare, Share

IDS = st.sampled_from(catalogue().ids())


def meant_by(typed):
    """`movement/variant`, or the movement alone."""
    found = catalogue().by_name(typed)
    assert found is not None
    return found.movement.id if found.variant is None else f"{found.movement.id}/{found.variant.id}"


@pytest.mark.parametrize("typed", ["push-up", "Push-Ups", "PUSH UPS", "pushups", "press ups", "  push - up "])
def test_a_movement_is_found_in_any_case_plural_and_spacing(typed):
    assert meant_by(typed) == "push-up"


@pytest.mark.parametrize(
    ("typed", "variant_id"),
    [("knee push-ups", "knees"), ("incline push up", "hands-on-chair"), ("Wall Presses", "hands-on-wall")],
)
def test_a_variant_is_found_by_its_own_name(typed, variant_id):
    assert meant_by(typed) == f"push-up/{variant_id}"


@pytest.mark.parametrize("typed", ["man makers", "manmaker", "Man-Makers", "dumbbell man makers"])
def test_a_complex_is_known_by_the_trade_s_name(typed):
    assert meant_by(typed) == "man maker"


def test_what_nobody_knows_is_none():
    assert catalogue().by_name("triple somersault") is None


def test_every_spelling_finds_what_it_stands_for():
    assert all(catalogue().by_name(name.upper()) == meaning for name, meaning in catalogue().spellings())


def test_names_list_every_spelling():
    assert {"push-up", "press-up", "knee push-up", "kettlebell swing"} <= set(catalogue().names())


def test_things_are_found_by_what_people_call_them():
    book = catalogue()
    assert book.implement_by_name("KBs") is book.implement("kettlebell")
    assert book.implement_by_name("Rucksack") is book.implement("backpack")


@pytest.mark.parametrize("lookup", ["movement", "variant", "implement", "order", "reachable"])
def test_an_unknown_id_is_refused(lookup):
    with pytest.raises(UnknownMovement, match="somersault"):
        getattr(catalogue(), lookup)("somersault")


@pytest.mark.parametrize(
    ("start", "there", "distance"),
    [
        ("push-up/floor", "push-up/hands-on-wall", 3),
        ("push-up/floor", "floor press/two-weights", 4),
        ("push-up/floor", "plank/wall", 5),
        ("goblet squat/front", "air squat/floor", 4),
        ("goblet squat/front", "lunge/one-weight", 5),
        ("run/outdoors", "run/brisk-walk", 3),
        ("run/outdoors", "march/on-the-spot", 4),
        ("swing/two-hands", "deadlift/one-weight", 4),
    ],
)
def test_distance_tells_variant_from_pattern_from_neighbour(start, there, distance):
    assert {reach.id: reach.distance for reach in catalogue().reachable(start)}[there] == distance


@given(IDS)
def test_stand_ins_come_nearest_first_and_never_twice(start):
    reached = catalogue().reachable(start)
    assert [reach.distance for reach in reached] == sorted(reach.distance for reach in reached)
    assert start not in {reach.id for reach in reached}
    assert len({reach.id for reach in reached}) == len(reached)


@given(IDS)
def test_ways_cross_into_another_pattern_once_at_most(start):
    book = catalogue()
    home = book.variant(start)[0].pattern
    gates = {
        book.variant(gate)[0].pattern
        for name in book.ids()
        if book.variant(name)[0].pattern is home
        for gate in book.instead(name)
    }
    reached = {book.variant(reach.id)[0].pattern for reach in book.reachable(start)}
    assert reached <= gates | {home}


@given(IDS, IDS)
def test_what_is_easier_from_above_is_harder_from_below(one, other):
    book = catalogue()
    assert (other in book.below(one)) == (one in book.above(other))
    there, back = book.rungs(one, other), book.rungs(other, one)
    assert (there is None) == (back is None)
    assert there is None or there == -back


@pytest.mark.parametrize(
    ("start", "there", "steps"),
    [
        ("push-up/floor", "push-up/knees", -1),
        ("push-up/floor", "push-up/hands-on-wall", -3),
        ("air squat/floor", "goblet squat/front", 1),
        ("pull-up/strict", "pull-up/band", -1),
        ("push-up/knees", "push-up/hands-on-chair", None),
        ("push-up/floor", "push-up/floor", 0),
    ],
)
def test_a_ladder_is_climbed_a_step_at_a_time(start, there, steps):
    assert catalogue().rungs(start, there) == steps


@pytest.mark.parametrize(
    ("start", "first"),
    [
        ("med-ball squat throw/high", "goblet squat/front"),
        ("sit-up/floor", "dead bug/arms-and-legs"),
        ("box jump/box", "box jump/step-up-box"),
        ("run/outdoors", "row/machine"),
    ],
)
def test_the_best_stand_in_is_named_first(start, first):
    assert catalogue().instead(start)[0] == first


def test_a_stand_in_may_count_in_another_unit():
    book = catalogue()
    run, march = book.variant("run/outdoors"), book.variant("march/on-the-spot")
    hold = book.variant("bird dog/hold")
    assert [one.unit_of(way) for one, way in (run, march, hold)] == [
        AmountUnit.METRES,
        AmountUnit.SECONDS,
        AmountUnit.SECONDS,
    ]
    assert hold[0].sides_of(hold[1]) == "both"


def test_a_share_is_interpolated_between_heights_and_clamped_beyond():
    rows = (HeightShare(height_cm=30, value=0.6), HeightShare(height_cm=60, value=0.4))
    share = Share(value=0.55, source="estimate", by_height=rows)
    assert [share.at(height) for height in (None, 0, 30, 45, 60, 200)] == [
        0.55,
        0.6,
        0.6,
        pytest.approx(0.5),
        0.4,
        0.4,
    ]


@given(st.floats(0, 250), st.floats(0, 250))
def test_higher_hands_never_move_more(one, other):
    low, high = sorted([one, other])
    share = catalogue().variant("push-up/hands-on-chair")[1].body_share
    assert share.at(low) >= share.at(high)


def test_running_is_an_impact_but_no_jump():
    demands = catalogue().variant("run/outdoors")[1].demands
    assert Demand.IMPACT in demands
    assert Demand.JUMPING not in demands


@given(st.text(max_size=60))
def test_a_key_is_a_key_of_itself_in_capitals_too(text):
    assert key(text.upper()) == key(text.upper().lower())


def test_a_letter_is_no_plural_taken_back():
    assert catalogue().by_name("F") is None
    assert catalogue().by_name("fs").movement.id == "front squat"


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("devil presses", ("burpee ground-to-overhead", "two-weights")),
        ("jog", ("run", None)),
        ("jog with walking breaks", ("run", "easy")),
    ],
)
def test_slang_is_understood(typed, meant):
    found = catalogue().by_name(typed)
    assert (found.movement.id, found.variant and found.variant.id) == meant
