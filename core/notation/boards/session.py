"""A coach's pasted text -> Session, with everything that was corrected or not understood at its place."""

from dataclasses import dataclass, field
from functools import lru_cache
from itertools import filterfalse

from core.measures import MassUnit
from core.movements.lookup import Catalogue
from core.notation.boards.blocks import finish, rest_between, too_long
from core.notation.boards.clauses import Clause, clauses
from core.notation.boards.days import names_days, where_a_day_ends
from core.notation.boards.drafts import Draft
from core.notation.boards.formats import UNSCORED
from core.notation.boards.going import go_easy, go_in_turn, way_of_all
from core.notation.boards.headings import DATE
from core.notation.boards.kinds import by_place, tells_how_much
from core.notation.boards.opening import (
    MANY,
    OPENERS,
    Ahead,
    ahead_of,
    is_past_warm_up,
    leaves_open,
    next_kind,
    opens,
    work_follows,
)
from core.notation.boards.parting import (
    begin_list,
    counts_on,
    is_over,
    keep_with_part,
    knows_how,
    names_a_part,
    rests_behind_all,
    sets_end_it,
    take_from_row,
)
from core.notation.boards.placing import Around, go_the_way, place
from core.notation.boards.reading import Reading, take_back_formats
from core.notation.boards.remarks import (
    is_on_condition,
    keep_behind,
    keep_beside,
    keep_what_is_unread,
    keep_with_line,
    leave_said,
)
from core.notation.boards.repairs import mended
from core.notation.boards.row_reader import read_row
from core.notation.boards.rows import settle_row, unit_of_all
from core.notation.boards.rungs import climbs_by_round, names_a_round
from core.notation.boards.sending import send
from core.notation.boards.sharing import load_all, take_tool, with_tool
from core.notation.boards.spelled import in_digits, with_lists
from core.notation.boards.stations import is_rest
from core.notation.boards.titles import Title
from core.notation.boards.unread import Stretch, named, whole, with_whole
from core.notation.boards.windows import Window, settled, window
from core.notation.labels.facts import heading_of
from core.notation.lines.pieces import Piece
from core.notation.names.catalogued import Lexicon, Meaning, lexicon
from core.notation.phrases.aims import Facts
from core.notation.phrases.efforts import EASY_ANYWAY, take_effort, with_effort
from core.notation.phrases.paces import with_rates
from core.notation.quantities import MINUTE_S
from core.notation.talk.chat import is_like_a_session
from core.notation.text import Row, blanked, rows
from core.notation.tongues import in_english
from core.notation.values import Corrected, NotUnderstood, ReadSession
from core.sessions.values import Block, BlockKind, Session

__all__ = ["is_like_a_session", "read_session"]

LONGEST_SESSION = 200
# Beside these, lines need no amount of their own.
_GIVE_AMOUNTS = {"scheme", "work_s", "amount"}


@lru_cache(maxsize=32)
def read_session(text: str, catalogue: Catalogue, unit: MassUnit = MassUnit.KG) -> ReadSession:
    """Reads a session as coaches write it; bare loads count in `unit`. Never raises, whatever the text."""
    known = lexicon(catalogue)
    every = rows(text)
    written = [row for row in every if row.text.strip()]
    of_a_week = names_days(written)
    reader = _Reader(known, unit, Title(known, unit, of_a_week=of_a_week), of_a_week=of_a_week)
    beyond = written[LONGEST_SESSION].number if len(written) > LONGEST_SESSION else len(every) + 1
    plain = (in_digits(in_english(reader.without_slips(row))) for row in every[: beyond - 1])
    told = with_rates(with_lists(tuple(plain)))
    reader.way = way_of_all(told, reader.lexicon)
    every_clause = reader.every = tuple(clauses(told))
    opening = reader.opens_with_words(told, every_clause)
    for clause in every_clause:
        if clause.row.number != opening:
            reader.read(clause)
    if len(written) > LONGEST_SESSION:
        reader.problem(written[LONGEST_SESSION])
    return reader.result(written)


@dataclass
class _Reader:
    lexicon: Lexicon
    unit: MassUnit
    title: Title
    draft: Draft | None = None
    blocks: list[Block] = field(default_factory=list)
    headed: list[bool] = field(default_factory=list)
    begun: list[Row] = field(default_factory=list)
    not_understood: list[NotUnderstood] = field(default_factory=list)
    corrected: list[Corrected] = field(default_factory=list)
    ordinal: int = 0
    headed_row: int = 0
    headed_above: bool = False
    kind: BlockKind = BlockKind.MAIN
    paragraph: int = 0
    open_lines: list[int] = field(default_factory=list)
    told: list[Row] = field(default_factory=list)
    block_at: dict[int, int] = field(default_factory=dict)
    format_known: bool = False
    window: Window | None = None
    over_all: Facts = field(default_factory=dict)
    above: Facts = field(default_factory=dict)
    way: Meaning | None = None
    tool: str | None = None
    before: list[Piece] = field(default_factory=list)
    every: tuple[Clause, ...] = ()
    of_a_week: bool = False
    in_a_day: bool = False

    @property
    def _has_begun(self) -> bool:
        return bool(self.draft or self.blocks or self.in_a_day)

    def without_slips(self, row: Row) -> Row:
        """The row without what its coach took back, which is shown at its place."""
        left, stretches = mended(row)
        self.not_understood += [named(row, stretch) for stretch in stretches]
        return left

    def opens_with_words(self, every: tuple[Row, ...], told: tuple[Clause, ...]) -> int | None:
        """The number of the first row where all of it is a title or a greeting, whatever marks stand in it.

        It is taken in as such: `Tuesday - Engine + legs`, `hey all! tomorrow is a short one`.
        """
        number = told[0].row.number if told else None
        behind = tuple(one.row for one in told if one.row.number != number)
        if number is None or len(told) == len(behind) + 1 or not behind:
            return None
        whole = Clause(every[number - 1], is_first=True, is_alone=True, behind=behind)
        if DATE.search(whole.row.text) or (self.of_a_week and where_a_day_ends(whole.row.text)):
            return None
        reading = read_row(whole.row, self.lexicon, self.unit)
        return number if self._is_set_aside(reading, whole) else None

    def read(self, clause: Clause) -> None:
        """Takes in one row, or a part of it."""
        if clause.is_first:
            self.paragraph = len(self.blocks) + (self.draft is not None)
        if self.of_a_week and (end := where_a_day_ends(clause.row.text)):
            self._begin_day(clause, end)
            return
        self._read(clause)

    def _begin_day(self, clause: Clause, end: int) -> None:
        """A day of a week ends what stands before it. Its name is shown as unread, with all that names no work."""
        self._close()
        self.in_a_day, self.kind = True, BlockKind.MAIN
        behind = self._read_row(blanked(clause.row, 0, end))
        done = any(piece.meaning or piece.says_anything for piece in behind.pieces)
        if not (done or behind.facts or behind.kind):
            told = heading_of(behind.row.text.lower().strip(" *_#=~:.-()"))
            self.kind = told or self.kind
            self.not_understood.append(whole(clause.row, looks_like="note"))
            return
        self.not_understood.append(named(clause.row, Stretch(0, end, looks_like="note")))
        self._read(clause._replace(row=behind.row, is_alone=False))

    def _read(self, clause: Clause) -> None:
        row = self._without_window(clause.row if self._has_begun else self.title.without(clause.row))
        self.unit = unit_of_all(row.text.lower()) or self.unit
        reading = read_row(row, self.lexicon, self.unit, self.ordinal)
        reading.begins = clause.is_first
        self.tool = take_tool(reading, self.lexicon) or self.tool
        self.ordinal = reading.number or reading.rest_station or self.ordinal
        leave_said(reading, self.draft, self.lexicon)
        if knows_how(self.draft) or any(piece.sets for piece in reading.pieces):
            take_back_formats(reading)
        if self.draft and names_a_part(reading, clause) and work_follows(clause, self._read_row):
            reading.parts = reading.is_named = True
        elif self._is_set_aside(reading, clause):
            return
        self._take(reading, clause)

    def _is_set_aside(self, reading: Reading, clause: Clause) -> bool:
        """Whether nothing is done in a row: it is empty, the title, or talk, which is kept where it belongs."""
        row = reading.row
        if reading.is_empty or (
            clause.is_alone and not self._has_begun and self.title.takes(reading, clause)
        ):
            return True
        if not self._is_talk(reading, clause):
            return False
        if not keep_behind(self.draft, row):
            self.not_understood.append(whole(row, looks_like="note"))
            if row.number - 1 in self.open_lines:
                self.open_lines.append(row.number)
        return True

    def _take(self, reading: Reading, clause: Clause) -> None:
        """What is done in a row, and what is said of it, joins the part that is open, or opens the next."""
        row = reading.row
        self.corrected += reading.corrected
        keep_beside(reading)
        around = Around(self.lexicon, self.unit, self.way, self.before)
        go_the_way(reading, self.draft, around)
        for piece in reading.pieces:
            if (piece.sets or piece.load_rule) and piece.amount and not (piece.meaning or piece.unread):
                piece.meaning = (
                    None if self.blocks or (self.draft and self.draft.lines) else self.title.movement()
                )
        settle_row(reading, self.lexicon, self.draft)
        if self.draft:
            take_from_row(self.draft, reading)
            if climbs_by_round(self.draft, reading):
                self.not_understood[:] = filterfalse(names_a_round, self.not_understood)
            keep_with_part(self.draft, reading)
            keep_what_is_unread(self.draft, reading)
            next_part = counts_on(self.draft, reading)
            if next_part or self._is_done(self.draft, reading, clause):
                self._close(shared=self.draft.shared if next_part else {})
        draft = self._open(reading)
        begin_list(draft, reading)
        self.open_lines.append(row.number)
        self.told += [row] if reading.facts else []
        self.format_known |= bool(reading.facts.keys() & OPENERS)
        self.not_understood += reading.placed(len(draft.lines))
        draft.broken |= any(stretch.looks_like != "note" for stretch in reading.unread)
        draft.letter = draft.letter or reading.letter
        send(draft, reading)
        self.not_understood += place(draft, reading, around._replace(before=self.before))
        self._merge(draft, reading)
        draft.notes += keep_with_line(draft, reading)
        draft.pauses += "rest_s" in reading.facts
        if reading.facts.keys() == {"rest_s"} and not reading.has_work:
            rest_between(self.blocks, self.paragraph, reading.facts["rest_s"])

    def result(self, written: list[Row]) -> ReadSession:
        self._close()
        if not self.blocks and not self.not_understood:
            self.problem(written[0] if written else Row(1, "", ()))
        self._take_back_names()
        told = self.blocks if self.of_a_week else by_place(self.blocks, self.headed)
        blocks = with_tool(with_effort(told, self.title.effort()), self.tool, self.lexicon)
        session = Session(title=self.title.text, date=self.title.date, blocks=blocks) if blocks else None
        placed = (
            one.model_copy(update={"block": self.block_at.get(one.line)}) for one in self.not_understood
        )
        ordered = sorted(placed, key=lambda found: (found.line, found.column))
        return ReadSession(
            session=session,
            not_understood=tuple(ordered),
            corrected=tuple(sorted(self.corrected, key=lambda one: (one.line, one.column))),
            rows=tuple(sorted(self.block_at.items())),
            format_known=self.format_known,
        )

    def _take_back_names(self) -> None:
        """A part that only names something is talk where other parts tell how much, or where all else is talk.

        `What we learn: the hip hinge`; `No training today. Walk, sleep, eat`.
        """
        told = [tells_how_much(block) for block in self.blocks]
        talked = any(one.looks_like == "note" for one in self.not_understood) and not self.format_known
        if all(told) or not (any(told) or talked):
            return
        kept = [at for at, one in enumerate(told) if one or self.headed[at]]
        gone = {row.number: row for at, row in enumerate(self.begun) if at not in kept}
        self.not_understood = [one for one in self.not_understood if one.line not in gone]
        self.not_understood += [whole(row, looks_like="note") for row in gone.values()]
        places = {at + 1: to + 1 for to, at in enumerate(kept)}
        self.block_at = {line: places[at] for line, at in self.block_at.items() if at in places}
        self.blocks, self.headed = [self.blocks[at] for at in kept], [self.headed[at] for at in kept]

    def _is_done(self, draft: Draft, reading: Reading, clause: Clause) -> bool:
        ahead = self._ahead(reading) if draft.kind is BlockKind.WARM_UP else Ahead.WORK
        past = is_past_warm_up(draft, reading, ahead) or opens(draft, reading, clause, self._read_row)
        return past or is_over(draft, reading) or sets_end_it(draft, reading, clause, self._read_row)

    def _ahead(self, reading: Reading) -> Ahead:
        """What of the work begins behind a row."""
        behind = [one for one in self.every if one.row.number > reading.row.number]
        few = all((piece.sets or 0) < MANY for piece in reading.pieces)
        return ahead_of(behind, self._read_row, few=few)

    def _read_row(self, row: Row) -> Reading:
        return read_row(row, self.lexicon, self.unit)

    def problem(self, row: Row) -> None:
        self.not_understood.append(whole(row))

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
            self.blocks[-1] = self.blocks[-1].model_copy(update={"rest_s": minutes * float(MINUTE_S)})

    def _is_talk(self, reading: Reading, clause: Clause) -> bool:
        """Plain talk, even if a word of it is the name of a movement: `Breathe, everybody!`."""
        if (
            reading.is_talk
            or (reading.is_remark and not clause.is_alone)
            or is_on_condition(reading.row.text)
        ):
            return True
        if not clause.is_alone and not reading.says_anything and not reading.is_open_work:
            return True
        given = self.draft.facts.keys() & _GIVE_AMOUNTS or self._is_practised() if self.draft else True
        bare = not (reading.kind or reading.facts or reading.parts or reading.notes)
        remarks = any(stretch.looks_like == "note" for stretch in reading.unread)
        return bare and remarks and not given and not any(piece.says_anything for piece in reading.pieces)

    def _is_practised(self) -> bool:
        """Whether a heading says that what it names needs no amount: `Skill: frog stand, play with it`."""
        return self.draft is not None and self.draft.headed and self.draft.kind in UNSCORED

    def _open(self, reading: Reading) -> Draft:
        if self.draft is None:
            above, self.above = self.above, {}
            self.draft = Draft(
                reading.row,
                kind=next_kind(
                    reading,
                    self.kind,
                    same_row=reading.row.number == self.headed_row,
                    below=self.headed_above and self._ahead(reading) is not Ahead.NOTHING,
                ),
                facts=above,
                shared=dict(above),
                is_next=bool(above),
            )
        elif reading.kind:
            self.draft.kind = reading.kind
            self.draft.row = reading.row if self.draft.is_empty else self.draft.row
        if reading.kind:
            self.draft.headed, self.headed_row = True, reading.row.number
            self.draft.name = reading.name
        return self.draft

    def _close(self, shared: Facts | None = None) -> None:
        """Ends the part; what was `shared` above a list is said of the next one too."""
        if self.draft:
            self.kind = self.draft.kind
            self.headed_above = self.draft.heads_rows and self.draft.kind in EASY_ANYWAY
            self.before = self.draft.pieces or self.before
            if self.draft.held:
                load_all(self.draft.held, self.draft.lines, self.lexicon)
            go_easy(self.draft, self.way, self.lexicon)
            go_in_turn(self.draft, self.way)
            done = settled(self.draft) if self.draft.in_window else self.draft
            blocks, problems = ([], []) if leaves_open(self.draft) else finish(done)
            if too_long([*self.blocks, *blocks]):
                blocks, problems = [], [whole(self.draft.row)]
            self.blocks += blocks
            self.headed += [self.draft.headed] * len(blocks)
            self.begun += [self.draft.row] * len(blocks)
            self.not_understood += problems
            if leaves_open(self.draft):
                said = whole(self.draft.row, looks_like="note")
                self.not_understood = [one for one in self.not_understood if one.line != said.line] + [said]
            if not (blocks or self.draft.headed) and set(self.open_lines) == {
                row.number for row in self.told
            }:
                self.not_understood = with_whole(self.not_understood, self.told)
            self.block_at |= dict.fromkeys(self.open_lines if blocks else (), len(self.blocks))
        self.draft = None
        self.above = dict(shared or {})
        self.open_lines.clear()
        self.told.clear()

    def _merge(self, draft: Draft, reading: Reading) -> None:
        """Facts join the block; one that says otherwise than before is named instead."""
        draft.rests_behind |= rests_behind_all(draft, reading)
        for name, value in take_effort(draft.facts, reading.facts).items():
            if draft.facts.setdefault(name, value) == value:
                continue
            if name == "rest_s" and "work_s" in draft.facts:
                draft.notes.append(reading.row.text.strip())
            else:
                self.problem(reading.row)
                return
