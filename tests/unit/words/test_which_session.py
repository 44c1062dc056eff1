"""Which of several sessions is meant is asked by names that tell them apart."""

from datetime import date

from bot.words.en.scores.taking import choice_words
from core.desk.scores.says import SessionChoice


def test_a_session_without_a_title_and_a_score_is_named_all_the_same():
    monday = date(2026, 3, 2)
    named = [
        SessionChoice(session=1, day=monday, title="Legs", like="7+9"),
        SessionChoice(session=2, day=monday, title=None, like="7+9"),
        SessionChoice(session=3, day=monday, title=None, like=""),
    ]
    assert [choice_words(one) for one in named] == [
        "Monday: Legs",
        "Monday: like 7+9",
        "Monday: without a title",
    ]
