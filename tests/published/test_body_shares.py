"""Body-mass shares of the catalogue against published measurements and segment-mass tables."""

import re

import pytest

from core.movements.catalogue import catalogue
from core.movements.values import Pattern

# Ebben et al. 2011, J Strength Cond Res 25(10):2891-2894, n = 23, peak of a moving repetition (cited by
# others; the order of the variants read in the abstract).
FLOOR, KNEES = 0.64, 0.49
HANDS_UP = {30.48: 0.55, 60.96: 0.41}
FEET_UP = {30.48: 0.70, 60.96: 0.74}

# Gouvali & Boudolos 2005, J Strength Cond Res 19(1):146-151, 8 men, held still at the start.
STILL_FLOOR, STILL_KNEES = 0.664, 0.529

# Body segments, % of body mass, limbs of one side. de Leva 1996, J Biomech 29(9):1223-1230; Winter, 4th ed.
# 2009, Table 4.1 (all cited).
SEGMENTS = {
    "de Leva men": {"head": 6.94, "trunk": 43.46, "upper arm": 2.71, "forearm": 1.62, "hand": 0.61,
                    "thigh": 14.16, "shank": 4.33, "foot": 1.37},
    "de Leva women": {"head": 6.68, "trunk": 42.57, "upper arm": 2.55, "forearm": 1.38, "hand": 0.56,
                      "thigh": 14.78, "shank": 4.81, "foot": 1.29},
    "Winter": {"head": 8.1, "trunk": 49.7, "upper arm": 2.8, "forearm": 1.6, "hand": 0.6,
               "thigh": 10.0, "shank": 4.65, "foot": 1.45},
}  # fmt: skip


def share(variant_id, height_cm=None):
    return catalogue().variant(variant_id)[1].body_share.at(height_cm)


def both(table, *segments):
    """Share of body mass of these limbs, both sides."""
    return sum(2 * SEGMENTS[table][segment] for segment in segments) / 100


def middle(table):
    return (SEGMENTS[table]["head"] + SEGMENTS[table]["trunk"]) / 100


def test_a_push_up_on_the_floor_and_from_the_knees_moves_what_was_measured():
    assert (share("push-up/floor"), share("push-up/knees")) == (FLOOR, KNEES)


@pytest.mark.parametrize("support", ["stairs", "bench", "chair", "box", "table"])
def test_raised_hands_move_what_was_measured_at_each_height(support):
    measured = {0: FLOOR} | HANDS_UP
    assert {height: share(f"push-up/hands-on-{support}", height) for height in measured} == measured


def test_raised_feet_move_what_was_measured_at_each_height():
    assert {height: share("push-up/feet-on-chair", height) for height in FEET_UP} == FEET_UP


def test_beyond_the_measured_heights_the_last_share_is_kept():
    assert share("push-up/hands-on-table", 75) == HANDS_UP[60.96]
    assert share("push-up/feet-on-chair", 90) == FEET_UP[60.96]


def test_feet_up_is_heavier_than_the_floor_and_the_floor_than_hands_up_and_knees():
    # Ebben et al. 2011, read in the abstract.
    lighter = [share("push-up/hands-on-chair"), share("push-up/hands-on-table"), share("push-up/knees")]
    assert share("push-up/feet-on-chair") > share("push-up/floor") > max(lighter)


def test_knees_against_floor_is_the_same_step_in_peak_and_still_measurements():
    # Peak and still values are never mixed in one tolerance; their ratio of knees to floor is comparable.
    assert share("push-up/knees") / share("push-up/floor") == pytest.approx(
        STILL_KNEES / STILL_FLOOR, abs=0.05
    )


@pytest.mark.parametrize("table", SEGMENTS)
@pytest.mark.parametrize("squat", ["air squat/floor", "goblet squat/front", "lunge/reverse"])
def test_a_squat_moves_all_but_shanks_and_feet(squat, table):
    # Leaving out shank and foot mass: Cormie et al. 2007, J Strength Cond Res 21(4):1042.
    assert share(squat) == pytest.approx(1 - both(table, "shank", "foot"), abs=0.01)


@pytest.mark.parametrize("table", SEGMENTS)
@pytest.mark.parametrize(
    "way", ["one-leg squat/free", "skater squat/free", "step-up/on-box", "step-down/from-stair"]
)
def test_on_one_leg_all_but_the_standing_shank_and_foot_moves(way, table):
    assert share(way) == pytest.approx(1 - both(table, "shank", "foot") / 2, abs=0.01)


def _adds_its_own(way):
    """A band adds its own pull; in a machine a sled is moved, and the body in part."""
    held = {one.implement for one in way.holds}
    return "band" in way.things or any(one.endswith("machine") for one in held)


@pytest.mark.parametrize("pattern", [Pattern.SQUAT, Pattern.LUNGE])
def test_every_way_of_squatting_and_lunging_moves_one_of_the_two(pattern):
    ways = [way for one, way in catalogue().pairs() if one.pattern is pattern and not _adds_its_own(way)]
    assert {way.body_share.value for way in ways} == {0.88, 0.94}


@pytest.mark.parametrize("table", ["de Leva men", "de Leva women"])
def test_a_sit_up_moves_head_trunk_and_arms_by_de_leva(table):
    moved = middle(table) + both(table, "upper arm", "forearm", "hand")
    assert share("sit-up/floor") == pytest.approx(moved, abs=0.015)


def test_tables_differ_on_the_sit_up_so_each_share_names_its_own():
    by_winter = middle("Winter") + both("Winter", "upper arm", "forearm", "hand")
    assert by_winter - share("sit-up/floor") == pytest.approx(0.085, abs=0.015)
    source = catalogue().variant("sit-up/floor")[1].body_share.source
    assert "de Leva 1996" in source
    assert "Winter 2009" in source


@pytest.mark.parametrize("table", ["de Leva men", "de Leva women"])
def test_a_lifted_leg_and_lifted_arms_weigh_what_the_table_says(table):
    assert share("leg lift back/hand-on-wall") == pytest.approx(
        both(table, "thigh", "shank", "foot") / 2, abs=0.01
    )
    assert share("back squeeze/lying") == pytest.approx(
        both(table, "upper arm", "forearm", "hand"), abs=0.011
    )


# Two-minute push-up test, 40 a minute (public protocol, read); Ruffier-Dickson, 30 squats in 45 s (cited);
# swings in short sets, 36.75 +- 2.12 a minute (Vencel, University of Dayton thesis, read).
@pytest.mark.parametrize(
    ("variant_id", "a_minute", "spread"),
    [("push-up/floor", 40, 0.5), ("air squat/floor", 40, 0.5), ("swing/two-hands", 36.75, 2.12)],
)
def test_a_repetition_takes_what_its_test_protocol_gives_it(variant_id, a_minute, spread):
    seconds = catalogue().variant(variant_id)[1].seconds.value
    assert 60 / seconds == pytest.approx(a_minute, abs=spread)


# 2024 Adult Compendium, Herrmann et al. 2024, J Sport Health Sci 13(1):6-12 (cited).
COMPENDIUM = {
    "02020": 7.5,
    "02022": 3.8,
    "02024": 2.8,
    "02032": 6.0,
    "02040": 7.5,
    "02057": 6.5,
    "02058": 9.8,
    "15551": 11.8,
    "running at 5 mph": 8.5,
    "running at 6 mph": 9.3,
    "running at 7 mph": 11.0,
    "rowing machine at 100-149 W": 7.5,
    "rowing machine at 150-199 W": 11.0,
}


def test_every_energy_cost_is_its_compendium_entry_or_says_that_it_is_none():
    told = [way.met for _, way in catalogue().pairs() if way.met]
    costs = [met for met in told if not re.search(r"^estimate|from memory", met.source)]
    assert len(costs) > 50
    for met in costs:
        assert "2024 Adult Compendium" in met.source
        assert met.value == next(value for entry, value in COMPENDIUM.items() if entry in met.source)
