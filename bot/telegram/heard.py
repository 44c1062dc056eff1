"""What came in, read from the platform's raw update into one frozen value. Reads the library's types."""

from dataclasses import dataclass, replace
from datetime import datetime
from html import escape
from typing import Any

from telegram import Bot, CallbackQuery, ChatMember, ChatMemberUpdated, Message, Update, User
from telegram import Chat as PlatformChat
from telegram.constants import ChatType

from bot.telegram.standing import standing_of
from core.desk.commands import Media
from core.desk.visit import Standing

# The first words that anybody tries, in the languages that are understood.
_BARE = {
    "help": "help",
    "hilfe": "help",
    "ayuda": "help",
    "menu": "help",
    "?": "help",
    "board": "board",
    "scoreboard": "board",
}


@dataclass(frozen=True, slots=True)
class Press:
    """A pressed button: its data, and the message it stands under as it was."""

    query_id: str
    data: str
    message_id: int | None = None
    html: str | None = None
    label: str | None = None


@dataclass(frozen=True, slots=True)
class Heard:
    """Who said what where. Exactly one of text, press, present, moved_* and pinned is set, or none: no words at all.

    `present`: whether the bot itself is (still) in the chat. `reply_to`: id of the message replied to, which stands
    at the address `reply_at`. `media`: what came in place of words, or with its caption as the text. `changed`: id
    of a message that was edited. `pinned`: id of a message that is pinned now.
    `standings`: who is what in the group now, by user id. `message_id`: of what was said.
    `said_at`: when a message was written, by the platform's clock.
    """

    user_id: int
    name: str
    language: str
    address: int
    private: bool
    title: str
    text: str | None = None
    reply_to: int | None = None
    reply_at: int | None = None
    press: Press | None = None
    present: bool | None = None
    moved_to: int | None = None
    moved_from: int | None = None
    pinned: int | None = None
    media: Media | None = None
    changed: int | None = None
    standings: tuple[tuple[int, Standing], ...] | None = None
    message_id: int | None = None
    said_at: datetime | None = None

    @property
    def is_said(self) -> bool:
        """Whether it is something that a person wrote or pressed, and not news of a chat."""
        news = (self.present, self.moved_to, self.moved_from, self.pinned, self.standings)
        return all(one is None for one in news)

    @property
    def is_written_in_private(self) -> bool:
        return self.private and self.is_said and self.press is None and self.changed is None

    @property
    def command(self) -> str | None:
        """`/today@some_bot` -> `today`; in private a few words that can be nothing else do without the slash."""
        if self.private and self.text and (bare := _BARE.get(self.text.strip(" .!").lower())):
            return bare
        if not self.text or not self.text.startswith("/"):
            return None
        return self.text.split(maxsplit=1)[0][1:].partition("@")[0].lower()

    @property
    def argument(self) -> str:
        """What follows the command."""
        return (self.text or "").partition(" ")[2].strip()


# What is read of a message, and of one that it refers to. The rest stays unread: the platform adds to it at any time,
# and what the library can't take (yet) would fail the update.
_OF_MESSAGE = frozenset(
    {
        *("message_id", "date", "edit_date", "chat", "from", "text", "entities", "caption", "reply_markup"),
        *("photo", "voice", "audio", "video_note", "document", "video", "new_chat_title"),
        *("new_chat_members", "left_chat_member", "group_chat_created", "supergroup_chat_created"),
        *("migrate_to_chat_id", "migrate_from_chat_id"),
    }
)
_OF_REFERRED = frozenset({"message_id", "date", "chat"})
_REFERRING = ("reply_to_message", "pinned_message")


def hear(body: dict[str, Any], bot: Bot) -> Heard | None:
    """Read a raw update; None where there is nothing to answer."""
    update = Update.de_json(_needed(whole(body)), bot)
    if update.callback_query:
        return _pressed(update.callback_query)
    if update.my_chat_member:
        return _membership(update.my_chat_member)
    if update.chat_member:
        return _of_somebody(update.chat_member)
    if update.message:
        return _said(update.message)
    if update.edited_message:
        heard = _said(update.edited_message)
        return heard and replace(heard, changed=update.edited_message.message_id)
    return None


def _needed(body: dict[str, Any]) -> dict[str, Any]:
    """The same with nothing in it but what is read."""
    needed = {"update_id": body["update_id"]}
    needed |= {kind: body[kind] for kind in ("my_chat_member", "chat_member") if kind in body}
    needed |= {kind: _bare(body[kind]) for kind in ("message", "edited_message") if kind in body}
    if press := body.get("callback_query"):
        message = {"message": _bare(press["message"])} if press.get("message") else {}
        needed["callback_query"] = press | message
    return needed


def _bare(message: dict[str, Any]) -> dict[str, Any]:
    bare = {key: value for key, value in message.items() if key in _OF_MESSAGE}
    for key in _REFERRING:
        if other := message.get(key):
            bare[key] = {name: value for name, value in other.items() if name in _OF_REFERRED}
    return bare


def whole(told: Any) -> Any:
    """The same without half characters, which no text may be stored with: pairs are joined, what is left is marked."""
    if isinstance(told, str):
        if told.isascii() and "\x00" not in told:
            return told
        joined = told.encode("utf-16-le", "surrogatepass").decode("utf-16-le", "replace")
        return joined.replace("\x00", "\ufffd")
    if isinstance(told, dict):
        return {key: whole(value) for key, value in told.items()}
    return [whole(one) for one in told] if isinstance(told, list) else told


def _said(message: Message) -> Heard | None:
    if message.from_user is None:
        return None
    happened = _happened(message)
    if happened:
        return _from(message.from_user, message.chat, **happened)
    if message.from_user.is_bot or _is_service(message):
        return None
    reply = message.reply_to_message
    return _from(
        message.from_user,
        message.chat,
        text=message.text if message.text is not None else message.caption,
        reply_to=reply.message_id if reply else None,
        reply_at=reply.chat.id if reply else None,
        media=_media(message),
        message_id=message.message_id,
        said_at=message.edit_date or message.date,
    )


def _happened(message: Message) -> dict[str, Any]:
    """What a service message tells of, as fields of Heard; empty where it tells of nothing to us."""
    if message.migrate_to_chat_id:
        return {"moved_to": message.migrate_to_chat_id}
    if message.migrate_from_chat_id:
        return {"moved_from": message.migrate_from_chat_id}
    if message.pinned_message:
        return {"pinned": message.pinned_message.message_id}
    standings = _coming_and_going(message)
    return {"standings": standings} if standings else {}


def _coming_and_going(message: Message) -> tuple[tuple[int, Standing], ...]:
    """What a service message says of people; who comes as an admin is looked up at their next word."""
    came = tuple((user.id, Standing.MEMBER) for user in message.new_chat_members if not user.is_bot)
    gone = message.left_chat_member
    left = ((gone.id, Standing.OUTSIDE),) if gone and not gone.is_bot else ()
    return came + left


def _media(message: Message) -> Media | None:
    if message.photo:
        return "photo"
    if message.voice or message.audio or message.video_note:
        return "voice"
    return "file" if message.document or message.video else None


def _is_service(message: Message) -> bool:
    return bool(
        message.new_chat_members
        or message.left_chat_member
        or message.group_chat_created
        or message.supergroup_chat_created
        or message.new_chat_title
    )


def _pressed(query: CallbackQuery) -> Heard:
    message = query.message
    data = query.data or ""
    if message is None:
        alone = PlatformChat(query.from_user.id, ChatType.PRIVATE)
        return _from(query.from_user, alone, press=Press(query.id, data))
    if not isinstance(message, Message):
        return _from(query.from_user, message.chat, press=Press(query.id, data))
    press = Press(query.id, data, message.message_id, _html(message), _label_of(message, data))
    return _from(query.from_user, message.chat, press=press)


def _html(message: Message) -> str | None:
    """The text of a message as HTML; plain where its formatting points beside it, None if it has no text."""
    if message.text is None:
        return None
    try:
        return message.text_html
    except UnicodeError:  # an entity that begins or ends within a character
        return escape(message.text)


def _label_of(message: Message, data: str) -> str | None:
    keyboard = message.reply_markup.inline_keyboard if message.reply_markup else ()
    return next((key.text for row in keyboard for key in row if key.callback_data == data), None)


def _membership(change: ChatMemberUpdated) -> Heard:
    """The bot came or went; or only became something else, which leaves everybody to be looked up anew."""
    was, now = _standing(change.old_chat_member), _standing(change.new_chat_member)
    if change.chat.type != ChatType.PRIVATE and Standing.OUTSIDE not in {was, now}:
        return _from(change.from_user, change.chat, standings=())
    return _from(change.from_user, change.chat, present=now is not Standing.OUTSIDE)


def _of_somebody(change: ChatMemberUpdated) -> Heard:
    member = change.new_chat_member
    return _from(change.from_user, change.chat, standings=((member.user.id, _standing(member)),))


def _standing(member: ChatMember) -> Standing:
    return standing_of({"status": member.status, "is_member": getattr(member, "is_member", False)})


def _from(user: User, chat: PlatformChat, **heard: Any) -> Heard:
    return Heard(
        user_id=user.id,
        name=user.full_name or "",
        language=user.language_code or "en",
        address=chat.id,
        private=chat.type == ChatType.PRIVATE,
        title=chat.title or user.full_name or "",
        **heard,
    )
