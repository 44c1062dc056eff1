"""Who is named: also where a name is a word, and nobody where a word only looks like a name."""

import pytest

from core.understanding.marks import mark

PEOPLE = ("Max", "Rose", "Wren")


def people(text, known=PEOPLE, *, small=True):
    return [one.value("person") for one in mark(text, known, names_small=small).marks if one.value("person")]


@pytest.mark.parametrize("text", ["max got 4 rounds", "hows max doing", "tell max to rest", "Max 7+3"])
def test_a_name_that_is_a_word_is_a_name_where_somebody_stands(text):
    assert people(text) == ["Max"]


def test_a_name_that_is_a_word_is_a_word_elsewhere():
    assert people("max 4 rounds today everyone") == []


def test_what_begins_a_sentence_is_nobody_unless_it_does_something():
    assert people("Odd minutes: 8 swings. Unreal.", None) == []
    assert people("Ilse 2 rounds less please", None) == ["Ilse"]


def test_a_word_of_another_language_is_a_name_in_this_one():
    assert people("easy week for anders", ("Anders", "Bo")) == ["Anders"]


@pytest.mark.parametrize("text", ["wrens knees cave in", "wren's knees cave in", "put wren's score in"])
def test_whose_something_is_is_named_however_it_is_typed(text):
    assert people(text) == ["Wren"]


def test_a_name_that_is_like_a_word_is_no_slip_of_it():
    assert people("toves knee is better", ("Tove", "Bo")) == ["Tove"]


def test_counts_of_calories_are_nobodys():
    assert people("12 cals row", ("Cal",)) == []
