"""Whom a coach must decide about, and in which order."""

from decimal import Decimal

from core.scaling.needs import calling, first_of_each, gravity
from core.scaling.values import Because, Change, NeedsCoach


def need(change, because, **more):
    return NeedsCoach(
        **{"block": 1, "line": 1, "written": "10 rows", "change": change, "because": because} | more
    )


def test_who_may_do_more_of_what_is_written_needs_nobody():
    assert calling([need(Change.NONE, Because.TOO_LIGHT)]) == ()


def test_who_gets_something_they_would_not_expect_does():
    only_light = need(Change.LOAD, Because.TOO_LIGHT)
    assert calling([only_light]) == (only_light,)


def test_what_a_body_asks_comes_first_then_what_has_nothing_safe():
    health = NeedsCoach(because=Because.LIMIT, about="pregnancy")
    nothing = need(Change.REST, Because.NO_SAFE_OPTION)
    untried = need(Change.NONE, Because.UNKNOWN_HEAVY)
    another = need(Change.MOVEMENT, Because.NOT_OWNED)
    heavier = need(Change.LOAD, Because.NOT_OWNED, suits_kg=Decimal(8))
    assert calling([heavier, another, untried, nothing, health]) == (
        health,
        nothing,
        untried,
        another,
        heavier,
    )


def test_what_most_share_goes_behind_what_somebody_has_alone():
    bar = need(Change.MOVEMENT, Because.NOT_OWNED, line=4)
    overhead = need(Change.MOVEMENT, Because.LIMIT, line=3)
    nothing = need(Change.REST, Because.NO_SAFE_OPTION, line=4)
    firsts = first_of_each([(bar,), (bar, overhead), (), (bar, nothing), (bar,)])
    assert [one and one.need for one in firsts] == [bar, overhead, None, nothing, bar]
    told = sorted((one for one in firsts if one), key=lambda one: one.place)
    assert [one.need for one in told] == [nothing, overhead, bar, bar]
    assert [gravity(one.need) for one in told] == sorted(gravity(one.need) for one in told)
