"""What the stand-in answers when it doesn't do as asked, in the words of the real server.

BellwetherError
    Declined        the server's answer "not ok": code, description, parameters
    AnswerLost      no answer at all reaches the bot, whether or not the call took effect
    NotPossible     a person tried what their app wouldn't let them do (an AssertionError: the test is wrong)
"""

from typing import Literal

from core.errors import BellwetherError

Seeming = Literal["connect error", "connect timeout", "pool timeout", "read timeout", "bad gateway"]


class Declined(BellwetherError):
    def __init__(self, code: int, description: str, **parameters: int) -> None:
        super().__init__(description)
        self.code = code
        self.description = description
        self.parameters = parameters


class AnswerLost(BellwetherError):
    """`seeming` is how the loss looks to the bot; the first three of its values mean "surely not sent"."""

    def __init__(self, seeming: Seeming) -> None:
        super().__init__(seeming)
        self.seeming = seeming


class NotPossible(BellwetherError, AssertionError):
    pass


def bad_request(reason: str) -> Declined:
    return Declined(400, f"Bad Request: {reason}")


def forbidden(reason: str) -> Declined:
    return Declined(403, f"Forbidden: {reason}")


def conflict(reason: str) -> Declined:
    return Declined(409, f"Conflict: {reason}")


def migrated(new_chat_id: int) -> Declined:
    reason = "Bad Request: group chat was upgraded to a supergroup chat"
    return Declined(400, reason, migrate_to_chat_id=new_chat_id)


def too_many_requests(retry_after: int) -> Declined:
    return Declined(429, f"Too Many Requests: retry after {retry_after}", retry_after=retry_after)


def not_modified() -> Declined:
    return bad_request(
        "message is not modified: specified new message content and reply markup are exactly the same "
        "as a current content and reply markup of the message"
    )
