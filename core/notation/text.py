"""Typed text made plain, without losing where each character stood."""

import re
import unicodedata
from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import lru_cache

from core.notation.needles import may_match

# Dashes, crosses, single and double quotes and primes, bullets and arrows: what phones and papers put in.
_DASHES = "\u2010\u2011\u2012\u2013\u2014\u2015\u2212\u2043"
_PLAIN = (
    dict.fromkeys(_DASHES, "-")
    | dict.fromkeys("\u00d7\u2715\u2716\u2717\u2573", "x")
    | dict.fromkeys("\u2018\u2019\u201b\u2032`\u00b4", "'")
    | dict.fromkeys("\u201c\u201d\u201e\u201f\u2033", '"')
    | dict.fromkeys("\u2022\u00b7\u25aa\u25ab\u25cf\u25cb\u25e6\u2023\u27a4\u25ba", "*")
    | {
        "\u20e3": ")",
        "\u23f1": " for time ",
        "\u2192": "->",
        "\u2026": "...",
        "\t": " ",
        "\u00ba": " ",
        "\u00b0": " ",
        "\u00f7": "/",
        "\u2044": "/",
        "\u2215": "/",
    }
)
# Emoji, marks and invisible characters say nothing about training; keycaps leave their digit behind.
_SILENT = {"So", "Sk", "Cs", "Co", "Cn", "Cf", "Cc", "Mn", "Me"}

# Between the digits of a tempo, once a row has told that it is one.
TEMPO_MARK = "_"

_AROUND = " \t.,:;*-"
_PICTURE = "|"
# Plain characters that mean another one, or a picture's place at an end.
_TO_PLAIN = re.compile(r"`|^[|\s]*\||\|[|\s]*$")
_PICTURES_AROUND = re.compile(r"^[|\s]+|[|\s]+$")

_DECIMAL_COMMA = re.compile(r"(?<![0-9,.])([0-9]{1,3}),([0-9]{1,2})(?![0-9]|,[0-9])")
_THOUSANDS = re.compile(
    r"(?<![0-9,.])([0-9]{1,3}),([0-9]{3})(?![0-9,])|(?<![0-9,./] )(?<![0-9,./])([1-9][0-9]?) ([0-9]{3})(?=\s?m\b)"
)


@dataclass(frozen=True)
class Row:
    """One typed line: its number from 1, its plain text, the typed column (from 1) of each character, as typed."""

    number: int
    text: str
    columns: tuple[int, ...]
    typed: str = ""

    def column(self, at: int) -> int:
        return self.columns[at] if at < len(self.columns) else (self.columns[-1] + 1 if self.columns else 1)

    def own_words(self, start: int, end: int) -> str:
        """A stretch of the plain text as it was typed, punctuation around it left out."""
        return self.typed[self.column(start) - 1 : self.column(end) - 1].strip(_AROUND)


def rows(text: str) -> tuple[Row, ...]:
    """Every line of `text`, made plain; empty lines are kept, and a picture between words parts them."""
    return tuple(plain_row(line, number, _PICTURE) for number, line in enumerate(text.splitlines(), 1))


def plain_row(line: str, number: int = 1, picture: str = " ") -> Row:
    """One line with plain dashes, quotes, digits, fractions and spaces; emoji become `picture` amid words."""
    if line.isascii() and line.isprintable() and not _TO_PLAIN.search(line):
        return _with_plain_numbers(Row(number, line, tuple(range(1, len(line) + 1)), line))
    plain: list[str] = []
    columns: list[int] = []
    for column, character in enumerate(line, 1):
        drawn = unicodedata.category(character) == "So" and character not in _PLAIN
        for said in picture if drawn else _plain_character(character, plain[-1] if plain else ""):
            plain.append(said)
            columns.append(column)
    text = _PICTURES_AROUND.sub(lambda match: " " * len(match[0]), "".join(plain))
    return _with_plain_numbers(Row(number, text, tuple(columns), line))


def blanked(row: Row, start: int, end: int) -> Row:
    """The row with a stretch of it made spaces, so that places stay true."""
    return replace(row, text=row.text[:start] + " " * (end - start) + row.text[end:])


def replaced(row: Row, pattern: re.Pattern[str], said: Callable[[re.Match[str]], str]) -> Row:
    """The row with other words in place of each match, which stand from its typed column to its end."""
    text, columns, done = "", row.columns[:0], 0
    for match in pattern.finditer(row.text):
        new = said(match)
        text += row.text[done : match.start()] + new
        columns += row.columns[done : match.start()] + (row.column(match.start()),) * len(new)
        if len(new) > 1:
            columns = (*columns[:-1], row.column(match.end() - 1))
        done = match.end()
    if not done:
        return row
    return Row(row.number, text + row.text[done:], columns + row.columns[done:], row.typed)


@lru_cache(maxsize=64)
def plain(text: str) -> str:
    """`text` as one plain line, runs of spaces closed; a dozen readers ask for that of the same message."""
    return " ".join(plain_row(" ".join(text.splitlines())).text.split())


def in_lines(text: str) -> str:
    """`text` plain, its lines kept apart."""
    lines = (plain(line) for line in text.splitlines())
    return "\n".join(line for line in lines if line)


def _plain_character(character: str, before: str) -> str:
    if character.isascii() and character.isprintable():
        return character
    if character in _PLAIN:
        return _PLAIN[character]
    category = unicodedata.category(character)
    if category == "No":
        return _fraction(character, before)
    if category in _SILENT or character.isspace():
        return " "
    return unicodedata.normalize("NFKC", character)


def _fraction(character: str, before: str) -> str:
    """`1½` reads 1.5 and `½` 0.5; other numerals (superscripts, circled) read as their digits."""
    value = unicodedata.numeric(character)
    if value.is_integer():
        return unicodedata.normalize("NFKC", character)
    digits = f"{value:.4g}".removeprefix("0")
    return digits if before.isdigit() else f"0{digits}"


def _with_plain_numbers(row: Row) -> Row:
    """`7,5` reads 7.5, `1,000` and `1 000 m` one number."""
    row = replace(row, text=_DECIMAL_COMMA.sub(r"\1.\2", row.text))
    return replaced(row, _THOUSANDS, lambda match: "".join(filter(None, match.groups())))


_TEMPO = re.compile(r"(?<![0-9.:\-])[0-9]-[0-9x]-[0-9x](?:-[0-9x])?(?![0-9:\-]|\.[0-9])")
_SETS = re.compile(r"(?<![0-9.])[0-9]{1,2}\s?[x*]\s?[0-9]|\bsets?\b")


def mark_tempos(text: str) -> str:
    """Digits that can only tell a tempo, so that nobody takes them for a scheme: `@ 3-1-1`, `5x5 (2-0-1-0)`."""
    sets = _SETS.search(text)

    def marked(match: re.Match[str]) -> str:
        before = text[: match.start()].rstrip()
        is_tempo = sets or before.endswith(("@", "tempo", "tempo:")) or re.search("[0x]", match[0])
        return match[0].replace("-", TEMPO_MARK) if is_tempo else match[0]

    return _TEMPO.sub(marked, text)


class Strip:
    """A line being read: each phrase that is understood is taken away, what is left is not.

    A taken phrase leaves a mark of the same width, so that places stay true and neighbours stay apart.
    """

    MARK = ";"

    def __init__(self, text: str) -> None:
        self.text = text

    def take(self, pattern: re.Pattern[str]) -> re.Match[str] | None:
        """The first match, taken away; None where there is none."""
        match = pattern.search(self.text) if may_match(pattern, self.text) else None
        if match and match.end() > match.start():
            self.blank(match.start(), match.end())
            return match
        return None

    def blank(self, start: int, end: int) -> None:
        self.text = self.text[:start] + self.MARK * (end - start) + self.text[end:]

    @property
    def left(self) -> str:
        """What is still unread, without marks and punctuation at its ends."""
        return self.text.replace(self.MARK, " ").strip(" .,:;-*/&+|=!?")
