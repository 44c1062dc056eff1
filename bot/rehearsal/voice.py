"""The user's voice: people and groups as the tests and the demo speak of them.

The words are the same whether the platform is in this process or behind HTTP; only the stage differs.
"""

from base64 import b64decode, b64encode
from collections.abc import Coroutine, Iterable
from datetime import datetime, timedelta
from typing import Any, Literal, Self

from bot.rehearsal.errors import NotPossible
from bot.rehearsal.listening import PATIENCE_S, Thread
from bot.rehearsal.looking import small_picture, small_voice
from bot.rehearsal.places import Group, Place
from bot.rehearsal.platform import Platform, Scene
from bot.rehearsal.seen import Button, Happening, SeenMessage, Toast, find_button
from bot.rehearsal.stage import LocalStage, Stage
from bot.rehearsal.troubles import Troubles

__all__ = ["Group", "Person", "Room"]

Kind = Literal["group", "supergroup"]


class Person(Place):
    """Somebody with the app. `id` is both their user id and the id of their private chat."""

    def __init__(self, stage: Stage, name: str, user_id: int) -> None:
        super().__init__(stage, name, user_id)
        self._toasts = Thread(stage, "toasts", person=user_id)
        self._pressed: list[tuple[SeenMessage, Button]] = []

    async def _do(self, act: str, **details: Any) -> Any:
        return await self._stage.do(act, person=self.id, **details)

    # talking

    async def says(
        self, text: str, *, in_: Group | None = None, reply_to: SeenMessage | None = None
    ) -> SeenMessage:
        """Write a text, privately or in a group. Too long a one goes as several; returns the last of them."""
        chat = in_.id if in_ else self.id
        ids = await self._do("say", chat=chat, text=text, reply_to=reply_to.message_id if reply_to else None)
        return await self._own(chat, ids[-1])

    async def sends(
        self, kind: Literal["sticker", "location", "contact"], *, in_: Group | None = None
    ) -> None:
        """Send something without text."""
        await self._do("send_other", chat=in_.id if in_ else self.id, kind=kind)

    async def sends_photo(
        self,
        content: bytes | None = None,
        *,
        caption: str = "",
        in_: Group | None = None,
        reply_to: SeenMessage | None = None,
    ) -> SeenMessage:
        """Send a picture; a small one if it doesn't matter which."""
        return await self._sends("photo", "photo.png", content or small_picture(), caption, in_, reply_to)

    async def sends_voice(
        self, content: bytes | None = None, *, caption: str = "", in_: Group | None = None
    ) -> SeenMessage:
        """Send a voice message; a short one if it doesn't matter which."""
        return await self._sends("voice", "voice.ogg", content or small_voice(), caption, in_)

    async def sends_file(
        self, name: str, content: bytes, *, caption: str = "", in_: Group | None = None
    ) -> SeenMessage:
        return await self._sends("document", name, content, caption, in_)

    async def _sends(
        self,
        kind: str,
        name: str,
        content: bytes,
        caption: str,
        in_: Group | None,
        reply_to: SeenMessage | None = None,
    ) -> SeenMessage:
        chat = in_.id if in_ else self.id
        details = {"kind": kind, "name": name, "content": b64encode(content).decode(), "caption": caption}
        replied = reply_to.message_id if reply_to else None
        return await self._own(chat, await self._do("send_file", chat=chat, reply_to=replied, **details))

    async def downloads(self, message: SeenMessage) -> bytes:
        """Fetch the file that a message carries. Raises NotPossible if it carries none."""
        if message.file is None:
            raise NotPossible(f"there is no file in: {message}")
        return b64decode(await self._stage.do("download", file_id=message.file.id))

    async def edits(self, message: SeenMessage, text: str) -> None:
        """Edit a message of one's own, or its caption."""
        await self._do("change_text", chat=message.chat, message=message.message_id, text=text)

    async def deletes(self, message: SeenMessage) -> None:
        """Delete one's own message, or as an admin anybody's."""
        await self._do("delete", chat=message.chat, message=message.message_id)

    async def pins(self, message: SeenMessage) -> None:
        """Pin a message, as an admin may."""
        await self._do("pin", chat=message.chat, message=message.message_id)

    async def opens(self, link: str | Button) -> None:
        """Follow a link that starts the bot: the private chat opens, and /start PAYLOAD is said in it."""
        url = link.url if isinstance(link, Button) else link
        if url is None:
            raise NotPossible(f"the button is no link: {link}")
        await self._do("open_link", link=url)

    async def _own(self, chat: int, message_id: int) -> SeenMessage:
        return SeenMessage.of(await self._stage.do("message", chat=chat, message_id=message_id))

    # pressing

    async def presses(self, label: str, *, on: SeenMessage | None = None) -> None:
        """Press the button of that label, or the only one that begins so; a link is opened.

        Without `on`: the newest message with it that they can see. With it: that message as it was when
        seen, so that buttons that are gone since can be pressed too. Raises NotPossible (an AssertionError)
        listing the buttons there are.
        """
        message, button = find_button([on] if on else await self._visible(), label)
        await self._press(message, button)

    async def presses_again(self, label: str | None = None) -> None:
        """Repeat one's last press (of that label), whether or not the button is still there."""
        pressed = [one for one in self._pressed if label is None or one[1].label.startswith(label)]
        if not pressed:
            raise NotPossible(f"{self.name} has not pressed {label or 'anything'} before")
        await self._press(*pressed[-1])

    async def presses_data(self, message: SeenMessage, data: str) -> None:
        """Send a press with forged data, as no app but a hostile client does."""
        await self._press(message, Button(label=f"forged {data!r}", data=data))

    async def _press(self, message: SeenMessage, button: Button) -> None:
        self._pressed.append((message, button))
        if button.url is not None:
            await self.opens(button)
            return
        details = {
            "chat": message.chat,
            "message": message.message_id,
            "data": button.data,
            "label": button.label,
        }
        await self._do("press", **details)

    async def _visible(self) -> list[SeenMessage]:
        found: list[dict[str, Any]] = await self._do("visible_messages")
        return [SeenMessage.of(told) for told in found]

    @property
    def last_toast(self) -> Coroutine[Any, Any, Toast | None]:
        """The newest answer to one of their presses."""
        return self._last_toast()

    async def _last_toast(self) -> Toast | None:
        found: list[dict[str, Any]] = await self._do("toasts", place=0, within=0.0)
        return Toast(found[-1]["detail"], found[-1]["url"]) if found else None

    async def sees_toast(self, fragment: str = "", within: float = PATIENCE_S) -> Toast:
        """Return the next answer to a press with `fragment` in it ("" for any). Raises AssertionError."""
        found = await self._toasts.next(lambda event: fragment in event["detail"], within)
        if found is None:
            raise AssertionError(
                f"{self.name} saw no toast {fragment!r}; the last one: {await self.last_toast}"
            )
        return Toast(found["detail"], found["url"])

    # coming and going

    async def joins(self, group: Group) -> None:
        await self._do("join", chat=group.id)

    async def leaves(self, group: Group) -> None:
        await self._do("leave", chat=group.id)

    async def removes(self, other: "Person", *, from_: Group) -> None:
        await self._do("remove", other=other.id, chat=from_.id)

    async def promotes(self, other: "Person", *, in_: Group) -> None:
        """Make somebody an admin."""
        await self._do("promote", other=other.id, chat=in_.id)

    async def demotes(self, other: "Person", *, in_: Group) -> None:
        await self._do("promote", other=other.id, chat=in_.id, as_admin=False)

    async def adds_bot(self, group: Group, *, as_admin: bool = False) -> None:
        await self._do("add_bot", chat=group.id, as_admin=as_admin)

    async def removes_bot(self, group: Group) -> None:
        await self._do("remove_bot", chat=group.id)

    async def promotes_bot(self, group: Group) -> None:
        await self._do("promote", other=(await self._stage.do("me"))["id"], chat=group.id)

    async def demotes_bot(self, group: Group) -> None:
        await self._do("promote", other=(await self._stage.do("me"))["id"], chat=group.id, as_admin=False)

    async def blocks_bot(self) -> None:
        await self._do("block")

    async def unblocks_bot(self) -> None:
        await self._do("unblock")

    async def deletes_account(self) -> None:
        await self._do("delete_account")


class Room:
    """Where a rehearsal takes place: it makes people and groups, moves the time, causes `faults`."""

    def __init__(self, stage: Stage) -> None:
        self.stage = stage
        self.faults = Troubles(stage)

    @classmethod
    def of(cls, platform: Platform) -> Self:
        """Return the room of a platform in this process; for one behind HTTP give `Room` a RemoteStage."""
        return cls(LocalStage(platform))

    async def person(
        self, name: str, *, username: str | None = None, language: str | None = "en", about: str = ""
    ) -> Person:
        person_id = await self.stage.do(
            "add_person", name=name, username=username, language=language, about=about
        )
        return Person(self.stage, name, person_id)

    async def group(
        self,
        title: str,
        *,
        admins: Iterable[Person] = (),
        members: Iterable[Person] = (),
        kind: Kind = "group",
    ) -> Group:
        """Make a group; its first admin founded it. The bot is in it once somebody `adds_bot`."""
        ids = {"admins": [one.id for one in admins], "members": [one.id for one in members]}
        return Group(self.stage, title, await self.stage.do("add_group", title=title, kind=kind, **ids))

    async def start_link(self, payload: str = "") -> str:
        """Return the link that starts the bot."""
        username = (await self.stage.do("me"))["username"]
        return f"https://t.me/{username}?start={payload}" if payload else f"https://t.me/{username}"

    async def bot_privacy(self, *, on: bool) -> None:
        """Switch the bot's privacy mode, for groups that it joins from now on."""
        await self.stage.do("set_privacy", on=on)

    async def now(self) -> datetime:
        return datetime.fromisoformat((await self.stage.do("read_clock"))["moment"])

    async def travels_to(self, moment: datetime) -> None:
        """Move the time forward, and return once every process that follows it knows."""
        await self.stage.do("travel", to=moment.isoformat())

    async def travels(self, duration: timedelta) -> None:
        await self.stage.do("travel", seconds=duration.total_seconds())

    async def lets_time_run(self, *, runs: bool = True) -> None:
        """Let the time run on by itself at the real pace, or stand still."""
        await self.stage.do("let_time_run", runs=runs)

    async def transcript(self, since: int = 0) -> list[Happening]:
        """Return everything that happened, in order, from the `since`-th happening on."""
        return [Happening.of(told) for told in await self.stage.do("transcript", place=since)]

    async def scenes(self) -> list[Scene]:
        """Return the scenes that have begun, in order."""
        return [Scene(**told) for told in await self.stage.do("scenes")]

    async def waiting_updates(self) -> int:
        """Return how many updates the bot has not confirmed yet."""
        found: int = await self.stage.do("waiting_updates")
        return found

    async def complaints(self) -> list[str]:
        """Return what the bot did that the stand-in doesn't know: a test must find none."""
        found: list[str] = await self.stage.do("complaints")
        return found
