"""Long texts become several messages."""

from hypothesis import given
from hypothesis import strategies as st

from bot.rehearsal.formatting import read_html
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
    parts = [read_html(part).text for part in split(escape(text), limit)]

    assert all(length(part) <= limit for part in parts)
    letters = [letter for letter in text if not letter.isspace()]
    assert [letter for part in parts for letter in part if not letter.isspace()] == letters


MARKED = st.recursive(
    st.text("ab <&\U0001f600\n", max_size=60).map(escape),
    lambda inner: st.tuples(
        st.sampled_from(["b", "i", "blockquote", "code"]), st.lists(inner, max_size=4).map("".join)
    ).map(lambda pair: f"<{pair[0]}>{pair[1]}</{pair[0]}>"),
    max_leaves=30,
)


@given(st.lists(MARKED, max_size=12).map("".join), st.integers(10, 80))
def test_every_letter_keeps_its_markup_wherever_it_is_cut(text, limit):
    def told(parts):
        """Each letter with the markup it stands in."""
        return [
            (
                letter,
                frozenset(
                    one["type"] for one in entities if one["offset"] <= at < one["offset"] + one["length"]
                ),
            )
            for said, entities in map(read_html, parts)
            for at, letter in enumerate(said.encode("utf-16-le").decode("utf-16-le", "surrogatepass"))
            if not letter.isspace()
        ]

    plain = text.replace("\U0001f600", "o")  # so that places count alike

    assert told(split(plain, limit)) == told([plain])


def test_a_long_fold_is_closed_in_one_message_and_opened_in_the_next():
    folded = "<blockquote expandable>" + "\n".join(f"line {n}" for n in range(1000)) + "</blockquote>"

    parts = split(f"<b>What counts</b>\n{folded}")

    assert len(parts) == 3
    assert all(read_html(part).entities for part in parts)


def test_a_message_has_no_more_entities_than_the_platform_takes():
    parts = split(" ".join(f"<b>{n}</b>" for n in range(450)))

    assert [len(read_html(part).entities) for part in parts] == [100, 100, 100, 100, 50]


def test_an_edit_is_shortened_and_says_so():
    text = "\n".join(f"line {number}" for number in range(1000))

    short = shorten(text)

    assert length(short) <= 4096
    assert short.endswith("…")
