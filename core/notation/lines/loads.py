"""How heavy it is: a load, a pair of them, how many are held, or the rule by which it is chosen."""

import re

from core.measures import MassUnit
from core.notation.lines.amounts import UNITS, shape
from core.notation.lines.each_set import take_each_set
from core.notation.lines.pieces import Piece
from core.notation.quantities import DURATION, NUMBER_WORDS, kilograms
from core.notation.text import Strip
from core.sessions.values import MOST_PERCENT, LoadRule

_AT = r"(?:\bstart(?:ing)?\s?)?(?:@|\bat\b|\bwith\b|\bw/|\bw\.(?=\s)|\busing\b)\s?(?:an?\s|the\s)?"
_TIMES = r"(?:(?<![0-9.])(?P<n{0}>[1-9](?=\s?[x*])|two(?=\s)|one(?=\s)|2(?=\s))\s?[x*]?\s?(?:of\s)?)?"

# A share of another lift, of more than one repetition or of what was lifted today: none of their best in this one.
_OF_ANOTHER = (
    r"(?:(?:of|from)\s)?(?:(?:your|the)\s)?[2-5]\s?-?rm\b"
    r"|(?:of|from) (?:(?:your |the )?[a-z]+(?:\s[a-z]+)? (?:[1-5]\s?-?rm|max|best|single|double|triple)\b"
    r"|(?:today'?s|the) (?:(?:heavy|top|best|last) )?\w+|it\b"
    r"|(?:that|this)\b(?: (?:weight|one|single|double|triple|[0-9]{1,2}(?:rm)?)\b)?"
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
    r"|(?<![0-9.])(?P<share>[0-9]|10)\s(?:out )?of 10\b(?!\s?<mass>)"
)
# `rpe 7-8`: no one number says it
_EFFORTS = shape(r"(?:@\s?|\bat\s)?\b(?:rpe|effort)\s?:?\s?[0-9](?:\.5)?\s?-\s?(?:[0-9](?:\.5)?|10)(?![0-9])")
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
_HELD_COUNT = shape(
    r"(?<=[a-z]\s|\s\s|\s\()(?P<n>2)\s(?:dbs|kbs|(?:dumb|kettle)bells)(?=[\s;.)]*(?:$|[0-9]))"
)
_PER_HAND = shape(r"[;\s]*(?:(?:each|per|a|in each|in (?P<one>one))\s?hand|each\b(?!\s(?:side|arm|leg)))")


def with_sexes_bound(text: str) -> str:
    """The text in which a comma parts no load of women from that of men: `16 kg the girls, 24 kg the boys`."""
    return _BETWEEN_SEXES.sub(lambda match: f"{match[1]} ", text)


def read_rules(piece: Piece, strip: Strip, unit: MassUnit) -> None:
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


def read_held(piece: Piece, strip: Strip, unit: MassUnit) -> None:
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


def read_pair(piece: Piece, strip: Strip, unit: MassUnit) -> None:
    if piece.loads_kg:
        return
    pairs = _PAIR.finditer(strip.text)
    match = next((one for one in pairs if one["c"] or _is_load_pair(one, strip.text)), None)
    if match is None:
        return
    strip.blank(*match.span())
    first, second = ("c", "d") if match["c"] else ("a", "b")
    typed = match[f"u{first}"] or match[f"u{second}"]
    piece.count = _count(match["n1"] or match["n2"]) or piece.count
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


def read_load(piece: Piece, strip: Strip, unit: MassUnit) -> None:
    if piece.loads_kg:
        return
    match = strip.take(_LOAD)
    if match is None and (match := strip.take(_BARE_LOAD)) and unit is MassUnit.KG:
        piece.bare_share = float(match["a"])
    if match is None:
        return
    piece.count = _count(match["n1"]) or piece.count
    piece.loads_kg = (kilograms(match["a"], match["ua"], unit),)
    if hands := _PER_HAND.match(strip.text, match.end()):
        strip.blank(*hands.span())
        piece.count = piece.count or (1 if hands["one"] else 2)


def _count(typed: str | None) -> int | None:
    return None if typed is None else NUMBER_WORDS[typed] if typed in NUMBER_WORDS else int(typed)
