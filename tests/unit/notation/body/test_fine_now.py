"""What plays up at times and is fine now is nothing to spare today."""

import pytest

from core.notation.body.complaints import is_fine_now


@pytest.mark.parametrize(
    "words",
    [
        "dodgy left achilles sometimes but fine atm",
        "bad knee, though it's ok at the moment",
        "my shoulder plays up now and then but is good right now",
        "old ankle sprain, all fine now",
    ],
)
def test_it_is_fine_now(words):
    assert is_fine_now(words)


@pytest.mark.parametrize(
    "words",
    [
        "my left knee hurts, otherwise all fine now",
        "dodgy achilles",
        "knee is not good at the moment",
        "my back hurts today",
        "my shoulder is bad but not ok at the moment",
        "sore wrist but everything else is fine now",
    ],
)
def test_it_is_to_be_spared(words):
    assert not is_fine_now(words)
