"""From what the rows of a block say to the finished block: its lines, and what is missing."""

from collections.abc import Iterator
from dataclasses import replace
from itertools import groupby

from core.measures import AmountUnit
from core.notation.boards.drafts import Draft
from core.notation.boards.finished import Problem, block_of, is_circuit, stands_for_its_row
from core.notation.boards.formats import UNSCORED
from core.notation.boards.rungs import as_ladder
from core.notation.boards.set_by_set import set_by_set
from core.notation.boards.slips import without_slips
from core.notation.lines.pieces import Piece
from core.notation.names.spellings import words
from core.notation.phrases.aims import Facts
from core.notation.phrases.paces import RESTING
from core.notation.quantities import MINUTE_S
from core.notation.values import NotUnderstood
from core.sessions.values import MOST_BLOCKS, MOST_LINES, Block, Format


def finish(draft: Draft) -> tuple[list[Block], list[NotUnderstood]]:
    """The blocks a draft holds (different counts of sets part it), and what it leaves open.

    A draft with a row that was not understood gets no further complaint about what that row may have said.
    """
    if draft.is_empty:
        return [], []
    draft = as_ladder(_around(_by_time(_on_its_own(draft))))
    if not draft.lines:
        return [], [] if draft.broken else [Problem(draft.row).named()]
    blocks: list[Block] = []
    draft, slips, cut = without_slips(_without_heading(draft))
    problems = [Problem(placed.row, placed.piece) for placed in slips]
    if not draft.lines:
        return [], [problem.named() for problem in problems or [Problem(draft.row)]]
    for part in _parts(draft):
        block, found = block_of(set_by_set(part))
        blocks.append(block)
        problems += found
    if cut and all(problem.piece for problem in problems):
        problems.append(Problem(draft.row))
    return blocks, [problem.named() for problem in problems if problem.piece or cut or not draft.broken]


def too_long(blocks: list[Block]) -> bool:
    """Whether it is more than a session may hold."""
    lines = sum(len(one.buy_in) + len(one.lines) + len(one.cash_out) for one in blocks)
    return len(blocks) > MOST_BLOCKS or lines > MOST_LINES


def rest_between(blocks: list[Block], start: int, rest_s: float) -> None:
    """A rest that stands by itself is of all the sets from `start` on that have none; so of tests."""
    for at in range(start, len(blocks)):
        block = blocks[at]
        told = block.rounds or block.format is Format.MAX_REPS
        if told and block.rest_s is None and block.format in {Format.SETS, Format.HOLD, Format.MAX_REPS}:
            blocks[at] = block.model_copy(update={"rest_s": rest_s})


def _on_its_own(draft: Draft) -> Draft:
    """`Finish: 3 min back stretch` that ends nothing is the work itself."""
    if draft.lines or draft.buy_in or not draft.cash_out:
        return draft
    return replace(draft, lines=draft.cash_out, cash_out=[])


def _around(draft: Draft) -> Draft:
    """Behind a buy-in and a scheme, what tells its own amount at the end is done once: `21-15-9: ..., 50 skips`."""
    told = [bool(piece.amount) and not piece.maybe_kg for piece in draft.pieces]
    if not (draft.buy_in and "scheme" in draft.facts) or draft.cash_out or all(told) or not any(told):
        return draft
    last = len(told) - told[::-1].index(False)
    return replace(draft, lines=draft.lines[:last], cash_out=draft.lines[last:])


def _by_time(draft: Draft) -> Draft:
    """`Hold a plank for 60 seconds, 4 sets`, `walk fast for 40 minutes`: the minutes are how long it is done."""
    only, minutes = draft.only, draft.facts.get("minutes")
    format_ = draft.facts.get("format")
    open_still = only and only.meaning and not (only.amount or only.most or only.sets or only.load_rule)
    if (
        not (open_still and minutes)
        or format_ not in {None, Format.SETS}
        or draft.kind in UNSCORED
        or draft.in_window
    ):
        return draft
    assert only is not None and only.meaning is not None  # noqa: PT018
    if only.meaning.unit not in {AmountUnit.SECONDS, AmountUnit.METRES}:
        return draft
    facts = {name: told for name, told in draft.facts.items() if name not in {"minutes", "format"}}
    timed = replace(only, amount=minutes * MINUTE_S, unit=AmountUnit.SECONDS)
    return replace(draft, facts=facts, lines=[draft.lines[0]._replace(piece=timed)])


def _without_heading(draft: Draft) -> Draft:
    """`Snatch. Every 90 s: 1 power snatch`: a first line that only names what the next ones tell says nothing more."""
    first, *others = draft.lines
    said = first.piece.says_anything or draft.facts.keys() & {"scheme", "work_s", "amount"}
    same = any(
        one.piece.meaning and first.piece.meaning and _are_one(one.piece, first.piece) for one in others
    )
    return draft if said or not same else replace(draft, lines=others)


def _are_one(piece: Piece, other: Piece) -> bool:
    """Whether a line that tells an amount is of the same movement."""
    told = piece.amount or piece.most or piece.sets
    if not (told and piece.meaning and other.meaning):
        return False
    named = {*words(other.meaning.spelling)} <= {*words(piece.meaning.spelling)}
    return named or piece.meaning.movement == other.meaning.movement


def _parts(draft: Draft) -> Iterator[Draft]:
    """One draft per line that has its own number of sets, or per `2 min max ...`; most often one."""
    if again := draft.facts.get("again"):
        yield from _again(draft, again)
        return
    if draft.facts.pop("apart", False):
        yield from _one_by_one(draft)
        return
    pieces = [placed.piece for placed in draft.lines]
    said = draft.facts.get("format")
    timed = said is Format.MAX_REPS and all(one.unit is AmountUnit.SECONDS and one.amount for one in pieces)
    most = (timed or all(one.most for one in pieces)) and not any(one.sets for one in pieces)
    most &= "rounds" not in draft.facts
    if len(pieces) > 1 and most and said in {None, Format.MAX_REPS}:
        yield from _one_by_one(draft)
        return
    in_turn = draft.in_turn or draft.kind in UNSCORED or _are_beside(draft)
    if draft.kind in UNSCORED and not draft.letter and _is_mixed(draft):
        yield from _as_often(draft)
        return
    if said in {None, Format.QUALITY} and not in_turn and _is_mixed(draft):
        yield from _runs(draft)
        return
    if said not in {None, Format.SETS} or in_turn or len(pieces) == 1 or not all(one.sets for one in pieces):
        yield draft
        return
    yield from _one_by_one(draft)


def _are_beside(draft: Draft) -> bool:
    """`3x12 lateral raise + 3x15 face pull`: as many sets of each in one row are done in turn."""
    first = draft.lines[0]
    return len(draft.lines) > 1 and all(
        placed.row.number == first.row.number and placed.piece.sets == first.piece.sets
        for placed in draft.lines
    )


def _is_mixed(draft: Draft) -> bool:
    """Whether some lines have sets of their own and others don't, with no word how often all is done."""
    with_sets = [bool(piece.sets) for piece in draft.pieces]
    told = draft.facts.keys() & {"rounds", "scheme", "every_s", "work_s", "cap_s", "amount"}
    practised = draft.facts.get("format") is Format.QUALITY
    in_turn = stands_for_its_row(draft) if practised else is_circuit(draft)
    return any(with_sets) and not all(with_sets) and not told and not in_turn


def _runs(draft: Draft) -> Iterator[Draft]:
    """Lines with sets of their own are each a part; what is done once stands together."""
    for own, run in groupby(draft.lines, key=lambda placed: bool(placed.piece.sets)):
        lines = list(run)
        if own:
            yield from _one_by_one(replace(draft, lines=lines, facts=_of_sets(draft.facts)))
        else:
            facts = {name: value for name, value in draft.facts.items() if name != "rest_s"}
            notes = [note for note in draft.notes if not RESTING.search(note.lower())]
            yield replace(draft, lines=lines, facts=facts, notes=notes)


def _of_sets(facts: Facts) -> Facts:
    """What is told of all but how long what isn't done in sets is practised."""
    practised = facts.get("format") is Format.QUALITY
    return {name: told for name, told in facts.items() if not (practised and name in {"format", "minutes"})}


def _as_often(draft: Draft) -> Iterator[Draft]:
    """`WU: 5 min bike, 2x10 clamshells, 2x10 bridges`: what is done as often stands together."""
    for _, run in groupby(draft.lines, key=lambda placed: placed.piece.sets):
        yield replace(draft, lines=list(run))


def _one_by_one(draft: Draft) -> Iterator[Draft]:
    """A draft per line; the rest lies between them, none behind the last unless its own sets have it."""
    for placed in draft.lines:
        facts = dict(draft.facts)
        if placed.piece.sets:
            facts.pop("rounds", None)  # told of another line: `3 x 20 s plank, hang 1 min x2`
        elif placed is draft.lines[-1]:
            facts.pop("rest_s", None)
        yield replace(draft, lines=[placed], facts=facts)


def _again(draft: Draft, times: int) -> Iterator[Draft]:
    """`3 x 5 min amrap, 2 min rest between`: each is scored for itself."""
    facts = {name: value for name, value in draft.facts.items() if name != "again"}
    for _ in range(times - 1):
        yield replace(draft, facts=facts)
    own = any(piece.sets for piece in draft.pieces)  # then the rest lies between them
    yield replace(draft, facts={name: value for name, value in facts.items() if own or name != "rest_s"})
