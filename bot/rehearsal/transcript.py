"""The record of a rehearsal as a chat to read: who writes where, one conversation after the other."""

import textwrap
from collections.abc import Iterable
from datetime import tzinfo
from itertools import groupby
from operator import itemgetter

from bot.rehearsal.seen import Happening, SeenMessage

WIDTH = 110
_NAME = 12
_LONG = 60
_RUN = 4  # so many lines said before are left out


class Transcript:
    """Writes one happening after the other, on the clock of `zone`.

    Left out is what no reader misses: empty answers to presses, and messages that only lost their buttons. What was
    said word for word before is cut to its beginning, and stands behind the answer if it is a question; within a
    message "…" is for lines said before. `whole`: all that was said is told.
    """

    def __init__(self, zone: tzinfo, *, whole: bool = False) -> None:
        self._zone = zone
        self._whole = whole
        self._lines_told: set[str] = set()
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
        if known in self._told and len(words) > _LONG and not self._whole:
            return self._again(happening, _beginning(words))
        self._told.add(known)
        buttons = [f"[{'] ['.join(one.label for one in row)}]" for row in happening.message.buttons]
        lines = self._news(_with_file(happening.message, words).split("\n"))
        return self._line(happening.who, "\n".join([*lines, *buttons]))

    def _news(self, lines: list[str]) -> list[str]:
        """The lines, but for runs of them that the bot has said before."""
        known = [line in self._lines_told or not line for line in lines]
        known[0] = False
        self._lines_told.update(lines)
        if self._whole:
            return lines
        runs = [
            [line for _, line in run] for _, run in groupby(zip(known, lines, strict=True), itemgetter(0))
        ]
        found: list[str] = []
        for number, run in enumerate(runs):
            is_known = number % 2 == 1  # the first line always counts as new
            found += _folded(run, runs[number + 1 :]) if is_known and len(run) >= _RUN else run
        return found

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


def _folded(lines: list[str], then: list[list[str]]) -> list[str]:
    """In place of them; but a heading stays with what is new under it."""
    is_heading = then and then[0][0].startswith("•") and lines[-1] and not lines[-1].startswith("•")
    return ["…", lines[-1]] if is_heading else ["…"]


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
