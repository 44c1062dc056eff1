"""A coach's change of a session in words: `make the row 200 m`, `swap burpees for squats`, `cap 15 min instead`."""

import re
from collections.abc import Iterator
from typing import Final, Literal, NamedTuple

from core.notation.edits.retelling import read_told
from core.notation.text import plain

_LONGEST = 160
# What is said of a class is about the calendar.
_CLASS = re.compile(r"\bclass(?:es)?\b", re.IGNORECASE)
_ENDS = r"(?:,? (?:instead|please|pls|now|today|then|thanks|again))*"
_FOR_ALL = re.compile(
    r",? for (?:every(?:one|body)|all(?: of (?:them|us))?|the (?:whole )?group|them all)"
    r"(?= and\b| please\b| pls\b|[.,!]|$)",
    re.IGNORECASE,
)
_BEGINS = (
    r"(?:(?:ok|okay|no|wait|sorry|actually|hmm+|oh|oops|whoops|ugh|shit|damn|my bad|and|also"
    r"|please to|please|pls|hey|let'?s|can (?:you|we)|could (?:you|we)"
    r"|i(?:'d| would) (?:like|rather)(?: to)?|we(?:'ll| will| should)|you (?:can|could))\W+)*"
)
_MAKE = r"(?:make|change|set|turn|switch|adjust|update|reduce|raise|lower|increase|cut|drop|bump|put|scale)"
_DROP = (
    r"(?:drop|remove|delete|skip|cut|scrap|forget|bin|ditch|lose|take (?:out|away|off)|leave out|kick out|no more"
    r"|no(?= (?:warm|cool|wu\b|cd\b|finisher)))"
)
_ADD = r"(?:add|put|throw|stick|include|insert|do|have)(?: also| in| on| back)*"
_PART = r"(?:warm|cool|main|skill|strength|part|block|first|second|third|last|finisher|workout)[\w -]{0,14}"
_LAST = r" (?:to|into) it"
_AS = r"(?:as|for) (?:the |an? )?"
_AT = r"(?:right )?(?:at|to|on|in) (?:the )?(?:very )?"
_FIRST = (
    rf"(?: {_AT}(?:start|begin(?:ning)?|top|front)| first(?: thing)?| before (?:everything|all of it)"
    rf"| {_AS}(?:warm[- ]?up|first(?: one| thing)?)| in front| beforehand)"
)
_LASTLY = rf"(?: (?:at|to|on) the (?:very )?end| {_AS}last(?: one| thing)?)"
_BEHIND_ALL = rf"(?: {_AS}(?:cool[- ]?down|finisher)| (?:to finish|afterwards|at last|behind it all))"
_IN_ROUNDS = r"(?:at the end of|to|in|into|after) (?:each|every|the|all the) (?:rounds?|circuit|amrap|emom)"
_OWN_PART = r"(?:(?:a|the|just a|only a) )?(?:finisher|cash[- ]?out|extra|last thing)"
_STANDS = r"(?:is |are |comes? |goes? |should (?:be |come |go )?)?(?:done )?"
_NOT_IN = r"(?:,? (?:and )?not (?:inside|in|within|part of)\b.*)?"
_FORM = r"(?:amrap|emom|rounds?|intervals?|circuit|main(?: part)?|sets|superset|it|that|them|all|everything)"
_USE = r"(?:(?:use|try|do|have|put|take|give (?:them|us)|go (?:for|with)) )?"
_THE = r"(?:the |those |all (?:the )?|that |my )?"
_FROM = rf"(?:,? (?:and )?not (?:to |in |into |of |part of )?{_THE}(?P<o>[a-z][\w -]{{1,20}}))?"


Verb = Literal["change", "swap", "drop", "add", "move", "out", "name"]
# Where a line is added that is named by its place alone.
START: Final = "^"
END: Final = "$"
BEHIND: Final = "$$"
_PLACED: Final = {"f": START, "e": END, "l": BEHIND}


class Edit(NamedTuple):
    """`target` and `new` in the coach's words: a new amount, load, movement or part, or something to add or leave out.

    `move` is to the part `new`; `out` is out of it, to stand behind it by itself.
    `at`: which line of the text is meant, counted from 0, where its words alone don't tell. `beside`: the line that was
    changed just before, in whose part something is added; of a move the part that is left.
    """

    verb: Verb
    target: str
    new: str
    at: int | None = None
    beside: str = ""


class Wish(NamedTuple):
    """One of the changes that a message asks for, in its words, with its readings; none where it can't be read."""

    words: str
    edits: tuple[Edit, ...]


# The first that fits decides; `change` without a word between is parted where the name of a movement ends.
_SHAPES: tuple[tuple[Verb, str], ...] = (
    (
        "name",
        r"(?:call|name|title|rename) (?:it|this|that|the (?:session|workout|board|day))(?: to| as)? (?P<n>.+)(?P<t>)",
    ),
    ("out", rf"{_THE}(?P<t>.+?) {_STANDS}(?:after|behind|outside(?: of)?) {_THE}(?P<n>{_FORM}){_NOT_IN}"),
    ("out", rf"{_THE}(?P<t>.+?) (?:is|are|as|should be|comes? as|goes? as) {_OWN_PART}(?P<n>)(?:,? .*)?"),
    (
        "out",
        rf"(?:take|move|put|get|pull) {_THE}(?P<t>.+?) (?:out of|outside(?: of)?|after|behind) {_THE}(?P<n>{_FORM})",
    ),
    ("add", rf"{_ADD} (?P<n>.+?) {_IN_ROUNDS}(?P<t>)"),
    ("add", rf"{_ADD} (?:at|to|on) the (?:very )?end,?:? (?P<n>.+)(?P<e>)"),
    ("add", rf"{_ADD} (?:at|to|in) the (?:very )?(?:start|beginning|front),?:? (?P<n>.+)(?P<f>)"),
    ("add", rf"{_ADD} (?P<n>.+?){_FIRST}(?P<f>)"),
    ("add", rf"(?:start|begin|open) with {_THE}(?P<n>.+)(?P<f>)"),
    ("add", rf"{_ADD} (?P<n>.+?){_BEHIND_ALL}(?P<l>)"),
    ("add", rf"{_ADD} (?P<n>.+?){_LASTLY}(?P<e>)"),
    ("add", rf"(?:finish|end|close)(?: off| up)? with {_THE}(?P<n>.+)(?P<l>)"),
    ("move", rf"(?:move|shift|put) {_THE}(?P<t>.+?) (?:in)?to {_THE}(?P<n>{_PART}?){_FROM}"),
    (
        "move",
        rf"{_THE}(?P<t>.+?) (?:belongs?|goes?|comes?) (?:to|in|into|under|with) {_THE}(?P<n>{_PART}?){_FROM}",
    ),
    (
        "move",
        rf"{_THE}(?P<t>.+?) (?:is|are) (?:(?:(?:a )?part of|in|of|still) )?{_THE}(?P<n>{_PART}?){_FROM}",
    ),
    ("swap", rf"(?:swap|replace|exchange|trade|switch) {_THE}(?P<t>.+?) (?:for|with|by|against) (?P<n>.+)"),
    ("change", rf"{_MAKE} {_THE}(?P<t>.+?) (?:down |up |back )?(?:to|into|from .+? to|=|be) (?P<n>.+)"),
    ("change", rf"{_USE}(?P<n>.+?) instead of {_THE}(?P<t>.+)"),
    ("change", rf"i meant {_THE}(?P<n>.+?),? (?:and )?not {_THE}(?P<t>.+)"),
    ("change", rf"i meant {_THE}(?P<t>)(?P<n>.+)"),
    ("change", rf"{_THE}(?P<t>.+?) (?:should|shall|must|ought to) be (?P<n>.+)"),
    (
        "change",
        rf"{_THE}(?P<t>.+?) (?:is|are|was|were) (?:meant to be )?(?P<n>(?:[0-9@]|each|per|max\b|on each).*)",
    ),
    ("add", rf"{_ADD} (?P<n>.+?) (?:to|in|into|at the end of) {_THE}(?P<t>{_PART})"),
    ("add", rf"{_ADD} (?P<n>.+?) (?:right )?(?:after|behind) {_THE}(?P<t>.+)"),
    ("add", rf"add (?:also )?(?P<n>.+?)(?:{_LAST})?(?P<t>)"),
    ("drop", rf"take {_THE}(?P<t>.+?) (?:out|away|off)(?P<n>)"),
    ("drop", rf"{_DROP} {_THE}(?P<t>.+)(?P<n>)"),
    ("change", rf"{_MAKE} {_THE}(?P<t>)(?P<n>.+)"),
    ("change", r"(?P<t>)(?P<n>.+) instead"),
    ("add", rf"{_ADD} (?P<n>.+?)(?:{_LAST}| there| in (?:its|their) place)?(?P<t>)"),
)


_ALONE = re.compile(
    rf"{_BEGINS}(?:(?:only|just|rather|better|then|its|it's|that's|(?:it |that |this )?(?:should|must|shall) be)\W+)?"
    rf"(?P<n>.+?)(?:,? not [0-9]+)?{_ENDS}",
    re.IGNORECASE,
)
# A number that stands by itself goes with what is before it: `21, 15, 9`.
_AND = re.compile(
    r"\s*(?:[;\n]|[,.](?=\s)|\band\b|&)\s*(?:(?:and|then|also)\s)*(?=[^\s\d]|\d+[\s\w-]*[a-z])", re.IGNORECASE
)


def read_wishes(text: str) -> tuple[Wish, ...]:
    """Each of several changes that a message asks for, the unread among them; () where none is plainly one.

    Who leaves one thing out and puts another in means it in its place.
    """
    parts = [part.strip() for part in _AND.split(text[: _LONGEST + 1]) if part.strip(" .!,")]
    found = [Wish(part, read_edits(part)) for part in parts]
    if len(found) < 2 or not any(one.edits for one in found):  # noqa: PLR2004
        return ()
    return tuple(_in_place([one if one.edits else _as_before(one) for one in found]))


def _as_before(wish: Wish) -> Wish:
    """`and the run 400 m` goes on with the verb that was said before."""
    return wish._replace(edits=read_edits(f"make {wish.words}"))


def _in_place(wishes: list[Wish]) -> Iterator[Wish]:
    at = 0
    while at < len(wishes):
        out, put = wishes[at], wishes[at + 1] if at + 1 < len(wishes) else None
        gone = next((one for one in out.edits if one.verb == "drop"), None)
        come = next((one for one in put.edits if one.verb == "add" and not one.target), None) if put else None
        if put and gone and come:
            yield Wish(f"{out.words}, {put.words}", (Edit("swap", gone.target, come.new),))
            at += 1
        else:
            yield out
        at += 1


_WRONG = re.compile(
    r"\b(?:that'?s|this is|it'?s|you(?:'ve| have)?) (?:all |completely |totally )?(?:wrong|not (?:it|right|what))"
    r"|\b(?:is|was|are) (?:all )?wrong\b|\bi (?:meant|wanted)\b|\bnot what i (?:meant|wrote|sent|wanted|said)\b"
    r"|\b(?:you )?misread\b",
    re.IGNORECASE,
)
_NO = re.compile(r"\bnot\b", re.IGNORECASE)


def says_it_is_wrong(text: str) -> bool:
    """`No, that's wrong`, `I meant the session from before`."""
    return "\n" not in text.strip() and bool(_WRONG.search(plain(text[:_LONGEST])))


def for_all(text: str) -> str:
    """The words without `for everyone`: what is changed in a session is changed for all."""
    return _FOR_ALL.sub("", text)


def sounds_like_a_change(text: str) -> bool:
    """Whether one short message may speak of a session that is there; a class is another matter."""
    words = text.strip()
    if len(words) > _LONGEST or words.endswith("?") or _CLASS.search(words):
        return False
    begun = read_edits(words) or read_wishes(words) or read_told(words)
    return bool(begun or says_it_is_wrong(words) or ("\n" not in words and _NO.search(words)))


def as_it_shall_be(text: str) -> Edit | None:
    """`No, only 4 rounds`: what shall be, with no word of what is; None where it can't be that."""
    words = plain(text[: _LONGEST + 1]).strip(" .!,")
    match = _ALONE.fullmatch(words)
    fits = (
        len(words) <= _LONGEST and "\n" not in text.strip() and not words.endswith("?") and "+" not in words
    )
    return Edit("change", "", match["n"].strip(" .!,")) if match and fits else None


_MADE = re.compile(rf"^{_MAKE}\s+(?:(?:it|that|this|the)\s+)?", re.IGNORECASE)
_TOWARDS = re.compile(
    r"\b(?:down to|up to|down|up|to|at|of|per set|only|just|less|fewer|more|pls|please|instead)\b|[,:=]",
    re.IGNORECASE,
)


def told_of_line(text: str) -> tuple[Edit, ...]:
    """`Goblet squats at 20/16`, `less burpees, 8`, `make it 4x6`: what a line is from now on."""
    edit = as_it_shall_be(text)
    if edit is None or _NO.search(text) or not re.search("[0-9]", edit.new):
        return ()
    words = " ".join(_TOWARDS.sub(" ", _MADE.sub("", edit.new)).split())
    behind = re.fullmatch(r"(?P<n>[0-9]\S*) (?P<t>(?!.*\band\b)\D+)", words)
    return (
        edit._replace(new=words),
        *((edit._replace(target=behind["t"], new=behind["n"]),) if behind else ()),
    )


def read_edits(text: str) -> tuple[Edit, ...]:
    """The ways in which words may ask for a change, the likelier first; () for words about something else."""
    words = plain(text[: _LONGEST + 1])
    if (
        not words
        or _CLASS.search(words)
        or len(words) > _LONGEST
        or "\n" in text.strip()
        or words.rstrip().endswith("?")
    ):
        return ()
    words = words.strip(" .!")
    found = (
        (verb, re.fullmatch(rf"{_BEGINS}{shape}{_ENDS}", words, re.IGNORECASE)) for verb, shape in _SHAPES
    )
    return tuple(_edit(verb, match) for verb, match in found if match)


def _edit(verb: Verb, match: re.Match[str]) -> Edit:
    told = match.groupdict()
    place = next((where for group, where in _PLACED.items() if group in told), "")
    target = place or told["t"].strip()
    new = re.sub(r"^an? (?=[a-z][a-z -]{2,12}:)", "", told["n"].strip(" .,!"))
    return Edit(verb, target, new, beside=(told.get("o") or "").strip())
