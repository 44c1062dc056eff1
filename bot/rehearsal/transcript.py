"""The record of a rehearsal as a chat to read: who writes where, one conversation after the other."""

import textwrap
from collections.abc import Iterable
from datetime import tzinfo

from bot.rehearsal.seen import Happening, SeenMessage

WIDTH = 110
_NAME = 12
_LONG = 60


class Transcript:
    """Writes one happening after the other, on the clock of `zone`.

    Left out is what no reader misses: empty answers to presses, and messages that only lost their buttons. What was
    said word for word before is cut to its beginning, and stands behind the answer if it is a question. What the bot
    says     at length ends after `most_lines`; None: it never does.
    """

    def __init__(self, zone: tzinfo, most_lines: int | None = None) -> None:
        self._zone = zone
        self._most_lines = most_lines
        self._place = ""
        self._told: set[str] = set()
        self._asked_again: dict[str, str] = {}
        self._texts: dict[tuple[int, int], str] = {}

    def lines_of(self, happening: Happening) -> list[str]:
        told = self._tell(happening)
        if told:
            told = self._heading(happening) + told
        message = happening.message
        self._texts[message.chat, message.message_id] = message.text
        return told

    def _heading(self, happening: Happening) -> list[str]:
        """Where and when, whenever one of them is another."""
        at = happening.at.astimezone(self._zone)
        place = f"{at:%A %H:%M} · {happening.chat.replace(' (private)', ' with Bellwether')}"
        if place == self._place:
            return []
        self._place = place
        return ["", f"{place} ".ljust(WIDTH, "─")]

    def _tell(self, happening: Happening) -> list[str]:
        match happening.kind:
            case "press":
                return self._line(happening.who, f"taps [{happening.detail}]{self._question(happening)}")
            case "toast" if happening.detail:
                return self._line("", f"(in a small window: {happening.detail})")
            case "reaction" if happening.detail:
                return self._line(happening.who, f"reacts {happening.detail}")
            case "message":
                return self._message(happening, happening.text)
            case "edit":
                return self._edit(happening)
        return []

    def _edit(self, happening: Happening) -> list[str]:
        message = happening.message
        before = self._texts.get((message.chat, message.message_id), "")
        if happening.from_bot and before and message.text.startswith(before):
            return []
        words = f"(edited) {message.text}" if happening.from_bot else f"changes that to: {message.text}"
        return self._message(happening, words)

    def _message(self, happening: Happening, words: str) -> list[str]:
        if not happening.from_bot:
            return self._line(happening.who, _as_done(happening.message, words) + self._question(happening))
        known = words.replace(happening.chat.removesuffix(" (private)"), "")
        if known in self._told and len(words) > _LONG:
            return self._again(happening, _beginning(words))
        self._told.add(known)
        buttons = [f"[{'] ['.join(one.label for one in row)}]" for row in happening.message.buttons]
        lines = self._line(happening.who, _with_file(happening.message, words))
        return self._cut(lines) + [f"{'':<{_NAME}}{line}" for line in self._wrapped(buttons)]

    def _cut(self, lines: list[str]) -> list[str]:
        most = self._most_lines
        if most is None or len(lines) <= most + 1:
            return lines
        return [*lines[:most], f"{'':<{_NAME}}… and {len(lines) - most} lines more"]

    def _again(self, happening: Happening, beginning: str) -> list[str]:
        if "?" in happening.text:
            self._asked_again[happening.chat] = beginning
            return []
        return self._line(happening.who, f"{beginning} …")

    def _question(self, happening: Happening) -> str:
        """What was asked in the same words as before, to stand behind its answer."""
        asked = self._asked_again.pop(happening.chat, "")
        return f"   ({asked} …)" if asked else ""

    @staticmethod
    def _line(who: str, words: str) -> list[str]:
        """Words beside the name of who says them, wrapped."""
        first, *rest = Transcript._wrapped(words.split("\n"))
        return [f"{who:<{_NAME}}{first}".rstrip(), *(f"{'':<{_NAME}}{line}".rstrip() for line in rest)]

    @staticmethod
    def _wrapped(words: Iterable[str]) -> list[str]:
        lines: list[str] = []
        for line in words:
            hanging = "  " if line.startswith(("• ", "[")) else ""
            lines += textwrap.wrap(line, WIDTH - _NAME, subsequent_indent=hanging) or [""]
        return lines


def _beginning(words: str) -> str:
    """What it asks, else its first line; as much of it as stands easily in a line."""
    lines = words.removeprefix("(edited) ").split("\n")
    telling = next((line for line in lines if "?" in line), lines[0])
    return textwrap.shorten(telling, _LONG, placeholder="").rstrip(" .?!:,")


def _as_done(message: SeenMessage, words: str) -> str:
    """What a person did, rather than what their app sent for it."""
    if words.startswith("/start"):
        return "opens the private chat"
    if message.kind == "new_chat_members":
        return "comes into the group" if words == message.who else f"adds {words} to the group"
    if message.kind == "left_chat_member":
        return "leaves the group" if words == message.who else f"removes {words} from the group"
    return _with_file(message, words)


def _with_file(message: SeenMessage, words: str) -> str:
    if message.file is None:
        return words
    what = f"file {message.file.name}" if message.kind == "document" else f"{message.kind} message"
    return f"<{what}> {words}".rstrip()
