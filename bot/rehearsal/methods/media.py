"""Sending photos, voice messages and documents, and fetching what people sent."""

from typing import TYPE_CHECKING, Any

from telegram.constants import MessageLimit

from bot.rehearsal.chats import Content
from bot.rehearsal.errors import bad_request
from bot.rehearsal.files import KINDS, MOST_DOWNLOADED, StoredFile, Upload
from bot.rehearsal.formatting import utf16_length
from bot.rehearsal.keyboard import read_keyboard
from bot.rehearsal.methods.access import reach
from bot.rehearsal.methods.messages import formatted, replied_to
from bot.rehearsal.methods.reading import Params, text

if TYPE_CHECKING:
    from bot.rehearsal.methods import Do
    from bot.rehearsal.platform import BotAccount, Platform


def sender_of(kind: str) -> "Do":
    """Return the method that sends media of that kind."""

    def send(platform: "Platform", bot: "BotAccount", params: Params) -> dict[str, Any]:
        chat = reach(platform, bot, params)
        content = _content(platform, params, kind)
        replied = replied_to(chat, params)
        platform.rates.check(bot.user.id, chat.id)
        return platform.post(chat, bot.user, content, replied).json

    return send


def _content(platform: "Platform", params: Params, kind: str) -> Content:
    if params.get("message_thread_id"):
        raise bad_request("message thread not found")
    caption, entities = formatted(platform, params, "caption")
    if utf16_length(caption) > MessageLimit.CAPTION_LENGTH:
        raise bad_request("message caption is too long")
    media = KINDS[kind](_file(platform, params, kind))
    return Content(caption or None, entities, read_keyboard(params.get("reply_markup")), media=media)


def _file(platform: "Platform", params: Params, kind: str) -> StoredFile:
    """Return the file that was uploaded, or sent before and named by its id."""
    given = params.get(kind)
    if isinstance(given, Upload):
        return platform.files.keep(given)
    if not given:
        raise bad_request(f"there is no {kind} in the request")
    known = platform.files.find(str(given))
    if known is None:
        raise bad_request("wrong file identifier/HTTP URL specified")
    return known


def get_file(platform: "Platform", _bot: "BotAccount", params: Params) -> dict[str, Any]:
    file = platform.files.find(text(params, "file_id"))
    if file is None:
        raise bad_request("invalid file_id")
    if len(file.content) > MOST_DOWNLOADED:
        raise bad_request("file is too big")
    return file.json | {"file_path": file.path}


METHODS: "dict[str, Do]" = {
    "sendPhoto": sender_of("photo"),
    "sendVoice": sender_of("voice"),
    "sendDocument": sender_of("document"),
    "getFile": get_file,
}
