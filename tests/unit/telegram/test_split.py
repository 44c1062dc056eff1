"""Long texts become several messages."""

import html

from hypothesis import given
from hypothesis import strategies as st

from bot.telegram.split import shorten, split
from bot.words.text import escape


def length(text):
    return len(text.encode("utf-16-le")) // 2


def test_a_text_that_fits_stays_whole():
    assert split("one\n\ntwo") == ["one\n\ntwo"]


def test_a_long_text_is_cut_between_lines():
    lines = [f"line {number}" for number in range(1000)]

    parts = split("\n".join(lines))

    assert len(parts) == 3
    assert "\n".join(parts).split("\n") == lines


@given(st.text(max_size=3000), st.integers(20, 200))
def test_no_part_is_too_long_and_no_letter_is_lost(text, limit):
    parts = split(escape(text), limit)

    assert all(length(part) <= limit for part in parts)
    letters = [letter for letter in text if not letter.isspace()]
    assert [letter for part in parts for letter in html.unescape(part) if not letter.isspace()] == letters


def test_an_edit_is_shortened_and_says_so():
    text = "\n".join(f"line {number}" for number in range(1000))

    short = shorten(text)

    assert length(short) <= 4096
    assert short.endswith("…")
