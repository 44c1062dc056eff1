"""Questions about what is kept and who sees it; how people ask is common practice, no source."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.notation.talk.privacy import read_privacy_question


@pytest.mark.parametrize(
    ("said", "topic"),
    [
        ("what do you do with my data?", "all"),
        ("What are you going to do with my information", "all"),
        ("what do you know about me?", "all"),
        ("is this private?", "all"),
        ("why do you need this", "all"),
        ("why do you want to know that?", "all"),
        ("why do you ask?", "all"),
        ("who can see this?", "all"),
        ("is my data safe", "all"),
        ("do you share my data?", "all"),
        ("privacy?", "all"),
        ("who sees my weight?", "weight"),
        ("can my coach see my weight", "weight"),
        ("Does anyone else see what I weigh? who can see my weight", "weight"),
        ("can the coach see my injuries?", "spared"),
        ("who knows about my pregnancy?", "spared"),
        ("who sees my scores?", "scores"),
        ("can others see my results", "scores"),
    ],
)
def test_what_is_asked_about(said, topic):
    assert read_privacy_question(said) == topic


@pytest.mark.parametrize(
    "said",
    [
        "who is in today?",
        "who hasn't reported?",
        "7+12",
        "what do you have to train with?",
        "who sees you on Tuesday?",
        "I see my weight going down",
        "is it a safe movement?",
        "is it safe to squat?",
        "is my knee safe?",
        "can everybody see the timer? does it time itself",
        "",
    ],
)
def test_other_questions(said):
    assert read_privacy_question(said) is None


@given(st.text(max_size=300))
def test_any_text_is_read(text):
    assert read_privacy_question(text) in {None, "all", "weight", "spared", "scores"}
