from collections import Counter

import pytest
from pydantic import ValidationError

from core.athletes.limits import (
    UnknownLimit,
    cautions,
    day_rule,
    lightened,
    limit,
    limits,
    read_table,
    ruled_out,
    ruled_out_by,
    stop_signs,
)
from core.movements.catalogue import catalogue
from core.movements.names import key
from core.movements.values import Demand

# What training has to heed beside joints (common practice, no source).
KNOWN = {
    "concussion", "asthma", "insulin", "blood-thinners", "beta-blockers", "osteoporosis", "joint-replacement",
    "epilepsy", "glaucoma", "high-blood-pressure", "pregnancy", "after-birth", "heat", "fever",
}  # fmt: skip


def test_every_state_that_safety_names_is_a_limit():
    assert {one.id for one in limits()} >= KNOWN


def test_a_spelling_means_one_limit():
    spellings = Counter(
        name for one in limits() for name in {key(said) for said in (one.id, one.label, *one.names)}
    )
    assert [name for name, count in spellings.items() if count > 1] == []


def test_a_limit_never_lightens_what_it_rules_out():
    assert [one.id for one in limits() if set(one.rules_out) & set(one.lightens)] == []


def test_several_limits_rule_out_what_any_of_them_does():
    assert ruled_out(["wrist", "no-jumping"]) == {Demand.WRIST_BENT, Demand.JUMPING}


def test_what_one_limit_lightens_another_may_rule_out():
    assert Demand.IMPACT in lightened(["no-jumping"])
    assert Demand.IMPACT not in lightened(["no-jumping", "no-running"])


def test_the_limit_behind_a_change_is_named():
    assert ruled_out_by(["asthma", "wrist"], [Demand.WRIST_BENT, Demand.FLOOR]) == "wrist"
    assert ruled_out_by(["asthma", "wrist"], [Demand.FLOOR]) is None


def test_no_limits_rule_nothing_out_and_caution_nothing():
    assert (ruled_out([]), lightened([]), cautions([]), stop_signs([])) == (frozenset(), frozenset(), (), ())
    assert day_rule([]).session == "as-usual"


def test_cautions_come_once_in_the_order_told():
    assert cautions(["wrist", "asthma", "wrist"]) == (limit("wrist").caution, limit("asthma").caution)


def test_the_strictest_of_several_limits_rules_the_day():
    rule = day_rule(["pregnancy", "heat", "fever"])
    assert (rule.session, rule.effort_at_most, rule.scored) == ("rest", 4, False)
    assert day_rule(["heat", "wrist"]).scored


def test_a_failing_heart_starts_with_a_doctors_word_and_a_known_one_stays_moderate():
    assert day_rule(["heart-failure"]).session == "cleared-first"
    assert (day_rule(["heart"]).session, day_rule(["heart"]).effort_at_most) == ("as-usual", 4)


def test_who_sits_is_spared_standing_and_kneeling_and_not_the_floor():
    out = ruled_out(["seated"])
    assert out >= {Demand.STANDING, Demand.LEGS, Demand.KNEELING, Demand.IMPACT, Demand.JUMPING}
    assert not out & {Demand.FLOOR, Demand.LYING, Demand.OVERHEAD}


@pytest.mark.parametrize(
    "limit_id",
    ["pregnancy", "after-birth", "concussion", "fever", "heart", "heart-failure", "stroke", "copd"],
)
def test_states_with_stop_signs_of_their_own_have_them(limit_id):
    assert limit(limit_id).stop_signs
    assert not limit(limit_id).scored


def test_osteoporosis_means_no_loaded_bending_and_no_jumps():
    assert ruled_out(["osteoporosis"]) >= {Demand.SPINE_BEND, Demand.FORWARD_BEND, Demand.JUMPING}


def test_glaucoma_means_not_upside_down_and_high_pressure_no_held_breath():
    assert Demand.UPSIDE_DOWN in ruled_out(["glaucoma"])
    assert Demand.BREATH_HOLDING in ruled_out(["high-blood-pressure"])


def test_an_unknown_limit_is_refused_by_name():
    with pytest.raises(UnknownLimit, match="left-ear"):
        ruled_out(["left-ear"])


def test_an_unknown_key_in_the_file_is_refused():
    row = {
        "id": "ear",
        "kind": "joint",
        "label": "sore ear",
        "names": ["ear"],
        "caution": "Careful.",
        "cure": "rest",
    }
    with pytest.raises(ValidationError, match="cure"):
        read_table({"limits": [row]})


def test_every_limit_matters_for_a_variant_or_for_the_day():
    used = {demand for _, variant in catalogue().pairs() for demand in variant.demands}
    told = {one.id for one in limits() if one.rules_out or one.lightens or one.effort_at_most is not None}
    only_told = {one.id for one in limits()} - told
    assert only_told == {"asthma", "insulin", "uncleared"}
    assert used <= set(Demand)


@pytest.mark.parametrize("one", limits(), ids=lambda one: one.id)
def test_with_any_single_limit_and_no_equipment_every_line_has_a_safe_stand_in(one):
    out, book = ruled_out([one.id]), catalogue()

    def is_safe(variant_id):
        variant = book.variant(variant_id)[1]
        return not (variant.needs or variant.holds or variant.skill or out & set(variant.demands))

    left = [
        variant_id
        for variant_id in book.ids()
        if not is_safe(variant_id) and not any(is_safe(reach.id) for reach in book.reachable(variant_id))
    ]
    assert left == []


def test_a_wish_that_another_one_includes_brings_no_caution_of_its_own():
    assert cautions(["no-floor", "no-kneeling", "no-lying"]) == (limit("no-floor").caution,)
    assert cautions(["no-jumping", "no-running"]) == (limit("no-running").caution,)
    assert len(cautions(["no-jumping", "no-kneeling", "knee"])) == len(("no-jumping", "no-kneeling", "knee"))
