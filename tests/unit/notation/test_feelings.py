"""How somebody is today, in words."""

import pytest

from core.notation.feelings import read_feeling


@pytest.mark.parametrize(
    ("text", "where"),
    [
        ("my legs are really sore today", "legs"),
        ("my quads are so sore", "legs"),
        ("I have sore arms", "arms"),
        ("I'm sore all over", "all over"),
        ("I'm sore", None),
        ("my legs are sore, arms too", None),
    ],
)
def test_where_somebody_is_sore_is_read_where_it_is_one_place(text, where):
    feeling = read_feeling(text)
    assert (feeling.kind, feeling.where) == ("sore", where)
