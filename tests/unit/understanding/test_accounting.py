"""Every number and every movement of a coach's message is in an order of whom it stands beside, or is quoted."""

import re
from itertools import product

import pytest

from core.understanding.of_people import understand_of_people
from core.understanding.ordering import told_in
from core.understanding.values import Context, Message

PEOPLE = ("Ilse", "Bo", "Siri")
# What of its movements and numbers an order says; in other words it may be anything.
SAID = {"row": "row", "burpee": "burpee", "run": "run", "swing": "swing", "plank": "plank"}
ORDERS = (
    "no rows",
    "half the burpees",
    "5 runs not 6",
    "rows instead of planks",
    "no swings this week",
    "12 kg",
    "15 min easy no clock",
    "no burpees and 8 rows",
    "lighter",
)
WISHES = (
    "no burpees for {} this week",
    "hold {}",
    "easy week for {}",
    "tell {} well done",
    "{} got 7+12",
    "{} DNF",
    "how is {} doing",
    "why did {} get rows",
    "{}: max 12 kg",
    "leave {} out till friday",
    "{} needs lighter swings",
    "note for {}: rounds the back in deadlifts",
)
NUMBERS = re.compile(r"\d+")


def accounted(told, words):
    """The numbers and movements of a message that nothing of what came of it holds."""
    orders = [one.model_dump(exclude={"act", "text", "person"}) for one in told.orders]
    values = [value for one in orders for value in one.values()]
    held = " ".join(f"{value:g}" if isinstance(value, float) else str(value) for value in values)
    held += " ".join((*told.left, *told.why))
    names = [name for name in SAID if name in words]
    return [one for one in (*NUMBERS.findall(words), *names) if one not in held]


@pytest.mark.parametrize(("of_ilse", "of_bo"), [*product(ORDERS, ORDERS)])
def test_nothing_that_is_said_of_two_is_lost_or_given_to_the_other(of_ilse, of_bo):
    words = f"Ilse {of_ilse}, Bo {of_bo}"
    told = told_in(words, PEOPLE)
    if not told.orders:
        return
    assert accounted(told, words) == []
    for one in told.orders:
        theirs = of_ilse if one.person == "Ilse" else of_bo
        assert one.movement is None or one.movement in theirs
        assert one.amount is None or f"{one.amount:g}" in theirs


@pytest.mark.parametrize(("of_one", "of_other"), [*product(WISHES, WISHES)])
def test_in_a_reading_every_wish_is_an_act_or_unread_with_whom_it_is_of(of_one, of_other):
    words = f"{of_one.format('Ilse')}, and {of_other.format('Bo')}"
    found = understand_of_people(Message(text=words, role="coach"), Context(people=PEOPLE))
    for name in ("Ilse", "Bo"):
        acts = [
            one for one in found.acts if getattr(one, "person", None) in {name, None} and name in one.text
        ]
        assert acts or any(name in one for one in found.unread), found


def test_who_is_not_there_is_unread_by_name():
    found = understand_of_people(
        Message(text="no burpees for Zoe and Ilse this week", role="coach"), Context(people=PEOPLE)
    )
    assert found.unread == ("Zoe",)
    assert [one.person for one in found.acts] == ["Ilse"]


@pytest.mark.parametrize("reason", ["he's had a cold", "he moans", "cause he moans", "he has a bad disc"])
def test_a_reason_is_no_order_and_hinders_none(reason):
    told = told_in(f"Bo no rows {reason}", PEOPLE)
    assert [(one.person, one.step, one.movement) for one in told.orders] == [("Bo", "out", "row")]
    assert told.left == ()


def test_what_is_told_of_a_body_is_told_apart():
    told = told_in("Ilse has a bad disc, Siri is pregnant. go easy on them all week", PEOPLE)
    assert {(one.person, one.step, one.day) for one in told.orders} == {
        ("Ilse", "easier", "this week"),
        ("Siri", "easier", "this week"),
    }
    assert told.why_of("Ilse") == "Ilse has a bad disc"
    assert told.why_of("Siri") == "Siri is pregnant"


def test_a_body_that_is_told_of_beside_somebody_elses_order_does_nothing_to_either():
    told = told_in("Bo has a dodgy disc, Siri no swings", PEOPLE)
    assert [one.person for one in told.orders] == ["Siri"]
    assert told.why_of("Bo") == "Bo has a dodgy disc"
    assert told.why_of("Siri") == ""


@pytest.mark.parametrize(
    ("words", "step", "limit", "until"),
    [
        ("no jumping for Bo ever", "spare", "no-jumping", "always"),
        ("Bo: nothing overhead till monday", "spare", "no-overhead", "monday"),
        ("Bo normal again, as written", "normal", None, None),
    ],
)
def test_a_coach_leaves_out_what_is_in_many_lines_or_takes_all_back(words, step, limit, until):
    (order,) = told_in(words, PEOPLE).orders
    assert (order.step, order.limit, order.until) == (step, limit, until)
