"""Whether a row opens a part, and of which kind: by its heading, or by how it says that something is done."""

import re
from collections.abc import Callable, Sequence
from enum import Enum, auto
from typing import Final

from core.notation.boards.clauses import Clause
from core.notation.boards.drafts import Draft
from core.notation.boards.formats import ENDS, UNSCORED
from core.notation.boards.headings import heading
from core.notation.boards.kinds import is_readying, is_taken_easy
from core.notation.boards.parting import is_headed_in_front, tells_how_often
from core.notation.boards.reading import Reading
from core.notation.lines.pieces import FAR
from core.notation.phrases.efforts import EASY_ANYWAY
from core.notation.text import Row
from core.sessions.values import BlockKind, Format

OPENERS: Final = frozenset(("format", "rounds", "scheme", "every_s"))
# Often said at the end: `for time`, `x 3`.
_TOLD_BEHIND: Final = frozenset(("format", "rounds"))
_SCORED: Final = frozenset((Format.AMRAP, Format.FOR_TIME, Format.MAX_LOAD))
_LETTERED: Final = re.compile(r"\s*A[.):]\s")
# So many sets of one thing are no warm-up where another row has fewer (an estimate).
MANY: Final = 3
ReadRow = Callable[[Row], Reading]


class Ahead(Enum):
    """What of the work begins further down, told by a heading or by an empty row or a score."""

    NOTHING = auto()
    WORK = auto()
    HEADED = auto()


def opens(draft: Draft, reading: Reading, clause: Clause, read: ReadRow) -> bool:
    """Whether the part before a row ends with it; `read` reads the rows behind."""
    if draft.is_empty:
        return False
    again = reading.may_part or (reading.afterwards and reading.has_work) or reading.where == "buy_in"
    again |= _comes_after_ease(draft, reading)
    if reading.kind or reading.parts or (again and draft.lines) or _heads_sets(reading, clause, read):
        return True
    said = reading.facts.keys() & OPENERS
    if not said or not draft.lines or draft.is_name_alone or tells_how_often(draft, reading):
        return False
    has_work = reading.has_work or (
        work_follows(clause, read) and not (said == {"rounds"} and _has_its_own(clause, read))
    )
    if all(draft.facts.get(name) == reading.facts[name] for name in said) and not has_work:
        return False
    if reading.has_work and said <= {"scheme"} and draft.facts.get("scheme") == reading.facts["scheme"]:
        return False
    told_behind = said <= _TOLD_BEHIND and not said & draft.facts.keys()
    open_still = told_behind or not draft.facts.keys() & OPENERS
    return has_work or not open_still


def _comes_after_ease(draft: Draft, reading: Reading) -> bool:
    """`6 x 1 min fast, 1 min slow` below `10 min easy`."""
    turns = {"work_s", "rounds"} <= reading.facts.keys()
    return turns and all(one.amount and is_taken_easy(one) for one in draft.pieces)


def leaves_open(draft: Draft) -> bool:
    """Whether it names an easy part and says at most how long and how: `stretch`, `Warm-up 10 min`, `wu as usual`."""
    named = draft.headed and draft.kind in UNSCORED
    said = draft.facts and (draft.kind not in EASY_ANYWAY or draft.says_more_than_time)
    return named and not (draft.placed or said or draft.rests or draft.notes or draft.broken or draft.held)


def is_past_warm_up(draft: Draft, reading: Reading, ahead: Ahead) -> bool:
    """Whether a row below `Warm-up` is the work itself: it is scored, heavy, part A, or in sets with none ahead."""
    if draft.kind is not BlockKind.WARM_UP or reading.kind:
        return False
    if _is_first_work(draft, reading):
        return True
    below = reading.row.number != draft.row.number
    ends = _are_sets_of_work(draft, reading, ahead) or _are_turns_of_work(draft, reading, ahead)
    return below and (ends or _is_work_at_last(draft, reading, ahead))


def _is_first_work(draft: Draft, reading: Reading) -> bool:
    """Whether the first row below the heading is the work, or what stands behind it in its row."""
    if draft.placed or draft.says_more_than_time:
        return False
    if reading.row.number == draft.row.number:
        told = bool(reading.facts.keys() & {"rounds", "scheme", "work_s"})
        return "minutes" in draft.facts and (told or _goes_far_in_sets(reading))
    scored = reading.facts.get("format") in _SCORED or reading.facts.keys() & {"cap_s", "scheme"}
    heavy = any(piece.load_rule for piece in reading.pieces)
    heavy |= _goes_far_in_sets(reading) and "minutes" in draft.facts
    told_uncounted = "format" in draft.facts  # what is said not to be counted may be heavy
    return bool(scored or (heavy and not told_uncounted) or _LETTERED.match(reading.row.text))


def _are_sets_of_work(draft: Draft, reading: Reading, ahead: Ahead) -> bool:
    """Whether sets end a warm-up: with a load where no heading of work is ahead, without one where no work is.

    Not where nothing would be left to warm up with, nor below sets that are as light.
    """
    if not _in_sets(reading) or any(piece.sets and piece.loads_kg for piece in draft.pieces):
        return False
    if ahead is Ahead.HEADED or "format" in draft.facts:
        return False
    loaded = all(piece.loads_kg or piece.load_rule for piece in reading.pieces)
    warmed = _says_more_than_heading(draft) or any((piece.sets or 0) < MANY for piece in draft.pieces)
    return (loaded and (warmed or bool(draft.lines))) or (
        ahead is Ahead.NOTHING and (warmed or (reading.begins and bool(draft.lines)))
    )


def _are_turns_of_work(draft: Draft, reading: Reading, ahead: Ahead) -> bool:
    """`Warm-up 8 min jog`, `5 x 3 min hard, 2 min easy`, and nothing else."""
    return ahead is Ahead.NOTHING and bool(draft.lines) and {"work_s", "rounds"} <= reading.facts.keys()


def _is_work_at_last(draft: Draft, reading: Reading, ahead: Ahead) -> bool:
    """`Warm-up 2 km easy`, `6 km tempo run`, and nothing else: what readies nobody is the work."""
    told = bool(draft.lines) and is_headed_in_front(draft) and ahead is Ahead.NOTHING and reading.has_work
    return told and not any(is_readying(piece) or is_taken_easy(piece) for piece in reading.pieces)


def _says_more_than_heading(draft: Draft) -> bool:
    """`Warm-up 10 min`, `wu as usual`: the heading tells in its own row what is done, if not in lines."""
    found = heading(draft.row.text.lower())
    return found is not None and any(sign.isalnum() for sign in draft.row.text[found[1] :])


def _in_sets(reading: Reading, least: int = 2) -> bool:
    """Whether all that is to do in a row is done in so many sets or more."""
    told = [piece for piece in reading.pieces if piece.meaning or (piece.unread and piece.says_anything)]
    return bool(told) and all((piece.sets or 0) >= least for piece in told)


def ahead_of(clauses: Sequence[Clause], read: ReadRow, *, few: bool) -> Ahead:
    """What of the work the rows behind a warm-up still begin: those of a finisher and a cool-down begin none.

    `few`: these rows stand behind sets of so few that more of them are the work.
    """
    found = Ahead.NOTHING
    easy = False
    for clause in clauses:
        reading = read(clause.row)
        easy = bool(reading.kind) or (easy and not clause.is_first)
        if reading.kind and reading.kind not in EASY_ANYWAY and not ENDS.match(reading.name or ""):
            return Ahead.HEADED
        scored = reading.facts.keys() & {"cap_s", "scheme"} or reading.facts.get("format") in _SCORED
        begins = scored or (clause.is_first and reading.has_work) or (few and _in_sets(reading, MANY))
        found = Ahead.WORK if begins and not easy else found
    return found


def _goes_far_in_sets(reading: Reading) -> bool:
    return bool(reading.pieces) and all(piece.sets and piece.unit in FAR for piece in reading.pieces)


def next_kind(reading: Reading, before: BlockKind, *, same_row: bool, below: bool) -> BlockKind:
    """The kind of the part that a row opens behind one of the kind `before`, whose heading may be in the same row.

    `below`: that heading has a row of its own, and no empty row behind it: `Warm-up`, `5 min row`, `2 rounds: ...`.
    """
    if reading.kind:
        return reading.kind
    if below and not reading.begins and _is_at_ease(reading):
        return before
    warm_now = before is BlockKind.WARM_UP and any(piece.sets for piece in reading.pieces)
    if same_row and not warm_now and not reading.facts.keys() & {"format", "cap_s"}:
        return before
    scored = reading.facts.get("format") in {Format.AMRAP, Format.FOR_TIME, Format.INTERVALS}
    scored |= before is BlockKind.SKILL and "scheme" in reading.facts
    inherits = not reading.is_named and before in {BlockKind.STRENGTH, BlockKind.SKILL} and not scored
    return before if inherits else BlockKind.MAIN


def _is_at_ease(reading: Reading) -> bool:
    """Whether nothing in a row says that it is raced, lifted in sets, or a part with a name of its own."""
    raced = reading.facts.keys() - {"rounds", "rest_s", "effort"}
    return not (raced or reading.parts or reading.is_named or any(piece.sets for piece in reading.pieces))


def _has_its_own(clause: Clause, read: ReadRow) -> bool:
    """Whether what follows tells itself how often it is done, or is done `then`."""
    below = read(clause.behind[0])
    named = [piece for piece in below.pieces if piece.meaning]
    return below.then or (bool(named) and all(piece.sets for piece in named))


def work_follows(clause: Clause, read: ReadRow) -> bool:
    """Whether there is anything to do behind it, before the next empty row."""
    rows = (read(row) for row in clause.behind)
    return any(piece.meaning and not row.is_remark for row in rows for piece in row.pieces)


def _heads_sets(reading: Reading, clause: Clause, read: ReadRow) -> bool:
    """Whether a name stands at the head of a paragraph above sets that name nothing: `Bench press`, `5 x 5`."""
    if not (clause.is_first and clause.behind and len(reading.pieces) == 1):
        return False
    (name,) = reading.pieces
    below = read(clause.behind[0]).pieces
    nameless = bool(below) and below[0].sets is not None and below[0].meaning is None
    return name.meaning is not None and not name.says_anything and nameless
