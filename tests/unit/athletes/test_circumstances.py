"""A pregnancy, the time after a birth, a seat, a break and the place, as scaling sees them."""

from datetime import date
from decimal import Decimal

import pytest

from core.athletes.circumstances import in_circumstances
from core.athletes.complaints import healed
from core.athletes.easing import FIRST_WEEK_BACK
from core.athletes.household import with_household
from core.athletes.limits import day_rule, ruled_out
from core.athletes.today import as_of
from core.athletes.values import AfterBirth, Equipment, Place, Pregnancy, Profile, Seated, Space
from core.movements.values import Demand

ILSE = Profile(name="Ilse", limits=(), equipment=())


def seen(**told):
    return in_circumstances(ILSE.model_copy(update=told))


@pytest.mark.parametrize(
    ("week", "limit"),
    [
        (6, "pregnancy-early"),
        (13, "pregnancy-early"),
        (14, "pregnancy-middle"),
        (27, "pregnancy-middle"),
        (28, "pregnancy-late"),
        (None, "pregnancy"),
    ],
)
def test_a_pregnancy_asks_for_more_care_as_the_weeks_go(week, limit):
    assert seen(pregnancy=Pregnancy(week=week, cleared=True)).limits == (limit,)


def test_each_third_rules_out_no_less_than_the_one_before():
    stages = [ruled_out([f"pregnancy-{stage}"]) for stage in ("early", "middle", "late")]
    assert stages == sorted(stages, key=len)
    assert stages[1] <= stages[2]
    assert {Demand.LYING, Demand.FACE_DOWN, Demand.BELLY} <= stages[1] - stages[0]


def test_the_stage_takes_the_place_of_what_was_told_without_weeks():
    assert seen(limits=("wrist", "pregnancy"), pregnancy=Pregnancy(week=20, cleared=True)).limits == (
        "wrist",
        "pregnancy-middle",
    )


def test_a_pregnancy_that_nobody_agreed_to_goes_to_the_coach_first():
    limits = seen(pregnancy=Pregnancy(week=20)).limits
    assert day_rule(limits).session == "coach-first"
    assert day_rule(seen(pregnancy=Pregnancy(week=20, cleared=True)).limits).session == "as-usual"


@pytest.mark.parametrize(
    ("weeks", "ruled"),
    [
        (9, {Demand.IMPACT, Demand.JUMPING}),
        (11, {Demand.IMPACT, Demand.JUMPING}),
        (12, {Demand.JUMPING}),
        (34, {Demand.JUMPING}),
        (52, set()),
    ],
)
def test_after_a_birth_running_comes_back_before_jumping(weeks, ruled):
    """Running from the twelfth week (Goom, Donnelly & Brockwell 2019, from memory); jumping later: an estimate."""
    limits = seen(after_birth=AfterBirth(weeks=weeks, cleared=True)).limits
    assert ruled_out(limits) & {Demand.IMPACT, Demand.JUMPING} == ruled


def test_after_a_birth_nobody_starts_uncleared():
    assert day_rule(seen(after_birth=AfterBirth(weeks=20)).limits).session == "cleared-first"


@pytest.mark.parametrize(
    ("seat", "limits"),
    [
        (Seated(), ("seated",)),
        (Seated(trunk=True, floor=True), ("seated",)),
        (Seated(trunk=False, floor=False), ("seated", "no-trunk-hold", "no-floor")),
    ],
)
def test_a_seat_is_told_with_what_the_trunk_and_the_floor_allow(seat, limits):
    assert seen(seated=seat).limits == limits


def test_what_the_place_has_needs_no_owner():
    there = seen(place=Place(stairs=True, table=True, bar_in_door=True))
    assert {one.implement for one in there.equipment} == {"stairs", "table", "pull-up bar"}


def test_what_the_place_lacks_is_not_there():
    owned = (Equipment(implement="table"), Equipment(implement="band"))
    assert seen(equipment=owned, place=Place(table=False)).equipment == (Equipment(implement="band"),)


def test_no_metres_to_run_are_no_room_to_run():
    assert not seen(place=Place(run_m=0)).space.running
    assert seen(place=Place(run_m=40)).space.running
    assert not seen(space=Space(running=False), place=Place(run_m=40)).space.running


@pytest.mark.parametrize(("weeks", "easing"), [(3, None), (4, FIRST_WEEK_BACK), (900, FIRST_WEEK_BACK)])
def test_after_weeks_off_half_is_enough(weeks, easing):
    assert seen(weeks_off=weeks).today.easing == easing


def test_nothing_told_changes_nothing_and_twice_is_once():
    assert in_circumstances(ILSE) is ILSE
    once = seen(
        pregnancy=Pregnancy(week=30), seated=Seated(floor=False), place=Place(stairs=True), weeks_off=8
    )
    assert in_circumstances(once) == once


def test_weeks_go_on_from_the_day_they_were_told():
    told = ILSE.model_copy(update={"pregnancy": Pregnancy(week=13, cleared=True, on=date(2026, 3, 2))})
    assert as_of(told, date(2026, 3, 8)).limits == ("pregnancy-early",)
    assert as_of(told, date(2026, 3, 9)).limits == ("pregnancy-middle",)
    born = ILSE.model_copy(update={"after_birth": AfterBirth(weeks=8, cleared=True, on=date(2026, 3, 2))})
    assert as_of(born, date(2026, 3, 29)).limits == ("after-birth-early",)
    assert as_of(born, date(2026, 3, 30)).limits == ("after-birth-middle",)
    assert as_of(born, date(2026, 7, 6)).limits == ("after-birth-later",)


def test_what_no_longer_holds_takes_its_weeks_along():
    told = ILSE.model_copy(update={"limits": ("pregnancy",), "pregnancy": Pregnancy(week=39)})
    assert healed(told, "pregnancy").pregnancy is None


def test_of_a_ticked_thing_that_was_told_too_the_word_counts():
    bag = Equipment(implement="backpack", to_kg=Decimal(20))
    assert with_household((bag,), ("bag", "chair")) == (bag, Equipment(implement="chair"))


def test_a_day_is_seen_in_its_circumstances():
    told = ILSE.model_copy(update={"pregnancy": Pregnancy(week=24, cleared=True)})
    assert as_of(told, date(2026, 3, 2)).limits == ("pregnancy-middle",)
