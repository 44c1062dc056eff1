"""The heart of the stand-in: one world of people, chats and bots, and the calls that bots make of it.

In memory, without network and without waiting, but for the poll for updates. The transports
(`server.py`, and that of the tests) hand calls in; what people do comes in through `people.py`.
"""

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import datetime
from itertools import count
from typing import TYPE_CHECKING, Any
from uuid import uuid4

from bot.rehearsal.chats import Chat, Content, Json, Kind, Member, Message, User
from bot.rehearsal.clock import RehearsalClock
from bot.rehearsal.diary import Diary, Entry, EntryKind
from bot.rehearsal.errors import Declined
from bot.rehearsal.faults import Fault, Faults
from bot.rehearsal.files import Files
from bot.rehearsal.methods import METHODS
from bot.rehearsal.rates import RateLimits
from bot.rehearsal.updates import UpdateQueue

if TYPE_CHECKING:
    from bot.rehearsal.backstage import Backstage

TOKEN = "7000000001:rehearsal-needs-no-secret"  # noqa: S105 - opens nothing but the stand-in
USERNAME = "bellwether_bot"
# Above 32 bits, as the ids of newer accounts are, so that a too narrow column is found out.
_FIRST_USER_ID = 5_200_000_001
_FIRST_GROUP_ID = -4_300_000_001
_FIRST_SUPERGROUP_ID = -1_002_400_000_001


@dataclass(frozen=True, slots=True)
class Call:
    """One call as the bot made it; `params` hold JSON values, form fields decoded."""

    bot: "BotAccount"
    method: str
    params: Json

    @property
    def chat_id(self) -> int | None:
        written = str(self.params.get("chat_id", ""))
        return int(written) if written.removeprefix("-").isdigit() else None


@dataclass(slots=True, eq=False)
class BotAccount:
    user: User
    token: str
    privacy: bool = True
    updates: UpdateQueue = field(default_factory=UpdateQueue)
    commands: dict[str, list[Json]] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Query:
    """A press that waits for its answer."""

    id: str
    bot: BotAccount
    presser: User
    message: Message
    asked: datetime


@dataclass(frozen=True, slots=True)
class Scene:
    """A part of what is played: it begins at `place` in the diary. `point`: what there is to see in it."""

    place: int
    title: str
    point: str


class Platform:
    def __init__(self, clock: RehearsalClock | None = None) -> None:
        self.id = uuid4().hex
        self.clock = clock or RehearsalClock()
        self.users: dict[int, User] = {}
        self.groups: dict[int, Chat] = {}
        self.bots: dict[str, BotAccount] = {}
        self.queries: dict[str, Query] = {}
        self.files = Files()
        self.diary = Diary()
        self.faults = Faults()
        self.rates = RateLimits(self.clock)
        self.complaints: list[str] = []
        self.on_call: list[Callable[[Call], None]] = []
        self.scenes: list[Scene] = []
        self.backstage: Backstage | None = None
        self._private: dict[tuple[int, int], Chat] = {}
        self._user_ids = count(_FIRST_USER_ID)
        self._group_ids = count(_FIRST_GROUP_ID, -1)
        self._supergroup_ids = count(_FIRST_SUPERGROUP_ID, -1)
        self._query_ids = count(1)
        self.bot = self.add_bot("Bellwether", USERNAME, TOKEN)

    # who and what there is

    def add_bot(self, name: str, username: str, token: str, *, privacy: bool = True) -> BotAccount:
        user = User(int(token.partition(":")[0]), name, username, is_bot=True)
        self.users[user.id] = user
        self.bots[token] = BotAccount(user, token, privacy)
        return self.bots[token]

    def add_user(self, name: str, username: str | None = None, language: str | None = None) -> User:
        user = User(next(self._user_ids), name, username, language)
        self.users[user.id] = user
        return user

    def add_group(self, title: str, kind: Kind = "group") -> Chat:
        ids = self._group_ids if kind == "group" else self._supergroup_ids
        chat = Chat(next(ids), kind, title)
        self.groups[chat.id] = chat
        return chat

    def private_chat(self, bot: BotAccount, user: User) -> Chat:
        """Return the chat of the two. It exists as soon as one asks; the bot may write once it was opened."""
        key = (bot.user.id, user.id)
        if key not in self._private:
            chat = Chat(user.id, "private", user.name, peer=user)
            chat.members = {user.id: Member(user, "member"), bot.user.id: Member(bot.user)}
            self._private[key] = chat
        return self._private[key]

    def bot_of(self, user: User) -> BotAccount:
        return next(bot for bot in self.bots.values() if bot.user is user)

    # what happens

    async def call(self, token: str, method: str, params: Json) -> Any:
        """Do what a bot asks and return the `result`. Raises Declined, or AnswerLost."""
        bot = self.bots.get(token)
        if bot is None:
            raise Declined(401, "Unauthorized")
        known = METHODS.get(method.lower())
        if known is None:
            self.complaints.append(f"unknown method: {method}")
            raise Declined(404, "Not Found")
        fault = self._announce(Call(bot, known.name, params))
        result = known.do(self, bot, params)
        if not isinstance(result, (dict, list, bool, int)):
            result = await result
        if fault is not None:
            raise fault.trouble
        return result

    def _announce(self, call: Call) -> Fault | None:
        """Tell observers, strike with faults that are due, and return the one that strikes afterwards."""
        for observer in self.on_call:
            observer(call)
        if not self.faults.pending:
            return None
        fault = self.faults.take(call.method, call.chat_id)
        if fault is not None and not fault.takes_effect:
            raise fault.trouble
        return fault

    def post(self, chat: Chat, sender: User, content: Content, reply_to: Message | None = None) -> Message:
        """Put a message into a chat. Telling bots of it is the business of who posts."""
        message = Message(chat.next_message_id(), chat, sender, self.clock.now(), content, reply_to)
        message.order = len(self.diary.entries)
        chat.messages[message.id] = message
        self.note("message", sender, message)
        return message

    def note(
        self,
        kind: EntryKind,
        who: User,
        message: Message,
        detail: str = "",
        url: str | None = None,
        shown_to: User | None = None,
    ) -> None:
        """Write down what happened, for those who watch."""
        person, now = (shown_to or who).id, self.clock.now()
        entry = Entry(kind, now, person, who.name, who.is_bot, message, message.content, detail, url)
        self.diary.add(entry)
        message.chat.diary.add(entry)

    def ask(self, bot: BotAccount, presser: User, message: Message) -> Query:
        query = Query(str(next(self._query_ids)), bot, presser, message, self.clock.now())
        self.queries[query.id] = query
        return query

    def toast(self, query: Query, text: str, url: str | None) -> None:
        """Show the presser the answer to their press."""
        self.note("toast", query.bot.user, query.message, text, url, shown_to=query.presser)
        query.presser.diary.add(self.diary.entries[-1])

    def upgrade(self, group: Chat) -> Chat:
        """Turn a group into a supergroup, as the platform does: a new chat with a new id."""
        new = self.add_group(group.title, "supergroup")
        new.members = dict(group.members)
        new.diary = group.diary
        group.moved_to = new
        return new
