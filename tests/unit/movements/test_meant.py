"""Which way of a movement a line or a test speaks of."""

from decimal import Decimal

import pytest

from core.ability.meant import meant_variant
from core.movements.catalogue import catalogue

LUNGE = catalogue().movement("lunge")


@pytest.mark.parametrize(
    ("said", "variant_id"),
    [
        ({}, "reverse"),
        ({"loaded": True}, "one-weight"),
        ({"loaded": True, "count": 2}, "two-weights"),
        ({"implement": "backpack"}, "one-weight"),
        ({"implement": "kettlebell", "count": 2}, "two-weights"),
    ],
)
def test_what_is_held_tells_the_way_that_is_meant(said, variant_id):
    assert LUNGE.meant(None, **said).id == variant_id


def test_a_band_is_there_rather_than_held():
    assert catalogue().movement("romanian deadlift").meant(None, implement="band").id == "band"


def test_a_way_that_was_named_is_that_way():
    assert LUNGE.meant("short", loaded=True).id == "short"


@pytest.mark.parametrize("said", [{"implement": "rower"}, {"count": 2, "implement": "plate"}])
def test_what_no_way_holds_leaves_the_first(said):
    assert LUNGE.meant(None, **said).id == "reverse"


def test_what_will_do_as_well_is_meant_only_where_no_way_is_made_for_it():
    """Pull-ups on rings are a way of their own, though lowerings go on rings too; knee raises have no such way."""
    assert catalogue().movement("pull-up").meant(None, implement="rings").id == "rings-feet-down"
    assert catalogue().movement("hanging knee raise").meant(None, implement="rings").id == "bar"


def test_a_heavy_bench_press_is_no_close_grip_one():
    """The usual way takes dumbbells too, and yet a bar comes first."""
    assert meant_variant(catalogue().movement("bench press"), None, Decimal(75)).id == "flat"
    assert meant_variant(catalogue().movement("deadlift"), None, Decimal(120)).id == "barbell"
