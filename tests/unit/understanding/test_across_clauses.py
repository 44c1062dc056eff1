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


def kit(text):
    loads = ((one["act"], thing) for one in acts(text) for thing in one["equipment"])
    return [
        (act, thing["implement"], [float(load) for load in thing.get("loads_kg", ())]) for act, thing in loads
    ]


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("sold the 12 bell, got a 16 instead", [("lost", "kettlebell", [12]), ("got", "kettlebell", [16])]),
        ("bought a 20kg kb + sold the bench", [("got", "kettlebell", [20]), ("lost", "bench", [])]),
        (
            "oh and i got a 16 kg bell for my bday, and selling the 12",
            [("got", "kettlebell", [16]), ("lost", "kettlebell", [12])],
        ),
        ("not sharing dumbbell any more. ive a 10", [("has", "dumbbell", [10])]),
        ("upgraded the 16 to a 24kg kettlebell", [("lost", "kettlebell", [16]), ("got", "kettlebell", [24])]),
        ("broke the band, new one arrives friday", [("lost", "band", [])]),
    ],
)
def test_each_thing_comes_or_goes_by_the_verb_of_its_clause(text, told):
    assert kit(text) == told


def test_a_thing_that_came_hides_nothing_that_hurts():
    assert [one["act"] for one in acts("got a 16kg bell and my knee hurts")] == ["got", "hurt"]


def test_what_somebody_only_can_is_kept_however_it_is_said():
    (told,) = acts("can only do like 3 pushups lol")
    assert (told["act"], told["movement"], told["reps"]) == ("can", "push-up", 3)


def test_repetitions_in_front_of_several_lifts_are_of_all():
    told = acts("1rm squat 140 bench 100")
    assert [(one["movement"], one["load_kg"], one["reps"]) for one in told] == [
        ("back squat", 140, 1),
        ("bench press", 100, 1),
    ]


@pytest.mark.parametrize(
    ("said", "asked"),
    [
        (
            "remind me 30 min before class, and can somebody bring my thermos?",
            "can somebody bring my thermos?",
        ),
        ("7+12, is the boathouse open?", "is the boathouse open?"),
    ],
)
def test_a_question_beside_what_is_told_is_not_lost(said, asked):
    read = understand(Message(text=said))
    assert len(read.acts) == 1
    assert any(asked in one for one in read.unread)
