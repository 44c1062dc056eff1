"""What is said for its own sake; how people say it is common practice, no source."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.notation.talk.small_talk import read_small_talk


@pytest.mark.parametrize(
    ("said", "talk"),
    [
        ("thanks, that was brutal but fun!", "enjoyed"),
        ("loved it!", "enjoyed"),
        ("great session today", "enjoyed"),
        ("that was so tough, thank you", "hard"),
        ("phew", "hard"),
        ("brutal!", "hard"),
        ("new PB!!", "proud"),
        ("I finally did it", "proud"),
        ("first time doing all rounds", "proud"),
        ("sorry I was late", "late"),
        ("sorry for the late reply", "late"),
        ("can't make it today", "away"),
        ("I missed the session yesterday", "away"),
        ("that sucked", "bad day"),
        ("worst session ever", "bad day"),
        ("good morning", "hello"),
        ("see you tomorrow", "bye"),
        ("haha nice", "cheerful"),
        ("\U0001f4aa\U0001f525", "cheerful"),
        ("thanks for everything", "thanks"),
    ],
)
def test_it_is_noticed_what_people_say(said, talk):
    assert read_small_talk(said) == talk


@pytest.mark.parametrize(
    "said",
    [
        "that was fun but my knee feels odd",
        "new PB: 100 kg",
        "is it hard?",
        "this is too hard",
        "that was great but I feel sick",
        "the first line is hard to read",
        "flurbs and gribbles",
        "\U0001f622",
        "a nice long walk for everybody please",
        "*",
        "",
    ],
)
def test_what_may_tell_something_is_left_to_the_other_readers(said):
    assert read_small_talk(said) is None


@given(st.text(max_size=200))
def test_any_text_is_read(text):
    read_small_talk(text)
