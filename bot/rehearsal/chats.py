"""Who and what there is on the platform: users, chats, their members and messages."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any, Literal

from bot.rehearsal.diary import Diary
from bot.rehearsal.files import Media
from bot.rehearsal.formatting import Entity

Json = dict[str, Any]
Kind = Literal["private", "group", "supergroup"]
Status = Literal["creator", "administrator", "member", "left", "kicked"]

ADMINS: tuple[Status, ...] = ("creator", "administrator")
PRESENT: tuple[Status, ...] = (*ADMINS, "member")
SERVICE = frozenset(
    {"new_chat_members", "left_chat_member", "migrate_to_chat_id", "migrate_from_chat_id", "pinned_message"}
)


@dataclass(slots=True, eq=False)
class User:
    id: int
    name: str
    username: str | None = None
    language: str | None = None
    is_bot: bool = False
    deleted: bool = False
    about: str = ""
    diary: Diary = field(default_factory=Diary)
    json: Json = field(init=False)

    def __post_init__(self) -> None:
        self.json = {"id": self.id, "is_bot": self.is_bot, "first_name": self.name}
        if self.username:
            self.json["username"] = self.username
        if self.language:
            self.json["language_code"] = self.language


@dataclass(slots=True)
class Member:
    """A user's place in a chat. `hears_all`: a bot that joined with its privacy mode off."""

    user: User
    status: Status = "left"
    hears_all: bool = False

    @property
    def is_present(self) -> bool:
        return self.status in PRESENT

    @property
    def is_admin(self) -> bool:
        return self.status in ADMINS


@dataclass(frozen=True, slots=True)
class Content:
    """What a message shows at one time; an edit replaces it whole.

    With `media`, `text` is the caption. `extra`: service fields, stickers and the like.
    """

    text: str | None = None
    entities: list[Entity] = field(default_factory=list)
    keyboard: Json | None = None
    extra: Json | None = None
    media: Media | None = None

    @property
    def is_service(self) -> bool:
        return self.extra is not None and not SERVICE.isdisjoint(self.extra)


@dataclass(slots=True, eq=False)
class Message:
    id: int
    chat: "Chat"
    sender: User
    sent: datetime
    content: Content
    reply_to: "Message | None" = None
    edited: datetime | None = None
    reworded: datetime | None = None  # keys may change without the words
    deleted: bool = False
    meant_for: User | None = None  # the bot that a command or reply in a group addresses
    reactions: list[Json] = field(default_factory=list)
    order: int = 0  # counts messages over all chats

    @property
    def json(self) -> Json:
        found = self.bare_json
        if self.reply_to is not None and not self.reply_to.deleted:
            found["reply_to_message"] = self.reply_to.bare_json
        return found

    @property
    def bare_json(self) -> Json:
        """The message as the Bot API tells it, without the one it replies to."""
        content = self.content
        found: Json = {
            "message_id": self.id,
            "from": self.sender.json,
            "chat": self.chat.json,
            "date": int(self.sent.timestamp()),
        }
        if self.edited is not None:
            found["edit_date"] = int(self.edited.timestamp())
        if content.media is not None:
            found[content.media.kind] = content.media.told
        if content.text is not None:
            found["text" if content.media is None else "caption"] = content.text
        if content.entities:
            found["entities" if content.media is None else "caption_entities"] = content.entities
        if content.keyboard is not None:
            found["reply_markup"] = content.keyboard
        if content.extra is not None:
            found.update(content.extra)
        return found


@dataclass(slots=True, eq=False)
class Chat:
    """`peer` is the person of a private chat, which is open once they wrote first."""

    id: int
    kind: Kind
    title: str
    peer: User | None = None
    members: dict[int, Member] = field(default_factory=dict)
    messages: dict[int, Message] = field(default_factory=dict)
    pinned: list[Message] = field(default_factory=list)
    moved_to: "Chat | None" = None
    diary: Diary = field(default_factory=Diary)
    json: Json = field(init=False)

    def __post_init__(self) -> None:
        if self.peer is None:
            self.json = {"id": self.id, "type": self.kind, "title": self.title}
            return
        self.json = {"id": self.id, "type": self.kind, "first_name": self.title}
        if self.peer.username:
            self.json["username"] = self.peer.username

    def member(self, user: User) -> Member:
        return self.members.get(user.id) or Member(user)

    @property
    def present(self) -> Iterator[Member]:
        return (member for member in self.members.values() if member.is_present)

    @property
    def present_bots(self) -> list[User]:
        return [member.user for member in self.present if member.user.is_bot]

    def next_message_id(self) -> int:
        return len(self.messages) + 1

    @property
    def label(self) -> str:
        return f"{self.title} (private)" if self.kind == "private" else self.title
