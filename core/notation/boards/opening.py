"""Whether a row opens a part, and of which kind: by its heading, or by how it says that something is done."""

import re
from collections.abc import Callable
from typing import Final

from core.notation.boards.clauses import Clause
from core.notation.boards.drafts import Draft
from core.notation.boards.kinds import is_taken_easy
from core.notation.boards.parting import tells_how_often
from core.notation.boards.reading import Reading
from core.notation.lines.pieces import FAR
from core.notation.text import Row
from core.sessions.values import BlockKind, Format

OPENERS: Final = frozenset(("format", "rounds", "scheme", "every_s"))
# Often said at the end: `for time`, `x 3`.
_TOLD_BEHIND: Final = frozenset(("format", "rounds"))
_SCORED: Final = frozenset((Format.AMRAP, Format.FOR_TIME, Format.MAX_LOAD))
_LETTERED: Final = re.compile(r"\s*A[.):]\s")
ReadRow = Callable[[Row], Reading]


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


def is_past_warm_up(draft: Draft, reading: Reading) -> bool:
    """Whether a row is the work, though it is the first below `Warm-up`: it is scored, heavy, or part A."""
    waits = draft.kind is BlockKind.WARM_UP and not draft.placed and not draft.says_more_than_time
    if not waits or reading.kind:
        return False
    if reading.row.number == draft.row.number:
        told = bool(reading.facts.keys() & {"rounds", "scheme", "work_s"})
        return "minutes" in draft.facts and (told or _goes_far_in_sets(reading))
    scored = reading.facts.get("format") in _SCORED or reading.facts.keys() & {"cap_s", "scheme"}
    heavy = any(piece.load_rule for piece in reading.pieces)
    heavy |= _goes_far_in_sets(reading) and "minutes" in draft.facts
    told_uncounted = "format" in draft.facts  # what is said not to be counted may be heavy
    return bool(scored or (heavy and not told_uncounted) or _LETTERED.match(reading.row.text))


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
