"""Which part of a session the words are about: `part 2`, `B:`, `the first part`; and what is said of each."""

import re
from collections.abc import Iterator, Sequence
from typing import Final, NamedTuple

# `45 second` is a time; after `8:43` or `6+3` the same word names the part.
_NO_TIME: Final = r"(?:(?<=[:+][0-9][0-9]\s)|(?<=\+[0-9]\s)|(?<![0-9]\s)(?<![0-9]))"
_LABEL: Final = re.compile(
    r"(?:\b(?:in|for|on|of|and|then)\s)?(?:\b(?:the|my)\s)?(?:"
    r"\b(?:(?:part|pt\.?|block|piece|item)\s?(?P<number>[1-9]|[a-h]\b|one\b|two\b|three\b)|p(?P<short>[1-9]))\b"
    r"|(?<![a-z0-9'])(?P<letter>[a-h])\s?[:)=]"
    rf"|{_NO_TIME}\b(?P<nth>first|second|third|1st|2nd|3rd)\b(?:\s(?:part|block|piece|bit|one)\b|"
    r"(?!\s(?:rounds?|rds?|sets?|reps?|min\w*|time|try|half|attempt|interval|few|[0-9]+ (?:rounds?|reps?|min))))"
    r"|^\W*(?P<alone>[b-h])(?=\s(?:was\s|is\s|took\s)?[0-9])"
    r"|\b(?P<last>last)\s(?:part|block|piece|bit|one)\b)"
    r"(?:\s?(?::|=|-|\bwas\b|\bis\b|\btook(?: me)?\b))?",
    re.IGNORECASE,
)
# `A 32 kg, B took 14:20`: one letter alone may be an article, two in their order are none.
_BARE: Final = re.compile(
    r"(?P<before>^\W*|[,;.!/|\n]\s*|\b(?:and then|and|then)\s+"
    r"|(?:(?<=[0-9])|(?<=[0-9]s)|(?<=kg)|(?<=lb)|(?<=cal)|(?<=cals)|(?<=reps)|(?<=[0-9]m)|(?<=\sm)|(?<=km)|(?<=rounds))\s+)(?:my\s+)?(?P<letter>[a-h])\s+"
    r"(?:(?:was|is|took(?: me)?)\s+)?(?!and\b)",
    re.IGNORECASE,
)
_SPOKEN: Final = {"one": 1, "two": 2, "three": 3}
_NTH: Final = {"first": 1, "second": 2, "third": 3, "1st": 1, "2nd": 2, "3rd": 3}
_CUT: Final = re.compile(r"[,;|\n]|\b(?:and then|then|and)\b", re.IGNORECASE)
_DIGIT: Final = re.compile(r"[0-9]")
LAST: Final = -1


class Part(NamedTuple):
    """`number`: from 1, or LAST. `of_scored`: counted among the parts that are scored, as people do with `first`."""

    number: int
    of_scored: bool


class Told(NamedTuple):
    """What is said of one part; `part` None: of the one that no label names."""

    part: Part | None
    words: str


class Label(NamedTuple):
    part: Part
    start: int
    end: int


def find_part(words: str) -> tuple[Part, str] | None:
    """The one part that is named, and the words without its name; None where none or several are."""
    lettered = _with_colons(words)
    found = [one for one in labels_in(lettered) if lettered == words or not one.part.of_scored]
    if len({one.part for one in found}) != 1:
        return None
    return found[0].part, " ".join(_without(lettered, found).split())


def names_several(words: str) -> bool:
    """Whether parts are told apart by letters or numbers: `A 92. B 5:12`."""
    return len({one.part for one in labels_in(_with_colons(words)) if not one.part.of_scored}) > 1


def by_parts(words: str) -> Iterator[tuple[Told, ...]]:
    """The ways in which the words may be told apart by the parts they name, the likeliest first."""
    lettered = _with_colons(words)
    found = [one for one in labels_in(lettered) if lettered == words or not one.part.of_scored]
    words = lettered
    if len(found) == len({one.part for one in found}) > 1:
        names_last = _DIGIT.search(words[: found[0].start])
        yield _named_behind(words, found) if names_last else _named_in_front(words, found)
    if found:
        yield from _piece_by_piece(words)


def _with_colons(words: str) -> str:
    letters = [match["letter"].lower() for match in _BARE.finditer(words)]
    if len(letters) < 2 or sorted(letters) != list("abcdefgh"[: len(letters)]):  # noqa: PLR2004
        return words
    return _BARE.sub(lambda match: f"{match['before']}{match['letter']}: ", words)


def labels_in(words: str) -> Iterator[Label]:
    for match in _LABEL.finditer(words):
        yield Label(_part_of(match), match.start(), match.end())


def _part_of(match: re.Match[str]) -> Part:
    if match["last"]:
        return Part(LAST, of_scored=True)
    if match["nth"]:
        return Part(_NTH[match["nth"].lower()], of_scored=True)
    if (match["number"] or "").lower() in _SPOKEN:
        return Part(_SPOKEN[match["number"].lower()], of_scored=False)
    name = (match["number"] or match["short"] or match["letter"] or match["alone"]).lower()
    return Part(int(name) if name.isdigit() else ord(name) - ord("a") + 1, of_scored=False)


def _without(words: str, found: Sequence[Label]) -> str:
    kept, at = "", 0
    for one in found:
        kept, at = f"{kept}{words[at : one.start]} ", one.end
    return kept + words[at:]


def _named_behind(words: str, found: Sequence[Label]) -> tuple[Told, ...]:
    """`6+3 first part, 80 cals second`; what follows the last name belongs to its part."""
    starts = [0, *(one.end for one in found)]
    told = [Told(one.part, words[start : one.start]) for start, one in zip(starts, found, strict=False)]
    return (*told[:-1], Told(told[-1].part, told[-1].words + words[found[-1].end :]))


def _named_in_front(words: str, found: Sequence[Label]) -> tuple[Told, ...]:
    """`First: 6+3, second: 80 cals`."""
    ends = [*(one.start for one in found[1:]), len(words)]
    return tuple(Told(one.part, words[one.end : end]) for one, end in zip(found, ends, strict=True))


def with_what_follows(pieces: Sequence[str]) -> list[str]:
    """Pieces with a number, each with what is said of it behind: `amrap 4+20, green band`."""
    found: list[str] = []
    front = ""
    for piece in pieces:
        if _DIGIT.search(piece):
            found.append(f"{front}, {piece}" if front.strip() else piece)
            front = ""
        elif found:
            found[-1] += f", {piece}"
        else:
            front = piece
    return found


def _piece_by_piece(words: str) -> Iterator[tuple[Told, ...]]:
    """`Part A 6+3, 80 cals part B`; one piece may go without a name."""
    pieces = with_what_follows(_CUT.split(words))
    told = [find_part(piece) for piece in pieces]
    if (
        len(pieces) > 1
        and told.count(None) <= 1
        and len({one[0] if one else None for one in told}) == len(told)
    ):
        yield tuple(Told(*one) if one else Told(None, piece) for one, piece in zip(told, pieces, strict=True))
