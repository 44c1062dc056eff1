"""Formatted text as the platform reads it: HTML in, plain text and entities out, and back.

Rules and wording of errors follow the Bot API's "HTML style" and the public server's parser. Offsets and
lengths of entities count UTF-16 units; places in error messages count bytes of UTF-8.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from html import escape
from typing import Any, NamedTuple

from bot.rehearsal.errors import bad_request

Entity = dict[str, Any]

_KINDS = {
    "b": "bold", "strong": "bold",
    "i": "italic", "em": "italic",
    "u": "underline", "ins": "underline",
    "s": "strikethrough", "strike": "strikethrough", "del": "strikethrough",
    "code": "code", "pre": "pre", "a": "text_link",
    "span": "spoiler", "tg-spoiler": "spoiler",
    "blockquote": "blockquote", "tg-emoji": "custom_emoji", "tg-time": "date_time",
}  # fmt: skip
_TAG_OF = {
    "bold": "b", "italic": "i", "underline": "u", "strikethrough": "s", "code": "code", "pre": "pre",
    "spoiler": "tg-spoiler", "blockquote": "blockquote",
}  # fmt: skip
_PIECE = re.compile(r"<(?P<tag>[^>]*)(?P<end>>?)|&(?P<ref>#x[0-9a-fA-F]+|#[0-9]+|lt|gt|amp|quot);")
_ATTRIBUTE = re.compile(r"""\s*([^\s=]+)(?:\s*=\s*("[^"]*"|'[^']*'|[^\s"'>]+))?""")
_NAMED = {"lt": "<", "gt": ">", "amp": "&", "quot": '"'}
_COMMAND_OR_MENTION = re.compile(r"(?<![\w/@])(?:/\w{1,64}(?:@\w{3,32})?|@\w{4,32})")


def utf16_length(text: str) -> int:
    return len(text) if text.isascii() else len(text.encode("utf-16-le")) // 2


@dataclass(slots=True)
class _Open:
    tag: str
    attributes: dict[str, str]
    offset: int


class Formatted(NamedTuple):
    text: str
    entities: list[Entity]


@dataclass(slots=True)
class _Reader:
    source: str
    text: list[str] = field(default_factory=list)
    offset: int = 0
    stack: list[_Open] = field(default_factory=list)
    entities: list[Entity] = field(default_factory=list)

    def read(self) -> None:
        position = 0
        for piece in _PIECE.finditer(self.source):
            self._say(self.source[position : piece.start()])
            self._take(piece)
            position = piece.end()
        self._say(self.source[position:])
        if self.stack:
            raise _unreadable(f'Can\'t find end tag corresponding to start tag "{self.stack[-1].tag}"')

    def _say(self, text: str) -> None:
        self.text.append(text)
        self.offset += utf16_length(text)

    def _take(self, piece: re.Match[str]) -> None:
        if piece["ref"]:
            self._say(_character(piece["ref"]) or piece.group())
            return
        place = f"at byte offset {len(self.source[: piece.start()].encode())}"
        tag = piece["tag"]
        closing = tag.startswith("/")
        if not piece["end"]:
            raise _unreadable(f"Unclosed {'end' if closing else 'start'} tag {place}")
        if closing:
            self._close(tag[1:].strip().lower(), place)
        else:
            self._open(tag, place)

    def _open(self, tag: str, place: str) -> None:
        name = re.split(r"\s", tag, maxsplit=1)[0].lower()
        if name not in _KINDS:
            raise _unreadable(f'Unsupported start tag "{name}" {place}')
        attributes = {key.lower(): value.strip("\"'") for key, value in _ATTRIBUTE.findall(tag[len(name) :])}
        if name == "span" and attributes.get("class") != "tg-spoiler":
            raise _unreadable(f'Tag "span" must have class "tg-spoiler" {place}')
        self.stack.append(_Open(name, attributes, self.offset))

    def _close(self, name: str, place: str) -> None:
        if not self.stack:
            raise _unreadable(f"Unexpected end tag {place}")
        opened = self.stack.pop()
        if name not in ("", opened.tag):
            raise _unreadable(f'Unmatched end tag {place}, expected "</{opened.tag}>", found "</{name}>"')
        length = self.offset - opened.offset
        details = _details(opened)
        if length and details is not None:
            self.entities.append({**details, "offset": opened.offset, "length": length})


def _unreadable(reason: str) -> Exception:
    return bad_request(f"can't parse entities: {reason}")


def _character(reference: str) -> str | None:
    if reference in _NAMED:
        return _NAMED[reference]
    code = int("0" + reference[1:], 0) if reference[1] == "x" else int(reference[1:])
    try:
        chr(code).encode()
    except (ValueError, OverflowError):  # beyond Unicode, or half a surrogate pair: the text stays as it is
        return None
    return chr(code) if code else None


def _details(opened: _Open) -> Entity | None:
    match opened.tag:
        case "a":
            # As on the platform, a link without an address is plain text.
            return (
                {"type": "text_link", "url": opened.attributes["href"]}
                if "href" in opened.attributes
                else None
            )
        case "tg-emoji":
            return {"type": "custom_emoji", "custom_emoji_id": opened.attributes.get("emoji-id", "")}
        case "tg-time":
            return {"type": "date_time", "unix_time": int(opened.attributes.get("unix", "0"))}
        case "blockquote" if "expandable" in opened.attributes:
            return {"type": "expandable_blockquote"}
    return {"type": _KINDS[opened.tag]}


def read_html(source: str) -> Formatted:
    """Read HTML as the server does. Raises Declined (400, "can't parse entities") where the real one does."""
    if "<" not in source and "&" not in source:
        return trimmed(source, [])
    reader = _Reader(source)
    reader.read()
    ordered = sorted(reader.entities, key=lambda entity: (entity["offset"], -entity["length"]))
    return trimmed("".join(reader.text), ordered)


def trimmed(text: str, entities: list[Entity]) -> Formatted:
    """Return the text without space around it, as messages are stored, and the entities moved along."""
    inner = text.strip()
    if len(inner) == len(text) or not inner:
        return Formatted(inner, entities if inner else [])
    before = utf16_length(text[: text.index(inner[0])])
    length = utf16_length(inner)
    return Formatted(inner, list(_moved(entities, before, length)))


def _moved(entities: list[Entity], before: int, length: int) -> Iterator[Entity]:
    for entity in entities:
        start = max(0, entity["offset"] - before)
        end = min(length, entity["offset"] + entity["length"] - before)
        if end > start:
            yield {**entity, "offset": start, "length": end - start}


def commands_and_mentions(text: str) -> list[Entity]:
    """Find what the platform marks by itself: /commands and @names."""
    if "/" not in text and "@" not in text:
        return []
    return [
        {
            "type": "bot_command" if found.group().startswith("/") else "mention",
            "offset": utf16_length(text[: found.start()]),
            "length": utf16_length(found.group()),
        }
        for found in _COMMAND_OR_MENTION.finditer(text)
    ]


def part(text: str, entity: Entity) -> str:
    """Return the text that an entity covers."""
    units = text.encode("utf-16-le")
    return units[2 * entity["offset"] : 2 * (entity["offset"] + entity["length"])].decode("utf-16-le")


def to_html(text: str, entities: list[Entity]) -> str:
    """Write text and entities as HTML again. Entities must nest, as the server's do."""
    starts: dict[int, list[str]] = {}
    ends: dict[int, list[str]] = {}
    for entity in entities:
        before, after = _marks(entity)
        starts.setdefault(entity["offset"], []).append(before)
        ends.setdefault(entity["offset"] + entity["length"], []).insert(0, after)
    out: list[str] = []
    offset = 0
    for character in text:
        out += ends.pop(offset, []) + starts.pop(offset, [])
        out.append(escape(character, quote=False))
        offset += utf16_length(character)
    return "".join(out + ends.pop(offset, []))


def _marks(entity: Entity) -> tuple[str, str]:
    if entity["type"] == "text_link":
        return f'<a href="{escape(entity["url"])}">', "</a>"
    if entity["type"] == "expandable_blockquote":
        return "<blockquote expandable>", "</blockquote>"
    tag = _TAG_OF.get(entity["type"])
    return (f"<{tag}>", f"</{tag}>") if tag else ("", "")
