"""A group's outlook: of the main part, by name, against the coach's aim."""

from bot.words.en.sessions.expecting import group_words
from core.forecast.group import group_outlook
from core.forecast.values import Forecast, Outlook
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session


def rounds(expected):
    return Outlook(forecast=Forecast(unit="rounds", low=expected - 1, expected=expected, high=expected + 1))


def session(text):
    found = read_session(text, catalogue()).session
    assert found is not None
    return found


def test_it_speaks_of_the_main_part_and_names_of_whom_nothing_is_known():
    two = session("Strength\n5 x 5 back squat @ 60 kg\n\nMain\nAMRAP 10\n10 push-ups")
    kg = Outlook(forecast=Forecast(unit="kg", low=60, expected=60, high=60))
    found = group_outlook(two, {"Ilse": (kg, rounds(6)), "Bo": (kg, rounds(8)), "Tam": ()})
    assert found is not None
    assert (found.block, found.unit, found.edges) == (2, "rounds", (6, 8))
    assert found.unknown == ("Tam",)


def test_it_counts_who_is_inside_the_coachs_aim():
    aimed = session("AMRAP 10\n10 push-ups\nAim 6-8 rounds")
    found = group_outlook(aimed, {"Ilse": (rounds(5),), "Bo": (rounds(6),), "Tam": (rounds(9),)})
    assert found is not None
    assert found.inside == (1 if found.aim else 0)
    assert found.aim is not None


def test_there_is_none_where_nothing_is_expected_of_anybody():
    assert group_outlook(session("AMRAP 10\n10 push-ups"), {"Ilse": (None,), "Bo": ()}) is None


def test_of_a_part_with_a_cap_it_counts_who_will_be_through():
    capped = session("5 rounds for time, cap 12 min\n10 push-ups\n15 air squats")
    seconds = Outlook(forecast=Forecast(unit="s", low=600, expected=650, high=700))
    reps = Outlook(forecast=Forecast(unit="reps", low=90, expected=100, high=110))
    found = group_outlook(capped, {"Ilse": (seconds,), "Bo": (reps,), "Tam": (reps,), "Uli": ()})
    assert found is not None
    assert (found.unit, found.through) == ("reps", (1, 3))
    assert group_words(found) == [
        "I'd expect 1 of 3 to finish inside the cap, with some 100 repetitions for the rest."
    ]
    everybody = group_outlook(capped, {"Ilse": (seconds,)})
    assert group_words(everybody) == ["I'd expect everybody to finish inside the cap, in 10:50."]
