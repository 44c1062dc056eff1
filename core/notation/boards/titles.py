"""What stands above the work: the date, and a title of a row or two."""

import datetime as dt
import re
from dataclasses import dataclass, field

from core.measures import MassUnit
from core.notation.boards.clauses import Clause
from core.notation.boards.headings import (
    BARE_DATE,
    DATE,
    IN_MARCH,
    QUOTED,
    day,
    heading,
    label,
    read_date,
    tidy_title,
)
from core.notation.boards.reading import Reading
from core.notation.boards.row_reader import read_row
from core.notation.calendar.moments import DAY_WORD
from core.notation.labels.facts import told_by
from core.notation.names.catalogued import Lexicon, Meaning
from core.notation.names.spotting import spotted
from core.notation.text import Row, blanked, plain_row
from core.sessions.values import Effort, Format

_LONGEST = 80
_MOST_ROWS = 2
_OPENERS = {"format", "rounds", "scheme", "every_s"}
# Often said at the end: `for time`, `x 3`.
_TOLD_BEHIND = {"format", "rounds"}
# No title says how much is done: `bsq 5x3 @80%`.
_DOSE = re.compile(r"[0-9]\s?(?:x|%|(?:rm|min|mins|s|sec|secs|m|reps|rounds|sets)\b)|@|[0-9]\s?/\s?[0-9]")
_PARTED = re.compile(r"[-,:;|()!.]+")
_WORDY = re.compile(r"^[\W_]*[^\W0-9_]")
_DAY = re.compile(rf"\b{DAY_WORD}\b")


@dataclass
class Title:
    """The rows of a title, and a date, as long as no work has begun. `of_a_week`: each day names its own work."""

    lexicon: Lexicon
    unit: MassUnit
    rows: list[str] = field(default_factory=list)
    date: dt.date | None = None
    of_a_week: bool = False
    headed: int | None = field(default=None, init=False)  # the number of the row whose day was taken off

    @property
    def text(self) -> str | None:
        """All of it in one line."""
        return " - ".join(self.rows) or None

    def without(self, row: Row) -> Row:
        """The row without a date, without `Workout:` in front, and without a title in quotes."""
        return self._without_title(self._without_date(row))

    def _without_date(self, row: Row) -> Row:
        if self.date:
            return row
        match = DATE.search(row.text.lower())
        if match and (found := read_date(match)):
            self.date = found
            return blanked(row, *match.span())
        march = None if BARE_DATE.match(row.text.lower()) else IN_MARCH.search(row.text.lower())
        return blanked(row, *march.span()) if march else row

    def _without_title(self, row: Row) -> Row:
        """The row without `Workout:` in front, and without a title in quotes."""
        if self.rows:
            return row
        if BARE_DATE.match(row.text.lower()):
            self.rows.append(tidy_title(row.text))
            return blanked(row, 0, len(row.text))
        if not self.of_a_week and (end := day(row.text.lower())) and row.text[end:].strip():
            self.rows.append(tidy_title(row.text[:end]))
            self.headed = row.number
            return blanked(row, 0, end)
        row = blanked(row, *label(row.text.lower()))
        quoted = QUOTED.match(row.text)
        if quoted is None:
            return row
        if self._is_only_words(quoted[1]):
            self.rows.append(tidy_title(quoted[1]))
            return blanked(row, *quoted.span())
        start, end = quoted.span(1)
        return blanked(blanked(row, start - 1, start), end, end + 1)

    def takes(self, reading: Reading, clause: Clause) -> bool:
        """Whether a row is of the title: it says nothing else, and doesn't begin like a line of a part."""
        text = reading.row.text.strip()
        start = reading.row.text.find(text)
        typed = reading.row.own_words(start, start + len(text))  # `Six lines`, not `6 lines`
        if len(self.rows) == _MOST_ROWS or len(text) > _LONGEST:
            return False
        if reading.may_part and reading.is_heading_alone:
            self.rows.append(tidy_title(text))
            return reading.kind is None
        if self._names_the_day(reading, clause) or self._stands_behind_a_day(reading, typed):
            self.rows.append(tidy_title(typed))
            return True
        facts = {} if self._is_only_guessed(reading, clause) else reading.facts.keys() - {"effort"}
        opens = reading.parts and not day(reading.row.text.lower())  # a day in front opens no part of its own
        bare = not (reading.kind or facts or opens or reading.where != "lines")
        only_unread = all(not piece.meaning and piece.unread for piece in reading.pieces)
        only_unread |= self._is_named_by_chance(reading, clause)
        if (
            bare
            and (reading.not_understood or reading.labelled)
            and only_unread
            and not reading.is_open_work
            and _WORDY.match(typed)
            and not _DOSE.search(text.lower())
        ):
            self.rows.append(tidy_title(typed))
            return True
        return False

    def effort(self) -> Effort | None:
        """How hard the day is to be: `Tuesday - light day`."""
        parts = (_DAY.sub("", part).strip() for words in self.rows for part in _PARTED.split(words.lower()))
        return next((told for part in parts if (told := told_by(part).get("effort"))), None)

    def movement(self) -> Meaning | None:
        """What it names, for sets right below it that name nothing: `Deadlift day`, `5 x 5 @ 60 kg`."""
        found = [spotted(words.lower(), self.lexicon) for words in self.rows]
        return next((one.meaning for one in found if one), None)

    def _is_named_by_chance(self, reading: Reading, clause: Clause) -> bool:
        """Whether words nobody knows hold a movement, tell no amount, and work begins below: `Easing into March`."""
        if not reading.unread or any(piece.says_anything for piece in reading.pieces) or not clause.behind:
            return False
        below = read_row(clause.behind[0], self.lexicon, self.unit)
        return bool(below.kind or below.facts.keys() & _OPENERS)

    def _stands_behind_a_day(self, reading: Reading, typed: str) -> bool:
        """Whether it is what a day is called, whatever that names: it tells no amount. `Friday: stairs and bags`."""
        is_told = any(piece.meaning and (piece.amount or piece.sets) for piece in reading.pieces)
        facts = reading.facts.keys() - {"effort"}
        opens = reading.kind or facts or reading.where != "lines"
        return self.headed == reading.row.number and not (opens or is_told or re.search("[0-9]", typed))

    def _names_the_day(self, reading: Reading, clause: Clause) -> bool:
        """Whether a format and nothing else stands above a heading, or rows that tell it: `Intervals`, `wu 10 min`."""
        if reading.facts.keys() != {"format"} or reading.pieces or reading.kind or not clause.behind:
            return False
        if heading(clause.behind[0].text.lower()) is not None:
            return True
        below = [read_row(row, self.lexicon, self.unit) for row in clause.behind]
        turns = reading.facts["format"] is Format.INTERVALS
        easy_first = turns and any(piece.meaning and not piece.sets for piece in below[0].pieces)
        return easy_first and any(
            "work_s" in row.facts or any(p.sets for p in row.pieces) for row in below[1:]
        )

    def _is_only_guessed(self, reading: Reading, clause: Clause) -> bool:
        """Whether only labels took it for a format, and what follows says itself how: `Slow and strong`."""
        if not reading.facts.keys() <= _TOLD_BEHIND or not reading.labelled:
            return False
        behind = [read_row(row, self.lexicon, self.unit) for row in clause.behind]
        return not behind or bool(behind[0].facts.keys() & _OPENERS or any(p.sets for p in behind[0].pieces))

    def _is_only_words(self, text: str) -> bool:
        return not read_row(plain_row(text), self.lexicon, self.unit).says_anything
