"""Everything that anybody can send, typed, pressed, linked, replied or edited, for those who try to see too much."""

from collections.abc import Iterator
from contextlib import suppress
from dataclasses import dataclass
from random import Random
from typing import Any

from bot.rehearsal.errors import NotPossible
from bot.rehearsal.platform import USERNAME
from bot.rehearsal.voice import Person
from tests.soak.two_groups import World

NAMES = ("Annquilla", "Bennwyck", "Jointhilde", "Gonzella", "Exeter", "Marit", "Rurik")
SLASHES = (
    "start",
    "today",
    "board",
    "classes",
    "me",
    "export",
    "forget",
    "help",
    "notes",
    "roster",
    "cancel",
)
# `{}` is somebody's name.
TEXTS = (
    "who reported", "who needs me", "roster", "who's in today?", "how is it going?", "notes", "my notes", "digest",
    "how is {}", "{}", "why {}", "{} got 6+1", "{} 5+5", "let {} go heavier", "volume first for {}", "hold {}",
    "easy week for {}", "easy week", "{}: deadlifts at most 30 kg", "{}'s deadlift is fine now", "what does {} have",
    "{} rounds her back in squats", "what did {} do", "{} is injured", "remind {} of the class", "I share it with {}",
    "I have the same as {}", "post it now", "post it tomorrow at 7", "take the session back", "withdraw the class",
    "no class next Tuesday", "class Mondays 19:00, 30 min, https://example.org/mine", "when is class", "class link",
    "I'm in", "what's my version", "today", "board", "yesterday's board", "what did I do last time", "my progress",
    "tell my coach hello", "what do you know about me", "let my coach see what I spare", "everything about {}",
    "AMRAP 7\n5 push-ups\n5 air squats", "7+12", "3+1", "8:43", "60 kg 3x8", "rpe 7", "my knee hurts", "nothing hurts",
    "I have two 10s and a chair", "how long will it take {}", "what if we swap push-ups for dips?", "standings",
    "take it back", "not right", "yes", "no", "why", "thanks", "start", "remind me 30 minutes before", "kg", "Berlin",
)  # fmt: skip


@dataclass(frozen=True)
class Button:
    """A button as somebody saw it; `link` instead of `data` if it opens the bot."""

    chat: int
    message: int
    label: str
    data: str
    link: str


@dataclass(frozen=True)
class Attempt:
    who: Person
    act: str
    details: tuple[tuple[str, Any], ...]

    async def happens(self, world: World) -> bool:
        """Do it; False where no app and no hostile client could."""
        with suppress(NotPossible):
            await world.room.stage.do(self.act, person=self.who.id, **dict(self.details))
            return True
        return False

    @property
    def told(self) -> str:
        return str(dict(self.details).get("text", ""))


def _attempt(who: Person, act: str, **details: Any) -> Attempt:
    return Attempt(who, act, tuple(details.items()))


def texts(world: World) -> Iterator[Attempt]:
    """Yield every word and slash of everybody in every chat where they can write."""
    said = [text.format(name) for text in TEXTS for name in (NAMES if "{}" in text else ("",))]
    said += [f"/{slash}{rest}" for slash in SLASHES for rest in ("", " 1", " Annquilla")]
    for who in world.people.values():
        for chat in world.chats_of(who):
            for text in (one for one in said if not _posts_own(one, who.id, who, world)):
                addressed = f"{text}@{USERNAME}" if text.startswith("/") and " " not in text else text
                yield _attempt(who, "say", chat=chat, text=addressed)


def replies(world: World) -> Iterator[Attempt]:
    """Yield an answer of everybody to every message that they can see."""
    for who in world.people.values():
        for chat in world.chats_of(who):
            for message in _chat(world, chat).messages:
                for text in ("7+2", "why", "Annquilla 4+4", "notes"):
                    yield _attempt(who, "say", chat=chat, text=text, reply_to=message)


def edits(world: World) -> Iterator[Attempt]:
    """Yield changes of what one wrote before."""
    for who in world.people.values():
        for chat in world.chats_of(who):
            for message in _chat(world, chat).messages.values():
                if message.sender.id == who.id and message.content.text:
                    for text in ("who reported", "6+3", message.content.text + " more"):
                        yield _attempt(who, "change_text", chat=chat, message=message.id, text=text)


def presses(world: World, buttons: list[Button]) -> Iterator[Attempt]:
    """Yield every button pressed by everybody: where it stands, and its data sent from elsewhere."""
    for button in buttons:
        for who in world.people.values():
            if button.link or _erases_own(button, who) or _posts_own(button.label, button.chat, who, world):
                continue
            for chat in {button.chat, *world.chats_of(who)}:
                message = button.message if chat == button.chat else _last_of_bot(world, chat)
                if message is not None:
                    yield _press(who, chat, message, button.data)


def altered_presses(world: World, buttons: list[Button], random: Random) -> Iterator[Attempt]:
    """Yield presses whose numbers were changed, or that carry the seal of another button."""
    sealed = [button for button in buttons if "~" in button.data]
    for button in sealed:
        body, _, seal = button.data.rpartition("~")
        code, *fields = body.split(":")
        other = random.choice(sealed).data.rpartition("~")[2]
        numbers = [str(int(one) + random.choice((-1, 1, 2))) if one.isdigit() else one for one in fields]
        for data in (f"{':'.join([code, *numbers])}~{seal}", f"{body}~{other}", body):
            who = random.choice(list(world.people.values()))
            message = _last_of_bot(world, who.id)
            if message is not None:
                yield _press(who, who.id, message, data)


def links(world: World, buttons: list[Button]) -> Iterator[Attempt]:
    """Yield every link opened by everybody, and with other numbers in it."""
    payloads = {button.link.rpartition("=")[2] for button in buttons if "start=" in button.link}
    kinds = {payload.rstrip("0123456789-") or "v" for payload in payloads}
    made_up = {f"{kind}{number}" for kind in kinds for number in range(-1, 9)}
    for payload in sorted(payloads | made_up):
        for who in world.people.values():
            yield _attempt(who, "open_link", link=f"https://t.me/{USERNAME}?start={payload}")


def _posts_own(text: str, chat: int, who: Person, world: World) -> bool:
    """Whether a coach would post a draft that is to stay unseen."""
    is_coach = who in (world.a.coach, world.b.coach)
    return is_coach and chat == who.id and ("post" in text.lower() or "share" in text.lower())


def _press(who: Person, chat: int, message: int, data: str) -> Attempt:
    return _attempt(who, "press", chat=chat, message=message, data=data, label="?")


def _erases_own(button: Button, who: Person) -> bool:
    """Whether somebody would erase what is theirs, as they may: then there is nothing left to leak."""
    return button.chat == who.id and "rase" in button.label


def _chat(world: World, chat: int) -> Any:
    if chat < 0:
        return world.platform.groups[chat]
    return world.platform.private_chat(world.platform.bot, world.platform.users[chat])


def _last_of_bot(world: World, chat: int) -> int | None:
    said = [one for one in _chat(world, chat).messages.values() if one.sender.is_bot and not one.deleted]
    return said[-1].id if said else None


def buttons_seen(world: World) -> list[Button]:
    """Every button that ever stood anywhere."""
    found = {}
    for entry in world.platform.diary.entries:
        keyboard = (entry.content.keyboard or {}).get("inline_keyboard", [])
        for button in (one for row in keyboard for one in row):
            data, link = button.get("callback_data", ""), button.get("url", "")
            key = (entry.message.chat.id, entry.message.id, data or link)
            found[key] = Button(key[0], key[1], button["text"], data, link)
    return list(found.values())
