"""Whose score is it? A name of the group in front of a text: `Ilse 7+12`, `score for Ilse: 7+12`."""

import re
from collections.abc import Callable, Collection, Iterable
from typing import Final, NamedTuple

from core.notation.second_person import spoken_to

_LEAD = re.compile(
    r"^\s*(?:(?:please|pls|sorry|oops)\W+)*(?:can you\s+|could you\s+)?"
    r"(?:(?:change|correct|fix|update|note(?: down)?|log|record|enter|(?:put|write|take|mark|jot) down"
    r"|(?:put|mark|have)(?=\s.*\bas\s+[0-9])|(?:add|put|mark)(?: in)?(?=\s.*\b(?:score|result|time)s?\b))\s+)?"
    r"(?:(?:(?:the|a)\s+)?(?:score|result|time)s?\s+(?:for|of)\s+)?",
    re.IGNORECASE,
)
_AFTER = re.compile(
    r"^(?:['\u2019]?s(?=\s))?(?:['\u2019](?=\s))?"
    r"(?:\s+(?:did|got|has|had|made|score|is|(?:down )?as(?=\s+[0-9])))*[\s:,;\u2013-]+",
    re.IGNORECASE,
)


class NameInFront(NamedTuple):
    """A name of the group, and the text that follows it."""

    name: str
    rest: str


def without_lead(text: str) -> str:
    """Without what only says that a score is told: `note down`, `add the scores of`."""
    return _LEAD.sub("", text).strip()


def name_in_front(text: str, names: Iterable[str]) -> NameInFront | None:
    """The longest name, or the only first name, that the text begins with; None where none or two do."""
    words = without_lead(text)
    for spelling, name in sorted(spellings(names).items(), key=lambda pair: -len(pair[0])):
        if words.casefold().startswith(spelling) and (gap := _AFTER.match(words[len(spelling) :])):
            return NameInFront(name, words[len(spelling) + gap.end() :])
    return None


_AND_ALSO: Final = re.compile(r"^\s*(?:,\s*(?:and|n)?|and|n|&|\+)\s+", re.IGNORECASE)
_BETWEEN: Final = r"(?:\s*[,;\n]\s*(?:(?:and|n|&)\s+)?|\s+(?:and|n|&|\+)\s+)"


def cut_at_names(
    text: str, names: Collection[str], counts: Callable[[str], object] = bool
) -> tuple[str, ...]:
    """`Bo got 5 rounds and Tove 14:20`: what is told of each, from the name on; uncut where a name stands alone.

    `counts`: which of it is meant at all, so that of `Bo and Tove did great, Cal 12:40` only the last is.
    """
    spelled = sorted(map(re.escape, spellings(names)), key=len, reverse=True)
    cut = re.split(rf"{_BETWEEN}(?=(?:{'|'.join(spelled)})\b)", text.strip(), flags=re.IGNORECASE)
    meant = [piece for piece in cut if counts(piece)]
    together = meant[:1] == cut[1:2] and cut[0].casefold() in spellings(names)
    told = [name_in_front(piece, names) for piece in meant]
    return tuple(meant) if not together and all(one and one.rest for one in told) else (text,)


_IS = re.compile(r"^(?:['\u2019]s?\b)?[\s,:]*(?:\b(?:he|she|they)\b(?:['\u2019]s\b)?)?", re.IGNORECASE)
_NOTED = re.compile(r"^\W*(?:(?:a )?note|fyi|info)\b(?:\s+(?:for|on|about))?[\s:,]+", re.IGNORECASE)


def behind_name(text: str, names: Iterable[str]) -> NameInFront | None:
    """A name that a text begins with, and all that follows it: `Tam's got a bell`, `Tam got a bell`."""
    words = _NOTED.sub("", text).strip()
    for spelling, name in sorted(spellings(names).items(), key=lambda pair: -len(pair[0])):
        rest = words[len(spelling) :]
        if words.casefold().startswith(spelling) and rest and not rest[0].isalnum():
            return NameInFront(name, _IS.sub("", rest).strip(" ,:"))
    return None


_TO = r"(?:(?:please|pls|can you|could you)\s+)*(?:send|write|message|msg|text|dm|tell|whisper|remind)"
_SENDS = re.compile(rf"^\W*{_TO}\b", re.IGNORECASE)
_ADDRESSED = re.compile(
    rf"^\W*{_TO}(?:\s+(?:to|a (?:message|word) to))*\s+(?P<whom>[^:\n]{{1,40}}?)"
    r"(?:\s+(?:(?:a|this|the|my)\s+)?(?:message|note|word|text|msg))?\s*(?:(?<![0-9]):|:(?![0-9]))\s*(?P<words>\S.*)$",
    re.IGNORECASE | re.DOTALL,
)
_PLAINLY = re.compile(
    r"^\W*(?:(?:please|pls|can you|could you)\s+)*"
    r"(?:(?:message|msg|text|dm|whisper|tell|write|remind)(?:\s+to|\s+a (?:message|note|word) to)*\s+(?P<whom>@)"
    r"|let\s+(?P<whom2>@)\s+know\b)",
    re.IGNORECASE,
)


_ASKED = re.compile(
    r"^\W*(?:(?:please|pls|can you|could you)\s+)*ask\s+@\s+"
    r"(?P<words>(?:to|for|about|how|if|whether|what|when|where|which|why|who)\s.+)$",
    re.IGNORECASE,
)


# `@ hasn't done it, ask him why`.
_TOLD_AND_ASKED = re.compile(
    r"^\W*@\s+(?P<what>(?:has|did|is|was|does)\S*\s.+?)\W+(?:and\s+)?ask (?:him|her|them) why\W*$",
    re.IGNORECASE,
)


def question_to(text: str, names: Iterable[str]) -> NameInFront | None:
    """Whom a coach wants asked, and what, said to them: `ask Bo how his knee is` asks him how your knee is."""
    named = find_name(text, names)
    told = _TOLD_AND_ASKED.match(named.rest) if named else None
    if named and told:
        return NameInFront(named.name, spoken_to(f"why he {told['what']}"))
    found = _ASKED.match(named.rest.strip(" .?!")) if named else None
    if named is None or found is None:
        return None
    return NameInFront(named.name, spoken_to(found["words"]))


_EVERYBODY = frozenset(
    {
        "them",
        "them all",
        "all",
        "everyone",
        "everybody",
        "the group",
        "the team",
        "group",
        "people",
        "folks",
        "guys",
    }
)


def addressed(text: str) -> str | None:
    """Who stands between a word like `message` and a colon; None where that is everybody."""
    found = _ADDRESSED.match(text)
    whom = found["whom"].strip() if found else ""
    return whom if whom and whom.casefold() not in _EVERYBODY else None


def is_for_somebody(text: str) -> bool:
    """Whether a word may be for one person at all: what sends it stands in front."""
    return bool(_SENDS.match(text))


def word_to(text: str, names: Iterable[str]) -> NameInFront | None:
    """The one person to whom a word is to go, and the word: `message Ruth: well done`, `tell Ruth well done`."""
    known = list(names)
    if found := _ADDRESSED.match(text):
        name = name_in_front(f"{found['whom']}:", known)
        is_all = name is not None and found["whom"].strip().casefold() in spellings(known)
        return NameInFront(name.name, found["words"].strip()) if name and is_all else None
    named = find_name(text, known)
    if named is None or not _PLAINLY.match(named.rest):
        return None
    said = re.sub(
        r"^(?:know\s+)?(?:that\s+)?", "", named.rest.partition("@")[2].strip(" ,"), flags=re.IGNORECASE
    )
    return NameInFront(named.name, spoken_to(as_said_to_them(said)))


_SEVERAL = re.compile(rf"^\W*{_TO}\s+(?:to\s+)?(?P<rest>.+)$", re.IGNORECASE | re.DOTALL)


def words_to_several(text: str, names: Iterable[str]) -> tuple[NameInFront, ...]:
    """`Tell Paddy n Nora they're flying`: the same word to each, said to them; () where it isn't for several."""
    found = _SEVERAL.match(text)
    known, named, rest = list(names), list[str](), found["rest"] if found else ""
    while one := behind_name(rest, known):
        named.append(one.name)
        rest = _AND_ALSO.sub("", one.rest)
    said = spoken_to(
        re.sub(r"^(?:that\s+)?they(?:'?re| are)\b", "you are", rest.strip(" ,:"), flags=re.IGNORECASE)
    )
    is_word = len(named) > 1 and bool(said) and find_name(said, known) is None
    return tuple(NameInFront(name, as_said_to_them(said)) for name in named) if is_word else ()


def as_said_to_them(words: str) -> str:
    """`To bring a mat`, behind `tell everyone`, is `Please bring a mat`."""
    asked = re.match(r"to\s+(?=[a-z])(?P<what>\S.*)", words, re.IGNORECASE | re.DOTALL)
    return f"Please {asked['what']}" if asked else words


_ALL_OF_THEM = r"(?:the (?:whole )?(?:group|team|lot)|every(?:one|body)|them all|all of them)"
_TO_ALL = re.compile(
    r"^\W*(?:(?:please|pls|can you|could you)\s+)*"
    rf"(?:(?:tell|message|text|remind)\s+{_ALL_OF_THEM}|let\s+{_ALL_OF_THEM}\s+know)\s+(?:that\s+)?(?P<words>[^\s:].*)$",
    re.IGNORECASE | re.DOTALL,
)


def word_to_all(text: str) -> str | None:
    """`Tell the group I'm sorry for the late post`: what everybody shall read."""
    found = _TO_ALL.match(text)
    return as_said_to_them(found["words"].strip()) if found else None


_BEHIND = re.compile(
    r"(?:^|[,;.]|\b(?:and|so|please))\s*(?:please\s+)?(?:tell|message|text|let)\s+"
    r"(?P<whom>him|her|them|[\w' ]{1,30}?)\s+"
    r"(?P<how>to|that|know(?: that)?|:)\s+(?P<words>\S.*)$",
    re.IGNORECASE | re.DOTALL,
)


def word_behind(text: str, name: str) -> str | None:
    """The word to them behind an order: `..., tell him to rest` -> `Please rest`. None where there is none."""
    found = _BEHIND.search(text.strip())
    if found is None or found["whom"].casefold() not in {"him", "her", "them", *spellings([name])}:
        return None
    words = found["words"].strip()
    return f"Please {words}" if found["how"].casefold() == "to" else words[:1].upper() + words[1:]


class NameIn(NamedTuple):
    """A name of the group, and the text with `@` in its place."""

    name: str
    rest: str


def find_name(text: str, names: Iterable[str]) -> NameIn | None:
    """The one person who is named anywhere in a text, by the longest name first; None where nobody is."""
    known = spellings(names)
    for spelling in sorted(known, key=len, reverse=True):
        name = re.compile(rf"(?<!\w){re.escape(spelling)}(?:'?s|'(?=\s|$))?(?!\w)", re.IGNORECASE)
        if name.search(text):
            return NameIn(known[spelling], name.sub("@", text, count=1))
    return None


def all_named(text: str, names: Iterable[str]) -> tuple[str, ...]:
    """Everybody who is named in a text."""
    known, found = list(names), list[str]()
    while one := find_name(text, [name for name in known if name not in found]):
        found.append(one.name)
        text = one.rest
    return tuple(found)


def spellings(names: Iterable[str]) -> dict[str, str]:
    """Whole names, and first names that only one has; folded."""
    known = list(dict.fromkeys(names))
    firsts = [name.split()[0].casefold() for name in known if name.split()]
    found = {
        name.split()[0].casefold(): name
        for name in known
        if name.split() and firsts.count(name.split()[0].casefold()) == 1
    }
    return found | {name.casefold(): name for name in known if name.strip()}
