"""Everything that can be done on the stage besides being a bot, by name, with JSON details and results."""

import inspect
from base64 import b64encode
from collections.abc import Callable
from dataclasses import asdict
from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Any

from bot.rehearsal import people
from bot.rehearsal.chats import Content, Json, Message, Status, User
from bot.rehearsal.diary import Diary, Entry
from bot.rehearsal.errors import AnswerLost, Declined, NotPossible, Seeming
from bot.rehearsal.faults import Fault
from bot.rehearsal.formatting import to_html
from bot.rehearsal.platform import Scene

if TYPE_CHECKING:
    from bot.rehearsal.backstage import Backstage
    from bot.rehearsal.platform import Platform

LONGEST_WAIT_S = 30.0


async def act(platform: "Platform", name: str, details: Json) -> Any:
    """Do one act. Raises NotPossible where a person couldn't, and for an act or detail that there isn't."""
    do = ACTS.get(name)
    if do is None:
        raise NotPossible(f"no such act: {name}")
    try:
        bound = inspect.signature(do).bind(platform, **details)
    except TypeError as error:
        raise NotPossible(f"{name}: {error}") from error
    result = do(*bound.args, **bound.kwargs)
    return await result if inspect.isawaitable(result) else result


# watching


def seen(message: Message, content: Content) -> Json:
    """Tell of a message as people see it; `content` is what it showed at the time.

    Its text is the caption of what it carries, or who came or left.
    """
    keyboard = (content.keyboard or {}).get("inline_keyboard", [])
    text = content.text or ""
    file = content.media.file if content.media else None
    return {
        "chat": message.chat.id,
        "message_id": message.id,
        "who": message.sender.name,
        "from_bot": message.sender.is_bot,
        "kind": _kind(content),
        "text": text or _names(content),
        "file": {"id": file.id, "name": file.name, "size": len(file.content)} if file else None,
        "html": to_html(text, content.entities),
        "buttons": [
            [
                {"label": button["text"], "data": button.get("callback_data"), "url": button.get("url")}
                for button in row
            ]
            for row in keyboard
        ],
        "reply_to": message.reply_to.id if message.reply_to else None,
        "reactions": "".join(reaction.get("emoji", "") for reaction in message.reactions),
        "reworded": message.reworded.isoformat() if message.reworded else None,
        "sent": message.sent.isoformat(),
    }


def _kind(content: Content) -> str:
    if content.media is not None:
        return content.media.kind
    return "text" if content.extra is None else next(iter(content.extra))


def _names(content: Content) -> str:
    """Who came into the group or left it."""
    extra = content.extra or {}
    members = extra.get("new_chat_members") or [extra.get("left_chat_member") or {}]
    return ", ".join(member["first_name"] for member in members if member)


def pinned(platform: "Platform", chat: int) -> list[int]:
    """Return the ids of what is pinned in a chat, the latest last."""
    return [one.id for one in people.find_chat(platform, chat).pinned if not one.deleted]


def download(platform: "Platform", file_id: str) -> str:
    """Return the bytes of a file that was sent, in base64."""
    file = platform.files.find(file_id)
    if file is None:
        raise NotPossible(f"there is no file {file_id}")
    return b64encode(file.content).decode()


def messages(platform: "Platform", chat: int) -> list[Json]:
    """Return all messages of a chat as they are now, oldest first."""
    return [
        seen(message, message.content)
        for message in people.find_chat(platform, chat).messages.values()
        if not message.deleted
    ]


def message(platform: "Platform", chat: int, message_id: int) -> Json:
    found = people.find_message(people.find_chat(platform, chat), message_id)
    return seen(found, found.content)


def visible_messages(platform: "Platform", person: int) -> list[Json]:
    """Return what a person can see with buttons under it, in all their chats, newest first."""
    user = people.find_user(platform, person)
    groups = [
        group
        for group in platform.groups.values()
        if group.moved_to is None and group.member(user).is_present
    ]
    chats = [people.find_chat(platform, person), *groups]
    found = [message for chat in chats for message in chat.messages.values() if _has_buttons(message)]
    found.sort(key=lambda message: message.order, reverse=True)
    return [seen(message, message.content) for message in found]


def _has_buttons(message: Message) -> bool:
    return message.content.keyboard is not None and not message.deleted


async def events(platform: "Platform", chat: int, place: int, within: float) -> list[Json]:
    """Return what happened in a chat from `place` on, after waiting up to `within` real seconds."""
    return await _from(people.find_chat(platform, chat).diary, place, within)


async def toasts(platform: "Platform", person: int, place: int, within: float) -> list[Json]:
    """Return the answers to a person's presses, likewise."""
    return await _from(people.find_user(platform, person).diary, place, within)


async def _from(diary: Diary, place: int, within: float) -> list[Json]:
    await diary.wait_beyond(place, min(within, LONGEST_WAIT_S))
    return [told(entry) for entry in diary.entries[place:]]


async def transcript(platform: "Platform", place: int = 0, within: float = 0.0) -> list[Json]:
    """Return everything that happened from `place` on, after waiting up to `within` real seconds for some."""
    return await _from(platform.diary, place, within)


def told(entry: Entry) -> Json:
    return {
        "kind": entry.kind,
        "at": entry.at.isoformat(),
        "chat": entry.message.chat.label,
        "person": entry.person,
        "who": entry.who,
        "from_bot": entry.from_bot,
        "detail": entry.detail,
        "url": entry.url,
        "message": seen(entry.message, entry.content),
    }


def cast(platform: "Platform") -> Json:
    """Return the people with an account, and the groups with everybody's standing; the bot's too."""
    groups = [group for group in platform.groups.values() if group.moved_to is None]
    people_ = [user for user in platform.users.values() if not user.is_bot and not user.deleted]
    return {
        "people": [
            {
                "id": user.id,
                "name": user.name,
                "about": user.about,
                "blocked": _bot_with(platform, user) == "kicked",
            }
            for user in people_
        ],
        "groups": [
            {
                "id": group.id,
                "label": group.title,
                "members": {str(member.user.id): member.status for member in group.present},
            }
            for group in groups
        ],
        "bot": platform.bot.user.id,
        "handle": platform.bot.user.username,
    }


def _bot_with(platform: "Platform", user: User) -> Status:
    return platform.private_chat(platform.bot, user).member(platform.bot.user).status


def open_scene(platform: "Platform", title: str, point: str) -> None:
    """Begin a part of what is played."""
    platform.scenes.append(Scene(len(platform.diary.entries), title, point))


def scenes(platform: "Platform") -> list[Json]:
    return [asdict(scene) for scene in platform.scenes]


def me(platform: "Platform") -> Json:
    return {"username": platform.bot.user.username, "id": platform.bot.user.id, "token": platform.bot.token}


def waiting_updates(platform: "Platform") -> int:
    return len(platform.bot.updates)


def complaints(platform: "Platform") -> list[str]:
    return platform.complaints


def set_privacy(platform: "Platform", on: bool) -> None:
    """Choose what groups that the bot joins from now on let it hear."""
    platform.bot.privacy = on


# troubles


def decline(
    platform: "Platform",
    method: str,
    code: int,
    description: str,
    parameters: dict[str, int],
    times: int = 1,
    chat_id: int | None = None,
) -> None:
    platform.faults.add(Fault(method, Declined(code, description, **parameters), times, chat_id))


def lose(
    platform: "Platform",
    method: str,
    takes_effect: bool,
    seeming: Seeming,
    times: int = 1,
    chat_id: int | None = None,
) -> None:
    platform.faults.add(Fault(method, AnswerLost(seeming), times, chat_id, takes_effect))


def faults_pending(platform: "Platform") -> int:
    return platform.faults.pending


def enforce_rates(platform: "Platform", on: bool) -> None:
    platform.rates.enforced = on


# time


def read_clock(platform: "Platform") -> Json:
    reading = platform.clock.read()
    return {"moment": reading.moment.isoformat(), "runs": reading.runs, "version": reading.version}


async def follow_clock(platform: "Platform", follower: str, version: int, within: float) -> Json:
    """Return the reading once it is newer than `version`; a follower thereby says that it knows `version`."""
    platform.clock.followers.hear(follower, version)
    await platform.clock.changed_since(version, min(within, LONGEST_WAIT_S))
    return read_clock(platform)


def unfollow_clock(platform: "Platform", follower: str) -> None:
    platform.clock.followers.forget(follower)


async def travel(platform: "Platform", to: str | None = None, seconds: float = 0.0) -> Json:
    """Move the time and return once every follower knows."""
    moment = datetime.fromisoformat(to) if to else platform.clock.now() + timedelta(seconds=seconds)
    try:
        platform.clock.travel_to(moment)
    except ValueError as error:
        raise NotPossible(str(error)) from error
    await platform.clock.followers.all_know(platform.clock.read().version)
    return read_clock(platform)


async def let_time_run(platform: "Platform", runs: bool) -> Json:
    platform.clock.let_run(runs=runs)
    await platform.clock.followers.all_know(platform.clock.read().version)
    return read_clock(platform)


# behind the stage


def _behind(platform: "Platform") -> "Backstage":
    if platform.backstage is None:
        raise NotPossible("There is nothing behind this stage: the bot isn't the room's own.")
    return platform.backstage


async def kill_bot(platform: "Platform") -> None:
    await _behind(platform).kill()


async def start_bot(platform: "Platform") -> None:
    await _behind(platform).bot.start()


def cut_network(platform: "Platform") -> None:
    _behind(platform).cable.cut()


async def mend_network(platform: "Platform") -> None:
    await _behind(platform).cable.mend()


def use_up_limits(platform: "Platform", seconds: float) -> None:
    platform.rates.use_up(seconds)


async def go_on(platform: "Platform", to: str) -> Json:
    """Move the time by way of every moment that was set before `to`."""
    await _behind(platform).go_on(datetime.fromisoformat(to))
    return read_clock(platform)


async def let_it_run(platform: "Platform", runs: bool) -> Json:
    """Let the time run on, or stand still, where no day is played."""
    _behind(platform).must_be_free()
    return await let_time_run(platform, runs)


def skip_day(platform: "Platform") -> None:
    """End the day that is played, where it is."""
    if skip := _behind(platform).skip:
        skip()


_PEOPLE: list[Callable[..., Any]] = [
    people.add_person, people.add_group, people.say, people.send_other, people.send_file, people.send_voice,
    people.change_text,
    people.delete, people.pin,
    people.open_link, people.press, people.add_bot, people.remove_bot, people.promote, people.join, people.leave,
    people.remove, people.block, people.unblock, people.delete_account, people.upgrade_group,
]  # fmt: skip
_WATCHING: list[Callable[..., Any]] = [
    message, messages, pinned, download, visible_messages, events, toasts, transcript, cast, me,
    waiting_updates, complaints, set_privacy, open_scene, scenes,
]  # fmt: skip
_TROUBLES: list[Callable[..., Any]] = [decline, lose, faults_pending, enforce_rates]
_TIME: list[Callable[..., Any]] = [read_clock, follow_clock, unfollow_clock, travel, let_time_run]
_BEHIND: list[Callable[..., Any]] = [
    kill_bot, start_bot, cut_network, mend_network, use_up_limits, go_on, let_it_run, skip_day,
]  # fmt: skip

ACTS: dict[str, Callable[..., Any]] = {
    do.__name__: do for do in (*_PEOPLE, *_WATCHING, *_TROUBLES, *_TIME, *_BEHIND)
}
