"""What is expected of somebody, in words."""

import pytest

from bot.words.forecasts import forecast_words, pacing_words
from core.forecast.values import Broken, Forecast, Outlook, Pacing


@pytest.mark.parametrize(
    ("unit", "low", "high", "words"),
    [
        ("rounds", 5.1, 6.4, "5 to 6 rounds"),
        ("s", 498, 581, "about 8:20 to 9:40"),
        ("s", 3723, 3900, "about 1:02:05 to 1:05:00"),
        ("kg", 71.9, 79.2, "72.5 to 80 kg"),
        ("reps", 52.2, 60.9, "52 to 61 repetitions"),
        ("m", 2367, 2612, "2350 to 2600 m"),
        ("reps", 20.0, 20.2, "20 repetitions"),
    ],
)
def test_a_range_is_told_as_people_tell_it(unit, low, high, words):
    one = Forecast(unit=unit, low=low, expected=(low + high) / 2, high=high)
    assert forecast_words(one) == words


@pytest.mark.parametrize(
    ("minutes", "plans"), [((6, 9), True), ((12, 18), True), ((23, 34), False), ((180, 200), True)]
)
def test_nobody_is_told_ends_that_lie_too_far_apart_to_plan_with(minutes, plans):
    low, high = (60 * one for one in minutes)
    assert Forecast(unit="s", low=low, expected=low, high=high).is_to_plan_with is plans


def test_pacing_is_a_sentence_or_two():
    pacing = Pacing(round_s=112, broken=(Broken(line=1, movement="pull-up", variant="strict", parts=(6, 4)),))
    forecast = Forecast(unit="rounds", low=5, expected=6, high=7)
    assert pacing_words(Outlook(forecast=forecast, pacing=pacing)) == (
        "About 1:50 a round, the first no faster than the last.",
        "Break it up from the start: the pull-ups 6 + 4.",
    )


def test_what_is_broken_up_is_called_as_in_the_version():
    pacing = Pacing(broken=(Broken(line=1, movement="line hop", variant="step-over", parts=(30, 30)),))
    forecast = Forecast(unit="rounds", low=5, expected=6, high=7)
    told = pacing_words(Outlook(forecast=forecast, pacing=pacing))
    assert told == ("Break it up from the start: the quick steps over a line 30 + 30.",)


def test_without_rounds_the_half_is_told():
    forecast = Forecast(unit="s", low=600, expected=620, high=700)
    told = pacing_words(Outlook(forecast=forecast, pacing=Pacing(half_s=301)))
    assert told == ("Half of it done by about 5:00.",)


@pytest.mark.parametrize(
    ("low", "high", "telling"), [(5, 7, True), (5, 8, True), (5, 10, False), (2, 6, False), (0, 3, False)]
)
def test_a_range_that_says_nothing_is_not_told_with_a_version(low, high, telling):
    assert Forecast(unit="rounds", low=low, expected=high, high=high).is_telling is telling


@pytest.mark.parametrize(("high", "paced"), [(7, True), (10, True), (11, False)])
def test_the_pace_is_told_a_while_longer_than_what_it_comes_to(high, paced):
    forecast = Forecast(unit="rounds", low=5, expected=high, high=high)
    assert Outlook(forecast=forecast).is_to_pace_by is paced


def test_a_pace_says_whether_the_rest_is_in_it():
    forecast = Forecast(unit="s", low=900, expected=930, high=960)
    on_top, within = (
        pacing_words(Outlook(forecast=forecast, pacing=Pacing(round_s=155, rest=rest)))
        for rest in ("on top", "in")
    )
    assert on_top == ("About 2:35 a round, rest not counted, the first no faster than the last.",)
    assert within == ("About 2:35 a round with its rest, the first no faster than the last.",)
