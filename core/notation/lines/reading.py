"""One line of a block: amount, movement, load. Read piece by piece; what no piece explains is its name."""

import re
from collections.abc import Callable

from core.measures import AmountUnit, MassUnit
from core.notation.lines.amounts import (
    ENERGY_ALONE,
    TIME,
    TIME_UNITS,
    UNITS,
    amount_of,
    read_amount,
    shape,
)
from core.notation.lines.bare_numbers import settle
from core.notation.lines.flights import in_flights
from core.notation.lines.loads import read_held, read_load, read_pair, read_rules
from core.notation.lines.naming import SIDE, read_name, read_open_name, sides_of
from core.notation.lines.pieces import Piece
from core.notation.names.catalogued import Lexicon
from core.notation.names.leaning import as_leaning, as_one_armed
from core.notation.quantities import (
    COUNT_WORD,
    DISTANCE_UNIT,
    DURATION,
    ENERGY_UNIT,
    NUMBER_WORDS,
    kilograms,
    seconds,
)
from core.notation.text import TEMPO_MARK, Strip

_STATION = shape(
    r"^\s*(?:(?:minutes?|min|station|st)\s?(?P<n>[1-9][0-9]?)|(?P<nth>[1-9])(?:st|nd|rd|th)\s(?:min(?:ute)?|station)"
    r"|(?P<odd>odd|even)(?:\s?min(?:ute)?s?)?)\s?[:\-)=]|^\s*(?:minutes?|min|station)\s(?P<bare>[1-9])(?=\s(?:[a-z]{3}|[0-9]{1,3}\s))|^\s*(?P<parity>odd|even)\s(?:min(?:ute)?s?\s)?(?=[0-9])"
)
_TEMPO = shape(
    r"(?:\b(?:tempo\s?:?\s?@?\s?|t(?=[0-9]{2}[0-9x]{2}\b))(?P<t>[0-9]-?[0-9x](?:-?[0-9x]){1,2})"
    r"|@\s?(?P<at>[0-9]-[0-9x]-[0-9x](?:-[0-9x])?|[0-9]{2}[0-9x][0-9x])"
    r"|(?P<u>[0-9]-[0-9x]-[0-9x](?:-[0-9x])?)(?=\s?tempo)"
    rf"|(?:@|\btempo\b\s?:?\s?@?)?\s?(?P<m>[0-9]{TEMPO_MARK}[0-9x]{TEMPO_MARK}[0-9x](?:{TEMPO_MARK}[0-9x])?))(?![0-9])(?:\s?tempo\b)?"
)
# `31x0` between two commas
_TEMPO_ALONE = re.compile(r"^\s*(?P<t>[1-6][0-4]x[0-3])\s*$")
# `3s down`: how slowly, where no name says it.
_SLOW = shape(
    r"[;,\s]*(?<![0-9.])(?P<s>[1-9])\s?(?:s|secs?|seconds?)\s(?:down|lowering|lower|eccentric|negatives?)\b"
)
# `with a 2 sec squeeze at the top`, `hold 3 s`: how long one repetition rests
_STOP = r"(?:pause|stop|hold|squeeze|iso(?:metric)?|count)s?"
_STILL = shape(
    rf"[;,\s]*(?P<said>(?:\b(?:with|w/?|and|plus)\s)?(?:\ban?\s)?(?P<verb>\b{_STOP}(?:ing)?\s(?:for\s|it\s|each\s|one\s){{0,3}})?(?<![0-9.])[1-9]"
    rf"\s?-?(?:s|secs?|seconds?)\b\.?(?P<noun>[\s\-]{_STOP}\b)?"
    r"(?P<place>\s(?:(?:at|in|on)\s)?(?:the\s)?(?:top|bottom|hole|middle|parallel|chest|knee)\b(?!\sstretch))?)"
)
# `@ 5k pace`
_PACE = shape(r"(?:@|\bat\b|\b(?:in|at)\s(?:your|the)\b)\s?[a-z0-9:/ ]{1,14}\bpace\b")
_HEIGHT = shape(
    r"\bto\s(?:an?\s)?[1-9](?:\.[0-9])?\s?(?:m|ft|feet)\b(?:\starget)?"
    r"|(?:@\s?)?<num>(?:\s?/\s?<num>)?\s?(?:cm|inch(?:es)?|in\b(?!\s(?:total|all|a row))|\")(?!\s?[0-9])"
)
_PER_SIDE = shape(
    r"(?:\b(?:e(?:a(?:ch)?)?|p)\.?)?\s?/\s?(?:side|arm|leg|hand|foot|direction|way|s)\b"
    r"|(?:\b(?:(?:to |on |for )?(?:each|every)|per|a|ea|e)\.?\s(?:side|arm|leg|foot|direction|way)"
    r"|\be/s|\bl\s?[/+&]\s?r"
    r"|\bp/s|\bps|\bp\.s\b\.?|\bx (?:side|leg|arm)(?=[\s;.,]*(?:$|[@(]))"
    r"|(?<!\bin\s)each hand|(?<=\barm )each|(?<=\bleg )each)\b|\b(?:on )?both (?:sides|directions|ways)\b"
    r"|(?<=[0-9smn\"' ])\s?\b(?:each|ea|es)\b\.?(?=[\s;.]*(?:$|[;@]|slow|with\b|w/|holding\b))"
)
_SET_OF_WHAT = r"(?:back[ -]?off|drop|working|work|top|heavy|light|straight|more)"
_SETS = shape(
    rf"(?:^|(?<=[:;,\s]))\s?(?P<n>[0-9]{{1,2}}|{COUNT_WORD})\s?(?:x|\*|times(?=\s[0-9])|(?:{_SET_OF_WHAT}\s)?(?:sets?|series?)\s?(?:of|x|:)?)\s?(?=:?[0-9]|unbroken\s[0-9]|max|amrap"
    rf"|{COUNT_WORD})"
)
# `press 3 x 5 x 40`, `deadlift 100x5x3`: the heaviest number is the load (common practice, no source).
_SETS_REPS_LOAD = shape(
    r"(?<![\w.])(?:(?P<n>[1-9][0-9]?)\s?x\s?(?P<r>[1-9][0-9]?)\s?x\s?(?P<kg>[2-9][0-9](?:\.[0-9])?|[12][0-9]{2})"
    r"|(?P<first>[2-9][0-9](?:\.[0-9])?|[12][0-9]{2})\s?x\s?(?P<each>[1-9][0-9]?)\s?x\s?(?P<times>[1-9][0-9]?))"
    rf"(?![\w.%/]|\s?(?:{UNITS}|{TIME_UNITS}|%))"
)
# How many in each set stands right behind their number: `row 4 x 10 pause at the top`, `ohp 3x8 40`.
_IN_EACH = shape(
    rf"\s?(?P<a><num>|(?:{COUNT_WORD})\b)(?:\s?(?:-|to)\s?(?P<b><num>))?(?![0-9.:/]|\s?-\s?[0-9]|\s?(?:<mass>|%|{TIME_UNITS}|'|\"|[x*]\s?[0-9]))\s?"
    rf"(?P<u>{UNITS})?(?:\sof\b)?"
)
# `1 x plank`, `4x strides 20s`, `5 hill sprints of 60 m`: how often, where how many or how long isn't told, or
# stands behind
_SETS_OF = shape(
    r"^[\s;:]*(?:(?P<n>1)\s?x\s(?=[a-z]{3})|(?P<many>[2-9]|[12][0-9])(?:\s?x\s"
    rf"(?=[a-z]{{3}}[a-z \-]*\s(?:{DURATION}|<num>\s?{DISTANCE_UNIT}\b))"
    rf"|\s(?=(?:[a-z]+\s)?(?:sprints|strides|repeats)\sof\s<num>\s?{DISTANCE_UNIT}\b)))"
)
# `7 shuttle runs of 10 m`: how far each of them goes
_EACH_SO_FAR = shape(rf"(?<=s\s)of\s<num>\s?{DISTANCE_UNIT}\b(?:\seach\b)?(?=[\s;.]*$)")
_BEGINS_COUNTED = re.compile(r"[\s;:]*[0-9]{1,3}\s[a-z]")
# `500 m row x 4`: behind an amount with its unit it is how often.
_SETS_LAST = shape(
    rf"<num>\s?(?:{DISTANCE_UNIT}|{ENERGY_UNIT}|{TIME_UNITS})\b[\sa-z]*(?P<x>\bx\s?(?P<n>[0-9]{{1,2}}))[\s;]*$"
)
_IN_PARTS = shape(r"^[\s;:]*(?:accumulate|collect)\b(?:\sa total of)?")
_MOST = shape(
    r"(?:^|(?<=[:;,\s]))\s?(?:amrap(?:\s?-\s?[0-9])?|(?:to|until|till) failure|max(?:imum|imal)?)\b"
    r"(?:\s(?:reps?|repetitions?|sets?|effort|time|hold|distance|(?P<kcal>k?cals?|calories))\b)?(?:\s(?:of|in|for)\b)?"
)
# `2xDB 20/14`
_GLUED = re.compile(r"\b([12])\s?x\s?(dbs?|kbs?)\s?(?=[0-9])")
# `12 lunges w/ 2x12`: what is held are no sets
_TWO_HELD = re.compile(r"(?<=[a-z])(\s(?:w/|w|with|holding)\s?2\s?x\s?[0-9]{1,2}(?:\.5)?)(?=[\s.]*$)")
# A letter that no word of the readers begins with.
_HIDDEN = "q"
Reader = Callable[[Piece, Strip, MassUnit], None]


def read_piece(text: str, start: int, lexicon: Lexicon, unit: MassUnit) -> Piece:
    """Everything that `text` says of a line; `unread` keeps a name that isn't in the catalogue."""
    start += len(text) - len(text.lstrip(" .,:;*-"))
    piece = Piece(start, text.strip(" .,:;*-"), end=start + len(text.lstrip(" .,:;*-")))
    text = _TWO_HELD.sub(rf"\1 {unit}", _GLUED.sub(r"\2 \1x", in_flights(text)))
    hidden = lexicon.tricky(text)
    strip = Strip(_hide(text, hidden) if hidden else text)
    for read in _READERS if _NUMBER.search(text) else _WITHOUT_NUMBERS:
        read(piece, strip, unit)
    left = strip.left.replace(_HIDDEN * len(hidden[0]), hidden[0]) if hidden else strip.left
    read_name(piece, left, lexicon, sides_of(strip.text))
    if piece.meaning:
        piece.meaning = as_leaning(piece.meaning, text, lexicon)
    settle(piece, lexicon, unit)
    if piece.meaning:
        piece.meaning = as_one_armed(piece.meaning, text, lexicon)
    if piece.unread:
        read_open_name(piece, strip.text, lexicon)
    return piece


def _hide(text: str, name: re.Match[str]) -> str:
    """The text with a name made one long word, so that no reader takes it for an amount and its unit."""
    return text[: name.start()] + _HIDDEN * len(name[0]) + text[name.end() :]


def _read_station(piece: Piece, strip: Strip, _: MassUnit) -> None:
    if match := strip.take(_STATION):
        number = match["n"] or match["nth"] or match["bare"]
        piece.station = int(number) if number else ("odd", "even").index(match["odd"] or match["parity"]) + 1


def _read_manner(piece: Piece, strip: Strip, _: MassUnit) -> None:
    """Tempo and pace."""
    if match := _TEMPO_ALONE.match(strip.text):
        strip.blank(*match.span())
        piece.tempo = match["t"]
    elif match := strip.take(_TEMPO):
        piece.tempo = match["t"] or match["at"] or match["u"] or match["m"].replace(TEMPO_MARK, "-")
    if match := strip.take(_SLOW):
        piece.notes += (f"{match['s']} s down",)
    if (match := _STILL.search(strip.text)) and (match["verb"] or match["noun"] or match["place"]):
        strip.blank(*match.span("said"))
        piece.notes += (match["said"],)
    if pace := strip.take(_PACE):
        piece.notes += (pace[0],)


def _read_height(piece: Piece, strip: Strip, _: MassUnit) -> None:
    match = _HEIGHT.search(strip.text)
    if match is None:
        return
    # `3 x 45" plank` begins with seconds; how high stands behind what is done
    if not match[0].endswith('"') or re.search("[a-z]{2}", strip.text[: match.start()]):
        strip.blank(*match.span())
        piece.notes += (match[0].lstrip("@ "),)


def _read_sides(piece: Piece, strip: Strip, _: MassUnit) -> None:
    piece.per_side = strip.take(_PER_SIDE) is not None
    if match := SIDE.search(strip.text):
        # The word stays: `alternating lunges` may be a name of its own.
        piece.side = "alternating" if match["s"] else "left" if match["lr"] == "left" else "right"


def _read_sets(piece: Piece, strip: Strip, unit: MassUnit) -> None:
    if match := strip.take(_SETS_REPS_LOAD):
        weight = match["kg"] or match["first"]
        piece.sets, piece.amount = int(match["n"] or match["times"]), float(match["r"] or match["each"])
        piece.loads_kg = (kilograms(weight, None, unit),)
        return
    if strip.take(_IN_PARTS):
        piece.notes += ("in parts",)
    if match := strip.take(_SETS) or strip.take(_SETS_OF):
        typed = match["n"] or match["many"]
        piece.sets = NUMBER_WORDS[typed] if typed in NUMBER_WORDS else int(typed)
        if each := _IN_EACH.match(strip.text, match.end()):
            strip.blank(*each.span())
            piece.amount, piece.unit = amount_of(each["a"], each["u"])
            piece.amount_to = amount_of(each["b"], each["u"])[0] if each["b"] else None
    elif match := _SETS_LAST.search(strip.text):
        strip.blank(*match.span("x"))
        piece.sets = int(match["n"])
    elif _BEGINS_COUNTED.match(strip.text) and (match := strip.take(_EACH_SO_FAR)):
        piece.each_far = match[0]


def _read_most(piece: Piece, strip: Strip, _: MassUnit) -> None:
    most = strip.take(_MOST)
    if most is None:
        return
    piece.most = True
    if match := strip.take(TIME):
        piece.amount, piece.unit = seconds(match["t"]), AmountUnit.SECONDS
    piece.in_kcal = bool(most["kcal"] or strip.take(ENERGY_ALONE))


_READERS: tuple[Reader, ...] = (
    _read_station,
    _read_manner,
    read_rules,
    read_held,
    read_pair,
    read_load,
    _read_height,
    _read_sides,
    _read_sets,
    _read_most,
    read_amount,
)
# What is told in digits alone isn't looked for where there are none.
_NUMBER = re.compile("[0-9]")
_WITHOUT_NUMBERS = tuple(
    read for read in _READERS if read not in {read_held, read_pair, read_load, _read_height}
)
