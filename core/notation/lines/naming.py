"""The movement in what is left of a line, with the manners, sides and implements that stand around it."""

import re
from collections.abc import Callable
from dataclasses import dataclass, replace

from core.measures import AmountUnit
from core.notation.lines.pieces import Piece
from core.notation.names.beside import is_placing, without_filling
from core.notation.names.catalogued import Lexicon, Meaning
from core.notation.names.qualified import qualified
from core.notation.names.spotting import Spotted, spotted
from core.notation.text import Strip

SIDE = re.compile(
    r"\b(?P<s>alternat(?:ing|e|ed)|alt)\b\.?(?:\s(?:arms|legs|sides)\b)?|(?<!time\s)(?<!'s\s)(?<!is\s)\b(?P<lr>left|right)\b(?:\s(?:side|arm|leg|hand))?(?:\sonly)?"
)
_LEFT = re.compile(r"\b(?:left|right)\b")
_MANNERS = re.compile(
    r"\b(?:synchro(?:nised|nized)?|sync|practice|drills?|easy|slow(?:ly)?|steady|strong|strict|controlled|brisk|fast(?:er)?|quick(?:er|ly)?|light(?:er)?|heavier|(?:up)?hill"
    r"|moderate|gentle|gently|recovery|hard|heavy|erg|machine|total|zone [1-5]|z[1-5]"
    r"|unbroken|full range|chest to floor|body ?weight|bw"
    r"|(?:for|in) (?:the )?(?:remaining time|time (?:left|remaining))"
    r"|(?:forwards?|fwd|backwards?|bwd|back)(?:\s?(?:and|&|/|\+)\s?(?:forwards?|fwd|backwards?|bwd|back))+)(?!\w)"
)
_FILL = r"(?:\b(?:of|x|w|both|back[- ]?off|perform|reps?|the|an?|and|then|with|at|for|on|in|each|do|pls"
_FILL = rf"{_FILL}|please|today|tonight)\b(?!-[a-z])|[\W_])"
# One way to match each character: nested or overlapping repeats would take for ever on `and and and ...`.
_FILLERS = re.compile(rf"^{_FILL}+|{_FILL}+$")
# `30 kbs`: bells alone are swung
_SWINGS = re.compile(r"^[\W_]*kbs(?=[\W_0-9]*$)")
# `run up 4 flights, walk down`
_WAY_BACK = re.compile(r"(?:walk|jog|step)(?:ing)? (?:back )?down(?: again| slowly| to (?:recover|rest))?")
# `clean & jerk`
_HANDED = re.compile(r"\s[&+]\s")
_MOST_BESIDE = 6
# Words around what a load is held in: `two dumbbells in each hand`, `empty bar`.
_AROUND_LOADS = frozenset(
    ("a", "all", "an", "both", "each", "empty", "for", "hand", "hands", "in", "of", "on", "one", "only", "pair", "per",
     "same", "single", "take", "the", "total", "two", "use", "using", "w", "w/", "with")
)  # fmt: skip
_THINGS = frozenset(("bar", "bell", "dumbell", "dumbells", "load", "weight", "weights"))
_TWO = frozenset(("both", "pair", "two"))
CARRIED = frozenset(("bar", "bell", "weight", "weights", "load", "one bell", "on it", "it"))
# On which day it is done is nothing said of the work.
_DAY = re.compile(r"(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day)?")
# `plank: hold 1 min`: says only that it is done for so long
_GOING = frozenset(("hold", "hold it", "hold this", "hold for", "go", "keep going", "stay"))
HELD = re.compile(
    r"\b(?:with\s|w[./]?\s?)?(?:an?\s|one\s|two\s|single\s|double\s|[12]\s)?(?P<i>dumbbells?|dbs?|kettlebells?"
    r"|kettle bells?|kbs?|barbells?|bbs?|bands?|backpacks?|jugs?|plates?|sandbags?|tins?|bottles?)\b"
)


_NUMBER_BEHIND = re.compile(r"\s[0-9.]{1,5}$")


def sides_of(text: str) -> tuple[str, ...]:
    """The words between what was taken, which are no one name: `row ;;;;;; pause at the top`."""
    return tuple(side for part in re.split(f"{Strip.MARK}+", text) if (side := part.strip(" .,:-*/&+|=!?")))


def read_name(piece: Piece, words: str, lexicon: Lexicon, sides: tuple[str, ...] = ()) -> None:
    """Finds the movement in what is left of a piece: as it stands, then without manners and implements.

    What follows a known name like `over the bar` or `or bike` is no part of it: it is kept as a note.
    """
    words = _SWINGS.sub("kettlebell swings", _HANDED.sub(" and ", words))
    name = words.strip() if lexicon.exact(words) else _tidy(words)
    if not re.search(r"[^\W_]", SIDE.sub("", name)):
        return
    if _is_load_of(piece, name, lexicon):
        return
    if held := HELD.fullmatch(name):
        _hold(piece, held["i"], lexicon)
    elif (piece.loads_kg and name in CARRIED) or (piece.unit is AmountUnit.SECONDS and name in _GOING):
        pass  # `bar 40/30`: whatever is lifted has that load
    elif _WAY_BACK.fullmatch(name):
        piece.notes += (name,)
    elif not (_is_known(piece, name, lexicon) or _is_manner(piece, name)):
        around = " , ".join(sides) or name
        found = _is_spotted(piece, around, lexicon) or _is_qualified(piece, name, lexicon)
        if not (found or _is_remark(piece, name, lexicon)):
            piece.unread = name


def _is_load_of(piece: Piece, name: str, lexicon: Lexicon) -> bool:
    """Whether words beside a load only say in what it is held: `dumbbells in hand`, `empty bar`, `one bell`."""
    words = name.split()
    things = [word for word in words if word in _THINGS or HELD.fullmatch(word)]
    around = {word for word in words if word not in things}
    told = piece.loads_kg or (piece.second_amount and piece.unit is None)
    if not (told and things and around <= _AROUND_LOADS):
        return False
    for thing in things:
        _hold(piece, thing, lexicon, many=bool(around & _TWO))
    if piece.loads_kg and piece.amount in {1, 2} and piece.unit is None:
        piece.count, piece.amount = int(piece.amount), None
    return True


def _is_known(piece: Piece, name: str, lexicon: Lexicon) -> bool:
    """Whether all of the name means something: as it stands, written out, but for a slip, turned, or as a stretch."""
    attempts = (lexicon.exact, lexicon.short, lexicon.near, lexicon.turned, lexicon.clipped)
    if _found(piece, name, lexicon, *attempts):
        return True
    if piece.unit is not AmountUnit.SECONDS:
        return False
    # A time that names nothing (`40 min easy`) is no stretch.
    return _found(
        piece, f"{name} stretch", lexicon, lambda words: None if words == "stretch" else lexicon.exact(words)
    )


def _is_qualified(piece: Piece, name: str, lexicon: Lexicon) -> bool:
    """Whether it is a name whose words stand among words that only say with what or how; these are a note."""
    found = qualified(name, lexicon)
    if found is None:
        return False
    held = HELD.search(name)
    _settle(piece, _Candidate(found.meaning.spelling, (), held["i"] if held else ""), found.meaning, lexicon)
    piece.notes += (found.left,) if found.left else ()
    return True


def _is_spotted(piece: Piece, words: str, lexicon: Lexicon) -> bool:
    """Whether a name stands among words that only say where, with whom or how, which are kept as a note."""
    found = spotted(words, lexicon)
    if found is None or found.is_open or not (_is_counted(piece) or _is_plain(found)):
        return False
    _take(piece, found, lexicon)
    piece.notes += tuple(
        said for one in found.after.split(" , ") if not _DAY.fullmatch(said := one.strip(" ,"))
    )
    return True


def read_open_name(piece: Piece, words: str, lexicon: Lexicon) -> None:
    """Finds the movement of a line that stands before numbers nobody can place; these stay unread."""
    found = spotted(" , ".join(sides_of(words)), lexicon)
    if found and _is_counted(piece):
        _take(piece, found, lexicon)
        piece.unread = found.after.strip(" ,")


def _is_counted(piece: Piece) -> bool:
    return bool(piece.amount or piece.sets or piece.most or piece.loads_kg)


def _take(piece: Piece, found: Spotted, lexicon: Lexicon) -> None:
    piece.is_loose = True
    held = HELD.search(f"{found.before} {found.after}")
    _settle(piece, _Candidate(found.meaning.spelling, (), held["i"] if held else ""), found.meaning, lexicon)
    before = without_filling(found.before)
    piece.notes += (before,) if before else ()


def _is_plain(found: Spotted) -> bool:
    """Whether a name that nobody told the amount of is hardly said in passing: `wall walks over the line`."""
    behind = found.after.split() or [""]
    return not found.before and len(behind) <= _MOST_BESIDE and is_placing(behind[0])


def _is_manner(piece: Piece, name: str) -> bool:
    """Whether it only says how, of what stands before it: `- 8 slow`."""
    if not (piece.says_anything and _MANNERS.fullmatch(name)):
        return False
    piece.notes += (name,)
    return True


def _is_remark(piece: Piece, name: str, lexicon: Lexicon) -> bool:
    """Whether it only says where or how, of what stands before it; not `back squat 100`."""
    if (
        lexicon.exact(_NUMBER_BEHIND.sub("", name))
        or not piece.says_anything
        or piece.most
        or not is_placing(name.split(maxsplit=1)[0])
    ):
        return False
    piece.notes += (name,)
    return True


def _found(piece: Piece, name: str, lexicon: Lexicon, *attempts: Callable[[str], Meaning | None]) -> bool:
    """Whether an attempt knows the name or a way to read it; then the piece has its meaning."""
    candidates = [_Candidate(name)] if lexicon.exact(name) else _candidates(name, lexicon)
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


def _candidates(name: str, lexicon: Lexicon) -> list[_Candidate]:
    whole = _Candidate(name)
    held = HELD.search(name)
    ways = [whole]
    if held:
        rest = _tidy(HELD.sub(" ", name))
        many = bool(re.search(r"\b(?:two|double|2)\b", held[0]))
        full = _tidy(f"{name[: held.start()]} {held['i']} {name[held.end() :]}")
        told = (_in_full(name, held, lexicon), full, rest)
        ways += [_Candidate(one, (), held["i"], many) for one in told]
    if SIDE.search(name):
        # `left side plank` is a side plank on the left, `left arm row` a row.
        ways += [replace(way, name=_tidy(side.sub(" ", way.name))) for side in (_LEFT, SIDE) for way in ways]
    if _MANNERS.search(name):
        ways += [
            replace(way, name=_tidy(_MANNERS.sub(" ", way.name)), manners=tuple(_MANNERS.findall(way.name)))
            for way in ways
        ]
    return [way for way in dict.fromkeys(ways) if way.name]


def _in_full(name: str, held: re.Match[str], lexicon: Lexicon) -> str:
    """`db hang snatch` with what is held as the catalogue calls it."""
    thing = lexicon.catalogue.implement_by_name(held["i"])
    return name if thing is None else name[: held.start("i")] + thing.id + name[held.end("i") :]


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
