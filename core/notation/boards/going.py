"""Minutes that name nothing, among work that all goes the same way: `10 min easy` on a board of runs is run."""

import re
from collections.abc import Iterable

from core.measures import AmountUnit
from core.notation.boards.drafts import Draft, Placed
from core.notation.boards.kinds import is_taken_easy
from core.notation.lines.pieces import Piece
from core.notation.names.catalogued import Lexicon, Meaning
from core.notation.phrases.efforts import EASY_ANYWAY, is_easy
from core.notation.phrases.paces import WHILE_RESTING, is_on_water, is_paced
from core.notation.quantities import MINUTE_S
from core.notation.text import Row
from core.sessions.values import EASY, BlockKind, Effort

_WORD = re.compile(r"[^\W\d_]{3,}")
_FAR = re.compile(
    r"(?<![\w.])(?:[1-9][0-9]{2,3}\s?m(?:et(?:re|er)s)??|[1-9][0-9]?(?:\.[0-9])?\s?k(?:m|ilomet(?:re|er)s))\b"
)
_HARD = re.compile(r"\b(?:hard|fast|quick|(?:up)?hill|up|brisk|strong|all out)\b")

# Only who runs speaks so (common practice, no source).
_ON_FOOT = re.compile(
    r"\b(?:fartlek|tempo(?=\s?(?:\(|pace|effort|$))|threshold|uphill|hills?"
    r"|(?:easy|long|recovery) run)\b",
    re.MULTILINE,
)
# Who jogs at rest runs.
_JOGGED = re.compile(r"\bjog(?:ging)?\b")
_FAST = frozenset(("fast", "hill"))
_ON_FEET = re.compile(r"\b(?:jog|walk)(?:ging|ing)?\b")
# `Row 4 x 10 @ 14 kg`: what has a load takes nobody anywhere.
_LIFTED = re.compile(r"^.*(?:\b[0-9]+\s?(?:kgs?|lbs?)\b|[0-9]\s?%).*$", re.MULTILINE)
# `6 x 400 m`: intervals of nothing that is named are run, whatever else a board holds (common practice, no source).
_BARE_FAR = re.compile(r"(?<![\w.])[1-9][0-9]?\s?x\s?[1-9][0-9]{2,3}\s?m?\s*(?:$|[,;@(])", re.MULTILINE)
_WALKED = "brisk-walk"
_WORKED = re.compile(r"^(?!.*\bwalk).*\b(?:hard|fast|sprints?|all out)\b", re.MULTILINE)
_SHORTEST_RUN_M = 100

_AT_EASE = Effort(high=EASY)
# Headings that say themselves what is done in their minutes, by its name.
_ON_THE_SPOT = (
    ("stretch", re.compile(r"\b(?:stretch|loosen)")),
    ("warm-up flow", re.compile(r"\bmobili(?:ty|[sz]e)")),
)
_BETWEEN = re.compile(r"\b(?:between|rest|recover)")


def way_of_all(rows: Iterable[Row], lexicon: Lexicon) -> Meaning | None:
    """The one way of getting on that a board names, or running where only distances are told; else None."""
    told = "\n".join(row.text.lower() for row in rows)
    text = _LIFTED.sub(" ", WHILE_RESTING.sub(" ", told))
    found = [meaning for word in dict.fromkeys(_WORD.findall(text)) if (meaning := lexicon.exact(word))]
    ways = [one for one in found if one.unit is AmountUnit.METRES and not one.held]
    if not ways and is_on_water(text):
        return lexicon.exact("row")
    if not ways and _ON_FOOT.search(text):
        return lexicon.exact("run")
    if not ways:
        on_foot = _FAR.search(text) or _JOGGED.search(told)
        return lexicon.exact("run") if on_foot and not found else None
    if _are_run(ways, text):
        return lexicon.exact("run")
    if len({one.movement for one in ways}) > 1:
        return None
    same = len({one.variant for one in ways}) == 1
    return ways[0] if same else lexicon.exact(ways[0].movement)


def _are_run(ways: list[Meaning], text: str) -> bool:
    """Whether nameless work is run though more is named: beside a walk that is hardly the work, or by its distances."""
    movements = {one.movement for one in ways}
    walked = {one.variant for one in ways} == {_WALKED}
    far = (len(movements) > 1 or walked) and _BARE_FAR.search(text)
    return movements == {"run", "walk"} or bool(far or (walked and _WORKED.search(text)))


def is_far(piece: Piece) -> bool:
    """Whether metres of nothing are told, which are run where no other way is named (common practice, no source)."""
    said = piece.unread or piece.meaning or piece.loads_kg or piece.per_side
    return piece.unit is AmountUnit.METRES and not said and (piece.amount or 0) >= _SHORTEST_RUN_M


def way_for(piece: Piece, way: Meaning | None, lexicon: Lexicon) -> Meaning | None:
    """How something nameless is gone: run where no other way is told, and where only the rest is walked."""
    return lexicon.exact(way.movement if way else "run") if way is None or is_far(piece) else way


def take_metres(piece: Piece, beside: Iterable[str], way: Meaning | None) -> None:
    """`8 x 400 @ 5k pace`, `6x400 w 90s jog`: hundreds at a pace, with a jog `beside` them or among runs."""
    bare = piece.sets and piece.unit is None and not (piece.meaning or piece.unread)
    told = is_paced(" ".join(piece.notes).lower()) or any(map(_ON_FEET.search, beside))
    run = told or (way is not None and way.movement == "run")
    if bare and (piece.amount or 0) >= _SHORTEST_RUN_M and run:
        piece.unit = AmountUnit.METRES


def not_fast(piece: Piece, lexicon: Lexicon) -> None:
    """What is told to be easy is not done the fast way, whatever the day is called: `Tempo run: 10 min easy`."""
    if piece.meaning and piece.meaning.variant in _FAST and is_taken_easy(piece):
        piece.meaning = lexicon.exact(piece.meaning.movement) or piece.meaning


def go_in_turn(draft: Draft, way: Meaning | None) -> None:
    """`6 x 1 min fast, 1 min slow` among work that all goes the same way is done that way."""
    if way and {"work_s", "rounds"} <= draft.facts.keys() and not (draft.placed or draft.broken):
        draft.lines.append(Placed(Piece(0, draft.row.text.strip(" ,;."), meaning=way), draft.row))


def go_easy(draft: Draft, way: Meaning | None, lexicon: Lexicon) -> None:
    """`Cool down 10 min` among work that all goes the same way is done that way too; `stretch` is stretched."""
    told = (
        "minutes" in draft.facts
        and not draft.says_more_than_time
        and is_easy(draft.facts.get("effort", _AT_EASE))
    )
    said = draft.row.text.strip()
    named = (name for name, shape in _ON_THE_SPOT if shape.search(said.lower()))
    itself = next((lexicon.exact(name) for name in named), None)
    if itself and draft.headed and draft.is_empty and draft.kind is BlockKind.COOL_DOWN:
        draft.lines.append(Placed(Piece(0, said.strip(" .!:"), meaning=itself), draft.row))
    way = itself or way
    if way is None or not told or draft.placed or draft.broken or draft.kind not in EASY_ANYWAY:
        return
    minutes = draft.facts.pop("minutes")
    at_ease = lexicon.exact(way.movement) if way.variant in _FAST else way
    piece = Piece(0, said, amount=minutes * MINUTE_S, unit=AmountUnit.SECONDS, meaning=at_ease)
    draft.lines.append(Placed(piece, draft.row))


def goes_that_way(piece: Piece, way: Meaning | None) -> bool:
    """Whether something nameless goes the way of all: `10 min easy`, `8 x 20 s up hard`, `6 x 500 m`, `12' @ r18`."""
    said = " ".join(piece.notes).lower()
    if is_far(piece):
        return bool(piece.sets) or is_paced(said)
    timed = piece.unit is AmountUnit.SECONDS and bool(piece.amount)
    nameless = not (piece.meaning or piece.unread or piece.loads_kg or piece.per_side or piece.most)
    if not (way and timed and nameless) or _BETWEEN.search(said):
        return False
    easy = is_taken_easy(piece) and (piece.amount or 0) >= MINUTE_S
    return easy or is_paced(said) or _HARD.search(said) is not None
