"""Reads one row of a coach's text: its front, what is said of the block, then the pieces of its lines."""

import re
from collections.abc import Iterable
from dataclasses import replace

from core.measures import AmountUnit, MassUnit
from core.notation.boards.brackets import NOTE, read_brackets
from core.notation.boards.counted import take_counted
from core.notation.boards.headings import (
    AFTERWARDS,
    ASIDE,
    BETWEEN,
    FOR_SOME,
    THEN,
    WHERE,
    bullet,
    day,
    heading,
    heading_behind,
    own_name,
    part,
    superset,
)
from core.notation.boards.keeping import annotate, keep
from core.notation.boards.ladders import with_an_end
from core.notation.boards.lone import read_lone
from core.notation.boards.reading import Reading
from core.notation.boards.respelling import respelled
from core.notation.boards.rows import COLON
from core.notation.boards.sharing import share_load
from core.notation.boards.stations import bound, is_rest, resting_station, share_station, station_alone
from core.notation.boards.unread import Stretch, guessed_kind, joined
from core.notation.labels.facts import heading_of, told_by
from core.notation.lines.choices import choices_bound, with_noted
from core.notation.lines.each_set import with_lists_bound
from core.notation.lines.loads import with_sexes_bound
from core.notation.lines.pieces import Piece
from core.notation.lines.segments import is_in_stages, segments, split, stages_bound
from core.notation.names.catalogued import Lexicon
from core.notation.phrases.efforts import take_effort
from core.notation.phrases.manners import is_its_end, is_reckoned, least_rest, take_labels, take_manners
from core.notation.phrases.paces import gone_between, take_paces
from core.notation.phrases.shapes import take_phrases
from core.notation.quantities import DURATION
from core.notation.text import Row, Strip, mark_tempos, plain_row
from core.sessions.values import BlockKind

LONGEST_ROW = 300
# `10 squats, 10 lunges, x3`
_TIMES = re.compile(r"x\s?[1-9][0-9]?")
_DOSES = frozenset({"format", "every_s", "rounds"})
_SETS_OF_SETS = re.compile(
    r"(?P<front>\b(?P<again>[2-6])\s?x\s?\()[1-9][0-9]?\s?x\s?[^()]{2,40}(?P<behind>\))"
    r"|(?P<of>\b(?P<often>[2-6])\s(?:sets|series|blocks|lots)\sof\s)(?=[1-9][0-9]?\s?x\s?[0-9]{2,4}\s?k?m\b)"
)
# `1 min fast / 2 min easy`: what is done easily meanwhile
_EASY_OFF = re.compile(rf"/\s?(?P<said>{DURATION}\s(?:easy|slow|walking))\b")
_SIDES = re.compile(r"\b(?:sides?|legs?|arms?|foot|feet|hands?|ways?|directions?)\b")
_WORDS = re.compile(r"[a-z]{3,}\W+[a-z]{2,}")
_DURATION = re.compile(DURATION)
_OF_THE_CLOCK = frozenset({"rest_s", "cap_s", "every_s", "format"})
_ALONE = re.compile(r"[^\W_]")
_AROUND = " .,:;!?*~-=()"
_BEHIND_HEADINGS = frozenset(":=-")
_LETTER = re.compile(r"[^\W\d_]")
# Marks that nobody draws a line with.
_ODD = re.compile(r"[?$%@&^]")


def read_row(row: Row, lexicon: Lexicon, unit: MassUnit, ordinal: int = 0) -> Reading:
    """Reads one row; if something stays unread, once more with near spellings of the words of formats."""
    reading = _read(row, lexicon, unit, ordinal)
    if not reading.not_understood or len(row.text.strip()) > LONGEST_ROW:
        return reading
    respelt, slips = respelled(row, lexicon)
    if not slips:
        return reading
    again = _read(respelt, lexicon, unit, ordinal)
    if again.not_understood:
        return reading
    again.corrected += slips
    return again


def _read(row: Row, lexicon: Lexicon, unit: MassUnit, ordinal: int) -> Reading:
    reading = Reading(row)
    text = row.text.lower()
    if len(text.strip()) > LONGEST_ROW:
        reading.unread.append(Stretch(0, len(text.rstrip())))
        return reading
    if _read_turn(reading, text):
        return reading
    if _read_ladder(reading, lexicon, unit):
        return reading
    if aside := ASIDE.match(text):
        reading.notes.append(row.text[aside.start(1) :].strip())
        return reading
    if _read_between(reading, text):
        return reading
    strip = Strip(text)
    mark = bullet(text, ordinal)
    reading.number, reading.letter = mark.number, superset(text)
    strip.text = mark_tempos(" " * mark.end + text[mark.end :])
    reading.facts |= take_counted(strip, lexicon)
    _read_front(reading, strip)
    _read_behind(reading, strip)
    _read_sets_of_sets(reading, strip)
    if for_some := strip.take(FOR_SOME):
        reading.notes.append(_own_words(row, *for_some.span()).strip(" ()"))
    notes = [*take_paces(strip, row, NOTE)]
    notes += read_brackets(row, reading.facts, strip, lexicon, unit)
    _read_manners(reading, strip)
    _read_phrases(reading, strip)
    _read_front(reading, strip)
    reading.notes += take_labels(strip, row, known=bool(reading.facts))
    if not notes and (lone := read_lone(strip.text.replace(Strip.MARK, " "))):
        reading.facts |= {name: value for name, value in lone.items() if name not in reading.facts}
    else:
        _read_pieces(reading, strip, notes, lexicon, unit)
    _settle_where(reading)
    _settle_unread(reading)
    return reading


def _read_between(reading: Reading, text: str) -> bool:
    """`Between: 90 s jog`: what is gone at ease between the rounds is how they rest."""
    between = BETWEEN.match(text)
    is_gone, time_s = gone_between(between[1]) if between else (False, None)
    if between and is_gone:
        reading.notes.append(reading.row.text[slice(*between.span(1))])
        reading.facts |= {"rest_s": time_s} if time_s else {}
    return is_gone


def _read_phrases(reading: Reading, strip: Strip) -> None:
    """What is said of the whole block. What contradicts it is noted or stays unread; what one does at rest is noted."""
    row = reading.row
    easy = [match.span("said") for match in _EASY_OFF.finditer(strip.text)]
    for span, said in take_phrases(reading.facts, strip):
        if "rest_s" in said:
            reading.notes.append(row.own_words(*span))
        else:
            reading.unread.append(Stretch(*span))
        strip.blank(*span)
    if "rest_s" in reading.facts:
        taken = (span for span in easy if not strip.text[slice(*span)].strip(Strip.MARK))
        reading.notes += [row.own_words(*span) for span in taken]


def _read_sets_of_sets(reading: Reading, strip: Strip) -> None:
    """`2 x (4 x 500 m)`: all of it so often."""
    if match := _SETS_OF_SETS.search(strip.text):
        reading.facts["again"] = int(match["again"] or match["often"])
        for start, end in (match.span(name) for name in ("front", "behind", "of") if match[name]):
            strip.text = strip.text[:start] + " " * (end - start) + strip.text[end:]


def _read_behind(reading: Reading, strip: Strip) -> None:
    """A heading at the end of its row, if only said once more there."""
    found = heading_behind(strip.text)
    if found and reading.kind in {None, found[0]}:
        reading.kind = found[0]
        strip.blank(*found[1])


def _read_manners(reading: Reading, strip: Strip) -> None:
    """What is said of the whole block and is no one number; of a range of rest the least counts."""
    for manner in take_manners(strip, reading.row):
        reading.notes.append(manner.strip(" /"))
        if (least := least_rest(manner)) is not None:
            reading.facts["rest_s"] = least


def _settle_where(reading: Reading) -> None:
    """`Finish: plank 3 x 1 min` and `Power: box jump 5 x 3` say how often themselves: they are parts of their own."""
    dosed = any(piece.sets for piece in reading.pieces) or reading.facts.keys() & _DOSES or reading.kind
    if reading.where != "lines" and any(piece.sets for piece in reading.pieces):
        reading.where, reading.parts = "lines", True
    first = min(reading.unread, default=None)
    if first and dosed and _is_label(reading.row.text, first):
        reading.parts = True
        reading.unread[reading.unread.index(first)] = first._replace(looks_like="note", guess=None)
        for piece in reading.pieces:
            if piece.start <= first.start < piece.end:
                piece.unread = ""


def _is_label(text: str, stretch: Stretch) -> bool:
    """Whether an unread stretch is a short word or two in front of a colon."""
    before, words, after = text[: stretch.start], text[stretch.start : stretch.end], text[stretch.end :]
    short = re.fullmatch(r"[^\W\d_][^\d]{0,24}", words.strip()) is not None
    return short and not re.search(r"\w", before) and re.match(r"\s?[:=]\s", after) is not None


def _read_turn(reading: Reading, text: str) -> bool:
    """A row that only says whose turn or minute it is, or that it is one of rest."""
    reading.rest_station = resting_station(text)
    reading.station = station_alone(text)
    reading.is_rest = is_rest(text)
    return bool(reading.rest_station or reading.station or reading.is_rest)


def _read_ladder(reading: Reading, lexicon: Lexicon, unit: MassUnit) -> bool:
    """A ladder on the minute that doesn't say where it ends; offered with an end if it can be read so."""
    ladder = with_an_end(reading.row.text)
    if ladder is None or _read(plain_row(ladder), lexicon, unit, 0).unread:
        return False
    reading.unread.append(Stretch(0, len(reading.row.text.rstrip()), ladder))
    return True


def _settle_unread(reading: Reading) -> None:
    """A row of which nothing was understood is one stretch, unless it is names; neighbouring remarks are one."""
    text = reading.row.text
    looks_like = guessed_kind(text)
    nothing_read = not reading.says_anything and (reading.unread or _ODD.search(text))
    if nothing_read and (looks_like != "movement" or not reading.unread):
        guesses = {stretch.guess for stretch in reading.unread}
        guess = guesses.pop() if len(guesses) == 1 else None
        reading.unread = [Stretch(0, len(text.rstrip()), guess, looks_like)]
    else:
        reading.unread = list(joined(reading.unread, text))


def _read_front(reading: Reading, strip: Strip) -> None:
    """Heading, part and buy-in, which may stand before or behind a phrase."""
    if reading.kind is None and (found := heading(strip.text)):
        reading.kind, end = found
        reading.name = own_name(reading.row.own_words(len(strip.text) - len(strip.text.lstrip()), end))
        strip.blank(0, end)
    elif end := part(strip.text):
        reading.parts = True
        strip.blank(0, end)
    elif end := day(strip.text):
        # A session is of one day: its name parts the work, and is shown as unread.
        reading.parts = True
        reading.unread.append(Stretch(0, end, looks_like="note"))
        strip.blank(0, end)
    if afterwards := AFTERWARDS.match(strip.text):
        reading.afterwards = True
        strip.blank(0, afterwards.end())
    if then := THEN.match(strip.text):
        reading.then = True
        strip.blank(0, then.end())
    if where := WHERE.match(strip.text):
        reading.where = "buy_in" if where["way"] == "in" or where["first"] else "cash_out"
        strip.blank(0, where.end())


def _read_pieces(
    reading: Reading, strip: Strip, notes: list[tuple[int, str]], lexicon: Lexicon, unit: MassUnit
) -> None:
    strip.text = with_sexes_bound(with_lists_bound(bound(stages_bound(choices_bound(strip.text, lexicon)))))
    for start, end in segments(strip.text):
        mine = [note for at, note in notes if start <= at < end]
        text = strip.text[start:end].replace(NOTE, " ")
        if not _ALONE.search(text):
            annotate(reading, mine)
            continue
        if _is_said_of_all(reading, text, (start, end), mine):
            continue
        pieces = split(text, start, lexicon, unit)
        _name_by_bracket(pieces[-1], mine, lexicon)
        nameless = not any(piece.meaning for piece in pieces)
        open_still = nameless and (any(map(_is_open, pieces)) or _is_wordy_time(pieces[-1], text))
        if open_still and _is_told(reading, text, start, strip.text[end:]):
            reading.notes += mine
            continue
        if (
            "counts" in reading.facts
            and "most" not in reading.facts
            and not any(piece.amount for piece in pieces)
        ):
            # `score: lowest calories on the bike`
            reading.unread.append(Stretch(start, end, looks_like="note"))
            continue
        if is_in_stages(pieces):
            _add_stages(reading, [replace(_told_here(reading, one, mine), text=one.text) for one in pieces])
            continue
        for piece in pieces:
            keep(reading, _told_here(reading, piece, ()), lexicon)
        annotate(reading, mine)
    reading.pieces = [with_noted(piece, lexicon, unit) for piece in reading.pieces]
    share_station(reading.pieces)
    share_load(reading.pieces, reading.row, lexicon)


def _is_said_of_all(reading: Reading, text: str, span: tuple[int, int], notes: list[str]) -> bool:
    """Whether a piece says how all rest, what something costs, or how the end is done: none of it is work."""
    if is_rest(text) and reading.pieces and "in_turn" in reading.facts:
        reading.rest_station = len(reading.pieces) + 1
        for number, piece in enumerate(reading.pieces, 1):
            piece.station = number
        return True
    if is_rest(text) and reading.pieces and "work_s" in reading.facts:
        reading.facts.setdefault("rest_s", reading.facts["work_s"])
        return True
    if not is_reckoned(text) and not (reading.pieces and is_its_end(text)):
        return False
    said = _own_words(reading.row, *span)
    annotate(reading, [*(note for note in notes if note not in said), said])
    return True


def _add_stages(reading: Reading, stages: list[Piece]) -> None:
    """Each stage is a line; what stands in front says what is done in all, and how long: `12 min run: 1-2-1 min`."""
    last = reading.pieces[-1] if reading.pieces else None
    in_all = last and last.unit is AmountUnit.SECONDS and COLON.match(reading.row.text, last.end)
    if last and last.meaning and (in_all or not last.says_anything) and not last.unread:
        reading.pieces.pop()
        if in_all:
            reading.notes.append(last.text)
        stages = [replace(one, meaning=one.meaning or last.meaning) for one in stages]
    reading.pieces += stages


def _told_here(reading: Reading, piece: Piece, notes: Iterable[str]) -> Piece:
    """The piece in its coach's words, with what stands beside it."""
    text = plain_row(reading.row.own_words(piece.start, piece.end)).text.strip(" .,:;-*")
    return replace(piece, text=_closed(text), listed=reading.number, notes=(*piece.notes, *notes))


def _name_by_bracket(piece: Piece, notes: list[str], lexicon: Lexicon) -> None:
    """What nobody knows, or only part of, is what its bracket calls it: `bellyups (sit-ups)`."""
    if not piece.amount or (piece.meaning and not piece.is_loose):
        return
    named = [meaning for note in notes if (meaning := lexicon.exact(note) or lexicon.short(note.lower()))]
    if len(named) == 1:
        piece.meaning, piece.unread, piece.is_loose = named[0], "", False


def _own_words(row: Row, start: int, end: int) -> str:
    """The coach's words without the room in front of them, where another clause of the row stands."""
    text = row.text[start:end]
    return row.own_words(start + len(text) - len(text.lstrip()), end)


def _closed(text: str) -> str:
    """The text with the bracket closed that was cut behind its words."""
    return text + ")" if text.count("(") > text.count(")") else text


def _is_open(piece: Piece) -> bool:
    """Whether words of it are unread, or it tells seconds `each` of nothing."""
    of_a_side = _SIDES.search(piece.text.lower())
    seconds_each = piece.per_side and piece.unit is AmountUnit.SECONDS and not of_a_side
    return bool(piece.unread or seconds_each or _TIMES.fullmatch(piece.text))


def _is_wordy_time(piece: Piece, text: str) -> bool:
    """`between the rounds look at the trees for 1 minute`: words around a time may say whose it is."""
    wordy = piece.unit is AmountUnit.SECONDS and _WORDS.search(_DURATION.sub(" ", text)) is not None
    return wordy and bool(told := told_by(text.strip(_AROUND))) and told.keys() <= _OF_THE_CLOCK


def _is_told(reading: Reading, text: str, start: int, behind: str) -> bool:
    """Whether a stretch that names no movement says something of the block, or is its heading; the label tells."""
    words = text.replace(Strip.MARK, " ").strip(_AROUND)
    if not _LETTER.search(words):
        return False
    told = told_by(words)
    if reading.pieces and reading.pieces[-1].meaning and told and not re.search("[0-9]", words):
        # `run 30 min, zone 2`, `get-ups, take your time`: whatever it says of the part, it is said of the line
        annotate(reading, [_own_words(reading.row, start, start + len(text))])
        if told.keys() == {"effort"}:
            return True
    if told and not any(
        reading.facts.get(name, value) != value for name, value in told.items() if name != "effort"
    ):
        new = {
            name: value
            for name, value in take_effort(reading.facts, told).items()
            if name not in reading.facts
        }
        reading.facts |= new
        reading.labelled.append((Stretch(start, start + len(text), looks_like="note"), new))
        return True
    opens = not reading.pieces and (behind.lstrip()[:1] in _BEHIND_HEADINGS or not _ALONE.search(behind))
    kind = heading_of(words) if opens and not reading.unread else None
    if kind is None or reading.kind not in {None, kind}:
        return False
    # Words for the main part say only that one begins: sets under them may be strength.
    reading.kind = kind if kind is not BlockKind.MAIN else reading.kind
    reading.may_part = True
    return True
