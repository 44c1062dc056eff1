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
from core.notation.lines.each_set import take_each_set
from core.notation.lines.flights import in_flights
from core.notation.lines.naming import SIDE, read_name, read_open_name, sides_of
from core.notation.lines.pieces import Piece
from core.notation.names.catalogued import Lexicon
from core.notation.names.leaning import as_leaning
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
from core.sessions.values import MOST_PERCENT, LoadRule

_AT = r"(?:\bstart(?:ing)?\s?)?(?:@|\bat\b|\bwith\b|\bw/|\bw\.(?=\s)|\busing\b)\s?(?:an?\s|the\s)?"
_TIMES = r"(?:(?<![0-9.])(?P<n{0}>[1-9](?=\s?[x*])|two(?=\s)|one(?=\s)|2(?=\s))\s?[x*]?\s?)?"

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
# A share of another lift, of more than one repetition or of what was lifted today: none of their best in this one.
_OF_ANOTHER = (
    r"(?:(?:of|from)\s)?(?:(?:your|the)\s)?[2-5]\s?-?rm\b"
    r"|(?:of|from) (?:(?:your |the )?[a-z]+(?:\s[a-z]+)? (?:[1-5]\s?-?rm|max|best|single|double|triple)\b"
    r"|(?:today'?s|the) (?:(?:heavy|top|best|last) )?\w+|it\b|(?:that|this)\b(?: (?:weight|one)\b)?"
    r"|(?:part|block) [1-9a-h]\b)"
)
_PERCENT = shape(
    r"(?:@\s?|\bat\s|\bdrop(?:ping)? to\s)?(?<![\-.0-9])(?P<p>[0-9]{1,3}(?:\.[0-9])?)\s?(?:%|per\s?cent\b)"
    r"(?:\s?(?:(?:of|from)\s)?(?:(?:your|the)\s)?(?:own\s)?(?:tested\s)?"
    r"(?:1\s?-?rm\b|max(?:imum)?\b|1 rep max\b|best\b)"
    rf"|\s?(?P<of>{_OF_ANOTHER})|\s(?:effort|intensity|max effort)\b)?"
)
# `80-90%`: no one number says it
_PERCENTS = shape(r"(?:@\s?|\bat\s)?(?<![0-9.x])[0-9]{2,3}\s?%?\s?-\s?[0-9]{2,3}\s?%")
_EFFORT = shape(
    r"(?:@\s?|\bat\s|\bto\s)?\b(?:rpe|effort)\s?:?\s?(?P<e>[0-9](?:\.5)?|10)(?:\s?(?:/|(?:out )?of)\s?10)?(?![0-9\-])"
    r"|@\s?(?P<of>[0-9](?:\.5)?|10)\s?/\s?10(?: effort)?\b"
    r"|(?<![0-9.])(?P<share>[0-9]|10)\s(?:out )?of 10\b"
)
# `rpe 7-8`: no one number says it
_EFFORTS = shape(r"(?:@\s?|\bat\s)?\b(?:rpe|effort)\s?:?\s?[0-9](?:\.5)?\s?-\s?(?:[0-9](?:\.5)?|10)(?![0-9])")
# `@ 5k pace`
_PACE = shape(r"(?:@|\bat\b|\b(?:in|at)\s(?:your|the)\b)\s?[a-z0-9:/ ]{1,14}\bpace\b")
# `12 DB bench 22.5s`, `curl 3x12 10s`: bells, called by what each weighs
_BELLS = shape(
    r"^(?=.*\b(?:dbs?|kbs?|dumbbells?|kettlebells?)\b|.*[0-9]\s?x\s?[0-9]{1,3}(?:-[0-9]{1,3})?\s).*[0-9].*[a-z0-9;(]\s{0,3}(?<![0-9.])(?P<x>(?P<a><num>)s)(?=[\s;.)]*$)"
)
_LASTING = re.compile(r"\b(?:holds?|hangs?|planks?|sits?|stretch(?:es)?)\b")
# `2 in reserve` is an effort of 8: how many more could have been done (common practice, no source)
_RESERVE = shape(
    r"(?:@\s?|\bat\s|\bleave\s|\bwith\s)?\b(?P<left>[0-5])\s?"
    r"(?:(?:reps?\s)?in (?:(?:the )?tank|reserve|hand)\b|rir\b|reps? left\b)"
)
# `+2.5 kg from last week`: more than what nobody knows here
_MORE = shape(r"\+\s?<num>\s?<mass>\s(?:from|than|on|over|vs)\s[a-z' ]{3,24}$")
# `40-50 kg`: no one number says it
_LOADS = shape(rf"(?:{_AT})?(?<![0-9./])<num>\s?(?:-|to)\s?<num>\s?<mass>")
_UNBROKEN = shape(
    r"(?:@\s?|\bat\s|\bwith\s|\bpick\s|\buse\s|\bchoose\s)?(?:\ban?\s(?:weight|load)\s(?:that\s)?)?"
    r"(?:(?:\byou\s?(?:could|can|would|'d|should be able to)|\bgood for)\s?(?:go|get|do|manage|hold|lift"
    r"|be able to do)?\s?)?"
    r"(?:for\s)?(?P<lo>[0-9]{1,2})\s?(?:-|to)\s?(?P<hi>[0-9]{1,2})\s?(?:times\s|reps\s)?"
    r"(?:(?:of|with)\s)?(?:it\s)?(?:reps\s)?(?:(?:unbroken|without (?:a )?(?:break|stopping|rest|pause)"
    r"|in one go)\b)"
    r"(?:\s(?:when\s)?fresh)?"
)
_HEAVY = shape(r"(?:@\s?|\bat\s)?(?:\ba\s)?\bheavy\b(?! bag)")
_PAIR = shape(
    rf"(?:{_AT}|@)?{_TIMES.format(1)}(?<![0-9./])"
    rf"(?P<a><num>)\s?(?P<ua><mass>)?\s?/\s?{_TIMES.format(2)}(?P<b><num>)(?![0-9.]|\s?/)\s?(?P<ub><mass>)?"
    rf"|(?<![0-9./])(?P<c><num>)\s?(?P<uc><mass>)?\sor\s(?P<d><num>)\s?(?P<ud><mass>)"
)
_LOAD = shape(rf"(?:{_AT})?{_TIMES.format(1)}(?<![0-9./])(?P<a><num>)\s?(?P<ua><mass>)(?!\s?/)")
# `24 kg men, 16 kg women`, `girls 12 kg boys 16`: the first of a pair is the men's, whichever is written first.
_MEN, _WOMEN = r"(?:men|gents|guys|lads|boys|males?|him|m)", r"(?:women|ladies|gals|girls|females?|her|f|w)"
_BY_SEX = shape(
    rf"(?:{_AT})?(?P<a><num>)\s?(?P<ua><mass>)?\s(?:for\s)?(?:the\s)?(?P<whose>{_MEN}|{_WOMEN})\b[\s,/;&]*(?:and\s)?"
    rf"(?P<b><num>)\s?(?P<ub><mass>)?\s(?:for\s)?(?:the\s)?(?:{_MEN}|{_WOMEN})\b"
)
_SEX_FIRST = shape(
    rf"\b(?P<whose>{_MEN}|{_WOMEN})\s?[:=]?\s?(?:{_AT})?(?P<a><num>)\s?(?P<ua><mass>)?s?[\s,/;&]*(?:and\s)?"
    rf"(?:the\s)?\b(?:{_MEN}|{_WOMEN})\s?[:=]?\s?(?P<b><num>)\s?(?P<ub><mass>)?(?:s\b)?"
)
_BETWEEN_SEXES = shape(
    rf"(<num>\s?(?:<mass>)?\s(?:for\s)?(?:the\s)?(?:{_MEN}|{_WOMEN})),(?=\s<num>\s?(?:<mass>)?\s(?:for\s)?(?:the\s)?(?:{_MEN}|{_WOMEN})\b)"
)
# `with 2 dumbbells of 12.5`, `8 thrusters 2x10`: how many are held, and how heavy each is
_OF_THEM = shape(
    rf"(?:{_AT}|\b)(?:(?P<n>2|two|1|one|a|an)\s)?(?P<thing>(?:dumb|kettle|bar)bells?|dbs?|kbs?)\s(?:(?:of|at|@)\s?)?(?P<a><num>)(?![0-9]|\s?(?:[x*/]|sets?\b|reps?\b|rounds?\b|each\b|ea\b|es\b|per\b|[0-9]))\s?(?P<u><mass>)?"
)
_HELD_TIMES = shape(
    r"^(?!.*\s/\s).*[0-9].*[a-z0-9;]\s(?P<x>(?P<n>[12])\s?x\s?(?P<a><num>)(?:\s?(?P<u><mass>)|s\b)?)[\s;.]*$"
)
_BARE_LOAD = shape(
    rf"(?:\bstart(?:ing)?\s?)?@\s?{_TIMES.format(1)}(?P<a><num>)(?![0-9.x:/%\-]|\s?(?:cm|inch|in\b|\"))(?P<ua>)"
)
# `front-rack lunges (2 dbs)`: how many are held, of whatever weight
_HELD_COUNT = shape(r"(?<=[a-z]\s)(?P<n>2)\s(?:dbs|kbs|(?:dumb|kettle)bells)(?=[\s;.)]*$)")
_PER_HAND = shape(r"[;\s]*(?:(?:each|per|a|in each|in (?P<one>one))\s?hand|each\b(?!\s(?:side|arm|leg)))")
_HEIGHT = shape(
    r"\bto\s(?:an?\s)?[1-9](?:\.[0-9])?\s?(?:m|ft|feet)\b(?:\starget)?"
    r"|(?:@\s?)?<num>(?:\s?/\s?<num>)?\s?(?:cm|inch(?:es)?|in\b(?!\s(?:total|all|a row))|\")(?!\s?[0-9])"
)
_PER_SIDE = shape(
    r"(?:\b(?:e(?:a(?:ch)?)?|p)\.?)?\s?/\s?(?:side|arm|leg|hand|foot|direction|way|s)\b"
    r"|(?:\b(?:(?:to |on |for )?(?:each|every)|per|a|ea|e)\.?\s(?:side|arm|leg|foot|direction|way)"
    r"|\be/s|\bl\s?[/+&]\s?r"
    r"|\bp/s|\bps|\bp\.s\b\.?|x (?:side|leg|arm)"
    r"|(?<!\bin\s)each hand|(?<=\barm )each|(?<=\bleg )each)\b|\b(?:on )?both (?:sides|directions|ways)\b"
    r"|(?<=[0-9smn\"' ])\s?\b(?:each|ea|es)\b\.?(?=[\s;.]*(?:$|[;@]|slow|with\b|w/|holding\b))"
)
_SET_OF_WHAT = r"(?:back[ -]?off|drop|working|work|top|heavy|light|straight|more)"
_SETS = shape(
    rf"(?:^|(?<=[:;,\s]))\s?(?P<n>[0-9]{{1,2}}|{COUNT_WORD})\s?(?:x|\*|times(?=\s[0-9])|(?:{_SET_OF_WHAT}\s)?(?:sets?|series?)\s?(?:of|x|:)?)\s?(?=:?[0-9]|unbroken\s[0-9]|max|amrap"
    rf"|{COUNT_WORD})"
)
# How many in each set stands right behind their number: `row 4 x 10 pause at the top`, `ohp 3x8 40`.
_IN_EACH = shape(
    rf"\s?(?P<a><num>|(?:{COUNT_WORD})\b)(?:\s?(?:-|to)\s?(?P<b><num>))?(?![0-9.:/]|\s?-\s?[0-9]|\s?(?:<mass>|%|{TIME_UNITS}|'|\"|[x*]\s?[0-9]))\s?"
    rf"(?P<u>{UNITS})?(?:\sof\b)?"
)
# `1 x plank`, `4x strides 20s`: how often, where how many or how long isn't told, or stands behind
_SETS_OF = shape(
    r"^[\s;:]*(?:(?P<n>1)\s?x\s(?=[a-z]{3})|(?P<many>[2-9]|[12][0-9])\s?x\s"
    rf"(?=[a-z]{{3}}[a-z \-]*\s(?:{DURATION}|<num>\s?{DISTANCE_UNIT}\b)))"
)
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


def with_sexes_bound(text: str) -> str:
    """The text in which a comma parts no load of women from that of men: `16 kg the girls, 24 kg the boys`."""
    return _BETWEEN_SEXES.sub(lambda match: f"{match[1]} ", text)


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


def _read_rules(piece: Piece, strip: Strip, unit: MassUnit) -> None:
    """How the load is chosen."""
    if take_each_set(piece, strip, unit):
        return
    if match := strip.take(_PERCENTS) or strip.take(_EFFORTS):
        piece.notes += (match[0].strip("@ "),)
    elif (match := _PERCENT.search(strip.text)) and 0 < float(match["p"]) <= MOST_PERCENT:
        strip.blank(*match.span())
        piece.load_rule = LoadRule(percent=float(match["p"]))
        piece.notes += (match["of"],) if match["of"] else ()
    elif match := strip.take(_EFFORT):
        piece.load_rule = LoadRule(effort=float(match["e"] or match["of"] or match["share"]))
    elif match := strip.take(_RESERVE):
        piece.load_rule = LoadRule(effort=10.0 - float(match["left"]))
    elif match := strip.take(_UNBROKEN):
        piece.load_rule = LoadRule(unbroken=(int(match["lo"]), int(match["hi"])))
    elif strip.take(_HEAVY):
        piece.load_rule = LoadRule(heavy=True)


def _read_held(piece: Piece, strip: Strip, unit: MassUnit) -> None:
    """Loads told by whose they are, from where to where, or by how many are held."""
    if match := strip.take(_LOADS) or strip.take(_MORE):
        piece.notes += (match[0].strip("@ "),)
    if match := strip.take(_BY_SEX) or strip.take(_SEX_FIRST):
        typed = match["ua"] or match["ub"]
        told = [kilograms(match[end], match[f"u{end}"] or typed, unit) for end in "ab"]
        piece.loads_kg = tuple(told if re.fullmatch(_MEN, match["whose"]) else told[::-1])
    elif (match := _OF_THEM.search(strip.text)) and (
        match["u"] or match["n"] or _tells_more(strip.text, match)
    ):
        strip.blank(match.end("thing"), match.end())
        piece.loads_kg = (kilograms(match["a"], match["u"], unit),)
        piece.count = (1 if match["n"] in {"a", "an"} else _count(match["n"])) or piece.count
        if match["n"]:
            strip.blank(*match.span("n"))
    elif (
        (match := _BELLS.search(strip.text))
        and re.search(r"[0-9]", strip.text[: match.start("x")])
        and not _LASTING.search(strip.text)
    ):
        strip.blank(*match.span("x"))
        piece.loads_kg, piece.count = (kilograms(match["a"], None, unit),), 2
    elif match := _HELD_COUNT.search(strip.text):
        strip.blank(match.start("n"), match.end("n"))
        piece.count = _count(match["n"])
    elif match := _HELD_TIMES.search(strip.text):
        strip.blank(*match.span("x"))
        piece.loads_kg, piece.count = (kilograms(match["a"], match["u"], unit),), int(match["n"])


def _tells_more(text: str, match: re.Match[str]) -> bool:
    """Whether another number tells how much is done: `8 thrusters with DBs 10`; alone it is how much."""
    return re.search("[0-9]", text[: match.start()] + text[match.end() :]) is not None


def _read_pair(piece: Piece, strip: Strip, unit: MassUnit) -> None:
    if piece.loads_kg:
        return
    pairs = _PAIR.finditer(strip.text)
    match = next((one for one in pairs if one["c"] or _is_load_pair(one, strip.text)), None)
    if match is None:
        return
    strip.blank(*match.span())
    first, second = ("c", "d") if match["c"] else ("a", "b")
    typed = match[f"u{first}"] or match[f"u{second}"]
    piece.count = _count(match["n1"] or match["n2"])
    piece.loads_kg = tuple(kilograms(match[end], match[f"u{end}"] or typed, unit) for end in (first, second))
    piece.bare_pair = None if typed or piece.count else (match[first], match[second])


def _is_load_pair(match: re.Match[str], text: str) -> bool:
    """`15/12 cal row` and `10/8 push-ups` are amounts: a bare pair is a load only behind a name."""
    if match["ua"] or match["ub"] or match["n1"] or match[0].startswith(("@", "w")):
        return True
    if match["a"] == match["b"] and not re.search("[0-9]", text[: match.start()]):
        return False  # `side bend 12/12`: so many on each side
    follows = re.match(rf"\s?(?:{UNITS}|{DURATION}|cm|in\b|\")", text[match.end("b") :])
    return follows is None and re.search("[a-z]&?[a-z]", text[: match.start()]) is not None


def _read_load(piece: Piece, strip: Strip, unit: MassUnit) -> None:
    if piece.loads_kg:
        return
    match = strip.take(_LOAD)
    if match is None and (match := strip.take(_BARE_LOAD)) and unit is MassUnit.KG:
        piece.bare_share = float(match["a"])
    if match is None:
        return
    piece.count = _count(match["n1"])
    piece.loads_kg = (kilograms(match["a"], match["ua"], unit),)
    if hands := _PER_HAND.match(strip.text, match.end()):
        strip.blank(*hands.span())
        piece.count = piece.count or (1 if hands["one"] else 2)


def _count(typed: str | None) -> int | None:
    return None if typed is None else NUMBER_WORDS[typed] if typed in NUMBER_WORDS else int(typed)


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


def _read_sets(piece: Piece, strip: Strip, _: MassUnit) -> None:
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
    _read_rules,
    _read_held,
    _read_pair,
    _read_load,
    _read_height,
    _read_sides,
    _read_sets,
    _read_most,
    read_amount,
)
# What is told in digits alone isn't looked for where there are none.
_NUMBER = re.compile("[0-9]")
_WITHOUT_NUMBERS = tuple(
    read for read in _READERS if read not in {_read_held, _read_pair, _read_load, _read_height}
)
