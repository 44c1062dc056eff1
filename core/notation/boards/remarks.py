"""What a coach says of the work goes with it: words behind a line that are no work, nor for people, are its note."""

import re
from dataclasses import replace

from core.measures import AmountUnit
from core.notation.boards.drafts import Draft
from core.notation.boards.headings import LACKS
from core.notation.boards.reading import Reading
from core.notation.boards.unread import LONGEST_SHORTHAND, Stretch
from core.notation.labels.facts import is_remark, is_said_to_people, is_surely_of_work
from core.notation.lines.naming import CARRIED
from core.notation.lines.pieces import Piece
from core.notation.names.catalogued import Lexicon
from core.notation.phrases.manners import is_how_even
from core.notation.phrases.paces import OF_A_PART, WHILE_RESTING, is_paced
from core.notation.text import Row
from core.sessions.values import Session

# Whom or what it depends on, or when people meet, and nothing to do: `If you are dizzy, skip this one`, `meet 12:15`.
_ON_CONDITION = re.compile(
    r"^\W*(?:if|unless|whoever|anyone|anybody|who (?:has|is|can)|those (?:who|with|without))\b(?! time)"
    r"|^\W*[a-z][a-z' /&,]{2,30}\b(?:people|folks?|mums?|moms?|crew)\s?[:=]\s"
    r".*\b(?:no|not|skip|stop|leave|don'?t|ask)\b"
    r"|\b(?:meet(?:ing)?|see (?:you|u|ya)|kick[ -]?off|doors|be there)\b[a-z ,]{0,20}[0-9]{1,2}[:.][0-9]{2}\b",
    re.IGNORECASE,
)
# `no rower: 200 m run`, `no rack: find your best 8 split squats`
_LACKING = re.compile(
    r"(?:^|(?<=[\s(,;:.\-]))(?P<no>no|without(?: an?)?) (?P<what>[a-z][a-z \-]{1,20}?)\s?(?:[=,\-]\s?$|:)"
)
# `1 mile run if you haven't`
_IF_NOT = re.compile(
    r"\b(?:if|where|when) (?:not\b|(?:you|u|ya|they|there|it)(?:'s|'re| is| are| do| have| has)? ?"
    r"(?:(?:have|has|do|can|is)n'?t|have not|can'?t|cannot|not|no(?:ne|thing|body)?)\b)"
)
_FOR_SOME = re.compile(rf"(?:no|without(?: an?)?) [a-z][a-z \-]{{1,20}}?\s?=\s?\w|{LACKS}\s?\w")
# `unbroken or 5 burpee penalty`
_INSTEAD = re.compile(r"\binste?a?d\b(?! of)|\bpenalt(?:y|ies)\b")
# What singles are where something is lifted: `then singles`, `the single should be heavy`.
_IN_ONES = frozenset(("single", "singles"))
_ONE = re.compile(r"\b(?:the|a|an|and|then|heavy|top|last|daily)\s(?:[a-z]+\s)?singles?\b")
# `one runs while the other one rests`
_IN_TURN = re.compile(r"one (?:of you )?[a-z]+s\b[^.;]*\bother\b")
_GIVE_AMOUNTS = frozenset(("scheme", "work_s", "amount"))
_NUMBER = re.compile("[0-9]")
_SO_OFTEN = re.compile(r"[0-9]+ x [0-9.]+(?: \w+)?")
_WHENEVER = re.compile(r"\W*(?:(?:every|each|any) time|whenever|as often as)\b")
_WORD = re.compile(r"[^\W\d_]+")
_SAID = re.compile(r"[^\W\d_]{2}")


def is_on_condition(words: str) -> bool:
    """Whether a sentence says what is done by some, or in some case, or when people meet: it is no work of all."""
    return _ON_CONDITION.search(words) is not None


def _only_counts(piece: Piece) -> bool:
    """Whether it tells how many of something and nothing else: `4 widths of the hall`."""
    counted = piece.unit in {None, AmountUnit.REPS}
    return counted and not (
        piece.sets or piece.loads_kg or piece.load_rule or piece.per_side or piece.most or piece.tempo
    )


def is_said_of_work(words: str, *, counted: bool = False) -> bool:
    """Whether words are neither work nor said to people; with a number only if they are `counted` beside a line."""
    said = words.strip().lower()
    if len(said) <= LONGEST_SHORTHAND:
        return False
    plain = _SAID.search(said) is not None and (counted or not any(map(str.isnumeric, said)))
    return plain and is_remark(said) and not is_said_to_people(said)


def leave_said(reading: Reading, draft: Draft | None, lexicon: Lexicon) -> None:
    """What is done only by some, or stands without an amount behind a line that has one, is said beside it.

    `15 cal row - no rower: 200 m run`, `split squats instead, 8 each`, `10 pass-throughs - towel, hands wide`.
    """
    for piece in list(reading.pieces):
        if _is_part_of_way(piece, reading, draft):
            reading.pieces.remove(piece)
            reading.unread = [one for one in reading.unread if not piece.start <= one.start < piece.end]
            _say(reading, piece.start, piece.end, draft)
        if not piece.meaning:
            continue
        start = _of_some_from(piece, reading.row.text.lower(), lexicon)
        if start is None and not _only_names(piece, reading, draft):
            continue
        start = piece.start if start is None else start
        inside = [one for one in reading.pieces if start <= one.start <= piece.start]
        reading.pieces = [one for one in reading.pieces if one not in inside]
        reading.unread = [one for one in reading.unread if not start <= one.start < piece.end]
        _say(reading, start, piece.end)


def _is_part_of_way(piece: Piece, reading: Reading, draft: Draft | None) -> bool:
    """Whether it says how some of what stands before it is gone: `Run 8k. Last 2k at race pace`."""
    if not OF_A_PART.match(reading.row.text.lower(), piece.start):
        return False
    front = [one for one in reading.pieces if one.start < piece.start and one.meaning]
    before = front or (draft.pieces if draft else [])
    if not before or before[-1].unit is not piece.unit:
        return False
    return 0 < (piece.amount or 0) < (before[-1].sets or 1) * (before[-1].amount or 0)


def _say(reading: Reading, start: int, end: int, draft: Draft | None = None) -> None:
    at = _line_of(reading, Stretch(start, end))
    if at is None and draft and draft.lines:
        draft.say_of_last(reading.row.own_words(start, end))
        return
    if at is None:
        reading.unread.append(Stretch(start, end, looks_like="note"))
        return
    line, words = reading.pieces[at], reading.row.own_words(start, end)
    kept = (note for note in line.notes if note.lower() not in words.lower())
    reading.pieces[at] = replace(line, notes=(*kept, words))


def _of_some_from(piece: Piece, text: str, lexicon: Lexicon) -> int | None:
    """Where words begin that say what some do instead, whoever has no such thing or can't; else None."""
    lacking = _LACKING.search(text[: piece.start])
    if lacking and _may_lack(lacking["what"], lexicon):
        return lacking.start("no")
    if piece.meaning and piece.meaning.spelling in _IN_ONES and _ONE.search(text, 0, piece.end):
        return piece.start
    shapes = (_INSTEAD, _IF_NOT)
    if any(one.search(text, piece.start, piece.end) for one in shapes) or _IN_TURN.match(text, piece.start):
        return piece.start
    return None


def _may_lack(what: str, lexicon: Lexicon) -> bool:
    """Whether it is a thing or something to do, not `no rush: ...`."""
    words = (what, what.rsplit(" ", 1)[-1])
    return words[1] in CARRIED or any(
        lexicon.catalogue.implement_by_name(one) or lexicon.exact(one) or lexicon.short(one) for one in words
    )


def _only_names(piece: Piece, reading: Reading, draft: Draft | None) -> bool:
    """Whether it tells no amount, among words of its own, and a line in front of it in its row does."""
    told = piece.amount or piece.sets or piece.most or piece.load_rule or piece.each_set
    given = reading.facts.keys() | (draft.facts.keys() if draft else set())
    front = [one for one in reading.pieces if one.start < piece.start and one.meaning]
    if told or given & _GIVE_AMOUNTS or not front or not all(one.amount for one in front):
        return False
    if piece.meaning is None:
        return False
    spelled = piece.meaning.spelling.split()
    return piece.meaning.near or len(_WORD.findall(piece.text)) > len(spelled)


def keep_beside(reading: Reading) -> None:
    """Unread words of a row go to the line in front of them; where a row says how its part is done, to the part."""
    heads = bool(reading.facts) and not any(piece.meaning for piece in reading.pieces)
    _keep_in_front(reading)
    for stretch in tuple(reading.unread):
        words = reading.row.own_words(stretch.start, stretch.end)
        at = _line_of(reading, stretch)
        inside = [one for one in reading.pieces if not one.meaning and one.start < stretch.end <= one.end]
        if at is None and not (heads and is_surely_of_work(words.lower())):
            continue
        counted = at is not None and bool(inside) and bool(reading.pieces[at].amount)
        if counted:
            words = reading.row.own_words(inside[0].start, stretch.end)
        if (stretch.looks_like == "work" and not counted) or not is_said_of_work(words, counted=counted):
            continue
        if any(piece.says_anything and not (counted and _only_counts(piece)) for piece in inside):
            continue
        if at is None:
            reading.notes.append(words)
        else:
            line = reading.pieces[at]
            reading.pieces[at] = replace(line, notes=(*line.notes, words))
        reading.unread.remove(stretch)
        reading.pieces = [piece for piece in reading.pieces if piece not in inside]


def _keep_in_front(reading: Reading) -> None:
    """`every time you stop, 5 burpees`: when it is done is said of it."""
    for stretch in tuple(reading.unread):
        words = reading.row.own_words(stretch.start, stretch.end)
        behind = [at for at, one in enumerate(reading.pieces) if one.meaning and one.start >= stretch.end]
        if behind and _WHENEVER.match(words.lower()):
            line = reading.pieces[behind[0]]
            reading.pieces[behind[0]] = replace(line, notes=(words, *line.notes))
            reading.unread.remove(stretch)
            reading.pieces = [one for one in reading.pieces if one.meaning or one.start != stretch.start]


def _line_of(reading: Reading, stretch: Stretch) -> int | None:
    lines = (at for at, piece in enumerate(reading.pieces) if piece.meaning and piece.start < stretch.start)
    return max(lines, default=None)


def keep_with_line(draft: Draft, reading: Reading) -> list[str]:
    """Gives to the last line what is said of it in a row of its own; the other notes are left.

    Paces, what whoever lacks a thing does instead, what stands alone behind the line in its row, and how even the
    goes of the only line are to be.
    """
    if not draft.lines:
        return reading.notes
    last = draft.lines[-1]
    behind = last.row.number == reading.row.number and not (reading.pieces or reading.facts)
    mine = [
        one
        for one in reading.notes
        if behind or is_paced(one.lower()) or _is_for_some(one.lower()) or (draft.only and is_how_even(one))
    ]
    if mine:
        draft.say_of_last(*mine)
    return [note for note in reading.notes if note not in mine]


def _is_for_some(note: str) -> bool:
    """`no rower = 1 mile run`, `no dubs? 60 singles`."""
    return _FOR_SOME.match(note) is not None


def numbered_notes(session: Session) -> tuple[str, ...]:
    """What is kept in the coach's words though it tells a number that nobody's version counts with.

    Neither a pace, nor what is gone between, nor how the amount of a line was told: `5 x 400 m`.
    """
    told = [block.notes for block in session.blocks] + [line.notes for line in session.every_line]
    notes = dict.fromkeys(note for said in told for note in (said or "").split("; "))
    return tuple(note for note in notes if _NUMBER.search(note) and not _counts_anyway(note.lower()))


def _counts_anyway(note: str) -> bool:
    return is_paced(note) or WHILE_RESTING.search(note) is not None or _SO_OFTEN.fullmatch(note) is not None


def keep_behind(draft: Draft | None, row: Row) -> bool:
    """Whether a part of a row is said of the line before it, whose note it is then."""
    start = len(row.text) - len(row.text.lstrip())
    return draft is not None and _keep_with_last(draft, row, Stretch(start, len(row.text)))


def keep_what_is_unread(draft: Draft, reading: Reading) -> None:
    """Gives to the line before them the words of a row without lines that nobody knows and that say how it is done."""
    for stretch in tuple(reading.unread):
        inside = [one for one in reading.pieces if stretch.start <= one.start < stretch.end]
        if _line_of(reading, stretch) is None and _keep_with_last(draft, reading.row, stretch):
            reading.unread.remove(stretch)
            reading.pieces = [one for one in reading.pieces if one not in inside]


def _keep_with_last(draft: Draft, row: Row, stretch: Stretch) -> bool:
    """Whether it is said of the last line, which stands in the same row."""
    words = row.own_words(stretch.start, stretch.end)
    if not draft.lines or not is_said_of_work(words):
        return False
    last = draft.lines[-1]
    if last.row.number != row.number:
        return False
    draft.say_of_last(words)
    return True
