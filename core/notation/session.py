"""A coach's pasted text -> Session, with everything that was corrected or not understood at its place."""

import datetime as dt
import re
from collections.abc import Iterator
from dataclasses import dataclass, field

from core.measures import MassUnit
from core.movements.lookup import Catalogue
from core.notation.blocks import finish
from core.notation.chat import is_like_a_session
from core.notation.drafts import Draft, Placed
from core.notation.headings import DATE, QUOTED, label, read_date, tidy_title
from core.notation.names import Lexicon, lexicon
from core.notation.phrase_aims import Facts
from core.notation.pieces import complete, completes, repeats
from core.notation.reading import Reading, read_row
from core.notation.sending import send
from core.notation.stations import is_rest
from core.notation.text import Row, blanked, plain_row, rows
from core.notation.unread import Stretch, named, whole
from core.notation.values import Corrected, NotUnderstood, ReadSession
from core.notation.windows import Window, settled, window
from core.sessions.values import MOST_BLOCKS, MOST_LINES, Aim, Block, BlockKind, Format, Session

__all__ = ["is_like_a_session", "read_session"]

LONGEST_SESSION = 200
_LONGEST_TITLE = 80
_TITLE_ROWS = 2
_OPENERS = {"format", "rounds", "scheme", "every_s"}
# Beside these, lines need no amount of their own.
_GIVE_AMOUNTS = {"scheme", "work_s", "amount"}
_WORDY = re.compile(r"^[\W_]*[^\W0-9_]")


def read_session(text: str, catalogue: Catalogue, unit: MassUnit = MassUnit.KG) -> ReadSession:
    """Reads a session as coaches write it; bare loads count in `unit`. Never raises, whatever the text."""
    reader = _Reader(lexicon(catalogue), unit)
    every = rows(text)
    written = [row for row in every if row.text.strip()]
    for row in written[:LONGEST_SESSION]:
        reader.read(
            row, is_first=_is_first_of_paragraph(row, every), is_last=_is_last_of_paragraph(row, every)
        )
    if len(written) > LONGEST_SESSION:
        row = written[LONGEST_SESSION]
        reader.problem(row)
    return reader.result(written)


def _is_first_of_paragraph(row: Row, every: tuple[Row, ...]) -> bool:
    return row.number < 2 or not every[row.number - 2].text.strip()  # noqa: PLR2004


def _is_last_of_paragraph(row: Row, every: tuple[Row, ...]) -> bool:
    return row.number >= len(every) or not every[row.number].text.strip()


def _placed(reading: Reading, before: int) -> Iterator[NotUnderstood]:
    """What a row leaves unread, with how many lines of the block stand before it."""
    for stretch in reading.unread:
        here = sum(bool(piece.meaning) for piece in reading.pieces if piece.start < stretch.start)
        yield named(reading.row, stretch).model_copy(update={"after": before + here})


@dataclass
class _Reader:
    lexicon: Lexicon
    unit: MassUnit
    draft: Draft | None = None
    title: list[str] = field(default_factory=list)
    date: dt.date | None = None
    blocks: list[Block] = field(default_factory=list)
    not_understood: list[NotUnderstood] = field(default_factory=list)
    corrected: list[Corrected] = field(default_factory=list)
    ordinal: int = 0
    open_lines: list[int] = field(default_factory=list)
    block_at: dict[int, int] = field(default_factory=dict)
    format_known: bool = False
    window: Window | None = None
    over_all: Facts = field(default_factory=dict)

    def read(self, row: Row, *, is_first: bool, is_last: bool) -> None:
        """Takes in one row; `is_first` and `is_last` of those between two empty ones."""
        row = self._without_window(self._without_title(self._without_date(row)))
        reading = read_row(row, self.lexicon, self.unit, self.ordinal)
        self.ordinal = reading.number or reading.rest_station or self.ordinal
        if reading.is_empty or self._is_title(reading):
            return
        if self._is_talk(reading):
            self.not_understood.append(whole(row, looks_like="note"))
            if row.number - 1 in self.open_lines:
                self.open_lines.append(row.number)
            return
        self.corrected += reading.corrected
        if self._opens(reading, is_last=is_last) or (is_first and self._are_other_sets(reading)):
            self._close()
        draft = self._open(reading)
        self.open_lines.append(row.number)
        self.format_known |= bool(reading.facts.keys() & _OPENERS)
        self.not_understood += _placed(reading, len(draft.lines))
        draft.broken |= any(stretch.looks_like != "note" for stretch in reading.unread)
        send(draft, reading)
        self._place(draft, reading)
        self._merge(draft, reading)
        draft.notes += reading.notes

    def result(self, written: list[Row]) -> ReadSession:
        self._close()
        if not self.blocks and not self.not_understood:
            self.problem(written[0] if written else Row(1, "", ()))
        title = " - ".join(self.title) or None
        session = Session(title=title, date=self.date, blocks=tuple(self.blocks)) if self.blocks else None
        placed = [
            one.model_copy(update={"block": self.block_at.get(one.line)}) for one in self.not_understood
        ]
        ordered = sorted(placed, key=lambda found: (found.line, found.column))
        return ReadSession(
            session=session,
            not_understood=tuple(ordered),
            corrected=tuple(sorted(self.corrected, key=lambda one: (one.line, one.column))),
            format_known=self.format_known,
        )

    def problem(self, row: Row) -> None:
        self.not_understood.append(whole(row))

    def _without_date(self, row: Row) -> Row:
        if self.date or self.draft or self.blocks:
            return row
        match = DATE.search(row.text.lower())
        if match and (found := read_date(match)):
            self.date = found
            return blanked(row, *match.span())
        return row

    def _without_title(self, row: Row) -> Row:
        """The row without `Workout:` in front, and without a title in quotes."""
        if self.draft or self.blocks or self.title:
            return row
        row = blanked(row, *label(row.text.lower()))
        quoted = QUOTED.match(row.text)
        if quoted is None:
            return row
        if self._is_only_words(quoted[1]):
            self.title.append(tidy_title(quoted[1]))
            return blanked(row, *quoted.span())
        start, end = quoted.span(1)
        return blanked(blanked(row, start - 1, start), end, end + 1)

    def _without_window(self, row: Row) -> Row:
        """The row without its minutes of the clock, which open a part of their own."""
        found = window(row.text.lower(), self.window)
        if found is None:
            return row
        before = self.draft if self.draft and not self.draft.lines else None
        if before is None:
            self._close()
        facts = dict(before.facts) if before else {}
        if self.window is None:
            self.over_all = {name: told for name, told in facts.items() if name != "minutes"}
        pause = found.start - self.window.end if self.window else 0
        self._rest_then(pause)
        kind = (
            before.kind if before else self.blocks[-1].kind if self.window and self.blocks else BlockKind.MAIN
        )
        facts |= {"minutes": float(found.minutes)}
        self.draft = Draft(row, kind=kind, facts=facts, in_window=True, over_all=self.over_all)
        self.window = found
        if is_rest(row.text[found.said :].lower()):
            self.draft = None
            self._rest_then(found.minutes)
            return blanked(row, 0, len(row.text))
        return blanked(row, 0, found.said)

    def _rest_then(self, minutes: int) -> None:
        """The part before says that it is followed by rest."""
        if minutes and self.blocks:
            last = self.blocks[-1]
            words = "; ".join(part for part in (last.notes, f"then rest {minutes} min") if part)
            self.blocks[-1] = last.model_copy(update={"notes": words})

    def _is_only_words(self, text: str) -> bool:
        return not read_row(plain_row(text), self.lexicon, self.unit).says_anything

    def _is_title(self, reading: Reading) -> bool:
        """Words before the first block that say nothing else, and don't begin like a line of one."""
        text = reading.row.text.strip()
        if self.draft or self.blocks or len(self.title) == _TITLE_ROWS or len(text) > _LONGEST_TITLE:
            return False
        bare = not (reading.kind or reading.facts or reading.parts or reading.where != "lines")
        only_unread = all(not piece.meaning and piece.unread for piece in reading.pieces)
        if (
            bare
            and reading.not_understood
            and only_unread
            and not reading.is_open_work
            and _WORDY.match(text)
        ):
            self.title.append(tidy_title(text))
            return True
        return False

    def _is_talk(self, reading: Reading) -> bool:
        """Plain talk, even if a word of it is the name of a movement: `Breathe, everybody!`."""
        if reading.is_talk:
            return True
        given = self.draft.facts.keys() & _GIVE_AMOUNTS if self.draft else {"nothing"}
        bare = not (reading.kind or reading.facts or reading.parts or reading.notes)
        remarks = any(stretch.looks_like == "note" for stretch in reading.unread)
        return bare and remarks and not given and not any(piece.says_anything for piece in reading.pieces)

    def _opens(self, reading: Reading, *, is_last: bool) -> bool:
        draft = self.draft
        if draft is None or draft.is_empty:
            return False
        if reading.kind or reading.parts:
            return True
        if reading.where == "buy_in" and draft.lines:
            return True
        said = reading.facts.keys() & _OPENERS
        if not said or not draft.lines:
            return False
        if reading.pieces and said <= {"scheme"} and draft.facts.get("scheme") == reading.facts["scheme"]:
            return False
        trails = (
            is_last
            and not reading.pieces
            and (not draft.facts.keys() & _OPENERS or (said == {"format"} and "format" not in draft.facts))
        )
        return not trails

    def _are_other_sets(self, reading: Reading) -> bool:
        """`3 x 8 ...` behind an empty row: done after the sets before it, not in turn with them."""
        draft = self.draft
        if draft is None or not draft.lines or draft.facts.keys() & _OPENERS:
            return False
        told = [piece for piece in reading.pieces if piece.meaning]
        return bool(told) and all(piece.sets for piece in (*told, *(placed.piece for placed in draft.lines)))

    def _open(self, reading: Reading) -> Draft:
        before = self.draft
        if before is None:
            kind = self._next_kind(reading)
            self.draft = Draft(reading.row, kind=kind)
        elif reading.kind:
            before.kind = reading.kind
        assert self.draft is not None
        return self.draft

    def _next_kind(self, reading: Reading) -> BlockKind:
        if reading.kind:
            return reading.kind
        inherits = self.blocks and self.blocks[-1].kind in {BlockKind.STRENGTH, BlockKind.SKILL}
        scored = reading.facts.get("format") in {Format.AMRAP, Format.FOR_TIME, Format.INTERVALS}
        return self.blocks[-1].kind if inherits and not scored else BlockKind.MAIN

    def _close(self) -> None:
        if self.draft:
            blocks, problems = finish(settled(self.draft) if self.draft.in_window else self.draft)
            if self._is_too_long(blocks):
                blocks, problems = [], [whole(self.draft.row)]
            self.blocks += blocks
            self.not_understood += problems
            self.block_at |= dict.fromkeys(self.open_lines if blocks else (), len(self.blocks))
        self.draft = None
        self.open_lines.clear()

    def _is_too_long(self, blocks: list[Block]) -> bool:
        """Whether it would be more than a session may hold with these."""
        all_ = [*self.blocks, *blocks]
        lines = sum(len(one.buy_in) + len(one.lines) + len(one.cash_out) for one in all_)
        return len(all_) > MOST_BLOCKS or lines > MOST_LINES

    def _place(self, draft: Draft, reading: Reading) -> None:
        lines: list[Placed] = getattr(draft, draft.where if reading.where == "lines" else reading.where)
        for piece in reading.pieces:
            if piece.meaning:
                piece.station = piece.station or draft.station
                lines.append(Placed(piece, reading.row))
            elif lines and repeats(piece, lines[-1].piece):
                last = lines[-1].piece
                piece.meaning, piece.implement = last.meaning, last.implement
                lines.append(Placed(piece, reading.row))
            elif lines and completes(piece, lines[-1].piece):
                lines[-1] = Placed(complete(lines[-1].piece, piece), lines[-1].row)
            elif piece.load_rule and piece.load_rule.effort and not lines:
                effort = piece.load_rule.effort
                reading.facts.setdefault("aim", Aim(of="effort", low=effort, high=effort))
            elif not piece.unread:
                self.not_understood.append(named(reading.row, Stretch(piece.start, piece.end)))

    def _merge(self, draft: Draft, reading: Reading) -> None:
        """Facts join the block; one that says otherwise than before is named instead."""
        for name, value in reading.facts.items():
            if draft.facts.setdefault(name, value) == value:
                continue
            if name == "rest_s" and "work_s" in draft.facts:
                draft.notes.append(reading.row.text.strip())
            else:
                self.problem(reading.row)
                return
