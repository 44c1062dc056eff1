"""How a said thing gets its words: by language and kind, with English where a language has none yet."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Literal, TypeVar

from core.desk.commands import Command
from core.desk.outcome import Said
from core.desk.talk.says import Together
from core.errors import Defect

FALLBACK = "en"


@dataclass(frozen=True, slots=True)
class Button:
    """A labelled command."""

    label: str
    does: Command


@dataclass(frozen=True, slots=True)
class DoorButton:
    """A button in a group that leads into the private chat; `payload` of the deep link."""

    label: str
    payload: str


Row = tuple[Button | DoorButton, ...]


def in_rows(buttons: Sequence[Button | DoorButton], wide: int) -> list[Row]:
    """`wide` of them beside each other; the last row may be shorter."""
    return [tuple(buttons[start : start + wide]) for start in range(0, len(buttons), wide)]


@dataclass(frozen=True, slots=True)
class Attachment:
    """A file to go with the words. `sent_as`: what it is shown as; a `voice` is OGG with Opus, a `photo` PNG or JPEG.

    `make`: returns what is in it; pictures and sounds take their time. `caption`: what it shows, as HTML, in place of the
    words, which then follow it as a message of their own.
    """

    name: str
    make: Callable[[], bytes]
    sent_as: Literal["document", "photo", "voice"] = "document"
    caption: str | None = None


@dataclass(frozen=True, slots=True)
class Worded:
    """HTML text and rows of buttons; of a `file` without a caption, the text is that."""

    html: str
    rows: tuple[Row, ...] = ()
    file: Attachment | None = None


S = TypeVar("S", bound=Said)
_wordings: dict[tuple[str, type[Said]], Callable[[Said], Worded]] = {}


def wording(language: str, kind: type[S]) -> Callable[[Callable[[S], Worded]], Callable[[S], Worded]]:
    """Register a function as the words for `kind` in `language`."""

    def register(words: Callable[[S], Worded]) -> Callable[[S], Worded]:
        _wordings[language, kind] = words  # type: ignore[assignment]  # a wording only meets its own kind
        return words

    return register


def word(said: Said, language: str) -> Worded:
    """Say it in `language`, a code like `nl` or `pt-br`, else in English. A kind without words is a Defect."""
    if isinstance(said, Together):
        return joined([word(part, language) for part in said.parts])
    for tongue in (language, language.partition("-")[0], FALLBACK):
        words = _wordings.get((tongue, type(said)))
        if words is not None:
            return words(said)
    raise Defect(f"no words for {type(said).__name__}")


def joined(parts: Sequence[Worded]) -> Worded:
    """As one message; the buttons of all of them stand under it."""
    rows = tuple(dict.fromkeys(row for part in parts for row in part.rows))
    return Worded("\n\n".join(part.html for part in parts), rows)


def worded_kinds(language: str) -> frozenset[type[Said]]:
    """The kinds that `language` has words for."""
    return frozenset(kind for tongue, kind in _wordings if tongue == language)
