"""A cache holds what its results weigh, not so many of them."""

from core.caches import kept_by_weight


def cache(most):
    calls = []

    @kept_by_weight(most, len)
    def made(number, weight):
        calls.append(number)
        return "x" * weight

    return made, calls


def test_what_was_worked_out_is_kept():
    made, calls = cache(10)
    assert made(1, 3) == made(1, 3) == "xxx"
    assert calls == [1]


def test_the_longest_unused_goes_first():
    made, calls = cache(10)
    for number in (1, 2, 1, 3, 1, 2):
        made(number, 4)
    assert calls == [1, 2, 3, 2]


def test_one_that_is_too_heavy_stays_alone():
    made, calls = cache(10)
    for number, weight in ((1, 4), (2, 99), (2, 99), (1, 4), (2, 99)):
        made(number, weight)
    assert calls == [1, 2, 1, 2]
