"""The questions that may be open are a closed union, and what else is heard while one is open stands in one table."""

from datetime import UTC, datetime
from typing import get_args

import pytest

from core.desk.talk.asked import (
    ANSWERED_BY,
    BEFORE_ENTRY,
    KEPT_BY,
    KINDS,
    TAKEN_BESIDE,
    OfConsent,
    OfScore,
    Topic,
    asked_in,
)
from core.desk.talk.talking import ANSWERS
from core.scaling.values import Ask
from core.store.records import OpenQuestion
from core.understanding.acts import ACTS


def question(kind, refs):
    at = datetime(2026, 3, 3, 18, tzinfo=UTC)
    return OpenQuestion(chat_id=1, kind=kind, refs=refs, asked_at=at)


def test_every_question_that_may_be_open_has_somebody_who_takes_its_answer():
    assert set(ANSWERS) | set(map(str, Ask)) == KINDS


def test_every_topic_says_which_questions_keep_the_words():
    assert set(KEPT_BY) == set(get_args(Topic))
    assert all(kinds <= KINDS for kinds in KEPT_BY.values())


def test_what_answers_a_question_are_acts():
    assert set(ANSWERED_BY) <= KINDS
    assert KINDS - KEPT_BY["several"] == TAKEN_BESIDE
    assert all(names <= set(ACTS) for names in (*ANSWERED_BY.values(), BEFORE_ENTRY))


@pytest.mark.parametrize("topic", get_args(Topic))
def test_what_a_coach_asked_is_answered_by_all_that_is_about_the_visitor(topic):
    assert "coach" in KEPT_BY[topic] or topic in {"place", "class"}


def test_a_stored_question_is_read_as_what_it_is():
    assert asked_in(question("consent", {"group": 7})) == OfConsent(group=7)
    asked = asked_in(question("score", {"session": 3, "text": "7+12", "whose": True}))
    assert isinstance(asked, OfScore)
    assert asked.whose
