"""A post taken back in words; how coaches type it is common practice, no source."""

import pytest

from core.notation.withdrawals import says_withdraw


@pytest.mark.parametrize(
    "said",
    [
        "withdraw today's session",
        "withdraw Tuesday",
        "Delete the session please",
        "remove that post from the group",
        "take the session down",
        "oops, I posted that by mistake",
        "cancel yesterday's session",
        "the last post was a mistake",
        "unpost it",
    ],
)
def test_a_post_is_taken_back(said):
    assert says_withdraw(said)


@pytest.mark.parametrize(
    "said",
    [
        "delete my score",
        "cancel today's class",
        "remove the push-ups from the session",
        "delete it",
        "can I withdraw a session?",
        "cancel",
        "post it tomorrow at 7",
    ],
)
def test_other_wishes_are_none(said):
    assert not says_withdraw(said)
