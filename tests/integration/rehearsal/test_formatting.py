"""HTML as the platform reads it (core.telegram.org/bots/api#html-style)."""

from html import escape

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.rehearsal.errors import Declined
from bot.rehearsal.formatting import commands_and_mentions, part, read_html, to_html, utf16_length


def entities(source: str) -> list[tuple[str, int, int]]:
    return [(one["type"], one["offset"], one["length"]) for one in read_html(source).entities]


@pytest.mark.parametrize(
    ("source", "text", "expected"),
    [
        ("plain", "plain", []),
        ("a <b>bold</b> word", "a bold word", [("bold", 2, 4)]),
        ("🦄 <i>after</i>", "🦄 after", [("italic", 3, 5)]),
        ("<b>out <i>in</i></b>", "out in", [("bold", 0, 6), ("italic", 4, 2)]),
        ("<STRONG>x</strong>", "x", [("bold", 0, 1)]),
        ("<b>empty</>", "empty", [("bold", 0, 5)]),
        ("<code>1 &lt; 2 &amp;&amp; 3 &gt; 2 &quot;</code>", '1 < 2 && 3 > 2 "', [("code", 0, 16)]),
        ("&#128512;&#x1F600;", "😀😀", []),
        ("&nbsp; &unknown; &#0; &#xD800; & stays", "&nbsp; &unknown; &#0; &#xD800; & stays", []),
        ("<b></b>nothing", "nothing", []),
        ("  <u>space around</u>  ", "space around", [("underline", 0, 12)]),
        ("<b> x </b>", "x", [("bold", 0, 1)]),
        (
            '<span class="tg-spoiler">s</span><tg-spoiler>t</tg-spoiler>',
            "st",
            [("spoiler", 0, 1), ("spoiler", 1, 1)],
        ),
        ("<blockquote expandable>q</blockquote>", "q", [("expandable_blockquote", 0, 1)]),
        ("<a>no address</a>", "no address", []),
        ("1 > 0", "1 > 0", []),
    ],
)
def test_marks_become_entities_in_utf16_units(source, text, expected):
    assert read_html(source).text == text
    assert entities(source) == expected


@pytest.mark.parametrize("quote", ['"', "'", ""])
def test_a_link_keeps_its_address(quote):
    [entity] = read_html(f"<a href={quote}https://example.org/?a=1{quote}>here</a>").entities
    assert entity == {"type": "text_link", "url": "https://example.org/?a=1", "offset": 0, "length": 4}


@pytest.mark.parametrize(
    ("source", "reason"),
    [
        ("a < b", "Unclosed start tag at byte offset 2"),
        ("a <3 b> c", 'Unsupported start tag "3" at byte offset 2'),
        ("é <h1>x</h1>", 'Unsupported start tag "h1" at byte offset 3'),
        ("<b>x", 'Can\'t find end tag corresponding to start tag "b"'),
        ("x</b>", "Unexpected end tag at byte offset 1"),
        ("<b>x</i>", 'Unmatched end tag at byte offset 4, expected "</b>", found "</i>"'),
        ("<b>x</b", "Unclosed end tag at byte offset 4"),
        ("<span>x</span>", 'Tag "span" must have class "tg-spoiler" at byte offset 0'),
        ("line<br>line", 'Unsupported start tag "br" at byte offset 4'),
    ],
)
def test_what_the_platform_cannot_read_is_refused_in_its_words(source, reason):
    with pytest.raises(Declined) as refused:
        read_html(source)
    assert (refused.value.code, refused.value.description) == (
        400,
        f"Bad Request: can't parse entities: {reason}",
    )


WORDS = st.text(st.sampled_from('ab é🦄<>&"\n'), min_size=1).map(lambda text: escape(text, quote=False))
TAGS = st.sampled_from(["b", "i", "u", "code"])
MARKUP = st.recursive(
    WORDS,
    lambda inner: st.builds("<{0}>{1}</{0}>".format, TAGS, inner) | st.tuples(inner, inner).map("".join),
    max_leaves=8,
)


@given(MARKUP)
def test_writing_what_was_read_reads_the_same(source):
    text, found = read_html(source)
    again = read_html(to_html(text, found))
    assert again.text == text

    def by_place(one):
        return one["offset"], -one["length"], one["type"]

    assert sorted(again.entities, key=by_place) == sorted(found, key=by_place)


@given(MARKUP)
def test_every_entity_lies_within_the_text(source):
    text, found = read_html(source)
    assert all(0 <= one["offset"] < one["offset"] + one["length"] <= utf16_length(text) for one in found)


def test_commands_and_names_are_marked_by_the_platform_itself():
    text = "🦄 /board@bellwether_bot for @ilse_rows not a/b nor a@b"
    assert [(one["type"], part(text, one)) for one in commands_and_mentions(text)] == [
        ("bot_command", "/board@bellwether_bot"),
        ("mention", "@ilse_rows"),
    ]
