"""One line of a block: amount, movement, load. Read piece by piece; what no piece explains is its name."""

import re
from collections.abc import Callable
from dataclasses import dataclass, replace
from decimal import Decimal
from typing import Literal

from core.measures import AmountUnit, MassUnit
from core.notation.names import Lexicon, Meaning
from core.notation.quantities import (
    DISTANCE_UNIT,
    DURATION,
    ENERGY_UNIT,
    MASS_UNIT,
    NUMBER,
    NUMBER_WORDS,
    kilograms,
    metres,
    seconds,
)
from core.notation.text import Strip
from core.sessions.values import Line, LoadRule

Side = Literal["left", "right", "alternating"]


@dataclass
class Piece:
    """What a stretch of text says of a line. Without a name it completes the line before it."""

    start: int
    text: str
    end: int = 0
    amount: float | None = None
    amount_to: float | None = None
    second_amount: float | None = None
    unit: AmountUnit | None = None
    per_side: bool = False
    side: Side | None = None
    station: int | None = None
    count: int | None = None
    loads_kg: tuple[Decimal, ...] = ()
    load_rule: LoadRule | None = None
    tempo: str | None = None
    notes: tuple[str, ...] = ()
    implement: str | None = None
    sets: int | None = None
    most: bool = False
    meaning: Meaning | None = None
    unread: str = ""

    @property
    def says_anything(self) -> bool:
        return any(
            (self.amount, self.per_side, self.side, self.loads_kg, self.load_rule, self.tempo, self.notes)
        ) or bool(self.sets or self.most or self.implement)


def _c(pattern: str) -> re.Pattern[str]:
    return re.compile(pattern.replace("<num>", NUMBER).replace("<mass>", MASS_UNIT))


_UNITS = rf"(?:reps?\b|repetitions?\b|times\b|{ENERGY_UNIT}\b|{DISTANCE_UNIT}\b)"
_TIME_UNITS = r"(?:s|secs?|seconds?|mins?|minutes?)\b"
_WORD = "|".join(word for word in NUMBER_WORDS if " " not in word)
_AT = r"(?:@|\bat\b|\bwith\b|\bw/|\busing\b)\s?(?:an?\s|the\s)?"
_TIMES = r"(?:(?<![0-9.])(?P<n{0}>[1-9](?=\s?[x*])|two(?=\s)|one(?=\s)|2(?=\s))\s?[x*]?\s?)?"

_STATION = _c(
    r"^\s*(?:(?:minutes?|min|station|st)\s?(?P<n>[1-9])|(?P<odd>odd|even)(?:\s?min(?:ute)?s?)?)\s?[:\-)=]"
)
_TEMPO = _c(
    r"(?:\btempo\s?:?\s?@?\s?(?P<t>[0-9]-?[0-9x](?:-?[0-9x]){1,2})|@\s?(?P<at>[0-9]-[0-9x]-[0-9x](?:-[0-9x])?|[0-9]{2}x[0-9x])"
    r"|(?P<u>[0-9]-[0-9x]-[0-9x](?:-[0-9x])?)(?=\s?tempo))(?![0-9])(?:\s?tempo\b)?"
)
_PERCENT = _c(
    r"(?:@\s?|\bat\s)?(?P<p>[0-9]{1,3}(?:\.[0-9])?)\s?%(?:\s?(?:of\s)?(?:your\s)?(?:1\s?-?rm\b|max\b|1 rep max\b|best\b))?"
)
_EFFORT = _c(
    r"(?:@\s?|\bat\s|\bto\s)?\b(?:rpe|effort)\s?:?\s?(?P<e>[0-9](?:\.5)?|10)(?:\s?/\s?10)?(?![0-9\-])"
)
_UNBROKEN = _c(
    r"(?:@\s?|\bat\s|\bwith\s|\bpick\s|\buse\s|\bchoose\s)?(?:\ban?\s(?:weight|load)\s(?:that\s)?)?"
    r"(?:(?:\byou\s?(?:could|can|would|'d|should be able to)|\bgood for)\s?(?:go|get|do|manage|hold|lift|be able to do)?\s?)?"
    r"(?:for\s)?(?P<lo>[0-9]{1,2})\s?(?:-|to)\s?(?P<hi>[0-9]{1,2})\s?(?:times\s|reps\s)?"
    r"(?:(?:of|with)\s)?(?:it\s)?(?:reps\s)?(?:(?:unbroken|without (?:a )?(?:break|stopping|rest|pause)|in one go)\b)"
    r"(?:\s(?:when\s)?fresh)?"
)
_HEAVY = _c(r"(?:@\s?|\bat\s)?(?:\ba\s)?\bheavy\b(?! bag)")
_PAIR = _c(
    rf"(?:{_AT}|@)?{_TIMES.format(1)}(?<![0-9./])(?P<a><num>)\s?(?P<ua><mass>)?\s?/\s?{_TIMES.format(2)}(?P<b><num>)(?![0-9.]|\s?/)\s?(?P<ub><mass>)?"
)
_LOAD = _c(rf"(?:{_AT})?{_TIMES.format(1)}(?<![0-9./])(?P<a><num>)\s?(?P<ua><mass>)(?!\s?/)")
_BARE_LOAD = _c(rf"@\s?{_TIMES.format(1)}(?P<a><num>)(?![0-9.x:/%\-])(?P<ua>)")
_PER_HAND = _c(r"[;\s]*(?:(?:each|per|a|in each|in one)\s?hand|each\b(?!\s(?:side|arm|leg)))")
_HEIGHT = _c(r"(?:@\s?)?<num>(?:\s?/\s?<num>)?\s?(?:cm|inch(?:es)?|in\b|\")(?!\s?[0-9])")
_PER_SIDE = _c(
    r"\s?/\s?(?:side|arm|leg|hand)\b|(?:\b(?:each|per|a|every)\s(?:side|arm|leg)|\be/s|\bl\s?[/+&]\s?r|\bps)\b|\beach way\b|\bboth sides\b"
)
_SIDE = _c(
    r"\b(?P<s>alternat(?:ing|e|ed)|alt)\b\.?|\b(?P<lr>left|right)\b(?:\s(?:side|arm|leg|hand))?(?:\sonly)?"
)
_SETS = _c(
    rf"(?:^|(?<=[:;,\s]))\s?(?P<n>[0-9]{{1,2}}|{_WORD})\s?(?:x|\*|sets?\s?(?:of|x|:)?)\s?(?=[0-9]|max|{_WORD})"
)
_MOST = _c(
    r"(?:^|(?<=[:;,\s]))\s?max(?:imum|imal)?\b(?:\s(?:reps?|effort|time|hold|distance|cals?)\b)?(?:\s(?:of|in|for)\b)?"
)
_PAIR_AMOUNT = _c(rf"^[\s;:]*(?P<a><num>)\s?/\s?(?P<b><num>)(?!\s?[/0-9.])\s?(?P<u>{_UNITS}|{_TIME_UNITS})?")
_RANGE_TIME = _c(rf"(?P<a><num>)\s?(?:-|to)\s?(?P<t>{DURATION})")
_TIME = _c(rf"(?<![0-9.\-])(?P<t>{DURATION})")
_AMOUNT = rf"(?P<a><num>|\b(?:{_WORD})\b)(?:\s?(?:-|to)\s?(?P<b><num>))?\s?(?:(?P<u>{_UNITS})|x(?![a-z0-9])|(?![0-9%/.x]))"
_AMOUNT_FIRST = _c(rf"^[\s;:]*(?:x\s?)?{_AMOUNT}(?:\sof\b)?")
_AMOUNT_LAST = _c(rf"(?:(?<=[a-z;)])\s?[\s:\-x=*]\s?|(?<=x)\s?)(?<![0-9.\-]){_AMOUNT}[\s;.]*$")
_AMOUNT_UNIT = _c(rf"(?<![0-9.\-/])(?P<a><num>)(?:\s?(?:-|to)\s?(?P<b><num>))?\s?(?P<u>{_UNITS})")


Reader = Callable[[Piece, Strip, MassUnit], None]


def read_piece(text: str, start: int, lexicon: Lexicon, unit: MassUnit) -> Piece:
    """Everything that `text` says of a line; `unread` keeps a name that isn't in the catalogue."""
    start += len(text) - len(text.lstrip(" .,:;*-"))
    piece = Piece(start, text.strip(" .,:;*-"), end=start + len(text.lstrip(" .,:;*-")))
    strip = Strip(text)
    for read in _READERS:
        read(piece, strip, unit)
    read_name(piece, strip.left, lexicon)
    return piece


def _read_station(piece: Piece, strip: Strip, _: MassUnit) -> None:
    if match := strip.take(_STATION):
        piece.station = int(match["n"]) if match["n"] else ("odd", "even").index(match["odd"]) + 1


def _read_rules(piece: Piece, strip: Strip, _: MassUnit) -> None:
    if match := strip.take(_TEMPO):
        piece.tempo = match["t"] or match["at"] or match["u"]
    if match := strip.take(_PERCENT):
        piece.load_rule = LoadRule(percent=float(match["p"]))
    elif match := strip.take(_EFFORT):
        piece.load_rule = LoadRule(effort=float(match["e"]))
    elif match := strip.take(_UNBROKEN):
        piece.load_rule = LoadRule(unbroken=(int(match["lo"]), int(match["hi"])))
    elif strip.take(_HEAVY):
        piece.load_rule = LoadRule(heavy=True)


def _read_pair(piece: Piece, strip: Strip, unit: MassUnit) -> None:
    pairs = _PAIR.finditer(strip.text)
    match = next((pair for pair in pairs if _is_load_pair(pair, strip.text)), None)
    if match is None:
        return
    strip.blank(*match.span())
    typed = match["ua"] or match["ub"]
    piece.count = _count(match["n1"] or match["n2"])
    piece.loads_kg = tuple(kilograms(match[end], match[f"u{end}"] or typed, unit) for end in "ab")


def _is_load_pair(match: re.Match[str], text: str) -> bool:
    """`15/12 cal row` and `10/8 push-ups` are amounts: a bare pair is a load only behind a name."""
    if match["ua"] or match["ub"] or match["n1"] or match[0].startswith(("@", "w")):
        return True
    follows = re.match(rf"\s?(?:{_UNITS}|{DURATION}|cm|in\b|\")", text[match.end("b") :])
    return follows is None and re.search("[a-z]{2}", text[: match.start()]) is not None


def _read_load(piece: Piece, strip: Strip, unit: MassUnit) -> None:
    if piece.loads_kg:
        return
    match = strip.take(_LOAD) or strip.take(_BARE_LOAD)
    if match is None:
        return
    piece.count = _count(match["n1"])
    piece.loads_kg = (kilograms(match["a"], match["ua"], unit),)
    if hands := _PER_HAND.match(strip.text, match.end()):
        strip.blank(*hands.span())
        piece.count = piece.count or 2


def _count(typed: str | None) -> int | None:
    return None if typed is None else NUMBER_WORDS[typed] if typed in NUMBER_WORDS else int(typed)


def _read_height(piece: Piece, strip: Strip, _: MassUnit) -> None:
    if match := strip.take(_HEIGHT):
        piece.notes += (match[0].lstrip("@ "),)


def _read_sides(piece: Piece, strip: Strip, _: MassUnit) -> None:
    piece.per_side = strip.take(_PER_SIDE) is not None
    if match := _SIDE.search(strip.text):
        # The word stays: `alternating lunges` may be a name of its own.
        piece.side = "alternating" if match["s"] else "left" if match["lr"] == "left" else "right"


def _read_sets(piece: Piece, strip: Strip, _: MassUnit) -> None:
    if match := strip.take(_SETS):
        piece.sets = NUMBER_WORDS[match["n"]] if match["n"] in NUMBER_WORDS else int(match["n"])


def _read_amount(piece: Piece, strip: Strip, _: MassUnit) -> None:
    if strip.take(_MOST):
        piece.most = True
        if match := strip.take(_TIME):
            piece.amount, piece.unit = seconds(match["t"]), AmountUnit.SECONDS
        return
    if match := strip.take(_PAIR_AMOUNT):
        piece.amount, piece.unit = _amount(match["a"], match["u"])
        piece.second_amount, _unit = _amount(match["b"], match["u"])
    elif match := strip.take(_RANGE_TIME):
        piece.amount_to, piece.unit = seconds(match["t"]), AmountUnit.SECONDS
        piece.amount = float(match["a"]) * (60 if "m" in match["t"] or "'" in match["t"] else 1)
    elif match := strip.take(_TIME):
        piece.amount, piece.unit = seconds(match["t"]), AmountUnit.SECONDS
    elif match := strip.take(_AMOUNT_FIRST) or strip.take(_AMOUNT_UNIT) or strip.take(_AMOUNT_LAST):
        piece.amount, piece.unit = _amount(match["a"], match["u"])
        piece.amount_to = _amount(match["b"], match["u"])[0] if match["b"] else None


def _amount(number: str, unit: str | None) -> tuple[float, AmountUnit | None]:
    value = float(NUMBER_WORDS.get(number, 0) or number)
    if not unit:
        return value, None
    if unit.startswith(("rep", "tim")):
        return value, AmountUnit.REPS
    if unit.startswith(("cal", "kcal")):
        return value, AmountUnit.KCAL
    if unit.startswith("s"):
        return value, AmountUnit.SECONDS
    if unit.startswith("min"):
        return value * 60, AmountUnit.SECONDS
    return metres(number, unit), AmountUnit.METRES


_READERS: tuple[Reader, ...] = (
    _read_station,
    _read_rules,
    _read_pair,
    _read_load,
    _read_height,
    _read_sides,
    _read_sets,
    _read_amount,
)

_MANNERS = _c(
    r"\b(?:easy|slow(?:ly)?|steady|strict|controlled|brisk|fast|light|moderate|unbroken|full range|chest to floor)\b"
)
_FILLERS = _c(
    r"^(?:(?:of|x|reps?|the|an?|and|then|with|at|for|on|in|each|do)\b\s?|[\W_]+)+|(?:\s?\b(?:of|x|reps?|and|then|with|at|for|on|in|each|do)\b|[\W_]+)+$"
)
HELD = _c(
    r"\b(?:with\s)?(?:an?\s|one\s|two\s|single\s|double\s|[12]\s)?(?P<i>dumbbells?|dbs?|kettlebells?|kettle bells?|kbs?|barbells?|bbs?|bands?|backpacks?|jugs?|plates?)\b"
)


def read_name(piece: Piece, words: str, lexicon: Lexicon) -> None:
    """Finds the movement in what is left of a piece, first as it stands, then without manners and implements."""
    name = _tidy(words)
    if not re.search("[a-z0-9]", _SIDE.sub("", name)):
        return
    for attempt in (lexicon.exact, lexicon.near):
        for candidate in _candidates(name):
            if meaning := attempt(candidate.name):
                _settle(piece, candidate, meaning, lexicon)
                return
    piece.unread = name


@dataclass(frozen=True)
class _Candidate:
    """A way to read a name: the words looked up, and what was set aside for it."""

    name: str
    manners: tuple[str, ...] = ()
    held: str = ""
    many: bool = False


def _candidates(name: str) -> list[_Candidate]:
    whole = _Candidate(name)
    held = HELD.search(name)
    ways = [whole]
    if held:
        rest = _tidy(name[: held.start()] + " " + name[held.end() :])
        many = bool(re.search(r"\b(?:two|double|2)\b", held[0]))
        full = _tidy(f"{name[: held.start()]} {held['i']} {name[held.end() :]}")
        ways += [_Candidate(full, (), held["i"], many), _Candidate(rest, (), held["i"], many)]
    ways += [replace(way, name=_tidy(_SIDE.sub(" ", way.name))) for way in ways]
    ways += [
        replace(way, name=_tidy(_MANNERS.sub(" ", way.name)), manners=tuple(_MANNERS.findall(way.name)))
        for way in ways
    ]
    return [way for way in dict.fromkeys(ways) if way.name]


def _settle(piece: Piece, candidate: _Candidate, meaning: Meaning, lexicon: Lexicon) -> None:
    piece.meaning = meaning
    piece.notes += candidate.manners
    held = candidate.held or (found["i"] if (found := HELD.search(candidate.name)) else "")
    if held and (thing := lexicon.catalogue.implement_by_name(held)):
        piece.implement = thing.id
        piece.count = piece.count or (2 if candidate.many else None)


def _tidy(words: str) -> str:
    return _FILLERS.sub("", " ".join(words.split())).strip()


def completes(piece: Piece, line: Piece) -> bool:
    """Whether a nameless piece says only what the line before it left open."""
    if piece.meaning or piece.unread or not piece.says_anything:
        return False
    pairs = (
        (piece.amount, line.amount),
        (piece.loads_kg, line.loads_kg),
        (piece.load_rule, line.load_rule),
        (piece.tempo, line.tempo),
        (piece.sets, line.sets),
    )
    return not any(new and old for new, old in pairs)


def complete(line: Piece, piece: Piece) -> Piece:
    """The line with what `piece` adds."""
    return replace(
        line,
        text=f"{line.text}, {piece.text}",
        amount=line.amount or piece.amount,
        amount_to=line.amount_to or piece.amount_to,
        second_amount=line.second_amount or piece.second_amount,
        unit=line.unit or piece.unit,
        per_side=line.per_side or piece.per_side,
        side=line.side or piece.side,
        count=line.count or piece.count,
        loads_kg=line.loads_kg or piece.loads_kg,
        load_rule=line.load_rule or piece.load_rule,
        tempo=line.tempo or piece.tempo,
        notes=line.notes + piece.notes,
        implement=line.implement or piece.implement,
        sets=line.sets or piece.sets,
        most=line.most or piece.most,
    )


def as_line(piece: Piece) -> Line:
    """The finished line; the piece must have a meaning."""
    assert piece.meaning is not None
    return Line(
        written=piece.text,
        movement=piece.meaning.movement,
        variant=piece.meaning.variant,
        implement=piece.implement,
        amount=piece.amount,
        amount_to=piece.amount_to,
        second_amount=piece.second_amount,
        unit=piece.unit or (AmountUnit.REPS if piece.amount else piece.meaning.unit),
        per_side=piece.per_side,
        side=piece.side,
        station=piece.station,
        count=piece.count,
        loads_kg=piece.loads_kg,
        load_rule=piece.load_rule,
        tempo=piece.tempo,
        notes="; ".join(piece.notes) or None,
    )
