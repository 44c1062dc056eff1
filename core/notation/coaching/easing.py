"""Words about doing less for a while: `easy week`, `an easy week for Ilse`, `back after a month off`."""

import re
from collections.abc import Iterable
from datetime import date, timedelta
from typing import Final, Literal, NamedTuple

from core.notation.in_full import in_full
from core.notation.people import spellings
from core.notation.quantities import NUMBER_WORDS
from core.notation.text import plain

_LONGEST: Final = 100

_EASY: Final = frozenset(re.split(" ", "easy easier light lighter deload deloading recovery"))
_ENDS: Final = frozenset(re.split(" ", "no not end stop cancel drop over off done call undo remove without"))
# What may stand around an easy week without making it something else; the name, if there is one, is `@`.
_AROUND: Final = frozenset(
    re.split(
        " ",
        "@ @'s and both a an the this next coming week weeks for everybody everyone all of us them me group let's do"
        " does have has having make give gets get it it's is will be being going to should i i'll i'd i'm we we'll we'd"
        " you need needs want wants like would like can could may might one take taking go training now please after"
        " actually sorry ok okay so then well folks team guys think really from starting starts as on mon monday use",
    )
)

# How long, and what says that it was a break.
_COUNTS: Final = "|".join(sorted((word for word in NUMBER_WORDS if " " not in word), key=len, reverse=True))
_SPAN: Final = re.compile(
    rf"\b(?P<count>an?|[0-9]{{1,2}}|{_COUNTS}|few|couple of) (?P<unit>day|week|month|year)s?\b"
)
_BREAK: Final = tuple(
    re.compile(pattern)
    for pattern in (
        r"\b(?:back|first (?:session|time|training)|start(?:ing)? again|returning)\b.*\b(?:after|from|since|in) .*"
        + _SPAN.pattern,
        (
            r"\b(?:back|first (?:session|time|training)(?: back)?|start(?:ing)? again|returning)\b.*"
            r"\b(?:after|from|since) (?:my |the |a |an )?(?:long |longer |big |little |short )?"
            r"(?:break|pause|holidays?|vacation|time off)\b"
        ),
        r"\b(?:been|was) (?:away|off|out)(?: from training)? (?:for )?.*" + _SPAN.pattern,
        (
            r"\b(?:haven't|have not|didn't|did not|not) "
            r"(?:trained|train|worked out|work out|done (?:anything|any training|much))\b.*" + _SPAN.pattern
        ),
        r"^i(?:'ve| have)? had a (?:long |longer |big )?(?:break|pause)(?: from training)?$",
    )
)
_NOT_BACK: Final = re.compile(
    r"\b(?:hurts?|pain|painful|ache[sd]?|aching|sore|injur\w+|surgery|operation|baby)\b|\?"
)
_DAYS: Final = {"day": 1, "week": 7, "month": 30, "year": 365}


# `Is it an easy week?` calls none; `can I have an easy week?` does.
_ASKS_WHETHER: Final = re.compile(
    r"^(?:so |and |hi |hey )*(?:is|isn't|are|aren't|was|will|do (?:i|we)|does|who|whose|what|when|which|why|how)\b"
)

# Nor does who wonders about it.
_WONDERS: Final = re.compile(r"\b(?:shall|should) (?:i|we)\b|\b(?:do|would) you think\b|\bworth\b")

# What says of weeks without a word that there was a break in them, or that there was none.
_PAUSED: Final = re.compile(
    r"\b(?:holidays?|vacation|ill|sick|injured|flu|covid|travel\w*|away|abroad|time off|off|break|pause|busy|nothing"
    r"|hardly|barely|not (?:really|much|at all)|no time|didn't|haven't)\b"
)
_TRAINED: Final = re.compile(
    r"\b(?:(?:i|i've|have|still|kept) (?:also |still |been )?"
    r"(?:train(?:ed|ing)|ran|run(?:ning)?|swam|worked out|lifted weights)"
    r"|on my own|in the gym|elsewhere|as usual)\b"
)
_CLAUSE: Final = re.compile(r"[,;.!:]|\b(?:but|so|and|because|since|as)\b")
_AS_USUAL: Final = re.compile(
    r"^(?:(?:ok|okay|please|can we|can i|let's|i'm|i am|all|everything|same|go|is|train|me|back|to|i want"
    r"|i'd like)\W+)*(?:as usual|(?<=back to )normal)(?:\W+(?:again|after all|please|now|from now on|for me|then))*$"
)


_MORE: Final = re.compile(
    r"^(?:(?:i|i'm|i'd|i think|it's|this|that|is|can|could|may|like|to|do|have|want|feel|a bit|a little|now|ok|so)\W+)*"
    r"(?:ready for more|(?:a bit|a little|some|something) more|(?:far |much |a bit )?too gentle|less gentle|more)"
    r"(?:\W+(?:for me|now|already|today|please|then|work))*\W*$"
)


class EasyWeekWish(NamedTuple):
    """`names`: whose week; none: the speaker's, or everybody's. `mine`: the speaker means themselves."""

    names: tuple[str, ...]
    when: Literal["this", "next"]
    yes: bool
    mine: bool


# Who is named behind one of these is not meant.
_EXCEPT: Final = re.compile(
    r"\b(?:except|but not|apart from|other than|without|all but|everyone but|everybody but)\b"
)


def easy_week_told(text: str, names: tuple[str, ...]) -> EasyWeekWish | None:
    """Which week is meant by words that are understood to be of an easy one; None where they may mean its end."""
    words = text.lower()
    if (
        _EXCEPT.search(words)
        or ("?" in words and _WONDERS.search(words))
        or _ENDS & set(re.findall(r"[\w']+", words))
    ):
        return None
    return EasyWeekWish(names, _when(words), yes=True, mine=False)


def read_easy_week(text: str, names: Iterable[str] = ()) -> EasyWeekWish | None:
    """The wish for an easy week, or for its end; None where it is about something else."""
    words = _words(text)
    if words is None or _ASKS_WHETHER.match(words) or ("?" in words and _WONDERS.search(words)):
        return None
    whose, words = _named(words, dict(spellings(names)))
    spoken = set(re.findall(r"[@\w']+", words))
    if not spoken & _EASY or not spoken & {"week", "deload"} or spoken - _EASY - _ENDS - _AROUND:
        return None
    mine = bool(spoken & {"i", "i'll", "i'd", "i'm", "me"})
    return EasyWeekWish(whose, _when(words), yes=not spoken & _ENDS, mine=mine)


def read_own_easy_week(text: str) -> EasyWeekWish | None:
    """The same, said by an athlete among other words: `I'm shattered, so an easy week please`."""
    words = _words(text)
    if words is None or "?" in words:
        return None
    found = (read_easy_week(one) for one in _CLAUSE.split(words))
    return next((one for one in found if one is not None), None)


def asks_for_as_usual(text: str) -> bool:
    """`As usual again please`, `back to normal`."""
    words = _words(text)
    return words is not None and bool(_AS_USUAL.match(words))


def asks_for_more(text: str) -> bool:
    """`A bit more please`, `this is too gentle`; nothing about a line or a weight."""
    words = _words(text)
    return words is not None and bool(_MORE.match(words))


def says_had_a_break(text: str) -> bool | None:
    """Whether weeks without a word were a break, to who was asked about them; None where it can't be told."""
    words = _words(text)
    if words is None or "?" in words:
        return None
    paused, trained = bool(_PAUSED.search(words)), bool(_TRAINED.search(words))
    return None if paused == trained else paused


def monday_of(day: date) -> date:
    """The Monday of the week that a day lies in."""
    return day - timedelta(days=day.weekday())


def read_break(text: str) -> int | None:
    """How many days somebody says they were away for; 0 where they don't say how long, None where they weren't."""
    words = _words(text)
    if words is None or _NOT_BACK.search(words) or not any(one.search(words) for one in _BREAK):
        return None
    return read_span(words) or 0


def read_span(words: str) -> int | None:
    """How many days `two weeks` are; None where no length of time is told."""
    span = _SPAN.search(words)
    return _number(span["count"]) * _DAYS[span["unit"]] if span else None


def _number(count: str) -> int:
    """How many of the unit; a few are three."""
    if count in {"a", "an"}:
        return 1
    if count in {"few", "couple of"}:
        return 3 if count == "few" else 2
    return int(count) if count.isdigit() else int(NUMBER_WORDS[count])


def _words(text: str) -> str | None:
    words = in_full(re.sub(r"\s+", " ", plain(text).replace("\u2019", "'").casefold()).strip(" .!"))
    words = re.sub(r"^(?:please,? |hi,? |hey,? )+|(?:,? (?:please|thanks|everybody|folks))+$", "", words)
    return words if words and len(words) <= _LONGEST and "\n" not in text.strip() else None


def _when(words: str) -> Literal["this", "next"]:
    return (
        "next"
        if re.search(
            r"\b(?:next|the coming) week\b|\b(?:start(?:ing|s)?|from|as of)(?: on)? (?:next )?mon(?:day)?\b",
            words,
        )
        else "this"
    )


def _named(words: str, known: dict[str, str]) -> tuple[tuple[str, ...], str]:
    """Everybody who is named, and the words with `@` in their places."""
    found: list[str] = []
    for spelling in sorted(known, key=len, reverse=True):
        words, times = re.subn(rf"(?<!\w){re.escape(spelling)}(?!\w)", "@", words)
        found += [known[spelling]] if times else []
    return tuple(found), words
