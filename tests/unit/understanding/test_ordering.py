"""What a coach orders for somebody in words: which line, and what becomes of it."""

import pytest

from core.understanding.ordering import orders_in, strangers_in, told_in

PEOPLE = ("Tove", "Lene", "Bo", "Sam", "Nina")


def told(text, looked_at=None):
    shown = {"person", "step", "movement", "to", "amount", "day", "until"}
    orders = orders_in(text, PEOPLE, looked_at)
    return [one.model_dump(include=shown, exclude_none=True) for one in orders]


@pytest.mark.parametrize(
    ("text", "order"),
    [
        ("no burpees for Tove this week", {"step": "out", "movement": "burpee", "day": "this week"}),
        ("Tove can skip the run", {"step": "out", "movement": "run"}),
        ("tove should do rows, not planks", {"step": "other", "movement": "plank", "to": "row"}),
        ("swap the plank for dead bugs for Tove", {"step": "other", "movement": "plank", "to": "dead bug"}),
        ("no planks for Tove, rows instead", {"step": "other", "movement": "plank", "to": "row"}),
        ("give Tove bodyweight only fri", {"step": "bare", "day": "friday"}),
        ("Tove lighter please", {"step": "easier"}),
        ("Tove needs lighter thrusters until friday", {"step": "easier", "movement": "thruster", "until": "friday"}),
        ("push Tove a bit", {"step": "harder"}),
        ("give Tove 8 push-ups instead", {"step": "amount", "movement": "push-up", "amount": 8}),
        ("Tove should use 12 kg for the swings", {"step": "load", "movement": "swing", "amount": 12}),
        ("2 burpees less for Tove", {"step": "less", "movement": "burpee", "amount": 2}),
        ("Tove may do deadlifts again", {"step": "allowed", "movement": "deadlift"}),
        ("Tove is back from monday", {"step": "away", "until": "sunday"}),
        ("Tove ok again", {"step": "back"}),
        ("give Tove a break", {"step": "away"}),
        ("Tove needs a break til friday", {"step": "away", "until": "friday"}),
        ("Tove does 3 of the 400s as walks", {"step": "rounds"}),
        ("can Tove have fewer burpees", {"step": "fewer", "movement": "burpee"}),
        ("Tove: no deadlifts from now on", {"step": "out", "movement": "deadlift", "until": "always"}),
        ("take Tove off burpees this month", {"step": "out", "movement": "burpee", "until": "month"}),
        ("no runs for Tove, rows instead", {"step": "other", "movement": "run", "to": "row"}),
        ("Tove skips tomorrow", {"step": "away", "day": "tomorrow"}),
        ("Tove to rest tomorrow", {"step": "rest", "day": "tomorrow"}),
        ("Tove no run, row 250 m instead", {"step": "other", "movement": "run", "to": "row"}),
        ("add 5 pull-ups for Tove", {"step": "more", "movement": "pull-up", "amount": 5}),
        ("Tove out till friday", {"step": "away", "until": "friday"}),
        ("Tove: swings -> deadlifts", {"step": "other", "movement": "swing", "to": "deadlift"}),
        ("Tove: max 12 kg", {"step": "at_most", "amount": 12, "until": "always"}),
        ("Tove max 12 kg this week", {"step": "at_most", "amount": 12, "day": "this week"}),
        ("Tove is out till the doctor has seen her", {"step": "rest", "until": "always"}),
    ],
)  # fmt: skip
def test_an_order_tells_the_line_and_what_becomes_of_it(text, order):
    assert told(text) == [{"person": "Tove"} | order]


def test_everybody_who_is_named_is_meant():
    assert [one["person"] for one in told("no burpees for Tove and Bo")] == ["Tove", "Bo"]


def test_her_and_them_are_who_was_looked_at():
    assert told("give her chair dips instead of push-ups", "Nina") == [
        {"person": "Nina", "step": "other", "movement": "push-up", "to": "chair dip"}
    ]
    assert told("give her chair dips instead of push-ups") == []


@pytest.mark.parametrize(
    "text",
    [
        "Tove skipped the run",  # what she did
        "Bo got 6 rounds and 3 reps",
        "Bo has no rower",  # what he has
        "Nina rounds her back in deadlifts",  # how she moves
        "what does Bo get instead of burpees?",
        "go easy on Sam's shoulder",  # his body is his to tell
        "no class for Bo tomorrow",
        "no burpees this week",
    ],
)
def test_what_was_done_is_there_or_hurts_is_no_order(text):
    assert told(text) == []


def test_a_time_told_once_is_of_all_in_one_breath():
    assert told("no burpees and no swings for Bo this week") == [
        {"person": "Bo", "step": "out", "movement": "burpee", "day": "this week"},
        {"person": "Bo", "step": "out", "movement": "swing", "day": "this week"},
    ]


def test_each_of_its_own_movement_is_an_order_of_its_own():
    assert told("skip burpees for Bo and make swings lighter") == [
        {"person": "Bo", "step": "out", "movement": "burpee"},
        {"person": "Bo", "step": "easier", "movement": "swing"},
    ]


@pytest.mark.parametrize(
    ("text", "tam"),
    [
        ("give Bo 8 burpees, Sam 5", {"step": "amount", "movement": "burpee", "amount": 5}),
        ("half the burpees for Bo, Sam none", {"step": "out", "movement": "burpee"}),
        (
            "no burpees for Bo this week, same for Sam",
            {"step": "out", "movement": "burpee", "day": "this week"},
        ),
    ],
)
def test_a_word_or_a_number_for_the_next_is_of_what_was_told_before(text, tam):
    assert told(text)[-1] == {"person": "Sam"} | tam


def test_what_tells_why_stands_in_the_way_of_nothing():
    words = "Tove's got a dodgy back so no deadlifts, goblet squats instead, till friday"
    [order] = told(words)
    assert order | {"movement": "deadlift", "to": "goblet squat", "until": "friday"} == order
    assert told_in(words, PEOPLE).why_of("Tove") == "Tove's got a dodgy back"


@pytest.mark.parametrize(
    ("text", "strangers"),
    [
        ("no burpees for Zoe and Bo this week", ("Zoe",)),
        ("Zoe and Bo no burpees", ("Zoe",)),
        ("easy week for zoe", ("Zoe",)),
        ("Zoe: max 12 kg", ("Zoe",)),
        ("No burpees for Bo on Friday", ()),
        ("Easy week for everybody", ()),
        ("give Bo Rows", ()),
    ],
)
def test_who_is_nobody_of_theirs_is_told_apart(text, strangers):
    assert strangers_in(text, PEOPLE) == strangers


def test_no_and_no_are_two():
    assert [one["movement"] for one in told("no burpees no runs for Bo")] == ["burpee", "run"]


def test_behind_a_number_that_is_given_the_next_is_given_too():
    assert [(one["movement"], one["amount"]) for one in told("Bo only 3 burpees and 10 swings")] == [
        ("burpee", 3),
        ("swing", 10),
    ]


def test_each_is_away_until_the_day_that_is_told_of_them():
    away = told("Tove out til wed, Bo til fri and Sam on monday")
    assert [(one["person"], one.get("until"), one.get("day")) for one in away] == [
        ("Tove", "wednesday", None),
        ("Bo", "friday", None),
        ("Sam", None, "monday"),
    ]


def test_a_time_that_is_told_once_is_of_all_who_are_named():
    assert {one["until"] for one in told("Tove and Bo out til wed")} == {"wednesday"}


def test_so_many_of_them_are_of_what_was_ordered_before():
    last = told("something easier than burpees for Tove, Bo only 5 of them")[-1]
    assert last == {"person": "Bo", "step": "amount", "movement": "burpee", "amount": 5}


@pytest.mark.parametrize("why", ["her knee's bad", "her wrist is sore", "his back hurts"])
def test_what_is_told_of_a_body_behind_an_order_is_why(why):
    assert told_in(f"no squats for Tove {why} today", PEOPLE).why_of("Tove") == f"{why} today"


def test_what_is_told_of_one_is_told_of_nobody_else():
    found = told_in("Tove is pregnant, go easy on her. Bo's back is sore so no swings", PEOPLE)
    assert found.why_of("Tove") == "Tove is pregnant"
    assert "Tove" not in found.why_of("Bo")
    assert "pregnant" not in found.why_of("Bo")
