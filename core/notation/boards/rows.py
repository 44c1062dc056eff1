"""What a row's facts say of its pieces, and its pieces of the block: `EMOM, 16 minutes`, `squat 1RM`."""

import re

from core.measures import AmountUnit, MassUnit
from core.notation.boards.drafts import Draft
from core.notation.boards.kinds import is_taken_easy
from core.notation.boards.reading import Reading
from core.notation.boards.unread import Stretch
from core.notation.lines.bare_numbers import settle_squat
from core.notation.lines.pieces import Piece
from core.notation.names.catalogued import Lexicon
from core.notation.phrases.aims import Facts
from core.notation.phrases.efforts import effort_of, take_effort
from core.notation.quantities import DURATION, MINUTE_S
from core.sessions.values import Format

_UNIT = re.compile(
    r"(?:[(\[]|\b(?:in|are|all|weights?|loads?|numbers?)\s)\s?(?P<unit>pounds|lbs?|kilos?|kgs?|kilograms)\b"
)
_NAME_AND_TIME = re.compile(rf"[^\d,:;.(]+,\s?(?:{DURATION})(?P<heads>\s?:(?=\s|$))?", re.IGNORECASE)
_COUNTED = frozenset({"minutes", "rounds", "cap_s", "work_s", "every_s"})
COLON = re.compile(r"\s?:(?=\s|$)")
_OF_A_SIDE = re.compile(
    r"\b(?:sides?|legs?|arms?|foot|feet|hands?|ways?|directions?|left|right|e/s|p/s)\b|/\s?s\b|[0-9]\s?/\s?[0-9]"
)
_SIGN = re.compile(r"\w")
# Letters and figures of what stands in front of an item: `A1.`, `12)`.
_LONGEST_MARK = 2
_SHORTEST_REST_S, _LONGEST_REST_S = 20, 300
_FEWEST_WITH_A_TOTAL = 3
# What such a format lasts (estimates).
_SHORTEST_MIN, _LONGEST_MIN = 3, 60
_EASY = frozenset({"brisk-walk"})
_SLOW_WAYS = frozenset({"jog", "jogging", "walk", "walking", "stroll"})
_CLOCKED = frozenset({Format.AMRAP, Format.INTERVALS, Format.MAX_REPS, Format.MAX_LOAD})


def unit_of_all(text: str) -> MassUnit | None:
    """The unit that a row says of every bare load under it: `(pounds)`, `weights in lb`."""
    match = _UNIT.search(text)
    return None if match is None else MassUnit.LB if match["unit"][0] in "lp" else MassUnit.KG


def settle_row(reading: Reading, lexicon: Lexicon, draft: Draft | None) -> None:
    """A time beside a clock is how long it runs, one behind sets their rest; the heaviest squat has a bar."""
    if draft and draft.facts.get("format") is Format.MAX_LOAD and "minutes" not in draft.facts:
        _take_time_to_find(reading)
    if reading.facts.keys() == {"minutes"} and not reading.pieces and draft and _is_in_sets(draft):
        reading.facts = {"rest_s": reading.facts["minutes"] * MINUTE_S}
    _leave_with_unread(reading)
    _take_rest(reading, draft)
    _leave_each(reading, lexicon, draft)
    _take_laps(reading)
    _leave_total(reading)
    _take_walk(reading)
    _take_easy(reading)
    _take_minutes(reading)
    _take_minutes_of_name(reading)
    heaviest = reading.facts.get("format") is Format.MAX_LOAD
    opens = not any(piece.meaning for piece in reading.pieces) and (draft is None or not draft.lines)
    for piece in list(reading.pieces):
        if heaviest:
            settle_squat(piece, lexicon)
        if _is_time_alone(piece) and (told := _told_by_time(reading, piece, opens=opens)):
            reading.facts |= take_effort(reading.facts, effort_of(piece) | told)
            reading.pieces.remove(piece)
            reading.unread = [one for one in reading.unread if one.start != piece.start]


def _take_time_to_find(reading: Reading) -> None:
    """`Find a heavy triple: deadlift. 20 minutes, about 6 sets`: how long there is to find it."""
    for piece in list(reading.pieces):
        if _is_time_alone(piece) and (piece.amount or 0) >= _SHORTEST_MIN * MINUTE_S:
            reading.facts.setdefault("minutes", (piece.amount or 0) / MINUTE_S)
            reading.pieces.remove(piece)


def _leave_with_unread(reading: Reading) -> None:
    """`6 x 400 m gizmo, 90 s rest`: what is told of work that nobody knows is of that alone, and is shown with it."""
    unknown = [piece for piece in reading.pieces if piece.unread and (piece.sets or piece.amount)]
    if not unknown or any(piece.meaning for piece in reading.pieces):
        return
    if len(_SIGN.findall(reading.row.text[: unknown[0].start])) > _LONGEST_MARK:
        return
    own = {"rest_s", "every_s"} if any(piece.sets for piece in unknown) else {"rest_s"}
    if own & reading.facts.keys():
        own |= {"format"} if "every_s" in own & reading.facts.keys() else set()
        reading.facts = {name: told for name, told in reading.facts.items() if name not in own}
        reading.notes.clear()
        reading.unread = [Stretch(0, len(reading.row.text.rstrip()), looks_like="movement")]


def _take_rest(reading: Reading, draft: Draft | None) -> None:
    """`90 sec` in a row of its own below sets is their rest."""
    alone = len(reading.pieces) == 1 and not (reading.facts or reading.kind or reading.unread)
    if not (alone and draft and draft.lines and _is_in_sets(draft) and draft.pieces[-1].says_anything):
        return
    (piece,) = reading.pieces
    if _is_time_alone(piece) and not piece.notes and (piece.amount or 0) <= _LONGEST_REST_S:
        reading.facts["rest_s"] = piece.amount or 0
        reading.pieces.clear()


def _leave_each(reading: Reading, lexicon: Lexicon, draft: Draft | None) -> None:
    """`in pairs: 10 x 300 m run each`, `12 sit-ups each`: each of the people, where nothing has sides."""
    team = "team" in reading.facts or (draft is not None and "team" in draft.facts)
    for piece in reading.pieces:
        none = piece.meaning is not None and not lexicon.has_sides(piece.meaning)
        if piece.per_side and (team or none) and not _OF_A_SIDE.search(piece.text.lower()):
            piece.per_side, piece.notes = False, (*piece.notes, "each")


def _take_laps(reading: Reading) -> None:
    """`40 s on / 20 s off, 3 laps`: of a clock they are rounds."""
    for piece in list(reading.pieces):
        laps = piece.meaning is not None and piece.meaning.spelling == "lap" and piece.unit is None
        if laps and piece.amount and "work_s" in reading.facts and "rounds" not in reading.facts:
            reading.facts["rounds"] = int(piece.amount)
            reading.pieces.remove(piece)


def _leave_total(reading: Reading) -> None:
    """`40 min run: 20 min easy, 10 min steady, 10 min tempo`: what the stretches behind it add up to is no line."""
    if len(reading.pieces) < _FEWEST_WITH_A_TOTAL:
        return
    first, *others = reading.pieces
    timed = (
        first.unit is AmountUnit.SECONDS and not first.sets and all(one.unit is first.unit for one in others)
    )
    heads = ":" in reading.row.text[first.end : others[0].start]
    if timed and heads and first.amount == sum(one.amount or 0 for one in others):
        for one in others:
            one.meaning = one.meaning or first.meaning
        reading.pieces.remove(first)


def _take_walk(reading: Reading) -> None:
    """`10 rounds of 30 s run / 30 s walk`: what is easy is the rest of what isn't."""
    if len(reading.pieces) != 2 or "rounds" not in reading.facts or "format" in reading.facts:  # noqa: PLR2004
        return
    work, rest = reading.pieces
    timed = work.unit is rest.unit is AmountUnit.SECONDS
    if timed and rest.meaning and (rest.meaning.variant in _EASY or "easy" in rest.notes):
        work_s, rest_s = work.amount or 0, rest.amount or 0
        reading.facts |= {
            "format": Format.INTERVALS, "work_s": work_s, "rest_s": rest_s, "every_s": work_s + rest_s
        }  # fmt: skip
        reading.notes.append(rest.text)
        reading.pieces.remove(rest)


def _take_easy(reading: Reading) -> None:
    """`6 x 4 min row, 2 min easy`: what is easy behind sets for a time or a distance is their rest."""
    if len(reading.pieces) != 2 or "rest_s" in reading.facts:  # noqa: PLR2004
        return
    work, rest = reading.pieces
    far = work.sets and work.meaning and work.unit in {AmountUnit.SECONDS, AmountUnit.METRES}
    told = rest.amount and not (rest.sets or rest.unread)
    if far and told and rest.unit in {AmountUnit.SECONDS, AmountUnit.METRES} and _is_gone_slower(rest, work):
        if rest.unit is AmountUnit.SECONDS:
            reading.facts["rest_s"] = rest.amount
        reading.notes.append(rest.text)
        reading.pieces.remove(rest)


def _is_gone_slower(rest: Piece, work: Piece) -> bool:
    """`5 x 1000 m, 90 s jog`, `2 min easy`: the same way, and told to be at one's ease."""
    assert work.meaning is not None
    same = rest.meaning is None or rest.meaning.movement == work.meaning.movement
    slow = (
        rest.meaning is not None
        and rest.meaning.spelling in _SLOW_WAYS
        and work.meaning.spelling not in _SLOW_WAYS
    )
    return same and (slow or is_taken_easy(rest))


def _take_minutes(reading: Reading) -> None:
    """`EMOM 12 today`: right behind a format that lacks its minutes, a number with no work of its own is these."""
    first = reading.pieces[0] if reading.pieces else None
    if first is None or first.meaning or first.unit or first.sets or not first.amount:
        return
    behind_word = reading.row.text[: first.start].rstrip()[-1:].isalpha()
    if behind_word and _takes_minutes(reading) and _SHORTEST_MIN <= first.amount <= _LONGEST_MIN:
        reading.facts["minutes"] = first.amount
        reading.pieces.remove(first)
        reading.unread = [one._replace(looks_like="note", guess=None) for one in reading.unread]


def _take_minutes_of_name(reading: Reading) -> None:
    """`Teaser, 5 min: 10 inchworms, ...`: behind the name of a part that nobody knows, and in front of its work."""
    first = reading.pieces[0] if reading.pieces else None
    if first is None or first.meaning or not first.unread or first.unit is not AmountUnit.SECONDS:
        return
    match = _NAME_AND_TIME.match(reading.row.text, first.start)
    works = any(piece.meaning and piece.amount for piece in reading.pieces[1:])
    if match is None or not works or reading.facts.keys() & _COUNTED or not (first.amount or 0) >= MINUTE_S:
        return
    if match["heads"] or _takes_minutes(reading):
        reading.facts["minutes"] = (first.amount or 0) / MINUTE_S
        reading.pieces.remove(first)


def _told_by_time(reading: Reading, piece: Piece, *, opens: bool) -> Facts:
    """Behind sets it is their rest; beside a clock, in front of a colon or where a part begins how long that runs."""
    amount = piece.amount or 0
    behind_sets = any(one.sets and one.meaning and one.start < piece.start for one in reading.pieces)
    if amount < MINUTE_S:
        return {"rest_s": amount} if behind_sets and "rest_s" not in reading.facts else {}
    in_front = piece is reading.pieces[0] and COLON.match(reading.row.text, piece.end)
    others = [one for one in reading.pieces if one is not piece]
    alone = not any(one.amount or one.sets for one in others) and bool(others or reading.facts)
    headed = reading.kind is not None and not any(one.amount or one.sets or one.meaning for one in others)
    of_the_part = headed or (opens and alone)
    if (in_front or of_the_part) and not reading.facts.keys() & _COUNTED:
        return {"minutes": amount / MINUTE_S}
    if behind_sets and "rest_s" not in reading.facts:
        return {"rest_s": amount}
    return {"minutes": amount / MINUTE_S} if _takes_minutes(reading) else {}


def frames(piece: Piece, reading: Reading, draft: Draft | None) -> bool:
    """`20 min easy, no clock`: a time that says how all of it is done is how long the part below it goes."""
    opens = draft is None or not draft.placed
    return opens and "format" in reading.facts and reading.pieces == [piece] and _is_time_alone(piece)


def _is_in_sets(draft: Draft) -> bool:
    """Whether all of it is done in sets whose rest nobody told."""
    sets = "rounds" in draft.facts and draft.facts.get("format") is Format.SETS
    own = bool(draft.lines) and all(placed.piece.sets for placed in draft.lines)
    return (sets or own) and "rest_s" not in draft.facts


def _is_time_alone(piece: Piece) -> bool:
    """Whether it tells a time and nothing else; `90"` too, which might be how high."""
    said = piece.unread or piece.meaning or piece.sets or piece.loads_kg or piece.most or piece.amount_to
    return piece.unit is AmountUnit.SECONDS and not said and (piece.amount or 0) >= _SHORTEST_REST_S


def _takes_minutes(reading: Reading) -> bool:
    counted = reading.facts.keys() & {"minutes", "rounds", "cap_s", "work_s"}
    laddered = bool(reading.facts.keys() & {"scheme", "climbs"}) and "format" not in reading.facts
    return not counted and (laddered or reading.facts.get("format") in _CLOCKED)
