"""What is said of the whole block and is no one number: `rest as needed`, `split the reps`. Kept as notes."""

import re
from collections.abc import Iterator

from core.notation.phrases.paces import RESTING, rest_of
from core.notation.quantities import MINUTE_S
from core.notation.text import Row, Strip

_REST = r"\b(?:rest|break|recover)"
# `all six within 3 seconds of each other`, `all of them the same`
_EVEN = (
    r"\ball (?:[a-z]+|[0-9]{1,2}|of (?:them|em)) (?:at )?(?:"
    r"within [0-9]{1,2}\s?(?:s|secs?|seconds)\b(?: of each other)?"
    r"|(?:the same|alike|even|equal)\b(?: (?:split|time|pace)s?\b)?)"
    r"|\b(?:hold )?(?:the )?same (?:split|pace|time) (?:on )?(?:all|every|each)\b"
    r"(?: (?:of them|time|one|round|[0-9]{1,2}|[a-z]+(?=,|$)))?"
)
_MANNERS = re.compile(
    "|".join(
        (
            (
                rf"{_REST}s?(?: in between| between (?:rounds|sets))? (?:as|when|if|whenever) (?:needed|required"
                r"|necessary|you (?:need|like|want)(?: it| to)?)\b"
            ),
            (
                rf"{_REST}\s?:?\s(?:for )?[0-9]{{1,3}}\s?(?:min|s|sec)?\s?(?:-|to)\s?[0-9]{{1,3}}\s?"
                r"(?:min(?:ute)?s?|s|secs?|seconds)\b(?: (?:in )?between (?:the |all )?(?:rounds|sets|efforts))?"
            ),
            rf"{_REST} (?:the )?same(?: time| as (?:you |the )?(?:just )?work(?:ed)?)?\b",
            rf"{_REST} as long as (?:it takes|you work(?:ed)?|your partner works)\b",
            (
                r"\b[0-9]{1,3}\s?(?:min|s|sec)?\s?(?:-|to)\s?[0-9]{1,3}\s?(?:min(?:ute)?s?|s|secs?|seconds)\b (?:of )?"
                r"(?:(?:rest|break|recovery|off)\b(?: (?:in )?between (?:the |all )?(?:rounds|sets|efforts))?"
                r"|between (?:the |all )?(?:rounds|sets|efforts))"
            ),
            (
                r"(?<!\w m )(?<!min )(?<!sec )\b(?:walk|jog|stroll)(?:ing)?(?: slowly| easy)? back"
                r"(?: down| to (?:the )?start)?(?: (?:(?:is |as |for )?(?:the |your )?(?:rest|recovery)|to recover))?\b"
            ),
            rf"{_REST}s?\s?:?\s(?:for )?[1-9][0-9]{{1,2}}\s?(?:-|to)\s?[0-9]{{2,3}}\b(?!\s?[a-z:.])",
            (
                rf"{_REST} (?:in |for |with )?(?:the |your |any )?"
                r"(?:remaining time|time (?:left|remaining)|what(?:'s| is|ever is) left|remainder)\b"
            ),
            rf"{_REST}\s?=\s?work\b(?: time)?",
            rf"{_REST} equal to (?:the )?work(?: time)?\b",
            rf"{_REST} 1:[1-4](?![0-9])|(?<![0-9:])1:[1-4] rest\b",
            r"\bno rest(?: between (?:rounds|sets|movements))?\b",
            (
                r"\b(?:share|split|divide|partition) (?:the |all )?(?:work|reps?|repetitions|rounds?)"
                r"(?: (?:as you (?:like|want|wish)|however you (?:like|want)|evenly|between you|as needed))?\b"
            ),
            r"\bone (?:works?|partner works),? (?:the other|one)(?: partner)? rests?\b",
            (
                r"\b(?:only )?(?:one|1)(?: person| partner| athlete)? (?:(?:works?|moves?|rows?|runs?|goes) at a time"
                r"|person works|working\b)"
            ),
            r"\bno (?:time )?(?:cap|limit)\b",
            (
                r"(?:@\s?)?\b(?:last (?:week|time)|yesterday)(?:'s)?(?: (?:weight|load))?\s?(?:\+|plus)\s?[0-9.]+"
                r"(?:\s?(?:kg|lbs?))?"
            ),
            r"\bfull (?:rest|recovery)\b(?: between\b(?: (?:sets|reps|each|efforts))?)?",
            r"(?<=[a-z]\s)w(?:ee)?k\s?[0-9]{1,2}\b(?=\s?:)",
            # `every 500 m 10 burpees`: when it is done, and no distance of its own
            (
                r"\bevery (?:[0-9]{1,4}(?:\.[0-9])?\s?)?(?:k|k?m|miles?|laps?|kilomet(?:re|er)s?|met(?:re|er)s?)\b"
                r"(?: stop)?(?: and)?(?: do)?(?=[:,]?\s[0-9])"
            ),
            _EVEN,
        )
    )
)
_RECKONED = re.compile(
    r"^\s*(?:(?:each|every|any|per|if|when)\b[a-z' ]{0,40}"
    r"|[a-z' ]{0,24}\b(?:broken|breaks?|drops?|drop it|miss(?:es)?|fails?)\b[a-z' ]{0,16}"
    r"|[a-z+ ]{3,40}(?==\s?(?:1|one|rest|recovery)\b(?![.:/0-9])))\s?=\s?\S"
)
_ITS_END = re.compile(
    r"^[\s~;]*(?:and )?(?:the )?(?:last|final)\s(?:[0-9]{1,4}\s?(?:k?m|mins?|s|secs?|rounds?|reps?|sets?)?|one|few)\b"
)
_RANGE = re.compile(
    r"(?P<n>[0-9]{1,3})\s?(?P<u>min|s|sec)?\w{0,6}\s?(?:-|to)\s?[0-9]{1,3}\s?(?P<v>min|s|sec)?"
)
# What a block is called, beside its format; a ladder or pyramid is told by its scheme.
_LABELS = re.compile(
    r"\b(?:chippers?|couplets?|triplets?|circuits?|workout|super ?-?sets?|tri-?sets?|giant sets?"
    r"|(?:(?:barbell|dumbbell|kettlebell|bar|db|kb) )?complex)\b"
)
_SHAPE = re.compile(r"\b(?:rep )?(?:ladder|pyramid)\b(?=[\s:;,.\-]{0,3}(?:for |of )?[;0-9]|\s?:|[\s:;]*$)")
# Says only that it is the day's session; what it is stands beside it.
_ONLY_NAMED = re.compile(r"\b(?:partner |team )(?:work(?:out)?|session)s?\b")
GOES_ON = "and so on, the same way up"
_GOES_ON = re.compile(r"(?<=[0-9])[\s,\-]{0,2}(?:\.{3}(?!\s?-?[0-9])|\.{2}(?!\.)|etc\b\.?|and so on|\u2026)")
_OPEN_END = re.compile(r"(?<![0-9.\-])(?:[0-9]{1,2}-){1,6}[0-9]{1,2}\+(?!\s?[0-9])")


def take_manners(strip: Strip, row: Row) -> Iterator[str]:
    """Each in the coach's own words, taken away; the plus of `5-5-5+` only gets its meaning told."""
    if last := _OPEN_END.search(strip.text):
        yield f"{last[0]}: the last set is as many as you can"
    if goes_on := _GOES_ON.search(strip.text):
        yield GOES_ON
        strip.blank(*goes_on.span())
    for pattern in (RESTING, _MANNERS):
        while manner := strip.take(pattern):
            yield row.own_words(manner.start(), manner.end())


def is_how_even(words: str) -> bool:
    """Whether words say how even all goes of one thing are to be."""
    return re.fullmatch(_EVEN, words.lower()) is not None


def is_reckoned(words: str) -> bool:
    """Whether words in lower case say what something costs or counts as: `each break = 3 burpees`."""
    return _RECKONED.match(words) is not None


def is_its_end(words: str) -> bool:
    """Whether words in lower case say how the end of what stands before them is done: `last 3 km at marathon pace`."""
    return _ITS_END.match(words) is not None


def least_rest(manner: str) -> float | None:
    """Seconds of `rest 2-3 min`: at least so long, and of `2 min jog between`; None where a manner tells neither."""
    if time_s := rest_of(manner):
        return time_s
    match = _RANGE.search(manner.lower())
    if match is None or "1:" in manner:
        return None
    told = float(match["n"])
    unit = match["u"] or match["v"]
    return told * MINUTE_S if (unit or "").startswith("m") else told


def take_labels(strip: Strip, row: Row, *, known: bool) -> Iterator[str]:
    """Names for a kind of block; only where a format is `known` to stand beside them, or nothing else does."""
    strip.take(_SHAPE)
    strip.take(_ONLY_NAMED)
    alone = not re.search(r"\w", _LABELS.sub("", strip.left))
    alone |= re.match(rf"^[\W_]*(?:{_LABELS.pattern})\s?:", strip.text) is not None
    while (known or alone) and (label := strip.take(_LABELS)):
        yield row.text[label.start() : label.end()]
