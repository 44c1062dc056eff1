"""From what the rows of a block say to the finished block: its lines, and what is missing."""

from collections.abc import Iterator
from dataclasses import replace
from itertools import groupby
from typing import NamedTuple

from core.measures import AmountUnit
from core.notation.counted import as_counted
from core.notation.drafts import Draft, Placed
from core.notation.efforts import effort_of_all
from core.notation.formats import UNSCORED, in_turn_s, rests_behind_each_s, which_format
from core.notation.kinds import kind_by_lines
from core.notation.names import words
from core.notation.phrase_aims import Facts
from core.notation.pieces import Piece, as_line
from core.notation.quantities import MINUTE_S
from core.notation.rungs import as_ladder
from core.notation.set_by_set import set_by_set
from core.notation.slips import without_slips
from core.notation.text import Row
from core.notation.unread import Stretch, named, whole
from core.notation.values import NotUnderstood
from core.sessions.values import Block, BlockKind, Format, Line


class Problem(NamedTuple):
    """What is missing or can't be meant, in a line or, without a `piece`, in the whole block."""

    row: Row
    piece: Piece | None = None
    guess: str | None = None

    def named(self) -> NotUnderstood:
        if self.piece is None:
            return whole(self.row, self.guess)
        return named(self.row, Stretch(self.piece.start, self.piece.end, self.guess))


def finish(draft: Draft) -> tuple[list[Block], list[NotUnderstood]]:
    """The blocks a draft holds (different counts of sets part it), and what it leaves open.

    A draft with a row that was not understood gets no further complaint about what that row may have said.
    """
    if draft.is_empty:
        return [], []
    draft = as_ladder(_by_time(_on_its_own(draft)))
    if not draft.lines:
        return [], [] if draft.broken else [Problem(draft.row).named()]
    blocks: list[Block] = []
    draft, slips, cut = without_slips(_without_heading(draft))
    problems = [Problem(placed.row, placed.piece) for placed in slips]
    if not draft.lines:
        return [], [problem.named() for problem in problems or [Problem(draft.row)]]
    for part in _parts(draft):
        block, found = _block(set_by_set(part))
        blocks.append(block)
        problems += found
    if cut and all(problem.piece for problem in problems):
        problems.append(Problem(draft.row))
    return blocks, [problem.named() for problem in problems if problem.piece or cut or not draft.broken]


def _on_its_own(draft: Draft) -> Draft:
    """`Finish: 3 min back stretch` that ends nothing is the work itself."""
    if draft.lines or draft.buy_in or not draft.cash_out:
        return draft
    return replace(draft, lines=draft.cash_out, cash_out=[])


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
    pieces = [placed.piece for placed in draft.lines]
    said = draft.facts.get("format")
    most = all(one.most and not one.sets for one in pieces) and "rounds" not in draft.facts
    if len(pieces) > 1 and most and said in {None, Format.MAX_REPS}:
        yield from _one_by_one(draft)
        return
    in_turn = draft.in_turn or draft.kind in UNSCORED or _are_beside(draft)
    if said is None and not in_turn and _is_mixed(draft):
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
    return any(with_sets) and not all(with_sets) and not told and not _is_circuit(draft)


def _runs(draft: Draft) -> Iterator[Draft]:
    """Lines with sets of their own are each a part; what is done once stands together."""
    for own, run in groupby(draft.lines, key=lambda placed: bool(placed.piece.sets)):
        lines = list(run)
        if own:
            yield from _one_by_one(replace(draft, lines=lines))
        else:
            facts = {name: value for name, value in draft.facts.items() if name != "rest_s"}
            yield replace(draft, lines=lines, facts=facts)


def _one_by_one(draft: Draft) -> Iterator[Draft]:
    """A draft per line; the rest lies between them, none behind the last unless its own sets have it."""
    for placed in draft.lines:
        facts = dict(draft.facts)
        if placed is draft.lines[-1] and not placed.piece.sets:
            facts.pop("rest_s", None)
        yield replace(draft, lines=[placed], facts=facts)


def _again(draft: Draft, times: int) -> Iterator[Draft]:
    """`3 x 5 min amrap, 2 min rest between`: each is scored for itself."""
    facts = {name: value for name, value in draft.facts.items() if name != "again"}
    for _ in range(times - 1):
        yield replace(draft, facts=facts)
    yield replace(draft, facts={name: value for name, value in facts.items() if name != "rest_s"})


def _block(draft: Draft) -> tuple[Block, list[Problem]]:
    draft = as_counted(draft)
    problems = list(_check_lines(draft))
    facts = dict(draft.facts)
    amount, amount_to = facts.pop("amount", None), facts.pop("amount_to", None)
    in_turn = facts.pop("in_turn", False)
    in_kcal = facts.pop("in_kcal", False)
    if facts.pop("most", False):
        draft = replace(draft, lines=[_as_much_as_goes(placed) for placed in draft.lines])
    if draft.kind is BlockKind.SKILL and draft.only and _is_played(draft.only) and not facts.get("minutes"):
        facts["minutes"] = (draft.only.amount or 0) / MINUTE_S
        draft = replace(
            draft, lines=[draft.lines[0]._replace(piece=replace(draft.only, amount=None, unit=None))]
        )
    facts = effort_of_all(draft.pieces) | facts
    format_ = which_format(draft)
    if format_ is Format.MAX_REPS and draft.only and _is_time(draft.only):
        draft = replace(draft, lines=[draft.lines[0]._replace(piece=replace(draft.only, most=True))])
    if format_ is None:
        problems.append(Problem(draft.row, guess="for time"))
        format_ = Format.QUALITY
    only = draft.only
    if format_ is Format.INTERVALS and only and only.sets and _is_time(replace(only, sets=None)):
        facts.setdefault("work_s", only.amount)
    if format_ is Format.INTERVALS and (work_s := rests_behind_each_s(draft)):
        facts.setdefault("work_s", work_s)
    if "work_s" in facts and "rest_s" in facts and format_ is Format.INTERVALS:
        facts.setdefault("every_s", facts["work_s"] + facts["rest_s"])
    facts |= {"format": format_, "rounds": facts.get("rounds") or _sets(draft)}
    _settle_minutes(facts, draft)
    problems += _missing(draft, facts)
    unscored = format_ is Format.QUALITY or draft.kind in UNSCORED
    pieces = _at_stations([placed.piece for placed in draft.lines], format_, resting=bool(draft.rests))
    pieces = _one_each(pieces) if in_turn and format_ is Format.INTERVALS else pieces
    pieces = _for_calories(pieces) if in_kcal else pieces
    kept = format_ is Format.INTERVALS and all(piece.station for piece in pieces)
    notes = draft.notes + [rest.row.text.strip() for rest in draft.rests if not kept]
    lines = {
        name: tuple(_line(piece, facts, amount, amount_to) for piece in told)
        for name, told in (
            ("lines", pieces),
            ("buy_in", [placed.piece for placed in draft.buy_in]),
            ("cash_out", [placed.piece for placed in draft.cash_out]),
        )
    }
    block = Block.model_validate(
        {
            "kind": draft.kind
            if draft.headed
            else kind_by_lines(
                draft.kind,
                format_,
                lines["lines"],
                in_rounds=_in_rounds(draft),
                in_sets=any(piece.sets for piece in draft.pieces),
            ),
            "scored": not unscored,
            "rest_stations": tuple(sorted({rest.station for rest in draft.rests})) if kept else (),
            "notes": "; ".join(notes) or None,
            "partial": draft.broken,
        }
        | _of_block(facts)
        | lines
    )
    return block, problems


def _of_block(facts: Facts) -> Facts:
    """In what it is counted only where neither the format nor the lines say it."""
    told = facts["format"] is Format.INTERVALS and facts.get("counted_in") is not AmountUnit.SECONDS
    return {name: value for name, value in facts.items() if told or name != "counted_in"}


def _in_rounds(draft: Draft) -> bool:
    """Whether how often is told of all lines together, and by no letters."""
    return "rounds" in draft.facts and not (draft.in_turn or draft.is_complex)


def _as_much_as_goes(placed: Placed) -> Placed:
    """`1 min at each station`: of what tells no amount."""
    open_still = placed.piece.amount is None
    return placed._replace(piece=replace(placed.piece, most=True)) if open_still else placed


def _is_played(piece: Piece) -> bool:
    """`Handstand kick-ups, 10 min`: the time is how long they are practised."""
    counted = piece.meaning is not None and piece.meaning.unit is AmountUnit.REPS
    return counted and _is_time(piece) and (piece.amount or 0) > MINUTE_S


def _is_time(piece: Piece) -> bool:
    """`walk 20 min, how far?`: the time is how long there is."""
    return piece.unit is AmountUnit.SECONDS and bool(piece.amount) and not piece.sets


def _at_stations(pieces: list[Piece], format_: Format, *, resting: bool) -> list[Piece]:
    """In intervals a numbered list says what is done when; elsewhere it is only a list."""
    numbers = {piece.listed for piece in pieces}
    alone = len(numbers) == 1 and not resting
    told = any(piece.station for piece in pieces)
    if format_ is not Format.INTERVALS or told or None in numbers or alone:
        return pieces
    return [replace(piece, station=piece.listed) for piece in pieces]


def _for_calories(pieces: list[Piece]) -> list[Piece]:
    """`Max calories in 10 min` stands above a row that names only the machine."""
    return [
        replace(one, most=True, in_kcal=True) if one.amount is None or one.most else one for one in pieces
    ]


def _one_each(pieces: list[Piece]) -> list[Piece]:
    """Said to alternate, each has a minute of its own."""
    if any(piece.station for piece in pieces):
        return pieces
    return [replace(piece, station=number) for number, piece in enumerate(pieces, 1)]


def _sets(draft: Draft) -> int | None:
    return next((placed.piece.sets for placed in draft.lines if placed.piece.sets), None)


def _settle_minutes(facts: Facts, draft: Draft) -> None:
    """A time beside `for time` is its cap, a cap beside an amrap its length; `2 min max` is one too."""
    only = draft.only
    if facts["format"] is Format.MAX_REPS and only and only.most and only.unit is AmountUnit.SECONDS:
        facts["minutes"] = (only.amount or 0) / 60
    if facts["format"] is Format.INTERVALS and "every_s" not in facts:
        facts |= {"every_s": every_s} if (every_s := in_turn_s(draft)) else {}
    if facts["format"] is Format.AMRAP and "minutes" not in facts and "cap_s" in facts:
        facts["minutes"] = facts.pop("cap_s") / 60
    if facts["format"] is Format.FOR_TIME and "minutes" in facts:
        facts.setdefault("cap_s", facts.pop("minutes") * 60)


def _line(piece: Piece, facts: Facts, amount: int | None, amount_to: int | None) -> Line:
    if piece.maybe_kg and facts.get("scheme"):
        piece = replace(piece, amount=None, loads_kg=(piece.maybe_kg,))
    line = as_line(piece)
    if piece.most:
        usual = piece.meaning.unit if piece.meaning else line.unit
        told = AmountUnit.KCAL if piece.in_kcal else facts.get("counted_in", usual)
        return line.model_copy(update={"amount": None, "unit": told})
    if line.amount is None and amount:
        upper = None if amount_to is None else float(amount_to)
        return line.model_copy(update={"amount": float(amount), "amount_to": upper, "unit": AmountUnit.REPS})
    if line.amount is None and facts.get("work_s"):
        counted = ("for calories",) if line.unit is AmountUnit.KCAL else ()
        notes = "; ".join((*piece.notes, *counted)) or None
        return line.model_copy(update={"amount": facts["work_s"], "unit": AmountUnit.SECONDS, "notes": notes})
    return line


_COUNTED = {Format.AMRAP, Format.FOR_TIME, Format.SETS, Format.INTERVALS, Format.TIME_TRIAL}


def _missing(draft: Draft, facts: Facts) -> Iterator[Problem]:
    """What the format needs and nobody said."""
    if facts["format"] is Format.AMRAP and not facts.get("minutes"):
        yield Problem(draft.row, guess="12 min amrap")
    given = facts.get("scheme") or facts.get("work_s") or draft.facts.get("amount")
    if facts["format"] not in _COUNTED or given:
        return
    for piece, row in draft.placed:
        if piece.amount is None and not piece.most:
            yield Problem(row, piece, f"10 {piece.text}")


def _check_lines(draft: Draft) -> Iterator[Problem]:
    """Lines that can't be meant as they stand."""
    some_sets = any(placed.piece.sets for placed in draft.lines) and not _is_circuit(draft)
    for piece, row in draft.placed:
        if piece.amount_to and piece.amount and piece.amount_to < piece.amount:
            yield Problem(row, piece)
        elif piece.meaning and piece.amount and piece.unit is None and not piece.most:
            yield from _unit_missing(piece, row)
        if some_sets and not piece.sets:
            yield Problem(row, piece, f"3 x {piece.text}")


def _is_circuit(draft: Draft) -> bool:
    """`5 x 200 m run, 10 burpees, 15 sit-ups` in one row: the number stands for the whole of it."""
    first, *others = draft.lines
    in_one_row = all(placed.row == first.row and not placed.piece.sets for placed in others)
    return bool(draft.facts.get("format")) or (bool(first.piece.sets and others) and in_one_row)


def _unit_missing(piece: Piece, row: Row) -> Iterator[Problem]:
    """`30 plank` may be seconds; only what is counted needs no unit."""
    if piece.meaning and piece.meaning.unit is not AmountUnit.REPS:
        said = f"{piece.amount:g} {piece.meaning.unit} {piece.meaning.spelling}"
        yield Problem(row, piece, said)
