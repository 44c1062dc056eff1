from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from core.athletes.equipment import at, everything, furnished, with_more, with_stated, without
from core.athletes.values import Equipment, Profile
from core.movements.lookup import catalogue

CHAIR = Equipment(implement="chair")
ADJUSTABLE = Equipment(implement="dumbbell", from_kg=Decimal(2), to_kg=Decimal(24), step_kg=Decimal(2))


def weights(implement, *kilograms, each=1):
    return Equipment(implement=implement, loads_kg=tuple(map(Decimal, kilograms)), each=each)


def things():
    kinds = st.sampled_from(["dumbbell", "kettlebell"])
    loads = st.sets(st.integers(1, 40), min_size=1, max_size=3).map(sorted)
    fixed = st.builds(
        lambda kind, kilograms, each: weights(kind, *kilograms, each=each), kinds, loads, st.integers(1, 2)
    )
    return st.lists(fixed | st.sampled_from([CHAIR, ADJUSTABLE]), max_size=5).map(tuple)


def told(owned):
    """In the one way in which sums are told."""
    return set(with_more(owned, ()))


def test_a_second_ten_makes_a_pair_of_tens():
    assert with_more((weights("dumbbell", 10),), (weights("dumbbell", 10),)) == (
        weights("dumbbell", 10, each=2),
    )


def test_a_sold_ten_leaves_the_other_of_the_pair():
    assert without((weights("dumbbell", 10, each=2), CHAIR), weights("dumbbell", 10)) == (
        weights("dumbbell", 10),
        CHAIR,
    )


def test_a_thing_without_a_weight_goes_in_all_its_weights():
    owned = (weights("dumbbell", 5, 10), ADJUSTABLE, weights("kettlebell", 16))
    assert without(owned, Equipment(implement="dumbbell")) == (weights("kettlebell", 16),)


def test_what_was_never_there_can_go_without_harm():
    assert without((CHAIR,), weights("kettlebell", 16)) == (CHAIR,)


@given(things(), things())
def test_what_comes_and_goes_again_leaves_the_weights_as_they_were(owned, more):
    after = with_more(owned, more)
    for thing in more:
        if thing.loads_kg:
            after = without(after, thing)
    assert {one for one in after if one.loads_kg} == {one for one in told(owned) if one.loads_kg}


@given(things(), things())
def test_the_order_of_coming_makes_no_difference(one, other):
    assert told(with_more(one, other)) == told(with_more(other, one))


def test_every_place_has_equipment_of_its_own():
    ilse = Profile(name="Ilse", equipment=(CHAIR,))
    travelling = furnished(ilse, "trip", (Equipment(implement="band"),))
    assert at(travelling, "home") == (CHAIR,)
    assert at(travelling, "trip") == (Equipment(implement="band"),)
    assert at(travelling, "gym") is None
    assert furnished(travelling, "trip", None) == ilse


def test_a_gym_has_all_that_is_not_improvised():
    known = {thing.id for thing in catalogue().implements if not thing.improvised}
    assert {thing.implement for thing in everything()} == known


def test_whoever_says_what_is_there_says_how_many():
    owned = (weights("dumbbell", 8, each=2), CHAIR)
    assert with_stated(owned, (weights("dumbbell", 8),)) == (weights("dumbbell", 8), CHAIR)
    assert with_stated(owned, (weights("dumbbell", 12),)) == (
        weights("dumbbell", 8, each=2),
        weights("dumbbell", 12),
        CHAIR,
    )
