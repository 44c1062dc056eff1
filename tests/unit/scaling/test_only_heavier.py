"""Only heavier things are there: up to a third more is lifted, and more than that only if the coach allows it."""

from decimal import Decimal

import pytest

from bot.words.reasons import reason_words
from bot.words.versions import need_words
from core.athletes.circumstances import in_circumstances
from core.athletes.values import Pregnancy
from core.measures import MassUnit
from core.scaling.orders import Orders
from core.scaling.values import Change
from tests.unit.scaling.people import athlete, did, lines, only_line, version

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


def test_what_is_heavier_than_written_is_told():
    line = only_line(TEXT, rows(20))
    assert (line.load_kg, line.reason.more_kg) == (Decimal(12), Decimal(4))
    assert reason_words(line, MassUnit.KG).endswith("It's 4 kg more than written: break it up as you like.")


def test_what_both_arms_do_for_one_isnt_heavier():
    who = athlete(owns=("barbell 10 to 60 by 1",), tests=[did("bent-over row", 12, 40)])
    line = only_line("5 rounds for time\n8 single-arm rows each side @ 16 kg", who)
    assert line.load_kg is not None
    assert line.reason.more_kg is None


CAREFUL = {
    "pregnant": {"pregnancy": Pregnancy(week=16, cleared=True)},
    "new": {"experience": "new"},
    "returning": {"weeks_off": 6},
    "sparing a wrist": {"limits": ("wrist",)},
    "not screened": {"screening": None},
}


@pytest.mark.parametrize("known", CAREFUL.values(), ids=CAREFUL)
@pytest.mark.parametrize(
    "text", [TEXT, "3 rounds for time\n12 goblet squats @ 12 kg", "4 x 8 deadlifts @ 12 kg"]
)
def test_whoever_has_to_be_careful_gets_nothing_heavier_than_written(known, text):
    tests = [did("single-arm row", 20, 16), did("goblet squat", 25, 16), did("deadlift", 20, 40)]
    who = in_circumstances(athlete(owns=("dumbbell 16", "kettlebell 16"), tests=tests, **known))
    assert all(line.load_kg is None or line.reason.more_kg is None for line in lines(text, who))
