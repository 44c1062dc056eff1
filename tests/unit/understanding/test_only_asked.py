"""What is only asked or supposed is no telling: nothing of it may be taken without a yes."""

import pytest

from core.understanding.understand import understand
from core.understanding.values import Context, Message


def read(text, question="", **more):
    return understand(Message(text=text), Context(question=question, **more))


def names(acts):
    return {one.act for one in acts}


@pytest.mark.parametrize(
    ("text", "question"),
    [
        ("is it ok to do squats with 16 kg?", "ability"),
        ("should I do 20 push-ups?", "ability"),
        ("would a 12 kg dumbbell be enough?", "equipment"),
        ("do I need a barbell?", "equipment"),
        ("is 7+12 good?", ""),
        ("what if I only have a band", "equipment"),
        ("what if my knee hurts", ""),
        ("I might be at the gym tomorrow", ""),
        ("thinking of buying a 20 kg kettlebell", ""),
        ("muss ich 20 Liegestütze schaffen?", "ability"),
        ("¿debo hacer 20 flexiones?", "ability"),
    ],
)
def test_a_question_or_a_supposition_tells_nothing(text, question):
    told = read(text, question)
    facts = {"can", "has", "got", "scored", "hurt", "elsewhere", "spares", "weighs", "has_minutes"}
    assert not names(told.acts) & facts
    assert told.asks


@pytest.mark.parametrize(
    ("text", "act"),
    [
        ("i might have tweaked my knee", "hurt"),
        ("i have 2 dumbbells if that helps", "has"),
        ("7+12, is that good?", "scored"),
        ("can you make it easier?", "wants_easy"),
    ],
)
def test_what_tells_all_the_same_is_taken(text, act):
    assert act in names(read(text).acts)


def test_by_their_yes_it_is_told():
    assert names(read("I might be at the gym tomorrow").supposed) == {"elsewhere"}
    assert names(read("I might be at the gym tomorrow", as_told=True).acts) == {"elsewhere"}


@pytest.mark.parametrize(
    ("text", "act"),
    [
        ("is this too much for me?", "is_it_ok"),
        ("what if i can't finish", "does_less"),
        ("im scared of looking stupid", "worries"),
        ("whats on tomorrow", "whats_coming"),
    ],
)
def test_what_they_ask_and_what_frightens_them_is_heard(text, act):
    assert names(read(text).acts) == {act}


@pytest.mark.parametrize("text", ["we're expecting!! 12 weeks", "im expecting, 14 weeks"])
def test_a_pregnancy_is_told_in_many_ways(text):
    (told,) = (one for one in read(text).acts if one.act == "condition")
    assert told.limits == ("pregnancy",)


@pytest.mark.parametrize(
    "text", ["my wife is expecting", "we were expecting last year", "what if i'm pregnant"]
)
def test_what_is_anothers_past_or_supposed_is_no_pregnancy(text):
    assert "condition" not in names(read(text).acts)


@pytest.mark.parametrize(
    "text", ["the equipment is a barbell with 60 kg and a rack", "mine is a 16 kg kettlebell"]
)
def test_what_stands_behind_its_subject_tells(text):
    assert "has" in names(read(text, "equipment").acts)


@pytest.mark.parametrize("text", ["hi, is it ok to do squats", "ok so should I do 20 push-ups?"])
def test_a_hello_stands_before_a_question(text):
    assert read(text).asks
