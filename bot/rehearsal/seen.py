"""What people see: messages with their buttons, answers to presses, and the record of what happened."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Self

from bot.rehearsal.errors import NotPossible


@dataclass(frozen=True, slots=True)
class Button:
    """`data` is what a press sends; a link has a `url` instead."""

    label: str
    data: str | None = None
    url: str | None = None


@dataclass(frozen=True, slots=True)
class SeenFile:
    """What a message carries; `size` in bytes. Fetch it with `ilse.downloads(message)`."""

    id: str
    name: str
    size: int


@dataclass(frozen=True, slots=True)
class SeenMessage:
    """A message as it was when it was looked at; its buttons can be pressed even if they are gone since.

    `kind`: text, photo, voice, document, or the platform's name for something else. A caption is its `text`.
    """

    chat: int
    message_id: int
    who: str
    from_bot: bool
    kind: str
    text: str
    file: SeenFile | None
    html: str
    buttons: tuple[tuple[Button, ...], ...]
    reply_to: int | None
    reactions: str
    reworded: datetime | None
    sent: datetime

    @classmethod
    def of(cls, told: dict[str, Any]) -> Self:
        rows = tuple(tuple(Button(**button) for button in row) for row in told["buttons"])
        file = SeenFile(**told["file"]) if told["file"] else None
        reworded = datetime.fromisoformat(told["reworded"]) if told["reworded"] else None
        sent = datetime.fromisoformat(told["sent"])
        return cls(**(told | {"buttons": rows, "file": file, "reworded": reworded, "sent": sent}))

    @property
    def all_buttons(self) -> list[Button]:
        return [button for row in self.buttons for button in row]

    @property
    def labels(self) -> list[str]:
        return [button.label for button in self.all_buttons]

    def button(self, label: str) -> Button:
        """Return the button of that label, or the only one that begins so. Raises NotPossible."""
        _, found = find_button([self], label)
        return found

    def __str__(self) -> str:
        buttons = "".join(f"\n    [{'] ['.join(button.label for button in row)}]" for row in self.buttons)
        file = f" [{self.kind} {self.file.name}]" if self.file else ""
        return f"{self.who}:{file} {self.text}{buttons}"


@dataclass(frozen=True, slots=True)
class Toast:
    """The answer to a press, shown for a moment; `url` opens a chat with the bot."""

    text: str
    url: str | None


@dataclass(frozen=True, slots=True)
class Happening:
    """One line of the record. `kind`: message, edit, delete, press, toast, reaction.

    `detail` is the label pressed, the toast's text or the reaction; `message` what it happened to, as it was.
    """

    kind: str
    at: datetime
    chat: str
    person: int
    who: str
    from_bot: bool
    detail: str
    url: str | None
    message: SeenMessage

    @classmethod
    def of(cls, told: dict[str, Any]) -> Self:
        at, message = datetime.fromisoformat(told["at"]), SeenMessage.of(told["message"])
        return cls(**(told | {"at": at, "message": message}))

    @property
    def text(self) -> str:
        return self.message.text if self.kind in ("message", "edit") else self.detail

    @property
    def press(self) -> str | None:
        return self.detail if self.kind == "press" else None


def find_button(newest_first: Iterable[SeenMessage], label: str) -> tuple[SeenMessage, Button]:
    """Return the newest message with that button, else with just one whose label begins so; and the button.

    Raises NotPossible that lists the buttons there are.
    """
    messages = list(newest_first)
    for message in messages:
        for button in message.all_buttons:
            if button.label == label:
                return message, button
    for message in messages:
        beginning = [button for button in message.all_buttons if button.label.startswith(label)]
        if len(beginning) == 1:
            return message, beginning[0]
    raise NotPossible(
        f"no button {label!r}, or more than one that begins so; there are: {_overview(messages)}"
    )


def _overview(messages: list[SeenMessage]) -> str:
    lines = [f"\n  {message.labels} under {message.text[:60]!r}" for message in messages if message.buttons]
    return "".join(lines) or "none"
