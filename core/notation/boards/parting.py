"""Whether a part is over before a row that doesn't say so: sets after sets, as much as goes after what is counted."""

import re
from collections.abc import Callable
from dataclasses import replace

from core.measures import AmountUnit
from core.notation.boards.clauses import Clause
from core.notation.boards.drafts import Draft
from core.notation.boards.formats import UNSCORED
from core.notation.boards.kinds import is_calming, is_taken_easy
from core.notation.boards.reading import Reading
from core.notation.boards.unread import Stretch
from core.notation.labels.facts import may_head
from core.notation.lines.pieces import FAR, Piece
from core.notation.phrases.efforts import EASY_ANYWAY
from core.notation.text import Row
from core.sessions.values import BlockKind, Format

_AROUND = " *_#=~:.-"
_NAME = re.compile(r"[^\W\d_][^\d.!?,;]*")
_MOST_WORDS_OF_A_HEADING = 5
_OFTEN = frozenset(("rounds", "scheme"))
_OF_SCORE = frozenset(("told", "counted_in", "counts"))
_DOSES = {"format", "rounds", "scheme", "every_s"}
# Sets of so few; with a rope they are called otherwise.
_FEW = {"single": 1.0, "double": 2.0}
_FEW_SAID = re.compile(rf"\b({'|'.join(_FEW)})s?\b(?![\s\-]?under)")
# So long is no warm-up for a stretch (an estimate).
_LONG_S = 1200
_SLOWLY = re.compile(r"\W*(?:jog|walk)\b")
_TOLD_AT_EASE = {AmountUnit.SECONDS, AmountUnit.METRES}
_SCORED = {Format.AMRAP, Format.FOR_TIME, Format.MAX_REPS, Format.MAX_LOAD}
# A part of one of these is over before the next sets.
_IN_SETS = {
    None, Format.SETS, Format.MAX_LOAD, Format.MAX_REPS, Format.HOLD, Format.TIME_TRIAL, Format.QUALITY,
}  # fmt: skip


# What is gone straight into is done in the same set.
_BETWEEN_ROUNDS = re.compile(r"\b(?:between|after|each|every)\b.*\b(?:rounds?|rds?|sets?|laps?)\b")
_LETTERED = re.compile(r"\s*([A-H])[.):]\s")
_RESTS_LAST = re.compile(r"\brest\W*$")
_TIMES = re.compile(r"\btimes\b(?!.*:)")
_INTO = re.compile(
    r"^[\W_]*(?:and )?(?:straight|directly|into|followed by)\b|\b(?:each|every) (?:set|round)\b"
)


def is_over(draft: Draft, reading: Reading) -> bool:
    """Whether what a row tells is done after the part before it, not in turn with it."""
    told = [piece for piece in reading.pieces if piece.meaning or (piece.unread and piece.says_anything)]
    if not draft.lines:
        return _is_unknown_in_sets(draft, told) or _goes_easy_behind(draft, told)
    same_letter = draft.in_turn and reading.letter == draft.letter
    if not told or same_letter:
        return False
    if draft.kind in UNSCORED:
        return draft.kind is not BlockKind.SKILL and _is_warm_now(draft, reading, told)
    next_pair = draft.letter and reading.letter
    apart = reading.begins and reading.where == "lines"
    next_sets = _is_on_a_clock(draft) and all(piece.sets for piece in told)
    if _has_another_letter(draft, reading) or (
        apart and (next_pair or next_sets or _calms_down(draft, told) or _comes_then(draft, reading))
    ):
        return True
    if reading.then and _calms_down(draft, told):
        return True
    same_row = reading.row.number == draft.lines[-1].row.number
    goes_on = reading.then and (same_row or _INTO.search(reading.row.text.lower()) is not None)
    return any(rule(draft, told, goes_on) for rule in _RULES)


def _has_another_letter(draft: Draft, reading: Reading) -> bool:
    """`B1 push-up 4 x 12` below a part that begins with `A)`."""
    own = _LETTERED.match(draft.row.text)
    return own is not None and reading.letter is not None and own[1].lower() != reading.letter


def _is_on_a_clock(draft: Draft) -> bool:
    """Whether it is told when each turn begins, and how many there are."""
    return "every_s" in draft.facts and bool(draft.facts.keys() & {"rounds", "minutes"})


def sets_end_it(draft: Draft, reading: Reading, clause: Clause, read: Callable[[Row], Reading]) -> bool:
    """Sets of their own under what was told how often it is done: `21-15-9: ...`, `C) 3 x 12 dead bugs`.

    Not where the rounds go on below them: `5 rounds: 10 push-ups`, `2 x 20 m carry`, `10 squats`.
    """
    own = _are_in_sets(reading) and draft.lines and not any(piece.sets for piece in draft.pieces)
    often = draft.facts.keys() & _OFTEN or _is_on_a_clock(draft)
    if not own or not (often or draft.facts.get("format") is Format.AMRAP) or draft.kind in UNSCORED:
        return False
    below = [one for row in clause.behind if (one := read(row)).has_work]
    return reading.then or bool(reading.number) or all(map(_are_in_sets, below))


def _are_in_sets(reading: Reading) -> bool:
    told = [piece for piece in reading.pieces if piece.meaning or (piece.unread and piece.says_anything)]
    return bool(told) and all(piece.sets for piece in told)


def _is_unknown_in_sets(draft: Draft, told: list[Piece]) -> bool:
    """Whether sets follow a part of which nothing could be read but its rest: `HBDL 4x6 r2`, `sled push 6x20 m r60`."""
    alone = draft.broken and draft.facts.keys() == {"rest_s"}
    return alone and bool(told) and all(piece.sets for piece in told)


def _goes_easy_behind(draft: Draft, told: list[Piece]) -> bool:
    """`6 x 1 min fast, 1 min slow`, `10 min easy`: work and rest say nothing of so long at one's ease."""
    timed = {"work_s", "rounds"} <= draft.facts.keys()
    easy = (is_taken_easy(one) or _SLOWLY.match(one.text.lower()) for one in told)
    return timed and bool(told) and all(easy) and all(one.unit in _TOLD_AT_EASE for one in told)


def _is_warm_now(draft: Draft, reading: Reading, told: list[Piece]) -> bool:
    """Whatever stands below `Warm-up: 10 min jog` and an empty row, and sets behind what is done once."""
    if reading.begins and reading.where == "lines" and is_headed_in_front(draft):
        return True
    if not all(piece.sets for piece in told):
        return False
    apart = reading.begins or (reading.number is not None and draft.listed is None)
    return is_headed_in_front(draft) or (apart and not any(piece.sets for piece in draft.pieces))


def is_headed_in_front(draft: Draft) -> bool:
    """`wu 10 min jog`: the heading is of what stands behind it in its row."""
    return all(placed.row.number == draft.row.number for placed in draft.lines)


def counts_on(draft: Draft, reading: Reading) -> bool:
    """Whether the next of a list of parts begins: `A. 3 rounds: ...`, `B. 5 min ride`; not one thing of a circuit."""
    follows = draft.listed is not None and reading.number == draft.listed + 1
    if not (follows and draft.lines and reading.has_work) or draft.shared.get("format") is Format.INTERVALS:
        return False
    return draft.is_next or len(draft.lines) > 1 or bool((draft.facts.keys() - draft.shared.keys()) & _DOSES)


def begin_list(draft: Draft, reading: Reading) -> None:
    """The first of a list of parts that has several things of its own: what stands above is shared by all."""
    if draft.lines or reading.number is None or not reading.has_work:
        return
    draft.listed = reading.number
    draft.shared = {name: told for name, told in draft.facts.items() if name != "again"}
    if len(reading.pieces) > 1:
        draft.facts.pop("again", None)


def leave_sets(reading: Reading, draft: Draft) -> None:
    """`Finish with a 2 min plank` behind sets of their own, or behind a clock that is over, is a part of its own."""
    own = all(piece.sets for piece in draft.pieces) and not draft.facts.keys() & _DOSES
    own |= reading.begins and draft.facts.get("format") is Format.SETS
    over = own or (draft.facts.get("format") is Format.AMRAP and "cash" not in reading.row.text.lower())
    if reading.where == "cash_out" and draft.lines and over and reading.has_work:
        reading.where, reading.parts = "lines", True


def keep_between_rounds(draft: Draft, reading: Reading) -> None:
    """`1 min rest between rounds` below lines that each have a rest of their own is said beside."""
    told = reading.facts.get("rest_s")
    each_rests = draft.pauses == len(draft.lines) > 0 and draft.facts.get("rest_s") not in {None, told}
    if told and each_rests and not reading.has_work and _BETWEEN_ROUNDS.search(reading.row.text.lower()):
        draft.notes.append(reading.row.text.strip())
        reading.facts = {name: value for name, value in reading.facts.items() if name != "rest_s"}


def rests_behind_all(draft: Draft, reading: Reading) -> bool:
    """Whether the rest that a row tells comes when all lines are done: below them, last of them, or between rounds."""
    if "rest_s" not in reading.facts:
        return False
    said = reading.row.text.lower()
    last = _RESTS_LAST.search(said) is not None
    return (len(draft.lines) > 1 and (last or not reading.has_work)) or _BETWEEN_ROUNDS.search(
        said
    ) is not None


def keep_on_clock(draft: Draft, reading: Reading) -> None:
    """`For time: 50 skips`, `21-15-9: ...` in one paragraph is one piece of work: what stands before is its buy-in."""
    told = reading.facts.keys()
    once = _is_for_time_once(draft) or ("scheme" in told and _is_gone_once(draft, reading))
    apart = reading.begins or reading.kind or reading.parts or reading.letter or reading.where != "lines"
    often = told & _OFTEN and told <= {*_OFTEN, "format", "cap_s"}
    if once and draft.lines and often and not (apart or draft.buy_in):
        draft.buy_in, draft.lines = draft.lines, []


def _is_for_time_once(draft: Draft) -> bool:
    return draft.facts.get("format") is Format.FOR_TIME and not draft.facts.keys() & {*_OFTEN, "rest_s"}


def _is_gone_once(draft: Draft, reading: Reading) -> bool:
    """Whether some way is gone in front of what goes down, and again behind it: `1k run`, `21-15-9 ...`, `1k run`."""
    first, last = (draft.only, reading.pieces[-1] if reading.pieces else None)
    if first is None or draft.facts or draft.kind in UNSCORED or first.sets or not first.amount:
        return False
    return first.unit in FAR and (last is None or last.unit in FAR or draft.row.number == reading.row.number)


def names_a_part(reading: Reading, clause: Clause) -> bool:
    """Whether a row stands above others like a heading that nobody knows: `BALANCE`, `Bit of fun`. It stays unread."""
    words = reading.row.text.split("(")[0].strip(_AROUND)
    short = _NAME.fullmatch(words) is not None and len(words.split()) <= _MOST_WORDS_OF_A_HEADING
    said = (
        reading.kind
        or reading.parts
        or reading.facts.keys() - {"effort"}
        or reading.then
        or any(piece.meaning for piece in reading.pieces)
        or any(stretch.guess for stretch in reading.unread)
    )
    nothing_said = reading.where == "lines" and not said
    apart = clause.is_alone and (clause.is_first or words.isupper())
    if not (short and nothing_said and apart) or not may_head(words.lower()):
        return False
    start = reading.row.text.find(words)
    reading.pieces, reading.unread = [], [Stretch(start, len(reading.row.text), looks_like="note")]
    return True


def tells_how_often(draft: Draft, reading: Reading) -> bool:
    """Whether a row says how often what stands above it is done in turn: `B1) ..., B2) ..., 3 sets, rest 1 min`."""
    open_still = (
        draft.in_turn and not draft.facts.keys() & _DOSES and not any(one.sets for one in draft.pieces)
    )
    told = reading.facts.keys() & _DOSES
    sets = reading.facts.get("format") in {None, Format.SETS}
    return open_still and sets and "rounds" in told and not reading.has_work


def take_times(draft: Draft, reading: Reading) -> None:
    """`Punches 30 s, rest 30 s. Five times.` says how often the only thing before it in its row is done."""
    often = reading.facts.get("rounds")
    last = draft.lines[-1] if draft.only else None
    alone = reading.facts.keys() == {"rounds"} and not reading.pieces
    if last is None or not (often and alone) or not _TIMES.search(reading.row.text.lower()):
        return
    same = last.row.number == reading.row.number and not draft.facts.keys() & _DOSES
    if same and last.piece.amount and not last.piece.sets:
        draft.lines[-1] = last._replace(piece=replace(last.piece, sets=often))
        reading.facts = {}


def leave_score(reading: Reading, draft: Draft) -> None:
    """`Post your time` below the cool-down is of what was done before it: it stays words."""
    told = reading.facts.keys() & _OF_SCORE
    if told and draft.kind in EASY_ANYWAY and draft.lines and not reading.has_work:
        reading.facts = {name: value for name, value in reading.facts.items() if name not in told}
        reading.unread.append(Stretch(0, len(reading.row.text.rstrip()), looks_like="note"))


def knows_how(draft: Draft | None) -> bool:
    """Whether it was said how the part is done that has lines already."""
    if draft is None or not draft.lines:
        return False
    lifted = all(piece.sets or piece.load_rule for piece in draft.pieces)
    return "format" in draft.facts or draft.kind in UNSCORED or lifted


def take_from_row(draft: Draft, reading: Reading) -> None:
    """Takes what a row says of the line before it, or of a part before this one."""
    take_back_off(reading, draft)
    take_times(draft, reading)
    leave_score(reading, draft)


def keep_with_part(draft: Draft, reading: Reading) -> None:
    """Leaves what a row says between the lines of the part that is open, or of its clock, with that part."""
    leave_sets(reading, draft)
    keep_between_rounds(draft, reading)
    keep_on_clock(draft, reading)


def take_back_off(reading: Reading, draft: Draft) -> None:
    """`Then 3 x 5 at 90 %`, `5 singles`, `1 set of max at 75 %` behind one thing that is lifted are of the same."""
    last = draft.pieces[-1] if draft.lines else None
    alone = len({piece.meaning for piece in draft.pieces}) == 1
    if last is None or last.meaning is None or not alone or reading.facts.get("format") in _SCORED:
        return
    if not _is_lifted(last, draft):
        return
    for piece in reading.pieces:
        few = _FEW_SAID.search(piece.text.lower()) if piece.meaning else None
        if few and piece.amount and not piece.sets:
            piece.sets, piece.amount, piece.meaning = int(piece.amount), _FEW[few[1]], None
        dosed = (piece.sets or reading.then) and (piece.amount or piece.most)
        far = piece.unit in FAR and last.meaning.unit not in FAR
        if not (piece.meaning or piece.unread or far) and dosed:
            piece.meaning, piece.implement = last.meaning, last.implement


def _is_lifted(piece: Piece, draft: Draft) -> bool:
    said = draft.facts.get("format")
    return said is Format.MAX_LOAD or (said in {None, Format.SETS} and bool(piece.sets or piece.load_rule))


def _sets_begin(draft: Draft, told: list[Piece], _: bool) -> bool:
    """`3 x 8 ...` under sets, under what is done once, or under a trial of one row: `5 km run for time`."""
    return (_may_be_over(draft) or _is_a_trial(draft)) and all(piece.sets for piece in told)


def _is_a_trial(draft: Draft) -> bool:
    alone = draft.only is not None and draft.only.unit in FAR and is_headed_in_front(draft)
    return (
        alone and draft.facts.keys() <= {"format", "cap_s"} and draft.facts.get("format") is Format.FOR_TIME
    )


def _heaviest_is_found(draft: Draft, _told: list[Piece], _: bool) -> bool:
    return draft.facts.get("format") is Format.MAX_LOAD


def _most_begins(draft: Draft, told: list[Piece], _: bool) -> bool:
    """As much as goes after what is counted, and the other way round."""
    alone = draft.only and not draft.facts.keys() & {"rounds", "scheme"}
    in_its_time = draft.facts.get("format") is Format.MAX_REPS and "minutes" in draft.facts
    if alone and (draft.facts.get("format") is Format.FOR_TIME or in_its_time):
        return _are_most(told)
    return not draft.facts.keys() & _DOSES and _are_most(told) is not _are_most(draft.pieces)


def _sets_are_over(draft: Draft, told: list[Piece], then: bool) -> bool:
    """What is done once behind sets of their own; `then` goes on with it."""
    own = all(piece.sets for piece in draft.pieces) and not draft.facts.keys() & _DOSES
    return own and not then and all(piece.amount and not piece.sets for piece in told)


def _comes_then(draft: Draft, reading: Reading) -> bool:
    """`then walk 20 min` behind an empty row and what was told how to be done, is done once."""
    told = draft.facts.keys() & (_DOSES | {"minutes", "work_s", "cap_s"})
    return reading.then and bool(told)


def _calms_down(draft: Draft, told: list[Piece]) -> bool:
    """Stretches and quiet breathing behind an empty row and work that is scored, told how often, or goes long."""
    before = [piece.meaning for piece in draft.pieces if piece.meaning]
    calming = all(piece.meaning and is_calming(piece.meaning.movement) for piece in told)
    long = all(one.unit is AmountUnit.SECONDS and (one.amount or 0) >= _LONG_S for one in draft.pieces)
    told_how = long or draft.facts.get("format") in _SCORED or draft.facts.keys() & _OFTEN
    return calming and bool(told_how) and not any(is_calming(one.movement) for one in before)


_RULES: tuple[Callable[[Draft, list[Piece], bool], bool], ...] = (
    _sets_begin,
    _heaviest_is_found,
    _most_begins,
    _sets_are_over,
)


def _may_be_over(draft: Draft) -> bool:
    said = draft.facts.get("format")
    if said is Format.INTERVALS:
        return all(piece.sets for piece in draft.pieces)
    return said in _IN_SETS and not (said in {None, Format.QUALITY} and "rounds" in draft.facts)


def _are_most(pieces: list[Piece]) -> bool:
    """Whether as much as goes is done of each."""
    return all(piece.most for piece in pieces)
