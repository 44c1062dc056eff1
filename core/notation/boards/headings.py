"""What stands before the training itself: headings of blocks, list bullets, date and title."""

import datetime as dt
import re
from typing import Final, NamedTuple

from dateutil import parser as dates

from core.notation.calendar.moments import DAY_WORD
from core.sessions.values import BlockKind

_KINDS = {
    BlockKind.WARM_UP: r"(?:general |specific )?warm(?:ing)?[ \-]?up|warming(?=\s?:)"
    r"|w[/\-]?up?(?=\s?:|\s*$|\s+[0-9]|\s-\s)|activation|movement prep",
    BlockKind.SKILL: r"skills?(?: work| practice)?|practi[cs]e(?=\s?[:(]|,\s[0-9]|\s[0-9])|technique(?: work)?",
    BlockKind.STRENGTH: r"strength(?: work| training)?|lifting|force(?=\s?:)|lift(?=\s?:|\s*$)|str(?=[.:])",
    BlockKind.MAIN: r"main(?: part| set| session| block| work| course| event)?|workout|work(?=\s*$)|conditioning"
    r"|con(?:d)?(?=[.:])|finisher|(?:assist(?:ance)?|accessor(?:y|ies)|acc(?=[,:.]))(?: work)?",
    BlockKind.COOL_DOWN: r"cool(?:ing)?[ \-]?down|(?:c|w(?=/))[/\-]?d(?=\s?:|\s*$|\s+[0-9]|\s-\s)|cool[ \-]?down only"
    r"|(?:(?:just |some |gentle |easy |light ){1,3})?stretch(?:ing|es)?",
}
_HEADINGS = {
    kind: re.compile(
        rf"^[\W_]*(?:part |block |for (?:the |a )?)?(?:[a-f1-9][).:]\s*)?(?:{names})"
        r"(?: (?:[a-f1-9]|[1-9][0-9](?=[\W_]*$)))?"
        r"(?=[\W_]*$|\s*[:(,;.\-|~*]|\s+[0-9]|\s{2,}|(?:(?<=warm.up)|(?<=warmup)|(?<=cool.down)|(?<=cooldown))\s+(?!is\b|was\b|flow\b)[a-z])"
    )
    for kind, names in _KINDS.items()
}
_BEHIND = re.compile(
    r"(?<=[a-z0-9])[\s,;\-]+(?:(?:to|as(?: an?)?|for(?: the| an?)?)\s)?(?:(?P<warm>warm[ \-]?up|w/?up?)|cool[ \-]?down"
    r"|c/?d|(?:(?<=walk )|(?<=jog )|(?<=easy ))to finish)\b"
    r"(?=[\W_]*$)"
)
_PART = re.compile(r"^[\W_]*(?:part|block|piece|section)\s+(?:[a-f]|[1-9])\b\s*[:.)\-]*|^[\W_]*[a-f][\W_]*$")
_MONTHS = (
    "jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?"
    "|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?"
)
_DAY_NAME = rf"(?:{DAY_WORD}|day [1-7])"
# `Monday:`, `Tues -`; with its date it needs no mark behind it. One that is all there is may say in a bracket what of.
_DAY = re.compile(
    rf"^[\W_]*{_DAY_NAME}"
    rf"(?:,?\s[0-9]{{1,2}}(?:[:.][0-9]{{2}})?\s?(?:am|pm|h|o'clock)?|(?P<dated>,?\s(?:the\s)?[0-3]?[0-9](?:(?:st|nd|rd|th)\b(?:\s(?:of\s)?(?:{_MONTHS})\b)?|\.?\s(?:{_MONTHS})\b)))?"
    r"\s?(?::|-(?=\s)|(?(dated)|(?P<bare>(?=[\s.]*(?:$|\([^()]*\)[\s:.]*$)))))\s*"
)
_DAY_INSIDE = re.compile(rf"(?<=[\w)\"'][.;,!?]\s){_DAY_NAME}\s?(?::(?=\s)|-(?=\s))")
BULLET = re.compile(
    r"^\s*(?:[*>~#=|.]+\s*|-+\s*(?![0-9]*\s*$)|[a-z][1-9]?[.)]\s+|[a-h]\s?[\-/]\s+|[a-z][1-9]:\s+|(?:[a-wyz][1-9]\s|[a-h]\s{2})\s*(?=\S)"
    r"|\((?:i{1,3}|iv|v)\)\s+|sets? [0-9]{1,2}\s?[:\-.)]\s*|[1-9][a-f][.):]?\s+|\[[ x]?\]\s*)+"
)
_LETTERED = re.compile(r"^\s*([a-h])(?:[.)]|\s?[\-/])\s+(?=\S)")
_SUPERSET = re.compile(r"^[\s*\-]*([a-wyz])[1-9][.):]?\s")
_NUMBERED = re.compile(
    r"^\s*([0-9]{1,2})(?:(?:st|nd|rd|th)(?=:|\s-\s))?(\s?[.)]\s+|:\s+|\s?-\s+|\s\|\s)(?=(\S))"
)

# `2 12 burpees`: two numbers before a name are one in a list and how many
_SPACED = re.compile(r"^\s*([0-9]{1,2})(\s)(?=([0-9]{1,3}\s?(?:cal|k?m|s|sec)?\s?[a-z]))")

_MONTHS_A_YEAR = 12
_WEEKDAY = rf"(?:{DAY_WORD}[ ,.\-]{{1,3}})?"
DATE = re.compile(
    rf"\b{_WEEKDAY}(?:(?P<iso>20[0-9]{{2}}-[01][0-9]-[0-3][0-9])"
    rf"|(?P<dotted>[0-3]?[0-9]\.[01]?[0-9]\.20[0-9]{{2}})"
    rf"|(?P<slashed>[0-3]?[0-9]/[0-3]?[0-9]/20[0-9]{{2}})"
    rf"|(?P<named>[0-3]?[0-9](?:st|nd|rd|th)? (?:of )?(?:{_MONTHS})\.?,? 20[0-9]{{2}}"
    rf"|(?:{_MONTHS})\.? [0-3]?[0-9](?:st|nd|rd|th)?,? 20[0-9]{{2}}))(?![0-9])"
)


# A day without its year is only a title.
BARE_DATE = re.compile(
    rf"^[\W_]*{_WEEKDAY}(?:[0-3]?[0-9](?:st|nd|rd|th)?\.? (?:of )?(?:{_MONTHS})"
    rf"|(?:{_MONTHS}) [0-3]?[0-9](?:st|nd|rd|th)?)[\W_]*$"
)
# The only month that is something to do.
IN_MARCH = re.compile(rf"\b{DAY_WORD}[ ,.\-]{{1,3}}[0-3]?[0-9](?:st|nd|rd|th)?\.? (?:of )?march\b")
_LABEL = re.compile(
    r"(?:[\W_]*(?:(?:today'?s )?(?:workout|session|training)(?: of the day)?|title|name)\s?(?::|-\s)\s*)+"
)
# A title in quotes; inches and seconds have no letters in front.
QUOTED = re.compile(r"[^\w\"']*[\"']([^\W\d_][^\"]{2,60}?)[\"'](?!\w)[\s:.\-]*")

THEN = re.compile(
    r"^[\W_]*(?:and |straight |directly )?(?:then|into|followed by)\b(?: (?:lighter|heavier)(?=\s?:))?[\s:;,.\-]*"
)
# Whoever begins so has done with what stood before.
AFTERWARDS = re.compile(
    r"^[\W_]*(?:and |then )?(?:at the (?:very )?end|to (?:the )?end|finally|afterwards|after (?:this|that)"
    r"|last(?:ly)?(?=,)|(?:we'?(?:ll| will)?|you) (?:finish|end|close) with)\b[\s:;,.\-]*(?=.*\w)"
)
WHERE = re.compile(
    r"^[\W_]*(?:(?:buy|cash)[ \-]?(?P<way>in|out)\b|(?P<first>start|begin)(?: with)?\s?:|(?:end|finish)(?: with)?\s?:"
    r"|finish(?: off)? (?:with\b|w\b/?))"
    r"[\s:;,\-]*"
)
ASIDE = re.compile(
    r"^[\W_]*(?:notes?|nb|n\.b\.|coach'?s notes?|tip|remember|scaling|options?|equipment)\s?[:\-]\s?(.+)$"
)

# What some can't do, or haven't got, is asked in front of what they do instead: `no rower? 400 m run`.
LACKS: Final = (
    r"(?:no|without(?: an?)?|ca(?:n'?|nno)t(?: do)?|do(?:n'?| no)t have(?: an?)?|have(?:n'?| no)t(?: got)?(?: an?)?)"
    r" [a-z][a-z '\-]{1,24}\?"
)
FOR_SOME = re.compile(rf"(?:^\W*|(?<=[.;!]\s)){LACKS}[^.;]*[^\W_][^.;]*")

BETWEEN = re.compile(r"^\W*between\s?:\s?(.+?)\W*$")


def label(text: str) -> tuple[int, int]:
    """The stretch of words like `Workout:` that only announce a title."""
    match = _LABEL.match(text)
    return match.span() if match else (0, 0)


def tidy_title(text: str) -> str:
    """A title without the marks around it."""
    return " ".join(text.split()).strip(' *_#=~:.-"')


def heading(text: str) -> tuple[BlockKind, int] | None:
    """Kind of block that a row opens, and where the heading ends."""
    for kind, pattern in _HEADINGS.items():
        if match := pattern.search(text):
            return kind, match.end()
    return None


# What says no more than the kind does.
_PLAIN = re.compile(
    r"(?:warm(?:ing)?[ \-]?up|w[/\-]?up?|skills?|strength|str|main(?: part)?|workout|work|warming"
    r"|cool(?:ing)?[ \-]?down|[cw][/\-]?d|lift|force|con|cond|fin|acc)(?: (?:[a-f1-9]|[1-9][0-9]))?"
)


def own_name(heading: str) -> str | None:
    """What a coach calls a part, where that says more than its kind: `Finisher`, `Accessory work`."""
    name = " ".join(
        re.sub(r"^[\W_]*(?:part |block )?(?:[a-f1-9][).:]\s*)?", "", heading, flags=re.IGNORECASE).split()
    )
    name = name[day(name.lower()) :].strip(" *_#=~:.-([,;|")
    plain = not name or _PLAIN.fullmatch(name.lower()) or "stretch" in name.lower()
    return None if plain else name.capitalize() if name.isupper() else name[:1].upper() + name[1:]


def heading_behind(text: str) -> tuple[BlockKind, tuple[int, int]] | None:
    """Kind of block that a row says behind its work, and where: `5 min easy to cool down`."""
    match = _BEHIND.search(text)
    return match and ((BlockKind.WARM_UP if match["warm"] else BlockKind.COOL_DOWN), match.span())


def part(text: str) -> int:
    """Where a bare `Part B:` ends; 0 if there is none."""
    match = _PART.match(text)
    return match.end() if match else 0


def day(text: str, *, bare: bool = False) -> int:
    """Where the `Monday:` of a pasted week ends; 0 if there is none. `bare`: also where it is all there is."""
    match = _DAY.match(text)
    return match.end() if match and (bare or match["bare"] is None) else 0


def days_in(text: str) -> list[int]:
    """Where the days of a week begin that stand in one row: `mon: 5k easy. tues: rest. wed: 3 x 10 squats`."""
    found = [0] * bool(day(text)) + [match.start() for match in _DAY_INSIDE.finditer(text)]
    return found if len(found) > 1 else []


def superset(text: str) -> str | None:
    """The letter of `A1` and `A2`, which are done in turn."""
    match = _SUPERSET.match(text)
    return match[1] if match else None


class Bullet(NamedTuple):
    """Where a bullet ends, and its number in a list that is numbered or lettered."""

    end: int
    number: int | None = None


def bullet(text: str, ordinal: int) -> Bullet:
    """The bullet of a row, `1.`, `2)` and `3:` too, `ordinal` being the number of the one before.

    A number is a bullet only if it counts on or, behind a dot, an amount follows: `10. push-ups` are ten.
    """
    end = match.end() if (match := BULLET.match(text)) else 0
    numbered = _NUMBERED.match(text[end:]) or _SPACED.match(text[end:])
    if numbered is None:
        lettered = _LETTERED.match(text)
        return Bullet(end, ord(lettered[1]) - ord("a") + 1 if lettered else None)
    counts_on = int(numbered[1]) in {1, ordinal + 1}
    if counts_on or (numbered[3].isdigit() and numbered[2].strip() in {".", ")"}):
        return Bullet(end + numbered.end(), int(numbered[1]))
    return Bullet(end)


def read_date(match: re.Match[str]) -> dt.date | None:
    """The date of a `DATE` match; None where it can't be told (`03/04/2026`) or doesn't exist."""
    try:
        if match["iso"]:
            return dt.date.fromisoformat(match["iso"])
        if match["dotted"]:
            return dates.parse(match["dotted"], dayfirst=True).date()
        if match["named"]:
            return dates.parse(match["named"].replace(" of ", " ")).date()
        return _slashed(match["slashed"])
    except (ValueError, OverflowError):
        return None


def _slashed(text: str) -> dt.date | None:
    first, second, year = (int(part) for part in text.split("/"))
    if max(first, second) <= _MONTHS_A_YEAR and first != second:
        return None
    day, month = (first, second) if second <= _MONTHS_A_YEAR else (second, first)
    return dt.date(year, month, day)
