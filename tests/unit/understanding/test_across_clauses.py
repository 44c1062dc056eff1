"""What belongs together across clauses, and what doesn't."""

import pytest

from core.understanding.acts import document
from core.understanding.marks import mark
from core.understanding.slots.fill import fill
from core.understanding.slots.stretch import Stretch
from core.understanding.understand import understand
from core.understanding.values import Context, Message

PEOPLE = ("Bo", "Ilse", "Tam", "Kofi")


def acts(text, question="", *, role="athlete", people=None):
    read = understand(Message(text=text, role=role), Context(question=question, people=people))
    return [document(one) for one in read.acts]


def test_what_stands_in_a_list_belongs_to_what_began_it():
    told = acts("Sold the bench. Bought a sled and a 20 lb vest.")
    assert [one["act"] for one in told] == ["lost", "got"]
    assert [one["implement"] for one in told[1]["equipment"]] == ["sled", "weight vest"]


def test_a_refused_day_is_not_joined():
    marked = mark("sign me up for tuesday and not for thursday")
    told = fill("joins_class", Stretch(marked, 0, len(marked.words), Context()))
    assert [one.day for one in told] == ["tuesday"]


def test_quiet_hours_are_those_that_a_till_joins():
    (told,) = acts("don't write me before 7, nothing from 10 at night till 7")
    assert (told["from"], told["to"]) == ("22:00", "07:00")


def test_a_session_is_not_posted_on_the_day_of_what_is_told_next():
    told = acts("Post at 6:00. Friday's class is off.", role="coach", people=PEOPLE)
    assert [(one["act"], one.get("when")) for one in told] == [("post", "06:00"), ("class_off", None)]


def test_names_of_the_group_may_be_typed_small():
    told = acts("bo 6+3, tam 5+11", role="coach", people=PEOPLE)
    assert [(one["person"], one["score"]["rounds"]) for one in told] == [("Bo", 6), ("Tam", 5)]


@pytest.mark.parametrize(
    ("text", "place"), [("somewhere wet. Galway", "Galway"), ("Vivo en Las Palmas, ya sabes", "Las Palmas")]
)
def test_a_place_is_the_words_that_stand_together(text, place):
    assert [one["place"] for one in acts(text, "zone")] == [place]
