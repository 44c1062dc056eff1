"""A call's result or refusal as the status and body that the Bot API answers with."""

from bot.rehearsal.chats import Json
from bot.rehearsal.errors import AnswerLost, Declined
from bot.rehearsal.platform import Platform


async def answer_to(platform: Platform, token: str, method: str, params: Json) -> tuple[int, Json]:
    """Return HTTP status and body of a call. Raises AnswerLost where the bot is to get none."""
    try:
        return 200, {"ok": True, "result": await platform.call(token, method, params)}
    except Declined as declined:
        return declined.code, _not_ok(declined)
    except AnswerLost as lost:
        if lost.seeming != "bad gateway":
            raise
        return 502, _not_ok(Declined(502, "Bad Gateway"))


def _not_ok(declined: Declined) -> Json:
    body: Json = {"ok": False, "error_code": declined.code, "description": declined.description}
    if declined.parameters:
        body["parameters"] = declined.parameters
    return body
