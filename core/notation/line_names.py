"""The movement in what is left of a line, with the manners, sides and implements that stand around it."""

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from core.measures import AmountUnit
from core.notation.names import Lexicon, Meaning
from core.notation.pieces import Piece

SIDE = re.compile(
    r"\b(?P<s>alternat(?:ing|e|ed)|alt)\b\.?(?:\s(?:arms|legs|sides)\b)?|(?<!time\s)\b(?P<lr>left|right)\b(?:\s(?:side|arm|leg|hand))?(?:\sonly)?"
)
_MANNERS = re.compile(
    r"\b(?:synchro(?:nised|nized)?|sync|practice|drills?|easy|slow(?:ly)?|steady|strict|controlled|brisk|fast|light"
    r"|moderate|gentle|gently|recovery|hard|heavy|erg|machine|total|zone [1-5]|z[1-5]"
    r"|unbroken|full range|chest to floor|body ?weight|bw"
    r"|(?:for|in) (?:the )?(?:remaining time|time (?:left|remaining))"
    r"|(?:forwards?|fwd|backwards?|bwd|back)(?:\s?(?:and|&|/|\+)\s?(?:forwards?|fwd|backwards?|bwd|back))+)(?!\w)"
)
# `over-the-bar burpees`
_HYPHENED = re.compile(r"^(?:[a-z]+-)?(?:over|around|facing|off|onto)(?:-[a-z]+){0,3}\s(?=[a-z])")
_OR = re.compile(r"^(?P<one>.+?)\sor\s(?P<other>.+)$")
_FILL = (
    r"(?:\b(?:of|x|w|both|back[- ]?off|perform|reps?|the|an?|and|then|with|at|for|on|in|each|do|pls|please)\b"
)
_FILL = rf"{_FILL}|[\W_])"
# One way to match each character: nested or overlapping repeats would take for ever on `and and and ...`.
_FILLERS = re.compile(rf"^{_FILL}+|{_FILL}+$")
# `intervals on the bike`: what is done there goes without saying
_ON_MACHINE = re.compile(
    r"^(?:\w+ )?(?:intervals?|efforts?|work|sprints?|hard|easy)\son (?:the|an?) (?P<thing>[a-z ]{3,12})$"
)
# `30 kbs`: bells alone are swung
_SWINGS = re.compile(r"^[\W_]*kbs(?=[\W_0-9]*$)")
# `run up 4 flights, walk down`
_WAY_BACK = re.compile(r"(?:walk|jog|step)(?:ing)? (?:back )?down(?: again| slowly| to (?:recover|rest))?")
# `clean & jerk`
_HANDED = re.compile(r"\s&\s")
# Words that begin where, with whom, how or instead of what; not `to` or `into`, which make another movement.
_TAILS = (
    "over|ovr|around|across|along|apart|outside|outdoors|indoors|inside|together|or|at|per|broken|split",
    r"(?:in )?total|any ?style|your choice|all[ -]out|max effort|nasal|no|if|instead|but|as",
    "without|with|while|until|till|using|each time|in whatever|in one go|in a row|to finish|to start",
    r"build(?:ing)?(?: up)?|@ [a-z0-9 ]{0,20}pace|(?:hands|feet) (?:up )?on|on (?:the|an?|your) [a-z]+|through|against",
    "holding|forwards?|backwards?|there and back|to (?:the|a) [a-z ]{2,20} and back|from the floor",
    "same|before and after|lying down|standing up|no hands|feet (?:anchored|flat|together|apart)|vs",
    "on (?:chair|bench|box|sofa|knees|wall|spot|floor|bike|rower|machine|erg|track|treadmill|road|grass)",
)
_TAIL = re.compile(rf"\s(?:{'|'.join(_TAILS)})\b|\s/(?=\s[a-z])|\sw/")
HELD = re.compile(
    r"\b(?:with\s|w[./]?\s?)?(?:an?\s|one\s|two\s|single\s|double\s|[12]\s)?(?P<i>dumbbells?|dbs?|kettlebells?"
    r"|kettle bells?|kbs?|barbells?|bbs?|bands?|backpacks?|jugs?|plates?|sandbags?|tins?|bottles?)\b"
)


def read_name(piece: Piece, words: str, lexicon: Lexicon, sides: tuple[str, ...] = ()) -> None:
    """Finds the movement in what is left of a piece: as it stands, then without manners and implements.

    What follows a known name like `over the bar` or `or bike` is no part of it: it is kept as a note.
    """
    words = _SWINGS.sub("kettlebell swings", _HANDED.sub(" and ", words))
    name = words.strip() if lexicon.exact(words) else _tidy(words)
    if not re.search(r"[^\W_]", SIDE.sub("", name)):
        return
    if held := HELD.fullmatch(name):
        _hold(piece, held["i"], lexicon)
    elif _WAY_BACK.fullmatch(name):
        piece.notes += (name,)
    elif not (
        _is_known(piece, name, lexicon)
        or _is_manner(piece, name)
        or _is_on_one_side(piece, sides, lexicon)
        or _is_remark(piece, name)
        or _is_within(piece, name, lexicon)
    ):
        piece.unread = name


def _is_known(piece: Piece, name: str, lexicon: Lexicon) -> bool:
    """Whether the name means something: as it stands, without a remark, with its words turned, or as a stretch."""
    if _found(piece, name, lexicon, lexicon.exact, lexicon.short, lexicon.near):
        return True
    for rest, note in _without_remark(name):
        if _found(piece, _tidy(rest), lexicon, lexicon.exact, lexicon.short):
            piece.notes += (note,)
            return True
    stretch = f"{name} stretch" if piece.unit is AmountUnit.SECONDS else name
    if _found(piece, name, lexicon, lexicon.turned) or _found(piece, stretch, lexicon, lexicon.exact):
        return True
    machine = _ON_MACHINE.search(name)
    return machine is not None and _found(piece, machine["thing"], lexicon, lexicon.exact)


def _is_on_one_side(piece: Piece, sides: tuple[str, ...], lexicon: Lexicon) -> bool:
    """Whether one of the words around amounts is a name; what stands on the other side is kept as a note."""
    if len(sides) < 2 or re.search("[0-9]", "".join(sides)):  # noqa: PLR2004 - one side alone was looked up
        return False
    for side in sides:
        if _found(piece, _tidy(side), lexicon, lexicon.exact, lexicon.short, lexicon.near):
            piece.notes += tuple(told for other in sides if other != side and (told := _tidy(other)))
            return True
    return False


def _is_within(piece: Piece, name: str, lexicon: Lexicon) -> bool:
    """Whether a name stands among words that are no part of one, where it is told how much; they are kept as a note."""
    if not (piece.amount or piece.sets or piece.most):
        return False
    for candidate in _candidates(name):
        if found := lexicon.within(candidate.name):
            _settle(piece, candidate, found[0], lexicon)
            piece.notes += (found[1],)
            return True
    return False


def _is_manner(piece: Piece, name: str) -> bool:
    """Whether it only says how, of what stands before it: `- 8 slow`."""
    if not (piece.says_anything and _MANNERS.fullmatch(name)):
        return False
    piece.notes += (name,)
    return True


def _is_remark(piece: Piece, name: str) -> bool:
    """Whether it only says where or how, of what stands before it."""
    if not piece.says_anything or piece.most or not _TAIL.match(f" {name}"):
        return False
    piece.notes += (name,)
    return True


def _without_remark(name: str) -> Iterator[tuple[str, str]]:
    """The name without what stands behind it, before it, or as the other choice; and that."""
    if tail := _TAIL.search(name):
        yield name[: tail.start()], re.sub("^/", "or", name[tail.start() :].strip())
    if before := _HYPHENED.match(name):
        yield name[before.end() :], before[0].strip()
    if choice := _OR.match(name):
        yield choice["other"], f"{choice['one']} or"
        if tail := _TAIL.search(choice["other"]):
            yield choice["other"][: tail.start()], f"{choice['one']} or ... {tail[0].strip()}"


def _found(piece: Piece, name: str, lexicon: Lexicon, *attempts: Callable[[str], Meaning | None]) -> bool:
    """Whether an attempt knows the name or a way to read it; then the piece has its meaning."""
    candidates = [_Candidate(name)] if lexicon.exact(name) else _candidates(name)
    for attempt in attempts:
        for candidate in candidates:
            if meaning := attempt(candidate.name):
                _settle(piece, candidate, meaning, lexicon)
                return True
    return False


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
    ways += [replace(way, name=_tidy(SIDE.sub(" ", way.name))) for way in ways]
    ways += [
        replace(way, name=_tidy(_MANNERS.sub(" ", way.name)), manners=tuple(_MANNERS.findall(way.name)))
        for way in ways
    ]
    return [way for way in dict.fromkeys(ways) if way.name]


def _settle(piece: Piece, candidate: _Candidate, meaning: Meaning, lexicon: Lexicon) -> None:
    piece.meaning = meaning
    piece.notes += candidate.manners
    held = candidate.held or (found["i"] if (found := HELD.search(candidate.name)) else "")
    if held:
        _hold(piece, held, lexicon, many=candidate.many)


def _hold(piece: Piece, held: str, lexicon: Lexicon, *, many: bool = False) -> None:
    """What is held is what its name says; several of them that have one load are two."""
    if thing := lexicon.catalogue.implement_by_name(held):
        piece.implement = thing.id
        two = many or (held.endswith("s") and piece.loads_kg)
        piece.count = piece.count or (2 if two else None)


def _tidy(words: str) -> str:
    return _FILLERS.sub("", " ".join(words.split())).strip()
