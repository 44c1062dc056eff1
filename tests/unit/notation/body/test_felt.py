"""How a session felt, in typed words.

The anchors are those of Foster et al. 2001; the rest is common practice, no source.
"""

import pytest

from core.notation.body.felt import effort_beside, effort_told_first, read_effort, read_hurt


@pytest.mark.parametrize(
    ("typed", "effort"),
    [
        ("8", 8),
        ("8/10", 8),
        ("rpe 8", 8),
        ("about an 8", 8),
        ("it was really hard like 9", 9),
        ("felt like a 7!", 7),
        ("10 all i had", 10),
        ("very hard", 7),
        ("easy", 2),
        ("9, felt awful", 9),
        ("9!! i was so red haha", 9),
        ("Six. My knee was fine.", 6),
        ("8 today, the burpees...", 8),
        ("8 and a half", None),
        ("7, not 8", None),
        ("5 push-ups short", None),
        ("9+20, 8", None),
        ("8:00", None),
        ("8+2", None),
        ("12", None),
        ("3 rounds, hard", None),
        ("used 10 kg, was hard", None),
        ("too hard", None),
        ("was it hard?", None),
    ],
)
def test_an_effort_is_told_from_a_score(typed, effort):
    assert read_effort(typed) == effort


@pytest.mark.parametrize(
    ("typed", "hurt"),
    [
        ("no", "no"),
        ("nothing hurt", "no"),
        ("Pain? no", "no"),
        ("just sore legs", "sore"),
        ("my legs are sore", "sore"),
        ("no, just sore", "sore"),
        ("yes my elbow", "pain"),
        ("a bit in my wrist", "pain"),
        ("no but my knee hurts", None),
        ("yes 7 rounds", None),
        ("no?", None),
    ],
)
def test_whether_anything_hurt(typed, hurt):
    assert read_hurt(typed) == hurt


def test_only_what_is_called_so_is_an_effort_at_any_time():
    assert effort_beside("RPE 9, shoulder niggled a bit") == 9
    assert effort_beside("9") is None


@pytest.mark.parametrize(
    ("told", "effort"),
    [
        ("very hard for me. shoulder pain more", 7),
        ("4 it was grand but the hip was barking after", 4),
        ("8, but my knee hurt", 8),
        ("7 rounds, my knee hurts", None),
        ("my knee hurts", None),
    ],
)
def test_an_effort_may_stand_before_what_hurts(told, effort):
    assert effort_told_first(told) == effort
