"""The record of a rehearsal as a chat to read: who writes where, one conversation after the other."""

import textwrap
from collections.abc import Iterable
from datetime import tzinfo

from bot.rehearsal.seen import Happening, SeenMessage

WIDTH = 110
NAME = 12


class Transcript:
    """Writes one happening after the other, on the clock of `zone`.

    Left out is what no reader misses: empty answers to presses, and messages that only lost their buttons.
    """

    def __init__(self, zone: tzinfo) -> None:
        self._zone = zone
        self._place = ""
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
        words = words_of(happening)
        if not words or self._only_lost_buttons(happening):
            return []
        who = "" if happening.kind == "toast" else happening.who
        if happening.kind == "toast":
            words = f"(in a small window: {words})"
        elif happening.kind == "edit" and happening.from_bot:
            words = f"(edited) {words}"
        return beside(who, [*words.split("\n"), *_keys(happening)])

    def _only_lost_buttons(self, happening: Happening) -> bool:
        message = happening.message
        before = self._texts.get((message.chat, message.message_id), "")
        return (
            happening.kind == "edit"
            and happening.from_bot
            and bool(before)
            and message.text.startswith(before)
        )


def words_of(happening: Happening) -> str:
    """What was said or done; empty where there is nothing to read."""
    match happening.kind:
        case "press":
            return f"taps [{happening.detail}]"
        case "toast":
            return happening.detail
        case "reaction" if happening.detail:
            return f"reacts {happening.detail}"
        case "edit" if not happening.from_bot:
            return f"changes that to: {happening.text}"
        case "message" | "edit":
            return _as_done(happening.message, happening.text, from_bot=happening.from_bot)
    return ""


def beside(who: str, lines: Iterable[str]) -> list[str]:
    """Words beside the name of who says them, wrapped."""
    first, *rest = _wrapped(lines)
    return [f"{who:<{NAME}}{first}".rstrip(), *(f"{'':<{NAME}}{line}".rstrip() for line in rest)]


def _wrapped(words: Iterable[str]) -> list[str]:
    lines: list[str] = []
    for line in words:
        hanging = "  " if line.startswith(("• ", "[")) else ""
        lines += textwrap.wrap(line, WIDTH - NAME, subsequent_indent=hanging) or [""]
    return lines


def _keys(happening: Happening) -> list[str]:
    if not happening.from_bot or happening.kind not in {"message", "edit"}:
        return []
    return [f"[{'] ['.join(one.label for one in row)}]" for row in happening.message.buttons]


def _as_done(message: SeenMessage, words: str, *, from_bot: bool) -> str:
    """What a person did, rather than what their app sent for it."""
    if words.startswith("/start") and not from_bot:
        return "opens the private chat"
    if message.kind == "new_chat_members":
        return "comes into the group" if words == message.who else f"adds {words} to the group"
    if message.kind == "left_chat_member":
        return "leaves the group" if words == message.who else f"removes {words} from the group"
    if message.file is None:
        return words
    what = f"file {message.file.name}" if message.kind == "document" else f"{message.kind} message"
    return f"<{what}> {words}".rstrip()
