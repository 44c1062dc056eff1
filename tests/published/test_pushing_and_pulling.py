"""Presses, dips and pull-ups of the catalogue against published measurements and segment tables."""

import pytest

from core.movements.catalogue import catalogue
from tests.published.test_body_shares import SEGMENTS, both


def way(variant_id):
    return catalogue().variant(variant_id)[1]


def moved_with(variant_id, implement, kg):
    """kg moved of the bar's scale, `kg` in all."""
    hold = next(hold for hold in way(variant_id).holds if hold.implement == implement and hold.count == 2)
    return hold.factor * kg


@pytest.mark.parametrize("table", SEGMENTS)
@pytest.mark.parametrize(
    "variant_id",
    ["pull-up/strict", "chin-up/strict", "muscle-up/bar", "dip/bars", "dip/rings", "handstand push-up/wall"],
)
def test_hanging_or_standing_on_the_hands_moves_all_but_forearms_and_hands(variant_id, table):
    # de Leva 1996, J Biomech 29(9):1223-1230; Winter, 4th ed. 2009, Table 4.1 (cited).
    assert way(variant_id).body_share.value == pytest.approx(1 - both(table, "forearm", "hand"), abs=0.01)


@pytest.mark.parametrize("press", ["bench press/flat", "bench press/paused", "bench press/slow-lowering"])
def test_two_dumbbells_on_the_bench_are_17_percent_below_a_bar(press):
    # Saeterbakken et al. 2011, J Sports Sci 29(5):533-538 (read).
    assert moved_with(press, "dumbbell", 83) == pytest.approx(100, rel=0.005)


def test_two_dumbbells_on_the_floor_are_17_percent_below_a_bar():
    # The same source, carried over from the bench.
    ratio = way("floor press/two-weights").ratio.value / way("floor press/barbell").ratio.value
    assert ratio == pytest.approx(0.83, abs=0.005)


def test_dumbbells_overhead_are_7_percent_below_a_bar_standing_and_10_percent_above_that_sitting():
    # Saeterbakken & Fimland 2013, J Strength Cond Res 27(7):1824-1831: 7 % below the bar, both standing, and
    # standing 10 % below sitting (from memory).
    assert moved_with("overhead press/standing", "dumbbell", 93) == pytest.approx(100, rel=0.005)
    standing = 0.93 * way("overhead press/standing").ratio.value
    assert standing / way("overhead press/seated").ratio.value == pytest.approx(0.90, abs=0.005)


def effort(variant_id):
    return way(variant_id).body_share.value / way(variant_id).ratio.value


# Common practice, no source: what every coach would put in this order, the easiest first.
LADDERS = [
    ["push-up/hands-on-wall", "push-up/hands-on-table", "push-up/knees", "push-up/floor", "push-up/feet-on-box"],
    ["push-up/floor", "push-up/paused", "push-up/one-and-a-half", "archer push-up/floor", "one-arm push-up/floor"],
    ["ring row/upright", "ring row/leaning", "ring row/level", "ring row/feet-on-box"],
    ["pull-up/feet-on-chair", "pull-up/band", "pull-up/lowering-only", "pull-up/strict", "muscle-up/bar"],
    ["swinging pull-up/kip", "chin-up/strict", "pull-up/strict", "pull-up/slow-lowering", "archer pull-up/bar"],
    ["pike push-up/hands-on-wall", "pike push-up/floor", "pike push-up/feet-on-box", "handstand push-up/to-cushions",
     "handstand push-up/wall", "handstand push-up/deficit"],
    ["chair dip/floor", "chair dip/bent-knees", "chair dip/straight-legs", "dip/bars", "dip/rings"],
    ["wall reach hold/standing", "pike hold/floor", "handstand hold/feet-on-box", "handstand hold/back-to-wall",
     "handstand hold/free"],
    ["bar hang/feet-on-chair", "bar hang/long-arms", "bar hang/towels", "bar hang/one-arm"],
]  # fmt: skip


@pytest.mark.parametrize("ladder", LADDERS, ids=[ladder[-1] for ladder in LADDERS])
def test_every_step_up_a_ladder_is_harder(ladder):
    efforts = [effort(variant_id) for variant_id in ladder]
    assert efforts == sorted(efforts)
    assert len(set(efforts)) == len(efforts)


def test_what_goes_overhead_with_a_bag_or_jug_is_held_in_both_hands():
    # Common practice, no source: an improvised weight never goes overhead in one hand. On the back it may.
    for movement, variant in catalogue().pairs():
        improvised = [hold for hold in variant.holds if catalogue().implement(hold.implement).improvised]
        if improvised and "overhead" in variant.demands:
            assert {hold.count for hold in improvised} == {1}
            assert movement.sides_of(variant) != "one"


SKILLS = ["pull-up/strict", "muscle-up/rings", "rope climb/legs", "handstand hold/back-to-wall", "wall walk/full",
          "handstand push-up/wall", "jerk/push", "dip/rings", "one-arm push-up/floor"]  # fmt: skip


@pytest.mark.parametrize("variant_id", SKILLS)
def test_a_skill_is_gated_and_something_ungated_leads_to_it(variant_id):
    assert way(variant_id).skill
    easier = [way(other) for other in catalogue().below(variant_id)]
    assert any(not one.skill for one in easier)
