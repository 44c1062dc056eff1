"""What an athlete wants passed on to their coach, in their own words."""

import pytest

from core.notation.talk.for_coach import asks_for_own_words, read_for_coach


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("tell my coach I have a metal plate in my foot", "I have a metal plate in my foot"),
        ("Tell my coach: back on Friday!", "back on Friday!"),
        ("please tell the coach that stairs are hard for me", "stairs are hard for me"),
        ("let my coach know I'm at my sister's until Sunday", "I'm at my sister's until Sunday"),
        ("could you tell my coach about my new bike", "my new bike"),
        ("for the coach: I liked that one", "I liked that one"),
        ("For my coach - more of these, please", "more of these, please"),
        ("a note for my coach: two things\nfirst, thanks", "two things\nfirst, thanks"),
        ("pass this on to my coach: see you", "see you"),
        ("I twisted my knee, tell my coach", "I twisted my knee"),
        ("I can't come on Friday - please let my coach know", "I can't come on Friday"),
        ("back on Friday. tell Marit that please", "back on Friday"),
        ("tell Marit I'm back on Friday", "I'm back on Friday"),
    ],
)
def test_the_words_are_taken_as_they_were_written(text, words):
    assert read_for_coach(text, ["Marit"]) == words


@pytest.mark.parametrize(
    "text",
    [
        "tell my coach",
        "tell my coach to call me",
        "let my coach see what I spare",
        "what does my coach see?",
        "who tells my coach?",
        "my coach said 10 kg",
        "7+12",
        "7+12, tell my coach",
        "for time: 10 burpees",
        "",
    ],
)
def test_nothing_else_is_passed_on(text):
    assert read_for_coach(text) is None


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("my notes", True),
        ("Show me my notes for my coach", True),
        ("what did I tell my coach?", True),
        ("notes", False),
        ("tell my coach my notes are gone", False),
    ],
)
def test_own_words_are_asked_for(text, asked):
    assert asks_for_own_words(text) is asked
