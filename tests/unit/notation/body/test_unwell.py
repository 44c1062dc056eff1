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
        ("slept 3 hours", "tired"),
        ("gave blood this morning", "blood"),
        ("I'm fasting today", "fasting"),
        ("just ate a huge lunch", "full"),
        ("vaccinated yesterday, arm sore", "jab"),
        ("its 38 degrees here", "heat"),
        ("-10 outside, can i run", "frost"),
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
        "6+15, 38 reps",
        "it was too hot, 4 rounds",
        "was tired after the session",
    ],
)
def test_illness_the_past_and_other_things_are_none(text):
    assert unwell_from(text) is None
