"""Days with less: when they begin and end, and who is asked what."""

from datetime import date, timedelta

import pytest

from core.athletes.easing import (
    back_from,
    beginning_on,
    easing_on,
    easy_week_from,
    may_do_more,
    may_have_had_a_break,
)
from core.athletes.today import as_of, said
from core.athletes.values import Branch, Profile, Screening

TODAY = date(2026, 3, 2)
ILSE = Profile(name="Ilse")


def days(number):
    return TODAY + timedelta(days=number)


def share_on(different, number):
    easing = as_of(said(ILSE, different, TODAY), days(number)).today.easing
    return easing and easing.share


def test_an_easy_week_lasts_seven_days_and_begins_on_its_first():
    coming = easy_week_from(days(3))
    assert [share_on(coming, number) is not None for number in (0, 2, 3, 9, 10)] == [
        False,
        False,
        True,
        True,
        False,
    ]


def test_back_after_a_break_is_half_then_three_quarters_then_as_usual():
    back = back_from(TODAY)
    assert [share_on(back, number) for number in (0, 6, 7, 13, 14)] == [0.5, 0.5, 0.75, 0.75, None]


def test_the_first_week_back_is_gentle_and_the_second_may_be_harder():
    first, second = (easing_on([back_from(TODAY)], days(number)) for number in (0, 7))
    assert (first.effort_at_most, second.effort_at_most) == (4, 6)


def test_of_two_easings_the_gentlest_counts():
    easing = easing_on([easy_week_from(TODAY), back_from(TODAY), beginning_on(TODAY)], TODAY)
    assert (easing.of, easing.share, easing.effort_at_most) == ("returning", 0.5, 4)


def test_an_easy_week_said_again_makes_it_longer():
    twice = said(said(ILSE, easy_week_from(TODAY), TODAY), easy_week_from(days(2)), TODAY)
    assert [as_of(twice, days(number)).today.easing is not None for number in (0, 8, 9)] == [
        True,
        True,
        False,
    ]


@pytest.mark.parametrize(
    ("trained", "asked", "ask"),
    [
        ((), None, False),  # nobody knows anything of them yet
        ((-27,), None, False),
        ((-28,), None, True),
        ((-90, -28), None, True),
        ((-90,), -10, False),
        ((-90,), -28, True),
    ],
)
def test_a_break_is_asked_about_after_four_weeks_and_not_twice_within_as_long(trained, asked, ask):
    profile = ILSE.model_copy(update={"asked_on": None if asked is None else days(asked)})
    assert may_have_had_a_break(profile, [days(one) for one in trained], TODAY) is ask


def test_who_said_that_they_are_back_is_not_asked():
    assert not may_have_had_a_break(said(ILSE, back_from(TODAY), TODAY), [days(-60)], TODAY)


def test_an_easy_week_that_is_long_over_keeps_nobody_from_being_asked():
    eased = said(ILSE, easy_week_from(days(-60)), days(-60))
    assert may_have_had_a_break(eased, [days(-60)], TODAY)


def gentle(branch=Branch.HEALTHY_INACTIVE, began=-20, **known):
    return ILSE.model_copy(
        update={"screening": Screening.MODERATE, "branch": branch, "screened_on": days(began), **known}
    )


SIX = [days(-number) for number in (1, 3, 5, 8, 11, 14)]


@pytest.mark.parametrize(
    ("profile", "trained", "ask"),
    [
        (gentle(), SIX, True),
        (gentle(Branch.CLEARED), SIX, True),
        (gentle(), SIX[:5], False),
        (gentle(), [*SIX[:5], days(-1)], False),  # twice on one day is one session
        (gentle(), [*SIX[:5], days(-30)], False),  # before they were screened
        (gentle(began=-13), [*SIX[:4], days(-12), days(-13)], False),
        (gentle(asked_on=days(-13)), SIX, False),
        (gentle(asked_on=days(-14)), SIX, True),
        (gentle(Branch.DISEASE_ACTIVE), SIX, False),  # that is for licensed care to say
        (gentle(screening=Screening.CLEAR), SIX, False),
    ],
)
def test_more_is_offered_to_healthy_people_who_have_been_gentle_for_long_enough(profile, trained, ask):
    assert may_do_more(profile, trained, TODAY) is ask
