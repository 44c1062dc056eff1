"""Which format a block has: the one that was said, or the one that its shape leaves no doubt about."""

import re
from collections.abc import Callable

from core.measures import AmountUnit
from core.notation.boards.drafts import Draft
from core.notation.boards.kinds import is_calming, is_taken_easy
from core.notation.lines.pieces import FAR, Piece
from core.notation.phrases.efforts import is_easy
from core.notation.phrases.manners import GOES_ON
from core.notation.phrases.paces import is_paced
from core.sessions.values import BlockKind, Format

UNSCORED = {BlockKind.WARM_UP, BlockKind.COOL_DOWN, BlockKind.SKILL}
_OF_MOST = {None, Format.AMRAP, Format.MAX_REPS, Format.SETS}
# What comes behind the work.
ENDS = re.compile(r"finisher|accessor|assist", re.IGNORECASE)
# So far under a load is a march, no carry (an estimate).
_FAR_UNDER_LOAD_M = 1000
_MOST_IN_A_SET = 12
_MOST_SETS = 8


def which_format(draft: Draft) -> Format | None:
    """The format that was said, or the one that the shape of the block leaves no doubt about."""
    said = draft.facts.get("format")
    for rule in _RULES:
        if found := rule(draft, said):
            return found
    return said or _silent(draft)


def _most(draft: Draft, said: Format | None) -> Format | None:
    """`max push-ups`, `3 x max plank`, and `2 min amrap: push-ups`."""
    only = draft.only
    if only is None or draft.facts.get("scheme") or said not in _OF_MOST:
        return None
    if not (only.most or (said is Format.AMRAP and not only.amount and not only.sets)):
        return None
    return Format.HOLD if _is_held(only) and said in {None, Format.SETS} else Format.MAX_REPS


def _is_held(piece: Piece) -> bool:
    return piece.meaning is not None and piece.meaning.unit is AmountUnit.SECONDS and not piece.meaning.goes


def _distance(draft: Draft, said: Format | None) -> Format | None:
    only = draft.only
    if only is None or only.unit is not AmountUnit.METRES or only.sets:
        return None
    alone = bool(only.amount) and (not only.loads_kg or (only.amount or 0) >= _FAR_UNDER_LOAD_M)
    plain = not (draft.facts.keys() & {"rounds", "scheme", "every_s", "minutes"})
    if not (alone and plain and said in {None, Format.FOR_TIME}) or draft.kind in UNSCORED:
        return None
    at_a_pace = is_taken_easy(only) or is_paced(" ".join(only.notes).lower())
    return Format.QUALITY if said is None and at_a_pace else Format.TIME_TRIAL


def _repeated(draft: Draft, said: Format | None) -> Format | None:
    """`5 x 5 back squats` are sets; `5 x 200 m run` are intervals, and `3 x 1 min plank` are holds."""
    if said or not draft.lines or any(not placed.piece.sets for placed in draft.lines):
        return None
    if draft.kind in UNSCORED - {BlockKind.SKILL}:
        return Format.QUALITY
    only = draft.only
    if only and _is_held(only) and only.unit is AmountUnit.SECONDS and not _is_on_the_way(only):
        return Format.HOLD
    carried = only and only.meaning and (only.loads_kg or only.meaning.held)
    far = only and only.meaning and (only.unit or only.meaning.unit) in FAR
    runs = only and not carried and (far or _is_on_the_way(only))
    return Format.INTERVALS if runs else Format.SETS


def _held_once(draft: Draft, said: Format | None) -> Format | None:
    """`4 min wall sit`: what is held for so long is a hold, unless it is for after the work."""
    only = draft.only
    held = only and only.meaning and _is_held(only) and not is_calming(only.meaning.movement)
    timed = only and only.unit is AmountUnit.SECONDS and only.amount and not only.sets
    plain = said in {None, Format.SETS} and not draft.facts.keys() & {
        "minutes",
        "every_s",
        "work_s",
        "cap_s",
        "scheme",
    }
    return Format.HOLD if held and timed and plain and draft.kind not in UNSCORED else None


def _is_on_the_way(piece: Piece) -> bool:
    """Whether something is done by time that goes far, or on a machine that counts it: `3 x 10 min ride`."""
    goes = piece.meaning and (piece.meaning.unit in FAR or piece.meaning.goes)
    return bool(goes) and piece.unit is AmountUnit.SECONDS and not (piece.loads_kg or piece.load_rule)


def _one_after_the_other(draft: Draft, said: Format | None) -> Format | None:
    """`5 @ 60%, 5 @ 70%, 5 @ 80%` of one movement are sets."""
    pieces = [placed.piece for placed in draft.lines]
    told = all(piece.meaning and (piece.load_rule or piece.loads_kg) and not piece.sets for piece in pieces)
    one = len({piece.meaning for piece in pieces}) == 1
    plain = said is None and not draft.facts.keys() & {"scheme", "cap_s"}
    return Format.SETS if plain and told and one and len(pieces) > 1 else None


def _in_stages(draft: Draft, said: Format | None) -> Format | None:
    """`200-400-600-400-200 m`, `1-2-3-2-1 min row, 1 min rest`: one way of going, longer or shorter each time."""
    pieces = draft.pieces
    told = (
        len({(piece.start, placed.row.number) for piece, placed in zip(pieces, draft.lines, strict=True)})
        == 1
    )
    goes = all(piece.meaning and piece.meaning.unit in FAR and piece.amount for piece in pieces)
    paused = "rest_s" in draft.facts or all(piece.unit in FAR for piece in pieces)
    paused |= any(note.lower().startswith("rest") for note in draft.notes)
    plain = (
        said is None
        and not draft.facts.keys() & {"scheme", "cap_s", "minutes"}
        and draft.kind not in UNSCORED
    )
    return Format.INTERVALS if plain and told and goes and paused and len(pieces) > 1 else None


def _work_and_rest(draft: Draft, said: Format | None) -> Format | None:
    """`Work: 40 s`, `rest: 20 s`, each in a row of its own; or a rest behind each of what takes as long."""
    told = draft.facts.keys() >= {"work_s", "rest_s"} or rests_behind_each_s(draft) or worked_in_turn_s(draft)
    return Format.INTERVALS if said is None and told else None


def rests_behind_each_s(draft: Draft) -> float | None:
    """Seconds of work of each line, where all take as long and a rest follows each: `40 s squats`, `20 s rest`."""
    timed = {piece.amount if piece.unit is AmountUnit.SECONDS else None for piece in draft.pieces}
    only = draft.only
    paused = draft.pauses >= 1 and not _is_held(only) if only else len(draft.lines) == draft.pauses
    each = "rounds" in draft.facts and paused and len(timed) == 1
    return timed.pop() if each and draft.kind not in UNSCORED else None


def worked_in_turn_s(draft: Draft) -> float | None:
    """Seconds of each of several lines that all take as long, with a rest behind the last of them.

    `4 rounds: 1 min row, 1 min burpees, 1 min rest`.
    """
    timed = {piece.amount if piece.unit is AmountUnit.SECONDS else None for piece in draft.pieces}
    in_turn = draft.rests_behind and "rounds" in draft.facts and len(draft.lines) > 1 and len(timed) == 1
    moved = any(not _is_held(piece) for piece in draft.pieces)
    return timed.pop() if in_turn and moved and draft.kind not in UNSCORED else None


def _counted_by_one(draft: Draft, said: Format | None) -> Format | None:
    """`5 rounds, 1 min rest`, `score = slowest round`: each round is timed for itself."""
    each = draft.facts.keys() >= {"rounds", "rest_s", "counts"} and draft.kind not in UNSCORED
    return Format.INTERVALS if said in {None, Format.QUALITY} and each else None


def _in_turn(draft: Draft, said: Format | None) -> Format | None:
    """`3 rounds: 1 min max push-ups, 1 min max sit-ups`."""
    return Format.INTERVALS if said is None and "rounds" in draft.facts and in_turn_s(draft) else None


def in_turn_s(draft: Draft) -> float | None:
    """Seconds that each of several lines gets, if all say `1 min max ...`."""
    pieces = [placed.piece for placed in draft.lines]
    if len(pieces) < 2 or not all(one.most and one.unit is AmountUnit.SECONDS for one in pieces):  # noqa: PLR2004
        return None
    each = {piece.amount for piece in pieces}
    return each.pop() if len(each) == 1 else None


def _open_ladder(draft: Draft, said: Format | None) -> Format | None:
    """`2-4-6-8... in 10 min` has no end that could be reached against the clock."""
    timed = draft.facts.keys() & {"minutes", "cap_s"}
    return (
        Format.AMRAP
        if said is None and "scheme" in draft.facts and GOES_ON in draft.notes and timed
        else None
    )


def _unhurried(draft: Draft, said: Format | None) -> Format | None:
    """`Strength: 4 x 8`, `no clock`: they are still sets."""
    lifted = draft.kind is BlockKind.STRENGTH and bool(draft.pieces) and all(one.sets for one in draft.pieces)
    return Format.SETS if said is Format.QUALITY and lifted else None


_RULES: tuple[Callable[[Draft, Format | None], Format | None], ...] = (
    _most,
    _counted_by_one,
    _in_turn,
    _work_and_rest,
    _distance,
    _repeated,
    _held_once,
    _one_after_the_other,
    _in_stages,
    _open_ladder,
    _unhurried,
)


def _silent(draft: Draft) -> Format | None:
    """The format of a block that doesn't say it; None where it must be asked."""
    facts = draft.facts
    if "cap_s" in facts:
        return Format.FOR_TIME
    if draft.kind in UNSCORED or (not facts and ENDS.match(draft.name or "")):
        return Format.QUALITY  # of `Finisher: 30 burpees` nobody waits for a time
    scheme = facts.get("scheme", ())
    if scheme:
        heavy = max(scheme) <= _MOST_IN_A_SET and len(scheme) <= _MOST_SETS and draft.only is not None
        return Format.SETS if heavy or draft.kind is BlockKind.STRENGTH else Format.FOR_TIME
    loaded = "rest_s" in facts and any(piece.loads_kg or piece.load_rule for piece in draft.pieces)
    lifted = draft.kind is BlockKind.STRENGTH or draft.in_turn or draft.is_complex or loaded
    if lifted and "rounds" in facts:
        return Format.SETS
    easy = is_easy(facts.get("effort")) and bool(facts.keys() & {"minutes", "rounds"})
    if _goes_round(draft) and not easy:
        return Format.AMRAP
    return Format.QUALITY if easy or _is_by_the_clock(draft) else None


def _goes_round(draft: Draft) -> bool:
    """`15 min: 5 pull-ups, 10 push-ups`: several counted lines under a time go round until it is over."""
    counted = all(
        piece.amount and not piece.sets and piece.unit is not AmountUnit.SECONDS for piece in draft.pieces
    )
    return "minutes" in draft.facts and "rounds" not in draft.facts and len(draft.pieces) > 1 and counted


def _is_by_the_clock(draft: Draft) -> bool:
    """`30 min run easy`, `10 min walk, 5 min jog`: done for as long as it says, with nothing to score."""
    by_time = all(placed.piece.unit is AmountUnit.SECONDS and placed.piece.amount for placed in draft.placed)
    return by_time and not draft.broken and not draft.facts.keys() & {"rounds", "scheme", "every_s"}
