"""A coach writes whose score it is."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.notation.people import cut_at_names, name_in_front, words_to_several
from core.notation.told_of_each import told_of_each

NAMES = ("Ilse Brandt", "Bo", "Tam", "Tam Two", "Anna Berg", "Anna Lund")


@pytest.mark.parametrize(
    ("text", "name", "rest"),
    [
        ("Ilse 7+12", "Ilse Brandt", "7+12"),
        ("ilse brandt: 8:43", "Ilse Brandt", "8:43"),
        ("score for Bo: 7 rounds", "Bo", "7 rounds"),
        ("Bo did 6+1", "Bo", "6+1"),
        ("can you add Bo's score: 6+1", "Bo", "6+1"),
        ("put in a score for Bo: 6+1", "Bo", "6+1"),
        ("Tam Two 5+0", "Tam Two", "5+0"),
        ("Bo's score: 5+0", "Bo", "5+0"),
    ],
)
def test_the_name_in_front_is_found(text, name, rest):
    assert name_in_front(text, NAMES) == (name, rest)


@pytest.mark.parametrize("text", ["7+12", "Bob 7+12", "Anna 7+12", "Bo", "", "see you, Bo"])
def test_no_name_is_made_up(text):
    assert name_in_front(text, NAMES) is None


@given(st.text(max_size=60), st.lists(st.text(max_size=10), max_size=4))
def test_only_names_of_the_group_come_back(text, names):
    found = name_in_front(text, names)
    assert found is None or found.name in names


@pytest.mark.parametrize(
    ("text", "names", "word"),
    [
        ("tell Ilse n Bo theyre flying", ("Ilse", "Bo"), "you are flying"),
        ("tell Ilse and Bo to rest", ("Ilse", "Bo"), "Please rest"),
        ("tell Ilse that Bo is in", (), ""),
        ("tell Ilse well done", (), ""),
    ],
)
def test_a_word_to_several_goes_to_each(text, names, word):
    found = words_to_several(text, ("Ilse", "Bo"))
    assert tuple(one.name for one in found) == names
    assert {one.rest for one in found} <= {word}


@pytest.mark.parametrize(
    ("text", "pieces"),
    [
        ("Ilse got 5x5 at 32 and Bo 14:20", ("Ilse got 5x5 at 32", "Bo 14:20")),
        ("Ilse 15:10, Bo 14:20 scaled", ("Ilse 15:10", "Bo 14:20 scaled")),
        ("Ilse 7+12\nBo didn't finish", ("Ilse 7+12", "Bo didn't finish")),
        ("Ilse and Bo 14:20", ("Ilse and Bo 14:20",)),
        ("Ilse 7+12 with the bell of Bo", ("Ilse 7+12 with the bell of Bo",)),
    ],
)
def test_what_is_told_of_several_is_cut_at_their_names(text, pieces):
    assert cut_at_names(text, ("Ilse", "Bo")) == pieces


def test_a_score_is_of_whom_it_stands_with_and_not_of_whoever_did_great():
    def numbers(words):
        return any(one.isdigit() for one in words)

    names = ("Bo", "Tove", "Cal")
    assert cut_at_names("Bo and Tove did great, Cal 12:40", names, numbers) == ("Cal 12:40",)
    assert cut_at_names("Tove was great today, Bo 12:50", names, numbers) == ("Bo 12:50",)
    assert cut_at_names("Bo and Tove 14:20", names, numbers) == ("Bo and Tove 14:20",)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("Bo 3+2, Cal 6+20", [("Bo", "3+2"), ("Cal", "6+20")]),
        ("Bo got 7+12, Ilse 6+3 and Cal DNF", [("Bo", "7+12"), ("Ilse", "6+3"), ("Cal", "DNF")]),
        ("scores:\n- Bo 14:20\n- Ilse: 12:10", [("Bo", "14:20"), ("Ilse", "12:10")]),
        ("Bo and Cal 5 rounds each", [("Bo", "5 rounds"), ("Cal", "5 rounds")]),
        ("Ilse 5 rounds, scaled, Bo 4+1", [("Ilse", "5 rounds, scaled"), ("Bo", "4+1")]),
        ("Tove 4+1; bo 3", [("Tove", "4+1"), ("Bo", "3")]),
        ("add Bo's score 12+3 and Cal's 10", [("Bo", "12+3"), ("Cal", "10")]),
        ("put Bo down as 16:20 and Cal as 19:10", [("Bo", "16:20"), ("Cal", "19:10")]),
        ("put down 12+3 for Bo and 10 for Cal", [("Bo", "12+3"), ("Cal", "10")]),
        ("note down Bo 14:20, Ilse 15", [("Bo", "14:20"), ("Ilse", "15")]),
        ("Bo 3+2", []),
        ("Bo 3+2, Cal 6+20 and post it", []),
        ("hold Bo, Cal 6+20", []),
    ],
)
def test_what_is_told_of_each_of_several_is_theirs_and_nothing_else_is_swallowed(text, told):
    def stranger(words):
        return name_in_front(words, ("Tove",))

    assert [tuple(one) for one in told_of_each(text, ("Ilse", "Bo", "Cal"), stranger)] == told


def test_behind_a_number_the_next_name_begins_its_own():
    told = told_of_each("Ilse 4+3 scaled Bo 5", ("Ilse", "Bo"), lambda _: None)
    assert [tuple(one) for one in told] == [("Ilse", "4+3 scaled"), ("Bo", "5")]
