"""What people do in their app, as functions of the platform; each refuses what the app would refuse.

Details and results are plain JSON values, so that a test in another process can do the same (`stage.py`).
"""

from base64 import b64decode, b64encode
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from telegram.constants import MessageLimit

from bot.rehearsal.chats import Chat, Content, Json, Message, User
from bot.rehearsal.errors import Declined, NotPossible
from bot.rehearsal.files import KINDS, Upload
from bot.rehearsal.formatting import Formatted, commands_and_mentions, utf16_length
from bot.rehearsal.hearing import change_status, tell_of_message
from bot.rehearsal.keyboard import is_payload, start_payload
from bot.rehearsal.looking import small_voice

if TYPE_CHECKING:
    from bot.rehearsal.platform import Platform

_STICKER: Json = {
    "file_id": "sticker-1", "file_unique_id": "sticker-1", "type": "regular", "width": 512, "height": 512,
    "is_animated": False, "is_video": False,
}  # fmt: skip
_OTHER_MEDIA: dict[str, Json] = {
    "sticker": {"sticker": _STICKER},
    "location": {"location": {"latitude": 52.0, "longitude": 5.0}},
    "contact": {"contact": {"phone_number": "+100000000", "first_name": "Somebody"}},
}


def add_person(
    platform: "Platform", name: str, username: str | None, language: str | None, about: str = ""
) -> int:
    """`about`: who they are in a few words, told to whoever looks at the room and to nobody in it."""
    user = platform.add_user(name, username, language)
    user.about = about
    return user.id


def add_group(
    platform: "Platform", title: str, admins: list[int], members: list[int], kind: Any = "group"
) -> int:
    """Make a group; the first admin founded it. Nobody is told: the bot is not in it yet."""
    chat = platform.add_group(title, kind)
    for place, user_id in enumerate([*admins, *members]):
        user = find_user(platform, user_id)
        chat.members[user_id] = chat.member(user)
        chat.members[user_id].status = (
            "member" if place >= len(admins) else "administrator" if place else "creator"
        )
    return chat.id


def find_user(platform: "Platform", user_id: int) -> User:
    return platform.users[user_id]


def find_chat(platform: "Platform", chat_id: int) -> Chat:
    """Return a group by its id, or the private chat of the person of that id with the room's bot."""
    if chat_id > 0:
        return platform.private_chat(platform.bot, find_user(platform, chat_id))
    chat = platform.groups[chat_id]
    return chat.moved_to or chat


def find_message(chat: Chat, message_id: int) -> Message:
    message = chat.messages.get(message_id)
    if message is None or message.deleted:
        raise NotPossible(f"{chat.label} has no message {message_id} (any more)")
    return message


# talking


def say(platform: "Platform", person: int, chat: int, text: str, reply_to: int | None = None) -> list[int]:
    """Send a text, in several messages if it is too long for one, as apps do. Returns their ids."""
    user, place = _enter(platform, person, chat)
    text = text.strip()
    if not text:
        raise NotPossible(f"{user.name}'s app sends no empty text")
    replied = find_message(place, reply_to) if reply_to else None
    longest = int(MessageLimit.MAX_TEXT_LENGTH)
    pieces = [text[start : start + longest] for start in range(0, len(text), longest)]
    return [_post(platform, place, user, _plain(piece), replied).id for piece in pieces]


def send_other(platform: "Platform", person: int, chat: int, kind: str) -> int:
    """Send something that is no text: a sticker, a location, a contact."""
    user, place = _enter(platform, person, chat)
    return _post(platform, place, user, Content(extra=_OTHER_MEDIA[kind])).id


def send_file(
    platform: "Platform",
    person: int,
    chat: int,
    kind: str,
    name: str,
    content: str,
    caption: str = "",
    reply_to: int | None = None,
) -> int:
    """Send a photo, a voice message or a document; `content` is its bytes in base64. Returns the message's id."""
    user, place = _enter(platform, person, chat)
    if utf16_length(caption) > MessageLimit.CAPTION_LENGTH:
        raise NotPossible(f"{user.name}'s app takes no caption of more than 1024 characters")
    try:
        media = KINDS[kind](platform.files.keep(Upload(name, b64decode(content))))
    except Declined as declined:
        raise NotPossible(f"{user.name}'s app can't send that: {declined.description}") from declined
    replied = find_message(place, reply_to) if reply_to else None
    return _post(platform, place, user, replace(_plain(caption.strip()), media=media), replied).id


def send_voice(platform: "Platform", person: int, chat: int) -> int:
    """Send a short voice message, of which nothing is to be heard."""
    content = b64encode(small_voice()).decode()
    return send_file(platform, person, chat, "voice", "voice.ogg", content)


def change_text(platform: "Platform", person: int, chat: int, message: int, text: str) -> None:
    """Edit one's own message, or its caption."""
    user, place = _enter(platform, person, chat)
    changed = find_message(place, message)
    if changed.sender is not user:
        raise NotPossible(f"{user.name} can only edit their own messages")
    changed.content = replace(_plain(text.strip()), media=changed.content.media)
    changed.edited = changed.reworded = platform.clock.now()
    platform.note("edit", user, changed)
    tell_of_message(platform, changed, "edited_message")


def delete(platform: "Platform", person: int, chat: int, message: int) -> None:
    """Delete a message: one's own, or as an admin anybody's. No bot is told."""
    user, place = _enter(platform, person, chat)
    gone = find_message(place, message)
    if gone.sender is not user and not place.member(user).is_admin and place.peer is None:
        raise NotPossible(f"{user.name} can't delete what others wrote")
    gone.deleted = True
    platform.note("delete", user, gone)


def pin(platform: "Platform", person: int, chat: int, message: int) -> None:
    """Pin a message, as an admin may; everybody is told by a service message."""
    user, place = _enter(platform, person, chat)
    if not place.member(user).is_admin:
        raise NotPossible(f"{user.name} is no admin of {place.label}")
    pinned = find_message(place, message)
    place.pinned.append(pinned)
    _post(platform, place, user, Content(extra={"pinned_message": pinned.bare_json}))


def open_link(platform: "Platform", person: int, link: str) -> int:
    """Follow a link that starts the bot: the private chat opens and /start PAYLOAD is said there."""
    payload = start_payload(link, platform.bot.user.username or "")
    if payload is None:
        raise NotPossible(f"the link doesn't start @{platform.bot.user.username}: {link}")
    if payload and not is_payload(payload):
        raise NotPossible(f"the platform takes 64 of A-Z a-z 0-9 _ - as a payload, not: {payload}")
    return say(platform, person, person, f"/start {payload}")[0]


def press(platform: "Platform", person: int, chat: int, message: int, data: str, label: str) -> str:
    """Press a button, or send its data as if it were still there. Returns the id of the press."""
    user, place = _enter(platform, person, chat, opens=False)
    pressed = find_message(place, message)
    platform.note("press", user, pressed, label)
    bot = platform.bot_of(pressed.sender)
    query = platform.ask(bot, user, pressed)
    told = {
        "id": query.id,
        "from": user.json,
        "chat_instance": str(place.id),
        "data": data,
        "message": pressed.json,
    }
    bot.updates.add("callback_query", told)
    return query.id


def _plain(text: str) -> Content:
    return Content(*Formatted(text, commands_and_mentions(text)))


def _post(
    platform: "Platform", chat: Chat, user: User, content: Content, replied: Message | None = None
) -> Message:
    message = platform.post(chat, user, content, replied)
    tell_of_message(platform, message)
    return message


def _enter(platform: "Platform", person: int, chat: int, *, opens: bool = True) -> tuple[User, Chat]:
    """Return who acts where, if they may. Writing first opens a private chat."""
    user, place = find_user(platform, person), find_chat(platform, chat)
    if not place.member(user).is_present:
        raise NotPossible(f"{user.name} is not in {place.label}")
    if place.peer is None:
        return user, place
    bot = place.member(platform.bot.user)
    if bot.status == "kicked":
        raise NotPossible(f"{user.name} has blocked the bot: unblock it first")
    if bot.status == "left" and opens:
        bot.status = "member"
    return user, place


# coming and going


def add_bot(platform: "Platform", person: int, chat: int, as_admin: bool = False) -> None:
    user, place = _enter(platform, person, chat)
    bot = platform.bot.user
    change_status(platform, place, user, bot, "administrator" if as_admin else "member")
    _post(platform, place, user, Content(extra={"new_chat_members": [bot.json]}))


def remove_bot(platform: "Platform", person: int, chat: int) -> None:
    user, place = _enter(platform, person, chat)
    change_status(platform, place, user, platform.bot.user, "kicked")


def promote(platform: "Platform", person: int, other: int, chat: int, as_admin: bool = True) -> None:
    """Make somebody, or the bot, an admin, or a plain member again."""
    user, place = _enter(platform, person, chat)
    if not place.member(user).is_admin:
        raise NotPossible(f"{user.name} is no admin of {place.label}")
    change_status(
        platform, place, user, find_user(platform, other), "administrator" if as_admin else "member"
    )


def join(platform: "Platform", person: int, chat: int) -> None:
    user, place = find_user(platform, person), find_chat(platform, chat)
    change_status(platform, place, user, user, "member")
    _post(platform, place, user, Content(extra={"new_chat_members": [user.json]}))


def leave(platform: "Platform", person: int, chat: int) -> None:
    user, place = _enter(platform, person, chat)
    change_status(platform, place, user, user, "left")
    _post(platform, place, user, Content(extra={"left_chat_member": user.json}))


def remove(platform: "Platform", person: int, other: int, chat: int) -> None:
    """Remove somebody from a group, as an admin."""
    user, place = _enter(platform, person, chat)
    if not place.member(user).is_admin:
        raise NotPossible(f"{user.name} is no admin of {place.label}")
    gone = find_user(platform, other)
    change_status(platform, place, user, gone, "kicked")
    _post(platform, place, user, Content(extra={"left_chat_member": gone.json}))


def block(platform: "Platform", person: int) -> None:
    _change_bot_here(platform, person, "kicked")


def unblock(platform: "Platform", person: int) -> None:
    _change_bot_here(platform, person, "member")


def _change_bot_here(platform: "Platform", person: int, status: Any) -> None:
    user = find_user(platform, person)
    change_status(platform, platform.private_chat(platform.bot, user), user, platform.bot.user, status)


def delete_account(platform: "Platform", person: int) -> None:
    find_user(platform, person).deleted = True


def upgrade_group(platform: "Platform", person: int, chat: int) -> int:
    """Turn a group into a supergroup and return its new id. Both chats get a service message."""
    user, old = _enter(platform, person, chat)
    new = platform.upgrade(old)
    _post(platform, old, user, Content(extra={"migrate_to_chat_id": new.id}))
    _post(platform, new, user, Content(extra={"migrate_from_chat_id": old.id}))
    return new.id
