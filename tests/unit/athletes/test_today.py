from datetime import date, timedelta
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.athletes.today import as_of, said
from core.athletes.values import Different, Equipment, EquipmentSet, Evidence, Profile

TODAY = date(2026, 3, 3)
CHAIR, BAND = Equipment(implement="chair"), Equipment(implement="band")
ILSE = Profile(
    name="Ilse",
    equipment=(CHAIR,),
    sets=(EquipmentSet(name="trip", equipment=(BAND,)),),
    limits=("knee",),
    evidence=(Evidence(movement="push-up", reps=7),),
)


def days(number):
    return TODAY + timedelta(days=number)


def different(until=TODAY, **how):
    return said(ILSE, Different(until=until, **how), TODAY)


def differences():
    what = st.sampled_from(
        [
            {"sick": "fever"},
            {"sick": "recovering"},
            {"sore": "legs"},
            {"sore": "arms"},
            {"minutes": 15},
            {"place": "trip"},
            {"place": "home"},
            {"lacks": CHAIR},
        ]
    )
    until = st.integers(-3, 9).map(days)
    return st.lists(st.builds(lambda how, end: Different(until=end, **how), what, until), max_size=5)


def test_a_day_like_any_other_leaves_the_profile_alone():
    assert as_of(ILSE, TODAY) is ILSE


def test_a_short_day_is_short_today_and_not_tomorrow():
    short = different(minutes=15)
    assert as_of(short, TODAY).today.minutes == 15
    assert as_of(short, days(1)).today.minutes is None


def test_another_place_brings_its_own_equipment_until_its_end():
    away = different(until=days(4), place="trip")
    assert as_of(away, days(4)).equipment == (BAND,)
    assert as_of(away, days(5)).equipment == (CHAIR,)


def test_what_is_missing_today_is_there_again_tomorrow():
    without_chair = different(lacks=CHAIR)
    assert as_of(without_chair, TODAY).equipment == ()
    assert as_of(without_chair, days(1)).equipment == (CHAIR,)


def test_a_fever_means_rest_and_two_days_more_then_ten_easy_minutes():
    ill = different(sick="fever")
    assert [as_of(ill, days(n)).today.sick for n in range(4)] == [True, True, True, False]
    assert as_of(ill, days(3)).today.minutes == 10
    assert as_of(ill, days(3)).limits == ("knee", "after-illness")
    assert as_of(ill, days(5)) == ill


def test_who_recovers_does_ten_easy_minutes():
    recovering = as_of(different(sick="recovering"), TODAY)
    assert recovering.today.minutes == 10
    assert not recovering.today.sick
    assert "after-illness" in recovering.limits


def test_a_newer_word_takes_the_place_of_an_older_about_the_same():
    short = said(different(minutes=15), Different(until=TODAY, minutes=30), TODAY)
    assert as_of(short, TODAY).today.minutes == 30


@pytest.mark.parametrize("places", [("legs",), ("legs", "arms"), ("legs", "arms", "legs")])
def test_several_places_may_be_sore(places):
    sore = ILSE
    for place in places:
        sore = said(sore, Different(until=TODAY, sore=place), TODAY)
    assert set(as_of(sore, TODAY).today.sore) == set(places)


@given(differences(), st.integers(0, 20))
def test_no_day_touches_ability_and_everything_ends(how, later):
    profile = ILSE
    for one in how:
        profile = said(profile, one, TODAY)
    assert as_of(profile, days(later)).evidence == ILSE.evidence
    assert as_of(profile, days(14)).model_copy(update={"different": ()}) == ILSE


def test_weights_that_are_missing_leave_the_others():
    owned = Equipment(implement="dumbbell", loads_kg=(Decimal(5), Decimal(10)))
    ilse = ILSE.model_copy(update={"equipment": (owned,)})
    lacks = Equipment(implement="dumbbell", loads_kg=(Decimal(10),))
    assert as_of(said(ilse, Different(until=TODAY, lacks=lacks), TODAY), TODAY).equipment == (
        Equipment(implement="dumbbell", loads_kg=(Decimal(5),)),
    )


def test_what_begins_later_leaves_the_days_before_it_alone():
    later = different(days(5), since=days(3), place="trip")
    assert as_of(later, days(2)).equipment == (CHAIR,)
    assert as_of(later, days(3)).equipment == as_of(later, days(5)).equipment == (BAND,)
    assert as_of(later, days(6)).equipment == (CHAIR,)


def test_of_two_places_on_one_day_the_newest_word_counts():
    here = said(ILSE, Different(until=days(4), place="trip"), TODAY)
    both = said(here, Different(since=days(2), until=days(3), place="home"), TODAY)
    equipment = [as_of(both, days(number)).equipment for number in range(6)]
    assert equipment == [(BAND,), (BAND,), (CHAIR,), (CHAIR,), (BAND,), (CHAIR,)]


def test_a_new_word_about_the_same_days_takes_the_place_of_the_earlier():
    first = said(ILSE, Different(since=days(2), until=days(4), place="trip"), TODAY)
    second = said(first, Different(since=days(1), until=days(4), place="gym"), TODAY)
    assert [one.place for one in second.different] == ["gym"]
