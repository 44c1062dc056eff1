"""Cut a long HTML text into messages that the platform takes: as text with entities, so never inside markup."""

import html
import re
from bisect import bisect_right
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import accumulate

from telegram.constants import MessageLimit

from bot.words.text import escape

_TAG = re.compile(r"<(?P<close>/?)(?P<name>[a-z][a-z0-9-]*)[^>]*>")
_MOST_ENTITIES = int(MessageLimit.MESSAGE_ENTITIES)
_BEYOND_THE_BASIC_PLANE = 0xFFFF
_LEFT_OUT = "\n…"


@dataclass(frozen=True, slots=True)
class _Entity:
    """A stretch of the text in one piece of markup."""

    start: int
    end: int
    tag: str
    name: str


@dataclass(frozen=True, slots=True)
class _Text:
    """Plain text with its entities, outer ones first."""

    plain: str
    entities: tuple[_Entity, ...]

    def part(self, start: int, end: int) -> str:
        """The HTML of a stretch; markup that reaches beyond it is closed at its end and opened at its start."""
        inside = [one for one in self.entities if one.start < end and one.end > start]
        marks: list[tuple[int, int, int, str]] = []
        for place, one in enumerate(inside):
            marks.append((max(one.start, start), 1, place, one.tag))
            marks.append((min(one.end, end), 0, -place, f"</{one.name}>"))
        written, at = [], start
        for mark_at, _, _, tag in sorted(marks):
            written += [escape(self.plain[at:mark_at]), tag]
            at = mark_at
        return "".join([*written, escape(self.plain[at:end])])


def split(text: str, limit: int = MessageLimit.MAX_TEXT_LENGTH) -> list[str]:
    """Parts of at most `limit` characters, no more entities than the platform takes; cut between lines if it goes."""
    if _length(text) <= limit and text.count("<") <= _MOST_ENTITIES:
        return [text] if text.strip() else []
    whole = _read(text)
    return [whole.part(start, end) for start, end in _stretches(whole, limit)]


def shorten(text: str, limit: int = MessageLimit.MAX_TEXT_LENGTH) -> str:
    """The first part that fits, marked where something is left out: an edit can't become two messages."""
    parts = split(text, limit)
    if len(parts) <= 1:
        return text
    return split(text, limit - len(_LEFT_OUT))[0] + _LEFT_OUT


def _read(text: str) -> _Text:
    plain: list[str] = []
    opened: list[tuple[int, int, str, str]] = []
    entities: list[tuple[int, _Entity]] = []
    at = length = 0
    for place, tag in enumerate(_TAG.finditer(text)):
        said = html.unescape(text[at : tag.start()])
        plain.append(said)
        length, at = length + len(said), tag.end()
        if not tag["close"]:
            opened.append((place, length, tag[0], tag["name"]))
        elif opened:
            order, start, opening, name = opened.pop()
            if start < length:
                entities.append((order, _Entity(start, length, opening, name)))
    plain.append(html.unescape(text[at:]))
    return _Text("".join(plain), tuple(one for _, one in sorted(entities, key=lambda pair: pair[0])))


def _stretches(whole: _Text, limit: int) -> Iterator[tuple[int, int]]:
    """Where each part begins and ends, without blanks around it."""
    units = list(accumulate(map(_units, whole.plain), initial=0))
    starts = sorted(one.start for one in whole.entities)
    start, length = 0, len(whole.plain)
    while start < length:
        if whole.plain[start].isspace():
            start += 1
            continue
        most = bisect_right(units, units[start] + limit) - 1
        end = _cut(whole.plain, start, min(most, _most_marked(whole, starts, start), length))
        yield start, start + len(whole.plain[start:end].rstrip())
        start = end


def _most_marked(whole: _Text, starts: list[int], start: int) -> int:
    """How far the entities reach that one message may have, those that began before included."""
    going_on = sum(1 for one in whole.entities if one.start < start < one.end)
    last = bisect_right(starts, start - 1) + _MOST_ENTITIES - going_on
    return max(starts[last], start + 1) if last < len(starts) else len(whole.plain)


def _cut(plain: str, start: int, end: int) -> int:
    """The end of the last line, else of the last word, in front of `end`."""
    if end >= len(plain) or plain[end] == "\n":
        return end
    for mark in ("\n", " "):
        found = plain.rfind(mark, start + 1, end)
        if found > start:
            return found
    return end


def _units(character: str) -> int:
    return 2 if ord(character) > _BEYOND_THE_BASIC_PLANE else 1


def _length(text: str) -> int:
    """Length as the platform counts, in UTF-16 units; markup counted too, so never too low."""
    return len(text) if text.isascii() else sum(map(_units, text))
