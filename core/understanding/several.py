"""A coach's message of several wishes, cut where the next begins: by its verb, or the name of whom it is about."""

import re
import tomllib
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from functools import cache
from itertools import dropwhile
from pathlib import Path
from typing import Any, Final, NamedTuple

from core.notation.calendar.moments import DAY_WORD
from core.notation.people import find_name, spellings

# Where a wish may end: behind a sentence or a comma, or before a joint.
_GAP: Final = re.compile(
    r"(?P<hard>(?<=[.!?])\s+|\s*;\s*|\s*\n+\s*)|\s*,\s*|\s+/\s+|\s+(?=(?:and|n|&|also|then|plus|but)\s|\+\s+[^\W\d])",
    re.IGNORECASE,
)
_JOINT: Final = re.compile(r"^\W*(?:(?:and|n|&|\+|also|then|plus|but)\s+)+", re.IGNORECASE)
# What stands behind an order and tells why: `no rows he has a bad disc`; or in front: `he has one so no rows`.
_WHY: Final = re.compile(
    r"(?<!\blet)(?<!\buntil)(?<!\btill)(?<!\bif)(?<!\bwhen)(?<!\bwhat)(?<!\bthat)(?<!\bthan)(?<!\bas)\s+"
    r"(?=(?:because|cause|cos|cuz|coz|since|as)\s+(?:he|she|they|of|her|his|their)|due to\s"
    r"|(?:he|she|they)(?:['\u2019]?(?:s|re|ve))?\s+[a-z]{2,}"
    r"|(?:his|her|their)\s+(?:[a-z]+\s+)?[a-z]+(?:['\u2019]s|\s+(?:is|are|isn['\u2019]?t"
    r"|hurts?|aches?|plays? up))\s)"
    r"|\s+so\s+(?=(?:no|not|only|skip|leave|give|please|pls|easy|go)\s)",
    re.IGNORECASE,
)
_WORD: Final = re.compile(r"@|\w+")
_DATE: Final = re.compile(r"[0-9]{1,2}(?:st|nd|rd|th)?")
_TELL_ALL: Final = re.compile(
    r"\W*(?:(?:please|pls|can you|could you)\s)*(?:tell|let|inform|say (?:it )?to|write (?:it )?to)\s"
    r"(?:everyone|everybody|them(?: all)?|the group|all)(?: know)?(?: pls| please)?\W*",
    re.IGNORECASE,
)
# What stands for whoever was named before: `tell her to rest`, `show me hers`.
_OF_WHOM: Final = {
    "word": re.compile(r"\b(?:her|him)\b", re.IGNORECASE),
    "ask": re.compile(r"\b(?:hers|his)\b", re.IGNORECASE),
}
# What everybody sees of itself.
_BY_THEMSELVES: Final = frozenset({"post", "change"})
_SAME: Final = re.compile(
    r"\W*(?:and |n |& )?(?:(?:the )?same (?:goes )?(?:for|with) @|@ (?:neither|too|as well|also|either))\W*",
    re.IGNORECASE,
)

# `Whats friday again? move it to 7`: the session of the day that was asked about.
_DAY: Final = re.compile(rf"\b{DAY_WORD}\b", re.IGNORECASE)
_NEW_ONE: Final = re.compile(r"^\W*(?:(?:and|a|the)\s+)*new one\s+", re.IGNORECASE)
# Of what stands before it: `Jonas hasn't done it, ask him why`.
_ASKS_WHY: Final = re.compile(r"\W*(?:and\s+)?ask (?:him|her|them) why\W*", re.IGNORECASE)
_IT: Final = re.compile(r"(?<=\bmove )(?:it|that)\b", re.IGNORECASE)

# `Post thu at 6 and fri at 6:30`: the second is nothing but whose and when, so that it is wished like the first.
_WHOSE: Final = rf"(?:the\s+)?{_DAY.pattern}(?:['\u2019]?s)?(?:\s+(?:one|session|draft|board))?"
_AND_ANOTHER: Final = re.compile(
    rf"\W*(?:(?:and|n|&|\+|also|then|plus)\s+)*(?P<what>{_WHOSE}\b"
    r"(?:\s+(?:at|to|for|on|by|goes|out|half|quarter|past|in|the|morning|evening|afternoon|noon|[0-9][0-9:.]*\s?(?:[ap]m|h)?|[ap]m))*)\W*",
    re.IGNORECASE,
)
_LIKE_THE_FIRST: Final = re.compile(rf"(?P<verb>.*?)\s*{_WHOSE}\b", re.IGNORECASE | re.DOTALL)

# A word to one, and another to the next: `remind @ about friday`, `and @ about her score`.
_TOLD_FIRST: Final = re.compile(r"(?P<verb>(?:\S+\s+){1,3}?)@\s+\S", re.DOTALL)
_TOLD_NEXT: Final = re.compile(
    r"\W*(?:(?:and|n|&|\+|also|then|plus)\s+)+@\s+(?P<what>(?:about|to|that|how|if|whether)\s.+)",
    re.IGNORECASE | re.DOTALL,
)

IsWhole = Callable[[str], bool]


class Matter(NamedTuple):
    """A wish in its words, and what it is about: word, post, change, ask, people, class, or "" for none of these."""

    about: str
    words: str


class _Piece(NamedTuple):
    """Words between two gaps; `hard`: a sentence ended before them."""

    start: int
    end: int
    hard: bool


@cache
def _table() -> Mapping[str, Any]:
    table = tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))
    begins = {tuple(one.split()): about for about, said in table["begins"].items() for one in said}
    return {"begins": begins, **{kind: frozenset(said) for kind, said in table["words"].items()}}


def matters(text: str, people: Sequence[str], is_whole: IsWhole) -> tuple[Matter, ...]:
    """The wishes of a message, in its order; every word is in one of them.

    `is_whole`: whether words about somebody say what becomes of them, so that the next name begins another wish.
    """
    found: list[Matter] = []
    start = 0
    for one in _pieces(text):
        words = text[one.start : one.end]
        about = about_what(words, people)
        again = _like_the_first(found[-1], words, people) if found else ""
        if again:
            found.append(Matter(found[-1].about, again))
            start = one.start
        elif found and not _begins_another(found[-1], Matter(about, words), people, is_whole, hard=one.hard):
            found[-1] = Matter(found[-1].about or about, text[start : one.end])
        else:
            found.append(Matter(about, words))
            start = one.start
    bare = (one._replace(words=_JOINT.sub("", one.words).strip(" ,;")) for one in found)
    return tuple(_referring(bare, people))


# `Move the class to wed, and the session to sun at 10`: another thing goes elsewhere, too.
_MOVES: Final = re.compile(
    r"\W*(?:(?:please|pls|can you|could you|ok)\W+)*(?P<verb>move|shift|push|postpone|change|put)\s.*\sto\s",
    re.IGNORECASE | re.DOTALL,
)
_MOVED_TOO: Final = re.compile(
    r"\W*(?:(?:and|n|&|\+|also|then|plus)\s+)*"
    r"(?P<what>(?:(?:the|my|our)\s)?(?:\w+\s)?(?:class|session|draft|workout|post|board)\s+to\s.+)",
    re.IGNORECASE,
)


def _like_the_first(last: Matter, words: str, people: Sequence[str]) -> str:
    """The words with the verb of the wish before them, where they name another of the same; "" for all else."""
    moves, too = _MOVES.match(last.words), _MOVED_TOO.fullmatch(words)
    if moves and too:
        return f"{moves['verb']} {too['what']}"
    if last.about == "word":
        return _word_to_the_next(last, words, people)
    another = _AND_ANOTHER.fullmatch(words) if last.about == "post" else None
    first = _LIKE_THE_FIRST.match(last.words) if another else None
    verb = re.sub(r"\s+(?:the|my|our)$", "", first["verb"]) if first else ""
    return f"{verb} {another['what']}" if another and verb else ""


def _word_to_the_next(last: Matter, words: str, people: Sequence[str]) -> str:
    """`Remind Bo about friday and Ilse about her score`: a word of her own."""
    first, after = find_name(last.words, people), find_name(words, people)
    began = _TOLD_FIRST.match(first.rest) if first else None
    own = _TOLD_NEXT.fullmatch(after.rest) if after else None
    return f"{began['verb'].strip()} {after.name} {own['what']}" if after and began and own else ""


def about_what(words: str, people: Sequence[str]) -> str:
    """What a wish is about, by how it begins; what is to be changed for somebody is about them."""
    said = _words(words, people)
    about = _table()["begins"].get(_begun_by(said), "")
    if about in {"", "change"} and ("@" in said or (about and not _table()["them"].isdisjoint(said))):
        return "people"
    if not about and not _table()["class"].isdisjoint(said):
        return "class"
    return "" if about == "none" else about


def _begun_by(said: Sequence[str]) -> tuple[str, ...]:
    """The longest phrase of the table with which words begin; () where none does."""
    begins = _table()["begins"]
    begun = next((at for at, one in enumerate(said) if one not in _table()["beside"]), len(said))
    sizes = range(min(len(said) - begun, max(map(len, begins))), 0, -1)
    return next((key for size in sizes if (key := tuple(said[begun : begun + size])) in begins), ())


def sentences_of(text: str) -> Iterator[tuple[str, ...]]:
    """The thoughts of each sentence: what stands between commas and joints, without these, and why it is so."""
    found: list[str] = []
    for one in _pieces(text):
        thoughts = (_JOINT.sub("", part).strip(" .!,;") for part in _WHY.split(text[one.start : one.end]))
        if one.hard and found:
            yield tuple(found)
            found = []
        found += [words for words in thoughts if words]
    if found:
        yield tuple(found)


def names_only(words: str, people: Sequence[str]) -> bool:
    said = set(_words(words, people))
    return "@" in said and said <= {"@", *_table()["beside"]}


def names_and_when(words: str, people: Sequence[str]) -> bool:
    """Names, and perhaps for how long: `Bo this week`, `and Tam until the 15th`; a bare number is no day."""
    said = set(_words(words, people))
    if {"ok", "again"} <= said or {"okay", "again"} <= said:
        return False
    dates = {one for one in said if _DATE.fullmatch(one)}
    is_dated = not dates or not said.isdisjoint(_table()["dated"]) or not all(map(str.isdigit, dates))
    return is_dated and "@" in said and said - dates <= {"@", *_table()["beside"], *_table()["when"]}


def _pieces(text: str) -> Iterator[_Piece]:
    start, hard = 0, True
    for gap in (*_GAP.finditer(text), None):
        end = gap.start() if gap else len(text)
        if text[start:end].strip():
            yield _Piece(start, end, hard)
        if gap:
            hard = gap["hard"] is not None or (hard and not text[start:end].strip())
            start = gap.end()


def _is_like_before(words: str, people: Sequence[str]) -> bool:
    """`Bo none`, `Tam 5`: how much of what was told before."""
    said = _words(words, people)
    rest = {one for one in said if one != "@" and not one.isdigit()} - _table()["beside"] - {"the"}
    return "@" in said and len(said) > 1 and rest <= _table()["like_before"]


def _begins_another(
    last: Matter, one: Matter, people: Sequence[str], is_whole: IsWhole, *, hard: bool
) -> bool:
    """Whether a piece is a wish of its own beside what stands before it."""
    said = set(_words(one.words, people))
    if last.about == one.about == "ask" and len(said - _table()["beside"]) == 1:
        return False  # `what did Bo get, and why?`
    if not one.about or names_and_when(one.words, people) or _is_like_before(one.words, people):
        return False
    if one.about == "people" and _begins_with_order(one.words, people):
        return not names_only(last.words, people)
    begins: Mapping[tuple[str, str], Callable[[], bool]] = {
        ("change", "change"): lambda: False,
        ("ask", "people"): lambda: hard or not _asked_of_next_too(last.words, one.words, people),
        ("people", "word"): lambda: hard or not _ASKS_WHY.fullmatch(one.words),
        ("word", "class"): lambda: hard,
        ("word", "ask"): lambda: hard or _of_somebody_else(last.words, one.words, people),
        ("word", "people"): lambda: hard or is_whole(one.words) or _is_addressed(one.words, people),
        ("people", "people"): lambda: (
            "@" in said and not names_only(last.words, people) and is_whole(last.words)
        ),
        ("people", "change"): lambda: (
            said.isdisjoint(_table()["of_somebody"])
            and (hard or said.isdisjoint(_table()["it"]) or not said.isdisjoint(_table()["all"]))
        ),
    }
    return begins.get((last.about, one.about), lambda: bool(last.about) or hard)()


def _asked_of_next_too(last: str, words: str, people: Sequence[str]) -> bool:
    """`How did Bo | and Cal do this month?`: no more than another name stands before what is asked."""
    before, behind = find_name(last, people), _words(words, people)
    asked = list(dropwhile(_table()["beside"].__contains__, behind))
    is_list = before is not None and _words(last, people)[-1:] == ["@"] and asked[:1] == ["@"]
    return is_list and not _table()["tells"].intersection(asked[1:2]) and len(asked) > 1


def _begins_with_order(words: str, people: Sequence[str]) -> bool:
    """`Leave Cal out`, `hold Noor`: an order for somebody with its verb in front."""
    said = _words(words, people)
    begun = _begun_by(said)
    return _table()["begins"].get(begun) == "people" and begun[0] != "@" and "@" in said


def _of_somebody_else(last: str, words: str, people: Sequence[str]) -> bool:
    """`Remind Tam his scores are due, and what did Cal get`: no part of the word to Tam."""
    before, named = find_name(last, people), find_name(words, people)
    return named is not None and (before is None or before.name != named.name)


def each_alone(words: str, people: Sequence[str]) -> tuple[str, ...]:
    """What is said of a list of people, said of each of them: `hold Bo and Tam`, `Bo can go heavier, Tam too`.

    The words alone where no several people stand in one list.
    """
    known = spellings(people)
    one = "|".join(re.escape(name) for name in sorted(known, key=len, reverse=True))
    if not one:
        return (words,)
    name = rf"(?<!\w)(?:{one})(?:['\u2019]?s|['\u2019])?(?!\w)"
    among = r"(?:\s*,\s*(?:(?:and|n|&)\s+)?|\s+(?:and|n|&|\+)\s+|\s*[/&+]\s*)"
    too = rf"{among}(?:(?:the\s+)?same\s+(?:goes\s+)?for\s+)?(?P<also>{name})(?:\s+(?:too|also|as well))?[\s.!]*$"
    behind = re.search(too, words, re.IGNORECASE)
    before = words[: behind.start()] if behind else words
    listed = re.search(rf"{name}(?:{among}{name})*", before, re.IGNORECASE)
    if listed is None:
        return (words,)
    named = re.findall(rf"(?<!\w)({one})", f"{listed[0]} {behind['also'] if behind else ''}", re.IGNORECASE)
    people_named = dict.fromkeys(known[found.casefold()] for found in named)
    return tuple(f"{before[: listed.start()]}{found}{before[listed.end() :]}" for found in people_named)


def asks_of_each(words: str) -> bool:
    """`How are Bo and Cal` is asked of each; `which of Bo and Cal` isn't."""
    return not any(one in _table()["among"] for one in _words(words, ()))


def _is_addressed(words: str, people: Sequence[str]) -> bool:
    """`Bo: well done`."""
    named = find_name(words, people)
    return named is not None and re.match(r"(?:and\s+|n\s+)?@\s*:", named.rest, re.IGNORECASE) is not None


def _referring(found: Iterable[Matter], people: Sequence[str]) -> Iterator[Matter]:
    """`Hold Siri, same for Gunn`: wished of the other, too; `pls tell everyone`: what was said just before."""
    ordered: Matter | None = None
    said: Matter | None = None
    for one in found:
        named = find_name(one.words, people)
        before = find_name(ordered.words, people) if ordered else None
        if named and before and _SAME.fullmatch(named.rest):
            yield Matter("people", before.rest.replace("@", named.name))
            continue
        is_told = said and one.about == "word" and _TELL_ALL.fullmatch(one.words)
        if said and is_told and said.about in _BY_THEMSELVES:
            continue
        words = _NEW_ONE.sub("class ", one.words) if one.about == "class" else one.words
        day = _DAY.search(said.words) if said and said.about == "ask" and one.about == "post" else None
        words = _IT.sub(f"{day[0]}'s", words, count=1) if day else words
        if before and named is None and one.about in _OF_WHOM:
            words = _OF_WHOM[one.about].sub(before.name, words, count=1)
        if said and said.about == "word" and _is_addressed(one.words, people):
            words = f"tell {words}"
        yield Matter("word", as_word(said.words)) if said and is_told else one._replace(words=words)
        ordered = one if one.about == "people" else ordered
        said = one


def as_word(words: str) -> str:
    """What was said just before, said to everybody."""
    return f"announce: {words}"


def _words(text: str, people: Sequence[str]) -> list[str]:
    """Folded, with `@` in the place of each name."""
    folded = text.casefold().replace("\u2019", "'")
    for name in sorted(spellings(people), key=len, reverse=True):
        folded = re.sub(rf"(?<!\w){re.escape(name)}(?:'?s|'(?=\s|$))?(?!\w)", "@", folded)
    return _WORD.findall(folded.replace("'", ""))
