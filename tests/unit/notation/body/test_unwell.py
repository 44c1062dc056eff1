"""From what somebody feels unwell today."""

import pytest

from core.notation.body.unwell import unwell_from


@pytest.mark.parametrize(
    ("text", "cause"),
    [
        ("feeling rubbish, period cramps", "period"),
        ("is it ok to train with a cold?", "cold"),
        ("bit of a sore throat", "cold"),
        ("really tired today", "tired"),
        ("slept like crap", "tired"),
        ("I'm so hungover", "hangover"),
    ],
)
def test_the_cause_is_told(text, cause):
    assert unwell_from(text) == cause


@pytest.mark.parametrize(
    "text",
    [
        "fever and sore throat",
        "my legs are tired",
        "14:20, knackered",
        "it's cold outside",
        "was tired after the session",
    ],
)
def test_illness_the_past_and_other_things_are_none(text):
    assert unwell_from(text) is None
