from datetime import timedelta

import httpx
import pytest
from telegram.error import (
    BadRequest,
    ChatMigrated,
    EndPointNotFound,
    Forbidden,
    InvalidToken,
    NetworkError,
    RetryAfter,
    TelegramError,
    TimedOut,
)

from bot.delivery.verdicts import (
    Gone,
    Moved,
    NotSent,
    NotTaken,
    Rejected,
    Sent,
    TooFast,
    TooLate,
    Unknown,
    Unreachable,
    accepted,
    judge,
)


def caused_by(error, cause):
    error.__cause__ = cause
    return error


def test_a_message_is_sent_with_its_id():
    assert accepted({"message_id": 7, "chat": {}}) == Sent(7)


def test_an_answered_press_is_sent_without_an_id():
    result = True
    assert accepted(result) == Sent(None)


@pytest.mark.parametrize("cause", [httpx.ConnectTimeout(""), httpx.PoolTimeout("")])
def test_a_timeout_before_the_request_left_is_surely_not_sent(cause):
    assert isinstance(judge(caused_by(TimedOut(), cause)), NotSent)


def test_without_a_connection_it_is_surely_not_sent():
    error = caused_by(NetworkError("httpx.ConnectError: "), httpx.ConnectError(""))
    assert isinstance(judge(error), NotSent)


@pytest.mark.parametrize("cause", [httpx.ReadTimeout(""), httpx.WriteTimeout("")])
def test_a_timeout_after_the_request_left_is_unknown(cause):
    assert isinstance(judge(caused_by(TimedOut(), cause)), Unknown)


@pytest.mark.parametrize("cause", [httpx.ReadError(""), httpx.RemoteProtocolError("closed")])
def test_a_lost_connection_is_unknown(cause):
    assert isinstance(judge(caused_by(NetworkError("closed"), cause)), Unknown)


@pytest.mark.parametrize("cause", [None, TelegramError("Invalid server response")])
def test_an_answer_that_tells_of_a_failure_means_that_nothing_was_taken(cause):
    assert isinstance(judge(caused_by(NetworkError("Bad Gateway"), cause)), NotTaken)


@pytest.mark.parametrize(
    "reason", ["Message to edit not found", "Message can't be edited", "MESSAGE_ID_INVALID"]
)
def test_a_message_that_is_gone_cannot_be_edited(reason):
    assert isinstance(judge(BadRequest(reason)), Gone)


def test_whoever_may_not_pin_does_not_insist():
    assert isinstance(judge(BadRequest("not enough rights to manage pinned messages in the chat")), TooLate)


def test_an_answer_that_cannot_be_read_is_unknown():
    assert isinstance(judge(TelegramError("Invalid server response")), Unknown)


@pytest.mark.parametrize("wait", [7, timedelta(seconds=7)])
def test_too_many_requests_tell_how_long_to_wait(wait, monkeypatch):
    monkeypatch.setenv("PTB_TIMEDELTA", "true")
    assert judge(RetryAfter(wait)) == TooFast(timedelta(seconds=7))


def test_who_blocked_the_bot_is_unreachable():
    assert isinstance(judge(Forbidden("Forbidden: bot was blocked by the user")), Unreachable)


@pytest.mark.parametrize("reason", ["Chat not found", "PEER_ID_INVALID", "user is deactivated"])
def test_a_chat_that_is_gone_is_unreachable(reason):
    assert isinstance(judge(BadRequest(reason)), Unreachable)


def test_an_edit_that_changes_nothing_has_done_its_work():
    assert judge(BadRequest("Message is not modified: specified new message content ...")) == Sent()


def test_an_old_press_needs_no_answer_any_more():
    reason = "Query is too old and response timeout expired or query id is invalid"
    assert isinstance(judge(BadRequest(reason)), TooLate)


def test_any_other_bad_request_is_a_defect_of_ours():
    assert judge(BadRequest("Can't parse entities")) == Rejected("BadRequest: Can't parse entities")


def test_an_unknown_method_is_a_defect_of_ours():
    error = caused_by(EndPointNotFound("Endpoint 'x' not found"), InvalidToken("Not Found"))
    assert isinstance(judge(error), Rejected)


def test_a_revoked_token_sends_nothing_and_loses_nothing():
    error = caused_by(EndPointNotFound("Endpoint 'sendMessage' not found"), InvalidToken("Unauthorized"))
    assert isinstance(judge(error), NotSent)


def test_a_group_that_became_a_supergroup_tells_its_new_address():
    assert judge(ChatMigrated(-100123)) == Moved(-100123)
