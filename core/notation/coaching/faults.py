"""What a coach notes about how one athlete moves: `Ilse rounds her back in deadlifts`, `Bo: swings at most 16 kg`."""

import re
from collections.abc import Iterable
from decimal import Decimal
from typing import Final

from core.measures import MassUnit
from core.movements.lookup import Catalogue
from core.notation.people import find_name
from core.notation.quantities import MASS_UNIT, NUMBER, kilograms
from core.notation.second_person import BODY, to_them
from core.notation.text import plain
from core.values import Value

_LONGEST: Final = 200
_HEAVIEST_KG: Final = 400
_LONGEST_NAME: Final = 4

# With the name as `@`. Whoever begins so notes something, whatever follows.
_NOTED: Final = r"(?:please )?(?:(?:technique |coaching )?(?:note|cue) (?:for|on|about|to) @)[\s:,\u2013-]*"
_CUED: Final = r"(?:please )?(?:(?:remind|tell) @ to|make sure (?:that )?@)\s+"
_WATCHED: Final = (
    r"(?:please )?(?:watch(?: out for)?|mind|(?:be )?careful with|(?:keep )?an eye on) @[\s:,\u2013-]*"
)


def _mass(place: int) -> str:
    return rf"(?:(?P<two{place}>2|two)\s?x\s?)?(?P<n{place}>{NUMBER})\s?(?P<u{place}>{MASS_UNIT})"


_DOES: Final = r"(?:(?:should |must |may |can )?(?:do|does|go|goes|uses?|lifts?|stays?|stay) )?(?:with )?"
_NO_MORE: Final = (
    r"(?:(?:should|must|may|can)(?: not|n't) (?:go|do|lift|use)|(?:no|not|never|nothing)) "
    r"(?:more than|over|above|heavier than)"
)
_CAP: Final = re.compile(
    rf"(?:\b(?:with )?{_DOES}(?:at (?:the )?most|{_NO_MORE}|up to|max(?:imum)?(?: of)?|cap(?:ped)?(?: (?:at|of|to))?"
    rf"|limit(?:ed)?(?: (?:at|of|to))?|under|below)[\s:]+{_mass(1)}"
    rf"|(?<![0-9.]){_mass(2)} (?:at (?:the )?most|max(?:imum)?|tops|or less)\b)(?: (?:for now|in total|altogether))?",
    re.IGNORECASE,
)
_CAP_OF: Final = re.compile(
    rf"^(?:please )?(?:cap|limit|keep) (?P<what>@.*?) (?:at|to|under|below) (?:most )?{_mass(1)}",
    re.IGNORECASE,
)
# Where something happens above a load, that load is the most.
_FROM: Final = re.compile(
    rf"\b(?:(?:when|if|once|with|at|as soon as) )?(?:it'?s |it is |she goes |he goes |they go )?(?:over|above|beyond"
    rf"|more than|heavier than) {_mass(1)}",
    re.IGNORECASE,
)
# What is said of how somebody moves, and hardly of anything else.
_MOVES: Final = re.compile(
    rf"\b(?:{BODY}|depth|deep|range|half reps?|rush\w*|too (?:fast|slow|low|high|wide|narrow|far|early|late)|bounc\w+"
    r"|shallow|form|technique|kip\w*|land(?:s|ing)|sag\w*|arch\w*|round(?:s|ed|ing)|flar\w+|cav(?:es|ing)|collaps\w*|lean\w*|twist\w*"
    r"|breath|lock(?:s|ing)? (?:out|her|his|their)|lockout|wobbl\w*|balance|posture|momentum)\b",
    re.IGNORECASE,
)
# What hurts is for its owner to tell; what was done is a score; what shall be done is an order.
_HEALTH: Final = re.compile(
    r"\b(?:hurt\w*|pain\w*|sore\w*|ach(?:es?|ing|y)|injur\w*|bad (?!form|technique|habit|posture)|problems?|trouble"
    r"|issues?|strain\w*|sprain\w*|pregnan\w*|surger\w*|operat\w*|broke\w*|torn|tweak\w*|stiff\w*|swollen|doctor|physio\w*|sick"
    r"|ill|arthr\w*|hernia\w*|disc)\b",
    re.IGNORECASE,
)
_TOLD: Final = re.compile(
    r"@(?: also| only| just)? (?:did|got|made|managed|finished|scored|lifted|has done|wants?|will|won't)\b",
    re.IGNORECASE,
)
_ELSE: Final = re.compile(
    r"^\W*(?:please )?(?:(?:can|could|would) (?:you|we) )?(?:make|change|swap|replace|exchange|trade|switch|give|let"
    r"|put|turn|add|drop|remove|skip|hold|show|tell|ask|remind|allow|stop|release|take|score|result|time|move|cancel|lift"
    r"|no|avoid|without)\b"
    r"|@(?: also| only| just)? (?:can(?!')|could(?!')|does(?!n)|no|needs? (?!to)|should (?:do|get|have|rest|run))\b"
    r"|@ (?:can't|cannot|can not) (?!keep|get|hold|lock|stay|reach|control|open|brace)"
    r"|\binstead\b|\b(?:on|from|off) (?:the |her |his |their )?knees\b|\b(?:any ?more|no longer)\b",
    re.IGNORECASE,
)
_PRAISE: Final = re.compile(
    r"\b(?:great|excellent|perfect(?:ly)?|beautiful\w*|lovely|proud|well done|nice(?:ly)?|awesome|so good|very good)\b",
    re.IGNORECASE,
)
# What somebody is able to is no fault, whatever it is noted under.
_ABLE: Final = re.compile(
    r"^[\W@]*(?:(?:he|she|they)\b\s*)?(?:also |now |already )?(?:can\b(?!'| ?not)|is able to\b)",
    re.IGNORECASE,
)
_NOT: Final = re.compile(r"n't\b|\b(?:not|never|hardly|no)\b", re.IGNORECASE)
_LEADS: Final = (_NOTED, _CUED, _WATCHED)
_BEFORE: Final = re.compile(
    r"\b(?:in|on|during|with|for|of|at|when|while|doing|as|if)\b(?:\s+(?:the|her|his|their|all|any|every|each|she|he|they|is"
    r"|are|does|do|doing|bottom|top|start|end|of|heavy)\b(?:'s)?|\s+@)*\s*$",
    re.IGNORECASE,
)


class ToldFault(Value):
    """`words` as the athlete will read them; empty where a cap is all. Without a movement, or words and cap, ask."""

    name: str
    movement: str | None
    words: str
    cap_kg: Decimal | None


class _Found(Value):
    movement: str
    start: int
    end: int


def read_fault(text: str, names: Iterable[str], things: Catalogue) -> ToldFault | None:
    """What a coach notes about one of these people; None for everything else that is said of them."""
    words = plain(text.replace("\u2019", "'"))
    named = find_name(words, names)
    if (
        named is None
        or len(words) > _LONGEST
        or "?" in words
        or "\n" in text.strip()
        or _HEALTH.search(words)
    ):
        return None
    name, said = named
    cap, rest = _take_cap(said)
    begun = next((match for lead in _LEADS if (match := re.match(lead, rest, re.IGNORECASE))), None)
    if begun is None and not _is_fault(rest, cap):
        return None
    if begun is not None and begun.re.pattern == _CUED and not _MOVES.search(rest):
        return None
    about = rest[begun.end() :] if begun else re.sub(r"^\W*@[\s:,\u2013-]*", "", rest)
    if _ABLE.match(about):
        return None
    return _told(name, re.sub(r"\bfor @", " ", about), cap, begun, things)


def _told(
    name: str, about: str, cap: Decimal | None, begun: re.Match[str] | None, things: Catalogue
) -> ToldFault | None:
    lead = begun.re.pattern if begun else None
    found = find_movement(about, things)
    words = to_them(_without(found, about) if found else about)
    if lead == _CUED:
        words = words.removeprefix("you ")
    if lead != _NOTED and (found is None or not (words or cap)):
        return None
    return ToldFault(name=name, movement=found.movement if found else None, words=words, cap_kg=cap)


def _is_fault(rest: str, cap: Decimal | None) -> bool:
    """Whether what is said of somebody speaks of how they move, or of how much they may have in their hands."""
    if _TOLD.search(rest) or re.search("[0-9]", rest):
        return False
    if cap is not None:
        return True
    praised = _PRAISE.search(rest) and not _NOT.search(rest)
    return bool(_MOVES.search(rest)) and not _ELSE.search(rest) and not praised


def _take_cap(said: str) -> tuple[Decimal | None, str]:
    """The most in the hands, in kg, and the words without it."""
    whole = _CAP_OF.search(said)
    match = whole or _CAP.search(said) or (_FROM.search(said) if _MOVES.search(said) else None)
    if match is None:
        return None, said
    told = match.groupdict()
    place = "1" if told["n1"] else "2"
    kg = kilograms(told[f"n{place}"], told[f"u{place}"], MassUnit.KG) * (2 if told[f"two{place}"] else 1)
    left = f"{whole['what'] if whole else said[: match.start()]} {said[match.end() :]}"
    left = re.sub(r"^(?:please )?let (@)(?: (?:do|use|lift))?", r"\1", left, flags=re.IGNORECASE)
    return (kg, left) if 0 < kg <= _HEAVIEST_KG else (None, said)


def _without(found: "_Found", about: str) -> str:
    """The words without the movement; where it was what they speak of, with something in its stead."""
    before, after = about[: found.start].strip(), about[found.end :].strip()
    if not before and (verb := re.match(r"(is|are|looks?|goes|go)\b", after)):
        return f"{'they' if verb[0] in {'are', 'look', 'go'} else 'it'} {after}"
    if not after:
        before = re.sub(r"\b(?:her|his|their|the)$", "them", before, flags=re.IGNORECASE)
    return f"{before} {after}"


def find_movement(words: str, things: Catalogue) -> _Found | None:
    """The movement that is named, and where: first one that something happens `in`, then the longest."""
    spans = [match.span() for match in re.finditer(r"[\w'-]+", words)]
    found: list[tuple[bool, int, int, _Found]] = []
    for first, (start, _) in enumerate(spans):
        for count, (_, end) in enumerate(spans[first : first + _LONGEST_NAME], 1):
            movement = _named(words[start:end], things)
            if movement is not None:
                before = _BEFORE.search(words[:start])
                place = _Found(movement=movement, start=before.start() if before else start, end=end)
                found.append((before is not None, count, start, place))
    return max(found, key=lambda one: one[:3])[3] if found else None


def _named(typed: str, things: Catalogue) -> str | None:
    """The movement of a name; `squatting` and `pressing` are named as well."""
    stem = typed[:-3] if typed.lower().endswith("ing") else ""
    once = stem[:-1] if stem[-1:] == stem[-2:-1] else ""
    named = (
        things.by_name(spelled) for spelled in (typed, stem, once, f"{stem}e" if stem else "") if spelled
    )
    return next((one.movement.id for one in named if one is not None), None)
