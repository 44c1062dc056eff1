"""Two things told in one message: each is heard, by itself or by the whole, and nothing is lost between them."""

from itertools import cycle, permutations

import pytest

from core.desk.talk.each_clause import clauses_of
from core.desk.talk.understood import in_own_words, matter
from core.movements.lookup import catalogue
from core.notation.boards.session import read_session

SESSION = read_session(
    "Tuesday\nStrength: 5x5 deadlift @ 80/60\nAMRAP 15\n10 push-ups\n12 kettlebell swings @ 16/12 kg\n200 m run",
    catalogue(),
).session
# Each a matter of its own: none of them is told of any other.
MATTERS = (
    "remind me 30 min before",
    "my clock is New York",
    "my knee hurts",
    "got a 24 kg kettlebell",
    "sold my kettlebell",
    "slept badly",
    "when is class",
    "what's the rest",
    "can you swap the run for something indoors",
    "the push-ups are too hard",
    "how did I do",
    "I weigh 82",
    "I can do 12 pull-ups",
    "I'm away till sunday",
    "what is a deadlift",
    "undo that",
    "can I do the run on a treadmill",
    "I'm on blood thinners",
)
OF_NO_SCORE = (
    "remind me 30 min before",
    "sold my kettlebell",
    "when is class",
    "what's the rest",
    "can you swap the run for something indoors",
    "I weigh 82",
    "I can do 12 pull-ups",
    "I'm away till sunday",
    "what is a deadlift",
)


def heard(text: str) -> list[str]:
    apart = [one.words for one in clauses_of(text, SESSION)]
    return apart or [act.text for act in matter(in_own_words(text, SESSION))]


def test_of_two_matters_none_is_lost():
    joints = cycle((", ", " and ", ". ", " but "))
    told = [(one, other, next(joints)) for one, other in permutations(MATTERS, 2)]
    lost = [
        f"{one}{joint}{other}"
        for one, other, joint in told
        if not all(any(part in words for words in heard(f"{one}{joint}{other}")) for part in (one, other))
    ]

    assert lost == []


@pytest.mark.parametrize("beside", OF_NO_SCORE)
def test_a_score_is_taken_beside_what_is_no_part_of_it(beside: str):
    for text in (f"6+15, {beside}", f"{beside}, 6+15", f"6+15 and {beside}"):
        assert any(words.startswith("6+15") for words in heard(text)), text
        assert any(beside in words and "6+15" not in words for words in heard(text)), text


@pytest.mark.parametrize(
    "text", ["6+15, the push-ups were too hard", "6+15, rpe 8", "6+15 scaled, only had a 12"]
)
def test_what_is_told_of_a_score_stays_with_it(text: str):
    assert clauses_of(text, SESSION) == ()


def test_minutes_alone_beside_a_question_are_no_score():
    told = clauses_of("20 min. what do i do", SESSION)

    assert [one.words for one in told] == ["only 20 min.", "what do i do"]
    assert clauses_of("20 min, felt hard", SESSION) == ()


def test_what_is_for_the_coach_is_passed_on_with_all_behind_it():
    told = clauses_of("what's the rest, tell my coach I liked it, and I weigh 82", SESSION)

    assert [one.words for one in told][-1] == "tell my coach I liked it, and I weigh 82"
