"""Only heavier things are there: up to a third more is lifted, and more than that only if the coach allows it."""

from decimal import Decimal

import pytest

from bot.words.versions import need_words
from core.measures import MassUnit
from core.scaling.orders import Orders
from core.scaling.values import Change
from tests.unit.scaling.people import athlete, did, only_line, version

TEXT = "5 rounds for time\n8 single-arm rows each side @ 8 kg"


def rows(reps, owns=("dumbbell 12",), load=12):
    return athlete("Ilse", tests=[did("single-arm row", reps, load)], owns=owns)


def test_a_third_more_is_lifted_by_whoever_can():
    line = only_line("5 rounds for time\n8 single-arm rows each side @ 9 kg", rows(20))
    assert (line.load_kg, line.change) == (Decimal(12), Change.LOAD)


def test_what_was_shown_is_lifted_though_it_is_more():
    assert only_line(TEXT, rows(20)).load_kg == Decimal(12)


def test_what_is_heavier_and_would_suit_is_named_to_the_coach_where_it_wasnt_shown():
    made = version(TEXT, rows(40, ("dumbbell 16",), 12))
    line = made.blocks[0].lines[0]
    assert (line.load_kg, line.reason.suits_kg) == (None, Decimal(16))
    (need,) = made.needs_coach
    assert "their 16 kg would suit them, if you let them go heavier" in need_words(need, MassUnit.KG)


def test_once_the_coach_allows_it_it_is_done():
    who = rows(40, ("dumbbell 16",), 12)
    assert only_line(TEXT, who, orders=Orders(heavier=True)).load_kg == Decimal(16)


@pytest.mark.parametrize(
    "who",
    [
        rows(9),  # too heavy for eight
        rows(20, ("dumbbell 8 12",)),  # what is written is there
        rows(20, ()),
        athlete("Ilse", owns=("dumbbell 16",)),  # nobody knows
    ],
)
def test_nobody_is_asked_where_it_would_not_suit_or_is_not_needed(who):
    assert only_line(TEXT, who).reason.suits_kg is None


def test_of_several_the_lightest_is_named():
    assert only_line(TEXT, rows(60, ("dumbbell 16 20",), 12)).reason.suits_kg == Decimal(16)
