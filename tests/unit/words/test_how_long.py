"""How long a session takes somebody: said once, and nothing that says nothing."""

from bot.words.wording import word
from core.desk.talk.says import HowLongItIs
from core.forecast.values import Forecast, Outlook


def told(**facts):
    return word(HowLongItIs(**{"minutes": None, "capped": False} | facts), "en").html


def outlook(low, high):
    return Outlook(forecast=Forecast(unit="s", low=low, expected=(low + high) / 2, high=high))


def test_where_the_session_has_no_clock_their_own_version_tells():
    text = told(theirs=17.2)
    assert text.startswith("Reckon with some 17 minutes")
    assert "can't tell" not in text


def test_a_range_of_no_use_is_not_told():
    assert "I'd expect" not in told(theirs=4, outlooks=(outlook(45, 350),))
    assert "I'd expect about 6:00 to 9:00" in told(theirs=9, outlooks=(outlook(360, 540),))


def test_without_a_version_and_a_clock_nothing_is_made_up():
    assert told().startswith("Your coach set no time: take what it needs.")
